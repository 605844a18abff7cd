"""English words by which somebody asks what to change first where light is short."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "dark_order.iso": r"isos?",
    "dark_order.aperture": (r"apertures?|f ?stops?|open(?:ing)? up|wider|f ?\d[\d.]*"),
    "dark_order.polariser": r"pol[ao]ri[sz]er|pola|cpl|polari[sz]ing filter",
    # By which it becomes brighter.
    "dark_order.brighter": (
        r"iso (?:up|higher|first)|(?:raise|higher|up|more|push)(?: the)? iso"
        r"|open(?:ing)?(?: the)? (?:up|aperture|lens)|wider"
        r"|(?:polari[sz]er|pola|cpl|it) (?:off|down)"
        r"|(?:remove|take off|off with)(?: the)? (?:polari[sz]er|pola|cpl)"
    ),
    "dark_order.order": (r"(?:which|what) order|in order|first|sequence|before the others"),
}
