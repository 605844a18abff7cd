"""Processes that are started for one thing and end with it: their time, and what they died of."""

from __future__ import annotations

import logging
import signal
import threading
from collections.abc import Callable, Sequence
from contextlib import ExitStack
from multiprocessing.connection import Connection, Pipe
from typing import Final, Protocol, TypeVar

from core.errors import FrameFault

_LOG: Final = logging.getLogger(__name__)

#: How long a process that has closed its connection may take to end [s]. Own rule.
_ENDING_S: Final = 2.0

Result = TypeVar("Result")
#: What a process does, given its connections; it must be found by its name.
Task = Callable[..., None]


class Process(Protocol):
    """A process that was started."""

    @property
    def exitcode(self) -> int | None:
        """How it ended, minus the number of a signal; None while it runs."""
        ...

    def kill(self) -> None:
        """End it at once."""
        ...

    def join(self, timeout: float | None = None) -> None:
        """Wait for its end, at most so long [s]."""
        ...

    def close(self) -> None:
        """Give back what it took; it has ended."""
        ...


class Launch(Protocol):
    """A way to start processes."""

    def __call__(self, task: Task, connections: Sequence[Connection]) -> Process:
        """Start one that does the task with its own copies of the connections.

        Raises:
            OSError, EOFError: none could be started.
        """
        ...


class DiedError(Exception):
    """A process ended without an answer.

    Args:
        fault: what it died of.
    """

    def __init__(self, fault: FrameFault) -> None:
        self.fault = fault
        super().__init__(fault.value)


class NoProcessError(Exception):
    """No process could be started, though nobody ended it."""


class Family:
    """The processes of one piece of work, which can be ended together, from any thread.

    Args:
        launch: how they are started.
    """

    def __init__(self, launch: Launch) -> None:
        self.launch = launch
        self._children: list[Child] = []
        self._ended = False
        self._lock = threading.Lock()

    @property
    def ended(self) -> bool:
        """Whether no more process is to be started."""
        return self._ended

    def end(self) -> None:
        """Kill those that run, and let none begin any more."""
        with self._lock:
            self._ended = True
            children = list(self._children)
        for child in children:
            child.kill()

    def child(self, time_s: float) -> Child:
        """One more process, not yet started, with so much time for its answer [s]."""
        child = Child(self, time_s)
        with self._lock:
            self._children.append(child)
        return child


class Child:
    """One process and its connection; all methods but `kill` block and belong into a thread."""

    def __init__(self, family: Family, time_s: float) -> None:
        self._family = family
        self._time_s = time_s
        self._lock = threading.Lock()
        self._process: Process | None = None
        self._ours: Connection | None = None
        self._late = False
        self._killed = False

    def start(self, task: Task, others: Sequence[Connection] = ()) -> None:
        """Start it, with a connection to here and with others, which are closed here.

        Raises:
            DiedError: it was ended before it began.
            NoProcessError: it could not be started.
        """
        ours, theirs = Pipe()
        self._ours = ours
        with ExitStack() as stack:
            for connection in (theirs, *others):
                stack.enter_context(connection)
            if self._is_over():
                raise DiedError(FrameFault.CRASHED)
            try:  # without the lock: a fork server that starts anew takes seconds
                process = self._family.launch(task, (theirs, *others))
            except (EOFError, OSError) as error:
                raise NoProcessError from error
        with self._lock:
            self._process = process
            if self._is_over():
                process.kill()

    def send(self, message: bytes) -> None:
        """Send it something before it is asked.

        Raises:
            DiedError: it ended.
        """
        self.ask(lambda connection: connection.send_bytes(message))

    def ask(self, exchange: Callable[[Connection], Result]) -> Result:
        """Speak with it; its time runs from here on.

        Raises:
            DiedError: it ended, or said more than it may.
        """
        if self._ours is None:
            raise NoProcessError
        deadline = threading.Timer(self._time_s, self._expire)
        deadline.daemon = True
        deadline.start()
        try:
            return exchange(self._ours)
        except (EOFError, OSError) as error:
            raise DiedError(self._cause(error)) from error
        finally:
            deadline.cancel()

    def kill(self) -> None:
        """Kill it if it runs; may be called at any time, from any thread."""
        with self._lock:
            self._killed = True
            if self._process is not None:
                self._process.kill()

    def put_away(self) -> None:
        """End it, and give back what it took."""
        self.kill()
        if self._ours is not None:
            self._ours.close()
        with self._lock:
            if self._process is not None:
                self._process.join()
                self._process.close()
                self._process = None

    def _is_over(self) -> bool:
        return self._killed or self._family.ended

    def _expire(self) -> None:
        self._late = True
        self.kill()

    def _cause(self, error: EOFError | OSError) -> FrameFault:
        """What a connection that broke means."""
        if isinstance(error, OSError) and error.errno is None:
            _LOG.warning("the process of a frame said more than it may")
            return FrameFault.CRASHED
        code = None
        if self._process is not None:
            self._process.join(_ENDING_S)
            code = self._process.exitcode
        return self._cause_of_death(code)

    def _cause_of_death(self, code: int | None) -> FrameFault:
        if self._late or code == -signal.SIGXCPU:
            return FrameFault.TOO_SLOW
        if self._is_over():
            return FrameFault.CRASHED
        if code == -signal.SIGKILL:
            return FrameFault.TOO_MUCH_MEMORY  # nobody here did it: the kernel was out of memory
        _LOG.warning("the process of a frame ended with code %s", code)
        return FrameFault.CRASHED
