"""Lenses as typed: zooms by their two ends, primes by the word or where lenses were asked."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import LensFact
from bot.dialogue.reading.compacts import as_real
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.inventory import is_missing, is_wished
from bot.dialogue.reading.lens_marks import PRIMES, SHORTEST_MM, ZOOM_ENDS
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.prime_lists import is_listed_prime
from bot.dialogue.reading.zoom_turned import turned_to_mm

#: No lens that is made is longer [mm] (common practice).
_LONGEST_MM: Final = 1500.0
#: A zoom's ends differ by this factor at least (own rule; 16-20 is none, 14-24 is).
_LEAST_ZOOM: Final = 1.3
#: No zoom is shorter than this at its long end (own rule).
_SHORTEST_LONG_END_MM: Final = 14.0
_COUNTED: Final = re.compile(
    r"^ ?-?(?:people|students|persons|of(?! (?:the|my) kit)|times|kids|frames|shots|days|weeks"
    r"|years|others|folks|guests|photographers|or so|beginners|pages|cars|dollars|euros|bucks|k\b)"
)
_MILLIMETRES_AFTER: Final = re.compile(
    r"^ ?(?:mm|f ?/? ?\d|/\d|lens|zoom|(?:[a-z]+ )?(?:lens|zoom))"
)
#: "24/70", where no fraction is asked for.
_SLASHED: Final = re.compile(r"(\d{1,3})/(\d{2,3})")
_EQUIVALENT: Final = re.compile(r"^\W*(?:mm )?(?:equiv\w*|eq\b)")
#: No zoom opens less than this at its wide end (common practice); beyond it is a setting.
_NARROWEST_WIDE_OPEN: Final = 7.1
#: Nobody sets a fall wider than this (own rule): "50 f/1.8" is a lens.
_WIDEST_SET: Final = 2.8
_WIDE_OPEN_MARKS: Final = frozenset({1.2, 1.4, 1.8, 2.8, 3.5, 4.5, 5.6, 6.3})
_PRIME: Final = re.compile(r"^ ?(?:mm )?(?:f ?/? ?\d\S* )?(?:[a-z]+ )?(?:prime|lens)\b")
_ARTICLE: Final = re.compile(r"\b(?:an?|my|plus)(?: little| old| fast| nifty)? ?$")
_FILTER_THREAD: Final = re.compile(r"^ ?(?:thread|filter|ring|nd|pol)")
_NAMED_PRIME: Final = re.compile(r"^ (?:prime|macro|fixed(?! at))\b")
_CALLED: Final = re.compile(r"\b(?:nifty|(?:an?|my|one|only) fixed) $")
_PRIME_LISTED: Final = re.compile(
    r"\b(?:have|own|got|brought|lenses|primes|(?:one|1|only|single) lens)\b"
)
#: Behind these a focal length is set, not owned.
_SET: Final = re.compile(
    r"(?:@|\b(?:at|zoomed(?: (?:in|out))?(?: to)?|zoom (?:at|to)|set (?:to|at|on)|using|around))"
    r"(?: about| around)? ?$"
)
#: What parts the members of a list of lenses, or opens it.
_LISTED: Final = re.compile(
    r"(?:^|[,;.:&+/]|\b(?:and|plus|with|w/|an?|the|my|only|just|lens|lenses|or|frame|body|camera"
    r"|formatfull|formatcrop|formatsmallcrop|formatmft|formatmedium))"
    r" ?(?:an? |the |my |just |only |nifty |little |old |fast )*$"
)
_LIST_GOES_ON: Final = re.compile(
    r"^ ?(?:mm|s|er)?(?=\s*(?:$|[,;.:&+/!)]| and\b| plus\b| with\b| or\b| f ?/? ?\d| prime\b"
    r"| lens\b| macro\b|\d?\.\d))"
)
_NO_LENS: Final = re.compile(r"\b(?:rain|thread|filters?|rings?|step-?up|pol\w*|cpl|nds?)\b\W*$")


#: "70-200 left at the hotel".
_STAYED: Final = re.compile(
    r"^ ?(?:mm )?(?:lens |zoom |prime )?(?:(?:is|was|has been|'s) )?(?:left|stay(?:s|ed)|forgotten"
    r"|waiting)"
    r" (?:at|in|behind|back|with)\b|^ ?(?:mm )?(?:is |'s )?(?:at home|(?:in|at) the (?:car|van"
    r"|hotel|hut|tent))\b"
)
#: "Are those 24-70 zooms heavy?" owns none.
_IN_GENERAL: Final = re.compile(
    r"\b(?:better|sharper|wider|nicer) than\b.*\?|^(?:and |so |ok |hi |hey )*(?:are|is|do|does"
    r"|would|should|which|what) (?:those|these|an?|any) [^.;]*"
    r"(?:lens|lenses|zooms?|primes?|\d)[^.;]*(?:\?|$)(?!.*\b(?:my|i have|i've|mine)\b)"
)


def read_lenses(draft: Draft) -> None:
    """Zooms by their two ends, primes by the word; their apertures are no settings.

    Where the open question asks for lenses, a focal length in a list is a prime, with or without
    its unit: "35 mm", "a 24 and an 85"; "at 35 mm" stays what is set.
    """
    if _IN_GENERAL.search(draft.text):
        return
    lenses = [_lens(draft, quantity) for quantity in draft.free("", "mm")]
    real = (as_real(draft.values.get("camera_format"), lens) for lens in lenses if lens is not None)
    found = tuple(dict.fromkeys(real))
    if found:
        draft.note("lenses", found)
    if len(found) == 1 and found[0].shortest_mm == found[0].longest_mm and _sets_up(draft):
        draft.values.setdefault("focal_mm", found[0].shortest_mm)


#: "Only a 28 mm f/2.8 on it": in use, not only owned.
_MOUNTED: Final = re.compile(
    r"^(?: ?mm)?(?: ?f ?/? ?[\d.]+)?(?: prime| lens)?(?:'s| is| now)* (?:on (?:it|the (?:camera"
    r"|body|front)"
    r"|my (?:camera|body)|now)|mounted|attached|stuck on|on(?=$|[,.;!]))(?!\w)"
)


_USING: Final = re.compile(
    r"\b(?:using|shooting with|shot with|shot on|on|with (?=the|my)|(?:it's|its) (?=the|my))"
    r" ?(?:the|my|an?)(?: \w+)? ?$"
)
#: "With the 24 mm prime and an 85": a bag, not what is on.
_AND_MORE: Final = re.compile(r"^[^,.;:]*?(?:\band\b|[+&]) (?:the |my |an? )?\d")


def _lens(draft: Draft, quantity: Quantity) -> LensFact | None:
    ends = _ends(draft, quantity)
    if ends is not None:
        if _EQUIVALENT.search(draft.after(quantity)):
            draft.refuse(quantity)
            return None
    elif _is_prime(draft, quantity):
        ends = quantity.value, quantity.value
    else:
        return None
    draft.claim(quantity)
    wide, narrow = _widest(draft, quantity)
    elsewhere = is_missing(draft.before(quantity)) or _STAYED.match(draft.clause_after(quantity))
    if elsewhere or is_wished(draft.text[: quantity.start]):
        return None
    if ends[0] == ends[1] and _is_mounted(draft, quantity):
        draft.note("focal_mm", ends[0])
    return LensFact(
        shortest_mm=ends[0],
        longest_mm=ends[1],
        widest_at_shortest=wide,
        widest_at_longest=narrow,
    )


def _is_mounted(draft: Draft, quantity: Quantity) -> bool:
    """Whether a lens is in use, not only owned."""
    behind = draft.text[quantity.end :]
    if _MOUNTED.match(behind):
        return True
    return bool(_USING.search(draft.before(quantity))) and not _AND_MORE.match(behind)


def _ends(draft: Draft, quantity: Quantity) -> tuple[float, float] | None:
    """The two ends of a zoom; None when the number is none."""
    short, long = quantity.value, quantity.high
    asked = "lenses" in draft.expecting
    slashed = _SLASHED.fullmatch(quantity.text) if asked else None
    if slashed:
        short, long = float(slashed[1]), float(slashed[2])
    elif (
        long is None
        or quantity.fraction
        or quantity.unit not in {"", "mm"}
        or turned_to_mm(draft, quantity) is not None
    ):
        return None
    if not (short >= SHORTEST_MM and _SHORTEST_LONG_END_MM <= long <= _LONGEST_MM):
        return None
    if long / short < _LEAST_ZOOM or _COUNTED.search(draft.after(quantity)):
        return None
    spoken = quantity.unit == "mm" or _MILLIMETRES_AFTER.search(draft.text[quantity.end :])
    made = {short, long} <= ZOOM_ENDS
    compact = "." in quantity.text and (asked or "camera_format" in draft.values)
    return (short, long) if made or ((spoken or compact) and "/" not in quantity.text) else None


def _widest(draft: Draft, lens: Quantity) -> tuple[float | None, float | None]:
    """The widest f-numbers typed right behind a lens; the number is claimed with it."""
    number = draft.neighbour(lens, 1)
    if number is None or number not in draft.free("f", ""):
        return None, None
    between = draft.after(lens)
    parted = "," in between and number.unit == "f" and number.value <= _WIDEST_SET
    if "," in between and (not parted or _sets_time(draft)):
        return None, None
    glued = between.strip(" ,") in {"", "mm", "lens", "zoom", "prime"} and (
        number.unit == "f" or number.value in _WIDE_OPEN_MARKS
    )
    if not (glued or between == "/") or number.value > _NARROWEST_WIDE_OPEN:
        return None, None
    draft.claim(number)
    return number.value, number.high or number.value


def _is_prime(draft: Draft, quantity: Quantity) -> bool:
    plain = not (quantity.is_range or quantity.fraction or quantity.signed)
    if not plain or not SHORTEST_MM <= quantity.value <= _LONGEST_MM:
        return False
    return is_listed_prime(draft.text, quantity) or _is_told_prime(draft, quantity)


def _is_told_prime(draft: Draft, quantity: Quantity) -> bool:
    """Whether its own words make a number a prime: its aperture, its name, what was asked."""
    if _SET.search(draft.before(quantity)):
        return False
    if quantity.unit == "":
        return quantity.value in PRIMES and _is_bare_prime(draft, quantity)
    named = _PRIME.search(draft.text[quantity.end :]) is not None
    if named or _opens_wide(draft, quantity) or _beside_zoom(draft, quantity):
        return True
    if "lenses" in draft.expecting:
        return not _sets_up(draft) and not _NO_LENS.search(draft.before(quantity))
    return bool(_PRIME_LISTED.search(draft.text)) and not _FROM_HERE.match(draft.after(quantity))


_FROM_HERE: Final = re.compile(r"^ (?:from|should|would|will|does|did|could|might)\b")


def _beside_zoom(draft: Draft, quantity: Quantity) -> bool:
    """`a 14 mm and a 24-70`: one of several lenses, where nothing is set."""
    zooms = any(other.is_range and other.unit in {"", "mm"} for other in draft.quantities)
    listed = _ARTICLE.search(draft.before(quantity)) is not None
    filters = _NO_LENS.search(draft.before(quantity)) or _FILTER_THREAD.match(draft.after(quantity))
    return zooms and listed and not filters and not _sets_up(draft)


#: "Only brought the 35", "all i have is a 50", "my only lens is the 24": all that there is.
_ONLY: Final = re.compile(
    r"\b(?:(?:only|just)(?: (?:brought|bring|packed|took|carry|carrying|got|have|own|using|with))*"
    r"(?: (?:the|my|an?|one|this))+|(?:all|everything) (?:i|we)(?:'ve)? (?:have|got|brought|own"
    r"|packed)(?: with"
    r" (?:me|us))?(?:'s| is)(?: (?:the|my|an?))?|(?:only|one|single|sole) lens(?: (?:i"
    r"|we) (?:have|got"
    r"|brought|own))?(?:'s| is|:|,)(?: (?:the|my|an?))?) ?$"
)
_ONLY_ENDS: Final = re.compile(
    r"^(?: ?mm)?(?: (?:lens|prime|with me|today|here|along))*(?=\s*(?:$|[,.;!?)]| (?:on|and|so"
    r"|but|no"
    r"|for|with|then|by|for)\b))"
)


def _is_bare_prime(draft: Draft, quantity: Quantity) -> bool:
    """A number without "mm": by its wide aperture, or in a list where lenses were asked."""
    only = _ONLY.search(draft.before(quantity)) and _ONLY_ENDS.match(draft.text[quantity.end :])
    if only and not _COUNTED.search(draft.after(quantity)):
        return True
    if _NAMED_PRIME.match(draft.text[quantity.end :]) or _CALLED.search(draft.before(quantity)):
        return True
    listed = _LISTED.search(draft.before(quantity)) is not None
    if not listed or _NO_LENS.search(draft.before(quantity)):
        return False
    if _opens_wide(draft, quantity):
        through = _THROUGH.search(draft.before(quantity)) is not None
        return through or "lenses" in draft.expecting or _speaks_of_lenses(draft)
    if not _LIST_GOES_ON.search(draft.text[quantity.end :]):
        return False
    return bool(_HEADED.search(draft.text[: quantity.start])) or _answers(draft, quantity)


def _answers(draft: Draft, quantity: Quantity) -> bool:
    """Whether a number in a list answers the question for lenses; alone it may count them."""
    if "lenses" not in draft.expecting or _sets_up(draft):
        return False
    alone = len(draft.quantities) == 1 and draft.text == quantity.text.strip()
    return "focal_mm" in draft.expecting or not alone


_THROUGH: Final = re.compile(r"\b(?:with|using|on|shooting|through) (?:the|my|an?) ?$")
#: "Three primes: 24, 35, 85".
_HEADED: Final = re.compile(
    r"\b(?:primes|lenses|(?:one|1|only|single|a) (?:prime|lens))(?: (?:are|is"
    r"|i have|i own|i carry|i brought|i've got|in (?:the|my) bag|with me|here|today|only))*:?"
    r"(?: |\d|,|&|\+|/|\b(?:and|an?|mm)\b)*$"
)


def _opens_wide(draft: Draft, quantity: Quantity) -> bool:
    """Whether an f-number stands right behind that nobody sets."""
    number = draft.neighbour(quantity, 1)
    if number is None or draft.after(quantity).strip() or number.value > _WIDEST_SET:
        return False
    return number.unit == "f" or (number.unit == "" and number.value in _WIDE_OPEN_MARKS)


def _speaks_of_lenses(draft: Draft) -> bool:
    """Whether a kit is told: a sensor, another lens, or a word of owning."""
    zooms = any(quantity.is_range for quantity in draft.quantities)
    several = sum(_opens_wide(draft, quantity) for quantity in draft.quantities) > 1
    return (
        zooms
        or several
        or "camera_format" in draft.values
        or bool(_PRIME_LISTED.search(draft.text))
    )


def _sets_up(draft: Draft) -> bool:
    """Whether the message tells settings, so that a focal length is one of them."""
    return any(
        quantity.unit in {"s", "iso"} or (quantity.unit == "f" and quantity.value > _WIDEST_SET)
        for quantity in draft.quantities
        if quantity.unit != "f" or not _follows_lens(draft, quantity)
    )


def _follows_lens(draft: Draft, quantity: Quantity) -> bool:
    """Whether an f-number stands right behind a number, as the widest of a lens does."""
    earlier = draft.neighbour(quantity, -1)
    return (
        earlier is not None
        and earlier.unit in {"", "mm"}
        and draft.before(quantity).strip(" /") in {"", "mm", "lens", "zoom", "prime"}
    )


def _sets_time(draft: Draft) -> bool:
    """Whether a time or an ISO stands in the message, so that an f-number is set with it."""
    return any(
        quantity.unit in {"s", "iso"} or (quantity.fraction and quantity.unit == "")
        for quantity in draft.quantities
    )
