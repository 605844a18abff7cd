"""The data folder: made if need be, and one process's: two would use the device's keys twice."""

from __future__ import annotations

import errno
import fcntl
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Final

from bot.exits import Exit

_NAME: Final = "in_use"
#: Room may come back by itself; a wrong path or a wrong owner does not.
_FULL: Final = frozenset({errno.ENOSPC, errno.EDQUOT})


class FolderInUseError(Exception):
    """Another process works with the folder.

    Args:
        folder: the data folder.
    """

    exit_code = Exit.IN_USE

    def __init__(self, folder: Path) -> None:
        super().__init__(f"Another process works with {folder}: stop it first.")


class FolderUnusableError(Exception):
    """A folder can't be made, or nothing can be written in it.

    Args:
        folder: the folder.
        error: what the system says.
        setting: the setting that names it.
    """

    def __init__(self, folder: Path, error: OSError, setting: str = "LINN_DATA_DIR") -> None:
        self.exit_code = Exit.FAILED if error.errno in _FULL else Exit.CONFIG
        no_folder = isinstance(error, FileExistsError | NotADirectoryError)
        reason = "there is a file in its place" if no_folder else error.strerror
        super().__init__(
            f"{folder} can't be used ({reason}): {setting} has to name a folder in which the bot "
            "may write."
        )


def make_folder(folder: Path, setting: str = "LINN_DATA_DIR") -> None:
    """Make a folder that is the bot's alone, where there is none.

    Raises:
        FolderUnusableError: it can't be made.
    """
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    except OSError as error:
        raise FolderUnusableError(folder, error, setting) from error


@contextmanager
def sole_use(folder: Path) -> Iterator[None]:
    """Make the folder, and keep other processes out; the system ends it, however this one ends.

    Raises:
        FolderInUseError: one is in it.
        FolderUnusableError: it can't be made, or not written in.
    """
    make_folder(folder)
    try:
        lock = (folder / _NAME).open("w")
    except OSError as error:
        raise FolderUnusableError(folder, error) from error
    with lock:
        try:
            fcntl.flock(lock, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError:
            raise FolderInUseError(folder) from None
        yield
