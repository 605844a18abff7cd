"""Deleting: everything of a person in every table, or everything of one frame."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Final

from sqlalchemy import ColumnElement, Connection, Table, and_, delete, or_, select

from bot.store.rows import InboxRow, JobKind, TakeBack, Unsure
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


@dataclass(frozen=True)
class Deleted:
    """What was deleted: what is to be taken back outside, and positions of unsent messages."""

    take_back: TakeBack
    unsent: tuple[int, ...]


def forget_person(connection: Connection, row: InboxRow) -> Deleted:
    """Delete the person's rows and say what has to be taken back outside of the database.

    Events that came after the wish to be forgotten stay: they start anew.
    """
    person_id = row.key.person_id
    messages = _messages(connection, OUTBOX.c.person_id == person_id)
    pictures = _pictures(connection, PICTURES.c.person_id == person_id)
    earlier = _unfinished(connection, person_id)
    for table in PERSONAL_TABLES:
        connection.execute(delete(table).where(table.c.person_id == person_id))
    # Results and reminders belong to what was before, even if they came in after the wish.
    before = or_(
        INBOX.c.position < row.position,
        *(INBOX.c.event_id.like(f"{made}-%") for made in ("job", "timer")),
    )
    connection.execute(delete(INBOX).where(INBOX.c.person_id == person_id, before))
    everything = TakeBack(
        messages=messages.take_back.messages + earlier.messages,
        unsure=messages.take_back.unsure + earlier.unsure,
        pictures=pictures + earlier.pictures,
        shred=True,
    )
    return Deleted(everything, messages.unsent)


def drop_frame(connection: Connection, person_id: str, frame_event_id: str) -> Deleted:
    """Delete a frame's check and pictures and say what has to be taken back outside."""
    owned = and_(PICTURES.c.person_id == person_id, PICTURES.c.frame_event_id == frame_event_id)
    pictures = _pictures(connection, owned)
    shown = OUTBOX.c.picture.in_(pictures)
    messages = _messages(connection, shown)
    connection.execute(delete(OUTBOX).where(shown))
    connection.execute(delete(PICTURES).where(owned))
    connection.execute(
        delete(JOBS).where(
            JOBS.c.person_id == person_id,
            JOBS.c.frame_event_id == frame_event_id,
            JOBS.c.kind != JobKind.TAKE_BACK.value,
        )
    )
    everything = messages.take_back.model_copy(update={"pictures": pictures})
    return Deleted(everything, messages.unsent)


def _messages(connection: Connection, which: ColumnElement[bool]) -> Deleted:
    """The messages that are sent, and those that may be: a crash can come before that is known."""
    columns = (
        OUTBOX.c.position,
        OUTBOX.c.room_id,
        OUTBOX.c.row_id,
        OUTBOX.c.created_at,
        OUTBOX.c.sent_event_id,
    )
    rows = connection.execute(select(*columns).where(which).order_by(OUTBOX.c.position)).all()
    unsent = [row for row in rows if row.sent_event_id is None]
    return Deleted(
        TakeBack(
            messages=tuple((row.room_id, row.sent_event_id) for row in rows if row.sent_event_id),
            unsure=tuple(
                Unsure(
                    room_id=row.room_id,
                    row_id=row.row_id,
                    created_at=datetime.fromtimestamp(row.created_at, UTC),
                )
                for row in unsent
            ),
        ),
        tuple(row.position for row in unsent),
    )


def _pictures(connection: Connection, which: ColumnElement[bool]) -> tuple[str, ...]:
    return tuple((connection.execute(select(PICTURES.c.name).where(which))).scalars())


def _unfinished(connection: Connection, person_id: str) -> TakeBack:
    """What earlier jobs were still to take back; they go with the person's other jobs."""
    which = (JOBS.c.person_id == person_id, JOBS.c.kind == JobKind.TAKE_BACK.value)
    inputs = connection.execute(select(JOBS.c.input).where(*which))
    jobs = [TakeBack.model_validate_json(text) for text in inputs.scalars()]
    return TakeBack(
        messages=tuple(message for job in jobs for message in job.messages),
        unsure=tuple(message for job in jobs for message in job.unsure),
        pictures=tuple(picture for job in jobs for picture in job.pictures),
    )
