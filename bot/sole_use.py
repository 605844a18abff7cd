"""The data folder is one process's: two would use the device's keys twice."""

from __future__ import annotations

import fcntl
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Final

from bot.exits import Exit

_NAME: Final = "in_use"


class FolderInUseError(Exception):
    """Another process works with the folder.

    Args:
        folder: the data folder.
    """

    exit_code = Exit.IN_USE

    def __init__(self, folder: Path) -> None:
        super().__init__(f"Another process works with {folder}: stop it first.")


@contextmanager
def sole_use(folder: Path) -> Iterator[None]:
    """Keep other processes out of the folder; the system ends it, however the process ends.

    Raises:
        FolderInUseError: one is in it.
    """
    with (folder / _NAME).open("w") as lock:
        try:
            fcntl.flock(lock, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError:
            raise FolderInUseError(folder) from None
        yield
