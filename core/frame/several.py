"""Several frames of one view, from their pixels to what was found and the pictures to show it."""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.average import average_frames
from core.frame.compare import compare_frames
from core.frame.comparison import Comparison, FrameMeasures, FramePair, Misfit
from core.frame.crops import MOST_GAIN_STOPS, Piece, Sheet, cut, fullest_window
from core.frame.illustrate import TIMES_S, illustrate
from core.frame.laid import MOST_AVERAGED, Laid, MeasuredFrame, lay
from core.frame.report import FrameReport
from core.frame.wet_glass import wet_glass
from core.frame.working import working_copy
from core.water import Look

Pixels = NDArray[np.uint8]

#: Width and height of what is cut out of two frames, and of a strip of more [px of the full
#: size]. Own rule: a sheet is 1080 px wide, the width of a phone's screen, and shows them as they
#: are.
_CROP_PX: Final = (528, 720)
_SHEET_PX: Final = 1080
_STRIP_HEIGHT_PX: Final = 900
#: Long side of a whole frame on a sheet [px].
_WHOLE_PX: Final = 1080
#: Gains below this are left alone [stops]: nobody sees them.
_LEAST_GAIN: Final = 0.05


@dataclass(frozen=True)
class Wishes:
    """What is known or wished for; all may be left out.

    `share_per_s` is how far the water runs in a second over the side of the frame along the flow
    [1/s], least and most. `aim` is the share at which the wished look aims, None: the usual one.
    `leaf` is the place of the short frame for the leaves.
    """

    wished: Look | None = None
    aim: float | None = None
    times_s: tuple[float, ...] = ()
    cells: tuple[str, ...] = ()
    axis_deg: float | None = None
    share_per_s: tuple[float, float] | None = None
    leaf: int | None = None


@dataclass(frozen=True)
class Several:
    """What was found, and the pictures to show it."""

    comparison: Comparison
    sheets: tuple[Sheet, ...]


def compare_several(
    reports: Sequence[FrameReport], full: Sequence[Pixels], wishes: Wishes
) -> Several:
    """Compare two to six frames.

    Args:
        reports: of each frame.
        full: upright pixels of each, shape (H, W, 3), red, green, blue.
        wishes: what is known or wished for.

    Raises:
        NumberOfFramesError: there are fewer than two or more than six frames.
        UnknownCellError: the grid has no such cell.
    """
    frames = _measured(reports, full, wishes)
    laid = lay(frames, wishes.cells)
    found = compare_frames(
        frames, wished=wishes.wished, aim=wishes.aim, leaf=wishes.leaf, laid=laid
    )
    pairs = tuple(_with_spots(pair, frames) for pair in found.pairs)
    return Several(replace(found, pairs=pairs), _sheets(found, laid, full))


def _with_spots(pair: FramePair, frames: Sequence[MeasuredFrame]) -> FramePair:
    """What two frames of other views share is on the glass."""
    if pair.misfit is not Misfit.OTHER_VIEW:
        return pair
    spots = wet_glass(frames[pair.first].work, frames[pair.second].work)
    return replace(pair, shared_spots=len(spots))


def average_several(
    reports: Sequence[FrameReport], full: Sequence[Pixels], wishes: Wishes
) -> Several:
    """Average two to twelve frames; arguments and errors as of `compare_several`."""
    frames = _measured(reports, full, wishes)
    laid = lay(frames, wishes.cells, MOST_AVERAGED)
    average = average_frames(frames, laid, full)
    measures = tuple(_plain_measures(frame) for frame in frames)
    found = Comparison(measures, water_cells=laid.cells, average=average.made)
    if average.pixels is None:
        return Several(found, ())
    one = Piece(_whole(full[laid.reference]), laid.reference, measures[laid.reference].shutter_s)
    all_together = Piece(_whole(average.pixels), None, average.made.total_s)
    sheets = [Sheet("average", (one, all_together))]
    window = fullest_window(laid.water, average.pixels.shape, _CROP_PX, laid.seen)
    if window is not None:
        left, top, width, height = window
        area = (slice(top, top + height), slice(left, left + width))
        pieces = (
            replace(one, pixels=full[laid.reference][area]),
            replace(all_together, pixels=average.pixels[area]),
        )
        sheets.append(Sheet("water", pieces))
    return Several(found, tuple(sheets))


def illustrate_one(report: FrameReport, full: Pixels, wishes: Wishes) -> Several:
    """Illustrate other times of one frame.

    Args:
        report: of the frame.
        full: its upright pixels, shape (H, W, 3).
        wishes: what is known or wished for.

    Raises:
        OutOfDomainError: a time or a share is not positive and finite.
        UnknownCellError: the grid has no such cell.
    """
    frame = _measured([report], [full], wishes)[0]
    drawn = illustrate(
        frame,
        share_per_s=wishes.share_per_s,
        times_s=wishes.times_s or TIMES_S,
        cells=wishes.cells,
        axis_deg=wishes.axis_deg,
    )
    cells = wishes.cells or (report.water.cells if report.water else ())
    found = Comparison((_plain_measures(frame),), water_cells=cells, illustration=drawn.made)
    if not drawn.strips:
        return Several(found, ())
    times = [one.shutter_s for one in drawn.made.times]
    pieces = [Piece(drawn.strips[0], 0, report.metadata.settings.shutter_s)]
    pieces += [
        Piece(strip, None, time) for strip, time in zip(drawn.strips[1:], times, strict=True)
    ]
    return Several(found, (Sheet("illustration", tuple(pieces)),))


def _measured(
    reports: Sequence[FrameReport], full: Sequence[Pixels], wishes: Wishes
) -> list[MeasuredFrame]:
    return [
        MeasuredFrame(
            working_copy(pixels),
            report,
            _share(report, wishes.share_per_s),
            hashlib.blake2b(np.ascontiguousarray(pixels).data, digest_size=16).digest(),
        )
        for report, pixels in zip(reports, full, strict=True)
    ]


def _share(report: FrameReport, share_per_s: tuple[float, float] | None) -> float | None:
    shutter_s = report.metadata.settings.shutter_s
    if share_per_s is None or shutter_s is None:
        return None
    return float((share_per_s[0] * share_per_s[1]) ** 0.5 * shutter_s)


def _plain_measures(frame: MeasuredFrame) -> FrameMeasures:
    """What a frame's own report says."""
    return FrameMeasures(
        frame.shutter_s,
        None,
        frame.report.clipping.share,
        share=frame.share,
        look=frame.report.look.look if frame.report.look else None,
    )


def _sheets(found: Comparison, laid: Laid, full: Sequence[Pixels]) -> tuple[Sheet, ...]:
    """Water, leaves and the whole; two frames in the order they were named, more as a ladder."""
    together = laid.together
    times = [one.shutter_s for one in found.frames]
    whole = Sheet(
        "whole",
        tuple(Piece(_whole(pixels), place, times[place]) for place, pixels in enumerate(full)),
    )
    if len(together) < 2:
        return (whole,)
    order = together if len(together) == 2 or not found.order else found.order
    size = _CROP_PX
    if len(order) > 2:
        size = (_SHEET_PX // len(order) - 4, _STRIP_HEIGHT_PX)
    gains = _gains(found, len(full))
    sheets = []
    for shows, where in (("water", laid.water), ("leaves", laid.leaves)):
        window = fullest_window(where, full[laid.reference].shape, size, laid.seen)
        if window is not None:
            sheets.append(cut(shows, laid, full, window, times, gains, order))
    return (*sheets, whole)


def _gains(found: Comparison, number: int) -> list[float]:
    """What makes each frame as bright as the reference, within bounds."""
    gains = [0.0] * number
    for pair in found.pairs:
        stops = pair.measured_stops or 0.0
        if _LEAST_GAIN < abs(stops) <= MOST_GAIN_STOPS:
            gains[pair.second] = -stops
    return gains


def _whole(pixels: Pixels) -> Pixels:
    """The frame at the size at which a sheet shows it; small ones stay."""
    height, width = pixels.shape[:2]
    scale = min(1.0, _WHOLE_PX / max(height, width))
    size = (max(1, round(width * scale)), max(1, round(height * scale)))
    return np.asarray(cv2.resize(pixels, size, interpolation=cv2.INTER_AREA), np.uint8)
