"""`linn restore`: an archive into an empty data folder, as a new device of the same identity."""

from __future__ import annotations

import shutil
import tempfile
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Final

from sqlalchemy import Connection, create_engine, make_url
from sqlalchemy.exc import DatabaseError

from bot.backup.archive import DATABASE, IDENTITY, PICTURES, unpack
from bot.backup.errors import ArchiveError, BackupError
from bot.backup.marker import write_mark
from bot.backup.settling import settle
from bot.backup.tables import copy_all, is_empty
from bot.store.database import Database, migrate

#: Names of the folder in which a restore works, inside of the data folder.
_WORK: Final = ".restoring-"
#: What file systems put into an empty volume.
_NOBODYS: Final = frozenset({"lost+found"})


@dataclass(frozen=True)
class Restored:
    """What was brought back: when the backup was made, and how many pictures it has."""

    made_at: datetime
    pictures: int


async def restore_backup(
    path: Path, *, database: str, data_dir: Path, user_id: str, answer_old: bool = False
) -> Restored:
    """Bring a backup into an empty data folder and an empty database.

    Args:
        path: of the archive.
        database: address of the database to fill, of either kind.
        data_dir: the data folder, empty or not there yet.
        user_id: the bot's account.
        answer_old: go on where the backup ended. Otherwise what was waiting then, or was said
            between then and now, is left alone: the bot before may have answered it.

    Raises:
        BackupError: folder or database are in use, or the archive can't be used.
        SchemaNewerError: a newer version has made it.
        OSError: a disk fails or is full.
    """
    _clear(data_dir)
    with tempfile.TemporaryDirectory(prefix=_WORK, dir=data_dir) as name:
        work = Path(name)
        manifest = unpack(path, work)
        if manifest.user_id != user_id:
            raise BackupError(f"The backup is of {manifest.user_id}, the settings say {user_id}.")
        now = datetime.now(UTC)
        await _fill(work, database, None if answer_old else now)
        if not answer_old:
            write_mark(data_dir, now)
        pictures = len(list((work / PICTURES).iterdir()))
        (work / PICTURES).rename(data_dir / PICTURES)
        if (work / IDENTITY).exists():
            (work / IDENTITY).rename(data_dir / IDENTITY)
    return Restored(manifest.made_at, pictures)


def _clear(data_dir: Path) -> None:
    """Make the folder, or see that nothing is in it but what a stopped restore has left."""
    try:
        data_dir.mkdir(mode=0o700, parents=True, exist_ok=True)
    except FileExistsError:
        raise BackupError(f"{data_dir} is no folder.") from None
    for found in sorted(data_dir.iterdir()):
        if found.name.startswith(_WORK):
            shutil.rmtree(found)
        elif found.name not in _NOBODYS:
            raise BackupError(
                f"{data_dir} is not empty: it holds {found.name}. A backup is only brought back "
                "into an empty folder; set LINN_DATA_DIR to one, or move away what is there."
            )


async def _fill(work: Path, address: str, now: datetime | None) -> None:
    """Fill the database, whole or not at all."""
    url = make_url(address)
    file = Path(url.database or "") if url.get_backend_name() == "sqlite" else None
    if file is not None and file.exists():
        raise BackupError(f"There is a database at {file} already.")
    # A file is filled aside and comes into place in one step; a server does that by itself.
    aside = work / "filled.db"
    database = Database(address if file is None else f"sqlite:///{aside}")
    try:
        await database.write(lambda target: _copy(work / DATABASE, target, now))
    finally:
        await database.close()
    if file is not None:
        file.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
        shutil.move(aside, file)


def _copy(archived: Path, target: Connection, now: datetime | None) -> None:
    """Take over rows only: a table's rules and triggers would be somebody else's code."""
    if not is_empty(target):
        raise BackupError("The database is not empty; LINN_DATABASE_URL has to name an empty one.")
    engine = create_engine(f"sqlite:///{archived}", hide_parameters=True)
    try:
        with engine.connect() as source:
            source.exec_driver_sql("PRAGMA query_only=ON")
            source.exec_driver_sql("PRAGMA trusted_schema=OFF")
            if not copy_all(source, target):
                raise ArchiveError("The backup's database holds no tables of Linn.")
    except DatabaseError as error:
        if error.connection_invalidated or target.closed:
            raise
        raise ArchiveError("The backup's database is damaged.") from error
    finally:
        engine.dispose()
    migrate(target)
    if now is not None:
        settle(target, now)
