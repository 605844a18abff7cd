"""The question that a message put, so that a reply to it can be told what it answers."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"


def upgrade() -> None:
    """From messages that are known by their ids to those whose question is known too."""
    op.add_column("outbox", sa.Column("question", sa.String(), nullable=True))
