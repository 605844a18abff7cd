"""Slow work: frames, cards, taking back; put off, taken up again, given up."""

from __future__ import annotations

import asyncio
from collections.abc import Callable

import pytest
import sqlalchemy as sa

from bot.dialogue.actions import MeasureOptions
from bot.dialogue.events import FrameReceived, MediaRef, Withdrawn
from bot.runtime import jobs as jobs_module
from bot.runtime.outcomes import Outcome
from bot.runtime.ports import (
    MediaBrokenOffError,
    MediaDamagedError,
    MediaGoneError,
    MediaTooLargeError,
    SendLaterError,
    SendRefusedError,
    SendUncertainError,
    UnreachableError,
)
from bot.store.database import Database
from bot.store.tables import JOBS, PICTURES
from tests.runtime.fakes import (
    ROOM,
    FakeChecker,
    FakeTransport,
    World,
    frame,
    origin,
    text,
)


@pytest.fixture(autouse=True)
def _short_pauses(monkeypatch: pytest.MonkeyPatch) -> None:
    """A pause between attempts is over at once."""
    monkeypatch.setattr(jobs_module, "pause_s", lambda failures: 0.001 * min(failures, 2))


def failing(request: str, error: Exception, times: int) -> Callable[[str], None]:
    """A hook that raises so many times at a request."""
    left = [times]

    def hook(name: str) -> None:
        if name == request and left[0]:
            left[0] -= 1
            raise error

    return hook


async def test_a_frame_is_measured_and_shown(world: World) -> None:
    """The conversation hears the result in a reply to the frame, with the marked picture."""
    shared = frame()
    said = await world.says(shared)
    assert said == ["measuring", "checked: not_a_picture"]
    (_, progress), (_, result) = world.server.sent
    assert progress.notice
    assert not result.notice
    assert result.reply_to == shared.origin.event_id
    picture = result.picture
    assert picture is not None
    assert (picture.mime, picture.width, picture.height, picture.alt) == ("image/png", 8, 8, "grey")
    assert picture.thumbnail is not None
    assert world.server.uploads[picture.media.address] == picture_file(world)


def picture_file(world: World) -> bytes:
    """The one stored picture."""
    (path,) = world.pictures.iterdir()
    assert path.stat().st_mode & 0o777 == 0o600
    return path.read_bytes()


async def test_typing_is_shown_while_a_frame_is_measured(world: World) -> None:
    """The mark goes on when the work begins and off when it ends."""
    release = asyncio.Event()

    class Slow(FakeChecker):
        async def check(self, data: bytes, options: MeasureOptions | None = None) -> Outcome:
            await release.wait()
            return await super().check(data, options)

    async with world.running(checker=Slow()) as runtime:
        await runtime.take_in([frame()], None)
        await _until(lambda: f"typing True in {ROOM}" in world.server.marks)
        assert f"typing False in {ROOM}" not in world.server.marks
        release.set()
        await _until(lambda: f"typing False in {ROOM}" in world.server.marks)


async def _until(true: Callable[[], bool]) -> None:
    async with asyncio.timeout(10):
        while not true():  # noqa: ASYNC110  what is watched rings no bell
            await asyncio.sleep(0.005)


@pytest.mark.parametrize(
    ("error", "said"),
    [
        (MediaTooLargeError(10), "checked: too_many_bytes"),
        (MediaDamagedError(), "checked: damaged"),
        (MediaGoneError(), "checked: gone"),
    ],
)
async def test_a_file_that_cannot_be_fetched_is_named(
    world: World, error: Exception, said: str
) -> None:
    """Too large, damaged or gone: the person hears it, and nothing is measured."""
    checker = FakeChecker()
    hook = failing("download", error, 1)
    assert (await world.says(frame(), hook=hook, checker=checker))[-1] == said
    assert checker.checked == []


@pytest.mark.parametrize(
    "error", [SendLaterError(0.001), SendUncertainError(), TimeoutError(), OSError()]
)
async def test_a_download_that_fails_is_tried_again(world: World, error: Exception) -> None:
    """A homeserver that is away for five tries delays the result and changes nothing."""
    hook = failing("download", error, 5)
    assert (await world.says(frame(), hook=hook))[-1] == "checked: not_a_picture"


@pytest.mark.parametrize(
    ("request_name", "error", "times", "said"),
    [
        ("check", ValueError("bug"), 4, "checked: not_a_picture"),
        ("check", ValueError("bug"), 5, "checked: crashed"),
        ("download", OSError(), 200, "checked: crashed"),
    ],
    ids=["mended in time", "five times broken", "put off for too long"],
)
async def test_work_that_cannot_be_done_is_given_up(
    world: World, request_name: str, error: Exception, times: int, said: str
) -> None:
    """After five breaks, or an hour of delays, the person hears that it did not work."""
    hook = failing(request_name, error, times)
    assert (await world.says(frame(), hook=hook))[-1] == said


async def test_a_night_without_a_server_loses_no_frame(world: World) -> None:
    """While nobody answers at all, tries are not counted: only a server that answers can refuse."""
    hook = failing("download", UnreachableError("no answer"), 200)
    assert (await world.says(frame(), hook=hook))[-1] == "checked: not_a_picture"


async def test_a_file_that_breaks_off_again_and_again_is_given_up(world: World) -> None:
    """Five times more it is asked for; who never sends it whole does not hold up the rest."""
    hook = failing("download", MediaBrokenOffError(), 6)
    assert (await world.says(frame(), hook=hook))[-1] == "checked: gone"


async def test_a_file_that_broke_off_is_measured_when_it_comes(world: World) -> None:
    """A line that broke a few times costs no frame."""
    hook = failing("download", MediaBrokenOffError(), 5)
    assert (await world.says(frame(), hook=hook))[-1] == "checked: not_a_picture"


async def test_work_that_ends_the_process_is_given_up(world: World) -> None:
    """A frame at which the process ended five times is not tried a sixth time."""
    shared = frame()
    for _ in range(5):
        ended = asyncio.Event()

        def end(request: str, ended: asyncio.Event = ended) -> None:
            if request == "check":
                ended.set()
                raise asyncio.CancelledError  # the job is cut off, as by the end of the process

        async with world.running(hook=end) as runtime:
            await runtime.take_in([shared], None)
            await ended.wait()
    assert (await world.says())[-1] == "checked: crashed"


async def test_a_card_is_drawn_and_sent_with_its_caption(world: World) -> None:
    """The card comes as a picture of its full size."""
    await world.says(text("card 1/4 s"))
    ((_, sent),) = world.server.sent
    assert (sent.body, sent.reply_to) == ("the card", None)
    assert sent.picture is not None
    assert sent.picture.width == 1080
    assert sent.picture.alt == "a card"


async def test_a_card_that_cannot_be_drawn_is_said_in_words(
    world: World, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Better the values as text at the trailhead than no card."""

    def no_paint(*_: object) -> bytes:
        raise MemoryError

    monkeypatch.setattr("bot.runtime.card_job.draw_card", no_paint)
    assert await world.says(text("card 1/4 s")) == ["Base\ntime: 1/4 s"]


async def test_dropping_a_frame_takes_back_what_was_shown_of_it(world: World) -> None:
    """A withdrawn frame: its picture's file, row and message go; the words before it stay."""
    shared = frame()
    other = frame()
    async with world.running() as runtime:
        await runtime.take_in([shared, other], None)
        await runtime.drain()
        assert len(list(world.pictures.iterdir())) == 2
        await runtime.take_in([Withdrawn(origin=origin(), event_id=shared.origin.event_id)], None)
        await runtime.drain()
    assert len(list(world.pictures.iterdir())) == 1
    replies = {own: outgoing.reply_to for own, outgoing in world.server.sent if outgoing.picture}
    assert [replies[own] for own in world.server.redacted] == [shared.origin.event_id]


async def test_dropping_a_frame_stops_its_check(world: World) -> None:
    """A frame withdrawn while it is measured: no result, and no file stays."""
    shared = frame()
    release = asyncio.Event()

    class Slow(FakeChecker):
        async def check(self, data: bytes, options: MeasureOptions | None = None) -> Outcome:
            self.hook("check")
            await release.wait()
            return await super().check(data, options)

    checking = asyncio.Event()
    checker = Slow(lambda _: checking.set())
    async with world.running(checker=checker) as runtime:
        await runtime.take_in([shared], None)
        await checking.wait()
        taken = Withdrawn(origin=origin(), event_id=shared.origin.event_id)
        await runtime.take_in([taken], None)
        await _until(lambda: not runtime._workers.busy)
        release.set()
        await runtime.drain()
    assert world.server.bodies == ["measuring"]
    assert list(world.pictures.iterdir()) == []


async def test_a_frame_that_drips_in_holds_up_no_other(
    world: World, monkeypatch: pytest.MonkeyPatch
) -> None:
    """While one person's file does not come, another's is fetched and measured."""
    release = asyncio.Event()
    fetch = FakeTransport.download

    async def download(self: FakeTransport, media: MediaRef, max_bytes: int) -> bytes:
        if media.address == "drip":
            await release.wait()
        return await fetch(self, media, max_bytes)

    monkeypatch.setattr(FakeTransport, "download", download)
    async with world.running() as runtime:
        drip = FrameReceived(origin=origin(), media=MediaRef(address="drip"))
        await runtime.take_in([drip], None)
        await runtime.take_in([frame(person_id="@bo:example.org", room_id="!bo")], None)
        await _until(lambda: "checked: not_a_picture" in world.server.bodies)
        release.set()
        await runtime.drain()
    assert world.server.bodies[-1] == "checked: gone"


async def test_so_many_frames_are_measured_at_once_as_there_are_workers(world: World) -> None:
    """Two workers, five frames: never more than two at the same time, and all get done."""
    at_once: list[int] = []

    class Counting(FakeChecker):
        running = 0

        async def check(self, data: bytes, options: MeasureOptions | None = None) -> Outcome:
            self.running += 1
            at_once.append(self.running)
            await asyncio.sleep(0.1)
            self.running -= 1
            return await super().check(data, options)

    await world.says(*(frame() for _ in range(5)), checker=Counting(at_once=2))
    assert (len(at_once), max(at_once)) == (5, 2)


async def test_taking_back_goes_on_where_it_was_stopped(world: World) -> None:
    """A homeserver that takes three redactions and then asks to wait is obeyed, and all go."""
    await world.says(*(text(f"m{number}") for number in range(10)))
    count = [0]

    def every_fourth(request: str) -> None:
        if request == "before redact":
            count[0] += 1
            if count[0] % 4 == 0:
                raise SendLaterError(0.001)

    await world.says(text("forget me"), hook=every_fourth)
    assert world.server.redacted == [f"$own{number}" for number in range(10)]
    assert world.server.bodies[-1] == "all deleted"
    assert count[0] == 13  # three waits, and nothing is asked for twice but what was refused


async def test_what_cannot_be_taken_back_does_not_hold_up_the_farewell(world: World) -> None:
    """A message in a room that the bot has left stays there; the rest goes."""
    await world.says(text("one"), text("two"))
    hook = failing("before redact", SendRefusedError(), 1)
    await world.says(text("forget me"), hook=hook)
    assert world.server.redacted == ["$own1"]
    assert world.server.bodies[-1] == "all deleted"


async def test_taking_back_is_given_up_when_it_breaks_every_time(world: World) -> None:
    """After five breaks the farewell is said without it."""
    await world.says(text("one"))
    hook = failing("before redact", ValueError("bug"), 100)
    await world.says(text("forget me"), hook=hook)
    assert world.server.bodies[-1] == "all deleted"


async def test_a_frame_in_a_group_goes_on_in_its_thread(world: World) -> None:
    """The result of a frame shared in a group room stands in the thread that its answer began."""
    shared = FrameReceived(origin=origin(direct=False), media=MediaRef(address="frame"))
    await world.says(shared)
    assert {outgoing.thread_id for _, outgoing in world.server.sent} == {shared.origin.event_id}


async def test_done_work_leaves_no_rows(world: World) -> None:
    """Jobs go when they are done; the picture's row stays until its time is over."""
    await world.says(frame(), text("card 1 s"))
    database = Database(world.url)

    def count(connection: sa.Connection) -> list[int]:
        return [
            connection.execute(sa.select(sa.func.count()).select_from(table)).scalar_one()
            for table in (JOBS, PICTURES)
        ]

    counts = await database.read(count)
    await database.close()
    assert counts == [0, 2]
