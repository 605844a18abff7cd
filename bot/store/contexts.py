"""Contexts: four parts in four tables, read together, written if nobody else has."""

from __future__ import annotations

import json
from collections.abc import Mapping
from datetime import UTC, datetime
from typing import Any, Final

from sqlalchemy import (
    ColumnElement,
    Connection,
    Table,
    and_,
    bindparam,
    delete,
    insert,
    literal,
    select,
    union_all,
    update,
)
from sqlalchemy.exc import IntegrityError

from bot.store.rows import ConflictError, ConversationKey, Part, StoredText
from bot.store.tables import CONVERSATIONS, INBOX, PEOPLE, PLACES, ROOMS

_TABLES: Final[Mapping[Part, Table]] = {
    Part.CONVERSATION: CONVERSATIONS,
    Part.PERSON: PEOPLE,
    Part.PLACE: PLACES,
    Part.ROOM: ROOMS,
}


#: By which columns of a conversation's key a part is found.
_KEYS: Final[Mapping[Part, tuple[str, ...]]] = {
    Part.CONVERSATION: ("room_id", "person_id", "thread_key"),
    Part.PERSON: ("person_id",),
    Part.PLACE: ("person_id",),
    Part.ROOM: ("room_id",),
}


def _is_row(part: Part) -> ColumnElement[bool]:
    """The condition that finds a part, with the key's columns as parameters."""
    columns = _TABLES[part].c
    # Updates reserve the parameters that are named like their columns.
    return and_(*(columns[name] == bindparam(f"key_{name}") for name in _KEYS[part]))


def _parameters(key: ConversationKey) -> dict[str, str]:
    return {f"key_{name}": value for name, value in key.values.items()}


#: All parts in one question. Built once: building takes longer than asking.
_READ: Final = union_all(
    *(
        select(literal(part.value).label("part"), table.c.version, table.c.body).where(
            _is_row(part)
        )
        for part, table in _TABLES.items()
    )
)


def read_context(connection: Connection, key: ConversationKey) -> dict[Part, StoredText]:
    """The parts of a conversation's context that have a row."""
    rows = connection.execute(_READ, _parameters(key))
    return {Part(row.part): StoredText(row.body, row.version) for row in rows}


def write_context(
    connection: Connection,
    key: ConversationKey,
    versions: Mapping[Part, int],
    changes: Mapping[Part, str | None],
    at: datetime | None = None,
) -> None:
    """Write the changed parts, if all parts still have the versions that were read.

    The whole context is compared, not the changed parts alone: the answer rests on all of it.

    Raises:
        ConflictError: another has written one of them.
    """
    now = {part: text.version for part, text in read_context(connection, key).items()}
    if now != dict(versions):
        raise ConflictError
    for part, body in changes.items():
        values = {"body": body, "changed_at": None if at is None else at.timestamp()}
        _write_part(connection, part, key, versions.get(part, 0), values)


def _write_part(
    connection: Connection,
    part: Part,
    key: ConversationKey,
    version: int,
    values: Mapping[str, Any],
) -> None:
    table = _TABLES[part]
    same = and_(_is_row(part), table.c.version == version)
    parameters = _parameters(key)
    if values["body"] is None:
        connection.execute(delete(table).where(same), parameters)
    elif version:
        newer = update(table).where(same).values(**values, version=version + 1)
        changed = connection.execute(newer, parameters)
        if not changed.rowcount:
            raise ConflictError
    else:
        _insert_part(connection, part, key, values)


def _insert_part(
    connection: Connection, part: Part, key: ConversationKey, values: Mapping[str, Any]
) -> None:
    values = {**values, "version": 1, **{name: key.values[name] for name in _KEYS[part]}}
    if part is Part.ROOM and not key.thread_key:  # a direct room is its person's
        values["person_id"] = key.person_id
    try:
        connection.execute(insert(_TABLES[part]).values(**values))
    except IntegrityError:  # possible between processes only
        raise ConflictError from None


def talks_in(connection: Connection, room_id: str) -> tuple[tuple[str, str, datetime], ...]:
    """The conversations of a room: whose, their bodies, and when they changed last."""
    rows = connection.execute(select(CONVERSATIONS).where(CONVERSATIONS.c.room_id == room_id))
    return tuple(
        (row.person_id, row.body, datetime.fromtimestamp(row.changed_at or 0.0, UTC))
        for row in rows
    )


def forget_media(connection: Connection, before: datetime) -> None:
    """Forget where shared frames lie, and their keys, once they were shared before then.

    A frame of which it is not known when it was shared counts from the last change on.
    """
    has_media = CONVERSATIONS.c.body.contains('"media":{"', autoescape=True)
    for row in connection.execute(select(CONVERSATIONS).where(has_media)).all():
        conversation = json.loads(row.body)
        media = conversation["media"]
        changed_at = datetime.fromtimestamp(row.changed_at or 0.0, UTC)
        kept = {frame: ref for frame, ref in media.items() if _shared_at(ref, changed_at) >= before}
        if len(kept) < len(media):
            body = json.dumps(conversation | {"media": kept}, separators=(",", ":"))
            key = ConversationKey(row.room_id, row.person_id, row.thread_key)
            values = {"body": body, "changed_at": row.changed_at}
            _write_part(connection, Part.CONVERSATION, key, row.version, values)


def _shared_at(media: Mapping[str, Any], otherwise: datetime) -> datetime:
    shared_at: str | None = media.get("shared_at")
    return otherwise if shared_at is None else datetime.fromisoformat(shared_at)


def thread_with(connection: Connection, room_id: str, person_id: str, event_id: str) -> str | None:
    """The key of the person's thread in which this event stands, None when no row names it.

    A redacted event no longer says in which thread it stood; what waits or was answered does.
    """
    for table, names_it in (
        (INBOX, INBOX.c.event_id == event_id),
        (CONVERSATIONS, CONVERSATIONS.c.body.contains(event_id, autoescape=True)),
    ):
        same = and_(table.c.room_id == room_id, table.c.person_id == person_id, names_it)
        found: str | None = connection.execute(select(table.c.thread_key).where(same)).scalar()
        if found is not None:
            return found
    return None
