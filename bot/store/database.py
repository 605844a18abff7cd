"""The database: opening, migrating, reading, writing."""

from __future__ import annotations

import asyncio
from pathlib import Path
from typing import Final

from alembic import command
from alembic.config import Config
from alembic.runtime.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import Connection, make_url

from bot.store.engines import Answer, Transaction, engine_for

_MIGRATIONS: Final = Path(__file__).parent / "migrations"


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
        url: `sqlite:///…` or `postgresql+asyncpg://…`.
    """

    def __init__(self, url: str) -> None:
        self._url = make_url(url)
        self._engine = engine_for(self._url)

    async def open(self) -> None:
        """Make the folder and the file if need be, and bring the schema up to date.

        Raises:
            SchemaNewerError: a newer version has been here.
        """
        if self._url.get_backend_name() == "sqlite" and self._url.database:
            folder = Path(self._url.database).parent
            await asyncio.to_thread(folder.mkdir, mode=0o700, parents=True, exist_ok=True)
        await self.write(_migrate)

    async def close(self) -> None:
        """Close all connections."""
        await self._engine.close()

    async def read(self, question: Transaction[Answer]) -> Answer:
        """Ask something."""
        return await self._engine.run(question)

    async def write(self, change: Transaction[Answer]) -> Answer:
        """Change something: all of it when the function returns, nothing when it raises."""
        return await self._engine.run(change)

    async def shred(self) -> None:
        """Take what was deleted out of the database's files, so that no byte of it stays."""
        await self._engine.shred()


def _migrate(connection: Connection, target: str = "head") -> None:
    config = Config()
    config.set_main_option("script_location", str(_MIGRATIONS).replace("%", "%%"))
    config.attributes["connection"] = connection
    scripts = ScriptDirectory.from_config(config)
    found = MigrationContext.configure(connection).get_current_revision()
    known = {script.revision for script in scripts.walk_revisions()}
    if found is not None and found not in known:
        raise SchemaNewerError(found, str(scripts.get_current_head()))
    command.upgrade(config, target)
