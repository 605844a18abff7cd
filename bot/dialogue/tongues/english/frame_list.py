"""English words of which setting holds for which of several frames."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # What stands before a filter: "with a 6 stop".
    "frame_list.behind": r"with|behind|through",
    "frame_list.a": r"a|an|the|my",
    "frame_list.all": r"all|each|every\w*|both|always|throughout|rest|others?|same",
    # "All but the last, which was f/22".
    "frame_list.which": r"which|that one",
    # "F/22 for the last".
    "frame_list.for": r"for|in|with|on",
    "frame_list.longest": r"long(?:est)?|slow(?:est)?",
    "frame_list.shortest": r"short(?:est)?|fast(?:est)?",
    # A frame of a time that was taken before.
    "frame_list.more": r"another|once more|again|second|also|more|then|took|twice",
}
