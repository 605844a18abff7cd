"""What is said while frames are being measured, when that takes its time."""

from __future__ import annotations

from bot.dialogue.texts.catalogue import TEXTS


def progress_line(number: int, total: int) -> str:
    """The line while frame `number` of `total` is measured."""
    key = "progress.one" if total == 1 else "progress.several"
    return TEXTS[key].format(number=number, total=total)
