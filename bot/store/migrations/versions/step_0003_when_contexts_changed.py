"""When each part of a context was written last, so that what nobody uses any more can go."""

from __future__ import annotations

import time

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"

_TABLES = ("conversations", "people", "places", "rooms")


def upgrade() -> None:
    """From parts without a time to parts that count from the upgrade on."""
    for name in _TABLES:
        op.add_column(name, sa.Column("changed_at", sa.Float(), nullable=True))
        table = sa.table(name, sa.column("changed_at", sa.Float()))
        op.execute(table.update().values(changed_at=time.time()))
        op.create_index(f"{name}_changed_at", name, ["changed_at"])
