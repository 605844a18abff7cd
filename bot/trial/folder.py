"""The folder of a trial: kept passwords and port, and one trial at a time."""

from __future__ import annotations

import contextlib
import fcntl
import secrets
import shutil
import socket
from collections.abc import Iterator
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Final

from bot.matrix.private_file import read_private, write_private
from bot.trial.homeserver import LOOPBACK, free_port

#: All that a trial leaves behind; nothing else in the folder is ever deleted.
_OURS: Final = ("homeserver", "bot", "person", "pictures", "bot.log", "trial.json")


class FolderInUseError(Exception):
    """Another trial runs in this folder."""


@dataclass(frozen=True)
class Kept:
    """What stays the same from one trial to the next in the same folder."""

    port: int
    bot_password: str
    person_password: str


@contextlib.contextmanager
def trial_folder(folder: Path, *, fresh: bool) -> Iterator[Path]:
    """The folder for this trial alone; without what earlier trials left when `fresh`.

    Raises:
        FolderInUseError: another trial runs in it.
    """
    folder.mkdir(parents=True, exist_ok=True, mode=0o700)
    with (folder / "lock").open("w") as lock:
        try:
            fcntl.flock(lock, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError:
            raise FolderInUseError(f"Another trial runs in {folder}; stop it first.") from None
        if fresh:
            _empty(folder)
        yield folder.resolve()


def kept(folder: Path) -> Kept:
    """Passwords and port of this folder; made at the first trial.

    The port stays as long as nobody else listens on it, so that a client that was signed in
    finds the homeserver again.
    """
    path = folder / "trial.json"
    values = read_private(path)
    if values is None:
        found = Kept(free_port(), secrets.token_urlsafe(9), secrets.token_urlsafe(9))
    else:
        found = Kept(**values)
        if not _is_free(found.port):
            found = Kept(free_port(), found.bot_password, found.person_password)
    write_private(path, asdict(found))
    return found


def _is_free(port: int) -> bool:
    with socket.socket() as listener:
        # A connection of the last trial may still be closing; that is no listener.
        listener.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            listener.bind((LOOPBACK, port))
        except OSError:
            return False
    return True


def _empty(folder: Path) -> None:
    for name in _OURS:
        path = folder / name
        if path.is_dir():
            shutil.rmtree(path)
        else:
            path.unlink(missing_ok=True)
