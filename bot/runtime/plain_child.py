"""The other end of a plain process: finds its task and its connections by the command line."""

from __future__ import annotations

import sys
from multiprocessing.connection import Connection

from bot.runtime import frame_warm_up
from bot.runtime.exchange import TASKS

__all__ = ["frame_warm_up", "main"]


def main() -> None:
    """Do the task that the command line names, with the connections whose handles follow."""
    name, *handles = sys.argv[1:]
    getattr(TASKS, name)(*(Connection(int(handle)) for handle in handles))
