"""The database: opening, migrating, and the two kinds of transaction."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path
from typing import Any, Final

from alembic import command
from alembic.config import Config
from alembic.runtime.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import Connection, event, make_url
from sqlalchemy.ext.asyncio import AsyncConnection, AsyncEngine, create_async_engine

_MIGRATIONS: Final = Path(__file__).parent / "migrations"

#: WAL lets readers work beside the writer. NORMAL does not wait for the disk at each commit: what
#: is committed lives in the system's file cache, so killing the process loses nothing; after a
#: power cut the last moments may be missing, but the file is whole (SQLite's documentation of
#: `synchronous`; from memory). An event lost so is sent again, since its sync token is lost too.
#: secure_delete overwrites what `forget me` deletes.
_PRAGMAS: Final = (
    "PRAGMA journal_mode=WAL",
    "PRAGMA synchronous=NORMAL",
    "PRAGMA foreign_keys=ON",
    "PRAGMA secure_delete=ON",
    "PRAGMA busy_timeout=5000",  # [ms]; own rule: a backup that reads may take that long
)


class SchemaNewerError(Exception):
    """The database was written by a newer version of Linn.

    Args:
        found: the schema that the database has.
        known: the newest that this version knows.
    """

    def __init__(self, found: str, known: str) -> None:
        self.found = found
        self.known = known
        super().__init__(
            f"The database has schema {found}, this version of Linn knows schemas up to {known}: "
            "run the newer version again, or restore a backup from before it."
        )


class Database:
    """One database, with one writer at a time.

    Args:
        url: `sqlite+aiosqlite:///…` or `postgresql+asyncpg://…`.
    """

    def __init__(self, url: str) -> None:
        self._url = make_url(url)
        self._is_sqlite = self._url.get_backend_name() == "sqlite"
        self._engine: AsyncEngine = create_async_engine(
            self._url,
            pool_pre_ping=not self._is_sqlite,
            hide_parameters=True,  # an error's text would quote what people wrote
        )
        # SQLite takes one writer; waiting here is fair and quick, waiting in SQLite is neither.
        self._writer = asyncio.Lock()
        if self._is_sqlite:
            event.listen(self._engine.sync_engine, "connect", _prepare)
            event.listen(self._engine.sync_engine, "begin", _begin)

    async def open(self) -> None:
        """Make the folder and the file if need be, and bring the schema up to date.

        Raises:
            SchemaNewerError: a newer version has been here.
        """
        if self._is_sqlite and self._url.database:
            folder = Path(self._url.database).parent
            await asyncio.to_thread(folder.mkdir, mode=0o700, parents=True, exist_ok=True)
        async with self.writing() as connection:
            await connection.run_sync(_migrate)

    async def close(self) -> None:
        """Close all connections."""
        await self._engine.dispose()

    @asynccontextmanager
    async def reading(self) -> AsyncIterator[AsyncConnection]:
        """A connection that sees one state of the database."""
        async with self._engine.begin() as connection:
            yield connection

    @asynccontextmanager
    async def writing(self) -> AsyncIterator[AsyncConnection]:
        """A transaction that is written when the block ends, and undone when it raises."""
        async with self._writer, self._engine.connect() as connection:
            # A writer that begins as a reader can fail half-way, when another wrote meanwhile.
            await connection.execution_options(linn_begin="BEGIN IMMEDIATE")
            async with connection.begin():
                yield connection

    async def shred(self) -> None:
        """Take what was deleted out of the files, so that no byte of it stays.

        With secure_delete the pages are already overwritten; older copies of them stand in the
        write-ahead log until it is emptied.
        """
        if not self._is_sqlite:
            return
        async with self._writer, self._engine.connect() as connection:
            await connection.execution_options(linn_begin=None)  # not inside a transaction
            await connection.exec_driver_sql("PRAGMA wal_checkpoint(TRUNCATE)")


def _prepare(connection: Any, _record: object) -> None:
    connection.isolation_level = None  # the driver would begin transactions at its own moments
    cursor = connection.cursor()
    for pragma in _PRAGMAS:
        cursor.execute(pragma)
    cursor.close()


def _begin(connection: Connection) -> None:
    begin = connection.get_execution_options().get("linn_begin", "BEGIN")
    if begin is not None:
        connection.exec_driver_sql(begin)


def _migrate(connection: Connection) -> None:
    config = Config()
    config.set_main_option("script_location", str(_MIGRATIONS).replace("%", "%%"))
    config.attributes["connection"] = connection
    scripts = ScriptDirectory.from_config(config)
    found = MigrationContext.configure(connection).get_current_revision()
    known = {script.revision for script in scripts.walk_revisions()}
    if found is not None and found not in known:
        raise SchemaNewerError(found, str(scripts.get_current_head()))
    command.upgrade(config, "head")
