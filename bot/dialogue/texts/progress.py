"""What is said while frames are being measured, when that takes its time."""

from __future__ import annotations

from bot.dialogue.texts.catalogue import TEXTS
from bot.dialogue.texts.languages import ENGLISH, speaking


def progress_line(number: int, total: int, language: str = ENGLISH) -> str:
    """The line while frame `number` of `total` is measured."""
    with speaking(language):
        key = "progress.one" if total == 1 else "progress.several"
        return TEXTS[key].format(number=number, total=total)
