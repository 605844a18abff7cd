"""The focal length as it is set: in millimetres, bare behind "at", or an end of the zoom."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.base_iso import ISO_MARKS
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.lens_marks import PRIMES, SHORTEST_MM, ZOOM_ENDS
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.role_beside import is_zoomed
from bot.dialogue.reading.roles import counts
from bot.dialogue.reading.settings import is_bound
from bot.dialogue.reading.zoom_turned import turned_to_mm

_NO_FOCAL: Final = re.compile(
    r"\b(?:rain\w*|snow\w*|thick\w*|bleed|margins?|screws?|hex|allen|bolts?|soles?|spikes|neoprene|wetsuit|rope"
    r"|cord|thread|filter|filters|ring|rings|step-?up)\b"
)
_POLARISER: Final = re.compile(r"\b(?:pola\w*|cpl|nds?)\b(?: owned)?\W*(?:one\W*)?$")
#: Threads of filters that no lens has for its length [mm] (ISO 6 sizes, common practice).
_THREADS: Final = frozenset({49, 52, 58, 62, 67, 72, 77, 82, 86, 95})
_FILTER_BEHIND: Final = re.compile(r"^ ?(?:circular |thin )?(?:pola\w*|polfilter|cpl|pol|nds?)\b")
_EQUIVALENT: Final = re.compile(r"^\W*(?:equiv\w*|eq\b|in full)")
_AT_FOCAL: Final = re.compile(r"(?:@|\b(?:at|zoomed (?:in |out )?to|zoom (?:at|to)|set to)) ?$")
_FOCAL_CUE: Final = re.compile(
    r"\b(?:(?:zoom(?:ed|ing|'s)?|racked)(?: (?:all|way|fully|the|in|out|to|at|is|was|now|set|right"
    r"|back|about|around|lens))*"
    r"|focal(?: length)?(?: (?:is|was|of|at|set|to|about|around|now))*"
    r"|(?:all the way|fully|right) (?:out|in)(?:,| (?:at|to|is))*|(?:wide|long|tele\w*|short) end,?"
    r"|zoom(?: ring| barrel| lens)? (?:shows|reads|says|stands at|sits at)(?: about)?"
    r"|(?:detail|section|close[- ]?up)s?(?: of (?:it|the \w+))? (?:with|at|on|using)(?: the| my)?"
    r"|lens (?:(?:is|was|set|now) )*(?:at|on|to|says|reads|shows)(?: about| around)?)[ :=]*$"
)
#: "43 on the barrel": what the zoom shows.
_ON_BARREL: Final = re.compile(r"^ ?(?:or so )?on the (?:lens |zoom )?(?:barrel|zoom|ring)\b")
#: "The 70-200 at the long end": the focal length is the lens's own.
_ZOOM_END: Final = re.compile(
    r"\b(?:(?:at|on) )?(?:(?:the|its) )?(?:very )?(?:(?P<long>long|tele\w*|far)|wide"
    r"|short)(?:est)? end\b"
    r"|\b(?:zoomed )?(?:all the way|fully|right) (?:zoomed )?(?:(?P<in>in)|out)\b"
    r"|\bat its (?:(?P<longest>longest)|widest|shortest)\b"
    r"|\b(?:all the way|fully|right|racked|cranked|zoomed)(?: (?:out|in|back))? (?:to )?"
    r"(?:(?P<tele>tele\w*|long)|wide)\b(?! (?:angle|open|awake|shot|view))"
    r"|\bracked (?:all the way )?(?P<racked>out)\b(?! to (?:the )?wide)"
    r"|\bas (?:(?P<far>long)|wide) as (?:it|she|this|the (?:lens|zoom)) (?:goes|gets|will go|can)\b"
)


#: "15 m away with the 24, upright", "on the 35": what was on the camera.
_THE_ONE: Final = re.compile(
    r"\b(?:with|on|through|using|used|at) (?:the|my) $"
    r"|\bon (?:the|my) (?:body|camera)(?: is| now| it's)?[:, ]+(?:the|my) $"
)
#: "Put the 24 on".
_PUT: Final = re.compile(r"\b(?:put|stuck|clicked|mounted|fitted|have|got|now) (?:the|my) $")
_ON: Final = re.compile(
    r"^ (?:back )?on(?:$|[,;.!]| (?:now|it|instead|the (?:camera|body)|my (?:camera|body))\b)"
)

_NO_NOUN: Final = re.compile(
    r"^ ?(?:(?:(?:at|with|from) )?$|[,.;:!?)]"
    r"|(?:and|at|in|on) (?:full|crop|format\w*|f ?/?\d|iso|portrait|landscape|a|the|my|\d)\b"
    r"|on (?:full|a|my)|upright|portrait|landscape|format\w+|held|wide open|f ?/?\d"
    r"|(?:from|to|for|was|is|lens)\b)"
)
#: Of a frame or a place to stand, not of a day or a bus.
_OF_A_FRAME: Final = re.compile(
    r"\b(?:shots?|shoot\w*|took|taken|frames?|pictures?|photos?|lens|upright|portrait|landscape"
    r"|format\w+|away|nearest|closest|used|using|body|camera|f ?/?\d|iso)\b"
    r"|\d ?(?:m|ft|feet|met\w+|cm|centimet\w+)\b"
)


def _is_the_one(draft: Draft, quantity: Quantity) -> bool:
    """Whether a bare number is the lens that was on: by its words, and a lens that is made."""
    if quantity.value not in PRIMES:
        return False
    before, after = draft.before(quantity), draft.after(quantity)
    if _PUT.search(before) and _ON.match(after):
        return True
    if not _THE_ONE.search(before):
        return False
    return bool(_NO_NOUN.match(after) and _OF_A_FRAME.search(draft.text))


#: "135 gives me just the lip": what a lens shows, of the fall.
_SHOWS: Final = re.compile(
    r"^ (?:gives|shows|frames|gets|fits|holds|covers)"
    r" (?:(?:me|us|just|only|exactly|nicely|about|all|half|part|of|the|a|this|whole|upper|lower) )*"
    r"(?:lip|crest|fall|falls|drop|top|foot|half|section|part|middle|ledge|pool|curtain)\b"
)


def _shows_a_part(draft: Draft, quantity: Quantity) -> bool:
    """Whether a bare number of a lens's size is told by what it shows."""
    sized = quantity.text.strip().isdigit() and SHORTEST_MM <= quantity.value <= _LONGEST_MM
    return sized and _SHOWS.match(draft.after(quantity)) is not None


#: "My lens is 26", "the zoom's on 35": the ring by its name, and nothing counted.
_BY_ITS_NAME: Final = re.compile(
    r"\b(?:my|the|this) (?:lens|zoom|focal length)(?:'s| is| was)(?: (?:set|now|still))*"
    r"(?: (?:on|at|to))? ?$"
)
_ENDS: Final = re.compile(r" ?(?:$|[,.;!)])")


def _is_named(draft: Draft, quantity: Quantity) -> bool:
    """Whether a bare number stands behind the name of the ring that it is read from."""
    sized = quantity.text.strip().isdigit() and SHORTEST_MM <= quantity.value <= _LONGEST_MM
    named = _BY_ITS_NAME.search(draft.before(quantity)) is not None
    return sized and named and _ENDS.match(draft.after(quantity)) is not None


#: The longest lens that is carried to a fall [mm] (own rule).
_LONGEST_MM: Final = 600
#: "On the 24 end of my 24-105".
_NAMED_END: Final = re.compile(r"^ (?:wide |long |tele )?end\b")


def _read_zoom_end(draft: Draft) -> None:
    """The end of the one lens that is spoken of; said again in digits, it is claimed."""
    match, lenses = _ZOOM_END.search(draft.text), draft.values.get("lenses", ())
    if match is None or len(lenses) != 1 or "focal_mm" in draft.values:
        return
    if "?" in draft.text or lenses[0].widest_at_shortest is not None:
        return  # "f/4 at the long end" tells what the lens can do
    longest = any(match[name] for name in ("long", "in", "longest", "tele", "far", "racked"))
    end_mm = lenses[0].longest_mm if longest else lenses[0].shortest_mm
    draft.note("focal_mm", end_mm)
    for quantity in draft.free(""):
        if quantity.value == end_mm:
            draft.claim(quantity)


_SHOT_AT: Final = re.compile(
    r"(?:^|\b(?:shot|shoot|shooting|taken|took (?:it|one|this)|framed|zoomed|set|lens|photo|pic"
    r"|picture|frame) )(?:at|@) ?$"
)


def _is_before_f_number(draft: Draft, quantity: Quantity, later: Quantity) -> bool:
    """`shot at 24, f/11`: a lens that is made, and no ISO."""
    return (
        later.unit == "f"
        and quantity.unit == ""
        and quantity.value in ZOOM_ENDS - ISO_MARKS
        and quantity.text.strip().isdigit()
        and _SHOT_AT.search(draft.before(quantity)) is not None
        and draft.after(quantity).strip() in {"", ","}
    )


def _is_by_next(draft: Draft, quantity: Quantity) -> bool:
    """Whether the number behind makes a bare one a focal length: a distance or an f-number."""
    later = draft.neighbour(quantity, 1)
    return later is not None and (
        is_zoomed(draft, quantity, later) or _is_before_f_number(draft, quantity, later)
    )


def _is_no_setting(draft: Draft, quantity: Quantity) -> bool:
    """Whether a length is only bounded, or shorter than any lens but a phone's own."""
    phone = draft.values.get("camera_format") == "phone"
    return is_bound(draft, quantity) or (quantity.value < SHORTEST_MM and not phone)


def read_focal_lengths(draft: Draft) -> None:
    """Focal lengths as set: in millimetres, or bare behind "at" where a zoom covers them."""
    for quantity in draft.free("", "mm"):
        turned = turned_to_mm(draft, quantity)
        if turned is not None:
            draft.put("focal_mm", turned, quantity)
    for quantity in draft.free("mm"):
        before, after = draft.clause_before(quantity), draft.clause_after(quantity)
        thread = quantity.value in _THREADS and _FILTER_BEHIND.match(after)
        if _NO_FOCAL.search(before + after) or _POLARISER.search(draft.before(quantity)) or thread:
            draft.claim(quantity)
        elif quantity.is_range or _EQUIVALENT.search(after) or _is_no_setting(draft, quantity):
            draft.refuse(quantity)
        else:
            draft.put("focal_mm", quantity.value, quantity)
    _read_zoom_end(draft)
    _read_bare(draft)


def _read_bare(draft: Draft) -> None:
    """Numbers without their unit that a zoom, a word or the barrel makes focal lengths."""
    for quantity in draft.free(""):
        before = draft.before(quantity)
        named_end = _NAMED_END.match(draft.after(quantity)) and quantity.value >= SHORTEST_MM
        if named_end or _shows_a_part(draft, quantity) or _is_named(draft, quantity):
            draft.put("focal_mm", quantity.value, quantity)
            continue
        covered = any(
            lens.shortest_mm <= quantity.value <= lens.longest_mm
            for lens in draft.values.get("lenses", ())
        )
        shown = _FOCAL_CUE.search(before) or _ON_BARREL.match(draft.after(quantity))
        cued = shown and quantity.value >= SHORTEST_MM
        if quantity.is_range or quantity.fraction or counts(draft, quantity):
            continue
        set_there = cued or _is_by_next(draft, quantity) or _is_the_one(draft, quantity)
        if (covered and _AT_FOCAL.search(before)) or set_there:
            draft.put("focal_mm", quantity.value, quantity)
