"""What is loaded at a first message, loaded before it."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Final

from bot.dialogue.context import Context
from bot.dialogue.engine import handle
from bot.dialogue.events import Origin, TextReceived

#: What somebody says, by language: one message by its numbers, one that only its meaning tells,
#: one whose sense is weighed for danger, and once a reply to a question with options, and to one
#: of safety. Who begins in a language is answered in it, so that its texts are read, too.
_MESSAGES: Final = (
    (
        *("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70", "no pale gap up there any more"),
        *("the leaves are smeared", "the lady next to me went very quiet", "she only rests a bit"),
    ),
    ("guten Tag, ich bin am Bach", "12 m hoch, 18 m weg", "die Blätter sind verwischt"),
    ("hola, estoy en una cascada", "12 m de alto, a 18 m", "las hojas salen movidas"),
)


def warm_up() -> None:
    """Answer made-up messages of nobody, so that no person waits for tables, weights and texts.

    An event that a kill interrupts three times is given up; so its answer must not take seconds
    just because the process is new.
    """
    now = datetime.now(UTC)
    place = Origin(room_id="", person_id="", event_id="", sent_at=now, direct=True)
    for messages in _MESSAGES:
        context = Context.fresh(place)
        for text in messages:
            context, _ = handle(context, TextReceived(origin=place, text=text), now)
