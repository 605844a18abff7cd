"""A message that only sounds like danger: that is asked first; what it tells waits meanwhile."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger import Danger, DangerKind, Level, all_safe, anyone_out_there
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.replies import chosen
from bot.dialogue.steps import emergency
from bot.dialogue.turn import Turn

_QUESTION: Final = "in_danger"
_YES: Final = re.compile(r"\W*(?:yes|yeah|yep|yup)\b", re.IGNORECASE)


def ask(turn: Turn, text: str) -> bool:
    """Ask whether anybody is in danger, before anything of the message is answered.

    Returns:
        Whether it is asked: not while it stands open, nor while an emergency is held.
    """
    conversation = turn.context.conversation
    if conversation.doubted is not None or conversation.emergency is not None:
        return False
    turn.urgent = True
    turn.change_conversation(doubted=text)
    turn.ask(_QUESTION)
    return True


def text_to_answer(turn: Turn, text: str) -> str | None:
    """The words to go on with: those that came, or those that waited; None when answered here.

    Who goes on with something else says that nobody is in danger; the facts of what waited are
    kept.
    """
    doubted = turn.context.conversation.doubted
    if doubted is None:
        return text
    turn.change_conversation(doubted=None)
    turn.resume_question()
    said = glossed(text, turn.context.person.language)
    value = chosen(QUESTIONS[_QUESTION], text) or _worded(said)
    if value == "yes":
        emergency.answer(turn, Danger(DangerKind.UNCLEAR, Level.EMERGENCY))
        return None
    if value == "no":
        return doubted
    facts = read(glossed(doubted, turn.context.person.language), units=turn.units)
    if facts.known():
        turn.learn(facts)
    return text


def _worded(text: str) -> str | None:
    """What other words say: "all fine", "yes, my friend is"; "we are leaving" says neither."""
    if all_safe(text) or anyone_out_there(text) is False:
        return "no"
    return "yes" if _YES.match(text) else None
