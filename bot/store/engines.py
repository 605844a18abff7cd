"""Two ways to run a transaction: SQLite in a thread of its own, PostgreSQL over the network."""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from typing import Any, Final, Protocol, TypeVar

from sqlalchemy import URL, Connection, create_engine, event
from sqlalchemy.ext.asyncio import create_async_engine

Answer = TypeVar("Answer")
Transaction = Callable[[Connection], Answer]

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
    "PRAGMA busy_timeout=5000",  # [ms]; own rule: a backup that reads may take that long
)


class Engine(Protocol):
    """Runs transactions, one writer at a time."""

    async def run(self, transaction: Transaction[Answer]) -> Answer:
        """Run it; what it wrote stays when it returns, and nothing of it when it raises."""
        ...

    async def shred(self) -> None:
        """Take what was deleted out of the files, as far as that is ours to do."""
        ...

    async def close(self) -> None:
        """Close all connections."""
        ...


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

    async def run(self, transaction: Transaction[Answer]) -> Answer:
        """Run it in the thread. When the caller is cancelled, it is still run to its end."""
        return await self._in_thread(lambda: self._transact(transaction))

    def _transact(self, transaction: Transaction[Answer]) -> Answer:
        with self._engine.begin() as connection:
            return transaction(connection)

    async def shred(self) -> None:
        """Empty the write-ahead log, in which older copies of overwritten pages stand."""
        await self._in_thread(self._empty_log)

    def _empty_log(self) -> None:
        with self._engine.connect() as connection:
            driver = connection.connection.driver_connection
            if driver is not None:  # outside of a transaction, which SQLAlchemy would begin
                driver.execute("PRAGMA wal_checkpoint(TRUNCATE)")

    async def close(self) -> None:
        """Close the connection and end the thread."""
        await self._in_thread(self._engine.dispose)
        self._thread.shutdown()

    async def _in_thread(self, work: Callable[[], Answer]) -> Answer:
        return await asyncio.get_running_loop().run_in_executor(self._thread, work)


class ServerEngine:
    """A database server over the network.

    Args:
        url: with an asynchronous driver.
    """

    def __init__(self, url: URL) -> None:
        self._engine = create_async_engine(url, pool_pre_ping=True, hide_parameters=True)
        self._one_at_a_time = asyncio.Lock()

    async def run(self, transaction: Transaction[Answer]) -> Answer:
        """Run it; one at a time, so that both kinds of database give the same order."""
        async with self._one_at_a_time, self._engine.begin() as connection:
            return await connection.run_sync(transaction)

    async def shred(self) -> None:
        """The server's files are its operator's."""

    async def close(self) -> None:
        """Close all connections."""
        await self._engine.dispose()


def engine_for(url: URL) -> Engine:
    """The engine for an address."""
    return SqliteEngine(url) if url.get_backend_name() == "sqlite" else ServerEngine(url)


def _prepare(connection: Any, _record: object) -> None:
    connection.isolation_level = None  # the driver would begin transactions at its own moments
    for pragma in _PRAGMAS:
        connection.execute(pragma).close()


def _begin(connection: Connection) -> None:
    # A writer that begins as a reader can fail half-way, when another process wrote meanwhile.
    connection.exec_driver_sql("BEGIN IMMEDIATE")
