"""One message tells how far measuring has come; it is replaced, and taken back at the end."""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Sequence

import pytest
import sqlalchemy as sa

from bot.dialogue.actions import MeasureOptions
from bot.dialogue.events import MeasuredKind
from bot.dialogue.texts.progress import progress_line
from bot.runtime import progress as progress_module
from bot.runtime.outcomes import Outcome
from bot.runtime.ports import Outgoing
from bot.store.database import Database
from bot.store.store import Store
from bot.store.tables import JOBS, OUTBOX, PROGRESS
from tests.runtime.fakes import MOSS, FakeChecker, FakeTransport, World, frame, text


@pytest.fixture(autouse=True)
def _soon(monkeypatch: pytest.MonkeyPatch) -> None:
    """It is told after a tenth of a second, and replaced as often."""
    for name in ("AFTER_S", "EVERY_S", "_ON_ITS_WAY_S"):
        monkeypatch.setattr(progress_module, name, 0.1)


class Steps(FakeChecker):
    """Measures a frame each time it is let go on."""

    def __init__(self, at_once: int = 1) -> None:
        super().__init__(at_once=at_once)
        self.free = asyncio.Semaphore(0)
        self.begun = asyncio.Semaphore(0)

    def go_on(self, frames: int = 1) -> None:
        """So many frames more."""
        for _ in range(frames):
            self.free.release()

    async def check(self, data: bytes, options: MeasureOptions | None = None) -> Outcome:
        """Wait, then give the outcome."""
        self.begun.release()
        await self.free.acquire()
        return await super().check(data, options)

    async def measure(
        self,
        what: MeasuredKind,
        files: Sequence[bytes],
        options: MeasureOptions,
        tell: Callable[[int], None] = lambda _: None,
    ) -> Outcome:
        """Wait before each of them, and before they are put together."""
        for number in range(len(files)):
            await self.free.acquire()
            tell(number + 1)
        await self.free.acquire()
        return await super().measure(what, files, options)


def told(world: World) -> list[Outgoing]:
    """All messages of progress, in order."""
    prefix = progress_module.PREFIX
    return [sent for _, sent in world.server.sent if sent.row_id.startswith(prefix)]


async def until(true: Callable[[], bool]) -> None:
    """Wait for something that rings no bell."""
    async with asyncio.timeout(10):
        while not true():  # noqa: ASYNC110  what is watched rings no bell
            await asyncio.sleep(0.005)


async def left(world: World) -> list[str]:
    """The messages of progress that the store knows to stand."""
    database = Database(world.url)
    ids = await database.read(
        lambda connection: connection.execute(sa.select(PROGRESS.c.row_id)).scalars().all()
    )
    await database.close()
    return list(ids)


async def test_one_message_is_replaced_and_taken_back(world: World) -> None:
    """Three frames: "1 of 3", then "2 of 3", then nothing of it stands in the room."""
    checker = Steps()
    async with world.running(checker=checker) as runtime:
        await runtime.take_in([frame() for _ in range(3)], None)
        await until(lambda: len(told(world)) == 1)
        checker.go_on()
        await until(lambda: len(told(world)) == 2)
        checker.go_on(2)
        await runtime.drain()
    first, second = told(world)
    assert (first.body, first.notice, first.replaces) == (progress_line(1, 3), True, None)
    original = next(event_id for event_id, sent in world.server.sent if sent is first)
    assert (second.body, second.replaces) == (progress_line(2, 3), original)
    assert world.server.redacted == [original]
    assert world.server.bodies.count("checked: not_a_picture") == 3
    assert await left(world) == []


async def test_quick_work_is_not_told_of(world: World, monkeypatch: pytest.MonkeyPatch) -> None:
    """What is done before anybody wonders leaves nothing in the room, nor in the store."""
    monkeypatch.setattr(progress_module, "AFTER_S", 10.0)  # quick on any machine
    await world.says(frame(), frame())
    assert told(world) == []
    assert world.server.redacted == []
    assert await left(world) == []


async def test_a_single_frame_that_takes_long_is_told_of(world: World) -> None:
    """Without numbers, and without other words later."""
    checker = Steps()
    async with world.running(checker=checker) as runtime:
        await runtime.take_in([frame()], None)
        await until(lambda: len(told(world)) == 1)
        await asyncio.sleep(0.25)
        checker.go_on()
        await runtime.drain()
    assert [sent.body for sent in told(world)] == [progress_line(1, 1)]
    assert len(world.server.redacted) == 1


async def test_frames_of_a_comparison_are_counted_as_they_are_read(world: World) -> None:
    """A job of several frames tells of each; while they are put together it stays at the last."""
    world.server.files |= {"a": b"a", "b": b"b"}
    checker = Steps()
    async with world.running(checker=checker) as runtime:
        await runtime.take_in([text("compare a b")], None)
        await until(lambda: len(told(world)) == 1)
        checker.go_on(2)
        await until(lambda: len(told(world)) == 2)
        checker.go_on()
        await runtime.drain()
    assert [sent.body for sent in told(world)] == [progress_line(1, 2), progress_line(2, 2)]


async def test_frames_that_come_meanwhile_are_counted_too(world: World) -> None:
    """More frames in the same conversation: the same message, with the larger number."""
    checker = Steps()
    async with world.running(checker=checker) as runtime:
        await runtime.take_in([frame()], None)
        await until(lambda: len(told(world)) == 1)
        await runtime.take_in([frame(), frame()], None)
        await until(lambda: len(told(world)) == 2)
        checker.go_on(3)
        await runtime.drain()
    assert [sent.body for sent in told(world)] == [progress_line(1, 1), progress_line(1, 3)]
    assert len(world.server.redacted) == 1


async def test_each_conversation_has_its_own(world: World) -> None:
    """In a group it stands in the thread, calls nobody, and counts the own frames alone."""
    checker = Steps()
    shared = frame(direct=False)
    async with world.running(checker=checker) as runtime:
        await runtime.take_in([shared, frame(person_id=MOSS, room_id="!pool:mill.example")], None)
        await until(lambda: len(told(world)) == 2)
        checker.go_on(2)
        await runtime.drain()
    assert {sent.body for sent in told(world)} == {progress_line(1, 1)}
    in_group = next(sent for sent in told(world) if sent.thread_id)
    assert (in_group.thread_id, in_group.mentions) == (shared.origin.event_id, ())
    assert len(world.server.redacted) == 2


async def test_after_a_stop_the_same_message_goes_on(world: World) -> None:
    """No second message; the numbers go on where they were; at the end it is taken back."""
    checker = Steps()
    async with world.running(checker=checker) as runtime:
        await runtime.take_in([frame() for _ in range(3)], None)
        await until(lambda: len(told(world)) == 1)
        checker.go_on()
        await until(lambda: len(told(world)) == 2)
    checker = Steps()
    async with world.running(checker=checker) as runtime:
        await until(lambda: checker.begun._value > 0)
        checker.go_on()
        await until(lambda: len(told(world)) == 3)
        checker.go_on()
        await runtime.drain()
    assert {sent.body for sent in told(world)} == {progress_line(place, 3) for place in (1, 2, 3)}
    assert [sent.replaces is None for sent in told(world)].count(True) == 1
    assert len(world.server.redacted) == 1
    assert await left(world) == []


async def test_none_is_left_hanging_by_a_stop_after_the_last_frame(world: World) -> None:
    """The work ended, and the process before the message was taken back: the next start does it."""
    async with world.running(checker=Steps()) as runtime:
        await runtime.take_in([frame()], None)
        await until(lambda: len(told(world)) == 1)
    database = Database(world.url)
    await database.write(lambda connection: connection.execute(sa.delete(JOBS)).close())
    await database.close()
    async with world.running() as runtime:
        await runtime.drain()
    assert len(told(world)) == 1
    assert len(world.server.redacted) == 1
    assert await left(world) == []


async def test_other_words_wait_until_the_last_ones_are_there(world: World) -> None:
    """On a slow line replacements do not pile up: the next one tells what is then true."""
    checker = Steps()
    transport = FakeTransport(world.server)
    async with world.running(checker=checker, transport=transport) as runtime:
        await runtime.take_in([frame() for _ in range(4)], None)
        await until(lambda: len(told(world)) == 1)
        transport.delay_s = 0.4
        for _ in range(3):
            checker.go_on()
            await asyncio.sleep(0.12)
        transport.delay_s = 0.0
        await until(lambda: len(told(world)) >= 2)
        checker.go_on()
        await runtime.drain()
    assert len(told(world)) <= 3
    assert len(world.server.redacted) == 1


async def test_a_message_that_was_not_sent_yet_is_not_sent_any_more(world: World) -> None:
    """The homeserver is away for as long as the work takes: nobody hears of it afterwards."""
    checker = Steps()

    class Away(FakeTransport):
        async def send(self, outgoing: Outgoing) -> str:
            if outgoing.row_id.startswith(progress_module.PREFIX):
                raise OSError
            return await super().send(outgoing)

    async with world.running(checker=checker, transport=Away(world.server)) as runtime:
        await runtime.take_in([frame()], None)
        await until(lambda: checker.begun._value > 0)
        await asyncio.sleep(0.3)
        checker.go_on()
        async with asyncio.timeout(10):
            await runtime.drain()
    assert told(world) == []
    assert await left(world) == []


async def test_stopping_takes_the_message_back(world: World) -> None:
    """Work that is ended has nothing left to tell of."""
    checker = Steps()
    async with world.running(checker=checker) as runtime:
        await runtime.take_in([frame(), frame()], None)
        await until(lambda: len(told(world)) == 1)
        await runtime.take_in([text("stop")], None)
        async with asyncio.timeout(10):
            await runtime.drain()
    assert len(world.server.redacted) == 1
    assert checker.checked == []
    assert await left(world) == []


async def test_forget_me_takes_back_all_that_was_told(world: World) -> None:
    """The message that stands goes, and so do the replacements of earlier ones."""
    checker = Steps()
    async with world.running(checker=checker) as runtime:
        await runtime.take_in([frame(), frame()], None)
        await until(lambda: len(told(world)) == 1)
        checker.go_on()
        await until(lambda: len(told(world)) == 2)
        checker.go_on()
        await runtime.drain()
        await runtime.take_in([text("forget me")], None)
        await runtime.drain()
    events = {event_id for event_id, sent in world.server.sent if sent in told(world)}
    assert events <= set(world.server.redacted)
    database = Database(world.url)
    rows = await database.read(
        lambda connection: connection.execute(sa.select(OUTBOX.c.row_id)).scalars().all()
    )
    await database.close()
    assert [row for row in rows if row.startswith(progress_module.PREFIX)] == []


async def test_a_store_that_fails_is_tried_again(
    world: World, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Trouble with the database delays the message, and ends nothing."""
    monkeypatch.setattr(progress_module, "_TROUBLE_S", 0.05)
    failures = 0
    show = Store.show_progress

    async def failing(self: Store, *rows: object) -> object:
        nonlocal failures
        failures += 1
        if failures < 3:
            raise sa.exc.OperationalError("", {}, Exception())
        return await show(self, *rows)  # type: ignore[arg-type]

    monkeypatch.setattr(Store, "show_progress", failing)
    checker = Steps()
    async with world.running(checker=checker) as runtime:
        await runtime.take_in([frame()], None)
        await until(lambda: len(told(world)) == 1)
        checker.go_on()
        await runtime.drain()
    assert failures == 3
    assert len(world.server.redacted) == 1


@pytest.mark.parametrize(
    ("number", "total", "says"),
    [
        (1, 1, "Measuring your frame… ‘cancel’ ends it."),
        (3, 12, "Measuring your frames, 3 of 12… ‘cancel’ ends it."),
    ],
)
def test_the_words(number: int, total: int, says: str) -> None:
    """One frame has no number; of several, the one under way is named."""
    assert progress_line(number, total) == says
