"""How far each person of a group room is, by what was said there: read when who leads asks."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from pydantic import AwareDatetime, BaseModel, ConfigDict

from bot.dialogue.context import Conversation
from bot.dialogue.events import Event, TextReceived
from bot.dialogue.meaning import roster
from bot.dialogue.terms import Companion


class Talk(BaseModel):
    """One conversation of a room: whose it is, and how it stands."""

    model_config = ConfigDict(frozen=True)

    person_id: str
    conversation: Conversation
    changed_at: AwareDatetime


def is_asked_for(event: Event) -> bool:
    """Whether an event asks how far the others are, and may be told."""
    origin = event.origin
    asks = isinstance(event, TextReceived) and roster.asks(event.text)
    return asks and origin.leader and not origin.direct and origin.is_for_linn


def companions(
    people: Mapping[str, str], talks: Iterable[Talk], asks: str
) -> tuple[Companion, ...]:
    """Who is in a room, in the order of their names, with what they told there.

    Args:
        people: names by user ids, of all who are there now.
        talks: conversations of that room.
        asks: who wants to know; not one of the others.
    """
    known: dict[str, Companion] = {}
    for talk in sorted(talks, key=lambda talk: talk.changed_at):
        if talk.person_id in people:
            name = people[talk.person_id]
            known[talk.person_id] = _with(known.get(talk.person_id, Companion(name=name)), talk)
    others = people.keys() - {asks}
    listed = (known.get(one, Companion(name=people[one])) for one in others)
    return tuple(sorted(listed, key=lambda one: one.name.casefold()))


def _with(before: Companion, talk: Talk) -> Companion:
    """What a later conversation adds; of two walks the later one counts."""
    conversation = talk.conversation
    walk, question = conversation.walk, conversation.question
    emergency = conversation.emergency is not None and conversation.emergency.shared != "heard"
    kept = any(frame.kept for frame in conversation.measured.values())
    step = before.step if walk is None else walk.state.value
    return before.model_copy(
        update={
            "step": step,
            "waits_since": before.waits_since if question is None else question.asked_at,
            "times": before.times if question is None else question.times,
            "frames": before.frames + len(conversation.frames),
            "kept": before.kept or kept or step == "keep",
            "emergency": before.emergency or emergency,
        }
    )
