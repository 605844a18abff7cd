"""All rows from one database to another, whatever kind each of them is."""

from __future__ import annotations

from typing import Final

from sqlalchemy import Connection, Integer, MetaData, Table, func, insert, inspect, select, text

from bot.store.database import found_schema, migrate

#: The table in which Alembic keeps the schema's number.
_SCHEMA_TABLE: Final = "alembic_version"
#: How many rows are held in memory at a time (own rule).
_ROWS: Final = 500


def is_empty(connection: Connection) -> bool:
    """Whether a database has no table."""
    return not inspect(connection).get_table_names()


def copy_all(source: Connection, target: Connection) -> bool:
    """Copy all tables into an empty database, at the schema that they have.

    Both connections are in a transaction, and the source shows one state throughout.

    Returns:
        False, with nothing written, when the source has no tables of ours.

    Raises:
        SchemaNewerError: this version does not know the schema.
    """
    schema = found_schema(source)
    if schema is None:
        return False
    migrate(target, schema)
    # As they are at that schema, which may be older than the one the code uses.
    tables = MetaData()
    tables.reflect(target)
    for table in tables.sorted_tables:
        if table.name != _SCHEMA_TABLE:
            _copy(source, target, table)
    return True


def _copy(source: Connection, target: Connection, table: Table) -> None:
    rows = source.execution_options(yield_per=_ROWS).execute(select(table))
    for part in rows.mappings().partitions(_ROWS):
        target.execute(insert(table), [dict(row) for row in part])
    if target.dialect.name == "postgresql":
        _go_on_counting(target, table)


def _go_on_counting(target: Connection, table: Table) -> None:
    """Rows that came with their numbers have not moved the server's counter."""
    for column in table.primary_key.columns:
        if isinstance(column.type, Integer):
            last = target.execute(select(func.max(column))).scalar()
            target.execute(
                text("SELECT setval(pg_get_serial_sequence(:table, :column), :last)"),
                {"table": table.name, "column": column.name, "last": last or 1},
            )
