"""SQLite: one file, one thread, one writer."""

from __future__ import annotations

import asyncio
import sqlite3
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from contextlib import closing
from pathlib import Path
from typing import Any, Final

from sqlalchemy import URL, Connection, create_engine, event
from sqlalchemy.exc import OperationalError

from bot.store.engines import Answer, Transaction
from bot.store.failures import StillReadError

#: WAL lets a backup read beside the writer. NORMAL does not wait for the disk at each commit: what
#: is committed lives in the system's file cache, so killing the process loses nothing; after a
#: power cut the last moments may be missing, but the file is whole (SQLite's documentation of
#: `synchronous`; from memory). An event lost so is sent again, since its sync token is lost too.
#: secure_delete overwrites what `forget me` deletes.
_PRAGMAS: Final = (
    "PRAGMA journal_mode=WAL",
    "PRAGMA synchronous=NORMAL",
    "PRAGMA foreign_keys=ON",
    "PRAGMA secure_delete=ON",
    "PRAGMA busy_timeout=5000",  # [ms]; own rule: then others may use the thread, and it is told
)

_EMPTY_LOG: Final = "PRAGMA wal_checkpoint(TRUNCATE)"


class SqliteEngine:
    """SQLite in one thread, which makes it one writer, and one change of threads a transaction.

    A driver that changes threads for every cursor, row and close took 57 changes for one answered
    message where this takes 4 (counted with aiosqlite 0.22).

    Args:
        url: with the file's name; the driver's name is ignored.
    """

    def __init__(self, url: URL) -> None:
        self._engine = create_engine(
            url.set(drivername="sqlite"),
            hide_parameters=True,  # an error's text would quote what people wrote
        )
        event.listen(self._engine, "connect", _prepare)
        event.listen(self._engine, "begin", _begin)
        self._thread = ThreadPoolExecutor(max_workers=1, thread_name_prefix="linn-store")

    async def run(self, transaction: Transaction[Answer], *, writes: bool) -> Answer:
        """Run it in the thread. When the caller is cancelled, it is still run to its end."""
        return await self._in_thread(lambda: self._transact(transaction, writes))

    def _transact(self, transaction: Transaction[Answer], writes: bool) -> Answer:
        with self._engine.connect() as connection:
            connection.execution_options(writes=writes)
            with connection.begin():
                return transaction(connection)

    async def shred(self) -> None:
        """Write the file anew without what was deleted, and empty the log of older pages.

        Raises:
            StillReadError: somebody else reads at this moment.
        """
        await self._in_thread(self._shred)

    def _shred(self) -> None:
        self._outside("VACUUM")
        (blocked, *_) = self._outside(_EMPTY_LOG)
        if blocked:
            raise StillReadError

    async def empty_log(self) -> None:
        """Empty the write-ahead log, unless somebody reads an older state in it."""
        await self._in_thread(lambda: self._outside(_EMPTY_LOG))

    def _outside(self, command: str) -> tuple[Any, ...]:
        """The first row of a command that has to run outside of a transaction."""
        with self._engine.connect() as connection:
            driver: Any = connection.connection.driver_connection  # SQLAlchemy would begin one
            try:
                with closing(driver.execute(command)) as cursor:
                    return tuple(cursor.fetchone() or ())
            except sqlite3.OperationalError as error:  # as SQLAlchemy tells of those in one
                raise OperationalError(command, None, error) from error

    async def close(self) -> None:
        """Close the connection and end the thread."""
        await self._in_thread(self._engine.dispose)
        self._thread.shutdown()

    async def _in_thread(self, work: Callable[[], Answer]) -> Answer:
        return await asyncio.get_running_loop().run_in_executor(self._thread, work)


def copy_file(source: Path, target: Path) -> None:
    """Copy a database that may be in use: one state of it, whole (SQLite's online backup).

    Raises:
        sqlite3.Error: there is none, or the disk fails.
    """
    address = f"{source.absolute().as_uri()}?mode=rw"
    with (
        closing(sqlite3.connect(address, uri=True)) as from_file,
        closing(sqlite3.connect(target)) as to_file,
    ):
        from_file.backup(to_file)  # in one step: a writer beside it neither waits nor disturbs
        to_file.execute("PRAGMA journal_mode=DELETE").close()  # no log beside the copy


def _prepare(connection: Any, _record: object) -> None:
    connection.isolation_level = None  # the driver would begin transactions at its own moments
    for pragma in _PRAGMAS:
        connection.execute(pragma).close()


def _begin(connection: Connection) -> None:
    # A writer that begins as a reader can fail half-way, when another process wrote meanwhile.
    writes = connection.get_execution_options().get("writes", True)
    connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")
