"""English words that name one of several frames, as the gloss leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "frame_named.frame": r"one|frame|shot|picture|photo|exposure",
    # What stands before a frame that only measures another one, and behind it.
    "frame_named.than": (
        r"than|as|(?<!\bi )(?<!we )(?<!really )(?<!do )like|against|beside|versus|vs"
        r"|compared (?:to|with)|next to"
    ),
    "frame_named.behind_than": r"in|the|that|a|of|at",
    "frame_named.the": r"the",
    "frame_named.longest": r"longe(?:st|r)|slowest",
    "frame_named.shortest": r"shorte(?:st|r)|fastest|quickest",
    "frame_named.middle": r"middle",
    # "Frame 3".
    "frame_named.number": r"frame|shot|picture|photo|number|no|nr",
    # "The f/8", "at f/8".
    "frame_named.at": r"the|at|in|with",
    # "In the 15 one", "the 0.6 is …".
    "frame_named.in": r"the|in",
    "frame_named.is": r"is|was|has|looks?",
}
