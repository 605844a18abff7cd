"""The tables, as the newest migration leaves them; times are seconds since 1970, UTC."""

from __future__ import annotations

from typing import Any, Final

from sqlalchemy import (
    Boolean,
    Column,
    Float,
    Index,
    Integer,
    MetaData,
    PrimaryKeyConstraint,
    String,
    Table,
    Text,
)

METADATA: Final = MetaData()


def _conversation_key() -> tuple[Column[str], Column[str], Column[str]]:
    """The three parts of a conversation's key; the thread is empty in a direct room."""
    return (
        Column("room_id", String, nullable=False),
        Column("person_id", String, nullable=False),
        Column("thread_key", String, nullable=False),
    )


def _part_of_context(table: str) -> tuple[Column[Any] | Index, ...]:
    """What each part of a context is stored as: its version, its body, when it changed last."""
    return (
        Column("version", Integer, nullable=False),
        Column("body", Text, nullable=False),
        Column("changed_at", Float),
        Index(f"{table}_changed_at", "changed_at"),
    )


#: Events that are not yet answered, in the order in which they came.
INBOX: Final = Table(
    "inbox",
    METADATA,
    Column("position", Integer, primary_key=True, autoincrement=True),
    Column("event_id", String, nullable=False, unique=True),
    *_conversation_key(),
    Column("body", Text, nullable=False),
    Column("attempts", Integer, nullable=False),
    Column("taken_at", Float, nullable=False),
    Index("inbox_person", "person_id"),
    sqlite_autoincrement=True,
)

#: Ids of all events that were taken in, so that none is answered twice.
HANDLED: Final = Table(
    "handled",
    METADATA,
    Column("event_id", String, primary_key=True),
    Column("taken_at", Float, nullable=False),
    Index("handled_taken_at", "taken_at"),
)

#: Messages to send; once sent, only the ids stay (for `forget me`, and to know own messages).
OUTBOX: Final = Table(
    "outbox",
    METADATA,
    Column("position", Integer, primary_key=True, autoincrement=True),
    Column("row_id", String, nullable=False, unique=True),
    *_conversation_key(),
    Column("thread_id", String),
    Column("urgent", Boolean, nullable=False),
    Column("kept", Boolean, nullable=False),  # False: the row goes once it is sent
    Column("scope", String, nullable=False),  # of the transaction id
    Column("created_at", Float, nullable=False),
    Column("content", Text, nullable=False),
    Column("picture", String),  # name of a stored picture
    Column("uploaded", Text),  # address and key of the picture on the homeserver
    Column("sent_event_id", String),
    Column("question", String),  # that the message put; kept, so that a reply names it
    Index("outbox_person", "person_id"),
    Index("outbox_waiting", "sent_event_id", "position"),
    Index("outbox_thread", "room_id", "thread_id"),
    Index("outbox_picture", "picture"),
    sqlite_autoincrement=True,
)

CONVERSATIONS: Final = Table(
    "conversations",
    METADATA,
    *_conversation_key(),
    *_part_of_context("conversations"),
    PrimaryKeyConstraint("room_id", "person_id", "thread_key"),
    Index("conversations_person", "person_id"),
)

PEOPLE: Final = Table(
    "people",
    METADATA,
    Column("person_id", String, primary_key=True),
    *_part_of_context("people"),
)

#: The place where a person is at present.
PLACES: Final = Table(
    "places",
    METADATA,
    Column("person_id", String, primary_key=True),
    *_part_of_context("places"),
)

ROOMS: Final = Table(
    "rooms",
    METADATA,
    Column("room_id", String, primary_key=True),
    Column("person_id", String),  # whose room it is, when it is a direct one
    *_part_of_context("rooms"),
    Index("rooms_person", "person_id"),
)

#: Slow work; a row goes when its result is written, so what is here is still to do.
JOBS: Final = Table(
    "jobs",
    METADATA,
    Column("job_id", String, primary_key=True),
    Column("kind", String, nullable=False),
    *_conversation_key(),
    Column("frame_event_id", String),
    Column("due", Float, nullable=False),
    Column("origin", Text, nullable=False),
    Column("input", Text, nullable=False),
    Column("attempts", Integer, nullable=False),  # starts, to find work that kills the process
    Column("delays", Integer, nullable=False),  # times that it was put off
    Column("created_at", Float, nullable=False),
    Index("jobs_person", "person_id"),
    Index("jobs_frame", "frame_event_id"),
)

TIMERS: Final = Table(
    "timers",
    METADATA,
    Column("timer_id", String, primary_key=True),
    *_conversation_key(),
    Column("name", String, nullable=False),
    Column("due", Float, nullable=False),
    Column("origin", Text, nullable=False),
    Index("timers_name", "room_id", "person_id", "thread_key", "name", unique=True),
    Index("timers_person", "person_id"),
)

#: Pictures in the data folder, by the names of their files.
PICTURES: Final = Table(
    "pictures",
    METADATA,
    Column("name", String, primary_key=True),
    Column("person_id", String, nullable=False),
    Column("frame_event_id", String),
    Column("expires_at", Float, nullable=False),
    Index("pictures_person", "person_id"),
    Index("pictures_frame", "frame_event_id"),
    Index("pictures_expires_at", "expires_at"),
)

#: Further frames that a picture shows, besides its own: it goes with each of them.
PICTURE_FRAMES: Final = Table(
    "picture_frames",
    METADATA,
    Column("name", String, nullable=False),
    Column("person_id", String, nullable=False),
    Column("frame_event_id", String, nullable=False),
    PrimaryKeyConstraint("name", "frame_event_id"),
    Index("picture_frames_person", "person_id"),
    Index("picture_frames_frame", "frame_event_id"),
)

#: Messages that tell how far slow work has come; a row goes when its message is taken back.
PROGRESS: Final = Table(
    "progress",
    METADATA,
    Column("row_id", String, primary_key=True),  # of the message in the outbox
    *_conversation_key(),
    Column("edit_id", String),  # of the last message that replaced its words
    Column("done", Integer, nullable=False),
    Column("total", Integer, nullable=False),
    Index("progress_person", "person_id"),
)

#: Single values by name: the sync token.
MARKS: Final = Table(
    "marks",
    METADATA,
    Column("name", String, primary_key=True),
    Column("value", Text, nullable=False),
)
