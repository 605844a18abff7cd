"""Where the water of a frame is: cells of a grid, proposed or named by the person."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.errors import LinnError
from core.frame.findings import WaterArea
from core.frame.flow_axis import flow_of
from core.frame.working import WorkingCopy

Field = NDArray[np.float32]
Mask = NDArray[np.bool_]

#: Rows from the top, columns from the left.
ROWS: Final = "ABCD"
COLUMNS: Final = "1234"
_CELL: Final = re.compile(rf"([{ROWS}])([{COLUMNS}])")

#: Size at which the proposal is made, over that of the working copy.
_SMALL: Final = 1 / 8
#: White water: at least so light [CIE L*], with at most so much colour [CIE C*ab], and so much
#: lighter than what surrounds it. Own rules, looked at on real falls and streams.
_LEAST_LIGHTNESS: Final = 50.0
_MOST_CHROMA: Final = 22.0
_LEAST_STEP: Final = 20.0
#: Sky and smooth walls: relative change within a few pixels below this. Own rule.
_SMOOTH: Final = 0.012
#: Parts of a cell, and of the frame, that are white water where there is some. Own rules.
_CELL_PART: Final = 0.4
_LEAST_PART: Final = 0.03
_MOST_PART: Final = 0.6
#: Below this coherence the axis is not told with a proposal. Own rule.
_LEAST_COHERENCE: Final = 0.2

#: Inside the cells the white is told from the rock in a smoothed picture: smoothing and margin
#: as shares of the frame's short side. Own rule: strands join, a strip well inside stays.
_SMOOTHING: Final = 0.012
_MARGIN: Final = 0.01
#: Rock and water differ at least so much in the root of their light. Own rule.
_ROCK_RATIO: Final = 1.5
#: If less of the cells than this is left, they are all taken. Own rule.
_LEAST_LEFT: Final = 0.12


class UnknownCellError(LinnError):
    """The grid has no such cell.

    Args:
        cell: the name that was given.
    """

    def __init__(self, cell: str) -> None:
        self.cell = cell
        super().__init__(f"no cell {cell!r} in A1 to D4")


def mask_of(cells: Iterable[str], shape: tuple[int, ...]) -> Mask:
    """The pixels of cells of the grid, shape (h, w).

    Args:
        cells: names, A1 (top left) to D4 (bottom right), in any order.
        shape: (h, w, …) of the picture [px].

    Raises:
        UnknownCellError: there is no such cell.
    """
    height, width = shape[:2]
    inside = np.zeros((height, width), np.bool_)
    for cell in cells:
        row, column = _place(cell)
        top, bottom = row * height // 4, (row + 1) * height // 4
        inside[top:bottom, column * width // 4 : (column + 1) * width // 4] = True
    return inside


def _place(cell: str) -> tuple[int, int]:
    found = _CELL.fullmatch(cell)
    if found is None:
        raise UnknownCellError(cell)
    return ROWS.index(found[1]), COLUMNS.index(found[2])


def water_pixels(luminance: Field, cells: Mask, short_side: int) -> Mask:
    """A clean part of the water in cells: the light one where they hold dark rock too.

    Args:
        luminance: linear light, shape (h, w).
        cells: the pixels of the cells, shape (h, w).
        short_side: of the whole frame [px].

    Returns:
        Shape (h, w); never more than `cells`, and never nothing where these hold pixels.

    Source: threshold of least spread within classes (Otsu 1979, from memory); limits own rules.
    """
    margin = max(1, round(_MARGIN * short_side))
    kernel = cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (2 * margin + 1, 2 * margin + 1))
    inner = _eroded(cells, kernel)
    if not inner.any():
        return cells
    tones = cv2.GaussianBlur(np.sqrt(luminance), (0, 0), max(1.0, _SMOOTHING * short_side))
    light = _lighter(np.asarray(tones, np.float32), cells)
    if light is None:
        return inner
    left = _eroded(light & cells, kernel)
    return left if left.sum() >= _LEAST_LEFT * cells.sum() else inner


def _eroded(mask: Mask, kernel: NDArray[np.uint8]) -> Mask:
    return np.asarray(cv2.erode(mask.astype(np.uint8), kernel, borderValue=1), np.bool_)


def _lighter(tones: Field, cells: Mask) -> Mask | None:
    """The lighter of two classes of tone, None where there is but one."""
    values = tones[cells]
    top = max(float(values.max()), 1e-6)
    scaled = np.clip(values * (255 / top), 0, 255).astype(np.uint8)
    level, _ = cv2.threshold(scaled, 0, 255, cv2.THRESH_BINARY | cv2.THRESH_OTSU)
    limit = np.float32(level + 0.5) * np.float32(top / 255)
    above, below = values[values > limit], values[values <= limit]
    if len(above) == 0 or len(below) == 0:
        return None
    if float(above.mean()) < _ROCK_RATIO * float(below.mean()):
        return None
    return np.asarray(tones > limit)


def propose_water(work: WorkingCopy) -> WaterArea | None:
    """Cells that look like white water, and the axis of its flow; None where nothing does.

    A proposal for the person to accept or to change: white walls, snow and cloths can pass for
    water, and dark or clear water is not seen.

    Source: own rule (light, little colour, some texture, much lighter than the rest).
    """
    height, width = work.pixels.shape[:2]
    size = (max(8, round(width * _SMALL)), max(8, round(height * _SMALL)))
    white = _white(work, size)
    if white is None:
        return None
    parts = cv2.resize(white.astype(np.float32), (4, 4), interpolation=cv2.INTER_AREA)
    cells = _joined(parts)
    if not cells:
        return None
    return WaterArea(cells, _axis(work, cells))


def _white(work: WorkingCopy, size: tuple[int, int]) -> Mask | None:
    """White water on a small copy, None when there is too little, too much or no dark rest."""
    small = cv2.resize(work.pixels, size, interpolation=cv2.INTER_AREA)
    lab = cv2.cvtColor(small.astype(np.float32) / 255, cv2.COLOR_RGB2LAB)
    lightness = lab[..., 0]
    level, _ = cv2.threshold(
        np.clip(lightness * 2.55, 0, 255).astype(np.uint8), 0, 255,
        cv2.THRESH_BINARY | cv2.THRESH_OTSU,
    )  # fmt: skip
    limit = max(level / 2.55, _LEAST_LIGHTNESS)
    chroma = np.hypot(lab[..., 1], lab[..., 2])
    white = (lightness > limit) & (chroma < _MOST_CHROMA)
    white &= ~_sky(white, _change(work, size))
    part = float(white.mean())
    if not _LEAST_PART <= part <= _MOST_PART:
        return None
    step = float(lightness[white].mean() - lightness[~white].mean())
    return np.asarray(white) if step >= _LEAST_STEP else None


def _change(work: WorkingCopy, size: tuple[int, int]) -> Field:
    """Relative change of the tones from pixel to pixel, in each pixel of the small copy."""
    half = cv2.resize(work.luminance, None, fx=0.5, fy=0.5, interpolation=cv2.INTER_AREA)
    tones = cv2.GaussianBlur(np.sqrt(half), (0, 0), 1.0)
    energy = cv2.magnitude(
        cv2.Scharr(tones, cv2.CV_32F, 1, 0, scale=1 / 32),
        cv2.Scharr(tones, cv2.CV_32F, 0, 1, scale=1 / 32),
    ) / (tones + np.float32(0.02))
    return np.asarray(cv2.resize(energy, size, interpolation=cv2.INTER_AREA), np.float32)


def _sky(white: Mask, change: Field) -> Mask:
    """Smooth white that touches the top of the frame."""
    smooth = white & (change < _SMOOTH)
    _, labels = cv2.connectedComponents(smooth.astype(np.uint8), connectivity=4)
    top = np.unique(labels[0])
    sky = np.isin(labels, top[top > 0]).astype(np.uint8)
    return np.asarray(cv2.dilate(sky, np.ones((3, 3), np.uint8)), np.bool_)


def _joined(parts: Field) -> tuple[str, ...]:
    """The group of neighbouring cells with the most white, top left first."""
    taken = parts >= _CELL_PART
    count, labels = cv2.connectedComponents(taken.astype(np.uint8), connectivity=8)
    if count < 2:
        return ()
    best = max(range(1, count), key=lambda label: float(parts[labels == label].sum()))
    rows, columns = np.nonzero(labels == best)
    return tuple(f"{ROWS[row]}{COLUMNS[column]}" for row, column in zip(rows, columns, strict=True))


def _axis(work: WorkingCopy, cells: tuple[str, ...]) -> float | None:
    inside = mask_of(cells, work.luminance.shape)
    inside = water_pixels(work.luminance, inside, min(inside.shape))
    rows, columns = np.nonzero(inside)
    box = (slice(rows.min(), rows.max() + 1), slice(columns.min(), columns.max() + 1))
    flow = flow_of(np.sqrt(work.luminance[box]), inside[box])
    sure = bool(flow.coherences) and max(flow.coherences) >= _LEAST_COHERENCE
    return round(flow.axis_deg, 1) if sure else None
