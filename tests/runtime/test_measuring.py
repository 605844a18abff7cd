"""Frames measured together: fetched again, told in one event, shown in order, or ended."""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Sequence

import pytest
import sqlalchemy as sa

from bot.dialogue.actions import (
    FrameRef,
    MeasureFrames,
    MeasureOptions,
)
from bot.dialogue.events import Event, FramesMeasured, MeasuredKind, MediaRef, Withdrawn
from bot.runtime import jobs as jobs_module
from bot.runtime.orders import FrameLimits
from bot.runtime.outcomes import Outcome
from bot.runtime.ports import SendLaterError
from bot.runtime.workers import Dialogue
from bot.store.database import Database
from bot.store.tables import JOBS, PICTURE_FRAMES, PICTURES
from tests.runtime import fakes
from tests.runtime.fakes import MOSS, FakeChecker, World, frame, origin, text


def asked(*names: str, **where: object) -> Event:
    """A wish to compare frames."""
    return text(f"compare {' '.join(names)}", **where)


@pytest.fixture(autouse=True)
def _no_long_pauses(monkeypatch: pytest.MonkeyPatch) -> None:
    """Pauses are waited for in other tests."""
    monkeypatch.setattr(jobs_module, "pause_s", lambda _: 0.001)


@pytest.fixture
def files(world: World) -> dict[str, bytes]:
    """Three shared files."""
    world.server.files |= {name: name.encode() for name in ("a", "b", "c")}
    return world.server.files


class Slow(FakeChecker):
    """Measures until it is let go on."""

    def __init__(self) -> None:
        super().__init__()
        self.begun = asyncio.Event()
        self.release = asyncio.Event()
        self.over = asyncio.Event()
        self.ended = 0

    async def _wait(self) -> None:
        self.begun.set()
        try:
            await self.release.wait()
        except asyncio.CancelledError:
            self.ended += 1
            self.over.set()
            raise

    async def check(self, data: bytes, options: MeasureOptions | None = None) -> Outcome:
        """Wait, then give the outcome."""
        await self._wait()
        return await super().check(data, options)

    async def measure(
        self,
        what: MeasuredKind,
        files: Sequence[bytes],
        options: MeasureOptions,
        tell: Callable[[int], None] = lambda _: None,
    ) -> Outcome:
        """Wait, then show them."""
        await self._wait()
        return await super().measure(what, files, options, tell)


async def rows(world: World, *columns: sa.Column[str]) -> list[tuple[object, ...]]:
    """What stands in the columns of a table."""
    database = Database(world.url)
    found = await database.read(
        lambda connection: connection.execute(sa.select(*columns).order_by(*columns)).all()
    )
    await database.close()
    return [tuple(row) for row in found]


async def test_frames_are_fetched_measured_and_shown_in_order(
    world: World, files: dict[str, bytes]
) -> None:
    """One event tells of all of them; its pictures come as messages in their order."""
    checker = FakeChecker()
    said = await world.says(asked("a", "b", "c"), checker=checker)
    assert said == ["compare 3", "water 0", "water 1", "water 2", "whole None"]
    assert checker.measured == [("compare", [files["a"], files["b"], files["c"]], MeasureOptions())]
    assert [sent.picture is not None for _, sent in world.server.sent] == [False, *[True] * 4]


async def test_a_picture_belongs_to_all_frames_that_it_shows(
    world: World, files: dict[str, bytes]
) -> None:
    """One that shows a single frame is that frame's; one that shows several is of each of them."""
    await world.says(asked("a", "b"))
    firsts = [first for (first,) in await rows(world, PICTURES.c.frame_event_id)]
    assert sorted(map(str, firsts)) == ["$a", "$a", "$b"]
    assert await rows(world, PICTURE_FRAMES.c.frame_event_id) == [("$b",)]
    assert files


async def test_gone_files_are_named_and_the_others_measured(
    world: World, files: dict[str, bytes]
) -> None:
    """A file that the homeserver no longer has is left out, by its frame."""
    del files["b"]
    checker = FakeChecker()
    said = await world.says(asked("a", "b", "c"), checker=checker)
    assert said[0] == "compare 2, without $b: gone"
    assert checker.measured[0][1] == [b"a", b"c"]


async def test_with_too_few_files_nothing_is_measured(
    world: World, files: dict[str, bytes]
) -> None:
    """A comparison needs two: what was wrong with the others is said."""
    del files["a"], files["c"]
    checker = FakeChecker()
    said = await world.says(asked("a", "b", "c"), checker=checker)
    assert said == ["compare 0, without $a: gone, without $c: gone, gone"]
    assert checker.measured == []


async def test_all_files_together_have_a_bound(
    world: World, files: dict[str, bytes], monkeypatch: pytest.MonkeyPatch
) -> None:
    """They are in memory at the same time, so what does not fit is left out."""
    monkeypatch.setattr("bot.runtime.job_kinds.FrameLimits", lambda: FrameLimits(together_bytes=4))
    files["b"] = b"more than fits"
    said = await world.says(asked("a", "b", "c"))
    assert said[0] == "compare 2, without $b: too_many_bytes"


async def test_a_homeserver_that_is_away_delays_and_loses_nothing(
    world: World, files: dict[str, bytes]
) -> None:
    """The download of one of several files fails twice: all of it is done later."""
    failures = 0

    def hook(step: str) -> None:
        nonlocal failures
        if step == "download" and failures < 2:
            failures += 1
            raise SendLaterError(0.001)

    assert (await world.says(asked("a", "b"), hook=hook))[0] == "compare 2"
    assert files


async def test_work_that_breaks_is_given_up_and_said(world: World, files: dict[str, bytes]) -> None:
    """After three bugs in a row the person hears that it did not work."""

    def hook(step: str) -> None:
        if step == "measure":
            raise ValueError("bug")

    assert await world.says(asked("a", "b"), hook=hook) == ["compare 0, crashed"]
    assert files


async def test_measuring_is_ended_by_a_word(world: World, files: dict[str, bytes]) -> None:
    """What runs is ended, what waits does not begin, no row stays, and nothing more is said."""
    checker = Slow()
    async with world.running(checker=checker) as runtime:
        await runtime.take_in([asked("a", "b"), asked("b", "c"), frame()], None)
        await checker.begun.wait()
        await runtime.take_in([text("stop")], None)
        async with asyncio.timeout(10):
            await runtime.drain()
    assert (checker.ended, checker.measured, checker.checked) == (1, [], [])
    assert world.server.bodies == ["measuring"]
    assert await rows(world, JOBS.c.job_id) == []
    assert files


async def test_others_go_on_when_one_stops(world: World, files: dict[str, bytes]) -> None:
    """Ending is for the own conversation alone."""
    checker = Slow()
    async with world.running(checker=checker) as runtime:
        await runtime.take_in([asked("a", "b")], None)
        await checker.begun.wait()
        await runtime.take_in([text("stop", person_id=MOSS, room_id="!pool:mill.example")], None)
        checker.release.set()
        async with asyncio.timeout(10):
            await runtime.drain()
    assert world.server.bodies[0] == "compare 2"
    assert files


async def test_a_withdrawn_frame_ends_what_measures_it(
    world: World, files: dict[str, bytes]
) -> None:
    """The comparison that has the frame ends; another of the same person goes on."""
    checker = Slow()
    async with world.running(checker=checker) as runtime:
        await runtime.take_in([asked("a", "b"), asked("a", "c")], None)
        await checker.begun.wait()
        await runtime.take_in([Withdrawn(origin=origin(), event_id="$b")], None)
        await checker.over.wait()
        checker.release.set()
        async with asyncio.timeout(10):
            await runtime.drain()
    assert [files for _, files, _ in checker.measured] == [[b"a", b"c"]]
    assert world.server.bodies[0] == "compare 2"
    assert files


async def test_a_withdrawn_frame_takes_all_pictures_along_that_show_it(
    world: World, files: dict[str, bytes]
) -> None:
    """Also those that show others too; pictures of the other frames alone stay."""
    await world.says(asked("a", "b"))
    await world.says(Withdrawn(origin=origin(), event_id="$b"))
    assert len(list(world.pictures.iterdir())) == 1
    assert await rows(world, PICTURES.c.frame_event_id) == [("$a",)]
    assert await rows(world, PICTURE_FRAMES.c.name) == []
    gone = [sent.body for event_id, sent in world.server.sent if event_id in world.server.redacted]
    assert gone == ["water 1", "whole None"]
    assert files


async def test_forget_me_ends_what_is_being_measured(world: World, files: dict[str, bytes]) -> None:
    """No process works on for somebody who is forgotten, and no file of theirs comes to be."""
    checker = Slow()
    async with world.running(checker=checker) as runtime:
        await runtime.take_in([asked("a", "b")], None)
        await checker.begun.wait()
        await runtime.take_in([text("forget me")], None)
        async with asyncio.timeout(10):
            await runtime.drain()
    assert checker.ended == 1
    assert world.server.bodies[-1] == "all deleted"
    assert list(world.pictures.iterdir()) == []
    assert files


async def test_a_burst_of_one_person_holds_up_no_other(world: World) -> None:
    """Thirty frames of one person, then one of another: it is the second to be measured next."""
    order: list[str] = []
    under_way = asyncio.Event()

    class Noting(FakeChecker):
        async def check(self, data: bytes, options: MeasureOptions | None = None) -> Outcome:
            order.append(data.decode())
            if len(order) == 3:
                under_way.set()
            await asyncio.sleep(0.01)
            return await super().check(data, options)

    world.server.files |= {"fern": b"fern", "moss": b"moss"}
    async with world.running(checker=Noting()) as runtime:
        await runtime.take_in([frame("fern") for _ in range(30)], None)
        await under_way.wait()
        before = len(order)
        await runtime.take_in([frame("moss", person_id=MOSS, room_id="!pool:mill.example")], None)
        async with asyncio.timeout(20):
            await runtime.drain()
    assert order.index("moss") - before <= 2  # the one under way, and at most one more
    assert len(order) == 31


async def test_two_bursts_are_served_in_turn(world: World) -> None:
    """Two people with six frames each: never two of one while the other waits."""
    order: list[str] = []

    class Noting(FakeChecker):
        async def check(self, data: bytes, options: MeasureOptions | None = None) -> Outcome:
            order.append(data.decode())
            await asyncio.sleep(0.02)
            return await super().check(data, options)

    world.server.files |= {"fern": b"fern", "moss": b"moss"}
    elsewhere = {"person_id": MOSS, "room_id": "!pool:mill.example"}
    shared = [frame("fern") for _ in range(6)] + [frame("moss", **elsewhere) for _ in range(6)]
    await world.says(*shared, checker=Noting())
    pairs = [tuple(sorted(order[place : place + 2])) for place in range(2, 10, 2)]
    assert set(pairs) == {("fern", "moss")}


async def test_a_comparison_in_a_group_stays_in_its_thread(
    world: World, files: dict[str, bytes]
) -> None:
    """The result stands where it was asked for, and names no single frame."""
    question = asked("a", "b", direct=False)
    await world.says(question)
    root = question.origin.event_id
    assert {(sent.thread_id, sent.reply_to) for _, sent in world.server.sent} == {(root, root)}
    assert files


async def test_a_frame_measured_again_is_replied_to(world: World) -> None:
    """The result of a single frame names it, since others may have come meanwhile."""
    again = MeasureFrames(
        what="recheck", frames=(FrameRef(event_id="$a", media=MediaRef(address="frame")),)
    )

    def handle(context: object, event: Event, now: object) -> object:
        if isinstance(event, FramesMeasured):
            return fakes.handle(context, event, now)  # type: ignore[arg-type]
        return context, (again,)

    dialogue = Dialogue(handle, fakes.failure)  # type: ignore[arg-type]
    await world.says(text("again"), dialogue=dialogue)
    assert {sent.reply_to for _, sent in world.server.sent} == {"$a"}


@pytest.mark.parametrize(
    ("what", "number"), [("compare", 1), ("compare", 7), ("average", 13), ("grid", 2)]
)
def test_a_wish_names_as_many_frames_as_it_takes(what: MeasuredKind, number: int) -> None:
    """Fewer or more are refused where they are asked for."""
    frames = tuple(
        FrameRef(event_id=f"${place}", media=MediaRef(address="x")) for place in range(number)
    )
    with pytest.raises(ValueError, match=f"{what}: "):
        MeasureFrames(what=what, frames=frames)
