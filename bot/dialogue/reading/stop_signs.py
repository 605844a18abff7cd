"""Which way a number of stops points: over or under, brighter or darker."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import Quantity

_UNDER: Final = re.compile(r"^[ -]*(?:too )?(?:under|below|minus|negative)\b")
#: "2 under the trees" counts people; with its unit the number stays one of stops.
_UNDER_SOMETHING: Final = re.compile(r"^[ -]*under (?:the|a|some|tall)\b")
#: "Four stops below the water": one thing against another.
_BESIDE_THING: Final = re.compile(
    r"^[ -]*(?:under|below|above|over) (?:the|that of the) (?:water|falls?|sky|rocks?|whites?|rest"
    r"|foam|others?)\b"
)
_OVER: Final = re.compile(r"^[ -]*(?:too )?(?:over|above|plus|positive)\b(?! the (?:rock|wat))")
_BY_METER: Final = re.compile(r"\b(under|over) by(?: about)? ?$")
_BY_METER_ASKED: Final = re.compile(r"\b(under|over)(?: by(?: about)?|,)? ?$")
_DARKER_FOUND: Final = (
    r"(?:too dark|under[ -]?exposed|too (?:dim|low)|short|dark"
    r"|(?:of )?light (?:too little|short|missing|more))"
)
_BRIGHTER_FOUND: Final = (
    r"(?:too bright|over[ -]?exposed|too (?:light|hot|high)|hot|(?:of )?light (?:too much|less))"
)
_MOVE: Final = r"(?:come|go|take|bring|pull|push|turn|bump|dial)"
_THIS: Final = r"(?:it|this|that|(?:the )?exposure|brightness)"
_WANT_MORE: Final = re.compile(
    r"^\W*(?:of )?(?:up (?:from|on) (?:what|where|here|this|that|now)"
    r"|more light|more exposure|too little(?: light)?|brighter|lighter|more"
    rf"|{_DARKER_FOUND})\b"
)
_WANT_LESS: Final = re.compile(
    r"^\W*(?:of )?(?:down (?:from|on) (?:what|where|here|this|that|now)"
    r"|less light|less exposure|too much(?: light)?"
    rf"|darker|less|{_BRIGHTER_FOUND})\b"
)
_BY_MORE: Final = re.compile(
    rf"\b(?:{_DARKER_FOUND}|{_MOVE}(?: {_THIS})? up|(?:brighten|raise|lift)(?: {_THIS})?"
    rf"|(?:make|want|need|get|go)(?: {_THIS})? (?:brighter|lighter))"
    r"(?: by)?(?: about)? ?$"
)
_BY_LESS: Final = re.compile(
    rf"\b(?:{_BRIGHTER_FOUND}|{_MOVE}(?: {_THIS})? down|(?:darken|lower)(?: {_THIS})?"
    rf"|(?:make|want|need|get|go)(?: {_THIS})? darker)"
    r"(?: by)?(?: about)? ?$"
)
#: "Way too dark, maybe two stops": what the number in the next clause measures.
_HEDGE: Final = re.compile(r"(?:\W|\b(?:maybe|about|like|roughly|perhaps|by|i'd say|around)\b)*")
#: "Bit dark, maybe a third": with a guess before it, it is a part of a stop.
_GUESSED: Final = re.compile(
    r" ?(?:maybe|about|perhaps|roughly|i'd say|by about|by maybe)(?: by)? ?"
)
_LEAST_PART: Final = 0.3  # a third is the least step of most dials (common practice)
_LOOSE_END: Final = re.compile(
    r"(?:[,;:.-]| (?:by|about|maybe|like|roughly|perhaps|i'd say|id say|i'd guess|around"
    r"|a good))*\s*$"
)


def meter_sign(draft: Draft, quantity: Quantity) -> int:
    """+1 when the meter says over, -1 under, 0 when the words do not say."""
    after = draft.after(quantity)
    asked = "meter_stops" in draft.expecting and quantity.fraction
    by = (_BY_METER_ASKED if asked else _BY_METER).search(draft.before(quantity))
    if by:
        return -1 if by.group(1) == "under" else 1
    if _BESIDE_THING.search(after):
        return 0
    if _UNDER.search(after):
        return 0 if quantity.unit != "stop" and _UNDER_SOMETHING.search(after) else -1
    return 1 if _OVER.search(after) else 0


def change_sign(draft: Draft, quantity: Quantity) -> int:
    """+1 when more light is wanted, -1 when less, 0 when the words do not say."""
    before, after = draft.clause_before(quantity), draft.after(quantity)
    guessed = quantity.fraction and quantity.value >= _LEAST_PART and _GUESSED.fullmatch(before)
    if guessed or (quantity.unit == "stop" and _HEDGE.fullmatch(before)):
        before = _LOOSE_END.sub("", draft.before(quantity))
    if _WANT_MORE.search(after) or _BY_MORE.search(before):
        return 1
    return -1 if _WANT_LESS.search(after) or _BY_LESS.search(before) else 0
