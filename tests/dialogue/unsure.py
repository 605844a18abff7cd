"""A message that only sounds like danger, whatever the weights are now."""

from __future__ import annotations

from functools import cache
from typing import Final

from bot.dialogue.danger import Level, read_danger

FACTS: Final = "the fall is 5 m, 8 m away"
#: Something is odd about somebody, and nothing says what.
_SAID: Final = (
    "the lady next to me went very quiet",
    "a lady over there waves both arms",
    "the woman over there keeps rubbing her arm",
    "the lady next to me holds her chest",
    "the man next to me went quiet and sits down",
    "somebody over there is waving at us",
    "the kid has gone very quiet",
    "a woman over there sits on the ground and holds her knee",
    "my sister sits with her head between her knees",
    "the girl next to me trembles a bit",
)


@cache
def unsure() -> str:
    """The first of some messages that is asked about, alone and beside facts."""
    return next(text for text in _SAID if _is_unsure(text) and _is_unsure(f"{FACTS}, {text}"))


def unsure_before(words: str) -> str:
    """The first of these messages that is asked about with words behind it, those included."""
    return next(found for text in _SAID if _is_unsure(found := f"{text}, {words}"))


def _is_unsure(text: str) -> bool:
    danger = read_danger(text)
    return danger is not None and danger.level is Level.UNSURE
