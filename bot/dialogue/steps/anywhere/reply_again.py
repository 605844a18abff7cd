"""A numbered reply that was a slip: it is undone, and what was meant takes its place."""

from __future__ import annotations

from bot.dialogue.events import TextReceived
from bot.dialogue.questions import QUESTIONS, Asked
from bot.dialogue.reading.reply_corrected import Corrected, reply_meant
from bot.dialogue.replies import chosen, meant
from bot.dialogue.turn import Turn


def put_right(turn: Turn, event: TextReceived, said: str) -> TextReceived:
    """The message to go on with: the number that was meant, to the question before this one.

    Args:
        turn: the answer under construction; the last answer is taken back in it.
        event: the message.
        said: it in English.
    """
    reply, history = reply_meant(said), turn.context.conversation.history
    if reply is None or not history or history[-1].question is None:
        return event
    if not _names(QUESTIONS[history[-1].question.name], reply):
        return event
    turn.undo()
    turn.rebase()
    return event.model_copy(update={"text": reply.number, "answers": None})


def _names(asked: Asked, reply: Corrected) -> bool:
    """Whether there is such an option, and the words behind its number, if any, are its own."""
    number = int(reply.number)
    if number > len(asked.options):
        return False
    named = chosen(asked, reply.words) or meant(asked, reply.words) if reply.words else None
    return not reply.words or named == asked.options[number - 1]
