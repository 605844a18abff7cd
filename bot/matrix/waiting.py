"""Events that cannot be decrypted yet: kept, tried again with each new key, then given up."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import asdict, dataclass
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any, Final

from bot.matrix.private_file import read_private, write_private

#: Own rule: a key that is on its way is there within seconds; then somebody wants an answer.
GRACE: Final = timedelta(seconds=30)
#: Own rule: bounds the file; the oldest give way.
_MOST: Final = 1000

JsonObject = dict[str, Any]


@dataclass(frozen=True)
class WaitingEvent:
    """An encrypted event without its key.

    Attributes:
        room_id: where it stands.
        source: the event as the server gave it.
        since: when it was taken in, ISO 8601 with zone.
    """

    room_id: str
    source: JsonObject
    since: str

    @property
    def group(self) -> tuple[str, str]:
        """Room and sender: what is given up together is said once."""
        return self.room_id, str(self.source["sender"])


class WaitingEvents:
    """The kept events, in the order in which they came, in a file that outlives a restart.

    Args:
        path: the file; what it holds is encrypted.
        grace: how long a key may take.
    """

    def __init__(self, path: Path, grace: timedelta = GRACE) -> None:
        self._path = path
        self._grace = grace
        kept = read_private(path) or {"events": []}
        self._events = [WaitingEvent(**event) for event in kept["events"]]
        self._saved = list(self._events)

    def __len__(self) -> int:
        return len(self._events)

    def add(self, room_id: str, source: JsonObject, now: datetime) -> None:
        """Keep an event; the same one again changes nothing."""
        known = {event.source["event_id"] for event in self._events}
        if source["event_id"] not in known:
            self._events.append(WaitingEvent(room_id, source, now.isoformat()))
            self._events = self._events[-_MOST:]

    def take_readable(
        self, decrypt: Callable[[WaitingEvent], JsonObject | None]
    ) -> list[tuple[str, JsonObject]]:
        """Room and decrypted source of the events that `decrypt` now reads; they are dropped."""
        readable, kept = [], []
        for event in self._events:
            source = decrypt(event)
            if source is None:
                kept.append(event)
            else:
                readable.append((event.room_id, source))
        self._events = kept
        return readable

    def take_expired(self, now: datetime) -> list[WaitingEvent]:
        """The last event of each room and sender whose first one waited too long.

        All events of such a group are dropped: their sender is told once, and asked to send again
        what was not read.
        """
        expired = {event.group for event in self._events if self._is_old(event, now)}
        last = {event.group: event for event in self._events if event.group in expired}
        self._events = [event for event in self._events if event.group not in expired]
        return list(last.values())

    def save(self) -> None:
        """Write the file, when something changed."""
        if self._events != self._saved:
            write_private(self._path, {"events": [asdict(event) for event in self._events]})
            self._saved = list(self._events)

    def _is_old(self, event: WaitingEvent, now: datetime) -> bool:
        return now - datetime.fromisoformat(event.since) >= self._grace
