"""Each shared file has a process of its own, and nothing that it does there harms anybody."""

from __future__ import annotations

import asyncio
import errno
import io
import logging
import multiprocessing
import os
import platform
import resource
import signal
import threading
import time
from collections.abc import AsyncIterator
from functools import partial
from multiprocessing.context import ForkServerProcess

import numpy as np
import pytest
from PIL import Image

from bot.dialogue.actions import MeasureOptions
from bot.runtime import confinement, exchange, frame_child
from bot.runtime import frames as serving
from bot.runtime.child import Child, Family
from bot.runtime.frame_child import Found, answer_one, check_and_draw
from bot.runtime.frames import FrameServer
from bot.runtime.orders import ANSWERS, ORDERS, Answer, FrameLimits, Order, Shown
from bot.runtime.outcomes import Outcome, Picture
from core.errors import FrameFault, UnreadableFrameError
from core.frame.report import SizeNote
from tests.runtime.frame_targets import do, refuse_confinement

MEBIBYTE = 2**20


def picture() -> bytes:
    """A grey JPEG of 1200 × 800 px with a white patch."""
    pixels = np.full((800, 1200, 3), 90, np.uint8)
    pixels[450:600, 500:620] = 255
    stream = io.BytesIO()
    Image.fromarray(pixels).save(stream, "JPEG", quality=92)
    return stream.getvalue()


@pytest.fixture
async def server() -> AsyncIterator[FrameServer]:
    """A server whose processes do what the file says, with narrow limits."""
    limits = FrameLimits(time_s=5, memory_bytes=300 * MEBIBYTE, report_bytes=20_000)
    frame_server = FrameServer(workers=2, limits=limits, work=do)
    await frame_server.start()
    yield frame_server
    await frame_server.stop()


async def test_report_and_picture() -> None:
    """A good file gives a report and a marked picture without metadata."""
    server = FrameServer()
    assert await server.start() < 30
    outcome = await server.check(picture(), MeasureOptions(camera_pixels=(6000, 4000)))
    await server.stop()
    assert outcome.fault is None
    assert outcome.report is not None
    assert outcome.report.size_note is SizeNote.RESIZED
    assert outcome.report.clipping.areas[0].share == pytest.approx(120 * 150 / 960_000, rel=0.05)
    assert outcome.picture is not None
    marked = Image.open(io.BytesIO(outcome.picture))
    assert not marked.getexif()


@pytest.mark.parametrize(
    ("data", "fault", "numbers"),
    [
        (b"", FrameFault.EMPTY, {}),
        (b"no picture", FrameFault.NOT_A_PICTURE, {}),
        (b"GIF89a..", FrameFault.KIND_NOT_READ, {"raw": 0}),
        (picture()[:2000], FrameFault.DAMAGED, {}),
        (b"hang", FrameFault.TOO_SLOW, {}),
        (b"spin", FrameFault.TOO_SLOW, {}),
        (b"swallow_memory", FrameFault.TOO_MUCH_MEMORY, {}),
        (b"swallow_memory_in_opencv", FrameFault.TOO_MUCH_MEMORY, {}),
        (b"crash", FrameFault.CRASHED, {}),
        (b"be_killed", FrameFault.TOO_MUCH_MEMORY, {}),  # as the kernel does, out of memory
        (b"talk_too_much", FrameFault.CRASHED, {}),
        (b"bug", FrameFault.CRASHED, {}),
        (b"write_past_the_confinement", FrameFault.DAMAGED, {"errno": errno.EFBIG}),
    ],
    ids=lambda value: value[:12].decode("latin-1") if isinstance(value, bytes) else None,
)
async def test_faults(
    server: FrameServer, data: bytes, fault: FrameFault, numbers: dict[str, float]
) -> None:
    """A file that is wrong, hangs, crashes or swallows memory comes out with its fault."""
    began = time.monotonic()
    outcome = await server.check(data)
    assert (outcome.report, outcome.fault, outcome.numbers) == (None, fault, numbers)
    assert time.monotonic() - began < 15


@pytest.mark.parametrize(
    ("deed", "number"),
    [
        (b"write_a_file", errno.EPERM),
        (b"read_a_file", errno.EPERM),
        (b"delete_a_file", errno.EPERM),
        (b"reach_the_network", errno.EPERM),
        (b"start_a_program", errno.EPERM),
        (b"fork", errno.EPERM),
        (b"kill_its_server", errno.EPERM),
        (b"lift_its_limits", errno.EPERM),
        (b"start_a_thread", 0),
        (b"use_what_was_trained", 0),
    ],
    ids=lambda value: value.decode() if isinstance(value, bytes) else None,
)
async def test_confinement(server: FrameServer, deed: bytes, number: int) -> None:
    """Whoever takes over a decoder reaches no file, network, program or other process."""
    assert (await server.check(deed)).numbers == {"errno": number}


async def test_without_confinement_the_limits_hold(
    caplog: pytest.LogCaptureFixture, monkeypatch: pytest.MonkeyPatch
) -> None:
    """On a system that cannot confine a process the operator is told so, once."""
    monkeypatch.setattr(serving, "_try_confinement", refuse_confinement)
    frame_server = FrameServer()
    with caplog.at_level(logging.WARNING):
        await frame_server.start()
    assert caplog.text.count("can't confine") == 1
    monkeypatch.setattr(platform, "machine", lambda: "abacus")
    assert not confinement.confine()


@pytest.mark.parametrize("machine", confinement._MACHINES.values(), ids=confinement._MACHINES)
def test_the_filter_jumps_within_itself(machine: confinement._Machine) -> None:
    """Every jump ends on an instruction, and the last one refuses."""
    instructions = confinement._filter(machine, 4711)
    for at, (_, if_so, if_not, _) in enumerate(instructions):
        assert at + 1 + max(if_so, if_not) <= len(instructions) - (at < len(instructions) - 1)
    assert instructions[-1] == (6, 0, 0, 0x00050000 | errno.EPERM)


async def test_the_fork_server_is_started_anew(
    server: FrameServer, caplog: pytest.LogCaptureFixture
) -> None:
    """When the fork server dies, what runs is finished and the next file is measured."""
    running = asyncio.create_task(server.check(b"nap"))
    parent = int((await server.check(b"tell_of_myself")).numbers["parent"])
    os.kill(parent, signal.SIGKILL)
    assert (await server.check(picture())).report is not None
    assert (await running).numbers == {"slept": 1}
    told = (await server.check(b"tell_of_myself")).numbers
    assert told["parent"] != parent
    assert (told["threads"], told["warm"]) == (1, 1)
    assert not [record for record in caplog.records if record.levelno >= logging.ERROR]


async def test_no_process_at_all(monkeypatch: pytest.MonkeyPatch) -> None:
    """When no process comes to be, even at a third try, the file is not blamed on a decoder."""
    tries = []

    def nothing(*child: object) -> None:
        tries.append(child)
        raise ConnectionRefusedError

    monkeypatch.setattr(serving, "_forked", nothing)
    assert await FrameServer().check(picture()) == Outcome(fault=FrameFault.CRASHED)
    assert len(tries) == 3


async def test_ending_does_not_wait_for_a_start(monkeypatch: pytest.MonkeyPatch) -> None:
    """Who gives up while a process is being started is not held up, and the process is killed."""
    began, go_on = threading.Event(), threading.Event()
    start = ForkServerProcess.start

    def slow_start(self: ForkServerProcess) -> None:
        began.set()
        assert go_on.wait(10)
        start(self)

    monkeypatch.setattr(ForkServerProcess, "start", slow_start)
    family = forking()
    asking = asyncio.create_task(asyncio.to_thread(measured, family, b"hang"))
    await asyncio.to_thread(began.wait, 10)
    family.end()
    go_on.set()
    assert (await asking).fault is FrameFault.CRASHED


def forking() -> Family:
    """Processes that are forked, as by the frame server."""
    return Family(partial(serving._forked, multiprocessing.get_context("forkserver")))


def measured(family: Family, data: bytes) -> Outcome:
    """The outcome of a file whose process does what it says."""
    tasks = exchange.Tasks(one=partial(answer_one, work=do))
    return exchange.measure_one(family, data, Order(), tasks)


async def test_processor_time_is_bounded(monkeypatch: pytest.MonkeyPatch) -> None:
    """A process that computes for too long is ended by the kernel even if nobody waits for it."""
    monkeypatch.setattr(Child, "_expire", lambda _: None)
    limits = FrameLimits(time_s=1, memory_bytes=300 * MEBIBYTE)
    server = FrameServer(limits=limits, work=do)
    await server.start()
    assert (await server.check(b"spin")).fault is FrameFault.TOO_SLOW
    await server.stop()


async def test_neighbours_are_not_harmed(server: FrameServer) -> None:
    """While others crash, hang, swallow memory or shout, each good file is measured as if alone."""
    ticks = 0

    async def tick() -> None:
        nonlocal ticks
        while True:
            ticks += 1
            await asyncio.sleep(0.01)

    alone = await server.check(picture())
    bad = {
        b"hang": FrameFault.TOO_SLOW,
        b"crash": FrameFault.CRASHED,
        b"swallow_memory": FrameFault.TOO_MUCH_MEMORY,
        b"talk_too_much": FrameFault.CRASHED,
    }
    async with asyncio.TaskGroup() as group:
        ticking = group.create_task(tick())
        pairs = [
            (group.create_task(server.check(data)), group.create_task(server.check(picture())))
            for data in bad
        ]
        faults = [(await task).fault for task, _ in pairs]
        good = [await task for _, task in pairs]
        ticking.cancel()
    assert faults == list(bad.values())
    assert good == [alone] * len(bad)
    assert ticks > 50  # the loop stays free


async def test_each_file_has_its_own_fresh_quiet_process(
    server: FrameServer, capfd: pytest.CaptureFixture[str]
) -> None:
    """Processes are never used twice; they are forked warm, with one thread, and print nothing."""
    first, second = [(await server.check(b"tell_of_myself")).numbers for _ in range(2)]
    assert first["pid"] != second["pid"]
    assert (first["threads"], first["warm"], first["decoded"]) == (1, 1, 0)
    assert "must not be seen" not in capfd.readouterr().err


async def test_forked_not_imported_anew(server: FrameServer) -> None:
    """A process is there in well under the time that importing the libraries takes."""
    began = time.monotonic()
    for _ in range(5):
        await server.check(b"no picture")
    assert (time.monotonic() - began) / 5 < 0.5


async def test_file_over_the_limit_starts_no_process() -> None:
    """A file over the limit is refused without a process."""
    server = FrameServer(limits=FrameLimits(file_bytes=1000))
    outcome = await server.check(b"x" * 1001)
    assert outcome.fault is FrameFault.TOO_MANY_BYTES
    assert outcome.numbers == {"bytes": 1001, "limit": 1000}


async def test_workers_bound_what_runs_at_once() -> None:
    """With one worker, a second file waits for the first."""
    server = FrameServer(workers=1, limits=FrameLimits(time_s=1.5), work=do)
    await server.start()
    began = time.monotonic()
    first, second = await asyncio.gather(server.check(b"hang"), server.check(b"hang"))
    assert time.monotonic() - began > 2.9
    assert first.fault is second.fault is FrameFault.TOO_SLOW
    await server.stop()


async def test_stop_ends_what_runs() -> None:
    """Stopping ends running processes at once, and nothing starts any more."""
    server = FrameServer(workers=1, work=do)
    await server.start()
    running, waiting = (asyncio.create_task(server.check(b"hang")) for _ in range(2))
    await asyncio.sleep(0.5)
    began = time.monotonic()
    await server.stop()
    assert [(await task).fault for task in (running, waiting)] == [FrameFault.CRASHED] * 2
    assert time.monotonic() - began < 3


async def test_cancelling_ends_the_process() -> None:
    """Who gives up waiting leaves no process behind, and the place is free again."""
    server = FrameServer(workers=1, work=do)
    await server.start()
    with pytest.raises(TimeoutError):
        async with asyncio.timeout(0.5):
            await server.check(b"hang")
    began = time.monotonic()
    assert (await server.check(b"bug")).fault is FrameFault.CRASHED
    assert time.monotonic() - began < 5
    await server.stop()


async def test_a_bug_is_logged_by_its_place_only(
    server: FrameServer, caplog: pytest.LogCaptureFixture
) -> None:
    """The log names where a bug showed, never what the file said."""
    with caplog.at_level(logging.ERROR):
        await server.check(b"bug")
    assert "RuntimeError < frame_targets.py" in caplog.text
    assert "private" not in caplog.text


@pytest.mark.parametrize(
    "answer",
    [
        b"",
        b"not json",
        b"[]",
        b"[" * 10_000,
        b'{"fault": "no_such"}',
        b'{"report": {"width": 1}}',
        b'{"read": [1]}',
        b'{"pictures": [{"shows": "water", "frame": 7}]}',
        ANSWERS.dump_json(Answer(pictures=(Shown("water"),) * 19)),
    ],
)
def test_forged_answer_is_a_crash(answer: bytes) -> None:
    """An answer that is not what a process sends counts as a crash."""
    ours, theirs = multiprocessing.Pipe()
    with ours, theirs:
        theirs.send_bytes(answer)
        assert exchange._answered(ours, Order()) == Outcome(fault=FrameFault.CRASHED)


def test_a_forged_picture_is_a_crash() -> None:
    """What is neither a PNG nor a JPEG is never stored or sent on."""
    forged = Picture(Shown("marked"), b"<html>")
    assert exchange.outcome_of(Answer(), (forged,)) == Outcome(fault=FrameFault.CRASHED)


def test_answer_through_json() -> None:
    """A report goes through the pipe's JSON unchanged."""
    answer, (marked,) = check_and_draw(picture(), Order())
    ours, theirs = multiprocessing.Pipe()
    with ours, theirs:
        theirs.send_bytes(ANSWERS.dump_json(answer))
        theirs.send_bytes(marked)
        assert exchange._answered(ours, Order()) == Outcome(
            report=answer.report, pictures=(Picture(Shown("marked"), marked),)
        )


def test_report_without_its_picture(monkeypatch: pytest.MonkeyPatch) -> None:
    """When the drawing fails the report is still given, and the log told."""

    def broken(*_: object) -> bytes:
        raise ZeroDivisionError

    monkeypatch.setattr(frame_child, "draw_marked_frame", broken)
    answer, pictures = check_and_draw(picture(), Order())
    assert answer.report is not None
    assert answer.broke.startswith("ZeroDivisionError")
    assert (answer.pictures, pictures) == ((), ())
    assert exchange.outcome_of(answer, ()).picture is None


def test_ended_before_it_began() -> None:
    """A process that is ended before it is asked never starts."""
    family = forking()
    family.end()
    assert measured(family, picture()) == Outcome(fault=FrameFault.CRASHED)


def test_the_child_sets_its_limits_first(monkeypatch: pytest.MonkeyPatch) -> None:
    """Output goes nowhere and limits stand before a byte of the file is taken."""
    steps: list[object] = []
    limits = FrameLimits(time_s=2.5, memory_bytes=7)
    messages = [ORDERS.dump_json(Order(limits=limits)), b"bug"]

    class Ends:
        def recv_bytes(self, limit: int) -> bytes:
            steps.append(("take", limit))
            return messages.pop(0)

        def send_bytes(self, data: bytes) -> None:
            steps.append(f"send {len(data) > 0}")

        def close(self) -> None:
            steps.append("close")

    monkeypatch.setattr(frame_child, "confine", lambda: steps.append("confine"))
    monkeypatch.setattr(os, "dup2", lambda _from, to: steps.append(("quiet", to)))
    monkeypatch.setattr(signal, "signal", lambda number, _: steps.append(number))
    monkeypatch.setattr(resource, "setrlimit", lambda kind, value: steps.append((kind, value)))
    monkeypatch.setattr(os, "nice", lambda by: steps.append(("nice", by)))
    answer_one(Ends(), do)  # type: ignore[arg-type]  # a stand-in
    assert steps[:4] == [("take", 10_000), ("quiet", 2), signal.SIGINT, ("nice", 10)]
    assert steps[5:] == [
        (resource.RLIMIT_CPU, (3, 4)),
        (resource.RLIMIT_FSIZE, (0, 0)),
        (resource.RLIMIT_CORE, (0, 0)),
        (resource.RLIMIT_NOFILE, (0, 0)),
        "confine",
        ("take", limits.file_bytes),
        "send True",
        "close",
    ]


@pytest.mark.parametrize(
    ("error", "fault"),
    [
        (UnreadableFrameError(FrameFault.TOO_SMALL, width=3), FrameFault.TOO_SMALL),
        (MemoryError(), FrameFault.TOO_MUCH_MEMORY),
        (KeyError("secret"), FrameFault.CRASHED),
    ],
    ids=["unreadable", "memory", "bug"],
)
def test_what_is_raised_becomes_a_fault(error: Exception, fault: FrameFault) -> None:
    """Whatever the work raises becomes an answer without its words."""

    def work() -> Found:
        raise error

    answer, pictures = frame_child.found_by(work)
    assert (answer.fault, pictures) == (fault, ())
    assert "secret" not in answer.broke
