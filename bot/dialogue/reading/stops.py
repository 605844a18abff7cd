"""Numbers of stops: the meter's, the change that is wanted, the strength of a filter."""

from __future__ import annotations

import math
import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.inventory import POLARISER, TRIPOD
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.phrases import exactly
from bot.dialogue.reading.stop_signs import change_sign, meter_sign
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


#: "With the 6 stop, too dark": the thing, not how dark.
_THE_FILTER: Final = re.compile(r"\b(?:with|using|through|behind|without) (?:the|my|an?) ?$")


_LEAST_BARE: Final = 0.25  # "1/60, more I dare not" is a time (own rule)


#: "6 stop plus CPL", "3 stop nd and the polariser": glass beside glass, nothing over or under.
_BESIDE_GLASS: Final = re.compile(
    rf"^ ?(?:nd |filter )?(?:plus|and|with|&|\+) ?(?:the |my |a )?{POLARISER}\b"
)


def _is_named_as_filter(draft: Draft, quantity: Quantity) -> bool:
    one = quantity.text.endswith(("stop", "stopper")) and quantity.value > 1
    if one and _BESIDE_GLASS.match(draft.after(quantity)):
        return True
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
    spoken = meter_sign(draft, quantity) or (
        quantity.value < 8 and change_sign(draft, quantity) and part
    )
    return quantity.unit == "stop" or (plain and bool(spoken))


#: "Three under on the rock": of two readings the dark thing's.
_ON_DARK: Final = re.compile(
    r"^[ -]*(?:stops? )?(?:over|under|below) (?:on|at|for|in|off) (?:the |my |a )?(?:\w+ )?"
    r"(?:rocks?|cliffs?|walls?|moss|shad\w+|dark\w*|black\w*|trees|bank|ferns?|boulders?)\b"
)
#: "The polariser costs me 1.5 stops": what a thing takes.
_COSTS: Final = re.compile(
    r"\b(?:cost|costs|costing|eats?|eaten|ate|swallows?|steals?|robs?)"
    r" (?:me |us |you |up |away |it )*(?:of )?(?:about |some |roughly |maybe |around )?$"
)
_GLASS: Final = re.compile(rf"\b(?:{POLARISER}|{_ND_WORD})\b")
#: "How many stops does it eat, I tell them 1.5 to 2".
_HOW_MANY: Final = re.compile(r"\bhow (?:many|much)(?: [a-z]+){0,2}? stops?\b")
#: What glass takes without its unit is at most this [stops] (own rule: beyond it may be a time).
_MOST_BARE: Final = 12


def _is_beside_the_point(draft: Draft, quantity: Quantity) -> bool:
    """Whether stops are what a thing takes, or a second reading, of something dark."""
    if quantity.unit == "stop" and _COSTS.search(draft.before(quantity)):
        return True
    others = [one for one in draft.quantities if one is not quantity and meter_sign(draft, one)]
    return bool(others) and _ON_DARK.match(draft.after(quantity)) is not None


def _claim_asked(draft: Draft) -> None:
    """Bare numbers of what glass takes, and of how many stops is asked, are no times."""
    asked = _HOW_MANY.search(draft.text)
    glass = _GLASS.search(draft.text) is not None
    taken: Quantity | None = None
    offered = [quantity for quantity in draft.refused if quantity.unit == ""]
    for quantity in [*draft.free(""), *offered]:
        before = draft.before(quantity)
        goes_on = (
            taken is not None and taken is draft.neighbour(quantity, -1) and not before.strip()
        )
        costs = glass and (_COSTS.search(before) is not None or goes_on)
        behind = asked is not None and quantity.start > asked.end()
        if quantity.value <= _MOST_BARE and (costs or behind):
            draft.take_up("", quantity)
            draft.claim(quantity)
            taken = quantity


#: "Too dark, 6-stop ND on": a filter, whatever stands before it.
_ND_BEHIND: Final = re.compile(r" ?nd\b")


def read_stops(draft: Draft) -> None:
    """What the meter says and the change that is wanted, in stops."""
    _claim_asked(draft)
    for quantity in draft.free("stop", ""):
        glass = _ND_BEHIND.match(draft.after(quantity))
        if quantity.signed or glass or not _looks_like_stops(draft, quantity):
            continue
        if _is_beside_the_point(draft, quantity):
            draft.claim(quantity)
            continue
        meter, change = meter_sign(draft, quantity), change_sign(draft, quantity)
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
            change = change_sign(draft, quantity)
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
    return bool(told) and not (meter_sign(draft, quantity) or change_sign(draft, quantity))


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
    told = meter_sign(draft, quantity) or change_sign(draft, quantity)
    spoken = adjective and (
        (set_up and not told)
        or _is_kit_list(draft, quantity)
        or _FILTER_BEFORE.search(draft.before(quantity))
        or _FILTER_AFTER.search(after)
        or _BESIDE_GLASS.match(draft.after(quantity))
    )
    return quantity.value.is_integer() and bool(named or spoken)
