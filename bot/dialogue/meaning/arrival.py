"""Whether somebody tells where they stand, and nothing of a frame: "we are at a little fall"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.command_words import command_of
from bot.dialogue.reading.phrases import exactly, plain
from bot.dialogue.tongues import in_any, whole_words

_ARRIVED: Final = exactly(in_any("arrival.arrived"))
#: The clause of a longer message that ends a plan: "ok we are here now. It's cloudy".
_HERE: Final = exactly(in_any("arrival.here"))
#: Who stands there says so beside whatever else, in English.
_AT_A_FALL: Final = re.compile(
    r"\b(?:i'?m|we'?re|i am|we are|standing|here)\b[^.;?!]{0,12}\b(?:at|in front of|by|beside"
    r"|below|near) (?:an?|una?|the|this|my|some) (?:\w+ )?(?:water ?falls?|falls?|stream|cascade"
    r"|creek)\b"
)
#: What tells of a frame, or of its fault.
_OF_A_FRAME: Final = whole_words("arrival.of_a_frame")
_NEW: Final = exactly(in_any("arrival.new"))
#: A greeting, and what everybody comes for: they tell of no frame.
_WISHED: Final = exactly(in_any("arrival.wished"))
#: Who wants to photograph water, wherever they stand, is asked what a beginner is.
_WISHED_FALL: Final = exactly(in_any("arrival.wished_fall"))
_TELL_OF_PLACE: Final = (_ARRIVED, _NEW, _WISHED_FALL)
#: Clauses of a message, each of which may tell of the place, or ask what comes first.
_CLAUSE: Final = re.compile(
    rf"[,.;!?]+\s*|\s+-+\s+|\s{in_any('arrival.and')}\s(?={in_any('arrival.next_clause')}\b)"
)


def is_arrival(text: str) -> bool:
    """Whether a message tells of a place alone, or that somebody is new to all this.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text, " .!,")
    clauses = [clause for clause in _CLAUSE.split(said) if clause.strip()]
    wished = [clause for clause in clauses if _WISHED.match(clause)]
    told = [clause for clause in clauses if any(one.match(clause) for one in _TELL_OF_PLACE)]
    rest = [one for one in clauses if one not in told and one not in wished]
    others = [one for one in rest if command_of(one) not in {"now", "hello", "help"}]
    of_frame = any(_OF_A_FRAME.search(one) for one in clauses if one not in wished)
    return bool(told) and not others and not of_frame


def says_here(text: str) -> bool:
    """Whether a clause of a message says that somebody has arrived, whatever else it tells.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text, " .!,")
    return any(_HERE.match(clause) for clause in _CLAUSE.split(said))


def names_fall_here(english: str) -> bool:
    """Whether a message says in passing that somebody stands at a fall.

    Args:
        english: the message in English.
    """
    return _AT_A_FALL.search(english.casefold()) is not None
