"""`linn backup`: one archive of what can't be made anew, while the bot goes on."""

from __future__ import annotations

import shutil
import sqlite3
import tempfile
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

from sqlalchemy import Connection, create_engine, make_url

from bot.backup.archive import DATABASE, IDENTITY, PICTURES, writing
from bot.backup.errors import BackupError
from bot.backup.tables import copy_all
from bot.matrix.private_file import sync_folder
from bot.store.database import Database
from bot.store.sqlite_engine import copy_file


async def make_backup(
    path: Path, *, database: str, data_dir: Path, user_id: str
) -> tuple[int, int]:
    """Write an archive: whole when this returns, nothing when it raises.

    The device's key store is not in it. An older copy of one would use keys a second time, which
    gives away what they encrypt; a new device that the same identity signs goes on instead.

    Args:
        path: of the archive; nothing may be there.
        database: its address; a bot may be using it.
        data_dir: where pictures and identity are.
        user_id: the bot's account.

    Returns:
        The archive's size [bytes] and how many pictures are in it.

    Raises:
        BackupError: there is something already, or nothing to save.
        OSError: a disk fails or is full.
    """
    _check_place(path)
    made_at = datetime.now(UTC)
    # Beside the archive, so that it comes into place in one step.
    with tempfile.TemporaryDirectory(prefix=".linn-backup-", dir=path.parent) as name:
        work = Path(name)
        await _copy_database(database, work / DATABASE)
        pictures = _write(work, data_dir, user_id, made_at)
        size = (work / "archive").stat().st_size
        (work / "archive").rename(path)
    sync_folder(path.parent)
    return size, pictures


def _check_place(path: Path) -> None:
    if path.exists():
        raise BackupError(f"{path} is there already; name a file that is not.")
    if not path.parent.is_dir():
        raise BackupError(f"{path.parent} is no folder; make it first.")


async def _copy_database(address: str, copy: Path) -> None:
    url = make_url(address)
    if url.get_backend_name() == "sqlite":
        _copy_file(Path(url.database or ""), copy)
        return
    database = Database(address)
    try:
        if not await database.read(lambda connection: _copy_tables(connection, copy)):
            raise BackupError("The database has no tables of Linn: the bot has never run.")
    finally:
        await database.close()


def _copy_file(source: Path, copy: Path) -> None:
    if not source.is_file():
        raise BackupError(f"There is no database at {source}: the bot has never run.")
    copy_file(source, copy)


def _copy_tables(connection: Connection, copy: Path) -> bool:
    copy.unlink(missing_ok=True)  # of an attempt that lost its connection
    engine = create_engine(f"sqlite:///{copy}", hide_parameters=True)
    try:
        with engine.begin() as target:
            return copy_all(connection, target)
    finally:
        engine.dispose()


def _write(work: Path, data_dir: Path, user_id: str, made_at: datetime) -> int:
    """Write the archive and return how many pictures are in it."""
    found = 0
    with writing(work / "archive") as archive:
        archive.add(DATABASE, work / DATABASE)
        if (data_dir / IDENTITY).exists():
            archive.add(IDENTITY, data_dir / IDENTITY)
        for name in _picture_names(work / DATABASE):
            copy = work / name
            try:
                shutil.copyfile(data_dir / PICTURES / name, copy)
            except FileNotFoundError:
                continue  # deleted since the database was copied; the bot answers without it
            archive.add(f"{PICTURES}/{name}", copy)
            copy.unlink()
            found += 1
        archive.finish(user_id, made_at)
    return found


def _picture_names(database: Path) -> list[str]:
    with closing(sqlite3.connect(database)) as connection:
        return [str(name) for (name,) in connection.execute("SELECT name FROM pictures")]
