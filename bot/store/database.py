"""The database: opening, migrating, reading, writing."""

from __future__ import annotations

import asyncio
from collections.abc import Awaitable, Callable
from pathlib import Path
from typing import Final

from alembic import command
from alembic.config import Config
from alembic.runtime.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import URL, Connection, make_url
from sqlalchemy.exc import SQLAlchemyError

from bot.exits import Exit
from bot.pauses import pause_s
from bot.sole_use import make_folder
from bot.store.engines import Answer, Engine, Transaction
from bot.store.failures import passing
from bot.trouble import Trouble

_MIGRATIONS: Final = Path(__file__).parent / "migrations"

#: Two writers that meet try again at once, in tens of milliseconds (own rule); when that does not
#: part them, it is trouble that is told.
_QUICK_S: Final = 0.02
_QUICK_TRIES: Final = 5


class SchemaNewerError(Exception):
    """The database was written by a newer version of Linn.

    Args:
        found: the schema that the database has.
        known: the newest that this version knows.
    """

    exit_code = Exit.SCHEMA_NEWER

    def __init__(self, found: str, known: str) -> None:
        self.found = found
        self.known = known
        super().__init__(
            f"The database has schema {found}, this version of Linn knows schemas up to {known}: "
            "run the newer version again, or restore a backup from before it."
        )


class Database:
    """One database, with one writer at a time.

    A failure that passes (a full disk, a lock that another process holds, a server that starts)
    is waited out here: the call returns when the work is done, and the log tells it once. So
    nobody who uses the database can lose what it did not take.

    Args:
        url: `sqlite:///…` or `postgresql+asyncpg://…`.
    """

    def __init__(self, url: str) -> None:
        self._url = make_url(url)
        self._engine = _engine_for(self._url)
        # One each: on a full disk reading goes on while writing does not.
        self._reading = Trouble("reading from the store")
        self._writing = Trouble("writing to the store")

    async def open(self) -> None:
        """Make the folder and the file if need be, and bring the schema up to date.

        Raises:
            SchemaNewerError: a newer version has been here.
            FolderUnusableError: the folder of the file can't be made.
        """
        if self._url.get_backend_name() == "sqlite" and self._url.database:
            folder = Path(self._url.database).parent
            await asyncio.to_thread(make_folder, folder, "LINN_DATABASE_URL")
        await self.write(migrate)

    async def close(self) -> None:
        """Close all connections."""
        await self._engine.close()

    async def read(self, question: Transaction[Answer]) -> Answer:
        """Ask something; all of it is asked of one state of the database."""
        return await _waited_out(lambda: self._engine.run(question, writes=False), self._reading)

    async def write(self, change: Transaction[Answer]) -> Answer:
        """Change something: all of it when the function returns, nothing when it raises.

        Args:
            change: is run again, from its beginning, when another process was quicker or the
                database failed for a while.
        """
        return await _waited_out(lambda: self._engine.run(change, writes=True), self._writing)

    async def shred(self) -> None:
        """Take what was deleted out of the database's files, so that no byte of it stays."""
        await _waited_out(self._engine.shred, self._writing)

    async def empty_log(self) -> None:
        """Take older states out of the log, where that does not disturb anybody."""
        await self._engine.empty_log()


async def _waited_out(work: Callable[[], Awaitable[Answer]], trouble: Trouble) -> Answer:
    """The result of `work()`, repeated while it fails in a way that passes."""
    failures = 0
    while True:
        try:
            result = await work()
        except SQLAlchemyError as error:
            failure = passing(error)
            if failure is None:
                raise
            failures += 1
            if not failure.quick or failures > _QUICK_TRIES:
                trouble.met(failure.kind)
            await asyncio.sleep(pause_s(failures, _QUICK_S if failure.quick else 1.0))
        else:
            trouble.over()
            return result


def newest_schema() -> str:
    """The schema that this version writes."""
    return str(ScriptDirectory.from_config(_config()).get_current_head())


def found_schema(connection: Connection) -> str | None:
    """The schema that a database has, None when it has none yet."""
    return MigrationContext.configure(connection).get_current_revision()


def migrate(connection: Connection, target: str = "head") -> None:
    """Bring a database to a schema, inside the caller's transaction.

    Args:
        connection: to the database.
        target: number of the schema.

    Raises:
        SchemaNewerError: it has, or is to have, a schema that this version does not know.
    """
    config = _config()
    config.attributes["connection"] = connection
    scripts = ScriptDirectory.from_config(config)
    known = {script.revision for script in scripts.walk_revisions()} | {None, "head"}
    for schema in (found_schema(connection), target):
        if schema not in known:
            raise SchemaNewerError(str(schema), newest_schema())
    command.upgrade(config, target)


def _config() -> Config:
    config = Config()
    config.set_main_option("script_location", str(_MIGRATIONS).replace("%", "%%"))
    return config


def _engine_for(url: URL) -> Engine:
    """The engine for an address."""
    # Each brings its own driver along; a start needs one of them.
    if url.get_backend_name() == "sqlite":
        from bot.store.sqlite_engine import SqliteEngine  # noqa: PLC0415

        return SqliteEngine(url)
    from bot.store.server_engine import ServerEngine  # noqa: PLC0415

    return ServerEngine(url)
