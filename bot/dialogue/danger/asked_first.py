"""What is neither alarm nor plain talk, and asked about: out of hearing, held, hurt, loose rock."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any, whole_words

_AT_ONCE: Final = whole_words("asked_first.unheard", "asked_first.stuck")
_LOOSE: Final = whole_words("asked_first.loose")
#: There loose rock is something to stand a tripod on, to frame, or what a sign tells of.
_OF_PICTURE: Final = whole_words("asked_first.of_picture")
#: Loose rock that is behind who tells of it.
_PASSED: Final = whole_words("asked_first.passed")
#: A fall that is louder than a voice, and nothing else.
_NOISE: Final = re.compile(in_any("asked_first.noise"))


def wants_question(text: str) -> bool:
    """Whether a message that is no danger by itself leaves a question that has to be put.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = folded(text)
    if _AT_ONCE.search(said):
        return True
    told = "?" not in text and not (_OF_PICTURE.search(said) or _PASSED.search(said))
    return told and _LOOSE.search(said) is not None


def only_noise(text: str) -> bool:
    """Whether a message says that somebody is not heard over the water, and nothing else.

    Args:
        text: as typed.
    """
    return _NOISE.fullmatch(folded(text)) is not None
