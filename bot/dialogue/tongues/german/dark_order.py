"""German words by which somebody asks what to change first where light is short."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "dark_order.iso": r"isos?",
    "dark_order.aperture": (r"blende\w*|offenblende|aufblenden|offnen"),
    "dark_order.polariser": r"pol|polfilter\w*|polarisationsfilter|cpl",
    # By which it becomes brighter.
    "dark_order.brighter": (
        r"isos? (?:hoch|rauf|hoher|erhohen|hochdrehen|zuerst)|blende (?:auf|offnen|weiter)"
        r"|aufblenden"
        r"|pol(?:filter)? (?:runter|ab|weg|raus|abnehmen)"
    ),
    "dark_order.order": (r"reihenfolge|zuerst|als erstes|zuerst was|was kommt erst"),
}
