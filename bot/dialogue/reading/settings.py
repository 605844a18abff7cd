"""f-number, time, ISO and focal length as they are set."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.answers import PORTION, answers
from bot.dialogue.reading.base_iso import ISO_MARKS, is_base, read_named_base
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.lens_marks import SHORTEST_MM
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.roles import role

_LENS_WORD: Final = re.compile(r"^\W*(?:[a-z]+ )?(?:lens|prime|zoom|glass)\b")
#: What a lens can do is no setting: "goes down to f/22".
_LIMIT: Final = re.compile(
    r"\b(?:goes|opens|closes|stops) (?:down |up |only )*to ?$"
    r"|\b(?:camera|cam|body|phone|lens|zoom|shutter|dial|it|mine) (?:can|could) "
    r"(?:only |even |also )?(?:do|go|manage|take|reach|expose)(?: (?:down|up|only|for|as far as))*"
    r"(?: to)? ?$"
    r"|\b(?:max\w*|min\w*|smallest|widest|largest)(?: aperture)?(?: is| of)? ?$"
)
#: "F1 race", "an f16 jet", "the f5 key".
_NAMED_F: Final = re.compile(
    r"^ ?-?(?:rac\w+|grand prix|driver|team|car|jets?|fighters?|planes?|flew|tornado\w*|storms?"
    r"|keys?|button)\b"
)
_LIMIT_BEHIND: Final = re.compile(
    r"^(?: is|'s)? ?(?:as wide as|the widest|the fastest|wide open|at the (?:wide|long|tele) end)\b"
)
#: A bound is no value: "under 1 s", "not longer than 1/4", "don't go over f/11".
_BOUND: Final = re.compile(
    r"(?:<|\b(?:under|below|beyond|above|than|at least|at most|(?<!opened )(?<!open )up to|faster"
    r"|slower|between)|\b(?:don't|not|never|won't|no|without)(?: \w+){0,3} (?:over|past))"
    r"(?: about)? ?$"
)
#: "Can't get under 1/50": what is set as long as nothing else gives.
_STUCK_AT: Final = re.compile(
    r"\b(?:can't|cannot|cant|couldn't|won't) (?:get|bring|come|go)"
    r"(?: (?:it|the|my|shutter|time|speed|any|me|down))* "
    r"(?:under|below|beyond|past|(?:slower|longer|lower) than)(?: about)? ?$"
)
#: "Sped it up to 1/500" sets it.
_BROUGHT: Final = re.compile(
    r"\b(?:sped|speeded|turned|bumped?|cranked?|pushed?|put|went|gone|brought|raised|upped|diall?ed"
    r"|opened|open|got|moved|set|jumped|pulled|back|took|now)(?: (?:it|the|my|shutter|iso|that"
    r"|things"
    r"|speed|right|all|way|exposure|time))* up to ?$"
)
#: So many words on either side speak of a time (own rule).
_NEAR_WORDS: Final = 3
#: A time behind one of these is how long the leaf needs.
#: "Low 40s", "temps in the 30s": degrees.
_OF_AIR: Final = re.compile(
    r"\b(?:(?:low|lower|mid|middle|upper|high)(?:[ -](?:to|or)[ -](?:mid|upper|high))?"
    r"|(?:temp\w*|highs|lows|cold)\b[^.,;!?]{0,20}?)[ -]?(?:in the |the )?$"
)
_TENS: Final = re.compile(r"[1-9]0'?s")
_FLOATS: Final = re.compile(r"\b(?:leaf|stick|twig|cork|bubbles?)\b")
_WALK: Final = re.compile(r"(?:of )?(?:walk|hike|drive|climb)\b")
_NO_EXPOSURE: Final = re.compile(
    r"\b(?:timer|self-timer|delay|countdown|(?<!no )wait\w*|hang on|hold on"
    r"|give me|every|each|after|lull|ago|breath\w*|for another|rest|videos?|clips?|film\w*"
    r"|recording"
    r"|there in|back in|ready in|lasts|lasted|count(?:ed|ing)?|song|ringing|of (?:sun\w*|rain"
    r"|silence"
    r"|calm|light|fame|quiet|peace|wind)|sprint|dash|buffer|to (?:write|save|load|wake|start|boot"
    r"|focus|warm|dry|process|react|fall|drop|reach|land|hit|get|come|cross|drift|float))\b"
)
#: "Self timer, two seconds".
_TIMER: Final = re.compile(r"\btimer\W*(?:\b(?:is|at|set|to|on|of|now)\b ?)*$")
_TIMED_BEFORE: Final = re.compile(r"^ (?:self[ -]?)?timer\b")
_LONG_EXPOSURE: Final = re.compile(r"\b(?:expos\w+|shutter|bulb|long)\b")
_BULB: Final = re.compile(r"\bbulb\b")
#: A fraction without a unit is a time only as one over something; 2/3 is one of stops.
_PLAIN_FRACTION: Final = re.compile(r"1/\d+(?:\.\d)?(?:th|rd)?")
#: "Closed down by 1/3" tells stops.
_BY: Final = re.compile(r"\bby (?:about |only )?$|^(?:and |ok |now )?(?:up|down) $")
#: "Overlap a third": of a frame.
_SHARE: Final = re.compile(
    r"\b(?:overlap\w*|crop\w*|fill\w*|cover\w*|takes? up|cut|cuts|full|charged"
    r"|empty)(?: \w+){0,2} $"
)
_BRIGHTNESS: Final = re.compile(r"\b(?:darker|brighter|lighter|more light|less light)\b")
_SECOND_WORD: Final = re.compile(r"^1 (?:second|sec)$")


def is_bound(draft: Draft, quantity: Quantity) -> bool:
    """Whether a number only bounds a setting; in "1 stop under f/8" the under is the stop's."""
    earlier = draft.neighbour(quantity, -1)
    if earlier is not None and (earlier.unit == "stop" or earlier.fraction):
        return False
    return _BOUND.search(_BROUGHT.sub("to ", draft.before(quantity))) is not None


#: "The lens is f/2.8": how wide it opens (own rule: beyond f/4 it is set).
_LENS_IS: Final = re.compile(r"\b(?:lens|prime|zoom|glass)(?:'s| is)(?: an?| only)? ?$")
_WIDE_OPEN: Final = 4.0


def _is_of_lens(draft: Draft, quantity: Quantity) -> bool:
    """Whether an f-number tells what the lens can do."""
    return quantity.value <= _WIDE_OPEN and _LENS_IS.search(draft.before(quantity)) is not None


def read_f_numbers(draft: Draft) -> None:
    """f-numbers as set; the widest aperture of a lens that is only spoken of is none."""
    for quantity in draft.free("f"):
        after = draft.after(quantity)
        if (
            _LENS_WORD.search(after)
            or _LIMIT_BEHIND.search(after)
            or _LIMIT.search(draft.before(quantity))
            or _NAMED_F.match(after)
            or _is_of_lens(draft, quantity)
        ):
            draft.claim(quantity)
        elif quantity.is_range or is_bound(draft, quantity):
            draft.refuse(quantity)
        else:
            draft.put("f_number", quantity.value, quantity)


def read_iso(draft: Draft) -> None:
    """ISO as set, or the camera's base."""
    for quantity in draft.free("iso"):
        if quantity.is_range:
            draft.refuse(quantity)
        elif is_base(draft, quantity):
            draft.put("base_iso", quantity.value, quantity)
            if "f_number" in draft.values:
                draft.note("iso", quantity.value)  # set, too: it stands beside an f-number
        elif is_bound(draft, quantity) or _LIMIT.search(draft.before(quantity)):
            draft.refuse(quantity)
        else:
            draft.put("iso", quantity.value, quantity)
    read_named_base(draft)
    _read_shown_iso(draft)


#: "ISO was on auto, it says 1600": the number that the camera shows for it.
_SHOWN: Final = re.compile(
    r"\biso\b[^.;?!]{0,50}\b(?:says|said|shows|showed|reads|chose|picked|took|went(?: up)? to)"
    r"(?: (?:me|it|iso|a|at))* ?$"
)


def _read_shown_iso(draft: Draft) -> None:
    """A bare mark of the ISO series behind words of what the camera shows: it set that itself."""
    for quantity in draft.free(""):
        if quantity.value in ISO_MARKS and _SHOWN.search(draft.before(quantity)):
            draft.claim(quantity)


def _may_be_stops(draft: Draft, quantity: Quantity) -> bool:
    """Whether the question or the words before speak of stops, so that "1/3" is no time."""
    asked = draft.expecting & {"meter_stops", "change_stops"}
    spoken = asked or _BRIGHTNESS.search(draft.before(quantity))
    return bool(spoken) and "shutter_s" not in draft.expecting and quantity.value > 0.25


def _is_time(draft: Draft, quantity: Quantity) -> bool:
    if quantity.unit == "min":
        around = draft.clause_before(quantity) + draft.clause_after(quantity)
        return bool(_LONG_EXPOSURE.search(around) or _BULB.search(draft.text)) or (
            "shutter_s" in draft.expecting and answers(draft, quantity, "shutter_s")
        )
    if quantity.unit == "quote":
        return role(draft, quantity) is None
    if quantity.unit == "":
        if _may_be_stops(draft, quantity) or PORTION.search(draft.after(quantity)):
            return False
        if _BY.search(draft.before(quantity)) or _SHARE.search(draft.before(quantity)):
            return False
        return _PLAIN_FRACTION.fullmatch(quantity.text) is not None
    return not (_SECOND_WORD.match(draft.text) and "shutter_s" not in draft.expecting)


def _read_time(draft: Draft, quantity: Quantity) -> None:
    """One number that may be an exposure time."""
    spoken = quantity.unit in {"s", "min"}
    before = " ".join(draft.clause_before(quantity).split()[-_NEAR_WORDS:])
    after = " ".join(draft.clause_after(quantity).split()[:_NEAR_WORDS])
    if spoken and (
        (_TIMER.search(draft.before(quantity)) and not _TIMED_BEFORE.match(draft.before(quantity)))
        or _NO_EXPOSURE.search(f"{before}; {after}")
        or _FLOATS.search(before)
        or _WALK.match(after)
        or _LIMIT.search(draft.before(quantity))
        or (_TENS.fullmatch(quantity.text) and _OF_AIR.search(draft.before(quantity)))
    ):
        draft.claim(quantity)
    elif not _is_time(draft, quantity):
        if spoken:
            draft.claim(quantity)
    elif is_bound(draft, quantity) and not _STUCK_AT.search(draft.before(quantity)):
        draft.refuse(quantity)
    else:
        seconds = quantity.value * (60 if quantity.unit == "min" else 1)
        draft.put("shutter_s", seconds, quantity)


def read_times(draft: Draft) -> None:
    """Exposure times; a timer, a wait or a walk is none, a range of times stays unread."""
    for quantity in draft.free("s", "min", "quote", ""):
        if not quantity.is_range:
            if not quantity.signed:
                _read_time(draft, quantity)
        elif quantity.fraction or quantity.unit == "s":
            draft.refuse(quantity)
    for quantity in draft.free("h"):
        draft.claim(quantity)


#: "Iso has to stay at 100": the value behind a setting that is kept.
_KEPT_AT: Final = re.compile(
    r"\b(?P<name>iso|aperture)\b(?: (?:has|to|must|should|will|is|be|the))* (?:stays?|staying"
    r"|remains?|kept"
    r"|fixed|locked|left)(?: put| fixed| locked)?(?: (?:at|on))? ?$"
)


def read_kept_values(draft: Draft) -> None:
    """Bare numbers behind a named setting that stays: `iso has to stay at 100`."""
    for quantity in draft.free(""):
        kept = _KEPT_AT.search(draft.before(quantity))
        if kept is None or quantity.is_range or quantity.fraction:
            continue
        if kept["name"] == "aperture":
            draft.put("f_number", quantity.value, quantity)
        elif quantity.value in ISO_MARKS:
            draft.put("iso", quantity.value, quantity)


def _is_beside_settings(draft: Draft, quantity: Quantity) -> bool:
    """Whether a setting stands right before or behind, with nothing said between."""
    free = draft.free()
    earlier, later = draft.neighbour(quantity, -1), draft.neighbour(quantity, 1)
    follows = earlier is not None and earlier not in free
    leads = later is not None and later.unit == "f"
    return (follows and not draft.before(quantity).strip(" ,;/@|·•")) or (
        leads and not draft.after(quantity).strip(" /") and not draft.before(quantity).strip()
    )


def read_settings_triple(draft: Draft) -> None:
    """`f/11 1/4 100`: the bare number that follows f-number and time is the ISO."""
    if "iso" in draft.values or not {"f_number", "shutter_s"} <= draft.values.keys():
        return
    for quantity in draft.free(""):
        if _is_beside_settings(draft, quantity) and quantity.value in ISO_MARKS:
            draft.put("iso", quantity.value, quantity)


def _is_made(slot: str, value: float) -> bool:
    """Whether a bare number is a mark of the ISO series, or a lens that a camera takes."""
    if slot == "iso":
        return value in ISO_MARKS
    return slot != "focal_mm" or value >= SHORTEST_MM


def _is_denied(draft: Draft, quantity: Quantity) -> bool:
    """`no 50`: a lens that is missing, or the number of something."""
    return draft.before(quantity).endswith("no ")


def read_asked_settings(draft: Draft) -> None:
    """Bare numbers where the open question asks for settings: f-number, time, ISO in order."""
    for slot in ("focal_mm", "f_number", "shutter_s", "iso", "base_iso"):
        plain = [
            quantity
            for quantity in draft.free("")
            if not (quantity.signed or _is_denied(draft, quantity))
            and answers(draft, quantity, slot)
        ]
        if slot in draft.expecting and slot not in draft.values and plain:
            quantity = plain[0]
            if quantity.is_range or not _is_made(slot, quantity.value):
                draft.refuse(quantity)
            else:
                draft.put(slot, quantity.value, quantity)
