"""Frames that came out dull or blue: what is done about it at home, before any list of frames."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading.phrases import plain
from bot.dialogue.steps.home import told_frames
from bot.dialogue.tongues import whole_words
from bot.dialogue.turn import Turn

_DULL: Final = whole_words("home_edits.dull")
_BLUE: Final = whole_words("home_edits.blue")
_WANTS: Final = whole_words("home_edits.wants")


def answer(turn: Turn, said: Said) -> bool:
    """Say how dull or blue frames are mended, to who asks for it at home; whether it was asked.

    Args:
        turn: the answer under construction.
        said: the message.
    """
    text = plain(said.typed)
    wanted = turn.is_at_home and asks(said) and _WANTS.search(text) is not None
    dull, blue = _DULL.search(text) is not None, _BLUE.search(text) is not None
    # of frames that were told blue is answered one by one
    if not wanted or not (dull or (blue and not told_frames.frames_of(turn))):
        return False
    if blue:
        turn.say(Role.SETTINGS, "home.edit_blue")
    if dull:
        turn.say(Role.SETTINGS, "home.edit_dull")
    turn.say_or_keep(Role.CHECK, "home.edit_lost")
    return True


def names_fault(text: str) -> bool:
    """Whether a message tells of dull or blue frames.

    Args:
        text: as typed.
    """
    said = plain(text)
    return _DULL.search(said) is not None or _BLUE.search(said) is not None
