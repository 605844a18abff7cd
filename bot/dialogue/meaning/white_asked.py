"""White that may be lost in a frame: is it asked of, how wide is it, in how many channels."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Final, Literal

from bot.dialogue.reading.phrases import plain
from bot.dialogue.tongues import in_any, whole_words

_WHITE: Final = whole_words("white_asked.white")
_FATE: Final = whole_words("white_asked.fate")
_MARKED: Final = whole_words("white_asked.fate_marked")
_DOTS: Final = whole_words("white_asked.dots")
_ALL: Final = whole_words("white_asked.all_channels")
_ONE: Final = whole_words("white_asked.one_channel")
#: Widths of things held against a screen [cm] (own rule, from things at hand).
_THINGS_CM: Final = {
    "pinhead": 0.2,
    "pea": 0.7,
    "fingernail": 1.0,
    "finger": 1.5,
    "thumb": 2.0,
    "fist": 8.0,
}
_THINGS: Final = {name: whole_words(f"white_asked.{name}") for name in _THINGS_CM}
_PERCENT: Final = re.compile(r"(?<![\d.,])(\d{1,2}(?:[.,]\d+)?) ?(?:%|percent|prozent|por ciento)")
_CM: Final = re.compile(r"(?<![\d.,/])(\d{1,2}(?:[.,]\d+)?) ?(cm|mm)\b(?! (?:lens|f))")
_SCREEN: Final = re.compile(
    rf"(?<![\d.,])(\d{{1,2}}(?:[.,]\d)?)[ -]?(?:{in_any('white_asked.inch')}|\")(?:[ -]\w+)?[ -]?"
    rf"{in_any('white_asked.screen')}\b"
)
_REAR: Final = whole_words("white_asked.rear_screen")
#: Width of a screen by its diagonal, at 16 to 9: cos(atan(9 / 16)) = 0.87.
_OF_DIAGONAL: Final = 0.87
_CM_AN_INCH: Final = 2.54
#: Screens on which nobody says how large they are [cm] (own rule: a laptop, a camera's back).
_USUAL_CM: Final = 30.0
_REAR_CM: Final = 6.5


@dataclass(frozen=True)
class White:
    """White without texture, as it was told.

    Args:
        share: its width as a share of the frame's; None where it was not told.
        channels: at the right edge in all graphs, or in one alone; None where it was not told.
        dots: scattered points, no patch.
    """

    share: float | None
    channels: Literal["all", "one"] | None
    dots: bool


def asks_of_white(text: str) -> bool:
    """Whether a message asks if white without texture is lost, or may be kept.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text)
    named = any(words.search(said) for words in (_WHITE, _DOTS, _ALL, _ONE))
    marked = "?" in said and _MARKED.search(said) is not None
    return named and (marked or _FATE.search(said) is not None)


def white_in(text: str) -> White:
    """What a message tells of such white.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text)
    channels: Literal["all", "one"] | None = None
    if _ALL.search(said):
        channels = "all"
    elif _ONE.search(said):
        channels = "one"
    return White(_share(said), channels, _DOTS.search(said) is not None)


def _share(said: str) -> float | None:
    """Its width as a share of the frame's: told, or by a thing held against the screen."""
    percent = _PERCENT.search(said)
    if percent is not None:
        return _number(percent[1]) / 100
    screen = _SCREEN.search(said)
    width_cm = _REAR_CM if _REAR.search(said) else _USUAL_CM
    if screen is not None:
        width_cm = _number(screen[1]) * _CM_AN_INCH * _OF_DIAGONAL
    measured = _CM.search(said)
    if measured is not None:
        return _number(measured[1]) / (10 if measured[2] == "mm" else 1) / width_cm
    thing = next((name for name, words in _THINGS.items() if words.search(said)), None)
    return None if thing is None else min(_THINGS_CM[thing] / width_cm, 1.0)


def _number(said: str) -> float:
    return float(said.replace(",", "."))
