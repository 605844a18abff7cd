"""Messages: written with the answer, sent once, then reduced to their ids."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import UTC, datetime
from typing import Any

from sqlalchemy import Connection, Row, and_, delete, insert, select, update

from bot.store.rows import ConversationKey, Message, OutboxRow, OwnMessage
from bot.store.tables import INBOX, JOBS, OUTBOX


def add_messages(connection: Connection, messages: Sequence[OutboxRow]) -> tuple[OutboxRow, ...]:
    """Write messages to send; what comes back carries the positions, in order."""
    if not messages:
        return ()
    positions = connection.execute(
        insert(OUTBOX).returning(OUTBOX.c.position, sort_by_parameter_order=True),
        [_columns(message) for message in messages],
    )
    return tuple(
        replace(message, position=position)
        for position, message in zip(positions.scalars(), messages, strict=True)
    )


def _columns(row: OutboxRow) -> dict[str, Any]:
    return row.key.values | {
        "row_id": row.row_id,
        "thread_id": row.thread_id,
        "urgent": row.urgent,
        "kept": row.kept,
        "scope": row.scope,
        "created_at": row.created_at.timestamp(),
        "content": row.message.model_dump_json(),
        "picture": row.picture,
        "uploaded": row.uploaded,
        "question": row.question,
    }


def waiting_messages(connection: Connection) -> tuple[OutboxRow, ...]:
    """All messages that are not known to be sent, in order."""
    rows = connection.execute(
        select(OUTBOX).where(OUTBOX.c.sent_event_id.is_(None)).order_by(OUTBOX.c.position)
    )
    return tuple(_row(row) for row in rows)


def _row(row: Row[Any]) -> OutboxRow:
    return OutboxRow(
        row_id=row.row_id,
        key=ConversationKey(row.room_id, row.person_id, row.thread_key),
        message=Message.model_validate_json(row.content),
        scope=row.scope,
        created_at=datetime.fromtimestamp(row.created_at, UTC),
        thread_id=row.thread_id,
        urgent=row.urgent,
        kept=row.kept,
        picture=row.picture,
        uploaded=row.uploaded,
        question=row.question,
        position=row.position,
    )


def write_upload(connection: Connection, row: OutboxRow, uploaded: str) -> None:
    """Keep address and key of the picture before the event that names them is sent."""
    connection.execute(
        update(OUTBOX).where(OUTBOX.c.position == row.position).values(uploaded=uploaded)
    )


def write_seen(connection: Connection, seen: Mapping[str, str]) -> None:
    """Reduce messages that were seen in their rooms to their ids: event ids by row ids.

    One that is not to be kept stays as it is: its row has to go when its own request succeeds.
    """
    for row_id, event_id in seen.items():
        unsent = and_(OUTBOX.c.row_id == row_id, OUTBOX.c.sent_event_id.is_(None), OUTBOX.c.kept)
        connection.execute(update(OUTBOX).where(unsent).values(**_ids_only(event_id)))


def _ids_only(event_id: str) -> dict[str, Any]:
    return {"sent_event_id": event_id, "content": "", "uploaded": None}


def write_sent(connection: Connection, row: OutboxRow, event_id: str) -> bool:
    """Reduce a message to its ids; False when it was forgotten while it was on its way."""
    same = OUTBOX.c.position == row.position
    if row.kept:
        changed = connection.execute(update(OUTBOX).where(same).values(**_ids_only(event_id)))
    else:
        changed = connection.execute(delete(OUTBOX).where(same))
    return bool(changed.rowcount)


def sent_as(connection: Connection, row_id: str) -> str | None:
    """The event that a message was sent as, None when it is not known to be sent."""
    same = OUTBOX.c.row_id == row_id
    event_id: str | None = connection.execute(select(OUTBOX.c.sent_event_id).where(same)).scalar()
    return event_id


def drop_message(connection: Connection, row: OutboxRow) -> OutboxRow | None:
    """Drop a message that will never be taken; one that has moved comes back and stays."""
    same = OUTBOX.c.position == row.position
    stored = connection.execute(select(OUTBOX).where(same)).first()
    if stored is not None and stored.room_id != row.key.room_id:
        return _row(stored)
    connection.execute(delete(OUTBOX).where(same))
    return None


def move_message(connection: Connection, row: OutboxRow) -> None:
    """Write where a message goes by now; its picture is uploaded anew, as that room wants it."""
    columns = _columns(row)
    where = {name: columns[name] for name in (*row.key.values, "thread_id", "content", "uploaded")}
    connection.execute(update(OUTBOX).where(OUTBOX.c.position == row.position).values(**where))


def is_own_thread(connection: Connection, room_id: str, thread_id: str) -> bool:
    """Whether what stands in this thread is for the bot: it has answered there, or is about to."""
    written = and_(OUTBOX.c.room_id == room_id, OUTBOX.c.thread_id == thread_id)
    begun = and_(JOBS.c.room_id == room_id, JOBS.c.thread_key == thread_id)
    for position, same in ((OUTBOX.c.position, written), (JOBS.c.job_id, begun)):
        if connection.execute(select(position).where(same).limit(1)).first() is not None:
            return True
    waits = and_(INBOX.c.room_id == room_id, INBOX.c.thread_key == thread_id)
    bodies = connection.execute(select(INBOX.c.body).where(waits)).scalars()
    return any(json.loads(body)["origin"]["addressed"] for body in bodies)


def own_message(connection: Connection, room_id: str, event_id: str) -> OwnMessage | None:
    """To whom this event was sent from the outbox, None when it was not."""
    same = and_(OUTBOX.c.room_id == room_id, OUTBOX.c.sent_event_id == event_id)
    found = connection.execute(select(OUTBOX.c.person_id, OUTBOX.c.thread_id).where(same)).first()
    return None if found is None else OwnMessage(found.person_id, found.thread_id)


def question_of(connection: Connection, key: ConversationKey, event_id: str) -> str | None:
    """Name of the question that this event put to the conversation; None if it put none."""
    conversation = (OUTBOX.c[name] == value for name, value in key.values.items())
    same = and_(OUTBOX.c.sent_event_id == event_id, *conversation)
    name: str | None = connection.execute(select(OUTBOX.c.question).where(same)).scalar()
    return name
