"""Which of Linn's own words a message asks the meaning of: "what does 2 % of the frame mean?"."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.tongues import in_any

#: The words; of two that fit, the first.
NAMES: Final = (
    *("share", "meter", "last_frames", "letters", "sparkle", "leaf_frame", "ladder"),
    *("turn_back", "tilt", "spare", "focal", "nearest", "lip", "portrait", "overcast", "look"),
)
_BEGINS: Final = rf"(?:^|[.,] |\b{in_any('own_words.goes_on')} )"
_ENDS: Final = rf"(?= [.,]|$| {in_any('own_words.goes_on')}\b)"
_FILLERS: Final = rf"(?:{in_any('own_words.filler')} )*"


def _asked(name: str) -> re.Pattern[str]:
    """How one word is asked the meaning of: behind "what is", or before "what's that?"."""
    word, tail = in_any(f"own_words.{name}"), rf"(?: {in_any('own_words.tail')})*"
    before = rf"{_BEGINS}{in_any('own_words.before')}{_FILLERS}{word}{tail}{_ENDS}"
    behind = rf"(?:^|[.,] ){_FILLERS}{word}(?: [.,])? {in_any('own_words.behind')}{tail}{_ENDS}"
    return re.compile(f"{before}|{behind}")


#: One of these stands in whatever asks.
_ASKS: Final = re.compile(
    rf"{_BEGINS}{in_any('own_words.before')}|(?:^| ){in_any('own_words.behind')}\b"
)
_ASKED: Final = {name: _asked(name) for name in NAMES}


def own_word_asked(typed: str) -> tuple[str, str] | None:
    """The word, and the sentences beside the one that asks; None where none is asked.

    Args:
        typed: a message in any of Linn's languages.
    """
    if _ASKS.search(folded(typed)) is None:
        return None
    sentences = sentences_of(typed)
    for asking, others in _with_others(sentences):
        text = folded(asking)
        name = next((name for name in NAMES if _ASKED[name].search(text)), None)
        if name is not None:
            return name, " ".join(others)
    return None


def _with_others(sentences: list[str]) -> Iterator[tuple[str, list[str]]]:
    """Each sentence, and each two of them, with the others."""
    for size in (1, 2):
        for place in range(len(sentences) - size + 1):
            end = place + size
            yield " ".join(sentences[place:end]), sentences[:place] + sentences[end:]
