"""Opening and migrating the database."""

from __future__ import annotations

import asyncio

import pytest
import sqlalchemy as sa
from alembic.autogenerate import compare_metadata
from alembic.runtime.migration import MigrationContext

from bot.store.database import Database, SchemaNewerError, newest_schema
from bot.store.store import Store
from bot.store.tables import MARKS, METADATA
from tests.store.examples import NOW


async def test_opening_makes_all_tables(url: str) -> None:
    """From nothing, the migrations lead to exactly the tables that the code uses."""
    database = Database(url)
    await database.open()

    def differences(connection: sa.Connection) -> list[object]:
        return list(compare_metadata(MigrationContext.configure(connection), METADATA))

    assert await database.read(differences) == []
    await database.close()


async def test_opening_again_keeps_what_is_there(url: str) -> None:
    """A second start finds the schema in place and the rows untouched."""
    for token in ("first", "second"):
        store = Store(Database(url))
        await store.open()
        if token == "second":
            assert await store.sync_token() == "first"
        await store.take_in((), token, NOW)
        await store.close()


async def test_newer_schema_is_refused_with_both_numbers(url: str) -> None:
    """A database of a newer version is left alone, and the message says what to do."""
    database = Database(url)
    await database.open()
    await database.write(
        lambda connection: connection.exec_driver_sql(
            "UPDATE alembic_version SET version_num = '9999'"
        )
    )
    await database.close()
    newer = Database(url)
    with pytest.raises(SchemaNewerError, match="run the newer version again") as caught:
        await newer.open()
    await newer.close()
    assert (caught.value.found, caught.value.known) == ("9999", newest_schema())


@pytest.mark.parametrize(
    ("pragma", "value"),
    [("journal_mode", "wal"), ("synchronous", 1), ("foreign_keys", 1), ("secure_delete", 1)],
)
async def test_connections_are_prepared(sqlite_url: str, pragma: str, value: object) -> None:
    """Each connection has the settings on which safety and deleting rest."""
    database = Database(sqlite_url)
    await database.open()
    found = await database.read(
        lambda connection: connection.exec_driver_sql(f"PRAGMA {pragma}").scalar_one()
    )
    await database.close()
    assert found == value


async def test_writers_wait_for_each_other(url: str) -> None:
    """Of twenty writers at once in each of two processes, none loses an update or fails as busy."""
    databases = (Database(url), Database(url))
    await databases[0].open()
    await databases[0].write(
        lambda connection: connection.execute(sa.insert(MARKS).values(name="count", value="0"))
    )

    def one_more(connection: sa.Connection) -> None:
        value = int(connection.execute(sa.select(MARKS.c.value)).scalar_one())
        connection.execute(sa.update(MARKS).values(value=str(value + 1)))

    async with asyncio.TaskGroup() as group:
        for number in range(40):
            group.create_task(databases[number % 2].write(one_more))
    count = await databases[0].read(
        lambda connection: connection.execute(sa.select(MARKS.c.value)).scalar_one()
    )
    assert count == "40"
    for database in databases:
        await database.close()


async def test_a_change_that_raises_writes_nothing(url: str) -> None:
    """An exception inside a transaction undoes all of it."""
    database = Database(url)
    await database.open()

    def break_off(connection: sa.Connection) -> None:
        connection.execute(sa.insert(MARKS).values(name="half", value="done"))
        raise RuntimeError

    with pytest.raises(RuntimeError):
        await database.write(break_off)
    assert await database.read(lambda connection: connection.execute(sa.select(MARKS)).all()) == []
    await database.close()


async def test_errors_do_not_quote_what_was_written(url: str) -> None:
    """The text of a database error names the statement, not its values."""
    database = Database(url)
    await database.open()
    twice = [{"name": "kingfisher", "value": "kingfisher"}] * 2
    with pytest.raises(sa.exc.IntegrityError) as caught:
        await database.write(lambda connection: connection.execute(sa.insert(MARKS), twice))
    assert "kingfisher" not in str(caught.value)
    await database.close()
