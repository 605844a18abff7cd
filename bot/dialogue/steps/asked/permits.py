"""Whether something needs a permit: only who owns the land knows; what to ask there."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.texts import TEXTS
from bot.dialogue.tongues import whole_words
from bot.dialogue.turn import Turn

#: What rules differ on, by the words that name it.
_ABOUT: Final = {
    name: whole_words(f"bag_words.{name}") for name in ("tripod", "selling", "group", "drone")
}


def say(turn: Turn, text: str) -> None:
    """Say whom to ask, and what of all that the message names.

    Args:
        turn: the answer under construction.
        text: the message in English; words that have no gloss stand in it as typed.
    """
    said = text.casefold()
    named = [name for name, words in _ABOUT.items() if words.search(said)]
    if not named:
        turn.say(Role.SETTINGS, "asked.permit")
        return
    asked = [TEXTS[f"permit.{name}"] for name in named]
    turn.say(Role.SETTINGS, "permit.ask", list=f" {TEXTS['permit.and']} ".join(asked))
    turn.say(Role.CHECK, "permit.usual")
