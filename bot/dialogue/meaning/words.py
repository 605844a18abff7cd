"""The words of a message in lower case, a number that is set or measured as one word."""

from __future__ import annotations

import re
from typing import Final

#: Longer messages are no single question or complaint (own rule), and reading stays quick.
_MOST_WORDS: Final = 60
#: Numbers that carry a meaning of their own, as words.
_NUMBERS: Final = (
    (re.compile(r"\bf ?/? ?(?:16|18|20|22|25|29|32)\b|\b(?:22|32)\b"), " smallaperture "),
    (re.compile(r"\bf ?/ ?\d+(?:\.\d)?\b|\bf ?\d+(?:\.\d)?\b"), " fnumber "),
    (re.compile(r"\b\d+ ?-? ?\d* ?mm\b"), " focal "),
    (re.compile(r"\b1/\d+(?: ?s(?:ec)?)?\b|\b\d+(?:\.\d+)? ?s(?:ec|econds?)?\b"), " seconds "),
)
_WORD: Final = re.compile(r"[a-z0-9]+")


def tokens(text: str) -> list[str]:
    """The words of a text in lower case, numbers with a meaning named."""
    said = text.casefold().replace("'", "").replace("’", "")
    for pattern, name in _NUMBERS:
        said = pattern.sub(name, said)
    return _WORD.findall(said)[:_MOST_WORDS]
