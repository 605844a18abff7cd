"""Events: taken in once, handed out in order."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime, timedelta
from typing import Any, Final

from pydantic import TypeAdapter
from sqlalchemy import Connection, Row, bindparam, delete, insert, select, update

from bot.dialogue.events import Event
from bot.store.rows import ConversationKey, GoneError, InboxRow, conversation_key
from bot.store.tables import HANDLED, INBOX, MARKS

_EVENT: Final[TypeAdapter[Event]] = TypeAdapter(Event)
_SYNC: Final = "sync"

# Built once: building takes longer than asking.
_KNOWN: Final = select(HANDLED.c.event_id).where(
    HANDLED.c.event_id.in_(bindparam("event_ids", expanding=True))
)
_INSERT: Final = insert(INBOX).returning(INBOX.c.position, sort_by_parameter_order=True)

#: For how long the ids of events are known; far beyond what a homeserver sends again (own rule).
HANDLED_KEPT: Final = timedelta(days=90)


def add_events(
    connection: Connection, events: Iterable[Event], now: datetime
) -> tuple[InboxRow, ...]:
    """Write those events that are new and give back their rows, in order."""
    by_id = {event.origin.event_id: event for event in events}
    if not by_id:
        return ()
    known = set(connection.execute(_KNOWN, {"event_ids": list(by_id)}).scalars())
    fresh = [event for event_id, event in by_id.items() if event_id not in known]
    if not fresh:
        return ()
    taken_at = now.timestamp()
    connection.execute(
        insert(HANDLED),
        [{"event_id": event.origin.event_id, "taken_at": taken_at} for event in fresh],
    )
    positions = connection.execute(
        _INSERT,
        [_columns(event, taken_at) for event in fresh],
    )
    return tuple(
        InboxRow(position, conversation_key(event.origin), event)
        for position, event in zip(positions.scalars(), fresh, strict=True)
    )


def _columns(event: Event, taken_at: float) -> dict[str, Any]:
    return conversation_key(event.origin).values | {
        "event_id": event.origin.event_id,
        "body": event.model_dump_json(),
        "attempts": 0,
        "taken_at": taken_at,
    }


def remove_event(connection: Connection, row: InboxRow) -> None:
    """Take an event out, because its result is written in the same transaction.

    Raises:
        GoneError: it is not there: handled already, or forgotten.
    """
    gone = connection.execute(delete(INBOX).where(INBOX.c.position == row.position))
    if not gone.rowcount:
        raise GoneError


def count_attempt(connection: Connection, row: InboxRow) -> InboxRow:
    """Count that an event is begun; it may be the one that brought the process down.

    Raises:
        GoneError: it is not there: handled already, or forgotten.
    """
    same = INBOX.c.position == row.position
    counted = update(INBOX).where(same).values(attempts=INBOX.c.attempts + 1)
    attempts = connection.execute(counted.returning(INBOX.c.attempts)).scalar()
    if attempts is None:
        raise GoneError
    return replace(row, attempts=attempts, left=False)


def waiting_events(connection: Connection) -> tuple[InboxRow, ...]:
    """All events that are not handled, in the order in which they came."""
    rows = connection.execute(select(INBOX).order_by(INBOX.c.position))
    return tuple(_row(row) for row in rows)


def _row(row: Row[Any]) -> InboxRow:
    key = ConversationKey(row.room_id, row.person_id, row.thread_key)
    return InboxRow(row.position, key, _EVENT.validate_json(row.body), row.attempts, left=True)


def write_sync_token(connection: Connection, token: str) -> None:
    """Keep the token from which the next sync goes on."""
    changed = connection.execute(update(MARKS).where(MARKS.c.name == _SYNC).values(value=token))
    if not changed.rowcount:
        connection.execute(insert(MARKS).values(name=_SYNC, value=token))


def read_sync_token(connection: Connection) -> str | None:
    """The token that was kept last, None on a new database."""
    found = connection.execute(select(MARKS.c.value).where(MARKS.c.name == _SYNC))
    token: str | None = found.scalar_one_or_none()
    return token


def forget_handled(connection: Connection, before: datetime) -> None:
    """Drop the ids of events that were taken in before then."""
    connection.execute(delete(HANDLED).where(HANDLED.c.taken_at < before.timestamp()))
