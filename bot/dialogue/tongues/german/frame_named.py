"""German words that name one of several frames, as the gloss leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "frame_named.frame": r"bild|foto|aufnahme",
    # What stands before a frame that only measures another one, and behind it.
    "frame_named.than": r"als|wie|gegen|neben",
    "frame_named.behind_than": r"des|der|das|dem",
    "frame_named.the": r"die|der|das|den",
    "frame_named.longest": r"längste[nrs]?",
    "frame_named.shortest": r"kürzeste[nrs]?",
    "frame_named.middle": r"mittlere[nrs]?",
    # "Frame 3".
    "frame_named.number": r"bild|foto",
    # "The f/8", "at f/8".
    "frame_named.at": r"das",
    # "In the 15 one", "the 0.6 is …".
    "frame_named.in": r"das",
    "frame_named.is": r"ist|hat",
}
