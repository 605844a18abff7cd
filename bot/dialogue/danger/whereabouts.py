"""Where people are: out of a shelter, at a place that is planned, or at one that they deny."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger.aftermath import leaves_somebody
from bot.dialogue.danger.rules import PERSON
from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any, whole_words

#: Words of who left a shelter, and of what was struck: a house, a car and the like alone are one.
_OUTSIDE: Final = whole_words("whereabouts.outside")
#: Words of who is at the place already, whatever is planned.
_THERE: Final = whole_words("whereabouts.there")

#: Whom a "no" leaves out: "only my wife", "not me, my son".
_SOMEBODY: Final = rf"(?:{PERSON}|{in_any('whereabouts.somebody')})"
_LEFT_OUT: Final = rf"{in_any('whereabouts.only')}(?: ,)?(?: {in_any('whereabouts.the')})*"
#: What is said of a place by who is at it: it is dry, and they hold on.
_GOOD_THERE: Final = in_any("whereabouts.good_there")
_DENIED: Final = re.compile(rf"(?<!\w)(?:{_LEFT_OUT} {_SOMEBODY}|{_GOOD_THERE})(?!\w)")


def tells_of_staying(text: str) -> bool:
    """Whether a reply that sounds like "nobody" tells of somebody who is at the place, or left.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _DENIED.search(folded(text)) is not None or leaves_somebody(text)


def tells_of_outside(text: str) -> bool:
    """Whether a message in a storm may tell of somebody out of shelter, or of a strike.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _OUTSIDE.search(folded(text)) is not None


def tells_of_being_there(text: str) -> bool:
    """Whether a message tells that somebody is at a place now, in spite of what is planned.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _THERE.search(folded(text)) is not None
