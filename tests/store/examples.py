"""Events and rows for the tests of the store."""

from __future__ import annotations

from datetime import UTC, datetime
from itertools import count

from bot.dialogue.events import Origin, TextReceived
from bot.store.rows import (
    ConversationKey,
    InboxRow,
    JobKind,
    JobRow,
    Message,
    OutboxRow,
    TimerRow,
    conversation_key,
)

NOW = datetime(2027, 6, 21, 7, 30, tzinfo=UTC)
ROOM = "!gorge:mill.example"
PERSON = "@fern:mill.example"
_numbers = count(1)


def fresh_id(kind: str) -> str:
    """An id that no other row has."""
    return f"{kind}{next(_numbers)}"


def origin(
    *,
    event_id: str | None = None,
    room_id: str = ROOM,
    person_id: str = PERSON,
    direct: bool = True,
    thread_id: str | None = None,
) -> Origin:
    """Where an event comes from."""
    return Origin(
        event_id=event_id or fresh_id("$event"),
        room_id=room_id,
        person_id=person_id,
        thread_id=thread_id,
        direct=direct,
        sent_at=NOW,
    )


def text(words: str = "f/11", **where: str) -> TextReceived:
    """A text message."""
    return TextReceived(origin=origin(**where), text=words)  # type: ignore[arg-type]


KEY = conversation_key(origin())


def message(words: str = "1/4 s", key: ConversationKey = KEY, **columns: object) -> OutboxRow:
    """A message to send."""
    row = OutboxRow(fresh_id("row"), key, Message(body=words), "DEVICE", NOW)
    for name, value in columns.items():
        object.__setattr__(row, name, value)
    return row


def job(kind: JobKind = JobKind.CHECK_FRAME, key: ConversationKey = KEY, **more: str) -> JobRow:
    """Work to do."""
    place = origin(room_id=key.room_id, person_id=key.person_id)
    return JobRow(
        fresh_id("job"), kind, key, place, more.get("input", "{}"), NOW, NOW, more.get("frame")
    )


def timer(name: str = "turn back", key: ConversationKey = KEY) -> TimerRow:
    """A reminder."""
    place = origin(room_id=key.room_id, person_id=key.person_id)
    return TimerRow(fresh_id("timer"), key, name, NOW, place)


def row_of(rows: tuple[InboxRow, ...]) -> InboxRow:
    """The only one."""
    (row,) = rows
    return row
