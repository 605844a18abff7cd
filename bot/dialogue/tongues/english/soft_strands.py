"""English words of water that is wished soft, with its strands still to be seen."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "soft_strands.soft": r"soft|softer|silk|silky|smooth|smoother|creamy|flowing|dreamy",
    "soft_strands.but": r"but|yet|still|though|with|keep|not lose|without losing",
    "soft_strands.strands": r"strands?|threads?|texture|structure|lines|streaks|drawing",
    # What is wrong with a frame, or denied.
    "soft_strands.wrong": (
        r"too|no|not enough|without(?! losing)|lost|lacks?|lose|neither|or|light|focus|rocks?"
    ),
    # A frame is told of by these in front, and nothing is wished.
    "soft_strands.is": r"looks?|looked|came|comes|is|are|was|turned",
}
