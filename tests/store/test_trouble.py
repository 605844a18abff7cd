"""Databases in trouble: what waits is not lost, nothing is done twice, the log says it once."""

from __future__ import annotations

import asyncio
import sqlite3
from collections.abc import AsyncIterator, Callable, Coroutine
from pathlib import Path
from typing import Any

import pytest
import sqlalchemy as sa
from sqlalchemy.ext.asyncio import AsyncTransaction

from bot.store import database as database_module
from bot.store import server_engine
from bot.store.database import Database
from bot.store.failures import (
    DatabaseRefusedError,
    Passing,
    StillReadError,
    UnreachableError,
    passing,
)
from bot.store.rows import ConflictError, Part, Result
from bot.store.server_engine import ServerEngine
from bot.store.store import Store
from bot.store.tables import MARKS
from bot.trial.homeserver import LOOPBACK, free_port
from tests.postgres import PostgresServer
from tests.store.examples import NOW, row_of, text

#: Longest that a test waits [s]; all takes far less.
PATIENCE_S = 20.0


@pytest.fixture(autouse=True)
def pauses(monkeypatch: pytest.MonkeyPatch) -> list[int]:
    """Pauses are short; how many failures each came after is kept."""
    after: list[int] = []

    def pause_s(failures: int, first_s: float = 1.0) -> float:
        del first_s
        after.append(failures)
        return 0.05

    monkeypatch.setattr(database_module, "pause_s", pause_s)
    monkeypatch.setattr(server_engine, "pause_s", pause_s)
    return after


@pytest.fixture
async def file(sqlite_url: str) -> AsyncIterator[Store]:
    """An opened store on a file."""
    store = Store(Database(sqlite_url))
    await store.open()
    yield store
    await store.close()


async def _seen(pauses: list[int]) -> None:
    """Wait until there was trouble more than once."""
    async with asyncio.timeout(PATIENCE_S):
        while len(pauses) < 2:  # noqa: ASYNC110  (another thread's doing)
            await asyncio.sleep(0.01)


def _limit_pages(store: Store, pages: int) -> Coroutine[Any, Any, None]:
    """Let the file grow to so many pages: SQLite then says what it says on a full disk."""

    def limit(connection: sa.Connection) -> None:
        connection.exec_driver_sql(f"PRAGMA max_page_count={pages}").close()

    return store._database.read(limit)


async def test_on_a_full_disk_events_wait(
    file: Store, pauses: list[int], caplog: pytest.LogCaptureFixture
) -> None:
    """Reading goes on, writing is tried again with pauses, and is done once there is room."""
    await file.take_in([], "token", NOW)
    await _limit_pages(file, 1)  # SQLite takes the present size instead
    long = text("x" * 100_000)
    waiting = asyncio.create_task(file.take_in([long], "next", NOW))
    await _seen(pauses)
    assert await file.sync_token() == "token"
    assert not waiting.done()
    await _limit_pages(file, 1_000_000)
    async with asyncio.timeout(PATIENCE_S):
        assert [row.event for row in await waiting] == [long]
    assert await file.sync_token() == "next"
    assert pauses == list(range(1, len(pauses) + 1))
    assert [line.partition(",")[0] for line in caplog.messages] == [
        "Trouble with writing to the store (the disk is full); it is tried again and again",
        "No more trouble with writing to the store",
    ]


async def test_while_another_process_writes_events_wait(
    file: Store, sqlite_url: str, pauses: list[int], caplog: pytest.LogCaptureFixture
) -> None:
    """A lock that is held for longer than SQLite waits by itself: nothing is lost, told once."""
    await file._database.read(_impatient)
    other = sqlite3.connect(sa.make_url(sqlite_url).database or "", isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    waiting = asyncio.create_task(file.take_in([text("f/11")], "next", NOW))
    await _seen(pauses)
    assert await file.sync_token() is None
    other.execute("COMMIT")
    other.close()
    async with asyncio.timeout(PATIENCE_S):
        assert len(await waiting) == 1
    assert caplog.messages[0] == (
        "Trouble with writing to the store (locked by another process); it is tried again and again"
    )
    assert len(caplog.messages) == 2


async def test_shredding_waits_for_a_reader(
    file: Store, sqlite_url: str, pauses: list[int]
) -> None:
    """A backup that still reads the old state keeps it in the log: that is not taken for done."""
    words = "kingfisher" * 50
    await file.take_in([], words, NOW)
    await file._database.read(_impatient)
    path = Path(sa.make_url(sqlite_url).database or "")
    reader = sqlite3.connect(path, isolation_level=None)
    reader.execute("BEGIN")
    reader.execute("SELECT * FROM marks").fetchall()
    await file.take_in([], "other", NOW)
    shredding = asyncio.create_task(file.shred())
    await _seen(pauses)
    assert not shredding.done()
    reader.close()
    async with asyncio.timeout(PATIENCE_S):
        await shredding
    for left in (path, path.with_name("linn.db-wal")):
        assert words.encode() not in left.read_bytes()


def _impatient(connection: sa.Connection) -> None:
    connection.exec_driver_sql("PRAGMA busy_timeout=1").close()


async def test_a_server_that_starts_late_is_waited_for(
    pauses: list[int], caplog: pytest.LogCaptureFixture
) -> None:
    """Nobody listens yet: opening goes on trying, and the log says so once."""
    database = Database(f"postgresql+asyncpg://linn:word@{LOOPBACK}:{free_port()}/linn")
    opening = asyncio.create_task(database.open())
    await _seen(pauses)
    assert not opening.done()
    opening.cancel()
    await database.close()
    assert caplog.messages == [
        "Trouble with writing to the store (no answer); it is tried again and again"
    ]


async def test_a_database_that_is_not_there_is_an_error(postgres_url: str) -> None:
    """What only an operator can mend is raised, not waited for."""
    database = Database(postgres_url + "_nowhere")
    for act in (database.open(), database.read(_nothing), database.shred()):
        with pytest.raises(DatabaseRefusedError, match=r"InvalidCatalogName.*LINN_DATABASE_URL"):
            await asyncio.wait_for(act, PATIENCE_S)
    await database.close()


def _nothing(_: sa.Connection) -> None:
    """Asks nothing."""


async def test_a_lost_connection_loses_nothing(
    postgres_url: str, postgres: PostgresServer, pauses: list[int]
) -> None:
    """The server ends all connections in the middle of a transaction: it is run again, whole."""
    store = Store(Database(postgres_url))
    await store.open()
    name = sa.make_url(postgres_url).database
    tries = []

    def write(connection: sa.Connection) -> None:
        connection.execute(sa.insert(MARKS).values(name="a", value="b"))
        tries.append(connection)
        if len(tries) == 1:
            connection.exec_driver_sql("SELECT pg_terminate_backend(pg_backend_pid())")

    async with asyncio.timeout(PATIENCE_S):
        await store._database.write(write)
        await postgres.end_connections(str(name))
        assert await store.sync_token() is None
    await store.close()
    assert (len(tries), pauses) == (2, [1])


@pytest.mark.parametrize("arrives", [True, False], ids=["it was committed", "it was not"])
async def test_a_commit_in_doubt_is_looked_up(
    postgres_url: str, monkeypatch: pytest.MonkeyPatch, arrives: bool, pauses: list[int]
) -> None:
    """The connection is lost while it commits: the server is asked, and nothing is done twice."""
    store = Store(Database(postgres_url))
    await store.open()
    doubts = []

    async def commit(_: ServerEngine, begun: AsyncTransaction) -> None:
        doubts.append(begun)
        if arrives or len(doubts) > 1:
            await begun.commit()
        else:
            await begun.rollback()
        if len(doubts) == 1:
            raise ConnectionResetError

    monkeypatch.setattr(ServerEngine, "_commit", commit)
    async with asyncio.timeout(PATIENCE_S):
        rows = await store.take_in([text("f/11")], "token", NOW)
    assert len(rows) == 1
    assert await store.sync_token() == "token"
    assert len((await store.backlog()).inbox) == 1
    assert len(pauses) == (0 if arrives else 1)
    await store.close()


async def test_a_fate_is_asked_for_until_it_is_known(
    postgres_url: str, monkeypatch: pytest.MonkeyPatch, pauses: list[int]
) -> None:
    """While the server is away or still at it, nobody can say; then it is told."""
    engine = ServerEngine(sa.make_url(postgres_url))
    connect = engine._engine.connect
    answers: list[Callable[[], Any]] = [_refuse, connect]
    monkeypatch.setattr(engine, "_engine", _Engine(answers))
    async with connect() as connection:
        begun = await connection.begin()
        number = await connection.scalar(sa.text("SELECT CAST(pg_current_xact_id() AS text)"))
        asking = asyncio.create_task(engine._is_committed(number))
        answers.append(connect)
        await _seen(pauses)
        answers += [connect] * 100
        await begun.commit()
    async with asyncio.timeout(PATIENCE_S):
        assert await asking
    await connection.engine.dispose()


def _refuse() -> Any:
    raise ConnectionRefusedError


class _Engine:
    """Hands out connections, or does not, one answer after the other."""

    def __init__(self, answers: list[Callable[[], Any]]) -> None:
        self._answers = answers

    def connect(self) -> Any:
        """The next answer."""
        return self._answers.pop(0)()


async def test_two_processes_on_one_row_overwrite_nothing(url: str) -> None:
    """Of two answers from the same state, one is written; the other is told, and goes again."""
    stores = [Store(Database(url)) for _ in range(2)]
    await stores[0].open()
    rows = [row_of(await stores[0].take_in([text(words)], None, NOW)) for words in "ab"]
    results = [Result(row, {}, {Part.PERSON: f"kit {number}"}) for number, row in enumerate(rows)]
    done = await asyncio.gather(
        *(store.finish_event(result) for store, result in zip(stores, results, strict=True)),
        return_exceptions=True,
    )
    (lost,) = (number for number, outcome in enumerate(done) if isinstance(outcome, ConflictError))
    kept = (await stores[0].read_context(rows[0].key))[Part.PERSON]
    assert kept.body == f"kit {1 - lost}"
    await stores[lost].finish_event(
        Result(rows[lost], {Part.PERSON: 1}, {Part.PERSON: f"{kept.body}, kit {lost}"})
    )
    assert (await stores[0].read_context(rows[0].key))[Part.PERSON].version == 2
    for store in stores:
        await store.close()


async def test_a_writer_that_another_has_overtaken_goes_again(
    postgres_url: str, pauses: list[int], caplog: pytest.LogCaptureFixture
) -> None:
    """What PostgreSQL refuses because of somebody else's write is run again, without a line."""
    database = Database(postgres_url)
    await database.open()
    await database.write(
        lambda connection: connection.execute(sa.insert(MARKS).values(name="n", value="0"))
    )
    tries = []

    def one_more(connection: sa.Connection) -> None:
        value = int(connection.execute(sa.select(MARKS.c.value)).scalar_one())
        tries.append(value)
        if len(tries) == 1:  # what PostgreSQL says to the slower of two
            connection.exec_driver_sql(
                "DO $$ BEGIN RAISE EXCEPTION 'quicker' USING ERRCODE = '40001'; END $$"
            )
        connection.execute(sa.update(MARKS).values(value=str(value + 1)))

    async with asyncio.timeout(PATIENCE_S):
        await database.write(one_more)
    assert (tries, pauses, caplog.messages) == ([0, 0], [1], [])
    await database.close()


async def test_a_server_is_written_anew_when_shredding(postgres_url: str) -> None:
    """No page of a table holds what was deleted."""
    database = Database(postgres_url)
    await database.open()
    store = Store(database)
    await store.take_in([], "kingfisher" * 50, NOW)
    await store.take_in([], "other", NOW)

    def dead_pages(connection: sa.Connection) -> int:
        query = "SELECT pg_relation_size('marks') / current_setting('block_size')::int"
        return int(connection.exec_driver_sql(query).scalar_one())

    for number in range(200):
        await store.take_in([], f"{number}" * 500, NOW)
    assert await database.read(dead_pages) > 1
    await store.shred()
    assert await database.read(dead_pages) == 1
    await store.close()


class _Driver(Exception):  # noqa: N818  like those of drivers
    def __init__(self, sqlstate: str | None) -> None:
        self.sqlstate = sqlstate


@pytest.mark.parametrize(
    ("error", "kind"),
    [
        (UnreachableError(), Passing("no answer")),
        (StillReadError(), Passing("locked by a reader")),
        (sa.exc.InvalidRequestError(), None),
        (sa.exc.DBAPIError("", None, sqlite3.ProgrammingError()), None),
        (sa.exc.DBAPIError("", None, _Driver("53100")), Passing("the disk is full")),
        (sa.exc.DBAPIError("", None, _Driver("53300")), Passing("out of resources")),
        (sa.exc.DBAPIError("", None, _Driver("40P01")), Passing("another was quicker", True)),
        (
            sa.exc.DBAPIError("", None, _Driver("57P01")),
            Passing("the server is stopping or starting"),
        ),
        (sa.exc.DBAPIError("", None, _Driver("23505")), None),
        (
            sa.exc.DBAPIError("", None, _Driver(None), connection_invalidated=True),
            Passing("the connection was lost"),
        ),
        (sa.exc.DBAPIError("", None, _Driver(None)), None),
    ],
)
def test_what_passes_is_told_from_what_does_not(error: Exception, kind: Passing | None) -> None:
    """By SQLite's codes and PostgreSQL's states; a bug is no trouble that passes."""
    assert passing(error) == kind
