"""What counts as danger in a message, and how far it goes; read before anything else."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.caught import CAUGHT
from bot.dialogue.danger.constellations import against
from bot.dialogue.danger.cues import CUES
from bot.dialogue.danger.guards import Guards
from bot.dialogue.danger.injuries import INJURIES
from bot.dialogue.danger.kinds import LEVELS, Danger, DangerKind, Level, gravest
from bot.dialogue.danger.likelihood import features_of, log_odds
from bot.dialogue.danger.meaning import cues_of, kind_meant
from bot.dialogue.danger.people import PEOPLE
from bot.dialogue.danger.places import PLACES
from bot.dialogue.danger.replies import all_safe, anyone_out_there
from bot.dialogue.danger.rules import Rules
from bot.dialogue.danger.signs import SIGNS
from bot.dialogue.danger.spelling import sentences
from bot.dialogue.danger.ways import WAYS

__all__ = [
    "Danger",
    "DangerKind",
    "Level",
    "all_safe",
    "anyone_out_there",
    "gravest",
    "read_danger",
]

#: Log odds from which on a message is a danger: with a known wording, with a known constellation
#: of cues, with neither. Own rules: from messages left out in five parts, which the wordings did
#: not know either.
_WORDED: Final = -0.6
_MEANT: Final = -0.3
_UNKNOWN: Final = 1.3
_ORDER: Final = tuple(DangerKind)
#: All rules, the gravest kind first, so that the first one found is the answer.
_RULES: Final = tuple(
    sorted(
        (*PEOPLE, *INJURIES, *SIGNS, *CAUGHT, *PLACES, *WAYS, *CUES),
        key=lambda rules: _ORDER.index(rules.kind),
    )
)


def read_danger(text: str) -> Danger | None:
    """The gravest danger in a message.

    Args:
        text: any text as typed or dictated; case, punctuation and small slips of the thumb do
            not matter. What is denied, long past or only supposed is no danger. English, German
            and Spanish are heard, whatever language the person has set.

    Returns:
        The kind and its level, None where there is none; what only sounds like danger is
        `UNCLEAR`.
    """
    pieces = cues_of(text)
    features = features_of(text, pieces)
    odds = log_odds(features)
    if odds < _WORDED:  # the lowest of the three: no wording need be looked for
        return None
    kind = _kind_worded(text)
    if kind is None and odds >= _MEANT:
        kind = kind_meant(pieces) or _unclear(pieces, odds)
    return None if kind is None else Danger(kind, LEVELS[kind])


def _unclear(pieces: tuple[frozenset[str], ...], odds: float) -> DangerKind | None:
    """Nothing known is said, but it sounds like danger all the same: that is to be asked."""
    if odds < _UNKNOWN or any(against(cues) < 0 for cues in pieces):
        return None
    return DangerKind.UNCLEAR


def _kind_worded(text: str) -> DangerKind | None:
    """The gravest danger that an English wording tells of."""
    said = sentences(text)
    message = " . ".join(said)
    guarded = [Guards(sentence, message) for sentence in said]
    for rules in _RULES:
        if rules.may_hold(message) and any(_holds(rules, guards) for guards in guarded):
            return rules.kind
    return None


def _holds(rules: Rules, guards: Guards) -> bool:
    """Whether the rules find something in a sentence that no guard takes back."""
    emergency = LEVELS[rules.kind] is Level.EMERGENCY
    return any(
        not guards.take_back(match, emergency=emergency, by_people=by_people)
        for match, by_people in rules.found(guards.sentence)
    )
