"""The gravest danger that an English wording tells of, and whether one was taken back."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final, NamedTuple

from bot.dialogue.danger.caught import CAUGHT
from bot.dialogue.danger.cues import CUES
from bot.dialogue.danger.guards import Guards
from bot.dialogue.danger.injuries import INJURIES
from bot.dialogue.danger.kinds import LEVELS, DangerKind, Level
from bot.dialogue.danger.people import PEOPLE
from bot.dialogue.danger.places import PLACES
from bot.dialogue.danger.rules import Rules
from bot.dialogue.danger.signs import SIGNS
from bot.dialogue.danger.spelling import sentences
from bot.dialogue.danger.ways import WAYS

_ORDER: Final = tuple(DangerKind)
#: All rules, the gravest kind first, so that the first one found is the answer.
_RULES: Final = tuple(
    sorted(
        (*PEOPLE, *INJURIES, *SIGNS, *CAUGHT, *PLACES, *WAYS, *CUES),
        key=lambda rules: _ORDER.index(rules.kind),
    )
)
#: What says nothing beside a wording.
_SMALL_WORDS: Final = """
    the a an this it is are now here there our we i and so just very really again help please oh god
"""


class Worded(NamedTuple):
    """What the wordings find.

    Args:
        kind: the gravest that holds; None where none does.
        taken_back: whether one was found that a guard takes back: denied, past, supposed.
        alone: whether it is an emergency, and the message says nothing else.
    """

    kind: DangerKind | None
    taken_back: bool = False
    alone: bool = False


def worded(text: str) -> Worded:
    """Look for every wording in a message as typed."""
    said = sentences(text)
    message = " . ".join(said)
    guarded = [Guards(sentence, message) for sentence in said]
    taken_back = False
    for rules in (rules for rules in _RULES if rules.may_hold(message)):
        held = [held for guards in guarded for held in _held(rules, guards)]
        if any(held):
            return Worded(rules.kind, taken_back, _is_alone(rules, message))
        taken_back |= bool(held)
    return Worded(None, taken_back)


def _is_alone(rules: Rules, message: str) -> bool:
    """Whether a message is nothing but one wording of an emergency and small words."""
    return LEVELS[rules.kind] is Level.EMERGENCY and any(
        set(message.replace(match.group(), " ", 1).split()) <= set(_SMALL_WORDS.split())
        for match, _ in rules.found(message)
    )


def _held(rules: Rules, guards: Guards) -> Iterator[bool]:
    """Of each thing that the rules find in a sentence, whether no guard takes it back."""
    emergency = LEVELS[rules.kind] is Level.EMERGENCY
    for match, by_people in rules.found(guards.sentence):
        yield not guards.take_back(match, emergency=emergency, by_people=by_people)
