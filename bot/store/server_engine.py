"""PostgreSQL: a server over the network, with one writer among all processes."""

from __future__ import annotations

import asyncio
from typing import Final

from asyncpg import InterfaceError, PostgresError
from sqlalchemy import URL, text
from sqlalchemy.exc import DBAPIError
from sqlalchemy.ext.asyncio import AsyncConnection, AsyncTransaction, create_async_engine

from bot.pauses import pause_s
from bot.store.engines import Answer, Transaction
from bot.store.failures import DatabaseRefusedError, UnreachableError
from bot.store.tables import METADATA

#: Time limits for a connection and for a statement, the wait for a lock included [s] (own rule).
_CONNECT_S: Final = 10.0
_STATEMENT_S: Final = 30.0

#: Taken by each transaction that writes, held to its end. The number is "linn" in ASCII: advisory
#: locks share one space of numbers with whatever else uses the database.
_LOCK: Final = text(f"SELECT pg_advisory_xact_lock({int.from_bytes(b'linn')})")
_NUMBER: Final = text("SELECT CAST(pg_current_xact_id_if_assigned() AS text)")
_FATE: Final = text("SELECT pg_xact_status(CAST(CAST(:number AS text) AS xid8))")

#: What connecting raises by itself (the time limit's error is one of the system's), and what
#: asking raises.
_FAILURES: Final = (OSError, PostgresError, InterfaceError, DBAPIError)
#: States that only an operator changes: wrong password or rights, no such database.
_FINAL_STATES: Final = ("28", "3D", "42501")


class ServerEngine:
    """A database server over the network.

    Writers wait for each other in this process by a lock, and among processes by an advisory
    lock, so that both kinds of database give the same order. A reader sees one state.

    Args:
        url: with an asynchronous driver.
    """

    def __init__(self, url: URL) -> None:
        self._engine = create_async_engine(
            url,
            pool_pre_ping=True,
            hide_parameters=True,  # an error's text would quote what people wrote
            connect_args={"timeout": _CONNECT_S, "command_timeout": _STATEMENT_S},
        )
        self._one_at_a_time = asyncio.Lock()

    async def run(self, transaction: Transaction[Answer], *, writes: bool) -> Answer:
        """Run it; a connection that is lost while it commits is no doubt left to the caller."""
        if not writes:
            return await self._read(transaction)
        async with self._one_at_a_time:
            return await self._write(transaction)

    async def _read(self, transaction: Transaction[Answer]) -> Answer:
        try:
            async with self._engine.connect() as connection:
                await connection.execution_options(
                    isolation_level="REPEATABLE READ", postgresql_readonly=True
                )
                return await connection.run_sync(transaction)
        except _FAILURES as error:
            raise _told(error) from error

    async def _write(self, transaction: Transaction[Answer]) -> Answer:
        number: str | None = None
        try:
            async with self._engine.connect() as connection:
                begun = await connection.begin()
                await connection.execute(_LOCK)
                answer = await connection.run_sync(transaction)
                number = await connection.scalar(_NUMBER)
                await self._commit(begun)
                return answer
        except _FAILURES as error:
            if number is None or not await self._is_committed(number):
                raise _told(error) from error
            return answer

    async def _commit(self, begun: AsyncTransaction) -> None:
        await begun.commit()

    async def _is_committed(self, number: str) -> bool:
        """Ask for the fate of a transaction until the server knows it."""
        failures = 0
        while True:
            failures += 1
            try:
                async with self._engine.connect() as connection:
                    fate = await connection.scalar(_FATE, {"number": number})
            except _FAILURES:
                fate = "in progress"
            if fate != "in progress":
                return bool(fate == "committed")
            await asyncio.sleep(pause_s(failures))

    async def shred(self) -> None:
        """Write all tables anew without what was deleted; the server's log is its operator's."""
        async with self._one_at_a_time:
            try:
                async with self._engine.connect() as connection:
                    await connection.execution_options(isolation_level="AUTOCOMMIT")
                    await _write_anew(connection)
            except _FAILURES as error:
                raise _told(error) from error

    async def empty_log(self) -> None:
        """The server sees to its own log."""

    async def close(self) -> None:
        """Close all connections."""
        await self._engine.dispose()


async def _write_anew(connection: AsyncConnection) -> None:
    for table in METADATA.sorted_tables:
        await connection.execute(text(f"VACUUM (FULL, ANALYZE) {table.name}"))


def _told(error: Exception) -> Exception:
    """What the caller is told: to wait, what an operator has to mend, or the error itself."""
    cause = error.orig if isinstance(error, DBAPIError) else error
    if str(getattr(cause, "sqlstate", None)).startswith(_FINAL_STATES):
        return DatabaseRefusedError(type(getattr(cause, "__cause__", None) or cause).__name__)
    return error if isinstance(error, DBAPIError) else UnreachableError(type(error).__name__)
