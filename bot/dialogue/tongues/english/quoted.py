"""English words of a setting that only quotes the bot, as glossed; the number is "#"."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_SAID: Final = r"(?:said|say|told me|wrote|gave me|suggested|recommended|proposed|advised|put)"
_YOU: Final = r"(?:you|u|linn)(?:'d| had| have|'ve| just| first| once)*"

WORDS: Final[Mapping[str, str]] = {
    "quoted.verbs": r"\b(?:said|say|told|wrote|gave|suggested|recommended|proposed|advised|put)\b",
    "quoted.you_said": (
        rf"{_YOU} {_SAID}\b[^,;.!?\d#]{{0,16}}#|#,? (?:is |was |is what |was what "
        rf"|what )?{_YOU} {_SAID}"
    ),
    # Who did it tells of an own frame: "you said 1/4, took it".
    "quoted.done": (
        r"took|taken|did|done|used|using|set|tried|shot|went|go|going|made|dialled|stays?|kept|keep"
        r"|now|it is|ok|okay|blink\w*|blown|dark|bright|patches|dots|like you|as you|so i"
    ),
}
