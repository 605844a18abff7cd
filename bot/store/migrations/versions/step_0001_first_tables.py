"""The first tables."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None


def upgrade() -> None:
    """From nothing to the first tables."""
    op.create_table(
        "conversations",
        sa.Column("room_id", sa.String(), nullable=False),
        sa.Column("person_id", sa.String(), nullable=False),
        sa.Column("thread_key", sa.String(), nullable=False),
        sa.Column("version", sa.Integer(), nullable=False),
        sa.Column("body", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("room_id", "person_id", "thread_key"),
    )
    op.create_index("conversations_person", "conversations", ["person_id"], unique=False)
    op.create_table(
        "handled",
        sa.Column("event_id", sa.String(), nullable=False),
        sa.Column("taken_at", sa.Float(), nullable=False),
        sa.PrimaryKeyConstraint("event_id"),
    )
    op.create_index("handled_taken_at", "handled", ["taken_at"], unique=False)
    op.create_table(
        "inbox",
        sa.Column("position", sa.Integer(), autoincrement=True, nullable=False),
        sa.Column("event_id", sa.String(), nullable=False),
        sa.Column("room_id", sa.String(), nullable=False),
        sa.Column("person_id", sa.String(), nullable=False),
        sa.Column("thread_key", sa.String(), nullable=False),
        sa.Column("body", sa.Text(), nullable=False),
        sa.Column("attempts", sa.Integer(), nullable=False),
        sa.Column("taken_at", sa.Float(), nullable=False),
        sa.PrimaryKeyConstraint("position"),
        sa.UniqueConstraint("event_id"),
        sqlite_autoincrement=True,
    )
    op.create_index("inbox_person", "inbox", ["person_id"], unique=False)
    op.create_table(
        "jobs",
        sa.Column("job_id", sa.String(), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("room_id", sa.String(), nullable=False),
        sa.Column("person_id", sa.String(), nullable=False),
        sa.Column("thread_key", sa.String(), nullable=False),
        sa.Column("frame_event_id", sa.String(), nullable=True),
        sa.Column("due", sa.Float(), nullable=False),
        sa.Column("origin", sa.Text(), nullable=False),
        sa.Column("input", sa.Text(), nullable=False),
        sa.Column("attempts", sa.Integer(), nullable=False),
        sa.Column("delays", sa.Integer(), nullable=False),
        sa.Column("created_at", sa.Float(), nullable=False),
        sa.PrimaryKeyConstraint("job_id"),
    )
    op.create_index("jobs_frame", "jobs", ["frame_event_id"], unique=False)
    op.create_index("jobs_person", "jobs", ["person_id"], unique=False)
    op.create_table(
        "marks",
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("value", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("name"),
    )
    op.create_table(
        "outbox",
        sa.Column("position", sa.Integer(), autoincrement=True, nullable=False),
        sa.Column("row_id", sa.String(), nullable=False),
        sa.Column("room_id", sa.String(), nullable=False),
        sa.Column("person_id", sa.String(), nullable=False),
        sa.Column("thread_key", sa.String(), nullable=False),
        sa.Column("thread_id", sa.String(), nullable=True),
        sa.Column("urgent", sa.Boolean(), nullable=False),
        sa.Column("kept", sa.Boolean(), nullable=False),
        sa.Column("scope", sa.String(), nullable=False),
        sa.Column("created_at", sa.Float(), nullable=False),
        sa.Column("content", sa.Text(), nullable=False),
        sa.Column("picture", sa.String(), nullable=True),
        sa.Column("uploaded", sa.Text(), nullable=True),
        sa.Column("sent_event_id", sa.String(), nullable=True),
        sa.PrimaryKeyConstraint("position"),
        sa.UniqueConstraint("row_id"),
        sqlite_autoincrement=True,
    )
    op.create_index("outbox_person", "outbox", ["person_id"], unique=False)
    op.create_index("outbox_picture", "outbox", ["picture"], unique=False)
    op.create_index("outbox_thread", "outbox", ["room_id", "thread_id"], unique=False)
    op.create_index("outbox_waiting", "outbox", ["sent_event_id", "position"], unique=False)
    op.create_table(
        "people",
        sa.Column("person_id", sa.String(), nullable=False),
        sa.Column("version", sa.Integer(), nullable=False),
        sa.Column("body", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("person_id"),
    )
    op.create_table(
        "pictures",
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("person_id", sa.String(), nullable=False),
        sa.Column("frame_event_id", sa.String(), nullable=True),
        sa.Column("expires_at", sa.Float(), nullable=False),
        sa.PrimaryKeyConstraint("name"),
    )
    op.create_index("pictures_expires_at", "pictures", ["expires_at"], unique=False)
    op.create_index("pictures_frame", "pictures", ["frame_event_id"], unique=False)
    op.create_index("pictures_person", "pictures", ["person_id"], unique=False)
    op.create_table(
        "places",
        sa.Column("person_id", sa.String(), nullable=False),
        sa.Column("version", sa.Integer(), nullable=False),
        sa.Column("body", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("person_id"),
    )
    op.create_table(
        "rooms",
        sa.Column("room_id", sa.String(), nullable=False),
        sa.Column("person_id", sa.String(), nullable=True),
        sa.Column("version", sa.Integer(), nullable=False),
        sa.Column("body", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("room_id"),
    )
    op.create_index("rooms_person", "rooms", ["person_id"], unique=False)
    op.create_table(
        "timers",
        sa.Column("timer_id", sa.String(), nullable=False),
        sa.Column("room_id", sa.String(), nullable=False),
        sa.Column("person_id", sa.String(), nullable=False),
        sa.Column("thread_key", sa.String(), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("due", sa.Float(), nullable=False),
        sa.Column("origin", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("timer_id"),
    )
    op.create_index(
        "timers_name", "timers", ["room_id", "person_id", "thread_key", "name"], unique=True
    )
    op.create_index("timers_person", "timers", ["person_id"], unique=False)
