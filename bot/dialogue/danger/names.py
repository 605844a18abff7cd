"""A few words that begin with somebody's name, as they would be said of him or her."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger.guards import THINGS
from bot.dialogue.danger.likelihood import trained
from bot.dialogue.danger.meaning import cues_of
from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any, of_each

#: A message that tells of one thing has so many words at most (own rule).
_FEW: Final = 6
#: So much [log odds] a word alone speaks against danger that many have typed, like everything; of
#: 23 given names one is below, and two are near (own rule).
_OF_TALK: Final = -0.25
_ASKS: Final = re.compile(rf"\W*{in_any('names.asks')}\b", re.IGNORECASE)
#: Who a name is read as, in each language.
_HE: Final = tuple(" ".join(of_each("names.he").values()).split())
#: A word that no pronoun and no denial is, before a verb that people take.
_NAMED: Final = re.compile(
    rf"\W*(?!{in_any('names.no_name')}\b)([^\W\d_]{{3,}}) ({in_any('names.does')}\b.*)",
    re.IGNORECASE | re.DOTALL,
)


def is_short(text: str) -> bool:
    """Whether a message says something in a few words, and asks nothing."""
    return text.count(" ") < _FEW and not asks(text)


def asks(text: str) -> bool:
    """Whether a message asks something, also without its mark."""
    return "?" in text or _ASKS.match(text) is not None


def without_name(text: str) -> list[str]:
    """A message with "he" in place of the name that it begins with, in each language.

    Args:
        text: as typed or dictated.

    Returns:
        The message once for each language; none where it is long, asks, or where its first word
        may be something else than a name.
    """
    found = _NAMED.match(text) if is_short(text) else None
    if found is None or not _may_be_a_name(found.group(1)):
        return []
    return [f"{he} {found.group(2)}" for he in _HE]


def _may_be_a_name(word: str) -> bool:
    """Whether a word is no thing, no cue, and none that harmless talk has again and again."""
    said = folded(word)
    if not said or said in THINGS or any(cues_of(word)):
        return False
    return trained().likely([f"word {said}"]).odds - trained().likely([]).odds >= _OF_TALK
