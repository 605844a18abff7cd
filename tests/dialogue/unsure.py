"""A message that only sounds like danger, or hints at it, whatever the weights are now."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache
from itertools import product
from typing import Final

import pytest

from bot.dialogue import safety_sense
from bot.dialogue.danger import Level, read_danger, whose
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.options import OTHER, Meant
from bot.dialogue.meaning.said import Said, in_english
from bot.dialogue.reading import read

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


#: The same of two among several.
_OF_TWO: Final = (
    "we are 6 and two sit near the drop",
    "two of the kids went very quiet",
    "two of my group look pale and sway",
    "two of us six are up there near the edge somewhere",
    "we are 6, two of them feel odd",
    "two of my six students wave at us from over there",
    "two of us six sit there holding their heads",
)


@cache
def unsure_of_two() -> str:
    """The first of some messages about two people that is asked about."""
    return next(text for text in _OF_TWO if _is_unsure(text) and whose(text).others >= 2)


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


#: Words that most people say of nothing grave, and a few of something that is.
_MAY_BE: Final = (
    "it's slick here and I nearly went down",
    "the woman next to me leans on her tripod",
    "one of us is limping a bit",
    "I feel a bit shaky",
    "my partner is a bit wobbly on the stones",
    "the kids shriek at the spray",
    "a man over there looks around a lot",
    "my dad feels a bit odd",
    "somebody shouted behind the bend",
    "the ground here gave a little",
    "my legs are like jelly after the stairs",
    "our friend fell behind a little",
)
_BESIDE: Final = (FACTS, "12 m tall, 18 m away", "which ISO do I take?", "how long do I expose?")


@cache
def hinted() -> str:
    """The first of some messages that is no more than a hint, and tells or asks something."""
    return next(
        text
        for said, beside in product(_MAY_BE, _BESIDE)
        for text in (f"{said}, {beside}", f"{beside.rstrip('?')}, {said}")
        if _is_hint(text) and (read(text).known() or asks(in_english(text)))
    )


def _is_hint(text: str) -> bool:
    danger = read_danger(text)
    return danger is not None and danger.level is Level.HINT


#: Words of which no rule knows anything, short and long.
FEW = "the whole lot sipping cocoa"
MANY = "the whole lot of them sipping cocoa under the big awning"


class Sense:
    """Stands in for what has been learned: every message means one option, so far ahead."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        self.meant: Meant | None = None
        self.sounds = False
        monkeypatch.setattr(safety_sense, "meant_of_safety", self._meant)
        monkeypatch.setattr(safety_sense, "sounds_of_danger", lambda _: self.sounds)

    def is_of(self, option: str, ahead: float) -> None:
        """From now on a message means that."""
        self.meant = Meant(option, 0.9, ahead)

    def _meant(self, question: str, offered: Sequence[str], said: Said) -> Meant | None:
        assert question
        assert said.typed
        assert offered[-1] == OTHER
        return self.meant
