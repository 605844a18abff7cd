"""What is made of several frames that have been read: a comparison or an average, and pictures."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from bot.pictures.frame_sheets import draw_sheets
from bot.runtime.frame_child import Found
from bot.runtime.orders import Answer, Order, Shown, wishes_of
from core.frame.report import FrameReport
from core.frame.several import average_several, compare_several


@dataclass(frozen=True)
class ReadFrame:
    """A frame as its own process has read it: upright, red, green, blue, shape (H, W, 3)."""

    place: int
    report: FrameReport
    pixels: NDArray[np.uint8]


def put_together(frames: Sequence[ReadFrame], order: Order) -> Found:
    """Compare frames, or average them."""
    reports = [frame.report for frame in frames]
    pixels = [frame.pixels for frame in frames]
    wishes = wishes_of(order, [frame.place for frame in frames])
    work = average_several if order.what == "average" else compare_several
    found = work(reports, pixels, wishes)
    drawn = draw_sheets(found.sheets)
    shown = tuple(Shown(shows) for shows, _ in drawn)
    answer = Answer(comparison=found.comparison, pictures=shown)
    return answer, tuple(picture for _, picture in drawn)
