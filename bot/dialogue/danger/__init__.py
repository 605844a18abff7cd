"""What counts as danger in a message, and how far it goes; read before anything else."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final, NamedTuple

from bot.dialogue.danger.caught import CAUGHT
from bot.dialogue.danger.cues import CUES
from bot.dialogue.danger.folding import folded
from bot.dialogue.danger.guards import THINGS, Guards
from bot.dialogue.danger.injuries import INJURIES
from bot.dialogue.danger.kinds import LEVELS, Danger, DangerKind, Level, gravest
from bot.dialogue.danger.likelihood import features_of, log_odds, trained
from bot.dialogue.danger.meaning import cues_of, kind_meant
from bot.dialogue.danger.people import PEOPLE
from bot.dialogue.danger.permission import leave_asked
from bot.dialogue.danger.places import PLACES
from bot.dialogue.danger.replies import (
    Safe,
    anyone_out_there,
    explained,
    in_danger,
    who_is_safe,
)
from bot.dialogue.danger.rules import Rules
from bot.dialogue.danger.signs import SIGNS
from bot.dialogue.danger.spelling import sentences
from bot.dialogue.danger.spoken_of import without_talk
from bot.dialogue.danger.ways import WAYS
from bot.dialogue.danger.whose import Whose, whose

__all__ = [
    "Danger",
    "DangerKind",
    "Level",
    "Safe",
    "Whose",
    "anyone_out_there",
    "explained",
    "gravest",
    "in_danger",
    "read_danger",
    "who_is_safe",
    "whose",
]

#: Log odds from which on a message is a danger: with a known wording, with a known constellation
#: of cues, with neither. Own rules: from messages left out in five parts, which the wordings did
#: not know either.
_WORDED: Final = -0.9
_MEANT: Final = -0.5
_UNKNOWN: Final = 0.65
#: A message of so few words that is nothing but a known wording of an emergency is that, whatever
#: longer ones weigh; of rising and brown water so much [log odds] is enough in it. Own rules.
_SHORT: Final = 6
_FLOODED: Final = -2.0
_SMALL_WORDS: Final = frozenset(
    {
        "the",
        "a",
        "it",
        "is",
        "now",
        "here",
        "our",
        "we",
        "i",
        "there",
        "help",
        "please",
        "oh",
        "and",
    }
    | {"just", "very", "so", "an", "this", "really", "again", "are", "god"}
)
_ASKS: Final = re.compile(
    r"\W*(?:is|are|was|does|did|can|could|may|ist|sind|esta|está)\b", re.IGNORECASE
)
#: Who a name is read as, in each language.
_HE: Final = ("he", "er", "ella")
#: A word that no pronoun and no denial is, before a verb that people take.
_NAMED: Final = re.compile(
    r"\W*(?!(?:no|nobody|none|it|that|this|there|what|who|where|which|everything|something|nothing"
    r"|all|niemand|keiner|es|das|was|wer|wo|alles|nichts|nadie|nada|todo|eso|esto|que|quien)\b)"
    r"([^\W\d_]{3,}) ((?:is|has|got|fell|slipped|went|slid|jumped|broke|hurt|collapsed|disappeared"
    r"|cant|can't|does|isn't|isnt|was|ist|hat|kann|liegt|blutet|kommt|ging|war|se|está|esta|no|ha"
    r"|cayó|cayo|tiene)\b.*)",
    re.IGNORECASE | re.DOTALL,
)
#: Beside talk of other things a danger is heard in its part of the message; a part alone has to
#: sound so much surer [log odds] and to have so many spaces. Own rules, from the same messages.
_IN_PART: Final = 1.3
_PART_SPACES: Final = 2
_BETWEEN_PARTS: Final = re.compile(
    r"[.!?;,:\n]+|\b(?:and|but|while|und|aber|y|pero)\b", re.IGNORECASE
)
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
    text, _ = without_talk(text)
    kind = _kind_of(text)
    if kind is None and _is_short(text) and _is_of_a_name(text):
        kind = DangerKind.UNCLEAR
    return None if kind is None else Danger(kind, LEVELS[kind])


def _kind_of(text: str) -> DangerKind | None:
    """The kind of danger, by wordings, by cues, or by likeness to what others wrote in danger."""
    pieces = cues_of(text)
    odds = _odds(text, pieces)
    worded = _worded(text) if odds >= _WORDED or _is_short(text) else _Worded(None)
    kind = worded.kind if odds >= _WORDED or worded.alone else None
    kind = kind or _kind_meant(text, pieces, odds)
    if kind is None and not worded.taken_back:
        kind = leave_asked(text)
    if kind is None and _sounds_like_danger(worded, text, odds):
        kind = DangerKind.UNCLEAR
    return kind


def _kind_meant(text: str, pieces: tuple[frozenset[str], ...], odds: float) -> DangerKind | None:
    kind = kind_meant(pieces) if odds >= min(_MEANT, _FLOODED) else None
    flooded = kind is DangerKind.FLOOD and _is_short(text)
    return kind if odds >= _MEANT or flooded else None


def _is_short(text: str) -> bool:
    """Whether a message says something in a few words, and asks nothing."""
    return text.count(" ") < _SHORT and "?" not in text and not _ASKS.match(text)


def _sounds_like_danger(worded: _Worded, text: str, odds: float) -> bool:
    """Whether a message, or a part of it beside talk of other things, is danger in any words."""
    if worded.taken_back or odds >= _UNKNOWN:
        return not worded.taken_back
    surely = _UNKNOWN + _IN_PART
    return any(_odds(part, cues_of(part)) >= surely for part in _parts(text))


def _is_of_a_name(text: str) -> bool:
    """Whether a few words would tell of an emergency with "he" in place of their first one."""
    found = _NAMED.match(text)
    name, rest = found.groups() if found else ("", "")
    said = folded(name)
    weight = trained().features.get(f"word {said}", 1.0)
    if not said or said in THINGS or weight <= 0 or any(cues_of(name)):
        return False
    told = (_kind_of(f"{he} {rest}") for he in _HE)
    return any(kind is not None and LEVELS[kind] is Level.EMERGENCY for kind in told)


def _odds(text: str, pieces: tuple[frozenset[str], ...]) -> float:
    return log_odds(features_of(text, pieces))


def _parts(text: str) -> list[str]:
    """The parts of a message that has several, each of some words."""
    parts = [part for part in _BETWEEN_PARTS.split(text) if part.count(" ") >= _PART_SPACES]
    return parts if len(parts) > 1 else []


class _Worded(NamedTuple):
    """The gravest danger that an English wording tells of, or that one was taken back."""

    kind: DangerKind | None
    taken_back: bool = False
    #: The message says nothing else.
    alone: bool = False


def _worded(text: str) -> _Worded:
    said = sentences(text)
    message = " . ".join(said)
    guarded = [Guards(sentence, message) for sentence in said]
    taken_back = False
    for rules in (rules for rules in _RULES if rules.may_hold(message)):
        held = [held for guards in guarded for held in _held(rules, guards)]
        if any(held):
            return _Worded(rules.kind, taken_back, alone=_is_alone(rules, message))
        taken_back |= bool(held)
    return _Worded(None, taken_back)


def _is_alone(rules: Rules, message: str) -> bool:
    """Whether a message is nothing but one wording of an emergency and small words."""
    return LEVELS[rules.kind] is Level.EMERGENCY and any(
        set(message.replace(match.group(), " ", 1).split()) <= _SMALL_WORDS
        for match, _ in rules.found(message)
    )


def _held(rules: Rules, guards: Guards) -> Iterator[bool]:
    """Of each thing that the rules find in a sentence, whether no guard takes it back."""
    emergency = LEVELS[rules.kind] is Level.EMERGENCY
    for match, by_people in rules.found(guards.sentence):
        yield not guards.take_back(match, emergency=emergency, by_people=by_people)
