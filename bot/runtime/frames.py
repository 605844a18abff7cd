"""Shared files measured in processes of their own, one per file, inside limits."""

from __future__ import annotations

import asyncio
import logging
import multiprocessing
import sys
import time
from collections.abc import Callable, Sequence
from contextlib import suppress
from functools import partial
from multiprocessing.connection import Connection
from multiprocessing.context import ForkServerContext
from typing import Final

from bot.dialogue.actions import MeasureOptions
from bot.dialogue.events import MeasuredKind
from bot.runtime.child import Family, NoProcessError, Process, Task
from bot.runtime.confinement import confine
from bot.runtime.exchange import Tasks, measure
from bot.runtime.frame_child import Work, answer_one
from bot.runtime.one_file import measure_file
from bot.runtime.orders import FrameLimits, Order
from bot.runtime.outcomes import Outcome
from core.errors import FrameFault

_LOG: Final = logging.getLogger(__name__)

#: Imported once by the server that forks the children: they find everything there and start in
#: milliseconds. The first keeps the server to one thread; `bot.__main__` is there because each
#: child runs the program's start script again, as the standard library has it, and imports it.
_PRELOAD: Final = [
    "bot.runtime.one_thread",
    "bot.__main__",
    "bot.runtime.exchange",
    "bot.runtime.frame_warm_up",
]

#: How often a process is asked for again, and after which pauses [s] (own rule): a fork server
#: that is being killed still takes calls for a moment.
_RESTARTS_S: Final = (0.05, 0.5)

#: How one piece of work is done, in a thread.
_Work = Callable[[Family], Outcome]


class FrameServer:
    """Measures shared files, each in a process that is forked for it and ends with it.

    The processes come from the standard library's fork server, which has imported the libraries
    and never decoded anything: nothing of one person's picture can show up in another's report,
    and a file that crashes, hangs or swallows memory harms nobody else. The answer comes back as
    JSON and bytes, never as a pickle, since whoever takes over a decoder could forge one.

    Args:
        workers: how many pieces of work are done at the same time.
        limits: what each process may use.
        work: what is done with a single file; another one only for tests.
        tasks: what the processes do; others only for tests.
    """

    def __init__(
        self,
        *,
        workers: int = 1,
        limits: FrameLimits | None = None,
        work: Work = measure_file,
        tasks: Tasks | None = None,
    ) -> None:
        self._limits = limits or FrameLimits()
        self._tasks = tasks or Tasks(one=partial(answer_one, work=work))
        self._workers = workers
        self._slots = asyncio.Semaphore(workers)
        self._context = multiprocessing.get_context("forkserver")
        self._running: set[Family] = set()
        self._stopped = False

    @property
    def at_once(self) -> int:
        """How many pieces of work are done at the same time."""
        return self._workers

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
        for family in list(self._running):
            family.end()

    async def check(self, data: bytes, options: MeasureOptions | None = None) -> Outcome:
        """Measure one file; never raises for what a file does.

        Args:
            data: the whole file.
            options: what is known of it.
        """
        order = Order("check", options or MeasureOptions(), self._limits)
        return await self._do([data], order, lambda _: None)

    async def measure(
        self,
        what: MeasuredKind,
        files: Sequence[bytes],
        options: MeasureOptions,
        tell: Callable[[int], None] = lambda _: None,
    ) -> Outcome:
        """Measure files of one person together, or one of them again.

        Args:
            what: as in the action.
            files: all of them whole.
            options: what is known or wished for.
            tell: is told how many files have been read.
        """
        order = Order(what, options, self._limits, len(files))
        size, limit = sum(map(len, files)), self._limits.together_bytes
        if size > limit:
            numbers = {"bytes": float(size), "limit": float(limit)}
            return Outcome(fault=FrameFault.TOO_MANY_BYTES, numbers=numbers)
        loop = asyncio.get_running_loop()

        def tell_loop(done: int) -> None:
            loop.call_soon_threadsafe(tell, done)

        return await self._do(files, order, tell_loop)

    async def _do(
        self, files: Sequence[bytes], order: Order, tell: Callable[[int], None]
    ) -> Outcome:
        def work(family: Family) -> Outcome:
            return measure(family, files, order, self._tasks, tell)

        async with self._slots:
            for pause_s in (*_RESTARTS_S, None):
                outcome = await self._try(work)
                if outcome is not None:
                    return outcome
                if pause_s is not None:
                    await self._restart(pause_s)
        return Outcome(fault=FrameFault.CRASHED)

    async def _restart(self, pause_s: float) -> None:
        """Start the fork server anew; it loads its libraries before a file's time runs."""
        _LOG.warning("the fork server of frames is started anew")
        await asyncio.sleep(pause_s)
        if not self._stopped:
            with suppress(EOFError, OSError):
                await asyncio.to_thread(_warm_up, self._context)

    async def _try(self, work: _Work) -> Outcome | None:
        """The outcome of one piece of work; None when no process came to be."""
        if self._stopped:
            return Outcome(fault=FrameFault.CRASHED)
        family = Family(partial(_forked, self._context))
        self._running.add(family)
        try:
            return await asyncio.to_thread(work, family)
        except NoProcessError:
            return None
        finally:  # cancelled, most often: the thread ends with the processes
            family.end()
            self._running.discard(family)


def _forked(context: ForkServerContext, task: Task, connections: Sequence[Connection]) -> Process:
    """A process of the fork server, which is started when it is not there."""
    process = context.Process(target=task, args=tuple(connections), daemon=True)
    process.start()
    return process


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
