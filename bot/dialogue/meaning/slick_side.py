"""Whether a message tells that the ground beside who writes is wet or slick, and nothing else."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.meaning.sentences import sentences_of, without
from bot.dialogue.tongues import single_words, whole_words

_STEP: Final = whole_words("slick_side.step")
_SLICK: Final = whole_words("slick_side.slick")
#: Words of such ground: where others stand beside them, more is told than that.
_KNOWN: Final = single_words("slick_side.ground")
_WORD: Final = re.compile(r"[^\W\d_]+")


def tells_of_slick(text: str) -> bool:
    """Whether a message tells of wet or slick ground to a side.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = folded(text)
    return _SLICK.search(said) is not None and _STEP.search(said) is not None


def without_slick(text: str) -> str:
    """A message without its sentences that tell of slick ground to a side, and of nothing else.

    Args:
        text: as typed, in any of Linn's languages.
    """
    rest = without(sentences_of(text), _is_of_slick)
    return text if rest is None else rest


def _is_of_slick(sentence: str) -> bool:
    beside = _STEP.sub(" ", folded(sentence))
    if any(map(str.isdigit, beside)):  # "2, but it is slippery to the left" answers, too
        return False
    return tells_of_slick(sentence) and set(_WORD.findall(beside)) <= _KNOWN
