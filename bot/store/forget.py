"""Deleting: everything of a person in every table, or everything of one frame."""

from __future__ import annotations

import json
from collections.abc import Collection
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Any, Final

from sqlalchemy import ColumnElement, Connection, Table, and_, delete, or_, select

from bot.store.rows import InboxRow, JobKind, TakeBack, Unsure
from bot.store.tables import (
    CONVERSATIONS,
    INBOX,
    JOBS,
    OUTBOX,
    PEOPLE,
    PICTURE_FRAMES,
    PICTURES,
    PLACES,
    PROGRESS,
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
    PICTURE_FRAMES,
    PROGRESS,
    OUTBOX,
)


@dataclass(frozen=True)
class Deleted:
    """What was deleted: what is to be taken back outside, positions of unsent messages, jobs."""

    take_back: TakeBack
    unsent: tuple[int, ...]
    ended: tuple[str, ...] = ()


def forget_person(connection: Connection, row: InboxRow) -> Deleted:
    """Delete the person's rows and say what has to be taken back outside of the database.

    Events that came after the wish to be forgotten stay: they start anew.
    """
    person_id = row.key.person_id
    messages = _messages(connection, OUTBOX.c.person_id == person_id)
    pictures = _pictures(connection, PICTURES.c.person_id == person_id)
    earlier = _unfinished(connection, person_id)
    ended = _end_jobs(connection, JOBS.c.person_id == person_id)
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
    return Deleted(everything, messages.unsent, ended)


def drop_frame(connection: Connection, person_id: str, frame_event_id: str) -> Deleted:
    """Delete what measures a frame and all that shows it; what has to be taken back outside."""
    among = select(PICTURE_FRAMES.c.name).where(
        PICTURE_FRAMES.c.person_id == person_id, PICTURE_FRAMES.c.frame_event_id == frame_event_id
    )
    shows = or_(PICTURES.c.frame_event_id == frame_event_id, PICTURES.c.name.in_(among))
    owned = and_(PICTURES.c.person_id == person_id, shows)
    pictures = _pictures(connection, owned)
    shown = OUTBOX.c.picture.in_(pictures)
    messages = _messages(connection, shown)
    connection.execute(delete(OUTBOX).where(shown))
    connection.execute(delete(PICTURES).where(owned))
    connection.execute(delete(PICTURE_FRAMES).where(PICTURE_FRAMES.c.name.in_(pictures)))
    ended = end_measuring(connection, JOBS.c.person_id == person_id, frozenset({frame_event_id}))
    everything = messages.take_back.model_copy(update={"pictures": pictures})
    return Deleted(everything, messages.unsent, ended)


def end_measuring(
    connection: Connection, whose: ColumnElement[bool], frames: frozenset[str]
) -> tuple[str, ...]:
    """Delete what measures one of these frames, everything that measures when there are none.

    Args:
        connection: inside a transaction.
        whose: of which person, or of which conversation.
        frames: ids of the events that shared them.

    Returns:
        The ids of the jobs.
    """
    kinds = [JobKind.CHECK_FRAME.value, JobKind.MEASURE_FRAMES.value]
    columns = (JOBS.c.job_id, JOBS.c.frame_event_id, JOBS.c.kind, JOBS.c.input)
    rows = connection.execute(select(*columns).where(whose, JOBS.c.kind.in_(kinds))).all()
    ids = [row.job_id for row in rows if not frames or not frames.isdisjoint(_frames(row))]
    return _end_jobs(connection, JOBS.c.job_id.in_(ids))


def _frames(row: Any) -> set[str]:
    """The frames that a job measures."""
    if row.kind == JobKind.CHECK_FRAME.value:
        return {row.frame_event_id}
    return {frame["event_id"] for frame in json.loads(row.input)["frames"]}


def _end_jobs(connection: Connection, which: ColumnElement[bool]) -> tuple[str, ...]:
    """Delete jobs; their ids."""
    return tuple(connection.execute(delete(JOBS).where(which).returning(JOBS.c.job_id)).scalars())


def take_back_messages(
    connection: Connection, row_ids: Collection[str]
) -> tuple[TakeBack, tuple[int, ...]]:
    """Delete messages of the bot; what is to be taken back outside, positions of unsent ones."""
    which = OUTBOX.c.row_id.in_(row_ids)
    messages = _messages(connection, which)
    connection.execute(delete(OUTBOX).where(which))
    return messages.take_back, messages.unsent


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
