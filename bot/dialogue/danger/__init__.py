"""What counts as danger in a message, and how far it goes; read before anything else."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.all_safe import says_all_safe
from bot.dialogue.danger.guards import Guards
from bot.dialogue.danger.kinds import LEVELS, Danger, DangerKind, Level, gravest
from bot.dialogue.danger.people import PEOPLE
from bot.dialogue.danger.places import PLACES
from bot.dialogue.danger.rules import Rules
from bot.dialogue.danger.signs import SIGNS
from bot.dialogue.danger.spelling import sentences

__all__ = ["Danger", "DangerKind", "Level", "gravest", "read_danger", "says_all_safe"]

_ORDER: Final = tuple(DangerKind)
#: All rules, the gravest kind first, so that the first one found is the answer.
_RULES: Final = tuple(
    sorted((*PEOPLE, *SIGNS, *PLACES), key=lambda rules: _ORDER.index(rules.kind))
)


def read_danger(text: str) -> Danger | None:
    """The gravest danger in a message.

    Args:
        text: any text as typed or dictated; case, punctuation and small slips of the thumb do
            not matter. What is denied, long past or only supposed is no danger.

    Returns:
        The kind and its level, None where there is none.
    """
    said = sentences(text)
    message = " . ".join(said)
    possible = [rules for rules in _RULES if rules.may_hold(message)]
    if not possible:
        return None
    guarded = [Guards(sentence, message) for sentence in said]
    for rules in possible:
        if any(_holds(rules, guards) for guards in guarded):
            return Danger(rules.kind, LEVELS[rules.kind])
    return None


def _holds(rules: Rules, guards: Guards) -> bool:
    """Whether the rules find something in a sentence that no guard takes back."""
    emergency = LEVELS[rules.kind] is Level.EMERGENCY
    return any(
        not guards.take_back(match, emergency=emergency, by_people=by_people)
        for match, by_people in rules.found(guards.sentence)
    )
