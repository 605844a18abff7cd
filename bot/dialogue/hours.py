"""Whether a person tells times of day with am and pm, as they last did it."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.context import Context
from bot.dialogue.events import Event, TextReceived
from bot.dialogue.reading.back_by import back_by_in
from bot.dialogue.reading.clock_now import AFTERNOON_BELOW_H, clock_now
from bot.dialogue.reading.normal import normalise
from bot.dialogue.texts.languages import ENGLISH

_HALVES: Final = re.compile(r"\b(?:0?[1-9]|1[0-2])(?:[:.][0-5]\d)? ?[ap]\.?m\b", re.IGNORECASE)
_WHOLE: Final = re.compile(
    r"(?<![\d:.])(?:0\d|1[3-9]|2[0-3])[:.][0-5]\d(?![\d:.]| ?[ap]\.?m)", re.IGNORECASE
)
_NOON_H: Final = 12


def with_hours(context: Context, event: Event) -> Context:
    """The context of a person who is answered in the hours that they use themselves.

    Args:
        context: what the event is answered from.
        event: what came.
    """
    if not isinstance(event, TextReceived) or not event.origin.is_for_linn:
        return context
    if context.person.halves and not _WHOLE.search(event.text):
        return context
    halves = _HALVES.search(event.text) is not None or _is_halved(context, event.text)
    if halves is context.person.halves:
        return context
    return context.model_copy(
        update={"person": context.person.model_copy(update={"halves": halves})}
    )


def _is_halved(context: Context, text: str) -> bool:
    """Whether an hour after noon is told by a small number: "shuts at 5", "it's 2.45 now".

    In English alone: in other languages who says so reads 17:00 as well.
    """
    if context.person.language != ENGLISH:
        return False
    now = clock_now(text)
    if now is not None and now.either and now.hour < AFTERNOON_BELOW_H:
        return True
    due = back_by_in(normalise(text, with_others=True))
    return due is not None and int(due[:2]) > _NOON_H and due[:2] not in text
