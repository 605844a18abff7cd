"""English words by which a length is wished in another unit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Between a length and the unit that is wished: "3.9 m in feet".
    "lengths.into": r"to|in|into|as|expressed in",
    # Before the unit that is wished: "how many feet is 3.9 m".
    "lengths.how_many": r"how (?:many|much)(?: is that in)?",
}
