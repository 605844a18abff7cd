"""Leave asked to walk on stones full of leaves at the water's edge: "edge" alone may mean that."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.danger import Danger, DangerKind
from bot.dialogue.folding import folded
from bot.dialogue.meaning.asking import asks
from bot.dialogue.steps.anywhere import manner, repeat
from bot.dialogue.tongues import whole_words
from bot.dialogue.turn import Turn

_SHOES: Final = whole_words("handy.shoes")
_LEAVES: Final = whole_words("handy.litter")
#: What tells of a height: such an edge is no water's edge, or not for certain.
_DROP: Final = whole_words("handy.drop")


def answer(turn: Turn, danger: Danger, text: str) -> bool:
    """Caution who only asks so; whether it was that. The lip is named in it, too.

    Args:
        turn: the answer under construction.
        danger: what the words were heard as.
        text: the message, as typed.
    """
    said = folded(text)
    of_shore = _SHOES.search(said) and _LEAVES.search(said) and not _DROP.search(said)
    held = turn.context.conversation.emergency is not None
    if danger.kind is not DangerKind.LIP or held or not of_shore:
        return False
    if not asks(manner.as_said(turn, text)):
        return False
    turn.say(Role.SAFETY, "asked.slippery_shoes")
    repeat.put_again_if_open(turn)
    return True
