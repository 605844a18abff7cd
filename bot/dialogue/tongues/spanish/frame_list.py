"""Spanish words of which setting holds for which of several frames."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # What stands before a filter: "with a 6 stop".
    "frame_list.behind": r"con|un",
    "frame_list.a": r"el",
    "frame_list.all": r"tod[oa]s?|cada|amb[oa]s|siempre|demas|otr[oa]s",
    # "All but the last, which was f/22".
    "frame_list.which": r"que",
    # "F/22 for the last".
    "frame_list.for": r"para|en",
    "frame_list.longest": r"larg[oa]",
    "frame_list.shortest": r"cort[oa]",
    # A frame of a time that was taken before.
    "frame_list.more": r"otra|otro|de nuevo|segunda|tambien|luego|another|again|then",
}
