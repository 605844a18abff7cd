"""Cold hands and feet, and nothing worse: they are warmed, and the walk goes on."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any, whole_words

#: Cold that hurts but does its work. Numb ones count only where the person says that they are fine.
_TOLD: Final = whole_words("cold_hands.told")
#: Cold as such, without a word for how much: shivering, numb and very cold people say more.
_COLD_ALONE: Final = whole_words("cold_hands.cold_alone")
_NUMB_BUT: Final = re.compile(
    rf"\b{in_any('cold_hands.numb')} (?:, )?{in_any('cold_hands.but')}"
    rf" (?:{in_any('cold_hands.they_are')} )*{in_any('cold_hands.fine')}\b"
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


def _is_only(said: str, found: re.Match[str] | None) -> bool:
    """Whether nothing but what is known to be harmless stands beside what was found."""
    if found is None:
        return False
    rest = _BESIDE.sub(" ", said[: found.start()] + " , " + said[found.end() :])
    return not any(word.isalnum() for word in rest.split())
