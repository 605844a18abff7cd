"""Shared files measured in processes of their own, one per file, inside limits."""

from __future__ import annotations

import asyncio
import logging
import multiprocessing
import signal
import sys
import threading
import time
from dataclasses import dataclass, field
from multiprocessing.connection import Connection
from multiprocessing.context import ForkServerContext, ForkServerProcess
from typing import Final

from pydantic import ValidationError

from bot.runtime.confinement import confine
from bot.runtime.frame_child import (
    ANSWERS,
    FrameLimits,
    Work,
    answer_one,
    check_and_draw,
)
from core.errors import FrameFault
from core.frame.report import FrameReport

_LOG: Final = logging.getLogger(__name__)

#: Imported once by the server that forks the children: they find everything there and start in
#: milliseconds. The first keeps the server to one thread; `bot.__main__` is there because each
#: child runs the program's start script again, as the standard library has it, and imports it.
_PRELOAD: Final = [
    "bot.runtime.one_thread",
    "bot.__main__",
    "bot.runtime.frame_child",
    "bot.runtime.frame_warm_up",
]

#: How long a child that has closed its connection may take to end [s]. Own rule.
_ENDING_S: Final = 2.0
#: As much of a process's words as is logged [letters]. Own rule.
_LONGEST_TRACE: Final = 500


@dataclass(frozen=True)
class FrameOutcome:
    """What became of one file: a report and a marked picture, or a fault with its numbers.

    The picture is a PNG or a JPEG without metadata; None when it could not be drawn.
    """

    report: FrameReport | None = None
    fault: FrameFault | None = None
    numbers: dict[str, float] = field(default_factory=dict)
    picture_png: bytes | None = None


class FrameServer:
    """Measures shared files, each in a process that is forked for it and ends with it.

    The processes come from the standard library's fork server, which has imported the libraries
    and never decoded anything: nothing of one person's picture can show up in another's report,
    and a file that crashes, hangs or swallows memory harms nobody else. The answer comes back as
    JSON and bytes, never as a pickle, since whoever takes over a decoder could forge one.

    Args:
        workers: how many files are measured at the same time.
        limits: what each process may use.
        work: what is done with a file; another one only for tests.
    """

    def __init__(
        self,
        *,
        workers: int = 1,
        limits: FrameLimits | None = None,
        work: Work = check_and_draw,
    ) -> None:
        self._limits = limits or FrameLimits()
        self._work = work
        self._slots = asyncio.Semaphore(workers)
        self._context = multiprocessing.get_context("forkserver")
        self._running: set[_Child] = set()
        self._stopped = False

    async def start(self) -> float:
        """Start the fork server and wait until it has its libraries; how long it took [s]."""
        self._stopped = False
        began = time.monotonic()
        confined = await asyncio.to_thread(_warm_up, self._context)
        took_s = time.monotonic() - began
        if not confined:
            _LOG.warning("frames are read inside limits, but this system can't confine a process")
        _LOG.info("frame server ready after %.2f s", took_s)
        return took_s

    async def stop(self) -> None:
        """End every process that still runs; their files come out as crashed."""
        self._stopped = True
        for child in list(self._running):
            child.end()

    async def check(
        self, data: bytes, camera_pixels: tuple[int, int] | None = None
    ) -> FrameOutcome:
        """Measure one file; never raises for what a file does.

        Args:
            data: the whole file.
            camera_pixels: sides of the camera's frames [px], when known.
        """
        if len(data) > self._limits.file_bytes:
            numbers = {"bytes": float(len(data)), "limit": float(self._limits.file_bytes)}
            return FrameOutcome(fault=FrameFault.TOO_MANY_BYTES, numbers=numbers)
        async with self._slots:
            outcome = await self._ask(data, camera_pixels)
            if outcome is None:  # the fork server was gone; whoever asks for a process restarts it
                _LOG.warning("the fork server of frames is started anew")
                outcome = await self._ask(data, camera_pixels)
        return outcome or FrameOutcome(fault=FrameFault.CRASHED)

    async def _ask(self, data: bytes, camera_pixels: tuple[int, int] | None) -> FrameOutcome | None:
        """The outcome of one process; None when none came to be."""
        if self._stopped:
            return FrameOutcome(fault=FrameFault.CRASHED)
        child = _Child(self._context, self._work, camera_pixels, self._limits)
        self._running.add(child)
        try:
            return await asyncio.to_thread(child.ask, data)
        finally:  # cancelled, most often: the thread ends with the process
            child.end()
            self._running.discard(child)


class _Child:
    """One process and its connection; `ask` blocks and belongs into a thread."""

    def __init__(
        self,
        context: ForkServerContext,
        work: Work,
        camera_pixels: tuple[int, int] | None,
        limits: FrameLimits,
    ) -> None:
        self._context = context
        self._work = work
        self._camera_pixels = camera_pixels
        self._limits = limits
        self._lock = threading.Lock()
        self._process: ForkServerProcess | None = None
        self._late = False
        self._ended = False

    def ask(self, data: bytes) -> FrameOutcome | None:
        """Start the process, send it the file and wait for its answer or its end.

        Returns:
            None when no process could be started, though nobody ended it.
        """
        ours, theirs = self._context.Pipe()
        deadline = threading.Timer(self._limits.time_s, self._expire)
        deadline.daemon = True
        try:
            self._start(theirs)
            deadline.start()
            ours.send_bytes(data)
            answer = ours.recv_bytes(self._limits.report_bytes)
            picture = ours.recv_bytes(self._limits.picture_bytes)
        except (EOFError, OSError) as error:
            return self._failure(error)
        finally:
            deadline.cancel()
            ours.close()
            self._put_away()
        return _read(answer, picture)

    def end(self) -> None:
        """Kill the process if it runs; may be called at any time, from any thread."""
        with self._lock:
            self._ended = True
            if self._process is not None:
                self._process.kill()

    def _start(self, theirs: Connection) -> None:
        process = self._context.Process(
            target=answer_one,
            args=(theirs, self._work, self._camera_pixels, self._limits),
            daemon=True,
        )
        with theirs:
            self._go_on()
            process.start()  # without the lock: a fork server that starts anew takes seconds
        with self._lock:
            self._process = process
            if self._ended:
                process.kill()

    def _go_on(self) -> None:
        if self._ended:
            raise EOFError

    def _expire(self) -> None:
        self._late = True
        self.end()

    def _failure(self, error: EOFError | OSError) -> FrameOutcome | None:
        """What a connection that broke means."""
        if self._process is None:  # ended before it began, or the fork server is gone
            return FrameOutcome(fault=FrameFault.CRASHED) if self._ended else None
        if isinstance(error, OSError) and error.errno is None:
            _LOG.warning("the process of a frame said more than it may")
            return FrameOutcome(fault=FrameFault.CRASHED)
        self._process.join(_ENDING_S)
        return FrameOutcome(fault=self._cause_of_death(self._process.exitcode))

    def _cause_of_death(self, code: int | None) -> FrameFault:
        if self._late or code == -signal.SIGXCPU:
            return FrameFault.TOO_SLOW
        if self._ended:
            return FrameFault.CRASHED
        if code == -signal.SIGKILL:
            return FrameFault.TOO_MUCH_MEMORY  # nobody here did it: the kernel was out of memory
        _LOG.warning("the process of a frame ended with code %s", code)
        return FrameFault.CRASHED

    def _put_away(self) -> None:
        self.end()
        with self._lock:
            if self._process is not None:
                self._process.join()
                self._process.close()
                self._process = None


def _read(answer: bytes, picture: bytes) -> FrameOutcome:
    """The outcome from a process's answer, which is trusted no more than the file."""
    try:
        found = ANSWERS.validate_json(answer)
    except ValidationError:
        return FrameOutcome(fault=FrameFault.CRASHED)
    if found.broke:
        _LOG.error("the process of a frame met a bug: %s", found.broke[:_LONGEST_TRACE])
    return FrameOutcome(found.report, found.fault, found.numbers, picture or None)


def _warm_up(context: ForkServerContext) -> bool:
    """Start the fork server; whether its processes can be confined."""
    context.set_forkserver_preload(_PRELOAD)
    process = context.Process(target=_try_confinement, daemon=True)
    process.start()
    process.join()
    confined = process.exitcode == 0
    process.close()
    return confined


def _try_confinement() -> None:
    """What the first process does; it is there when the server has its libraries."""
    sys.exit(0 if confine() else 1)
