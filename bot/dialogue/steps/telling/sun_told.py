"""Sun and shade by turns: kept with the walk, and the word to wait, once, before any settings."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Part, Role
from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.meaning import sun_by_turns
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading.light import WITH_SUN, denied, only_lacks_sun
from bot.dialogue.steps.anywhere import planning
from bot.dialogue.steps.walk import sun_shared
from bot.dialogue.turn import Turn

_TEXT: Final = "light_told.by_turns"


def note(turn: Turn, said: Said) -> None:
    """Keep that sun and shade share the water, or no longer; and drop a light that is denied."""
    walk = turn.context.conversation.walk
    if walk is None or planning.is_planning(turn):
        return
    by_turns = sun_by_turns.told(said)
    if by_turns is not None:
        sun_shared.keep(turn, by_turns=by_turns)
    if turn.facts.light is not None and turn.facts.light in denied(said.english):
        turn.unlearn("light")


def laid_over(turn: Turn, said: Said, facts: Facts) -> Facts:
    """The facts of a message: sun and shade are no single light, and its patches no drops.

    Args:
        turn: the answer under construction.
        said: the message.
        facts: what was read in it.
    """
    if not sun_by_turns.told(said):
        return _still_in_shade(turn, said, facts)
    symptoms = tuple(one for one in facts.symptoms if one is not Symptom.SOFT_SPOTS)
    return facts.model_copy(update={"light": None, "symptoms": symptoms})


def _still_in_shade(turn: Turn, said: Said, facts: Facts) -> Facts:
    """The facts with the light as it is known, where "no sun" says no more than that."""
    known = turn.facts.light
    if facts.light is None or known is None or known in WITH_SUN:
        return facts
    return facts.model_copy(update={"light": known}) if only_lacks_sun(said.english) else facts


def say(turn: Turn, said: Said) -> None:
    """Say what such light means, while no settings rest on any; once on a walk."""
    walk = turn.context.conversation.walk
    if walk is None or not sun_by_turns.told(said) or walk.given is not None:
        return
    if planning.is_planning(turn) or _TEXT in walk.checks:
        return
    note(turn, said)
    turn.change_walk(checks=turn.walk.checks | {_TEXT: "said"})
    part = Part(Role.CHECK, _TEXT)
    if turn.has_room_for(part):
        turn.parts.append(part)
