"""Whether a person tells times of day with am and pm, as they last did it."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.context import Context
from bot.dialogue.events import Event, TextReceived

_HALVES: Final = re.compile(r"\b(?:0?[1-9]|1[0-2])(?:[:.][0-5]\d)? ?[ap]\.?m\b", re.IGNORECASE)
_WHOLE: Final = re.compile(
    r"(?<![\d:.])(?:0\d|1[3-9]|2[0-3])[:.][0-5]\d(?![\d:.]| ?[ap]\.?m)", re.IGNORECASE
)


def with_hours(context: Context, event: Event) -> Context:
    """The context of a person who is answered in the hours that they use themselves.

    Args:
        context: what the event is answered from.
        event: what came.
    """
    if not isinstance(event, TextReceived) or not event.origin.is_for_linn:
        return context
    halves = _HALVES.search(event.text) is not None
    if halves is context.person.halves or not (halves or _WHOLE.search(event.text)):
        return context
    return context.model_copy(
        update={"person": context.person.model_copy(update={"halves": halves})}
    )
