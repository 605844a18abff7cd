"""What people ask and do so that nothing happens: where nobody stands, cold hands, the note."""

from __future__ import annotations

from bot.dialogue.compose import Role
from bot.dialogue.danger.cold_hands import only_cold_hands
from bot.dialogue.danger.spoken_of import Talk, only_talk, without_talk
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.steps.anywhere import manner, repeat
from bot.dialogue.steps.visits import note_home
from bot.dialogue.turn import Turn


def answer(turn: Turn, text: str) -> bool:
    """Answer a message that says nothing else; whether it was one.

    Args:
        turn: the answer under construction.
        text: the message, as typed.
    """
    cold, talk = only_cold_hands(text), only_talk(text)
    if not (cold or talk) or _tells_more(turn, text):
        return False
    if cold:
        turn.say(Role.SAFETY, "precaution.cold_hands")
        manner.note_hands(turn, text)
        repeat.put_again_if_open(turn, whole=False)
        return True
    if Talk.WHERE_NOT in talk:
        turn.say(Role.SETTINGS, "precaution.where_not")
    elif Talk.NOTE_HOME in talk:
        turn.say(Role.SETTINGS, "precaution.note_home")
        note_home.remind(turn)
    else:
        return False
    repeat.put_again_if_open(turn)
    return True


def _tells_more(turn: Turn, text: str) -> bool:
    """Whether it tells facts beside it, which are to be taken in."""
    return bool(read(glossed(without_talk(text)[0], turn.context.person.language)).known())
