"""A filter that is on the lens, told without its strength: "the filter's on", "with polariser"."""

from __future__ import annotations

import re
from enum import Enum
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import each_once, in_any


class PutOn(Enum):
    """Which filter is said to be on."""

    POLARISER = "polariser"
    ND = "nd"
    BOTH = "both"
    UNNAMED = "unnamed"  # "the filter", "it"


_SMALL: Final = rf"(?:{each_once('filters_on.small')} )*"
_NAMED: Final = (
    (PutOn.BOTH, in_any("filters_on.both")),
    (PutOn.POLARISER, in_any("filters_on.polariser")),
    (PutOn.ND, in_any("filters_on.nd")),
    (PutOn.UNNAMED, in_any("filters_on.filter")),
)
_IT: Final = in_any("filters_on.it")
_ANY: Final = "|".join((*(words for _, words in _NAMED), _IT))
_STRENGTH: Final = r"(?:\d{1,4} ?(?:er|stops?|stop)? |de \d{1,2} (?:pasos )?)?"
_THING: Final = rf"(?P<thing>{_ANY})(?: de \d{{1,2}} pasos)?"
_IS_ON: Final = in_any("filters_on.is_on")
_ON: Final = in_any("filters_on.on")
_PUT: Final = in_any("filters_on.put")
_END: Final = rf"(?: {each_once('filters_on.small')})*"
#: "The filter is on", "screwed it on", "put on the filter", "hab den Filter draufgeschraubt".
_TELLS: Final = re.compile(
    rf"{_SMALL}{_STRENGTH}{_THING} {_IS_ON}{_END}"
    rf"|{_SMALL}{_PUT} {_SMALL}{_STRENGTH}(?P<put>{_ANY}) {_ON}{_END}"
    rf"|{_SMALL}{in_any('filters_on.fitted')} {_SMALL}{_STRENGTH}(?P<fitted>{_ANY}){_END}"
)
#: "Mit dem 6er", "with the 6 stop".
_BY_NUMBER: Final = r"\d{1,4} ?(?:er|stops?)|el de \d{1,2}(?: pasos)?"
#: "With polariser", "mit Polfilter jetzt": a whole message.
_WITH: Final = re.compile(
    rf"{_SMALL}{in_any('filters_on.with')} {_SMALL}{_STRENGTH}(?P<thing>{_ANY}|{_BY_NUMBER})"
    rf"(?: {_SMALL}{_STRENGTH}(?P<other>{_ANY}|{_BY_NUMBER}))?{_END}"
)
#: What is asked is not told: "nd on?".
_ASKED: Final = re.compile(r"[^,.!?;\n]*\?")
_CLAUSE: Final = re.compile(r" [,.] ")


def put_on(typed: str) -> PutOn | None:
    """Which filter a message says to be on, in one of its clauses; None for other messages.

    Args:
        typed: the message as it came, in any language of the dialogue.
    """
    clauses = _CLAUSE.split(folded(_ASKED.sub(" ", typed)).strip(" .,"))
    found = (_TELLS.fullmatch(clause.strip(" .,")) for clause in clauses)
    told = next((match for match in found if match is not None), None)
    return None if told is None else _named(next(filter(None, told.groupdict().values())))


def with_it(typed: str) -> PutOn | None:
    """Which filter a whole message names behind a "with"; None for other messages."""
    told = _WITH.fullmatch(folded(typed).strip(" .,"))
    if told is None or "?" in typed:
        return None
    kinds = {_named(thing) for thing in told.groupdict().values() if thing is not None}
    return next(iter(kinds)) if len(kinds) == 1 else PutOn.BOTH


def is_all(typed: str) -> bool:
    """Whether a message says nothing but that a filter is on."""
    whole = _TELLS.fullmatch(folded(typed).strip(" .,"))
    return "?" not in typed and (whole is not None or with_it(typed) is not None)


def _named(thing: str) -> PutOn:
    if re.fullmatch(_BY_NUMBER, thing):
        return PutOn.ND
    return next((kind for kind, words in _NAMED if re.fullmatch(words, thing)), PutOn.UNNAMED)
