"""Which length a number is by what stands further off: another clause, or another number."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import METRES_A_SECOND, Quantity
from bot.dialogue.reading.putting_right import SOURCE
from bot.dialogue.reading.role_words import (
    ELSEWHERE,
    FALL,
    MEASURED,
    ONLY_FILLER,
    SHOT_FROM,
    TIGHT,
    WALKING,
)
from bot.dialogue.reading.unit_words import LENGTH_UNITS

#: "How high? The guidebook says": who tells a length, not which it is.
_SHOWN: Final = re.compile(
    rf"\b(?:(?:the|my|our|his|her|an?) )?(?:{SOURCE}|stick|pole|ruler|scale)(?: here)?"
    r"(?: (?:says|reads|gives|shows|has|said|measures))?\b:?"
)


def stands_tight(words: str) -> bool:
    """Whether the words of a number's clause name nothing that it could measure.

    Args:
        words: the clause before the number, as `normalise` leaves it.
    """
    return TIGHT.fullmatch(_SHOWN.sub("", words)) is not None


#: "A rock, tall as me, 1.8 m".
_AS_SOMEBODY: Final = re.compile(r"\b(?:as )?(?:tall|high|big) as (?:me|i am|him|her)\b")
_FALL_NAMED: Final = re.compile(rf"\b(?:{FALL})\b")


def measured(words: str) -> str | None:
    """`as tall as a house, 8 m or so`: the clause before says what is measured.

    Args:
        words: what stands before the number, back to the number before it.
    """
    found = None
    if _AS_SOMEBODY.search(words) and not _FALL_NAMED.search(words):
        return None
    for match in MEASURED.finditer(words):
        found = match.lastgroup
    return found


#: "The fall I took from the map, 16 m": what a sentence opens with; a place is none.
_OPENED: Final = re.compile(rf"(?:^|[.;!?] ?)(?:the |this |our )?(?:{FALL})\b(?P<rest>[^.;!?]*)$")
_PLACED: Final = re.compile(
    r"\b(?:far|near|nearer|away|back|off|distance|close|closer|wide|width|rock|stone|camera|at"
    r"|speed"
    r"|shutter|aperture|lens|zoom|zoomed|deep|walk|hike|path|trail|left|right|behind)\b"
)


def opened(words: str) -> str | None:
    """The fall's height where a sentence opens with the fall and places nothing.

    Args:
        words: what stands before the number, back to the number before it.
    """
    match = _OPENED.search(words)
    return "height" if match and not _PLACED.search(match["rest"]) else None


#: "Which i'd put at 6 m": the fall that was named right before.
_WHICH: Final = re.compile(
    rf"\b(?:{FALL}),? (?:which|they're|they are|it's|its|it is|that's|must be"
    rf"|looks)\b(?P<rest>[^.;!?]*)$"
)
#: "Just the upper 5 m".
_PART: Final = r"\b(?:upper|lower|top|bottom|uppermost|lowest|middle|first|last) ?$"
_WANTED: Final = r"\b(?:just|only|want|show|get|frame|take|crop\w*)\b[^,;.]*"
_PART_WANTED: Final = re.compile(_WANTED + _PART)
_PART_OF_IT: Final = re.compile(rf"(?:{_WANTED}|^){_PART}")
#: "The upper step is 8 m, lower 5 m".
_TWO_DROPS: Final = re.compile(
    r"\b(?:upper|top|first)\b[^.;\d]{0,20}\d[^.;]{0,20}\b(?:lower|bottom|second)\b[^.;\d]{0,12}\d"
)
_UPHILL: Final = re.compile(r"\bup(?:hill|wards?)?$")


#: "It's the ten metre one": the fall that was named.
_ONE_BEHIND: Final = re.compile(r"^ ?(?:one|jump|beauty)\b")
_THIS_ONE: Final = frozenset({"the", "a", "it's the", "it's a", "its the", "is the", "is a"})


def of_neighbours(draft: Draft, quantity: Quantity, words: str) -> str | None:
    """`a stream of 1.5 m/s at 3 m`: the speed's water is so far away; `4 km walk, up 250 m`.

    Args:
        draft: the message.
        quantity: a length that its own words do not name.
        words: the clause before it.
    """
    earlier = draft.neighbour(quantity, -1)
    if SHOT_FROM.search(words) or _is_taken_from(draft, quantity, words):
        return "distance"
    named = words in _THIS_ONE and _ONE_BEHIND.match(draft.after(quantity))
    if named or "footer" in quantity.text or _is_which(draft.before(quantity)):
        return "height"
    if quantity.unit != "" and _is_part(draft, quantity, words):
        return "section"
    if words == "at" and earlier is not None and earlier.unit in METRES_A_SECOND:
        return "distance"
    uphill = quantity.unit not in {"km", "mi"} and _UPHILL.search(words)
    gained = uphill or (quantity.signed and quantity.value > 0)
    return "climb" if gained and WALKING.search(draft.text) else None


def _is_part(draft: Draft, quantity: Quantity, words: str) -> bool:
    """Whether the words name a part; "upper 10 m lower 6 m" are two drops."""
    if _TWO_DROPS.search(draft.text):
        return False
    opens = draft.neighbour(quantity, -1) is None or draft.clause_before(quantity) != draft.before(
        quantity
    )
    return bool((_PART_OF_IT if opens else _PART_WANTED).search(words))


def _is_which(before: str) -> bool:
    """Whether the fall was named right before, and nothing was placed since."""
    which = _WHICH.search(before)
    return which is not None and not _PLACED.search(which["rest"].replace("put at", ""))


_FROM: Final = re.compile(r"\bfrom(?: about| around| roughly| maybe| some)?$")
#: "The water falls from 30 m", "sharp from 2 m".
_NOT_FROM: Final = re.compile(
    r"\b(?:falls?|drops?|dropping|plunges|comes|pours|jump\w*|dive[sd]?|fell|water|sharp|focus\w*"
    r"|everything|depth|down|range\w*|goes|anything|up)\b"
)
_RANGE_BEHIND: Final = re.compile(r"^ ?(?:to|up to|until|till|till|on|onwards?|up|down)\b")
#: "From over the river, 55 m": where the camera stands.
_FROM_PLACE: Final = re.compile(
    r"\bfrom (?:over|across|behind|beyond|the (?:other|far|opposite|near|left|right)"
    r"|(?:the|a|this) (?:bridge|bank|viewpoint|platform|path|beach|shore))\b[a-z ]*$"
)
_ELSEWHERE: Final = re.compile(rf"\b{ELSEWHERE}\b")
_BEFORE_LENS: Final = re.compile(
    r"^ ?(?:,|with|at|on|using|through|and)?(?: (?:the|my|an?))?(?: lens| zoom)? ?$"
)
_FALL_FROM: Final = re.compile(
    rf"(?: (?:high|tall))? (?:{FALL}|section|slice|part|piece|strip)(?: of it)?"
    r" from(?: about| maybe)? "
)


def is_fall_from(draft: Draft, quantity: Quantity) -> bool:
    """Whether a length follows the fall's own: `a 6 m fall from 9 m`."""
    earlier = draft.neighbour(quantity, -1)
    return (
        earlier is not None
        and earlier.unit in LENGTH_UNITS
        and quantity.unit in LENGTH_UNITS
        and (_FALL_FROM.fullmatch(draft.before(quantity)) is not None)
    )


_SETTINGS: Final = frozenset({"mm", "f", "iso", "s"})


def _is_taken_from(draft: Draft, quantity: Quantity, words: str) -> bool:
    """Whether a length is where a frame is taken from: `at 24 mm from 15 m`."""
    if quantity.unit in {"", "km", "mi"} or _RANGE_BEHIND.match(draft.after(quantity)):
        return False
    if words == "from" and _stands_there(draft, quantity):
        return True
    earlier, later = draft.neighbour(quantity, -1), draft.neighbour(quantity, 1)
    clause, rest = draft.last_clauses(quantity)
    if earlier is not None and earlier.unit in _SETTINGS and ONLY_FILLER.fullmatch(rest):
        return bool(_FROM_PLACE.search(clause)) and not _ELSEWHERE.search(clause)
    if not _FROM.search(words) or _NOT_FROM.search(words):
        return False
    through = later is not None and later.unit == "mm"
    return (through and _BEFORE_LENS.match(draft.after(quantity)) is not None) or (
        earlier is not None and (earlier.unit == "mm" or is_zoomed(draft, earlier, quantity))
    )


_WITH_LENS: Final = re.compile(r"^ ?(?:with|on|using|through|at) (?:(?:the|my) )?$")


def _stands_there(draft: Draft, quantity: Quantity) -> bool:
    """Whether a clause is no more than "from 8 m", or goes on with what was on the camera."""
    after = draft.after(quantity)
    ends = draft.neighbour(quantity, 1) is None or draft.clause_after(quantity) != after
    alone = ends and not draft.clause_after(quantity).strip()
    return alone or _WITH_LENS.match(after) is not None


def is_zoomed(draft: Draft, focal: Quantity, quantity: Quantity) -> bool:
    """Whether a bare number is a focal length by what follows: `at 35 from 30 metres`."""
    return (
        focal.unit == ""
        and not (focal.fraction or focal.is_range or focal.signed)
        and draft.before(focal).endswith("at ")
        and _FROM.fullmatch(draft.after(focal).strip()) is not None
        and quantity.unit in {"m", "ft", "yd"}
    )
