"""Numbers of stops: the meter's, the change that is wanted, the strength of a filter."""

from __future__ import annotations

import math
import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.inventory import POLARISER, TRIPOD
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.phrases import exactly
from core.camera import density_stops, factor_stops

_ND_WORD: Final = r"(?:nds?|neutral[ -]densit\w+|nd filters?|filters?)"
_ND_NEAR: Final = re.compile(rf"\b{_ND_WORD}\b")
_ND_HEAD: Final = re.compile(
    rf"\b{_ND_WORD}(?: only| i own| here)? ?[(:,?] ?(?:an? |the |about )?$"
)
_GRADUATED: Final = re.compile(r"\bgrad\w*\b")
#: `the 3-stop`, `my 6 stop`, `10-stop on`: a filter, when nothing says under or over.
_FILTER_BEFORE: Final = re.compile(
    r"\b(?:the|my|with(?: the| my| a)?|a|own|have|and|use|using"
    r"|(?:bag|pouch|pocket|case|wallet)(?: i (?:have|got)| there's|:| is| are)*) ?$"
)
_FILTER_AFTER: Final = re.compile(
    r"^(?:'s)? ?(?:gr[ea]y (?:is |are )?on"
    r"|(?:is |are |still |goes |went |going )*on|off|mounted|in (?:place|front)|stacked|nd"
    r"|filter|glass|screwed|one)\b"
)
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
    r"^\W*(?:of )?(?:up (?:from|on) (?:what|where|here|this|that|now)|more light|more exposure|too little(?: light)?|brighter|lighter|more"
    rf"|{_DARKER_FOUND})\b"
)
_WANT_LESS: Final = re.compile(
    r"^\W*(?:of )?(?:down (?:from|on) (?:what|where|here|this|that|now)|less light|less exposure|too much(?: light)?"
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
_METER_WORDS: Final = re.compile(
    r"\b(?:meter\w*|reads?|reading|needle|(?:ev|exposure) comp\w*)\b.{0,20}$"
)
_ON_METER: Final = re.compile(r"^ (?:on|by|at|says) (?:the |my )?(?:meter|needle|scale)\b")
_CENTRED: Final = re.compile(
    r"\b(?:meter|needle|indicator|bar|pointer|scale|marker)\b[^,;.]{0,20}(?<!left of )(?<!right of"
    r" )(?<!off )"
    r"(?<!left of the )(?<!right of the )"
    r"\b(?:middle|centre|center|centred|centered|spot on|bang on|on the nose|at zero|balanced"
    r"|dead on|zeroed)\b"
)
_CENTRE_ALONE: Final = exactly(
    r"(?:it's |its |it is |says |dead |spot |exactly |right |in the |on )*"
    r"(?:centre|center|middle|centred|centered|zero|on|zeroed|balanced)"
)
#: "1.3 too dark": as dials and meters show parts of a stop.
_THIRDS: Final = re.compile(r"^\s*\d\.[357]\s*$")
#: Camera meters show thirds as .3 and .7 (common practice): the marked value's exact third.
_MARKED_THIRDS: Final = {3: 1 / 3, 7: 2 / 3}
#: "It's minus 2 out here" is a temperature.
_OUTDOORS: Final = re.compile(r"^ (?:out (?:here|there)|outside|celsius|tonight|this morning)\b")
_WARMTH: Final = re.compile(
    r"\b(?:temp\w*|thermometer|outside|air|cold|freezing)(?:,? \w+){0,2},? ?$"
)
_LISTED: Final = re.compile(r"^ ?-? ?(?:,|and|&|\+|/|, and) ?(?:an? )?$")
#: Filter factors that are sold under their number; powers of two besides (common practice).
_ND_FACTORS: Final = frozenset({100, 200, 400, 500, 1000, 1024, 2000, 2048, 4000, 10_000, 100_000})
#: No stronger filter is taken for one by its factor (own rule), nor, as strong, by its density.
_STRONGEST_STOPS: Final = 20
_DENSEST: Final = 6


def exact_thirds(stops: float) -> float:
    """The exact third behind a marked number of stops: 0.7 is 2/3, 1.3 is 4/3."""
    size = abs(stops)
    whole, tenth = int(size), round((size - int(size)) * 10, 6)
    exact = whole + _MARKED_THIRDS.get(int(tenth), size - whole) if tenth in {3, 7} else size
    return math.copysign(exact, stops) if stops else 0.0


def nd_stops(quantity: Quantity) -> float | None:
    """Stops of a filter named by factor (ND64) or density (ND 0.9); None when it may be either.

    A factor is a power of two or one of those sold under their number; a density has a decimal
    point. "nd6" is neither and stays unread.
    """
    number = quantity.value
    if "." in quantity.text or "," in quantity.text:
        return density_stops(number) if 0 < number <= _DENSEST else None
    if number < 1:
        return None
    stops = factor_stops(number)
    known = number in _ND_FACTORS or (stops.is_integer() and 1 <= stops <= _STRONGEST_STOPS)
    return stops if known else None


#: "Way too dark, maybe two stops": what the number in the next clause measures.
_HEDGE: Final = re.compile(r"(?:\W|\b(?:maybe|about|like|roughly|perhaps|by|i'd say|around)\b)*")
#: "Bit dark, maybe a third": with a guess before it, it is a part of a stop.
_GUESSED: Final = re.compile(
    r" ?(?:maybe|about|perhaps|roughly|i'd say|by about|by maybe)(?: by)? ?"
)
_LEAST_PART: Final = 0.3  # a third is the least step of most dials (common practice)
_LEAST_BARE: Final = 0.25  # "1/60, more I dare not" is a time (own rule)
_LOOSE_END: Final = re.compile(
    r"(?:[,;:.-]| (?:by|about|maybe|like|roughly|perhaps|i'd say|id say|i'd guess|around"
    r"|a good))*\s*$"
)


def _meter_sign(draft: Draft, quantity: Quantity) -> int:
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


def _change_sign(draft: Draft, quantity: Quantity) -> int:
    """+1 when more light is wanted, -1 when less, 0 when the words do not say."""
    before, after = draft.clause_before(quantity), draft.after(quantity)
    guessed = quantity.fraction and quantity.value >= _LEAST_PART and _GUESSED.fullmatch(before)
    if guessed or (quantity.unit == "stop" and _HEDGE.fullmatch(before)):
        before = _LOOSE_END.sub("", draft.before(quantity))
    if _WANT_MORE.search(after) or _BY_MORE.search(before):
        return 1
    return -1 if _WANT_LESS.search(after) or _BY_LESS.search(before) else 0


#: "With the 6 stop, too dark": the thing, not how dark.
_THE_FILTER: Final = re.compile(r"\b(?:with|using|through|behind|without) (?:the|my|an?) ?$")


def _is_named_as_filter(draft: Draft, quantity: Quantity) -> bool:
    one = quantity.text.endswith(("stop", "stopper")) and quantity.value > 1
    return one and _THE_FILTER.search(draft.before(quantity)) is not None


#: "The cliff is two stops darker": a part of the scene, no change that is wanted.
_DARK_PART: Final = re.compile(
    r"\b(?:cliffs?|walls?|rocks?|pools?|sky|side|corners?|edges?|left|right|front|trees|shade"
    r"|woods?|bank)"
    r"(?:'s| is| are| was| were)(?: \w+)? ?$"
)


def _looks_like_stops(draft: Draft, quantity: Quantity) -> bool:
    """Whether a number is one of stops: by its unit, as a fraction or bare beside its words."""
    if quantity.is_range or _is_named_as_filter(draft, quantity):
        return False
    plain = quantity.unit == "" and not _LEAST_BARE > quantity.value > 0 and quantity.value <= 8
    part = quantity.fraction or _THIRDS.search(quantity.text) is not None
    spoken = _meter_sign(draft, quantity) or (
        quantity.value < 8 and _change_sign(draft, quantity) and part
    )
    return quantity.unit == "stop" or (plain and bool(spoken))


#: "Three under on the rock": of two readings the dark thing's.
_ON_DARK: Final = re.compile(
    r"^[ -]*(?:stops? )?(?:over|under|below) (?:on|at|for|in|off) (?:the |my |a )?(?:\w+ )?(?:rocks?|cliffs?"
    r"|walls?|moss|shad\w+|dark\w*|black\w*|trees|bank|ferns?|boulders?)\b"
)
#: "The polariser costs me 1.5 stops": what a thing takes.
_COSTS: Final = re.compile(
    r"\b(?:cost|costs|costing|eats?|swallows?|steals?|robs?) (?:me |us |you |up |away )*"
    r"(?:of )?(?:about |some |roughly |maybe )?$"
)


def _is_beside_the_point(draft: Draft, quantity: Quantity) -> bool:
    """Whether stops are what a thing takes, or a second reading, of something dark."""
    if quantity.unit == "stop" and _COSTS.search(draft.before(quantity)):
        return True
    others = [one for one in draft.quantities if one is not quantity and _meter_sign(draft, one)]
    return bool(others) and _ON_DARK.match(draft.after(quantity)) is not None


def read_stops(draft: Draft) -> None:
    """What the meter says and the change that is wanted, in stops."""
    for quantity in draft.free("stop", ""):
        if quantity.signed or not _looks_like_stops(draft, quantity):
            continue
        if _is_beside_the_point(draft, quantity):
            draft.claim(quantity)
            continue
        meter, change = _meter_sign(draft, quantity), _change_sign(draft, quantity)
        stops = exact_thirds(quantity.value)
        if change and not _DARK_PART.search(draft.clause_before(quantity)):
            draft.put("change_stops", change * stops, quantity)
        elif meter:
            draft.put("meter_stops", meter * stops, quantity)
    for quantity in draft.free("click"):
        if draft.after(quantity).startswith(" at a time"):
            draft.claim(quantity)
    _read_signed(draft)
    _read_zero(draft)


def _read_signed(draft: Draft) -> None:
    """`+1`, `-0.7`, `meter at -1/3`: a sign makes a bare number the meter's."""
    for quantity in draft.free("stop", ""):
        outdoors = _OUTDOORS.search(draft.clause_after(quantity)) or (
            quantity.signed and _WARMTH.search(draft.before(quantity))
        )
        if quantity.unit == "" and outdoors:
            draft.claim(quantity)
        elif quantity.signed and not quantity.is_range:
            change = _change_sign(draft, quantity)
            slot = "change_stops" if change else "meter_stops"
            stops = exact_thirds(quantity.value)
            draft.put(slot, change * abs(stops) if change else stops, quantity)


def _read_zero(draft: Draft) -> None:
    asked = "meter_stops" in draft.expecting
    centred = _CENTRED.search(draft.text) or (asked and _CENTRE_ALONE.match(draft.text))
    if centred and "meter_stops" not in draft.values:
        draft.note("meter_stops", 0.0)
    for quantity in draft.free(""):
        spoken = _METER_WORDS.search(draft.before(quantity)) or _ON_METER.match(
            draft.after(quantity)
        )
        if quantity.value == 0 and (asked or spoken):
            draft.put("meter_stops", 0.0, quantity)


def listed_before(draft: Draft, quantity: Quantity) -> list[Quantity]:
    """The bare numbers that share a unit with this one: 3 and 6 of "3, 6 and 10 stop"."""
    listed: list[Quantity] = []
    here: Quantity | None = quantity
    while here is not None and _LISTED.match(draft.before(here)):
        here = draft.neighbour(here, -1)
        if here is None or here not in draft.free(""):
            break
        listed.insert(0, here)
    return listed


#: "Tripod + cpl + 6 stop".
_KIT_LISTED: Final = re.compile(rf"\b(?:{TRIPOD}|{POLARISER})\b ?(?:,|\+|&|and\b)")


def _is_kit_list(draft: Draft, quantity: Quantity) -> bool:
    """Whether a kit is told or asked for, and nothing says under, over, brighter or darker."""
    kit = draft.expecting | draft.values.keys()
    told = kit & {"camera_format", "nd_stops"} or _KIT_LISTED.search(draft.text)
    return bool(told) and not (_meter_sign(draft, quantity) or _change_sign(draft, quantity))


def _follows_filter(draft: Draft, quantity: Quantity) -> bool:
    """`nd filters: 2 stop, 4 stop`: the next of a list of filters."""
    earlier = draft.neighbour(quantity, -1)
    return (
        earlier is not None
        and earlier.unit == quantity.unit == "stop"
        and earlier.value.is_integer()
        and quantity.value.is_integer()
        and _LISTED.match(draft.before(quantity)) is not None
        and is_filter(draft, earlier)
    )


def is_filter(draft: Draft, quantity: Quantity) -> bool:
    """Whether a number of stops is the strength of a filter, not of light."""
    if _follows_filter(draft, quantity):
        return True
    first = [*listed_before(draft, quantity), quantity][0]
    before, after = draft.clause_before(first), draft.clause_after(quantity)
    if _GRADUATED.search(before + after):
        return False
    named = (
        _ND_NEAR.search(before) or _ND_NEAR.search(after) or _ND_HEAD.search(draft.before(first))
    )
    adjective = (
        quantity.text.endswith(("stop", "stopper")) and quantity.value > 1
    )  # "6 stop", not "6 stops"
    set_up = draft.values.keys() >= {"f_number", "shutter_s"}
    told = _meter_sign(draft, quantity) or _change_sign(draft, quantity)
    spoken = adjective and (
        (set_up and not told)
        or _is_kit_list(draft, quantity)
        or _FILTER_BEFORE.search(draft.before(quantity))
        or _FILTER_AFTER.search(after)
    )
    return quantity.value.is_integer() and bool(named or spoken)
