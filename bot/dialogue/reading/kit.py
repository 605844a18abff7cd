"""Kit as typed: sensor format, pixels, lenses, filters, tripod."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import LensFact
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.stops import is_filter, nd_stops

_FORMATS: Final = (
    (
        "phone",
        re.compile(
            r"\b(?:smart)?phone\b(?! (?:battery|number|signal|call|reception|line|is dead|(?:is )?(?:in |on )?flight|inside))"
            r"|\b(?:cell|mobile)(?: ?phone)? (?:camera|only)\b"
        ),
    ),
    ("44x33", re.compile(r"\bformatmedium\b")),
    ("full frame", re.compile(r"\bformatfull\b")),
    ("aps-c 1.6", re.compile(r"\bformatsmallcrop\b")),
    (
        "aps-c",
        re.compile(
            r"\bformatcrop\b|\bcrop(?:ped)?[ -]?(?:sensor|body|camera|frame|dslr|mirrorless)\b"
            r"|\b(?:on|a|my|is|it's|its|i'm|im|use|have|shoot|shooting) crop\b"
            r"(?! (?:it|the|later|in|of|off|out))|^crop(?=$|[,;.])"
        ),
    ),
    ("four thirds", re.compile(r"\bformatmft\b")),
    ("1-inch", re.compile(r"\bformatinch\b")),
)
_TAKES_WITH_PHONE: Final = re.compile(
    r"\b(?:on|from|by|call\w*|charg\w+) (?:my |the )?phone\b(?= at)"
)
#: A zoom's ends differ by this factor at least (own rule; 16-20 is none, 14-24 is).
_LEAST_ZOOM: Final = 1.3
_COUNTED: Final = re.compile(
    r"^ ?-?(?:people|students|persons|of|times|kids|frames|shots|days|weeks|years|others|folks"
    r"|guests|photographers|or so|beginners|pages|cars|dollars|euros|bucks|k\b)"
)
#: Ends of zooms that are made (common practice): a bare pair of numbers must be such.
_ZOOM_ENDS: Final = frozenset(
    {7, 8, 9, 10, 11, 12, 14, 15, 16, 17, 18, 20, 22, 24, 25, 28, 30, 32, 35, 36, 40, 42, 45, 50}
    | {52, 55, 60, 64, 66, 70, 75, 77, 80, 85, 90, 100, 105, 110, 120, 125, 135, 140, 150, 180}
    | {200, 210, 240, 250, 300, 350, 400, 450, 500, 600, 800}
)
_MILLIMETRES_AFTER: Final = re.compile(
    r"^ ?(?:mm|f ?/? ?\d|/\d|lens|zoom|(?:[a-z]+ )?(?:lens|zoom))"
)
_EQUIVALENT: Final = re.compile(r"^\W*(?:mm )?(?:equiv\w*|eq\b)")
#: No zoom opens less than this at its wide end (common practice); beyond it is a setting.
_NARROWEST_WIDE_OPEN: Final = 7.1
_WIDE_OPEN_MARKS: Final = frozenset({1.2, 1.4, 1.8, 2.8, 3.5, 4.5, 5.6, 6.3})
_PRIME: Final = re.compile(r"^ ?(?:f ?/? ?\d\S* )?(?:[a-z]+ )?(?:prime|lens)\b")
_PRIME_LISTED: Final = re.compile(r"\b(?:have|own|got|brought|lenses|primes)\b")


def read_camera(draft: Draft) -> None:
    """Sensor format and megapixels."""
    for name, pattern in _FORMATS:
        if pattern.search(draft.text):
            draft.note("camera_format", name)
            break
    for quantity in draft.free("mp"):
        if quantity.is_range:
            draft.refuse(quantity)
        else:
            draft.put("megapixels", quantity.value, quantity)
    for quantity in draft.free("x"):
        draft.claim(quantity)


def _is_zoom(draft: Draft, quantity: Quantity) -> bool:
    if quantity.high is None or quantity.fraction or quantity.unit not in {"", "mm"}:
        return False
    plausible = quantity.value >= 4 and 14 <= quantity.high <= 1500  # shortest and longest made
    if quantity.unit == "" and not _MILLIMETRES_AFTER.search(draft.text[quantity.end :]):
        plausible = plausible and quantity.value in _ZOOM_ENDS and quantity.high in _ZOOM_ENDS
    return (
        plausible
        and quantity.high / quantity.value >= _LEAST_ZOOM
        and not _COUNTED.search(draft.after(quantity))
    )


def _widest(draft: Draft, lens: Quantity) -> tuple[float | None, float | None]:
    """The widest f-numbers typed right behind a lens; the number is claimed with it."""
    number = draft.neighbour(lens, 1)
    if number is None or number not in draft.free("f", ""):
        return None, None
    between = draft.after(lens)
    glued = between.strip() in {"", "mm", "lens", "zoom"} and (
        number.unit == "f" or number.value in _WIDE_OPEN_MARKS
    )
    if not (glued or between == "/") or number.value > _NARROWEST_WIDE_OPEN:
        return None, None
    draft.claim(number)
    return number.value, number.high or number.value


def read_lenses(draft: Draft) -> None:
    """Zooms by their two ends, primes by the word; their apertures are no settings."""
    lenses = [_lens(draft, quantity) for quantity in draft.free("", "mm")]
    found = tuple(dict.fromkeys(lens for lens in lenses if lens is not None))
    if found:
        draft.note("lenses", found)


def _lens(draft: Draft, quantity: Quantity) -> LensFact | None:
    if _is_zoom(draft, quantity):
        if _EQUIVALENT.search(draft.after(quantity)):
            draft.refuse(quantity)
            return None
        longest = quantity.high or quantity.value
    elif quantity.unit == "mm" and _is_prime(draft, quantity):
        longest = quantity.value
    else:
        return None
    draft.claim(quantity)
    wide, narrow = _widest(draft, quantity)
    return LensFact(
        shortest_mm=quantity.value,
        longest_mm=longest,
        widest_at_shortest=wide,
        widest_at_longest=narrow,
    )


def _is_prime(draft: Draft, quantity: Quantity) -> bool:
    if quantity.is_range or not 3 <= quantity.value <= 1500:
        return False
    number = draft.neighbour(quantity, 1)
    wide_open = (
        number is not None
        and number.unit == "f"
        and number.value <= 2.8  # nobody sets a fall wider than this (own rule)
        and not draft.after(quantity).strip()
    )
    if wide_open or _PRIME.search(draft.text[quantity.end :]):
        return True
    before = draft.before(quantity)
    return bool(_PRIME_LISTED.search(draft.text)) and not re.search(r"(?:\bat|@) ?$", before)


# --- filters and support ---------------------------------------------------------------------

_POLARISER: Final = r"(?:pol[aeo]r+i[sz]\w*|pola|cpl|c-?pol|circular pol\w*|pol(?: filter)?)"
_POLARISER_WORD: Final = re.compile(rf"\b{_POLARISER}\b")
_NOT_HERE: Final = (
    r"(?:left|forgot|forgotten|in the (?:car|hut|tent|van|boot|trunk)|at home|back (?:home|at|in)"
    r"|at the (?:car|hut|hotel)|not with me|not here"
    r"|no longer have|lost|broke\w*)"
)
_NO: Final = (
    r"(?:no|without(?: a| my)?|haven't got(?: a| any)?|(?:don't|do not) (?:have|own)(?: a| any)?)"
)
_LACKS_POLARISER: Final = re.compile(
    rf"\b{_NO} {_POLARISER}\b(?! (?:on|mounted|effect))"
    rf"|\b{_POLARISER}\W{{1,3}}(?:no|nope|none|don't have)\b"
    rf"|\b(?:left|forgot|forgotten|lost)\b[^,;.]{{0,20}}\b{_POLARISER}\b"
    rf"|\b{_POLARISER}\b[^,;.]{{0,15}}\b{_NOT_HERE}\b"
)
_POLARISER_OFF: Final = re.compile(
    rf"\b{_POLARISER}(?:'s)? (?:is |now |comes? )?(?:off|removed|out)\b|\b(?:no|without) {_POLARISER} on\b"
    rf"|\b(?:took|take|taken|taking|pulled|removed)\b[^,;.]{{0,12}}\b{_POLARISER}\b"
)
_POLARISER_ON: Final = re.compile(
    rf"\b{_POLARISER}(?:'s)? (?:(?:is|still|now|filter|already)\b ?)*"
    rf"(?:on(?! wide)|mounted|turned|fitted|attached|in place|at (?:full|max|half))\b"
    rf"|\b(?:with|using|through|turned|have) (?:the|my) {_POLARISER}\b(?! (?:off|in the))"
    rf"|\b(?:put|screwed|mounted|added|using)\b[^,;.]{{0,10}}\b{_POLARISER}\b"
)
_ASKS_FOR_POLARISER: Final = re.compile(
    rf"\b(?:need|buy|get|worth|is|what's)(?: a| the)? {_POLARISER}\b"
)
_WITH_POLARISER: Final = re.compile(rf"\b(?:with|and|\+|plus) (?:a |the |my )?{_POLARISER}\b")
_NO_FILTERS: Final = re.compile(
    r"\b(?:no|without(?: any)?|zero) filters?\b|\bfilters? (?:are |is )?off\b|\bunfiltered\b"
    r"|\b(?:took|take) (?:the |all |my )?filters? off\b|\bnothing (?:\w+ )?(?:on|in front of) the (?:lens|front|glass)\b"
)
_OWNS_NO_FILTERS: Final = re.compile(
    r"\b(?:don't|do not|haven't|didn't) (?:have|own|got|bring|brought|carry)(?: any| got any)?"
    r" filters?\b|\b(?:forgot|left) (?:the |my |all )*filters?\b"
    r"|\bno filters? (?:with me|at all|in the bag|here|today)\b"
)
_NO_ND: Final = re.compile(
    r"\b(?:no|without(?: any)?|don't have(?: an| any)?|haven't got(?: an| any)?)"
    r" (?:nds?|nd filters?|neutral[ -]densit\w+)\b"
)
_ND_OFF: Final = re.compile(
    r"\bno nd on\b|\b(?:nd|nds) (?:is |now )?(?:off|removed)\b|\btook (?:the |my )?nd off\b"
)
_ON_BEHIND: Final = re.compile(
    r"^(?: ?(?:nd|filter|stopper))* ?(?:is |now |still )*(?:on|mounted|fitted|in front|attached|screwed)\b"
)
_OFF_BEHIND: Final = re.compile(r"^(?: ?(?:nd|filter))* ?(?:is |now |comes? )?(?:off|removed)\b")
_WITH_BEFORE: Final = re.compile(
    r"\b(?:with|using|through|put|plus|\+|behind)(?: on)?(?: the| my| a| an)? ?$"
)
_OWNS: Final = re.compile(r"\b(?:have|own|got|kit|bag|bring|brought|carry|owned|only)\b")
_LISTED: Final = re.compile(r"^ ?-? ?(?:,|and|&|\+|/|or) ?$")


def read_polariser(draft: Draft) -> None:
    """Whether there is a polariser and whether it is on."""
    text = draft.text
    if not _POLARISER_WORD.search(text) or _ASKS_FOR_POLARISER.search(text):
        return
    if _LACKS_POLARISER.search(text):
        draft.note("has_polariser", value=False)
        return
    draft.note("has_polariser", value=True)
    with_settings = draft.values.keys() & {"shutter_s", "nd_on_stops"} and _WITH_POLARISER.search(
        text
    )
    if _POLARISER_OFF.search(text):
        draft.note("polariser_on", value=False)
    elif _POLARISER_ON.search(text) or with_settings:
        draft.note("polariser_on", value=True)


def _filter_stops(draft: Draft, quantity: Quantity) -> float | None:
    if quantity.is_range or quantity.signed:
        return None
    if quantity.unit == "nd":
        return nd_stops(quantity)
    return quantity.value if is_filter(draft, quantity) else None


def _strengths(draft: Draft) -> list[tuple[Quantity, float]]:
    """Filters by their strength; `3 and 6 stop nd` are two, a strength that may be two is unread."""
    found: list[tuple[Quantity, float]] = []
    for quantity in draft.free("nd", "stop"):
        stops = _filter_stops(draft, quantity)
        if stops is None:
            if quantity.unit == "nd":
                draft.refuse(quantity)
            continue
        earlier = draft.neighbour(quantity, -1)
        if earlier in draft.free("") and _LISTED.match(draft.before(quantity)):
            found.append((earlier, earlier.value))
        found.append((quantity, stops))
    return found


def _is_on(draft: Draft, quantity: Quantity) -> bool:
    after = draft.after(quantity)
    if _ON_BEHIND.search(after) or _WITH_BEFORE.search(draft.before(quantity)):
        return True
    set_up = {"f_number", "shutter_s"} <= draft.values.keys()
    return (set_up or "nd_on_stops" in draft.expecting) and not _OWNS.search(draft.text)


def read_filters(draft: Draft) -> None:
    """ND filters that are owned, and the one that is on."""
    owned: list[float] = []
    for quantity, stops in _strengths(draft):
        if _OFF_BEHIND.search(draft.after(quantity)):
            draft.claim(quantity)
            draft.note("nd_on_stops", 0.0)
        elif _is_on(draft, quantity):
            draft.put("nd_on_stops", stops, quantity)
        else:
            draft.claim(quantity)
            owned.append(stops)
    if owned:
        draft.note("nd_stops", tuple(owned))
    _read_no_filters(draft)


def _read_no_filters(draft: Draft) -> None:
    text = draft.text
    asked_for_kit = draft.expecting & {"has_polariser", "nd_stops"}
    if _OWNS_NO_FILTERS.search(text) or (asked_for_kit and _NO_FILTERS.search(text)):
        draft.note("nd_stops", ())
        draft.note("has_polariser", value=False)
    elif _NO_FILTERS.search(text):
        draft.note("nd_on_stops", 0.0)
        draft.note("polariser_on", value=False)
    elif _ND_OFF.search(text):
        draft.note("nd_on_stops", 0.0)
    elif _NO_ND.search(text):
        draft.note("nd_stops", ())


_TRIPOD: Final = r"(?:tripods?|tripd|tri-?pod|triopd|tirpod)"
_NO_TRIPOD: Final = re.compile(
    rf"\b{_NO} {_TRIPOD}\b|\b{_TRIPOD}\W{{1,3}}(?:no|nope|none|don't have)\b"
)
_ABSENT_TRIPOD: Final = re.compile(
    rf"\b{_TRIPOD}\b[^,;.]{{0,12}}\b{_NOT_HERE}\b|\b(?:left|forgot|forgotten)\b[^,;.]{{0,12}}\b{_TRIPOD}\b"
)
_ON_TRIPOD: Final = re.compile(
    rf"\bon (?:a|the|my) (?:\w+ )?{_TRIPOD}\b|\b{_TRIPOD} (?:is |now )?(?:up|set up|out(?=$|[,.;])|at|level|stands)\b"
)
_TODAY: Final = re.compile(r"\b(?:today|here|with me|this time|now)\b")
_HAND_HELD: Final = re.compile(r"\bhand[ -]?held\b|\bhandholding\b|\bby hand\b|\bfrom the hand\b")
_HALVES: Final = re.compile(
    r"\b(?:clicks?|dials?|increments?|steps?|wheels?)\b[^,;.]{0,20}\b(?:1/2|half|halves)\b"
    r"|\b(?:1/2|half)[ -]?stops? (?:dial|clicks?|steps?|increments?|camera|only)\b"
)
_THIRDS: Final = re.compile(
    r"\b(?:clicks?|dials?|increments?|wheels?)\b[^,;.]{0,20}\b(?:1/3|thirds?)\b"
    r"|\b(?:1/3|third)s?[ -]?stops? (?:dial|clicks?|steps?|increments?|camera)\b"
)


def read_support(draft: Draft) -> None:
    """Tripod or hand, and the steps of the dials."""
    text = draft.text
    if _NO_TRIPOD.search(text):
        draft.note("has_tripod", value=False)
        if _TODAY.search(text):
            draft.note("hand_held", value=True)
    elif _ABSENT_TRIPOD.search(text):
        draft.note("has_tripod", value=True)
        draft.note("hand_held", value=True)
    elif re.search(rf"\b{_TRIPOD}\b", text):
        draft.note("has_tripod", value=True)
        if _ON_TRIPOD.search(text):
            draft.note("hand_held", value=False)
    if _HAND_HELD.search(text):
        draft.note("hand_held", value=True)


def read_dial(draft: Draft) -> None:
    """Whether the dials click in halves or in thirds; the fraction is no measure then."""
    halves, thirds = _HALVES.search(draft.text), _THIRDS.search(draft.text)
    match = halves or thirds
    if match is None:
        return
    draft.note("dial_halves", value=halves is not None)
    for quantity in draft.free("stop", ""):
        if match.start() <= quantity.start < match.end() and quantity.fraction:
            draft.claim(quantity)
