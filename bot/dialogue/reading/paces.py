"""Lengths told by paces and storeys, in metres: who has no tape counts what is at hand."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.spoken_numbers import SIMPLE, number_said
from bot.dialogue.reading.unit_words import LENGTH

#: A grown person's pace on rough ground [m] (own rule).
PACE_M: Final = 0.75
#: A storey of a house with its floor [m] (common practice).
_STOREY_M: Final = 3.0
#: A hundred paces are a way, not how far the water is (own rule).
_COUNT: Final = rf"\d{{1,2}}|{'|'.join(SIMPLE)}"
#: Paces on the level, not the steps of stairs: "10 steps away", "three paces to the water".
_PACES: Final = re.compile(
    rf"(?<!up )(?<!down )(?<!climb )(?<!after )(?<!/)\b({_COUNT}) (?:big |long |good |small )?"
    r"(?:steps|paces|strides)\b(?=(?:,? (?:or so|maybe|i guess))? (?:away|off\b|from (?:it|the"
    r"|me|us)\b"
    r"|to (?:it|the (?:water\w*|falls?|creek|stream|brook|river|edge|foot|base))\b))"
)
_STOREYS: Final = re.compile(
    rf"\b(?:as (?:high|tall) as|(?:about )?the (?:height|size) of|like) (?:an? )?({_COUNT})[ -]?"
    r"(?:store?ys?|storeys|stories|floors?)(?: (?:high|tall))?(?: (?:house|building|block"
    r"|tower))?\b"
    rf"|\b({_COUNT})[ -]?(?:store?ys?|storeys|stories|floors?) (?:high|tall)\b"
)
#: "18 paces away, call it 14 m": the length itself is told, too.
_TOLD_BETTER: Final = re.compile(
    r"\b(?:steps|paces|strides|stor(?:e?y|eys|ies)|floors?)\b[^.;]{0,40}\b(?:so|say|call (?:it"
    r"|that)|that's|that is|maybe|or"
    r"|roughly|about|which is|i guess|i make it|make (?:it|that)|probably|around)\b[ ,]*\d[\d.]* ?"
    r"(?:m|met(?:er|re)s?|ft|feet|foot|yards?|yd)\b"
)


_MEASURED: Final = re.compile(rf"\d ?{LENGTH}\b")
#: "Like 1 or 2 m away": about so far (own rule: between two numbers that follow each other).
_ONE_OR_TWO: Final = re.compile(
    r"\b((?:like|about|maybe|around|roughly|so|some"
    rf"|only) )([1-9]) or ([1-9]) ?(?={LENGTH} (?:away|off|from)\b)"
)
_BEFORE: Final = (
    r"(?:(?:i|we|so|ok|well|like|about|maybe|only|just|it's|its|said|told you|bro|dude"
    r"|perhaps|around|roughly|say)[ ,]+)*"
)
#: A whole answer to how far the water is: "like 3 steps", glossed "drei schritte", "2 pasos".
_ANSWERED: Final = re.compile(
    rf"(?P<before>{_BEFORE})(?P<count>{_COUNT}) (?:big |long |good |small )?"
    r"(?:steps?|paces?|strides?|schritte?n?|pasos?|stops)(?P<behind>(?:[ ,]+(?:away|maybe|or so"
    r"|i guess|i think"
    r"|lol|tops|ish|max|entfernt|weg|here))*)(?=\W*$)"
)
_ANSWERED_FIRST: Final = re.compile(
    rf"(?P<before>{_BEFORE})(?P<count>{_COUNT}) (?:big |long |good |small )?"
    r"(?:steps?|paces?|strides?|schritte?n?|pasos?)(?P<behind>)(?=[,.;!?])"
)


#: "50 paces, don't ask how long mine are".
_UNKNOWN: Final = re.compile(
    r"\bhow (?:long|big) (?:my|a|the|one|mine)(?: (?:paces?|steps?|strides?))? (?:are|is)\b"
)


def in_metres(text: str) -> str:
    """A message with its paces and storeys as metres.

    Args:
        text: with number words in digits already.
    """
    text = _ONE_OR_TWO.sub(_between, text)
    if _TOLD_BETTER.search(text) or _UNKNOWN.search(text):
        return text
    return _STOREYS.sub(_stacked, _PACES.sub(_paced, text))


def answered(text: str) -> str:
    """An answer to how far the water is, with its paces as metres where it tells no other length.

    Args:
        text: as `normalise` leaves it.
    """
    match = _ANSWERED.match(text) or _ANSWERED_FIRST.match(text)
    if match is None or _MEASURED.search(text) or _UNKNOWN.search(text):
        return text
    metres = f"{number_said(match['count']) * PACE_M:g} m"
    return f"{match['before']}{metres}{match['behind']}{text[match.end() :]}"


def _between(match: re.Match[str]) -> str:
    low, high = int(match[2]), int(match[3])
    return f"{match[1]}{(low + high) / 2:g} " if high == low + 1 else match.group()


def _paced(match: re.Match[str]) -> str:
    return f"{number_said(match[1]) * PACE_M:g} m"


def _stacked(match: re.Match[str]) -> str:
    return f"{number_said(match[1] or match[2]) * _STOREY_M:g} m high"
