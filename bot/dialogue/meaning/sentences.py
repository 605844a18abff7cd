"""The sentences of a message, as people end them."""

from __future__ import annotations

import re
from typing import Final

#: Behind these signs something else is said; so it is on a new line.
SENTENCE_ENDS: Final = r"(?<=[.!?;…])\s+|\n+"
_ENDS: Final = re.compile(SENTENCE_ENDS)


def sentences_of(text: str) -> list[str]:
    """The sentences of a text, in any language; one for a text without signs."""
    return [one for one in _ENDS.split(text) if one.strip()]
