"""Frames of one view on one of them: where the water, the leaves and the still parts are."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.errors import LinnError
from core.frame.align import Alignment, align
from core.frame.comparison import Misfit
from core.frame.report import FrameReport
from core.frame.water_area import COLUMNS, ROWS, mask_of, water_pixels
from core.frame.working import WorkingCopy
from core.water import Look, look_of

Field = NDArray[np.float32]
Mask = NDArray[np.bool_]
Pixels = NDArray[np.uint8]

#: Fewest frames that are laid on each other, most that are compared, and most that are averaged.
#: Own rules: a ladder has three to six.
FEWEST: Final = 2
MOST: Final = 6
MOST_AVERAGED: Final = 12

#: Detail that correlates so well stands still; so badly, it moved. Own rules.
_STILL: Final = 0.6
_MOVED: Final = 0.35
#: What moved is water where it is so light [CIE L*] and has so little colour [CIE C*ab]. Own rule.
_LEAST_LIGHTNESS: Final = 35.0
_MOST_CHROMA: Final = 25.0
#: Part of a cell that moved, in a cell with water. Own rule.
_CELL_PART: Final = 0.03
#: Leaves: green or yellow-green [CIE a*, b*], with detail. Own rule, looked at on real frames.
_MOST_A: Final = -3.0
_LEAST_B: Final = 4.0
#: Fewer pixels than this part of the frame are no water, no leaves, no still part. Own rule.
LEAST_PART: Final = 0.004
#: From this code on a channel counts as clipped: working copies are averages. Own rule.
CLIPPED_CODE: Final = 250


class NumberOfFramesError(LinnError):
    """There are too few or too many frames.

    Args:
        number: of the frames that were given.
        most: that can be.
    """

    def __init__(self, number: int, most: int) -> None:
        self.number = number
        self.most = most
        super().__init__(f"{number} frames, not {FEWEST} to {most}")


@dataclass(frozen=True)
class MeasuredFrame:
    """A frame that was measured: its working copy, its report, and what the walk knows.

    `share` is the streak over the side of the frame along the flow by speed, time and distance,
    above 0; None: not known. `bits` is a digest of the full-size pixels, b"" when not made.
    """

    work: WorkingCopy
    report: FrameReport
    share: float | None = None
    bits: bytes = b""

    @property
    def shutter_s(self) -> float | None:
        """Exposure time [s]; None where the file says none."""
        return self.report.metadata.settings.shutter_s

    @property
    def look(self) -> Look | None:
        """The look of its water: by its share, else as the picture alone shows it."""
        if self.share is not None:
            return look_of(self.share)
        return self.report.look.look if self.report.look else None


@dataclass(frozen=True)
class Laid:
    """Frames laid on one of them.

    `motions` holds one entry a frame: how it lies on the reference, or why not. `pixels` are
    the working copies as laid, shape (h, w, 3) of the reference's working copy, None for misfits.
    The masks, shape (h, w), lie where all frames reach: `water`, `still` and `leaves` never
    overlap. `cells` are those that the water was taken from, empty: where the frames differ.
    """

    reference: int
    motions: tuple[Alignment | Misfit, ...]
    pixels: tuple[Pixels | None, ...]
    water: Mask
    still: Mask
    leaves: Mask
    #: Where all frames reach, and the whole of the water's cells.
    seen: Mask
    inside: Mask
    cells: tuple[str, ...]

    @property
    def shown(self) -> dict[int, Pixels]:
        """The pixels of the frames that lie on each other, the reference among them."""
        return {place: one for place, one in enumerate(self.pixels) if one is not None}

    @property
    def together(self) -> tuple[int, ...]:
        """The places of `shown`, in their order."""
        return tuple(self.shown)


def lay(
    frames: Sequence[MeasuredFrame], cells: Sequence[str] | None = None, most: int = MOST
) -> Laid:
    """Lay frames of one view on that of them on which most of the others lie.

    Args:
        frames: two to `most`.
        cells: where the person says that the water is, A1 to D4; None or none: by the reports,
            or where the frames differ.
        most: frames.

    Raises:
        NumberOfFramesError: there are fewer than two or more than `most` frames.
        UnknownCellError: the grid has no such cell.
    """
    if not FEWEST <= len(frames) <= most:
        raise NumberOfFramesError(len(frames), most)
    chosen = tuple(cells) if cells else _reported_cells(frames)
    reference, motions = _best_reference(frames, chosen)
    shape = frames[reference].work.pixels.shape
    pixels = tuple(
        None if isinstance(motion, Misfit) else _laid_pixels(frame.work, motion, shape)
        for frame, motion in zip(frames, motions, strict=True)
    )
    seen, still, moved = _agreement(motions, reference, shape)
    work = frames[reference].work
    chosen = chosen or _moving_cells(work, moved & seen)
    inside = mask_of(chosen, shape)
    water = inside if not chosen else water_pixels(work.luminance, inside, min(shape[:2]))
    leaves = green(work.lab) & seen & ~inside
    return Laid(
        reference=reference,
        motions=motions,
        pixels=pixels,
        water=water & seen,
        still=still & ~inside & ~leaves & seen,
        leaves=leaves,
        seen=seen,
        inside=inside,
        cells=chosen,
    )


def _reported_cells(frames: Sequence[MeasuredFrame]) -> tuple[str, ...]:
    """The person's cells before a proposal."""
    areas = [frame.report.water for frame in frames if frame.report.water is not None]
    areas.sort(key=lambda area: not area.by_person)
    return areas[0].cells if areas else ()


def _best_reference(
    frames: Sequence[MeasuredFrame], cells: tuple[str, ...]
) -> tuple[int, tuple[Alignment | Misfit, ...]]:
    """The first frame, or, if less than half of the others lie on it, the best of all."""
    best, found = 0, _on(frames, 0, cells)
    for place in range(1, len(frames)):
        if 2 * _fitting(found) > len(frames):
            break
        other = _on(frames, place, cells)
        if _fitting(other) > _fitting(found):
            best, found = place, other
    return best, found


def _fitting(motions: tuple[Alignment | Misfit, ...]) -> int:
    return sum(isinstance(motion, Alignment) for motion in motions)


def _on(
    frames: Sequence[MeasuredFrame], reference: int, cells: tuple[str, ...]
) -> tuple[Alignment | Misfit, ...]:
    first = frames[reference].work
    moving = mask_of(cells, first.pixels.shape) if cells else None
    if moving is not None and moving.all():
        moving = None
    unmoved = Alignment(np.eye(3), 1.0, np.zeros((1, 1), np.float32))
    return tuple(
        unmoved if place == reference else align(first, frame.work, moving)
        for place, frame in enumerate(frames)
    )


def _laid_pixels(work: WorkingCopy, motion: Alignment, shape: tuple[int, ...]) -> Pixels:
    matrix = motion.between(shape, work.pixels.shape)
    if np.allclose(matrix, np.eye(3)) and work.pixels.shape == shape:
        return work.pixels
    way = cv2.INTER_CUBIC | cv2.WARP_INVERSE_MAP
    return np.asarray(cv2.warpPerspective(work.pixels, matrix, shape[1::-1], flags=way), np.uint8)


def _agreement(
    motions: tuple[Alignment | Misfit, ...], reference: int, shape: tuple[int, ...]
) -> tuple[Mask, Mask, Mask]:
    """Where all frames reach, where all agree, and where one doesn't; shape (h, w) each."""
    height, width = shape[:2]
    seen = np.ones((height, width), np.bool_)
    least = np.ones((height, width), np.float32)
    for place, motion in enumerate(motions):
        if isinstance(motion, Misfit) or place == reference:
            continue
        # A place without detail tells nothing: it neither stands still nor moves.
        known = np.nan_to_num(motion.correlation, nan=0.5)
        least = np.minimum(least, cv2.resize(known, (width, height)))
        seen &= _reach(motion, shape)
    return seen, least > _STILL, least < _MOVED


def _reach(motion: Alignment, shape: tuple[int, ...]) -> Mask:
    """Where the other frame has a picture too, less a margin."""
    there = np.ones(shape[:2], np.uint8)
    way = cv2.INTER_NEAREST | cv2.WARP_INVERSE_MAP
    moved = cv2.warpPerspective(there, motion.between(shape, shape), shape[1::-1], flags=way)
    return np.asarray(cv2.erode(moved, np.ones((5, 5), np.uint8), borderValue=1), np.bool_)


def _moving_cells(work: WorkingCopy, moved: Mask) -> tuple[str, ...]:
    """Cells in which something moved that is light and without colour; () when nothing did."""
    lab = work.lab
    pale = np.hypot(lab[..., 1], lab[..., 2]) < _MOST_CHROMA
    found = moved & pale & (lab[..., 0] > _LEAST_LIGHTNESS)
    parts = cv2.resize(found.astype(np.float32), (4, 4), interpolation=cv2.INTER_AREA)
    least = max(_CELL_PART, float(parts.max()) / 4)
    rows, columns = np.nonzero(parts >= least)
    return tuple(f"{ROWS[row]}{COLUMNS[column]}" for row, column in zip(rows, columns, strict=True))


def green(lab: Field) -> Mask:
    """Where a picture is green or yellow-green, shape (h, w).

    Args:
        lab: CIE L*a*b*, shape (h, w, 3).
    """
    smooth = cv2.blur(lab, (5, 5))
    return np.asarray((smooth[..., 1] < _MOST_A) & (smooth[..., 2] > _LEAST_B), np.bool_)
