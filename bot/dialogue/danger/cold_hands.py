"""Cold hands and feet, and nothing worse: they are warmed, and the walk goes on."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger.beside import FACT_ODDS
from bot.dialogue.danger.judged import judged
from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any, whole_words

#: Cold that hurts but does its work. Numb hands count only where the person says they are fine.
_TOLD: Final = whole_words("cold_hands.told")
#: Cold as such, without a word for how much: shivering, numb and very cold people say more.
_COLD_ALONE: Final = whole_words("cold_hands.cold_alone")
_NUMB_BUT: Final = re.compile(
    rf"\b{in_any('cold_hands.numb')} (?:, )?{in_any('cold_hands.but')}"
    rf" (?:{in_any('cold_hands.they_are')} )*{in_any('cold_hands.fine')}\b"
)
_SHAKING: Final = whole_words("cold_hands.shaking")
#: Beside a picture that goes on: that, the light, and plain talk of no higher odds than this (own
#: rule, as for parts that tell facts in `beside`).
_PICTURE: Final = whole_words("cold_hands.picture")
_DUSK: Final = re.compile(in_any("cold_hands.dusk"))
_WORSE: Final = whole_words("cold_hands.worse")
_PARTS: Final = re.compile(
    rf" [,.] | {in_any('calm_parts.joined')} |^{in_any('calm_parts.joined')} "
)
_ONLY_HANDS: Final = re.compile(
    rf"(?: ,)?(?: {in_any('cold_hands.just')})+ {in_any('cold_hands.told')}(?: [,.])?$"
)
#: What may stand beside it: gloves, thumbs that hardly type, the air, a frame's numbers, and small
#: words. Anything else may tell of more, whatever it is: water, a fall, somebody else, a "not".
_BESIDE: Final = re.compile(rf"\b(?:{in_any('cold_hands.beside')}|\d+)\b")


def only_cold_hands(text: str) -> bool:
    """Whether a message tells of cold hands or feet, and of nothing that is worse.

    Args:
        text: as typed or dictated, in any of Linn's languages.
    """
    said = folded(text)
    return _is_only(said, _NUMB_BUT.search(said) or _TOLD.search(said))


def only_cold(text: str) -> bool:
    """Whether a message says that somebody is cold, and nothing that is worse.

    Args:
        text: as typed or dictated, in any of Linn's languages.
    """
    said = folded(text)
    return _is_only(said, _COLD_ALONE.search(said))


def beside_cold_hands(text: str) -> str:
    """What a message says of its picture beside cold hands, or beside shaking from the cold.

    Args:
        text: as typed or dictated, in any of Linn's languages.

    Returns:
        In plain letters; "" where it tells of no cold, or of anything but a picture and its light.
    """
    said = folded(text)
    found = _NUMB_BUT.search(said) or _TOLD.search(said) or _SHAKING.search(said)
    if found is None or _WORSE.search(said[: found.start()] + said[found.end() :]):
        return ""
    parts = _PARTS.split(f"{said[: found.start()]} , {said[found.end() :]}")
    parts = [part for part in map(str.strip, parts) if part]
    asked = any(map(_PICTURE.search, parts))
    return " , ".join(parts) if asked and all(map(_is_plain, parts)) else ""


def without_cold_hands(part: str) -> str:
    """One part of a reply without cold hands at its end: "all good, only cold fingers".

    Args:
        part: as typed, in any of Linn's languages.

    Returns:
        In plain letters where something was taken out, else the same text.
    """
    said = folded(part)
    bare = _ONLY_HANDS.sub("", said)
    return part if bare == said or not bare else bare


def shakes_from_cold(text: str) -> bool:
    """Whether a message says so of who writes."""
    return _SHAKING.search(folded(text)) is not None


def _is_plain(part: str) -> bool:
    """Whether one part speaks of the picture or of light that goes, or sounds of no danger."""
    known = _PICTURE.search(part) or _DUSK.fullmatch(part) or not any(_left_of(part))
    return bool(known) or judged(part).odds <= FACT_ODDS


def _left_of(part: str) -> list[str]:
    """The words of a part that are not known to be harmless beside cold hands."""
    return _BESIDE.sub(" ", part).split()


def _is_only(said: str, found: re.Match[str] | None) -> bool:
    """Whether nothing but what is known to be harmless stands beside what was found."""
    if found is None:
        return False
    rest = _BESIDE.sub(" ", said[: found.start()] + " , " + said[found.end() :])
    return not any(word.isalnum() for word in rest.split())
