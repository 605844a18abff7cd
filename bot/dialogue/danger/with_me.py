"""Parts of a reply about somebody that are good news, or none at all, and nothing else."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import each_once, in_any

_LEAD: Final = rf"(?:{each_once('with_me.lead')} (?:, )?)*"
#: Whole parts alone: what goes on may tell of more, "she's with me but she is bleeding".
_GOOD: Final = re.compile(
    rf"{_LEAD}(?:{in_any('with_me.told')}|{in_any('with_me.animal')}|{in_any('with_me.calm')}"
    rf"|{in_any('with_me.rests')}|{in_any('with_me.named')})"
)
_WISH: Final = re.compile(rf"{_LEAD}{in_any('with_me.wish')}")


def is_with_me(part: str) -> bool:
    """Whether a part tells that somebody is beside who writes, or was no person.

    Args:
        part: one part of a reply, as typed, in any of Linn's languages.
    """
    return "?" not in part and _GOOD.fullmatch(_bare(part)) is not None


def wishes_a_picture(part: str) -> bool:
    """Whether a part tells what who writes wants of the picture: nobody who is in danger does.

    Args:
        part: one part of a reply, as typed, in any of Linn's languages.
    """
    return _WISH.fullmatch(_bare(part)) is not None


def _bare(part: str) -> str:
    return folded(part).strip(" ,.")
