"""Everything that is stored of one person, as plain data: each table's rows, times as ISO 8601."""

from __future__ import annotations

import json
from datetime import UTC, datetime
from typing import Any, Final

from sqlalchemy import Connection, Table, select

from bot.store.tables import METADATA

#: Columns that hold JSON, and those that hold seconds since 1970.
_JSON: Final = frozenset({"body", "content", "origin", "input", "uploaded"})
_TIMES: Final = frozenset({"taken_at", "created_at", "changed_at", "expires_at", "due"})

#: Where the key of an encrypted file stands, and what is told in its place: the file is sent to the
#: person, who may hand it on, and whoever has the key can open the picture.
_KEY: Final = "encryption"
_NOT_TOLD: Final = "kept, and not written here: whoever has it can open the file"

Row = dict[str, Any]


def _without_keys(value: Any) -> Any:
    """The same, without the keys of encrypted files."""
    if isinstance(value, list):
        return [_without_keys(part) for part in value]
    if not isinstance(value, dict):
        return value
    return {
        name: _NOT_TOLD if name == _KEY and part is not None else _without_keys(part)
        for name, part in value.items()
    }


def everything_of(connection: Connection, person_id: str) -> dict[str, list[Row]]:
    """All rows that bear the person's id, by the names of their tables.

    Which tables these are is asked of the schema, so that a new one can't be left out.
    """
    return {
        table.name: _rows(connection, table, person_id)
        for table in METADATA.sorted_tables
        if "person_id" in table.c
    }


def _rows(connection: Connection, table: Table, person_id: str) -> list[Row]:
    found = connection.execute(
        select(table).where(table.c.person_id == person_id).order_by(*table.primary_key.columns)
    )
    return [
        {name: _plain(name, value) for name, value in row.items() if name != "person_id"}
        for row in found.mappings()
    ]


def _plain(name: str, value: Any) -> Any:
    if name in _JSON and value:
        return _without_keys(json.loads(value))
    if name in _TIMES and value is not None:
        return datetime.fromtimestamp(value, UTC).isoformat(timespec="seconds")
    return value
