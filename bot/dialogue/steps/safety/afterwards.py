"""What a message asks behind the news that all are safe, away from water that rose."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.denied import sounds_of_danger
from bot.dialogue.folding import folded
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.reading import read
from bot.dialogue.steps.anywhere import manner
from bot.dialogue.steps.safety import gear_asked, of_the_day
from bot.dialogue.tongues import whole_words
from bot.dialogue.turn import Turn

_LATER: Final = whole_words("aftermath.later")
_FROM_HERE: Final = whole_words("aftermath.from_here")
#: So far off [m] nobody stands at the water any more (own rule: over twice what Linn sends anybody
#: to at a fall of 12 m).
_FAR_M: Final = 40.0


def answer(turn: Turn, rest: str) -> str:
    """Answer what is asked of gear left there, or of the day; nobody goes back, so no more is.

    Args:
        turn: the answer under construction.
        rest: what the message says besides, as typed.

    Returns:
        What is left to be answered: of buying, of another day, or of a view from far off.
    """
    if gear_asked.answer(turn, rest):
        return ""
    later = _of_later(turn, rest)
    if later or of_the_day.answer(turn, manner.as_said(turn, rest), of_the_day.AFTERWARDS):
        return later
    return rest if _is_from_afar(turn, rest) and not sounds_of_danger(rest) else ""


def _is_from_afar(turn: Turn, rest: str) -> bool:
    """Whether a picture is spoken of from where people went, far off the water."""
    if _FROM_HERE.search(folded(rest)) is None:
        return False
    told = read(manner.as_said(turn, rest).english, units=turn.units).distance_m
    return told is not None and told >= _FAR_M


def _of_later(turn: Turn, rest: str) -> str:
    """The sentences that ask of another day, or of what to buy, and what stands beside them."""
    asking = [one for one in sentences_of(rest) if asks(manner.as_said(turn, one))]
    asked = " ".join(asking) if _LATER.search(folded(rest)) else ""
    return "" if sounds_of_danger(asked) else asked
