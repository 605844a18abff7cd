"""Several frames: each is read by a process of its own, and one that reads none has them all."""

from __future__ import annotations

import io
import multiprocessing
import threading
import time
from collections.abc import AsyncIterator, Callable
from contextlib import suppress
from functools import partial
from multiprocessing.connection import Connection
from typing import Any, get_args

import numpy as np
import pytest
from PIL import Image

from bot.dialogue.actions import MOST_COMPARED, MOST_TOGETHER, MeasureOptions
from bot.dialogue.events import MeasuredKind
from bot.runtime import exchange, frame_child, together_child
from bot.runtime.frames import FrameServer
from bot.runtime.one_file import measure_file
from bot.runtime.orders import ORDERS, PIXELS, FrameLimits, Order, Pixels, wishes_of
from bot.runtime.outcomes import Outcome
from core.errors import FrameFault
from core.frame.check import check_frame
from core.frame.findings import WaterArea
from core.frame.laid import MOST, MOST_AVERAGED
from core.water import Look
from tests.runtime.together_targets import put

MEBIBYTE = 2**20


def view(seed: int = 1, shift: int = 0, side: int = 480) -> bytes:
    """A JPEG of a wall with texture, moved a little."""
    random = np.random.default_rng(seed)
    coarse = random.integers(30, 220, (side // 8 + 4, side // 6 + 4, 3), np.uint8)
    large = Image.fromarray(coarse).resize(
        (side * 3 // 2 + 40, side + 40), Image.Resampling.BICUBIC
    )
    out = io.BytesIO()
    large.crop((shift, 0, shift + side * 3 // 2, side)).save(out, "JPEG", quality=92)
    return out.getvalue()


@pytest.fixture
async def server() -> AsyncIterator[FrameServer]:
    """A server whose processes do what they do outside of tests."""
    frame_server = FrameServer(workers=2)
    await frame_server.start()
    yield frame_server
    await frame_server.stop()


@pytest.fixture
async def odd() -> AsyncIterator[FrameServer]:
    """A server whose last process does what the number of frames says, with narrow limits."""
    tasks = exchange.Tasks(together=partial(together_child.answer_together, work=put))
    limits = FrameLimits(time_s=5, memory_bytes=300 * MEBIBYTE)
    frame_server = FrameServer(limits=limits, tasks=tasks)
    await frame_server.start()
    yield frame_server
    await frame_server.stop()


async def test_frames_are_compared(server: FrameServer) -> None:
    """Three frames of one view: a comparison and its sheets; each frame is told as it is read."""
    read: list[int] = []
    files = [view(), view(shift=5), view(shift=9)]
    options = MeasureOptions(wished=Look.SILKY)
    outcome = await server.measure("compare", files, options, read.append)
    assert (outcome.fault, outcome.read, outcome.left_out) == (None, (0, 1, 2), {})
    assert outcome.comparison is not None
    assert [pair.aligned for pair in outcome.comparison.pairs] == [True, True]
    assert "whole" in {picture.shown.shows for picture in outcome.pictures}
    assert read == [1, 2, 3]
    for picture in outcome.pictures:
        assert not Image.open(io.BytesIO(picture.data)).getexif()


async def test_frames_are_averaged_without_those_that_cannot_be_read(server: FrameServer) -> None:
    """A damaged file among them is named and the others are averaged; places are as asked for."""
    files = [view()[:3000], view(), b"no picture", view(shift=2)]
    outcome = await server.measure("average", files, MeasureOptions())
    assert outcome.fault is None
    assert outcome.read == (1, 3)
    assert outcome.left_out == {0: FrameFault.DAMAGED, 2: FrameFault.NOT_A_PICTURE}
    assert outcome.comparison is not None
    assert outcome.comparison.average is not None
    assert len(outcome.comparison.frames) == 2


@pytest.mark.parametrize("what", ["recheck", "grid", "illustrate"])
async def test_one_frame_again(server: FrameServer, what: MeasuredKind) -> None:
    """Measured again, with the grid on it, or with other times: always with its report."""
    outcome = await server.measure(what, [view()], MeasureOptions(water_cells=("B2",)))
    assert outcome.fault is None
    assert outcome.report is not None
    shown = {picture.shown.shows for picture in outcome.pictures}
    assert shown <= {"recheck": {"marked"}, "grid": {"grid"}, "illustrate": {"illustration"}}[what]
    assert (outcome.comparison is not None) == (what == "illustrate")
    assert outcome.read == (0,)


async def test_where_the_water_is_said_to_be_is_where_it_is_looked_for(
    server: FrameServer,
) -> None:
    """Cells and axis that the person named reach the measuring, of one frame and of several."""
    options = MeasureOptions(water_cells=("B2", "C2"), axis_deg=80.0)
    outcome = await server.measure("recheck", [view()], options)
    assert outcome.report is not None
    assert outcome.report.water == WaterArea(("B2", "C2"), 80.0, by_person=True)
    outcome = await server.measure("compare", [view(), view(shift=4)], options)
    assert outcome.comparison is not None
    assert outcome.comparison.water_cells == ("B2", "C2")


async def test_nothing_can_be_put_together(server: FrameServer) -> None:
    """With fewer than two frames that can be read, the first one's fault is that of all."""
    outcome = await server.measure("compare", [b"", view()], MeasureOptions())
    assert outcome.fault is FrameFault.EMPTY
    assert outcome.left_out == {0: FrameFault.EMPTY}
    assert outcome.comparison is None


async def test_files_that_are_too_large_together_start_no_process() -> None:
    """All files of a job together have a limit, before any of them is read."""
    server = FrameServer(limits=FrameLimits(together_bytes=100, file_bytes=10))
    outcome = await server.measure("compare", [b"x" * 60, b"x" * 60], MeasureOptions())
    assert outcome.fault is FrameFault.TOO_MANY_BYTES
    assert outcome.numbers == {"bytes": 120, "limit": 100}


async def test_one_file_that_is_too_large_is_left_out() -> None:
    """The limit of a single file holds among several too."""
    limits = FrameLimits(file_bytes=len(view()) + 100)
    small = FrameServer(limits=limits)
    files = [view(), b"x" * (len(view()) + 101), view()]
    outcome = await small.measure("average", files, MeasureOptions())
    assert outcome.left_out == {1: FrameFault.TOO_MANY_BYTES}
    assert outcome.read == (0, 2)


async def test_the_last_process_has_the_pixels_and_has_read_no_file(odd: FrameServer) -> None:
    """What reaches it are the frames' own pixels, larger frames made smaller."""
    files = [view(1), view(2)]
    outcome = await odd.measure("compare", files, MeasureOptions(times_s=(0,)))
    means = [check_frame(data)[1].mean() for data in files]
    assert [outcome.numbers[f"mean {place}"] for place in (0, 1)] == means
    assert outcome.numbers["height 0"] == 480
    assert outcome.numbers["decoders"] == 0


async def test_larger_frames_are_made_smaller_to_fit_together() -> None:
    """All together have a bound, whatever each of them has."""
    tasks = exchange.Tasks(together=partial(together_child.answer_together, work=put))
    server = FrameServer(limits=FrameLimits(together_pixels=200_000), tasks=tasks)
    outcome = await server.measure("compare", [view(1), view(2)], MeasureOptions(times_s=(0,)))
    assert outcome.numbers["height 0"] ** 2 * 1.5 == pytest.approx(100_000, rel=0.02)
    assert outcome.numbers["mean 0"] == pytest.approx(check_frame(view(1))[1].mean(), abs=0.5)


@pytest.mark.parametrize(
    ("deed", "fault"),
    [
        (1, FrameFault.TOO_SLOW),
        (2, FrameFault.TOO_MUCH_MEMORY),
        (3, FrameFault.CRASHED),
    ],
    ids=["hangs", "swallows memory", "ends without a word"],
)
async def test_the_last_process_has_its_limits(
    odd: FrameServer, deed: int, fault: FrameFault
) -> None:
    """A process that puts frames together is bounded as those that read them are."""
    began = time.monotonic()
    outcome = await odd.measure("compare", [view(), view()], MeasureOptions(times_s=(deed,)))
    assert outcome.fault is fault
    assert time.monotonic() - began < 15


def test_options_count_along_the_frames_that_were_read() -> None:
    """The place of the leaf frame is that among those that are left, or none."""
    order = Order("compare", MeasureOptions(leaf=2, wished=Look.MISTY), files=3)
    assert wishes_of(order, (0, 2)).leaf == 1
    assert wishes_of(order, (0, 1)).leaf is None
    assert wishes_of(order, (0, 1)).wished is Look.MISTY


def test_the_dialogue_asks_for_no_more_frames_than_can_be() -> None:
    """Its own bounds are those of the measuring."""
    assert (MOST_COMPARED, MOST_TOGETHER) == (MOST, MOST_AVERAGED)
    assert set(get_args(MeasuredKind)) == {"compare", "average", "illustrate", "grid", "recheck"}


def words(height: int, width: int) -> bytes:
    """What a reader says before it sends so many pixels."""
    return PIXELS.dump_json(Pixels(height, width, check_frame(view())[0]))


@pytest.mark.parametrize(
    "sent",
    [
        (),
        ((0, 3),),
        ((30_000, 30_000),),
        ((30, 30), b"x" * 10),
    ],
    ids=["nothing", "no pixels", "more than may be", "cut off"],
)
def test_a_reader_that_does_not_keep_its_word_is_left_out(
    sent: tuple[tuple[int, int] | bytes, ...],
) -> None:
    """Whoever takes over a decoder can send no more than a picture of its size."""
    source, out = multiprocessing.Pipe(duplex=False)
    with source:
        with out:
            for message in sent:
                out.send_bytes(message if isinstance(message, bytes) else words(*message))
        assert together_child._taken(0, source, Order(files=2), 10_000) is None


def test_orders_go_through_json() -> None:
    """What is ordered arrives as it was ordered."""
    options = MeasureOptions(wished=Look.SILKY, times_s=(0.5,), share_per_s=(0.1, 0.4), leaf=1)
    order = Order("illustrate", options, FrameLimits(time_s=2.5), 3)
    assert ORDERS.validate_json(ORDERS.dump_json(order)) == order


async def test_a_server_that_is_stopped_measures_nothing() -> None:
    """After a stop nothing starts any more, and what was asked for comes out as crashed."""
    stopped = FrameServer()
    await stopped.stop()
    outcome = await stopped.measure("compare", [view(), view()], MeasureOptions())
    assert outcome == Outcome(fault=FrameFault.CRASHED)


def process(task: Callable[..., None], *messages: bytes) -> list[bytes]:
    """What a task answers to these messages when it is not shut in, in this process."""
    ours, theirs = multiprocessing.Pipe()
    working = threading.Thread(target=task, args=(theirs,))
    working.start()
    answers = []
    with ours:
        for message in messages:
            ours.send_bytes(message)
        with suppress(EOFError):
            while True:
                answers.append(ours.recv_bytes())
    working.join()
    return answers


@pytest.fixture
def open_process(monkeypatch: pytest.MonkeyPatch) -> None:
    """The tests' own process is not to be shut in."""
    for module in (frame_child, together_child):
        monkeypatch.setattr(module, "shut_in", lambda _: None)


@pytest.mark.usefixtures("open_process")
@pytest.mark.parametrize("what", ["check", "recheck", "grid", "illustrate"])
def test_what_the_process_of_one_file_says(what: Any) -> None:
    """An answer in JSON that lists the pictures which follow it."""
    order = Order(what, MeasureOptions(water_cells=("B2",), share_per_s=(0.2, 0.4)))
    task = partial(frame_child.answer_one, work=measure_file)
    answer, *pictures = process(task, ORDERS.dump_json(order), view())
    found = exchange.read_answer(answer, order)
    assert found is not None
    assert (found.fault, found.report is not None) == (None, True)
    assert len(found.pictures) == len(pictures)


@pytest.mark.usefixtures("open_process")
@pytest.mark.parametrize("what", ["compare", "average"])
def test_what_the_processes_of_several_files_say(what: Any) -> None:
    """Each reader sends its pixels on and says that it did; the last one answers with all."""
    order = Order(what, files=3)
    pipes = [multiprocessing.Pipe(duplex=False) for _ in range(3)]
    threads = []
    for data, (_, out) in zip((view(), b"no picture", view(shift=4)), pipes, strict=True):
        reading = partial(_read_and_close, data, order, out)
        threads.append(threading.Thread(target=reading))
        threads[-1].start()
    task = partial(_together, [source for source, _ in pipes])
    answer, *pictures = process(task, ORDERS.dump_json(order))
    for thread in threads:
        thread.join()
    for source, _ in pipes:
        source.close()
    found = exchange.read_answer(answer, order)
    assert found is not None
    assert (found.fault, found.read) == (None, (0, 2))
    assert found.comparison is not None
    assert len(found.pictures) == len(pictures)


def _read_and_close(data: bytes, order: Order, out: Connection) -> None:
    with out:
        process(
            lambda connection: together_child.read_one(connection, out),
            ORDERS.dump_json(order),
            data,
        )


def _together(sources: list[Connection], connection: Connection) -> None:
    together_child.answer_together(connection, *sources)
