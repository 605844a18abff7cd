"""German words of which setting holds for which of several frames."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # What stands before a filter: "with a 6 stop".
    "frame_list.behind": r"mit",
    "frame_list.a": r"dem|einem",
    "frame_list.all": r"alle[nrsm]?|jede\w*|beide\w*|immer|rest\w*|andere\w*",
    # "All but the last, which was f/22".
    "frame_list.which": r"die|das",
    # "F/22 for the last".
    "frame_list.for": r"bei|für",
    "frame_list.longest": r"längste\w*",
    "frame_list.shortest": r"kürzeste\w*",
    # A frame of a time that was taken before.
    "frame_list.more": (
        r"noch (?:ein|eins|eines|mal)|nochmal|wieder|zweites|auch|dann|another|again|then"
    ),
}
