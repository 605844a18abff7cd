"""Whether a camera that moved was to blame for a soft frame: likely, and why."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.folding import folded
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import sentences_of, without
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.solving import watch_text
from bot.dialogue.tongues import in_any, whole_words
from bot.dialogue.turn import Turn

_ASKED: Final = re.compile(
    rf"\b{in_any('shake_asked.asks')} {in_any('shake_asked.moves')}\b[^.]{{0,24}}$"
)
_SHARPER: Final = whole_words("shake_asked.sharper")
#: A shorter time seldom shows how a tripod moves [s] (common practice: trouble from 1/125 s on).
_SHORT_S: Final = 1 / 125


def answer(turn: Turn, said: Said) -> str | None:
    """Say so, from the time that was set.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        What else the message says; None when it asks nothing of the kind.
    """
    given, rest = turn.walk.given, without(sentences_of(said.typed), _asks)
    if given is None or rest is None:
        return None
    # A frame that was complained of is told, and not yet taken for the one to go on from.
    time_s = reckoning.exact_settings(turn.facts)[1] or given.shutter_s
    if time_s < _SHORT_S:
        return None
    sharper = _SHARPER.search(folded(said.typed)) is not None
    turn.say(
        Role.SETTINGS,
        "shake.yes" if sharper else "shake.likely",
        time=watch_text(time_s, turn.camera),
    )
    turn.reason("why.practice")
    return glossed(rest, said.language)


def _asks(sentence: str) -> bool:
    return (
        sentence.rstrip().endswith("?") and _ASKED.search(folded(sentence).strip(" .")) is not None
    )
