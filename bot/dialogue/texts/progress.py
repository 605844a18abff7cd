"""What is said while frames are being measured, when that takes its time."""

from __future__ import annotations

from typing import Final

_ONE: Final = "Measuring your frame… ‘cancel’ ends it."
_SEVERAL: Final = "Measuring your frames, {number} of {total}… ‘cancel’ ends it."


def progress_line(number: int, total: int) -> str:
    """The line while frame `number` of `total` is measured."""
    return _ONE if total == 1 else _SEVERAL.format(number=number, total=total)
