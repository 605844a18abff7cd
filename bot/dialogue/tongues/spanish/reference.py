"""Spanish words of a frame that held, told as the measure for the next, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "reference.frame": (
        r"(?:primera|ultima|anterior|otra|amplia|abierta)(?: foto| toma)?|antes|hace un rato"
    ),
    "reference.held": r"bien|aguanto|aguantaba|ok|perfect[oa]|correct[oa]|limpi[oa]",
    "reference.not_held": r"no|demasiad[oa]|parpade\w+|muy|pasad[oa]",
}
