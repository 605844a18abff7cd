"""Ten people talk with the bot while it is killed, its homeserver restarted and its line faulty.

`python -m tests.torture.torture [SEED]` runs the long form and prints the counts; without a seed
it draws one, prints it, and the same seed again gives the same plan (not the same moments).
"""

from __future__ import annotations

import asyncio
import contextlib
import os
import random
import socket
import sys
import tempfile
import time
from collections.abc import AsyncIterator, Iterator, Sequence
from contextlib import AsyncExitStack, asynccontextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime
from functools import cache
from pathlib import Path
from typing import Final

from nio import Event

from bot.dialogue.actions import MeasureOptions
from bot.matrix.session import Account
from bot.runtime.frame_child import check_and_draw
from bot.runtime.orders import Order
from bot.trial.homeserver import LOOPBACK, Homeserver
from core.errors import LinnError
from core.frame.report import FrameReport
from tests.scenes.camera import Exposure
from tests.scenes.picture_file import Stamp, jpeg
from tests.scenes.waterfall import Plan, compose, take, with_clipped_share
from tests.server.served import ServedBot
from tests.torture import checks
from tests.torture.oracle import Known, Measure
from tests.torture.people import LINES, TROUBLE, Room, Sent, SteadyPerson, Talker
from tests.torture.proxy import Fault, ProxyProcess
from tests.torture.record import Heard, Rows, heard_in, read_rows, tells_progress

PASSWORD: Final = "only on loopback"
#: Own rule: after a minute without anything done, nothing more is to come [s].
_PATIENCE_S: Final = 90.0
#: A second copy of an answer would come within this [s] (own rule).
_AFTERMATH_S: Final = 1.5
#: About how long a start takes [s].
_START_S: Final = 3.0
#: Clipped shares of the frames that are shared: several distinct ones.
_CLIPPED: Final = (0.03, 0.0, 0.001, 0.08, 0.012)


@dataclass(frozen=True)
class Ordeal:
    """How much of everything.

    Attributes:
        people: who talk; every fifth gets into trouble and shares no frame.
        messages: in all.
        frames: in all.
        kills: of the bot.
        restarts: of the homeserver.
        seconds: about how long people talk [s].
        life_s: how long the bot lives at most once it has started; every third time twice that.
        groups: members of each group room, by number; the first is encrypted.
    """

    people: int = 10
    messages: int = 300
    frames: int = 60
    kills: int = 20
    restarts: int = 2
    seconds: float = 110.0
    life_s: float = 6.0
    groups: tuple[tuple[int, ...], ...] = ((0, 1, 2, 3), (5, 6, 7), (4,))


LONG: Final = Ordeal()
SHORT: Final = Ordeal(
    people=4,
    messages=40,
    frames=6,
    kills=4,
    restarts=1,
    seconds=14.0,
    life_s=3.0,
    groups=((0, 1),),
)


@dataclass
class Outcome:
    """What came of it: counts to print, and what was wrong."""

    seed: int
    counts: dict[str, int | str] = field(default_factory=dict)
    wrong: list[str] = field(default_factory=list)

    def text(self) -> str:
        """Counts and faults, as a page."""
        rows = [f"seed {self.seed}"]
        rows += [f"{number:>8}  {what}" for what, number in self.counts.items()]
        rows += [f"WRONG: {line}" for line in self.wrong] or ["nothing lost, nothing doubled"]
        return "\n".join(rows)


class TorturedBot(ServedBot):
    """A served bot that tells when it ended by itself, and has a folder for temporary files."""

    def __init__(self, account: Account, allowed: str) -> None:
        super().__init__(account, allowed)
        self.scratch = account.data_dir.parent / "scratch"
        self.scratch.mkdir()
        self._environment["TMPDIR"] = str(self.scratch)
        self._starts_seen = 0

    @property
    def ended(self) -> int | None:
        """The exit code, when it ended by itself."""
        return None if self._process is None else self._process.poll()

    def kill(self) -> None:
        """SIGKILL, also after it has ended by itself."""
        if self.ended is None:
            super().kill()
        self._process = None

    def start(self) -> None:
        """Start the process."""
        self._starts_seen = self._signs_of_life()
        super().start()

    async def is_up(self) -> None:
        """Wait until it has signed in and begins to sync, or ends."""
        # Another process: there is nothing to await but its log.
        while self._signs_of_life() == self._starts_seen and self.ended is None:  # noqa: ASYNC110
            await asyncio.sleep(0.05)

    def _signs_of_life(self) -> int:
        return self.log_path.read_text().count(" key ") if self.log_path.exists() else 0


class Town:
    """Homeserver, proxy, bot and people of one torture.

    Args:
        ordeal: how much of everything.
        seed: of all that is drawn.
        folder: for all files.
    """

    def __init__(self, ordeal: Ordeal, seed: int, folder: Path) -> None:
        self.ordeal = ordeal
        self.chance = random.Random(seed)
        self.server = Homeserver(folder / "homeserver", port=steady_port())
        self.folder = folder
        self.talkers: list[Talker] = []
        self.ended_by_itself: list[int] = []
        self.frames = [frame(number) for number in range(len(_CLIPPED))]

    @asynccontextmanager
    async def standing(self, seed: int) -> AsyncIterator[tuple[TorturedBot, ProxyProcess]]:
        """Homeserver, proxy and bot started; all ended at the end."""
        async with AsyncExitStack() as stack:
            await asyncio.to_thread(self.server.start)
            stack.callback(self.server.stop)
            proxy = stack.enter_context(ProxyProcess(self.server.url, seed, self.folder))
            account = self._account("linn", proxy.url)
            bot = TorturedBot(account, f"*:{self.server.server_name}")
            bot.start()
            stack.callback(bot.kill)
            people = [
                await stack.enter_async_context(
                    SteadyPerson(self._account(f"person{number}", self.server.url))
                )
                for number in range(self.ordeal.people)
            ]
            kills = asyncio.create_task(self._kill(bot))
            stack.callback(kills.cancel)
            host = SteadyPerson(self._account("host", self.server.url))
            await self._meet(await stack.enter_async_context(host), people, account.user_id)
            await asyncio.gather(self._talk(), self._restart(), kills)
            yield bot, proxy

    def _account(self, name: str, url: str) -> Account:
        user_id = self.server.register(name, PASSWORD)
        folder = self.folder / name
        folder.mkdir()
        return Account(url, user_id, folder, password=PASSWORD)

    async def _meet(self, host: SteadyPerson, people: Sequence[SteadyPerson], bot_id: str) -> None:
        """A direct room for each, every second one encrypted, and the groups.

        The host makes these and says nothing: what who teaches tells holds for others' walks, too,
        and the oracle plays each person alone. So is an emergency the whole room's: who gets into
        trouble has a group room without other talkers.
        """
        rooms: dict[int, list[Room]] = {}
        for number, person in enumerate(people):
            room_id = await person.direct_room(bot_id, encrypted=number % 2 == 0)
            rooms[number] = [Room(room_id, direct=True)]
        for number, members in enumerate(self.ordeal.groups):
            room_id = await self._gather(
                host, [people[m] for m in members], bot_id, number % 2 == 0
            )
            threads: list[str] = []
            for member in members:
                rooms[member].append(Room(room_id, direct=False, threads=threads))
        numbers = self._shares()
        for number, person in enumerate(people):
            for room in rooms[number]:
                await person.meets(room.room_id, bot_id)
            lines = TROUBLE if number % 5 == 4 else LINES
            own = random.Random(self.chance.random())
            self.talkers.append(Talker(person, bot_id, rooms[number], numbers[number], lines, own))

    async def _gather(
        self, host: SteadyPerson, people: Sequence[SteadyPerson], bot_id: str, encrypted: bool
    ) -> str:
        invited = [bot_id, *(person.user_id for person in people)]
        room_id = await host.direct_room(*invited, encrypted=encrypted)
        for person in people:
            await person.joins(room_id)
        for person in people:
            for other in people:
                if other is not person:
                    await person.meets(room_id, other.user_id)
        return room_id

    def _shares(self) -> list[range]:
        """Which frames each person shares, by their numbers."""
        sharing = [number for number in range(self.ordeal.people) if number % 5 != 4]
        each = -(-self.ordeal.frames // len(sharing))
        shares = [range(0)] * self.ordeal.people
        for place, number in enumerate(sharing):
            begin = place * each
            shares[number] = range(begin, min(begin + each, self.ordeal.frames))
        return shares

    async def _talk(self) -> None:
        each, rest = divmod(self.ordeal.messages, self.ordeal.people)
        await asyncio.gather(
            *(
                talker.talk(each + (number < rest), self.ordeal.seconds, self.frames)
                for number, talker in enumerate(self.talkers)
            )
        )

    async def _kill(self, bot: TorturedBot) -> None:
        """Kill the bot at random moments of its life, one in four times while it starts.

        A file that was begun five times without an end is given up by design; so after two
        lives comes one that is long enough for a frame.
        """
        for number in range(self.ordeal.kills):
            if self.chance.random() < 0.25:
                await asyncio.sleep(self.chance.uniform(0.0, _START_S))
            else:
                await bot.is_up()
                longest_s = self.ordeal.life_s * (1 if number % 3 else 2)
                await asyncio.sleep(self.chance.uniform(longest_s / 20, longest_s))
            if bot.ended is not None:
                self.ended_by_itself.append(bot.ended)
            await asyncio.to_thread(bot.kill)
            bot.start()

    async def _restart(self) -> None:
        for _ in range(self.ordeal.restarts):
            await asyncio.sleep(self.ordeal.seconds / (self.ordeal.restarts + 1))
            await asyncio.to_thread(self.server.stop)
            await asyncio.to_thread(self.server.start)

    @property
    def sent(self) -> list[Sent]:
        """All that people sent."""
        return [sent for talker in self.talkers for sent in talker.sent]


def steady_port() -> int:
    """A free port that no outgoing connection can take while the server behind it is down.

    Systems give those from 32768 (Linux) or 49152 (RFC 6335) upwards.
    """
    while True:
        port = random.SystemRandom().randrange(12_000, 32_000)
        with socket.socket() as listener, contextlib.suppress(OSError):
            listener.bind((LOOPBACK, port))
            return port


def frame(number: int) -> bytes:
    """One of the frames that are shared: a small rendered waterfall."""
    plan = Plan(240, 360, seed=number, light_ev100=9.0, exposure=Exposure(2**3.5, 2**-2))
    taken = take(with_clipped_share(compose(plan), _CLIPPED[number]))
    return jpeg(taken.pixels, Stamp())


async def quiet(path: Path, sent: Sequence[Sent]) -> Rows:
    """The rows of the bot once all that was meant for it is taken in and done, or time is up."""
    addressed = {message.event_id for message in sent if message.addressed}
    give_up_at = time.monotonic() + _PATIENCE_S
    while True:
        rows = await asyncio.to_thread(read_rows, path)
        work = sum(number for name, number in rows.work.items() if name != "timers")
        if not work and addressed <= rows.taken_at.keys():
            return rows
        if time.monotonic() > give_up_at:
            return rows
        await asyncio.sleep(0.3)


async def histories(town: Town, bot_id: str) -> tuple[dict[str, list[Event]], list[str]]:
    """All events of each room, oldest first; and what somebody could not read."""
    rooms: dict[str, list[Event]] = {}
    unread = []
    for talker in town.talkers:
        for room in talker.rooms:
            events = await talker.person.history(room.room_id)
            rooms.setdefault(room.room_id, [event for event, _ in events])
            unread += [
                f"{talker.person.user_id} cannot read {event.event_id} in {room.room_id}"
                for event, readable in events
                if not readable and event.sender == bot_id
            ]
    return rooms, unread


def said_in(rooms: dict[str, list[Event]], bot_id: str) -> list[Heard]:
    """The bot's messages, room by room, in order."""
    return [
        heard_in(room_id, event)
        for room_id, events in rooms.items()
        for event in events
        if event.sender == bot_id
        and event.source.get("type") == "m.room.message"
        and not tells_progress(event)
    ]


def measuring(frames: Sequence[bytes]) -> Measure:
    """What the frame's own process measures."""

    @cache
    def measured(number: int, camera_pixels: tuple[int, int] | None) -> FrameReport:
        order = Order(options=MeasureOptions(camera_pixels=camera_pixels))
        answer, _ = check_and_draw(frames[number], order)
        if answer.report is None:
            raise LinnError(f"frame {number} can't be measured")
        return answer.report

    return lambda number, pixels: measured(number % len(frames), pixels)


async def torture(ordeal: Ordeal, seed: int, folder: Path) -> Outcome:
    """Do all of it and look at what is left."""
    outcome = Outcome(seed)
    started = time.monotonic()
    town = Town(ordeal, seed, folder)
    async with town.standing(seed) as (bot, proxy):
        data_dir, bot_id = bot.account.data_dir, bot.account.user_id
        await quiet(data_dir / "linn.db", town.sent)
        await asyncio.sleep(_AFTERMATH_S)
        if bot.ended is not None:
            town.ended_by_itself.append(bot.ended)
        code = await asyncio.to_thread(bot.stop)
        rows = read_rows(data_dir / "linn.db")
        rooms, unread = await histories(town, bot_id)
    outcome.wrong += [f"the bot ended by itself: {code}" for code in town.ended_by_itself]
    outcome.wrong += [f"exit code {code} after SIGTERM"] if code else []
    outcome.wrong += unread
    heard = said_in(rooms, bot_id)
    outcome.wrong += judge(town, rows, rooms, heard)
    outcome.wrong += checks.work_left(rows, data_dir, bot.scratch)
    outcome.counts = count(town, rows, heard, proxy)
    outcome.counts["seconds"] = round(time.monotonic() - started)
    return outcome


def judge(
    town: Town, rows: Rows, rooms: dict[str, list[Event]], heard: Sequence[Heard]
) -> Iterator[str]:
    """What is wrong with what was said."""
    yield from checks.taken_in(rows, town.sent)
    yield from checks.messages_and_rows(rows, heard)
    yield from checks.order_in_rooms(rows, heard)
    yield from checks.threads(rows, heard)
    events = [event for room in rooms.values() for event in room]
    place = {event.event_id: number for number, event in enumerate(events)}
    known = Known(
        sent_at={
            event.event_id: datetime.fromtimestamp(event.server_timestamp / 1000, UTC)
            for event in events
        },
        taken_at=rows.taken_at,
        questions={row.event_id: (row.key, row.question) for row in rows.outbox if row.event_id},
        measure=measuring(town.frames),
    )
    said = checks.by_person(rows, heard)
    for talker in town.talkers:
        sent = sorted(talker.sent, key=lambda message: place[message.event_id])
        person_id = talker.person.user_id
        yield from checks.said_by_dialogue(person_id, known, sent, said[person_id])


def count(
    town: Town, rows: Rows, heard: Sequence[Heard], proxy: ProxyProcess
) -> dict[str, int | str]:
    """What there was, in numbers."""
    ordeal, sent = town.ordeal, town.sent
    conversations = {row.key for row in rows.outbox}
    counts: dict[str, int | str] = {
        "people": ordeal.people,
        "messages sent": sum(message.frame is None for message in sent),
        "of them edits": sum(message.corrects is not None for message in sent),
        "of them replies": sum(message.replies_to is not None for message in sent),
        "of them not for the bot": sum(not message.addressed for message in sent),
        "frames shared": sum(message.frame is not None for message in sent),
        "conversations": len(conversations),
        "messages of the bot": len(heard),
        "of them pictures": sum(row.has_picture for row in rows.outbox),
        "of them urgent": sum(row.urgent for row in rows.outbox),
        "SIGKILLs of the bot": ordeal.kills,
        "restarts of the homeserver": ordeal.restarts,
    }
    faults = {f"requests {fault.value}": number for fault, number in proxy.counts().items()}
    assert sum(faults.values()) > faults[f"requests {Fault.PASSED.value}"], "no fault at all"
    return counts | faults


def main() -> int:
    """Run the long form."""
    seed = int(sys.argv[1]) if len(sys.argv) > 1 else random.SystemRandom().randrange(2**32)
    sys.stdout.write(f"seed {seed}\n")
    sys.stdout.flush()
    with tempfile.TemporaryDirectory(prefix="linn-torture-") as name:
        folder = Path(os.environ.get("KEEP_TORTURE") or name)
        folder.mkdir(parents=True, exist_ok=True)
        outcome = asyncio.run(torture(LONG, seed, folder))
    sys.stdout.write(outcome.text() + "\n")
    return 1 if outcome.wrong else 0


if __name__ == "__main__":
    sys.exit(main())
