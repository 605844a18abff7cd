"""Forget me: asked once more, then everything of the person goes."""

from __future__ import annotations

from datetime import timedelta
from typing import Final

from bot.dialogue.actions import ForgetPerson
from bot.dialogue.compose import Part, Role, message
from bot.dialogue.context import Context
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading import number_answer
from bot.dialogue.replies import chosen
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn

#: A yes that was sent later than this after its question deletes nothing (own rule: what cannot
#: be undone needs a wish that is still fresh).
_FRESH: Final = timedelta(minutes=10)


def ask(turn: Turn) -> None:
    """Say what would be deleted and ask once more."""
    turn.say(Role.SETTINGS, "forget.what")
    turn.ask("forget")


def let_go(turn: Turn, text: str) -> None:
    """Anything but an answer takes the question back: a later "2" must not delete."""
    question = turn.context.conversation.question
    if question is None or question.name != "forget":
        return
    if chosen(QUESTIONS["forget"], text) is None and number_answer(text) is None:
        turn.resume_question()


def answer(turn: Turn, value: str) -> None:
    """Delete everything, or keep it."""
    if value != "delete":
        turn.say(Role.SETTINGS, "forget.kept")
        repeat.put_again(turn)
        return
    question = turn.context.conversation.question
    age = turn.origin.sent_at - question.asked_at if question else timedelta.max
    if age > _FRESH:
        turn.say(
            Role.SETTINGS, "forget.too_late", minutes=measures.minutes(age.total_seconds() / 60)
        )
        turn.ask("forget")
        return
    days = str(turn.context.terms.backup_days)
    stays = Part(Role.CHECK, "forget.stays", {"days": days})
    farewell = message([Part(Role.SETTINGS, "forget.done"), stays])
    turn.context = Context(room=turn.context.room)
    turn.do(ForgetPerson(farewell=farewell))
