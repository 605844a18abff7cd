"""Taps on the bot's messages: an answer to the question of just that message, or nothing."""

from __future__ import annotations

from bot.dialogue.commands import take_back
from bot.dialogue.context import Snapshot
from bot.dialogue.events import TextReceived
from bot.dialogue.questions import QUESTIONS, asked_by
from bot.dialogue.replies import chosen
from bot.dialogue.steps.safety import emergency
from bot.dialogue.turn import Turn


def as_words(turn: Turn, event: TextReceived) -> TextReceived | None:
    """The tap as a message with the option's number; None when there is nothing to answer.

    A second tap on the same message corrects the first one, as an edit does; the same option
    again counts once. A thumb where nobody asked yes or no means nothing.
    """
    last = _last(turn)
    before = last.tapped if last is not None and last.tapped_on == event.replies_to else None
    if not event.text:
        if before is not None:
            take_back(turn)
        return None
    number = _number(event)
    if number in {None, before}:
        return None
    turn.tapped_on, turn.tapped = event.replies_to, number
    corrects = last.event_id if last is not None and before is not None else None
    return event.model_copy(update={"text": number, "corrects": corrects})


def withdrawn(turn: Turn, event_id: str) -> None:
    """The person took a reaction back: the answer is undone if it was the last one."""
    last = _last(turn)
    if last is not None and last.event_id == event_id and last.tapped_on is not None:
        take_back(turn)


def _last(turn: Turn) -> Snapshot | None:
    """The last answer; while an emergency is held nothing of the walk is touched."""
    history = turn.context.conversation.history
    return history[-1] if history and not emergency.is_held(turn) else None


def _number(event: TextReceived) -> str | None:
    """The number of the option that was tapped, among those of the message that it stands on."""
    asked = QUESTIONS.get(asked_by(event.answers)[0])
    value = chosen(asked, event.text) if asked is not None else None
    if asked is None or value is None:
        return None
    return str(asked.options.index(value) + 1)
