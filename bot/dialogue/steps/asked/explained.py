"""What a question means, for who does not know the word in it or where to look."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.texts import TEXTS
from bot.dialogue.turn import Turn

#: Questions that ask the same in other words.
_SAME: Final = {
    "blink_again": "blink",
    "screen_says": "blink",
    "height": "geometry",
    "distance": "geometry",
    "stream": "water_speed",
    "other_lens": "focal",
}


def tell(turn: Turn) -> None:
    """Say in one line what is asked and where to look, then ask again."""
    question = turn.context.conversation.question or repeat.standing(turn)
    if question is None:
        turn.say(Role.SETTINGS, "help.first")
        return
    name = question.name.removesuffix("_feet")
    key = f"explain.{_SAME.get(name, name)}"
    turn.say(Role.SETTINGS, key if key in TEXTS else "explain.any")
    turn.ask(question.name, **question.values)
