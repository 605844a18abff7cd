"""Plain processes, started from nothing: where there is no fork server, as on a cluster."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Sequence
from contextlib import suppress
from multiprocessing.connection import Connection
from typing import Final

from bot.runtime.child import Task
from bot.runtime.exchange import TASKS

#: What such a process runs: the same modules as here, from the same places; the libraries are
#: kept to one thread before they come.
_PROGRAM: Final = (
    "import sys; sys.path[:] = {path!r}; import bot.runtime.one_thread; "
    "from bot.runtime import plain_child; plain_child.main()"
)


class PlainProcess:
    """A process of its own interpreter, as `bot.runtime.child.Process` wants it."""

    def __init__(self, task: Task, connections: Sequence[Connection]) -> None:
        handles = [connection.fileno() for connection in connections]
        command = [sys.executable, "-c", _PROGRAM.format(path=sys.path), _name(task)]
        # It gets its connections and nothing else of what is open here.
        self._process = subprocess.Popen(  # noqa: S603  nothing of it comes from outside
            [*command, *map(str, handles)],
            pass_fds=handles,
            stdin=subprocess.DEVNULL,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )

    @property
    def exitcode(self) -> int | None:
        """How it ended, minus the number of a signal; None while it runs."""
        return self._process.poll()

    def kill(self) -> None:
        """End it at once."""
        self._process.kill()

    def join(self, timeout: float | None = None) -> None:
        """Wait for its end, at most so long [s]."""
        with suppress(subprocess.TimeoutExpired):
            self._process.wait(timeout)

    def close(self) -> None:
        """Nothing is left of it once it was waited for."""


def _name(task: Task) -> str:
    """The name by which the other interpreter finds a task."""
    return next(name for name, known in vars(TASKS).items() if known is task)
