"""Numbers that a message quotes, weighs or puts into an "if": they are argued with, not set."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import METRES_A_SECOND, Quantity
from bot.dialogue.reading.unit_words import LENGTH_UNITS
from bot.dialogue.tongues import in_any, whole_words

_SENTENCE_ENDS: Final = re.compile(r"[;!?]|\.(?=\s|$)")
_SETTINGS: Final = frozenset({"f", "iso", "s", "mm", "nd"})
#: "You said 1/6 before", "u wanted f/5 for it": what was recommended, by itself no order.
_QUOTED: Final = re.compile(rf"(?:\b|(?=#)){in_any('quoted.you_said')}")
_DONE: Final = whole_words("quoted.done")
#: As far from the number as its words may be [signs].
_NEAR: Final = 80
#: What stands between the settings of one list.
_LISTED: Final = frozenset({"", ",", ";", "/", "and", "at", "with", "&", "+", "@"})
#: "I never said half a second".
_NEVER_SAID: Final = re.compile(
    r"\b(?:never|not|didn't|didnt|don't|dont|hardly) (?:ever )?(?:said|say|told|tell|typed|wrote"
    r"|write|meant|mean|asked for|ask for)(?: you| me| anything (?:of|about)| about| of)* ?$"
)
#: "F/7.1 at a quarter would be three stops over": the sum of an argument.
_WOULD: Final = (
    r"\b(?:would|wouldn't|should) (?:not |then |also |still |only )?(?:be|have been|mean|make|give"
    r"|come|put|need|look|overexpose|underexpose)\b"
)
_WOULD_BE: Final = re.compile(rf"^(?:(?!\b(?:i|we|i'd|we'd|if|so|then|but)\b)[^;!?])*?{_WOULD}")
_WOULD_BE_BEFORE: Final = re.compile(rf"{_WOULD} (?:\w+ )?$")
#: "If the foot averages 17": a thing supposed, no deed of the person's.
_IF: Final = re.compile(
    r"(?:^ ?|[,;:] ?|\b(?:but|and|so|say|or) )if (?!(?:i|we|it helps|that helps|you|not|so"
    r"|needed)\b)"
)
#: Spanish "si el agua", whose gloss is a "yes"; only where it asks.
_SI: Final = re.compile(r"^ ?yes (?=(?:the|a)\b)")
_IF_OR_SI: Final = re.compile(rf"{_IF.pattern}|{_SI.pattern}")
_RIGHT: Final = re.compile(r"\b(?:was|were|is|are) (?:right|correct|fine|ok|okay|good|spot on)\b")
#: "Neither f/7.1 nor ...", "not 8 m/s and f/7.1 either".
_NOT_EITHER: Final = re.compile(r"\bnot\b[^;!?]*$|\bneither\b[^;!?]*$")
_EITHER: Final = re.compile(r"^[^;!?]*\beither\b")
#: "Opening to f/8 is one and a third stops": how far it is, reckoned.
_IS: Final = re.compile(r"\b(?:is|are|makes?|costs?|gives?|means?|that's|equals?|would be|=) ?$")
_OFF: Final = re.compile(r"^ ?(?:too |over|under|dark|bright|short|more|less|light|down|up|of|nd)")


#: Without one of these nothing is quoted, supposed or reckoned.
_MAY_ARGUE: Final = re.compile(
    rf"{in_any('quoted.verbs')}|\b(?:would|wouldn't|should|if|yes|either|said|say|told|tell|typed"
    r"|wrote"
    r"|meant|mean|asked?|is|are|makes?|costs?|gives?|means?|that's|equals?)\b|="
)


@lru_cache(maxsize=4)
def _may_argue(text: str) -> bool:
    return _MAY_ARGUE.search(text) is not None


def is_only_weighed(draft: Draft, quantity: Quantity) -> bool:
    """Whether a number is quoted, denied, supposed or part of a sum, rather than told as set."""
    if not _may_argue(draft.text):
        return False
    before, after = _sentence_around(draft, quantity)
    return (
        _is_quoted(draft, quantity)
        or _NEVER_SAID.search(before) is not None
        or _is_part_of_a_sum(draft, quantity, before, after)
        or _is_supposed(draft, quantity, before, after)
        or (_NOT_EITHER.search(before) is not None and _EITHER.match(after) is not None)
    )


def is_a_question_of_two(draft: Draft, quantity: Quantity, later: Quantity) -> bool:
    """Whether two settings of unlike kinds are asked about: "f/8 or ISO 400 for that frame?"."""
    kinds = {_kind(quantity), _kind(later)}
    _, behind = _sentence_around(draft, later)
    asked = draft.text[later.end + len(behind) : later.end + len(behind) + 1] == "?"
    between = draft.after(quantity).strip(" ,")
    return (
        asked
        and len(kinds) > 1
        and kinds <= _SETTINGS
        and between in {"or", "or rather", "or maybe"}
    )


def _kind(quantity: Quantity) -> str:
    return "s" if quantity.unit == "" and quantity.fraction else quantity.unit


def _sentence_around(draft: Draft, quantity: Quantity) -> tuple[str, str]:
    """The words of its sentence before a number, and those behind it."""
    before = _SENTENCE_ENDS.split(draft.text[: quantity.start])[-1]
    return before, _SENTENCE_ENDS.split(draft.text[quantity.end :], maxsplit=1)[0]


def _is_quoted(draft: Draft, quantity: Quantity) -> bool:
    """Whether a setting is only what the bot said, and nobody says to have done it."""
    if _kind(quantity) not in _SETTINGS or _DONE.search(draft.text):
        return False
    first = quantity
    while (earlier := draft.neighbour(first, -1)) and draft.before(first).strip() in _LISTED:
        first = earlier
    ends = {quantity, first}
    return any(_is_beside_quoting(draft, one) for one in ends)


def _is_beside_quoting(draft: Draft, quantity: Quantity) -> bool:
    before, after = _sentence_around(draft, quantity)
    return _QUOTED.search(f"{before[-_NEAR:]}#{after[:_NEAR]}") is not None


def _is_part_of_a_sum(draft: Draft, quantity: Quantity, before: str, after: str) -> bool:
    """Whether settings are what "would be", or stops what lies between two of them."""
    if quantity.unit == "stop" and _WOULD_BE_BEFORE.search(before):
        return True
    if quantity.unit == "stop":
        earlier = draft.neighbour(quantity, -1)
        between = _IS.search(before) is not None and _OFF.match(after) is None
        return between and earlier is not None and _kind(earlier) in _SETTINGS
    asked = draft.text[quantity.end + len(after) : quantity.end + len(after) + 1] == "?"
    if asked or _kind(quantity) not in _SETTINGS:
        return False
    return _WOULD_BE.match(after) is not None and "what if" not in before


def _is_supposed(draft: Draft, quantity: Quantity, before: str, after: str) -> bool:
    """Whether a number stands behind an "if" of the water's speed, or of settings that held."""
    found = [*(_IF if "?" not in draft.text else _IF_OR_SI).finditer(before)]
    if not found:
        return False
    clause = before[found[-1].end() :] + draft.text[quantity.start : quantity.end] + after
    if _kind(quantity) in _SETTINGS:
        return _RIGHT.search(after) is not None
    speeds = [one for one in draft.quantities if one.unit in METRES_A_SECOND]
    start = quantity.start - len(before) + found[-1].end()
    within = [one for one in speeds if start <= one.start < start + len(clause)]
    return bool(within) and quantity.unit in {"", *METRES_A_SECOND, *LENGTH_UNITS}
