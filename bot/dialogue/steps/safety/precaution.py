"""What people ask and do so that nothing happens: where nobody stands, cold hands, the note."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.danger import Danger, DangerKind, Level
from bot.dialogue.danger.cold_child import child_is_cold
from bot.dialogue.danger.cold_hands import (
    beside_cold_hands,
    only_cold,
    only_cold_hands,
    shakes_from_cold,
)
from bot.dialogue.danger.spoken_of import Talk, only_talk, without_talk
from bot.dialogue.reading import read
from bot.dialogue.reading.cold_numbers import without_degrees
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.standing import asks_to_stand
from bot.dialogue.steps.anywhere import heard, manner, repeat
from bot.dialogue.steps.safety import cold_told, emergency, storm_distance, water_colour
from bot.dialogue.steps.visits import note_home
from bot.dialogue.turn import Turn

#: What a message of the weather tells of a picture beside it: leaves that move.
_OF_WEATHER: Final = frozenset({"wind", "units", "unread"})


def answer(turn: Turn, text: str) -> bool:
    """Answer a message that says nothing else; whether it was one.

    Args:
        turn: the answer under construction.
        text: the message, as typed.
    """
    if _of_numbers(turn, text) or water_colour.answer(turn, text):
        return True
    if child_is_cold(text):
        turn.say(Role.SAFETY, "danger.cold.child")
        heard.keep(turn, text)
        repeat.put_again_if_open(turn, whole=False)
        return True
    if beside_cold_hands(text):
        _say_cold(turn, text, "precaution.cold" if shakes_from_cold(text) else "")
        return False
    return not _tells_more(turn, text) and (_of_cold(turn, text) or _of_talk(turn, text))


def _say_cold(turn: Turn, text: str, said: str) -> None:
    """What warms, and that a digit is enough from now on."""
    turn.say(Role.SAFETY, said or "precaution.cold_hands")
    manner.note_hands(turn, text)


def _of_cold(turn: Turn, text: str) -> bool:
    """Answer cold hands, and who is cold; whether it is that alone."""
    cold = _cold_of(text)
    if cold:
        _say_cold(turn, text, cold)
        repeat.put_again_if_open(turn, whole=False)
    return bool(cold)


def _of_talk(turn: Turn, text: str) -> bool:
    """Answer what speaks of danger so that nothing happens; whether it is that."""
    talk = only_talk(text)
    if Talk.WHERE_NOT in talk:
        turn.say(Role.SETTINGS, "precaution.where_not")
    elif Talk.NOTE_HOME in talk:
        turn.say(Role.SETTINGS, "precaution.note_home")
        note_home.remind(turn)
    else:
        return False
    repeat.put_again_if_open(turn)
    return True


def _cold_of(text: str) -> str:
    """What is said to cold hands, and to who is cold; "" to anything else."""
    if only_cold_hands(text):
        return "precaution.cold_hands"
    return "precaution.cold" if only_cold(text) else ""


def _of_numbers(turn: Turn, text: str) -> bool:
    """Answer told numbers of a storm, of cold or of water to stand in; whether there were any."""
    if asks_to_stand(text):
        emergency.answer(turn, Danger(DangerKind.WADING, Level.STOP), text)
        return True
    rest = glossed(without_degrees(text), turn.context.person.language)
    more = read(rest).known().keys() - _OF_WEATHER and not cold_told.is_asked(text)
    if not storm_distance.answer(turn, text) and (more or not cold_told.answer(turn, text)):
        return False
    heard.keep(turn, without_degrees(text))
    repeat.put_again_if_open(turn)
    return True


def _tells_more(turn: Turn, text: str) -> bool:
    """Whether it tells facts beside it, which are to be taken in."""
    return bool(read(glossed(without_talk(text)[0], turn.context.person.language)).known())
