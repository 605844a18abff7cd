"""Files that hold secrets: readable by the bot alone, complete on disk before they count."""

from __future__ import annotations

import json
import os
import shutil
import tempfile
from pathlib import Path
from typing import Any


def write_private(path: Path, value: dict[str, Any]) -> None:
    """Write JSON so that the file is either the old one or the whole new one, even in a crash.

    The new file has mode 0600 from its first byte and is synced to disk, as is the folder entry.
    """
    handle, name = tempfile.mkstemp(dir=path.parent, prefix=f".{path.name}.")
    temporary = Path(name)
    try:
        with os.fdopen(handle, "w") as file:
            json.dump(value, file)
            file.flush()
            os.fsync(file.fileno())
        temporary.replace(path)
    finally:
        temporary.unlink(missing_ok=True)
    sync_folder(path.parent)


def sync_folder(folder: Path) -> None:
    """Have a folder's entries on disk: what was renamed into it stays, whatever happens then."""
    handle = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def read_private(path: Path) -> dict[str, Any] | None:
    """The JSON object in the file, None when there is no file.

    Raises:
        ValueError: the file holds something else.
    """
    try:
        value = json.loads(path.read_text())
    except FileNotFoundError:
        return None
    if not isinstance(value, dict):
        # TypeError would blame the program; it is the file that is wrong.
        raise ValueError(f"{path.name} does not hold a JSON object")  # noqa: TRY004
    return value


def set_aside(path: Path) -> Path | None:
    """Rename a file or folder, so that it is out of the way and not lost.

    An earlier one that was set aside is replaced.

    Returns:
        Where it is now, None when there was nothing.
    """
    if not path.exists():
        return None
    aside = _aside(path)
    if aside.is_dir():
        shutil.rmtree(aside)
    path.replace(aside)
    return aside


def keep_copy(path: Path) -> Path | None:
    """Copy a file that is about to be replaced, for its owner alone.

    Returns:
        Where the copy is, None when there was nothing.
    """
    if not path.exists():
        return None
    aside = _aside(path)
    handle = os.open(aside, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600)
    with os.fdopen(handle, "wb") as file:
        file.write(path.read_bytes())
        file.flush()
        os.fsync(file.fileno())
    return aside


def _aside(path: Path) -> Path:
    return path.with_name(f"{path.stem}.before{path.suffix}")
