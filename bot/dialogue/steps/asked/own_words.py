"""What Linn's own words mean, for who asks it back: each in a sentence."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.meaning.own_words import own_word_asked
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.steps.asked.told_beside_question import wished
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import turn_back_of

#: Words whose sentence stands with other answers.
_ELSEWHERE: Final = {"lip": "asked.lip_word", "portrait": "asked.form_means"}


def answer(turn: Turn, said: Said) -> str | None:
    """Explain such a word.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        What else the message says, in English; None when it asks for none of these words.
    """
    found = own_word_asked(said.typed)
    if found is None:
        return None
    name, others = found
    if name == "turn_back" and turn_back_of(turn) is not None:
        return None  # there is one to tell
    phone = "_phone" if name == "focal" and reckoning.is_phone(turn.facts) else ""
    turn.say(Role.SETTINGS, _ELSEWHERE.get(name, f"term.{name}{phone}"))
    turn.reason("why.practice")
    rest = others if said.language == "en" else glossed(others, said.language)
    if turn.context.conversation.walk is not None:
        turn.learn(wished(rest))  # "I want silk, how slow?" is answered for silk
    return rest
