"""Who says that they are away from where nobody should stand: in known words and nothing else."""

from __future__ import annotations

import re

from bot.dialogue.danger.away_words import (
    ANOTHER,
    BESIDE,
    FOR_ONESELF,
    NO_MORE,
    OF_KIND,
    OTHERS,
    REACHED,
    RETURNED,
    SELF,
    WHO_WRITES,
    WITH_THINGS,
)
from bot.dialogue.danger.good_news import is_only_good, without
from bot.dialogue.danger.spelling import sentences
from bot.dialogue.folding import folded


def _spelled(text: str) -> tuple[str, str]:
    """A message in the spelling of English, and in plain letters for the other languages."""
    plain = folded(text).replace(" . ", " , ")
    return " , ".join(sentences(text)), plain


def things_came_along(said: str) -> str:
    """A message in plain letters without the things that people have with them."""
    return WITH_THINGS.sub(" ", said)


def came_away(text: str, kind: str = "", *, others: bool = False) -> bool:
    """Whether a message says that nobody is at the place any more, and nothing that is unknown.

    Args:
        text: as typed, in any of Linn's languages.
        kind: what kind of place it is, by its value; "" for any, where only a safe place counts.
        others: whether only others were there, who may have come back to who writes.
    """
    if "?" in text or (others and speaks_for_one(text)):
        return False
    telling = [RETURNED] if others else []
    telling += [NO_MORE, REACHED]
    telling += [OF_KIND[kind]] if kind in OF_KIND else []
    return any(_is_away(things_came_along(said), telling) for said in _spelled(text))


def speaks_for_oneself(text: str) -> bool:
    """Whether a message that tells of such a place asks for who writes, or puts them there."""
    return FOR_ONESELF.search(folded(text)) is not None


def speaks_for_one(text: str) -> bool:
    """Whether a message tells of who writes alone: that says nothing of others."""
    said = folded(text)
    return WHO_WRITES.search(said) is not None and OTHERS.search(said) is None


def speaks_of_another(text: str) -> bool:
    """Whether a message tells of one other alone: that says nothing of who writes."""
    said = folded(text)
    return ANOTHER.search(said) is not None and SELF.search(said) is None


def _is_away(said: str, telling: list[re.Pattern[str]]) -> bool:
    rest = without(said, telling)
    return rest != said and is_only_good(without(rest, (RETURNED,)), also=BESIDE)
