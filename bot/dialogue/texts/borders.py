"""Places along the borders of a frame put into words."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Final

from bot.dialogue.texts.catalogue import TEXTS
from core.frame.findings import Border, BorderFinding

#: Where along a side, by its place from the top or the left; ends of the ranges (own rules).
_DOWN: Final = (
    (0.12, "top"),
    (0.42, "third"),
    (0.58, "half"),
    (0.88, "two_thirds"),
    (math.inf, "bottom"),
)
_ACROSS: Final = (
    (0.12, "left_corner"),
    (0.42, "left"),
    (0.58, "middle"),
    (0.88, "right"),
    (math.inf, "right_corner"),
)
#: A finding that takes more of a side than this lies along it (own rule).
_ALONG: Final = 0.5


#: Things that a message speaks of at most: so many are stated, so many asked about (own rule).
MOST_STATED: Final = 2
MOST_ASKED: Final = 2


def spoken_of(borders: Sequence[BorderFinding]) -> tuple[BorderFinding, ...]:
    """The things at borders that are told and marked: what is stated, then what is asked."""
    stated = [one for one in borders if one.stated][:MOST_STATED]
    asked = [one for one in borders if not one.stated][:MOST_ASKED]
    return (*stated, *asked)


def border_place(finding: BorderFinding) -> str:
    """Where a thing lies, as seen in the frame: `at the left, two thirds down`."""
    border = finding.border.value
    if finding.width >= _ALONG:
        return TEXTS[f"place.along.{border}"]
    if finding.border in {Border.LEFT, Border.RIGHT}:
        where = TEXTS[f"place.down.{_named(_DOWN, finding.position)}"]
    else:
        where = TEXTS[f"place.across.{_named(_ACROSS, finding.position)}"]
    return TEXTS[f"place.at.{border}"].format(where=where)


def _named(places: tuple[tuple[float, str], ...], position: float) -> str:
    return next(name for end, name in places if position <= end)
