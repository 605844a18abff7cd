"""Deleting: everything of a person in every table, or everything of one frame."""

from __future__ import annotations

from typing import Final

from sqlalchemy import Table, delete, select
from sqlalchemy.ext.asyncio import AsyncConnection

from bot.store.rows import InboxRow, TakeBack
from bot.store.tables import (
    CONVERSATIONS,
    INBOX,
    JOBS,
    OUTBOX,
    PEOPLE,
    PICTURES,
    PLACES,
    ROOMS,
    TIMERS,
)

#: Every table with a person in it; HANDLED holds bare event ids, MARKS the sync token.
PERSONAL_TABLES: Final[tuple[Table, ...]] = (
    CONVERSATIONS,
    PEOPLE,
    PLACES,
    ROOMS,
    JOBS,
    TIMERS,
    PICTURES,
    OUTBOX,
)


async def forget_person(connection: AsyncConnection, row: InboxRow) -> TakeBack:
    """Delete the person's rows and say what has to be taken back outside of the database.

    Events that came after the wish to be forgotten stay: they start anew.
    """
    person_id = row.key.person_id
    sent = await connection.execute(
        select(OUTBOX.c.room_id, OUTBOX.c.sent_event_id)
        .where(OUTBOX.c.person_id == person_id, OUTBOX.c.sent_event_id.is_not(None))
        .order_by(OUTBOX.c.position)
    )
    messages = tuple((message.room_id, message.sent_event_id) for message in sent)
    names = await connection.execute(
        select(PICTURES.c.name).where(PICTURES.c.person_id == person_id)
    )
    pictures = tuple(names.scalars())
    earlier = await _unfinished(connection, person_id)
    for table in PERSONAL_TABLES:
        await connection.execute(delete(table).where(table.c.person_id == person_id))
    before = INBOX.c.position < row.position
    await connection.execute(delete(INBOX).where(INBOX.c.person_id == person_id, before))
    return TakeBack(
        messages=messages + earlier.messages, pictures=pictures + earlier.pictures, shred=True
    )


async def _unfinished(connection: AsyncConnection, person_id: str) -> TakeBack:
    """What earlier jobs were still to take back; they go with the person's other jobs."""
    inputs = await connection.execute(
        select(JOBS.c.input).where(JOBS.c.person_id == person_id, JOBS.c.kind == "take_back")
    )
    jobs = [TakeBack.model_validate_json(text) for text in inputs.scalars()]
    return TakeBack(
        messages=tuple(message for job in jobs for message in job.messages),
        pictures=tuple(picture for job in jobs for picture in job.pictures),
    )


async def drop_frame(connection: AsyncConnection, person_id: str, frame_event_id: str) -> TakeBack:
    """Delete a frame's check and pictures and say what has to be taken back outside."""
    owned = (PICTURES.c.person_id == person_id, PICTURES.c.frame_event_id == frame_event_id)
    pictures = tuple((await connection.execute(select(PICTURES.c.name).where(*owned))).scalars())
    shown = OUTBOX.c.picture.in_(pictures)
    sent = await connection.execute(
        select(OUTBOX.c.room_id, OUTBOX.c.sent_event_id).where(
            shown, OUTBOX.c.sent_event_id.is_not(None)
        )
    )
    messages = tuple((message.room_id, message.sent_event_id) for message in sent)
    await connection.execute(delete(OUTBOX).where(shown))
    await connection.execute(delete(PICTURES).where(*owned))
    await connection.execute(
        delete(JOBS).where(
            JOBS.c.person_id == person_id,
            JOBS.c.frame_event_id == frame_event_id,
            JOBS.c.kind != "take_back",
        )
    )
    return TakeBack(messages=messages, pictures=pictures)
