"""Events that cannot be decrypted yet: kept, tried again with each new key, then given up."""

from __future__ import annotations

from collections.abc import Callable, Container
from dataclasses import asdict, dataclass
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any, Final

from bot.matrix.incoming import sent_at
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

    def readable(
        self, decrypt: Callable[[WaitingEvent], JsonObject | None]
    ) -> list[tuple[WaitingEvent, JsonObject]]:
        """The events that `decrypt` now reads, each with what it read."""
        read = [(event, decrypt(event)) for event in self._events]
        return [(event, source) for event, source in read if source is not None]

    def expired(self, now: datetime, besides: Container[WaitingEvent] = ()) -> list[WaitingEvent]:
        """All events of each room and sender whose first one waits too long, in their order.

        Args:
            now: the present.
            besides: events that are readable meanwhile.
        """
        waiting = [event for event in self._events if event not in besides]
        groups = {event.group for event in waiting if self._is_old(event, now)}
        return [event for event in waiting if event.group in groups]

    def drop(self, events: Container[WaitingEvent]) -> None:
        """Forget events: they were read, or their sender was told."""
        self._events = [event for event in self._events if event not in events]

    def forget(self, person_id: str, until: datetime) -> None:
        """Drop what a person sent until then, in the file as well."""
        self._events = [
            event
            for event in self._events
            if event.source["sender"] != person_id or (sent_at(event.source) or until) > until
        ]
        self.save()

    def take_back(self, event_id: str | None) -> None:
        """Drop an event that its sender took back: nobody waits to have it read."""
        self._events = [event for event in self._events if event.source["event_id"] != event_id]

    def save(self) -> None:
        """Write the file, when something changed."""
        if self._events != self._saved:
            write_private(self._path, {"events": [asdict(event) for event in self._events]})
            self._saved = list(self._events)

    def _is_old(self, event: WaitingEvent, now: datetime) -> bool:
        return now - datetime.fromisoformat(event.since) >= self._grace
