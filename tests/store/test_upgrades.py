"""Databases that earlier versions have written, opened by this one."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Final

import pytest
import sqlalchemy as sa
from alembic.autogenerate import compare_metadata
from alembic.runtime.migration import MigrationContext

from bot.store.database import Database, found_schema, migrate, newest_schema
from bot.store.pictures import picture_names
from bot.store.rows import Part, StoredText
from bot.store.store import Store
from bot.store.tables import METADATA
from tests.store.examples import KEY, NOW, PERSON, ROOM, job, message, text, timer

_EVENT: Final = text("f/11")
_MESSAGE, _JOB, _TIMER = message("1/4 s"), job(frame="$frame"), timer("turn back")
_PLACE: Final[dict[str, Any]] = {"room_id": ROOM, "person_id": PERSON, "thread_key": ""}

#: One row in each table, with the columns that the first version had.
FIRST_ROWS: Final[dict[str, dict[str, Any]]] = {
    "inbox": _PLACE
    | {
        "event_id": _EVENT.origin.event_id,
        "body": _EVENT.model_dump_json(),
        "attempts": 1,
        "taken_at": NOW.timestamp(),
    },
    "handled": {"event_id": _EVENT.origin.event_id, "taken_at": NOW.timestamp()},
    "outbox": _PLACE
    | {
        "row_id": _MESSAGE.row_id,
        "thread_id": "$root",
        "urgent": True,
        "kept": True,
        "scope": "DEVICE",
        "created_at": NOW.timestamp(),
        "content": _MESSAGE.message.model_dump_json(),
        "picture": "p.png",
    },
    "conversations": _PLACE | {"version": 4, "body": "walk"},
    "people": {"person_id": PERSON, "version": 3, "body": "kit – Ü"},
    "places": {"person_id": PERSON, "version": 2, "body": "fall"},
    "rooms": {"room_id": ROOM, "person_id": PERSON, "version": 1, "body": "room"},
    "jobs": _PLACE
    | {
        "job_id": _JOB.job_id,
        "kind": _JOB.kind.value,
        "frame_event_id": "$frame",
        "due": NOW.timestamp(),
        "origin": _JOB.origin.model_dump_json(),
        "input": "{}",
        "attempts": 0,
        "delays": 0,
        "created_at": NOW.timestamp(),
    },
    "timers": _PLACE
    | {
        "timer_id": _TIMER.timer_id,
        "name": "turn back",
        "due": NOW.timestamp() + 0.123456,
        "origin": _TIMER.origin.model_dump_json(),
    },
    "pictures": {"name": "p.png", "person_id": PERSON, "expires_at": NOW.timestamp()},
    "marks": {"name": "sync", "value": "token"},
}


def _write_as(schema: str, connection: sa.Connection) -> None:
    """What a version with this schema leaves behind."""
    migrate(connection, schema)
    tables = sa.MetaData()
    tables.reflect(connection)
    for name, row in FIRST_ROWS.items():
        connection.execute(sa.insert(tables.tables[name]).values(**row))


@pytest.mark.parametrize("schema", ["0001", "0002"])
async def test_an_older_database_keeps_its_rows(url: str, schema: str) -> None:
    """All that an earlier version wrote is there after the steps to the newest schema."""
    database = Database(url)
    folder = Path(sa.make_url(url).database or "").parent
    if url.startswith("sqlite"):
        folder.mkdir()
    await database.write(lambda connection: _write_as(schema, connection))
    store = Store(database)
    await store.open()
    try:
        await _is_whole(store)
        assert await database.read(found_schema) == newest_schema()
        assert await database.read(picture_names) == ("p.png",)
        assert await database.read(_differences) == []
    finally:
        await store.close()


async def _is_whole(store: Store) -> None:
    backlog = await store.backlog()
    (row,), (waiting,) = backlog.inbox, backlog.messages
    assert (row.event, row.key, row.attempts) == (_EVENT, KEY, 1)
    assert (waiting.row_id, waiting.message, waiting.urgent, waiting.question) == (
        _MESSAGE.row_id,
        _MESSAGE.message,
        True,
        None,
    )
    assert (waiting.thread_id, waiting.picture) == ("$root", "p.png")
    assert [work.job_id for work in backlog.jobs] == [_JOB.job_id]
    assert [reminder.due.timestamp() for reminder in backlog.timers] == [
        FIRST_ROWS["timers"]["due"]
    ]
    assert await store.read_context(KEY) == {
        Part.CONVERSATION: StoredText("walk", 4),
        Part.PERSON: StoredText("kit – Ü", 3),
        Part.PLACE: StoredText("fall", 2),
        Part.ROOM: StoredText("room", 1),
    }
    assert await store.sync_token() == "token"
    assert await store.take_in([_EVENT], None, NOW) == ()


def _differences(connection: sa.Connection) -> list[object]:
    return list(compare_metadata(MigrationContext.configure(connection), METADATA))
