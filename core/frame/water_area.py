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
from core.frame.working import WorkingCopy, box_of

Field = NDArray[np.float32]
Mask = NDArray[np.bool_]

#: Rows from the top, columns from the left.
ROWS: Final = "ABCD"
COLUMNS: Final = "1234"
_CELL: Final = re.compile(rf"([{ROWS}])([{COLUMNS}])")

#: Size at which the proposal is made, over that of the working copy. Own rule.
_SMALL: Final = 1 / 8
#: White water: at least so light [CIE L*], with at most so much colour [CIE C*ab] and yellow
#: (skin, sandstone; b*), and so much lighter than what surrounds it. Own rules, looked at on real
#: falls and streams.
_LEAST_LIGHTNESS: Final = 50.0
_MOST_CHROMA: Final = 22.0
_MOST_YELLOW: Final = 13.0
_LEAST_STEP: Final = 17.0
#: Sky: white that reaches the top of the frame over so much of its width without an edge, which
#: is a larger relative change within a few pixels than this. Own rules.
_SKY_WIDTH: Final = 0.2
_EDGE: Final = 0.035
#: Parts of the frame that are white water where there is some. Own rules.
_LEAST_PART: Final = 0.02
_MOST_PART: Final = 0.6
#: How much of a cell is white, the whitest counting most, where the cell is proposed. Own rule.
_CELL_PART: Final = 0.2
#: The whitest of the white: all but one in fifty is darker.
_WHITEST: Final = 0.98
#: Below this coherence the axis is not told with a proposal. Own rule.
_LEAST_COHERENCE: Final = 0.1

#: Inside the cells the white is told from the rock in a smoothed picture: smoothing and margin
#: as shares of the frame's short side, and the size it is done at. Own rules: strands join, a
#: strip well inside stays.
_SMOOTHING: Final = 0.012
_MARGIN: Final = 0.01
_REDUCED: Final = 4
#: Rock and water differ at least so much in the root of their light. Own rule.
_ROCK_RATIO: Final = 1.35
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
    size = (max(1, cells.shape[1] // _REDUCED), max(1, cells.shape[0] // _REDUCED))
    light = np.asarray(cv2.resize(luminance, size, interpolation=cv2.INTER_AREA), np.float32)
    named = cv2.resize(cells.astype(np.uint8), size, interpolation=cv2.INTER_AREA) > 0
    margin = max(1, round(_MARGIN * short_side / _REDUCED))
    sigma = max(0.5, _SMOOTHING * short_side / _REDUCED)
    tones = np.asarray(cv2.GaussianBlur(np.sqrt(light), (0, 0), sigma), np.float32)
    whole = _eroded(named, margin)
    left = _eroded(_lighter(tones, named), margin)
    if left.any():
        left = _largest(left)
    chosen = left if left.sum() >= _LEAST_LEFT * named.sum() else whole
    full = cv2.resize(chosen.astype(np.uint8), cells.shape[::-1], interpolation=cv2.INTER_NEAREST)
    found = cells & (full > 0)
    return found if found.any() else cells


def _eroded(mask: Mask, margin: int) -> Mask:
    """The mask without a margin [px], which is kept at the frame's own border."""
    kernel = cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (2 * margin + 1, 2 * margin + 1))
    return np.asarray(cv2.erode(mask.astype(np.uint8), kernel, borderValue=1), np.bool_)


def _largest(mask: Mask) -> Mask:
    """The largest connected part."""
    _, labels, boxes, _ = cv2.connectedComponentsWithStats(mask.astype(np.uint8))
    return np.asarray(labels == 1 + int(np.argmax(boxes[1:, cv2.CC_STAT_AREA])))


def _lighter(tones: Field, named: Mask) -> Mask:
    """The lighter of two classes of tone; all that is named where there is but one."""
    values = tones[named]
    top = max(float(values.max(initial=0)), 1e-6)
    scaled = np.clip(values * (255 / top), 0, 255).astype(np.uint8)
    level, _ = cv2.threshold(scaled, 0, 255, cv2.THRESH_BINARY | cv2.THRESH_OTSU)
    limit = np.float32(level + 0.5) * np.float32(top / 255)
    above, below = values[values > limit], values[values <= limit]
    if above.size and below.size and float(above.mean()) >= _ROCK_RATIO * float(below.mean()):
        return np.asarray(named & (tones > limit))
    return named


def propose_water(work: WorkingCopy) -> WaterArea | None:
    """Cells that look like white water, and the axis of its flow; None where nothing does.

    A proposal for the person to accept or to change: white walls, snow and cloths can pass for
    water, and dark or clear water is not seen.

    Source: own rule (light, little colour, no sky, much lighter than the rest).
    """
    height, width = work.pixels.shape[:2]
    white = _white(work, (max(8, round(width * _SMALL)), max(8, round(height * _SMALL))))
    if white is None:
        return None
    parts = cv2.resize(white, (4, 4), interpolation=cv2.INTER_AREA)
    cells = _joined(np.asarray(parts, np.float32))
    return WaterArea(cells, _axis(work, cells)) if cells else None


def _white(work: WorkingCopy, size: tuple[int, int]) -> Field | None:
    """How white the water is on a small copy, 0 to 1; None without white or a darker rest."""
    small = cv2.resize(work.pixels, size, interpolation=cv2.INTER_AREA)
    lab = cv2.cvtColor(small.astype(np.float32) / 255, cv2.COLOR_RGB2LAB)
    lightness = np.asarray(lab[..., 0], np.float32)
    codes = np.clip(lightness * 2.55, 0, 255).astype(np.uint8)
    level, _ = cv2.threshold(codes, 0, 255, cv2.THRESH_BINARY | cv2.THRESH_OTSU)
    limit = max(level / 2.55, _LEAST_LIGHTNESS)
    light = lightness > limit
    white = light & (np.hypot(lab[..., 1], lab[..., 2]) < _MOST_CHROMA)
    white &= (lab[..., 2] < _MOST_YELLOW) & ~_sky(light, _change(work, size))
    if not _LEAST_PART <= float(white.mean()) <= _MOST_PART:
        return None
    if float(lightness[white].mean() - lightness[~white].mean()) < _LEAST_STEP:
        return None
    most = float(np.quantile(lightness[white], _WHITEST))
    return np.asarray(white * np.clip((lightness - limit) / max(most - limit, 1), 0, 1), np.float32)


def _change(work: WorkingCopy, size: tuple[int, int]) -> Field:
    """Relative change of the tones from pixel to pixel, in each pixel of the small copy."""
    half = cv2.resize(work.luminance, None, fx=0.5, fy=0.5, interpolation=cv2.INTER_AREA)
    tones = cv2.GaussianBlur(np.sqrt(half), (0, 0), 1.0)
    energy = cv2.magnitude(
        cv2.Scharr(tones, cv2.CV_32F, 1, 0, scale=1 / 32),
        cv2.Scharr(tones, cv2.CV_32F, 0, 1, scale=1 / 32),
    ) / (tones + np.float32(0.02))
    return np.asarray(cv2.resize(energy, size, interpolation=cv2.INTER_AREA), np.float32)


def _sky(light: Mask, change: Field) -> Mask:
    """Light that goes on from the top of the frame to the first edge."""
    even = (light & (change < _EDGE)).astype(np.uint8)
    count, labels = cv2.connectedComponents(even, connectivity=4)
    contact = np.bincount(labels[0], minlength=count)
    wide = np.flatnonzero(contact >= _SKY_WIDTH * light.shape[1])
    sky = np.isin(labels, wide[wide > 0]).astype(np.uint8)
    return np.asarray(cv2.dilate(sky, np.ones((3, 3), np.uint8)), np.bool_)


def _joined(parts: Field) -> tuple[str, ...]:
    """The whitest group of neighbouring cells that is not in the top row alone, in order."""
    taken = (parts >= _CELL_PART).astype(np.uint8)
    count, labels = cv2.connectedComponents(taken, connectivity=8)
    groups = [label for label in range(1, count) if (labels[1:] == label).any()]
    if not groups:
        return ()
    best = max(groups, key=lambda label: float(parts[labels == label].sum()))
    rows, columns = np.nonzero(labels == best)
    return tuple(f"{ROWS[row]}{COLUMNS[column]}" for row, column in zip(rows, columns, strict=True))


def _axis(work: WorkingCopy, cells: tuple[str, ...]) -> float | None:
    """Axis of the flow in the cells, at half the size of the working copy."""
    half = cv2.resize(work.luminance, None, fx=0.5, fy=0.5, interpolation=cv2.INTER_AREA)
    luminance = np.asarray(half, np.float32)
    inside = water_pixels(luminance, mask_of(cells, luminance.shape), min(luminance.shape))
    box = box_of(inside)
    flow = flow_of(np.sqrt(luminance[box]), inside[box])
    return round(flow.axis_deg, 1) if flow.coherence >= _LEAST_COHERENCE else None
