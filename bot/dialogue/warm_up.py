"""What is loaded at a first message, loaded before it."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Final

from bot.dialogue.context import Context
from bot.dialogue.engine import handle
from bot.dialogue.events import Origin, TextReceived

#: One by its numbers, one of each language that only its meaning tells, and one whose sense is
#: weighed for danger.
_MESSAGES: Final = (
    "12 m tall, 18 m away",
    "the leaves are smeared",
    "die Blätter sind verwischt",
    "las hojas salen movidas",
    "the lady next to me went very quiet",
)


def warm_up() -> None:
    """Answer made-up messages of nobody, so that no person waits for tables, weights and texts.

    An event that a kill interrupts three times is given up; so its answer must not take seconds
    just because the process is new.
    """
    now = datetime.now(UTC)
    place = Origin(room_id="", person_id="", event_id="", sent_at=now, direct=True)
    context = Context.fresh(place)
    for text in _MESSAGES:
        context, _ = handle(context, TextReceived(origin=place, text=text), now)
