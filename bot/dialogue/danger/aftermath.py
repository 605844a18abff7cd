"""Parts of a reply after a fright that tell of nobody's trouble: who left, what is in sight."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.meaning.sentences import clauses_of, without
from bot.dialogue.tongues import each_once, in_any, whole_words

_LEAD: Final = rf"(?:{each_once('aftermath.lead')} (?:, )?)*"
#: Whole parts alone: "left straight away" tells of no one who was left.
_LEFT: Final = re.compile(
    rf"{_LEAD}(?:{in_any('aftermath.left')}|{in_any('aftermath.keen')}|{in_any('aftermath.next')})"
)
_SEEN: Final = re.compile(rf"{_LEAD}(?:{in_any('aftermath.view')}|{in_any('aftermath.sun')})")
_WONDERS: Final = re.compile(rf"{_LEAD}{in_any('aftermath.wonders')}\b")
_SHAKEN: Final = re.compile(rf"{_LEAD}{in_any('aftermath.shaken')}")
_IS_IT_SAFE: Final = whole_words("aftermath.is_it_safe")
#: "Is it dangerous, or can she?" asks once.
_OR_IS_IT: Final = re.compile(rf" {in_any('asking.or')} {in_any('aftermath.is_it_safe')}\b")
_WITHOUT: Final = whole_words("aftermath.without_somebody")
#: What goes on behind it and names nothing further, and what names the water or a way over it.
_TAIL: Final = re.compile(rf"(?: {in_any('aftermath.nothing_more')})+$")
_WET: Final = whole_words("aftermath.wet")
_THING: Final = whole_words("standing.thing")


def is_over(part: str) -> bool:
    """Whether a part tells that people left at once, or what they see from there.

    Args:
        part: one part of a reply, as typed, in any of Linn's languages.
    """
    return has_left(part) or _SEEN.fullmatch(_bare(part)) is not None


def has_left(part: str) -> bool:
    """Whether a part tells that people left, or of a wish of theirs, and nothing to be answered.

    Args:
        part: one part of a reply, as typed, in any of Linn's languages.
    """
    return _LEFT.fullmatch(_bare(part)) is not None


def wonders(part: str) -> bool:
    """Whether a part only asks, at second hand: "just asking if we could".

    Args:
        part: one part of a reply, as typed, in any of Linn's languages.
    """
    return _WONDERS.match(_bare(part)) is not None


def is_shaken(part: str) -> bool:
    """Whether a part tells of legs that shake, as they do after a fright.

    Args:
        part: one part of a reply, as typed, in any of Linn's languages.
    """
    return _SHAKEN.fullmatch(_bare(part)) is not None


def without_shaken(text: str) -> str:
    """A message without its parts that tell of shaking legs.

    Args:
        text: as typed, in any of Linn's languages.
    """
    rest = without(clauses_of(text), is_shaken)
    return text if rest is None else rest


def leaves_somebody(text: str) -> bool:
    """Whether a message says that somebody was left or lost: "all of us safe, left Ben behind".

    Args:
        text: as typed, in any of Linn's languages; a tripod or a hat is nobody.
    """
    return _WITHOUT.search(folded(text)) is not None


def asks_if_safe(sentence: str) -> bool:
    """Whether a question asks if the water is safe, or may be crossed; not of a thing or the sun.

    Args:
        sentence: one sentence as typed, in any of Linn's languages.
    """
    said = folded(sentence).strip(" .,")
    found = _IS_IT_SAFE.search(said) if "?" in sentence else None
    if found is None:
        return False
    rest = _TAIL.sub("", _OR_IS_IT.sub("", said[found.end() :]))
    of_water = _WET.search(said) is not None and _THING.search(said) is None
    return of_water or not rest.strip(" .,")


def _bare(part: str) -> str:
    return folded(part).strip(" ,.")
