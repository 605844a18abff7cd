"""Pictures that show several frames, and messages that tell how far slow work has come."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"


def upgrade() -> None:
    """From pictures of one frame, and work without progress, to both."""
    op.create_table(
        "picture_frames",
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("person_id", sa.String(), nullable=False),
        sa.Column("frame_event_id", sa.String(), nullable=False),
        sa.PrimaryKeyConstraint("name", "frame_event_id"),
    )
    op.create_index("picture_frames_person", "picture_frames", ["person_id"])
    op.create_index("picture_frames_frame", "picture_frames", ["frame_event_id"])
    op.create_table(
        "progress",
        sa.Column("row_id", sa.String(), nullable=False),
        sa.Column("room_id", sa.String(), nullable=False),
        sa.Column("person_id", sa.String(), nullable=False),
        sa.Column("thread_key", sa.String(), nullable=False),
        sa.Column("edit_id", sa.String(), nullable=True),
        sa.Column("done", sa.Integer(), nullable=False),
        sa.Column("total", sa.Integer(), nullable=False),
        sa.PrimaryKeyConstraint("row_id"),
    )
    op.create_index("progress_person", "progress", ["person_id"])
