"""Questions about numbers, each reckoned from its own and the walk's: which kind one is."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from bot.dialogue.meaning.said import Said
from bot.dialogue.steps.asked import (
    checked_sum,
    checked_time,
    dark_order,
    disputed,
    either_dial,
    filter_time,
    lengths_between,
    one_number,
    own_numbers,
    stops_between,
    time_sum,
    two_settings,
    water_speed,
    what_is_white,
)
from bot.dialogue.turn import Turn

#: Kinds beside which a message may tell more, in the order in which they count.
_WITH_A_REST: Final[tuple[Callable[[Turn, Said], str | None], ...]] = (
    water_speed.answer,
    dark_order.answer,
    disputed.answer,
    checked_time.answer,
    checked_sum.answer,
    time_sum.answer,
    either_dial.answer,
    two_settings.answer,
    own_numbers.answer,
    what_is_white.answer,
)


def answer(turn: Turn, heard: Said) -> str | None:
    """Answer a question about numbers.

    Args:
        turn: the answer under construction.
        heard: the message.

    Returns:
        What else the message says, to be read for facts; None when it asks nothing of the kind.
    """
    for say in _WITH_A_REST:
        rest = say(turn, heard)
        if rest is not None:
            return rest
    of_its_own = (
        one_number.answer(turn, heard.english)
        or stops_between.answer(turn, heard.english)
        or filter_time.answer(turn, heard)
    )
    return "" if of_its_own else lengths_between.answer(turn, heard)
