"""Slips of the thumb, drawn at random: what cold hands make of a message."""

from __future__ import annotations

import re
from collections.abc import Callable
from random import Random
from typing import Final

from bot.dialogue.danger.slips import BESIDE

_WORD: Final = re.compile(r"[^\W\d_]{3,}")


def slipped(text: str, draw: Random, times: int = 1) -> str:
    """A message with slips that take letters or blanks: each word of three letters may be hit.

    Args:
        text: as typed.
        draw: where chance comes from.
        times: how many slips.

    Returns:
        The message; as it is where no word is in it.
    """
    for _ in range(times):
        if _WORD.search(text):
            text = draw.choice(_SLIPS)(text, draw)
    return text


def _dropped(text: str, draw: Random) -> str:
    at = _letter(text, draw)
    return text[:at] + text[at + 1 :]


def _doubled(text: str, draw: Random) -> str:
    at = _letter(text, draw)
    return text[:at] + text[at] + text[at:]


def _swapped(text: str, draw: Random) -> str:
    match = draw.choice(list(_WORD.finditer(text)))
    at = draw.randrange(match.start(), match.end() - 1)
    return text[:at] + text[at + 1] + text[at] + text[at + 2 :]


def _neighbour(text: str, draw: Random) -> str:
    at = _letter(text, draw)
    return text[:at] + draw.choice(BESIDE.get(text[at].lower(), text[at])) + text[at + 1 :]


def _joined(text: str, draw: Random) -> str:
    at = draw.choice([at for at, letter in enumerate(text) if letter == " "] or [len(text)])
    return text[:at] + text[at + 1 :]


def _letter(text: str, draw: Random) -> int:
    match = draw.choice(list(_WORD.finditer(text)))
    return draw.randrange(match.start(), match.end())


_SLIPS: Final[tuple[Callable[[str, Random], str], ...]] = (
    _dropped,
    _doubled,
    _swapped,
    _neighbour,
    _joined,
)
