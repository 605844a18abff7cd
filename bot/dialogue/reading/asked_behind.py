"""A setting that is tried before it is asked what it does: `1/15, what changes`."""

from __future__ import annotations

import re
from typing import Final

#: One setting as people type it.
_F: Final = r"f ?/? ?\d+(?:\.\d+)?"
_TIME: Final = r"(?:\d+/\d+|\d+(?:\.\d+)?) ?(?:s|secs?|seconds?)|\d+/\d+"
#: "The teacher says to try 1/15 too, what changes?"
_CHANGES: Final = re.compile(
    rf"(?P<what>{_F}|iso ?\d+|\d+ ?mm|{_TIME})\b[^?]*\b(?:what (?:changes?|would (?:it )?change"
    r"|happens|will happen|would happen|(?:is|'s) (?:different|the difference)|(?:does|would)"
    r" (?:it|that) (?:do|change|give))|difference)\b\W*(?:then|to it)?\W*$",
    re.IGNORECASE,
)


#: "10 stop on, what time do I get?"
_FILTER_ON: Final = re.compile(
    r"\W*(?:(?:and|so|ok|with|the|my|if|then)\W+)*(?P<filter>(?:\d+|two|three|four|six|ten)[ -]?"
    r"stop(?:per)?(?: nd| filter)?|nd ?\d+|polari[sz]er|cpl)(?: is)? on\b[^?]*\b(?:what|which|how"
    r" long)\b[^?]*\W*",
    re.IGNORECASE,
)


def tried_in(text: str) -> str | None:
    """The setting that a message tries; None where it tries none.

    Args:
        text: in English.
    """
    if (on := _FILTER_ON.fullmatch(text)) is not None:
        return f"I put the {on['filter']} on"
    changes = _CHANGES.search(text)
    return changes["what"] if changes else None
