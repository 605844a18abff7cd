"""The way back: what an answer starts from, and the context with the last answer taken back."""

from __future__ import annotations

from typing import Final

from bot.dialogue.context import Context, Place, Snapshot
from bot.dialogue.events import TextReceived
from bot.dialogue.facts import Facts
from bot.dialogue.reading import number_answer

#: How many answers `back` can undo; bounds the stored row (own rule).
HISTORY_LENGTH: Final = 12


def before(context: Context, event_id: str, tapped_on: str | None, tapped: str | None) -> Snapshot:
    """What `back` returns to.

    Args:
        context: as it was before the answer.
        event_id: of the message that is answered.
        tapped_on: the bot's message that was tapped for it, and the option.
        tapped: see `tapped_on`.
    """
    conversation = context.conversation
    return Snapshot(
        event_id=event_id,
        walk=conversation.walk,
        question=conversation.question,
        kit=context.person.kit,
        place_facts=context.place.facts if context.place else Facts(),
        paused=conversation.paused,
        emergency=conversation.emergency,
        review=conversation.review,
        tapped_on=tapped_on,
        tapped=tapped,
    )


def undone(context: Context) -> Context:
    """The context with the last accepted answer taken back; frames and cautions stay."""
    *earlier, last = context.conversation.history
    conversation = context.conversation.model_copy(
        update={
            "history": tuple(earlier),
            "walk": last.walk,
            "question": last.question,
            "paused": last.paused,
            "emergency": last.emergency,
            "review": last.review,
        }
    )
    person = context.person.model_copy(update={"kit": last.kit})
    place = (context.place or Place()).model_copy(update={"facts": last.place_facts})
    return context.model_copy(
        update={"conversation": conversation, "person": person, "place": place}
    )


def is_of_an_older_answer(event: TextReceived, history: tuple[Snapshot, ...]) -> bool:
    """A number that corrects an answer before the last one cannot answer what is asked now."""
    corrected = any(answer.event_id == event.corrects for answer in history)
    return corrected and number_answer(event.text) is not None
