"""Questions about the bot's own numbers: where one comes from, what it was reckoned with."""

from __future__ import annotations

import re
from itertools import pairwise
from typing import Final, NamedTuple

from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.values_named import Named, named_in, plainly
from bot.dialogue.reading.phrases import plain
from bot.dialogue.tongues import in_any, whole_words

_WHAT: Final = whole_words("own_asked.what")
#: What the bot reckons from, by the words in which it is asked about.
FACETS: Final = ("height", "distance", "focal", "speed", "light", "nearest", "format", "all")
_FACETS: Final = {
    "height": whole_words("own_asked.height"),
    "distance": whole_words("own_asked.distance"),
    "focal": whole_words("own_asked.focal"),
    "speed": whole_words("own_asked.speed"),
    "light": whole_words("own_asked.light"),
    "nearest": whole_words("own_asked.nearest"),
    "format": whole_words("own_asked.format"),
    "all": whole_words("own_asked.all"),
}
_WHENCE: Final = whole_words("own_asked.whence")
_RECKONS: Final = whole_words("own_asked.reckons")
#: Right in front of a number it asks for that number, whatever it is.
_WHY: Final = re.compile(
    rf"\b{in_any('own_asked.why')}\b(?: {in_any('own_asked.between')}\b)*[ ¿]*$"
)
#: Between a value and the one that was not chosen.
_NOT: Final = whole_words("own_asked.not")
_DIALS: Final = frozenset({"f_number", "shutter_s", "iso", "focal_mm"})
#: A number with a mark behind it, and nothing else said of it: "8.7 %?".
_ALONE: Final = re.compile(r"\W*(?:(?:and|so|but|hm+|wait|the|und|y)\W+)*$")
#: Where one clause ends.
CLAUSE: Final = re.compile(r"(?<=[.!?;])\s+|,\s+|\n")


class OwnAsked(NamedTuple):
    """What a message asks of the bot's numbers.

    Args:
        text: in the spelling in which its numbers are found.
        numbers: that may be its own; the step looks whether they are.
        sure: those among them that are asked about by the words right before them.
        facets: of what it reckons from, named in the question.
        reckons: whether it asks what was reckoned with, whatever it names.
    """

    text: str
    numbers: tuple[Named, ...]
    sure: tuple[Named, ...]
    facets: tuple[str, ...]
    reckons: bool


def own_asked(said: Said) -> OwnAsked | None:
    """What a message asks of the bot's own numbers; None for messages that ask nothing of them.

    Args:
        said: the message.
    """
    text, typed = plainly(said.english), plain(said.typed)
    both = f"{text}\n{typed}"
    if not named_in(text):
        text = plainly(said.typed)  # "woher kommen die 2,8 m?" is glossed as one word that asks
    named = named_in(text)
    if _against_another(text, named):
        return None  # "why 1/8 and not 1 s" asks for what tells the two apart
    sure = tuple(one for one in named if _is_sure(text, one))
    reckons = _asks_what_was_taken(said, both)
    facets = tuple(name for name in FACETS if _FACETS[name].search(both)) if reckons else ()
    if not (sure or reckons or (named and _WHENCE.search(both))):
        return None
    return OwnAsked(text, named, sure, facets, reckons)


def _asks_what_was_taken(said: Said, both: str) -> bool:
    """Whether a message asks what the bot took or took for granted: with a word that asks."""
    return _RECKONS.search(both) is not None and _WHAT.search(both) is not None and asks(said)


def _against_another(text: str, named: tuple[Named, ...]) -> bool:
    """Whether a value is asked about against another one of its dial, which was not chosen."""
    return any(
        one.slot == other.slot and one.slot in _DIALS and _NOT.search(text[one.end : other.start])
        for one, other in pairwise(named)
    )


def _is_sure(text: str, one: Named) -> bool:
    """Whether "why" stands right before a number, or its mark alone behind it."""
    if _WHY.search(text[: one.start]):
        return True
    return text[one.end :].startswith("?") and _ALONE.fullmatch(text[: one.start]) is not None
