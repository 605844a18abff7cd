"""The focal length as it is set: in millimetres, bare behind "at", or an end of the zoom."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.lenses import PRIMES, SHORTEST_MM
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.role_beside import is_zoomed
from bot.dialogue.reading.roles import counts
from bot.dialogue.reading.settings import is_bound

_NO_FOCAL: Final = re.compile(r"\b(?:rain\w*|snow\w*|thread|filter|filters|ring|rings|step-?up)\b")
_POLARISER: Final = re.compile(r"\b(?:pola\w*|cpl|nd)\b\W*$")
_EQUIVALENT: Final = re.compile(r"^\W*(?:equiv\w*|eq\b|in full)")
_AT_FOCAL: Final = re.compile(r"(?:@|\b(?:at|zoomed (?:in |out )?to|zoom (?:at|to)|set to)) ?$")
_FOCAL_CUE: Final = re.compile(
    r"\b(?:(?:zoom(?:ed|ing)?|racked)(?: (?:all|way|fully|the|in|out|to|at|is|was|now|set|right"
    r"|back|about|around|lens))*"
    r"|focal(?: length)?(?: (?:is|was|of|at|set|to|about|around|now))*"
    r"|(?:wide|long|tele\w*|short) end,?"
    r"|zoom(?: ring| barrel| lens)? (?:shows|reads|says|stands at|sits at)(?: about)?"
    r"|lens (?:(?:is|was|set|now) )*(?:at|on|to)(?: about| around)?)[ :=]*$"
)
#: "The 70-200 at the long end": the focal length is the lens's own.
_ZOOM_END: Final = re.compile(
    r"\b(?:(?:at|on) )?(?:(?:the|its) )?(?:very )?(?:(?P<long>long|tele\w*|far)|wide"
    r"|short)(?:est)? end\b"
    r"|\b(?:zoomed )?(?:all the way|fully|right) (?:zoomed )?(?:(?P<in>in)|out)\b"
    r"|\bat its (?:(?P<longest>longest)|widest|shortest)\b"
)


#: "15 m away with the 24, upright", "on the 35": what was on the camera.
_THE_ONE: Final = re.compile(r"\b(?:with|on|through|using|used|at) (?:the|my) $")
_NO_NOUN: Final = re.compile(
    r"^ ?(?:(?:(?:at|with|from) )?$|[,.;:!?)]"
    r"|(?:and|at|in|on) (?:full|crop|format\w*|f ?/?\d|iso|portrait|landscape|a|the|my|\d)\b"
    r"|on (?:full|a|my)|upright|portrait|landscape|format\w+|held|wide open|f ?/?\d"
    r"|(?:from|to|for|was|is|lens)\b)"
)
#: Of a frame or a place to stand, not of a day or a bus.
_OF_A_FRAME: Final = re.compile(
    r"\b(?:shots?|shoot\w*|took|taken|frames?|pictures?|photos?|lens|upright|portrait|landscape"
    r"|format\w+|away|nearest|used|using|f ?/?\d|iso)\b|\d ?(?:m|ft|feet|met\w+)\b"
)


def _is_the_one(draft: Draft, quantity: Quantity) -> bool:
    """Whether a bare number is the lens that was on: by its words, and a lens that is made."""
    if quantity.value not in PRIMES or not _THE_ONE.search(draft.before(quantity)):
        return False
    return bool(_NO_NOUN.match(draft.after(quantity)) and _OF_A_FRAME.search(draft.text))


#: "On the 24 end of my 24-105".
_NAMED_END: Final = re.compile(r"^ (?:wide |long |tele )?end\b")


def _read_zoom_end(draft: Draft) -> None:
    """The end of the one lens that is spoken of; said again in digits, it is claimed."""
    match, lenses = _ZOOM_END.search(draft.text), draft.values.get("lenses", ())
    if match is None or len(lenses) != 1 or "focal_mm" in draft.values:
        return
    if "?" in draft.text or lenses[0].widest_at_shortest is not None:
        return  # "f/4 at the long end" tells what the lens can do
    longest = match["long"] or match["in"] or match["longest"]
    end_mm = lenses[0].longest_mm if longest else lenses[0].shortest_mm
    draft.note("focal_mm", end_mm)
    for quantity in draft.free(""):
        if quantity.value == end_mm:
            draft.claim(quantity)


def read_focal_lengths(draft: Draft) -> None:
    """Focal lengths as set: in millimetres, or bare behind "at" where a zoom covers them."""
    for quantity in draft.free("mm"):
        before, after = draft.clause_before(quantity), draft.clause_after(quantity)
        if _NO_FOCAL.search(before + after) or _POLARISER.search(before):
            draft.claim(quantity)
        elif quantity.is_range or _EQUIVALENT.search(after) or is_bound(draft, quantity):
            draft.refuse(quantity)
        else:
            draft.put("focal_mm", quantity.value, quantity)
    _read_zoom_end(draft)
    for quantity in draft.free(""):
        before = draft.before(quantity)
        if _NAMED_END.match(draft.after(quantity)) and quantity.value >= SHORTEST_MM:
            draft.put("focal_mm", quantity.value, quantity)
            continue
        covered = any(
            lens.shortest_mm <= quantity.value <= lens.longest_mm
            for lens in draft.values.get("lenses", ())
        )
        cued = _FOCAL_CUE.search(before) and quantity.value >= SHORTEST_MM
        if quantity.is_range or quantity.fraction or counts(draft, quantity):
            continue
        later = draft.neighbour(quantity, 1)
        from_there = later is not None and is_zoomed(draft, quantity, later)
        set_there = cued or from_there or _is_the_one(draft, quantity)
        if (covered and _AT_FOCAL.search(before)) or set_there:
            draft.put("focal_mm", quantity.value, quantity)
