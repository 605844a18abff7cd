"""A number with which nothing can be reckoned: it is refused, and all else is answered."""

from __future__ import annotations

import math
from collections.abc import Callable
from datetime import datetime
from typing import Final

from bot.dialogue.compose import Part, Role
from bot.dialogue.context import Context
from bot.dialogue.events import Event, TextReceived
from bot.dialogue.learning import unlearned
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.steps.anywhere import manner
from bot.dialogue.texts import domain_key, domain_values
from bot.dialogue.turn import Turn
from core.errors import OutOfDomainError

#: What a formula was handed differs from what was told by less (own rule: feet and back).
_SAME: Final = 1e-6


def answered(
    context: Context,
    event: Event,
    now: datetime,
    error: OutOfDomainError,
    answer: Callable[[Turn, Event], None],
) -> Turn:
    """The answer with the refused number left out, told now or before; it begins with the refusal.

    Args:
        context: as it was before the message.
        event: the message.
        now: the time of the answer.
        error: what was refused.
        answer: answers an event.

    Returns:
        The answer to all else; to nothing where no fact holds that number.
    """
    before = Turn(context, event.origin, now)
    for slot in _slots_of(before, event, error):
        turn = Turn(unlearned(context, (slot,)), event.origin, now)
        turn.left_out = frozenset({slot})
        try:
            answer(turn, event)
        except OutOfDomainError:
            continue
        break
    else:
        turn = before
    refused = Part(Role.SETTINGS, domain_key(error), domain_values(error, turn.units))
    turn.parts = [refused, *turn.parts]
    return turn


def _slots_of(turn: Turn, event: Event, error: OutOfDomainError) -> tuple[str, ...]:
    """The facts that hold the refused number."""
    facts = turn.facts
    if isinstance(event, TextReceived):
        said = glossed(event.text, manner.written_in(turn, event.text))
        facts = facts.updated(read(said, units=turn.units))
    return tuple(
        slot
        for slot, value in facts.known().items()
        if isinstance(value, float) and math.isclose(value, error.value, rel_tol=_SAME)
    )
