"""A setting that is only tried in other words than `what if`: `1/15, what changes`, `f/11?`."""

from __future__ import annotations

import re
from typing import Final

#: One setting as people type it.
_F: Final = r"f ?/? ?\d+(?:\.\d+)?"
_TIME: Final = r"(?:\d+/\d+|\d+(?:\.\d+)?) ?(?:s|secs?|seconds?)|\d+/\d+"
#: Words that try it: "what would 1 s give me", "f/11?".
_TRIAL: Final = re.compile(
    r"\s*(?:(?:ok(?:ay)?|so|but|hmm?|and|now|or|well)\W+)*"
    rf"(?:(?:what|how) (?:would|will|does|do) (?P<of>{_F}|iso ?\d+|\d+ ?mm|{_TIME})\b[^.;!?]*"
    rf"|why not (?P<time>{_TIME})(?: then| instead| here)?|(?P<bare>(?!f ?/? ?(?:22|32)\b){_F}"
    rf"|{_TIME})(?= ?\?))\W*",
    re.IGNORECASE,
)
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
    found = _TRIAL.fullmatch(text)
    if found is not None:
        return found["of"] or found["time"] or found["bare"]
    if (on := _FILTER_ON.fullmatch(text)) is not None:
        return f"I put the {on['filter']} on"
    changes = _CHANGES.search(text)
    return changes["what"] if changes else None
