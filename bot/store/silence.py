"""Deleting what is known of people who have not written for long."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import Connection, delete, select

from bot.store.tables import CONVERSATIONS, PEOPLE, PLACES, ROOMS


def forget_silent(connection: Connection, before: datetime) -> None:
    """Delete conversations that nobody went on with since then, and who was silent altogether.

    The ids of the bot's own messages stay, so that a later `forget me` still takes them back.
    """
    old = before.timestamp()
    connection.execute(delete(CONVERSATIONS).where(CONVERSATIONS.c.changed_at < old))
    connection.execute(delete(PEOPLE).where(PEOPLE.c.changed_at < old))
    known = select(PEOPLE.c.person_id)
    for table in (PLACES, ROOMS):
        unused = (table.c.changed_at < old, table.c.person_id.not_in(known))
        connection.execute(delete(table).where(*unused))
