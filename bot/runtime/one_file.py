"""What is done with a single file: measured, measured again, its grid drawn, other times drawn."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Final

import numpy as np
from numpy.typing import NDArray

from bot.pictures.frame_sheets import draw_sheets
from bot.pictures.grid import draw_grid
from bot.runtime.frame_child import Found, check_and_draw, checked
from bot.runtime.orders import Answer, Order, Shown, wishes_of
from core.frame.report import FrameReport
from core.frame.several import illustrate_one

#: What is made of a report and pixels.
_Making = Callable[[FrameReport, NDArray[np.uint8], Order], Found]


def measure_file(data: bytes, order: Order) -> Found:
    """Do what was ordered with a file.

    Raises:
        UnreadableFrameError: it is no picture that can be measured.
    """
    making = _MAKINGS.get(order.what)
    if making is None:
        return check_and_draw(data, order)
    return making(*checked(data, order), order)


def _grid(report: FrameReport, pixels: NDArray[np.uint8], order: Order) -> Found:
    proposed = order.options.water_cells or (report.water.cells if report.water else ())
    picture = draw_grid(pixels, proposed)
    return Answer(report, pictures=(Shown("grid", 0),), read=(0,)), (picture,)


def _illustration(report: FrameReport, pixels: NDArray[np.uint8], order: Order) -> Found:
    found = illustrate_one(report, pixels, wishes_of(order, (0,)))
    drawn = draw_sheets(found.sheets)
    shown = tuple(Shown(shows, 0) for shows, _ in drawn)
    answer = Answer(report, comparison=found.comparison, pictures=shown, read=(0,))
    return answer, tuple(picture for _, picture in drawn)


_MAKINGS: Final[Mapping[str, _Making]] = {"grid": _grid, "illustrate": _illustration}
