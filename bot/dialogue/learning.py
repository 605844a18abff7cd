"""What a message tells, laid over the context: kit to the person, the fall to its place."""

from __future__ import annotations

from typing import Any

from bot.dialogue.context import Context, Place
from bot.dialogue.facts import Facts
from bot.dialogue.slots import KIT_SLOTS, PASSING_SLOTS, PLACE_SLOTS, ROOM_SLOTS
from bot.dialogue.walk_state import Walk


def learned(context: Context, facts: Facts, *, teaches: bool) -> Context:
    """The context with what was read; what is about one frame only is not kept.

    Args:
        context: as it was.
        facts: what a message tells.
        teaches: who wrote leads a group room, so that what they tell holds for all there.
    """
    known = set(facts.known())
    # In a group room the place stays with the walk: see `Context.facts`.
    place_slots = PLACE_SLOTS if context.room.direct else frozenset()
    person: dict[str, Any] = {"kit": context.person.kit.updated(facts.only(known & KIT_SLOTS))}
    if facts.units is not None:
        person["units"] = facts.units
    parts: dict[str, Any] = {"person": context.person.model_copy(update=person)}
    if known & place_slots:
        place = context.place or Place()
        told = place.facts.updated(facts.only(known & place_slots))
        parts["place"] = place.model_copy(update={"facts": told})
    walk = context.conversation.walk or Walk()
    of_walk = walk.facts.updated(facts.only(known - KIT_SLOTS - place_slots - PASSING_SLOTS))
    parts["conversation"] = context.conversation.model_copy(
        update={"walk": walk.model_copy(update={"facts": of_walk})}
    )
    if teaches and not context.room.direct:
        told = context.room.facts.updated(facts.only(known & ROOM_SLOTS))
        parts["room"] = context.room.model_copy(update={"facts": told})
    return context.model_copy(update=parts)


def unlearned(context: Context, slots: tuple[str, ...]) -> Context:
    """The context without slots of the walk and its place that a new answer has made void."""
    void = {slot: Facts.model_fields[slot].get_default() for slot in slots}
    walk = context.conversation.walk or Walk()
    of_walk = walk.model_copy(update={"facts": walk.facts.model_copy(update=void)})
    parts: dict[str, Any] = {
        "conversation": context.conversation.model_copy(update={"walk": of_walk})
    }
    if context.place is not None and PLACE_SLOTS & set(slots):
        facts = context.place.facts.model_copy(update=void)
        parts["place"] = context.place.model_copy(update={"facts": facts})
    return context.model_copy(update=parts)
