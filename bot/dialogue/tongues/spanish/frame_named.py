"""Spanish words that name one of several frames, as the gloss leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    "frame_named.frame": r"toma",
    # What stands before a frame that only measures another one, and behind it.
    "frame_named.than": r"que|como|frente a",
    "frame_named.behind_than": r"la|el|lo",
    "frame_named.the": r"la|el|las|los",
    "frame_named.longest": r"(?:mas|more) larg[oa]s?",
    "frame_named.shortest": r"(?:mas|more) cort[oa]s?",
    "frame_named.middle": r"del medio",
    # "Frame 3".
    "frame_named.number": NOTHING,
    # "The f/8", "at f/8".
    "frame_named.at": r"la|el",
    # "In the 15 one", "the 0.6 is …".
    "frame_named.in": r"el|la",
    "frame_named.is": r"es|tiene",
}
