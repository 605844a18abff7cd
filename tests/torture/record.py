"""What a torture has left: the rows of the bot, and what stands in the rooms."""

from __future__ import annotations

import json
import sqlite3
from contextlib import closing
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path

from nio import Event

from bot.matrix.content import ROW_KEY
from bot.runtime.progress import PREFIX
from bot.store.rows import ConversationKey


@dataclass(frozen=True)
class Row:
    """One message of the bot, as its outbox keeps it once it is sent."""

    position: int
    row_id: str
    key: ConversationKey
    urgent: bool
    has_picture: bool
    question: str
    created_at: datetime
    event_id: str | None


@dataclass(frozen=True)
class Heard:
    """One message of the bot, as it stands in a room."""

    event_id: str
    row_id: str
    room_id: str
    body: str
    thread_id: str | None
    replies_to: str | None


@dataclass
class Rows:
    """What the bot's database holds."""

    outbox: list[Row]
    #: When each event was taken in.
    taken_at: dict[str, datetime]
    #: How many rows of work are in each table.
    work: dict[str, int]
    #: Names of the pictures that have a row.
    pictures: set[str] = field(default_factory=set)


def read_rows(path: Path) -> Rows:
    """All that the checks need of the database, which may be in use.

    Messages that tell how far measuring has come are taken back; how many there are depends on how
    long it took.
    """
    with closing(sqlite3.connect(f"file:{path}?mode=ro", uri=True, timeout=10.0)) as database:
        database.row_factory = sqlite3.Row
        outbox = database.execute("SELECT * FROM outbox ORDER BY position").fetchall()
        handled = database.execute("SELECT * FROM handled").fetchall()
        work = {
            name: database.execute(question).fetchone()[0]
            for name, question in (
                ("inbox", "SELECT count(*) FROM inbox"),
                ("jobs", "SELECT count(*) FROM jobs"),
                ("outbox", "SELECT count(*) FROM outbox WHERE sent_event_id IS NULL"),
                ("timers", "SELECT count(*) FROM timers"),
                ("progress", "SELECT count(*) FROM progress"),
            )
        }
        pictures = database.execute("SELECT name FROM pictures").fetchall()
    return Rows(
        [_row(row) for row in outbox if not row["row_id"].startswith(PREFIX)],
        {row["event_id"]: _time(row["taken_at"]) for row in handled},
        work,
        {row["name"] for row in pictures},
    )


def _row(row: sqlite3.Row) -> Row:
    return Row(
        position=row["position"],
        row_id=row["row_id"],
        key=ConversationKey(row["room_id"], row["person_id"], row["thread_key"]),
        urgent=bool(row["urgent"]),
        has_picture=row["picture"] is not None,
        question=row["question"] or "",
        created_at=_time(row["created_at"]),
        event_id=row["sent_event_id"],
    )


def _time(seconds: float) -> datetime:
    return datetime.fromtimestamp(seconds, UTC)


def heard_in(room_id: str, event: Event) -> Heard:
    """A message of the bot, decrypted."""
    content = event.source["content"]
    relation = content.get("m.relates_to", {})
    return Heard(
        event_id=event.event_id,
        row_id=content.get(ROW_KEY, ""),
        room_id=room_id,
        body=content.get("body", ""),
        thread_id=relation.get("event_id") if relation.get("rel_type") == "m.thread" else None,
        replies_to=relation.get("m.in_reply_to", {}).get("event_id"),
    )


def tells_progress(event: Event) -> bool:
    """Whether a message of the bot tells how far measuring has come, or did and was taken back."""
    content = event.source["content"]
    return not content or str(content.get(ROW_KEY, "")).startswith(PREFIX)


def waiting_events(path: Path) -> int:
    """How many events still wait for their keys."""
    if not path.exists():
        return 0
    kept = json.loads(path.read_text())
    return sum(len(value) for value in kept.values() if isinstance(value, list | dict))
