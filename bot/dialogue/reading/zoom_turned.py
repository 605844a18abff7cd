"""A zoom that was turned from one focal length to another: "went from 24 to 50"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.lens_marks import ZOOM_ENDS
from bot.dialogue.reading.numbers import Quantity

_TURNED_FROM: Final = re.compile(
    r"\b(?:went|gone|go|moved|zoomed|changed|switched|came|turned)(?: (?:in|out|up|it|the zoom))*"
    r" from ?$"
)


def turned_to_mm(draft: Draft, quantity: Quantity) -> float | None:
    """Where a zoom was turned to [mm]; None where a number tells no such thing.

    Args:
        draft: of the message.
        quantity: one of its numbers.
    """
    if quantity.high is None or not {quantity.value, quantity.high} <= ZOOM_ENDS:
        return None
    turned = _TURNED_FROM.search(draft.before(quantity)) is not None
    return quantity.high if turned and quantity.unit in {"", "mm"} else None
