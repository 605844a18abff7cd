"""What a database that was brought back does not do any more: the bot before has done it."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import Connection, delete

from bot.store.rows import JobKind
from bot.store.tables import INBOX, JOBS, OUTBOX, TIMERS


def settle(connection: Connection, now: datetime) -> None:
    """Drop events, messages and work that waited when the backup was made, and late reminders.

    What was to be taken out of rooms is still taken out: doing that twice harms nobody.
    """
    connection.execute(delete(INBOX))
    connection.execute(delete(OUTBOX).where(OUTBOX.c.sent_event_id.is_(None)))
    connection.execute(delete(JOBS).where(JOBS.c.kind != JobKind.TAKE_BACK.value))
    connection.execute(delete(TIMERS).where(TIMERS.c.due <= now.timestamp()))
