"""Questions about numbers, each reckoned from its own and the walk's: which kind one is."""

from __future__ import annotations

from bot.dialogue.meaning.said import Said
from bot.dialogue.steps.asked import filter_time, one_number, stops_between, two_settings
from bot.dialogue.turn import Turn


def answer(turn: Turn, heard: Said) -> str | None:
    """Answer a question about numbers.

    Args:
        turn: the answer under construction.
        heard: the message.

    Returns:
        What else the message says, to be read for facts; None when it asks nothing of the kind.
    """
    weighed = two_settings.answer(turn, heard)
    if weighed is not None:
        return weighed
    of_its_own = (
        one_number.answer(turn, heard.english)
        or stops_between.answer(turn, heard.english)
        or filter_time.answer(turn, heard)
    )
    return "" if of_its_own else None
