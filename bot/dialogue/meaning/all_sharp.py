"""That a frame, looked at closely, is sharp all over: "all sharp at 100 %, no drops"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any, whole_words

_SHARP: Final = re.compile(rf"\b(?:{in_any('all_sharp.all')}|{in_any('all_sharp.everywhere')})\b")
_BESIDE: Final = re.compile(rf"(?:\W|\d|\b{in_any('all_sharp.beside')}\b)*")
_NOT: Final = whole_words("all_sharp.not")


def is_all_sharp(typed: str) -> bool:
    """Whether a message says so, and nothing that takes it back or asks.

    Args:
        typed: as it came, in any of Linn's languages.
    """
    text = folded(typed)
    found = _SHARP.search(text)
    if found is None or "?" in typed or _NOT.search(text):
        return False
    return _BESIDE.fullmatch(f"{text[: found.start()]} {text[found.end() :]}") is not None
