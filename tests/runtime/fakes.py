"""A homeserver in memory, a frame checker and a small dialogue, for the tests of the runtime."""

from __future__ import annotations

import asyncio
import io
from collections.abc import AsyncIterator, Callable, Mapping, Sequence
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime
from itertools import count
from pathlib import Path

from PIL import Image
from sqlalchemy import Connection

from bot.dialogue.actions import (
    Action,
    CancelMeasuring,
    CancelTimer,
    CardLine,
    CheckFrame,
    DrawCard,
    DropFrame,
    ForgetPerson,
    FrameRef,
    MeasureFrames,
    MeasureOptions,
    Say,
    SetTimer,
)
from bot.dialogue.context import Context
from bot.dialogue.events import (
    Event,
    FrameChecked,
    FrameReceived,
    FramesMeasured,
    MeasuredKind,
    MediaRef,
    Origin,
    TextReceived,
    TimerFired,
    Withdrawn,
)
from bot.pauses import Wake
from bot.runtime.granting import Limits
from bot.runtime.job_kinds import Surroundings
from bot.runtime.orders import Shown
from bot.runtime.outcomes import Outcome, Picture
from bot.runtime.ports import FrameChecker, MediaGoneError, Outgoing, UploadedMedia
from bot.runtime.progress import PREFIX
from bot.runtime.runtime import Runtime, utc_now
from bot.runtime.workers import Dialogue
from bot.store.database import Database
from bot.store.engines import Answer, Transaction
from bot.store.pictures import PictureFiles
from bot.store.store import Store
from core.errors import FrameFault

ROOM = "!gorge:mill.example"
FERN = "@fern:mill.example"
MOSS = "@moss:mill.example"
_numbers = count(1)


def png(side: int = 8) -> bytes:
    """A small grey picture."""
    file = io.BytesIO()
    Image.new("RGB", (side, side), (90, 90, 90)).save(file, "PNG")
    return file.getvalue()


def origin(**fields: object) -> Origin:
    """Where an event comes from: a direct room, unless told."""
    usual: dict[str, object] = {
        "event_id": f"$event{next(_numbers)}",
        "room_id": ROOM,
        "person_id": FERN,
        "sent_at": datetime.now(UTC),
    }
    return Origin.model_validate(usual | fields)


def text(words: str, **where: object) -> TextReceived:
    """A text message."""
    return TextReceived(origin=origin(**where), text=words)


def frame(name: str = "frame", **where: object) -> FrameReceived:
    """A shared frame."""
    return FrameReceived(origin=origin(**where), media=MediaRef(address=name))


#: Called at every request and every transaction, before and after it works, with its name.
Hook = Callable[[str], None]


class HookedDatabase(Database):
    """A database that can be made to fail before, inside and after each transaction."""

    def __init__(self, url: str, hook: Hook) -> None:
        super().__init__(url)
        self.hook = hook

    async def write(self, change: Transaction[Answer]) -> Answer:
        """A transaction, with the hook around it and before its end."""

        def hooked(connection: Connection) -> Answer:
            answer = change(connection)
            self.hook("before commit")
            return answer

        self.hook("before write")
        answer = await super().write(hooked)
        self.hook("after write")
        return answer


@dataclass
class FakeServer:
    """A homeserver: it outlives the runtimes that talk to it."""

    sent: list[tuple[str, Outgoing]] = field(default_factory=list)
    transactions: dict[str, str] = field(default_factory=dict)
    uploads: dict[str, bytes] = field(default_factory=dict)
    files: dict[str, bytes] = field(default_factory=lambda: {"frame": b"a frame"})
    redacted: list[str] = field(default_factory=list)
    marks: list[str] = field(default_factory=list)
    forgotten: list[str] = field(default_factory=list)
    people: dict[str, dict[str, str]] = field(default_factory=dict)
    bell: Wake = field(default_factory=Wake)  # rings at each message

    @property
    def bodies(self) -> list[str]:
        """What was said, in order; how far measuring had come is not part of it."""
        said = (outgoing for _, outgoing in self.sent)
        return [out.body for out in said if not out.row_id.startswith(PREFIX)]


class FakeTransport:
    """A way to the fake homeserver that can be made to fail.

    Args:
        server: the homeserver.
        hook: called before and after each request's work; what it raises is raised here.
        scope: the device.
    """

    def __init__(
        self, server: FakeServer, hook: Hook = lambda _: None, scope: str = "DEVICE"
    ) -> None:
        self.server = server
        self.hook = hook
        self.scope = scope
        self.at_once = 0
        self.most_at_once = 0
        self.delay_s = 0.0

    async def send(self, outgoing: Outgoing) -> str:
        """Send; the same transaction sends nothing new."""
        self.at_once += 1
        self.most_at_once = max(self.most_at_once, self.at_once)
        try:
            await asyncio.sleep(self.delay_s)
            self.hook("before send")
            known = self.server.transactions.get(outgoing.row_id)
            if known is None:
                known = f"$own{len(self.server.sent)}"
                self.server.transactions[outgoing.row_id] = known
                self.server.sent.append((known, outgoing))
                self.server.bell.ring()
            self.hook("after send")
        finally:
            self.at_once -= 1
        return known

    async def find_sent(self, room_id: str, row_id: str, since: datetime) -> str | None:
        """Look into the room."""
        self.hook("find_sent")
        assert since.tzinfo is not None
        found = (
            event_id
            for event_id, outgoing in self.server.sent
            if (outgoing.row_id, outgoing.room_id) == (row_id, room_id)
        )
        return next(found, None)

    async def upload(self, data: bytes, mime: str, encrypt_for_room: str) -> UploadedMedia:
        """Keep a file."""
        assert mime.startswith(("image/", "application/json"))
        self.hook("before upload")
        address = f"mxc://mill.example/{len(self.server.uploads)}"
        self.server.uploads[address] = data
        self.hook("after upload")
        return UploadedMedia(address, {"key": encrypt_for_room})

    async def download(self, media: MediaRef, max_bytes: int) -> bytes:
        """Fetch a file."""
        self.hook("download")
        await asyncio.sleep(0)
        if media.address not in self.server.files:
            raise MediaGoneError
        assert max_bytes > 0
        return self.server.files[media.address]

    async def redact(self, room_id: str, event_id: str, txn_id: str) -> None:
        """Take an event out of its room."""
        self.hook("before redact")
        assert room_id
        assert txn_id
        if event_id not in self.server.redacted:
            self.server.redacted.append(event_id)
        self.hook("after redact")

    async def forget_person(self, person_id: str, until: datetime) -> None:
        """Note who is forgotten."""
        self.hook("forget_person")
        assert until.tzinfo is not None
        self.server.forgotten.append(person_id)

    async def set_typing(self, room_id: str, on: bool) -> None:
        """Note the mark."""
        self.hook("set_typing")
        self.server.marks.append(f"typing {on} in {room_id}")

    async def mark_read(self, room_id: str, event_id: str) -> None:
        """Note the mark."""
        self.hook("mark_read")
        self.server.marks.append(f"read {event_id} in {room_id}")

    def people(self, room_id: str) -> Mapping[str, str]:
        """Who was put into the room."""
        return self.server.people.get(room_id, {})


class FakeChecker:
    """Finds every file to be no picture, and draws one all the same."""

    def __init__(self, hook: Hook = lambda _: None, at_once: int = 1) -> None:
        self.hook = hook
        self.at_once = at_once
        self.checked: list[bytes] = []
        self.measured: list[tuple[str, Sequence[bytes], MeasureOptions]] = []

    async def check(self, data: bytes, options: MeasureOptions | None = None) -> Outcome:
        """Give the outcome."""
        self.hook("check")
        assert options in (None, MeasureOptions())
        self.checked.append(data)
        await asyncio.sleep(0)
        picture = Picture(Shown("marked"), png())
        fault = FrameFault.NOT_A_PICTURE
        return Outcome(None, fault, {"bytes": float(len(data))}, (picture,))

    async def measure(
        self,
        what: MeasuredKind,
        files: Sequence[bytes],
        options: MeasureOptions,
        tell: Callable[[int], None] = lambda _: None,
    ) -> Outcome:
        """Show each of them, and all of them together."""
        self.hook("measure")
        self.measured.append((what, files, options))
        for number in range(1, len(files) + 1):
            await asyncio.sleep(0)
            tell(number)
        places = tuple(range(len(files)))
        shown = (*(Shown("water", place) for place in places), Shown("whole"))
        return Outcome(pictures=tuple(Picture(one, png()) for one in shown), read=places)


def handle(context: Context, event: Event, now: datetime) -> tuple[Context, tuple[Action, ...]]:
    """A dialogue that counts a conversation's messages and obeys a few words.

    The person's cautions count the messages of the person in all conversations.
    """
    frames = context.conversation.frames
    match event:
        case TextReceived():
            said = _obey(event, len(frames) + 1, now)
        case FrameReceived():
            check = CheckFrame(frame_event_id=event.origin.event_id, media=event.media)
            said = (Say(body="measuring", notice=True), check)
        case FrameChecked():
            fault = event.fault.value if event.fault else "no fault"
            said = (Say(body=f"checked: {fault}", picture=event.picture, alt="grey"),)
        case FramesMeasured():
            said = _shown(event)
        case TimerFired():
            said = (Say(body=f"reminder: {event.name}"),)
        case Withdrawn():
            said = (DropFrame(frame_event_id=event.event_id),)
        case _:
            return context, ()
    conversation = context.conversation.model_copy(
        update={"frames": (*frames, event.origin.event_id)}
    )
    cautions = context.person.cautions | {event.origin.event_id}
    person = context.person.model_copy(update={"cautions": cautions})
    return context.model_copy(update={"conversation": conversation, "person": person}), said


def _shown(event: FramesMeasured) -> tuple[Action, ...]:
    """What was measured: the frames, what was left out, and each picture."""
    words = [f"{event.what} {len(event.frame_event_ids)}"]
    words += [f"without {name}: {fault.value}" for name, fault in event.left_out.items()]
    words += [event.fault.value] if event.fault else []
    pictures = (
        Say(body=f"{shown.shows} {shown.frame}", picture=shown.name) for shown in event.pictures
    )
    return (Say(body=", ".join(words)), *pictures)


def _obey(event: TextReceived, number: int, now: datetime) -> tuple[Action, ...]:
    word, _, rest = event.text.partition(" ")
    line = CardLine(label="time", value=rest)
    files = [FrameRef(event_id=f"${name}", media=MediaRef(address=name)) for name in rest.split()]
    orders: dict[str, tuple[Action, ...]] = {
        "silence": (),
        "urgent": (Say(body=rest, urgent=True),),
        "burst": tuple(Say(body=f"{rest}{part}") for part in range(12)),
        "card": (DrawCard(title="Base", lines=(line,), caption="the card", alt="a card"),),
        "timer": (SetTimer(name=rest, due=now),),
        "later": (SetTimer(name=rest, due=now.replace(year=now.year + 1)),),
        "cancel": (CancelTimer(name=rest),),
        "stop": (CancelMeasuring(),),
        "forget": (Say(body="deleting"), ForgetPerson(farewell=Say(body="all deleted"))),
    }
    if word == "compare":
        return (MeasureFrames(what="compare", frames=tuple(files)),)
    if word == "break":
        raise ValueError(f"can't read {rest!r}")
    return orders.get(word, (Say(body=f"{number}: {event.text}", keys=("echo",)),))


def failure(place: Origin, reference: str) -> Say:
    """The words after something broke."""
    assert place.event_id
    return Say(body=f"broken, reference {reference}")


DIALOGUE = Dialogue(handle, failure)


@dataclass
class World:
    """Everything that outlives a runtime: the database, the pictures, the homeserver."""

    folder: Path
    server: FakeServer = field(default_factory=FakeServer)
    address: str | None = None  # of a database that is no file in the folder

    @property
    def url(self) -> str:
        """Address of the database."""
        return self.address or f"sqlite:///{self.folder / 'linn.db'}"

    @property
    def pictures(self) -> Path:
        """Folder of the pictures."""
        return self.folder / "pictures"

    @asynccontextmanager
    async def running(
        self,
        *,
        hook: Hook = lambda _: None,
        transport: FakeTransport | None = None,
        checker: FrameChecker | None = None,
        dialogue: Dialogue = DIALOGUE,
        clock: Callable[[], datetime] = utc_now,
        workers: int = 1,
        limits: Limits | None = None,
    ) -> AsyncIterator[Runtime]:
        """A started runtime on this world, stopped when the block ends."""
        database = HookedDatabase(self.url, lambda _: None)
        store = Store(database)
        await store.open()
        database.hook = hook
        around = Surroundings(
            store,
            PictureFiles(self.pictures),
            transport or FakeTransport(self.server, hook),
            checker or FakeChecker(hook, workers),
        )
        granted = limits or Limits()
        runtime = Runtime(around, dialogue, limits=granted, clock=clock)
        try:
            await runtime.start()
            yield runtime
        finally:
            try:
                await runtime.stop()
            finally:
                database.hook = lambda _: None
                await store.close()

    async def says(self, *events: Event, **parts: object) -> list[str]:
        """What is said to these events, by a runtime that is started for them."""
        async with self.running(**parts) as runtime:  # type: ignore[arg-type]
            await runtime.take_in(events, None)
            async with asyncio.timeout(20):
                await runtime.drain()
        return self.server.bodies
