"""What Alembic runs: the steps, on the connection that the store hands over."""

from __future__ import annotations

from alembic import context

from bot.store.tables import METADATA

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=METADATA,
    render_as_batch=True,  # SQLite can't alter most columns in place
)
# The store's own transaction is around this: all steps or none.
context.run_migrations()
