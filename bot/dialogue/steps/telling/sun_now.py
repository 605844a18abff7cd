"""What to do while sun lies on a part of the water and shade on the rest: wait, or a section."""

from __future__ import annotations

from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.meaning import sun_by_turns
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading import read
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.asked.topic_answers import TOPICS
from bot.dialogue.steps.telling import sun_told
from bot.dialogue.tongues import whole_words
from bot.dialogue.turn import Turn

_WHAT_NOW: Final = whole_words("sun.what_now")
_REST_DARK: Final = whole_words("sun.rest_dark")
#: What such patches are read as, too: no light for all of the water, nothing on the glass.
_OF_PATCHES: Final = frozenset({"light", "symptoms", "blink"})


def answer(turn: Turn, said: Said) -> bool:
    """Answer patches of sun in a shade, told or asked about; whether a message tells no more.

    Args:
        turn: the answer under construction.
        said: the message.
    """
    if not sun_by_turns.told(said):
        return False
    typed, told = folded(said.typed), read(said.english, units=turn.units).known().keys()
    asked = _WHAT_NOW.search(typed) is not None
    if told - _OF_PATCHES or not (asked or (_REST_DARK.search(typed) and "blink" not in told)):
        return False
    sun_told.note(turn, said)
    TOPICS["noon"](turn, said.english)
    repeat.put_again_if_open(turn)
    return True
