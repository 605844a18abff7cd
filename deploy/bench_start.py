"""Times a start with 10,000 stored conversations against one with an empty store."""

from __future__ import annotations

import asyncio
import statistics
import sys
import tempfile
import time
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any, Final

from sqlalchemy import Connection, Table, insert

from bot.dialogue.context import Context
from bot.dialogue.engine import handle
from bot.dialogue.events import Origin, TextReceived
from bot.matrix.session import Account
from bot.store.database import Database
from bot.store.rows import Part
from bot.store.store import Store
from bot.store.tables import CONVERSATIONS, HANDLED, OUTBOX, PEOPLE, PLACES, ROOMS, TIMERS
from bot.trial.homeserver import Homeserver
from deploy.bench_pair import PASSWORD, Line, process

CONVERSATIONS_STORED: Final = 10_000
ROUNDS: Final = 5
#: What each person has told: a walk as far as its base settings.
WORDS: Final = ("start", "12 m tall, 18 m away, rock at 1.5 m", "full frame, 24-70, tripod", "1")
BOTS: Final = ("empty", "full")
AIM: Final = 1.5


def stored_rows(now: datetime) -> Iterator[tuple[Table, dict[str, Any]]]:
    """The rows of all conversations, alike but for their ids, as real ones leave them."""
    bodies = _bodies(now)
    for number in range(CONVERSATIONS_STORED):
        room_id, person_id = f"!room{number}:mill.example", f"@person{number}:mill.example"
        key = {"room_id": room_id, "person_id": person_id, "thread_key": ""}
        kept = {"version": len(WORDS), "changed_at": now.timestamp()}
        yield CONVERSATIONS, key | kept | {"body": bodies[Part.CONVERSATION]}
        yield PEOPLE, {"person_id": person_id, "body": bodies[Part.PERSON]} | kept
        yield PLACES, {"person_id": person_id, "body": bodies[Part.PLACE]} | kept
        room = {"room_id": room_id, "person_id": person_id, "body": bodies[Part.ROOM]}
        yield ROOMS, room | kept
        for event in range(len(WORDS)):
            name = f"{number}-{event}"
            yield HANDLED, {"event_id": f"$event{name}", "taken_at": now.timestamp()}
            yield OUTBOX, key | _sent(name, now)
        if number % 10 == 0:  # one in ten has a reminder to come
            yield TIMERS, key | _reminder(number, room_id, person_id, now)


def _bodies(now: datetime) -> dict[Part, str]:
    origin = _origin("!room:mill.example", "@person:mill.example", now)
    context = Context.fresh(origin)
    for words in WORDS:
        context, _ = handle(context, TextReceived(origin=origin, text=words), now)
    parts = {part: getattr(context, part.value) for part in Part}
    return {part: value.model_dump_json() if value else "{}" for part, value in parts.items()}


def _origin(room_id: str, person_id: str, now: datetime) -> Origin:
    return Origin(event_id="$e", room_id=room_id, person_id=person_id, direct=True, sent_at=now)


def _sent(name: str, now: datetime) -> dict[str, Any]:
    return {
        "row_id": f"row{name}",
        "urgent": False,
        "kept": True,
        "scope": "DEVICE",
        "created_at": now.timestamp(),
        "content": "",
        "sent_event_id": f"$sent{name}",
        "question": "top",
    }


def _reminder(number: int, room_id: str, person_id: str, now: datetime) -> dict[str, Any]:
    return {
        "timer_id": f"timer{number}",
        "name": "turn back",
        "due": (now + timedelta(days=1)).timestamp(),
        "origin": _origin(room_id, person_id, now).model_dump_json(),
    }


async def fill(folder: Path) -> None:
    """Put the conversations into the database of a bot that is stopped."""
    database = Database(f"sqlite:///{folder / 'linn.db'}")
    store = Store(database)
    await store.open()
    by_table: dict[Table, list[dict[str, Any]]] = {}
    for table, row in stored_rows(datetime.now(UTC)):
        by_table.setdefault(table, []).append(row)

    def write(connection: Connection) -> None:
        for table, rows in by_table.items():
            connection.execute(insert(table), rows)

    await database.write(write)
    await store.close()


class Bench:
    """Two bots that come and go, each with a person who talks to it.

    Args:
        server: the homeserver.
        folder: where the bots keep their data.
    """

    def __init__(self, server: Homeserver, folder: Path) -> None:
        self._server = server
        self._folder = folder
        self._lines: dict[str, Line] = {}
        self._settings: dict[str, dict[str, str]] = {}

    async def meet(self, bot: str) -> None:
        """A bot's first start: it signs in, and meets its person."""
        bot_id = self._server.register(bot, PASSWORD)
        person = self._server.register(f"person-{bot}", PASSWORD)
        own = self._folder / f"person-{bot}"
        own.mkdir()
        self._settings[bot] = {
            "LINN_HOMESERVER": self._server.url,
            "LINN_USER": bot_id,
            "LINN_PASSWORD": PASSWORD,
            "LINN_DATA_DIR": str(self._folder / bot),
            "LINN_ALLOWED": f"*:{self._server.server_name}",
        }
        account = Account(self._server.url, person, own, password=PASSWORD)
        self._lines[bot] = Line(account, bot_id)
        with self._running(bot):
            await self._lines[bot].start()
            await self._lines[bot].answer_s("units")

    def _running(self, bot: str) -> Any:
        log = self._folder / f"{bot}.log"
        return process(["-m", "bot", "serve"], self._settings[bot], log)

    async def start_s(self, bot: str) -> float:
        """Time from a bot's start until it has answered what was said while it was away [s]."""
        asking: asyncio.Task[float] = asyncio.create_task(self._lines[bot].answer_s("units"))
        await asyncio.sleep(0.5)  # the message is on the homeserver
        started = time.perf_counter()
        with self._running(bot):
            await asking
            return time.perf_counter() - started

    async def measure(self) -> dict[str, list[float]]:
        """Start times of each bot, one start of the one, one of the other [s]."""
        for bot in BOTS:
            await self.meet(bot)
        await fill(self._folder / "full")
        times: dict[str, list[float]] = {bot: [] for bot in BOTS}
        for number in range(1 + ROUNDS):
            for bot in BOTS:
                taken = await self.start_s(bot)
                if number:  # the first fills the file cache
                    times[bot].append(taken)
        for line in self._lines.values():
            await line.person.stop()
        return times


def table(times: dict[str, list[float]]) -> str:
    """The figures as text, with the ratio that is aimed at."""
    medians = {bot: statistics.median(taken) for bot, taken in times.items()}
    rows = ["start to first answer    median    slowest"]
    rows += [f"{bot:20} {medians[bot]:8.2f} s {max(taken):8.2f} s" for bot, taken in times.items()]
    ratio = medians["full"] / medians["empty"]
    stored = f"start with {CONVERSATIONS_STORED:,} conversations over an empty store"
    return "\n".join((*rows, f"{stored}: {ratio:.2f} (aim: at most {AIM})"))


def main() -> int:
    """Measure beside a throwaway homeserver and print the table."""
    with tempfile.TemporaryDirectory(prefix="linn-bench-") as name:
        folder = Path(name)
        with Homeserver(folder / "homeserver", in_memory=True) as server:
            try:
                print(table(asyncio.run(Bench(server, folder).measure())))
            except TimeoutError:
                print("no answer in time; the bot's log ends with:", file=sys.stderr)
                print((folder / "full.log").read_text()[-2000:], file=sys.stderr)
                return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
