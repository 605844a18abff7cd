"""Sun that comes and goes, or lies on a part of the water: no single light, and one to wait in."""

from __future__ import annotations

from functools import lru_cache
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.tongues import whole_words

_SUN: Final = whole_words("sun.sun")
_TURNS: Final = whole_words("sun.by_turns", "sun.on_part")
_THROUGH: Final = whole_words("sun.comes_through")
_PATCHES: Final = whole_words("sun.patches")
_ON_GLASS: Final = whole_words("sun.on_glass")
_GONE: Final = whole_words("sun.gone")


@lru_cache(maxsize=16)
def told(said: Said) -> bool | None:
    """Whether sun and shade share the water: True; even light again: False; None for neither.

    Args:
        said: the message.
    """
    sentences = [folded(one) for one in sentences_of(said.typed) if not one.endswith("?")]
    sunny = [one for one in sentences if _SUN.search(one)]
    if any(_TURNS.search(one) for one in sunny):
        return True
    patched = [one for one in sentences if _PATCHES.search(one) and not _ON_GLASS.search(one)]
    if any(_THROUGH.search(one) for one in sunny) and patched:
        return True
    return False if any(map(_GONE.search, sentences)) else None
