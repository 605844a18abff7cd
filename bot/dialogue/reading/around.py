"""Greetings before a message and thanks behind it, taken off so that the answer is left."""

from __future__ import annotations

import re
from typing import Final

_LEAD: Final = re.compile(
    r"^(?:(?:(?:ok(?:ay)?|alright|so|um+|uh+|er+m*|hm+|oh|ah|well(?: then)?|hi|hello|hey|hiya|linn"
    r"|again"
    r"|ok so|g'day|mate|good (?:morning|evening|afternoon|day)|morning|evening|quick one"
    r"|just so you know"
    r"|sorry for (?:the delay|being (?:late|slow))|sorry i'm late|yo)(?:[,.:!;]+|(?=\s))"
    r"|(?:right|sure|there|guys|all|everyone)[,.:!;]+)\s*)+(?=\S)"
)
_TAIL: Final = re.compile(
    r"(?:[,.;!]?\s+(?:thanks(?: a lot| so much| again)?|thank you|thx|ta|cheers|lol|haha+|hehe|fyi"
    r"|btw|by the way"
    r"|tbh|if that helps|if it helps|mate|linn|folks|:-?\)|;-?\)|xd|i think|i guess|i reckon"
    r"|i'd say|roughly"
    r"|or so|i suppose|to be honest|hope that helps)[.!]*)+\s*$"
)


def without_courtesy(text: str) -> str:
    """The message without greetings before and thanks behind, where anything is left.

    Args:
        text: a message as `normalise` leaves it.
    """
    left = _TAIL.sub("", _LEAD.sub("", text))
    return left if left.strip() else text
