"""How far the exposure may be pushed, and what the clipping asks for next."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from typing import Final

import numpy as np
from numpy.typing import NDArray

from core.frame.findings import RawExposure
from core.frame.histogram import code_counts, percentile_code
from core.frame.kinds import TOLERABLE_SHARE, TOLERABLE_WIDTH
from core.frame.pixels import halvings_to, shrunk
from core.frame.report import Advice, AreaKind, Box, ClippedArea, Clipping, FrameReport
from core.frame.srgb import linear_of

#: Averaged to about this long side [px], points of sparkle vanish in what surrounds them, and the
#: body of the brightest thing stays. Own rule.
_BODY_SIDE_PX: Final = 400
#: Brightest part of the frame that may be pushed over the aim. Own rule.
_BODY_SHARE: Final = 0.995
#: Code to which the brightest body may be pushed: just below the first that counts as clipped,
#: with a little to spare, since white that touches the end prints as blank paper. Own rule.
_AIM_CODE: Final = 245
#: More room than this is not promised: the darker a frame, the less its brightest body need be
#: the water, and the less a camera's tone curve is like sRGB. Own rule.
_MOST_ROOM_STOPS: Final = 2.0
#: Room that is told of a raw at most [stops]; further down the noise of black decides. Own rule.
MOST_RAW_STOPS: Final = 6.0
#: Less than a third of a stop, one click of most cameras, is no room to speak of.
_CLICK_STOPS: Final = 1 / 3

#: A smaller area that could be this or that is not worth a question. Own rule.
_WORTH_ASKING_SHARE: Final = 2e-4

# Steps down by kind and size. How far over an area is cannot be told from a JPEG (measured: a
# guess is as good), so the step is fixed and the next frame tells. Common practice for a third
# and for pulling a patch over 1 % of the long side in all channels; the amounts are own rules.
_STEP_SMALL_STOPS: Final = 1 / 3
_STEP_PATCH_STOPS: Final = 2 / 3
_STEP_SHEET_STOPS: Final = 1.0
_PATCH_WIDTH: Final = 0.01
_SHEET_SHARE: Final = 0.05
_CHANNELS: Final = 3
#: With this part of it white that may be anything, a frame is too bright, and so large a step
#: down comes nearest to one that can be judged. Own rules.
_LOST_SHARE: Final = 0.6
_STEP_LOST_STOPS: Final = 2.0


def is_capped(report: FrameReport) -> bool:
    """Whether a frame has at least the room that is told, and maybe much more."""
    most = MOST_RAW_STOPS if report.raw is not None else _MOST_ROOM_STOPS
    room_stops = report.room_stops
    return room_stops is not None and room_stops - (report.preview_over_stops or 0.0) >= most


def shows_nothing(report: FrameReport) -> bool:
    """Whether a frame is dark or grey without any detail: a cap, fogged glass, or no light."""
    if report.sharpness is None or report.contrast is not None or not is_capped(report):
        return False
    return all(width is None for width in report.sharpness.thirds)


def is_lost(report: FrameReport) -> bool:
    """Whether a frame is so bright that nothing in it says by how much."""
    return report.room_stops is not None and report.room_stops <= -_STEP_LOST_STOPS


def room_and_advice(
    clipping: Clipping,
    brightest: NDArray[np.uint8],
    raw: RawExposure | None = None,
) -> tuple[float | None, Advice]:
    """Room to the right and what to do next.

    White water decides first: it gives a step down even when a gap to the sky is clipped too.
    Then come areas that could be water or sky (`ASK`, or a large step down where most of the frame
    is clipped), then the sky (`REFRAME`); both leave the room open. Sparkle counts only when there
    is a lot of it. A lamp or the sun may clip. With nothing left, the room is measured.

    Args:
        clipping: of the frame.
        brightest: the largest code of each pixel, shape (H, W).
        raw: what the photosites say, when the frame is a raw file: its room is the sensor's own.

    Returns:
        Stops, positive: room, 0 to 2 (from a raw 0 to 6); negative: the step down that is
        advised; None: can't be said. And the advice that goes with it.
    """
    deciding = [area for area in clipping.areas if _matters(area)]
    kinds = {area.kind for area in deciding}
    if AreaKind.WHITE_WATER in kinds:
        return -_step_down(deciding), Advice.DARKER
    if AreaKind.UNSURE in kinds:
        unsure = sum(area.share for area in deciding if area.kind is AreaKind.UNSURE)
        lost = unsure >= _LOST_SHARE
        return (-_STEP_LOST_STOPS, Advice.DARKER) if lost else (None, Advice.ASK)
    if AreaKind.SKY_GAP in kinds:
        return None, Advice.REFRAME
    if AreaKind.SPARKLE in kinds:
        return -_STEP_SMALL_STOPS, Advice.DARKER
    if raw is not None and AreaKind.LAMP not in kinds:  # a sensor's body may be the lamp
        room_stops = min(raw.room_stops.values())
    else:
        lamps = [area.box for area in clipping.areas if area.kind is AreaKind.LAMP]
        room_stops = measured_room_stops(brightest, lamps)
    return room_stops, Advice.BRIGHTER if room_stops >= _CLICK_STOPS else Advice.KEEP


def as_in_raw(report: FrameReport, preview_over_stops: float) -> FrameReport:
    """The report of a camera's own picture, with the room that its raw has.

    Args:
        report: of a picture that is no raw.
        preview_over_stops: by how much this camera's pictures clip before its sensor does
            [stops, 0 or more], as one of its raws has shown.

    Returns:
        With more room, or a smaller step down; white water that the picture has lost and the
        raw probably holds is left as it is.
    """
    if report.room_stops is None:
        return report
    room_stops, advice = report.room_stops + preview_over_stops, report.advice
    if advice is Advice.DARKER and room_stops > -_CLICK_STOPS / 2:
        room_stops, advice = 0.0, Advice.KEEP
    elif advice is Advice.KEEP and room_stops >= _CLICK_STOPS:
        advice = Advice.BRIGHTER
    return replace(
        report, room_stops=room_stops, advice=advice, preview_over_stops=preview_over_stops
    )


def measured_room_stops(brightest: NDArray[np.uint8], lamps: Sequence[Box] = ()) -> float:
    """Room above the brightest body of a frame in which nothing that matters is clipped.

    The largest code of each pixel is averaged over blocks, so that sparkle vanishes; the body is
    what 99.5 % of the blocks do not exceed. Its distance from code 245 is taken through the sRGB
    curve (IEC 61966-2-1). Camera curves are flatter up there, so the true room is rather
    larger; measured series with true steps of 1 stop read 0.9 to 1.4 stops that way. Say "about".

    Args:
        brightest: the largest code of each pixel, shape (H, W).
        lamps: boxes that are not looked at, with what glows around them.

    Returns:
        0 to 2 [stops].
    """
    small = shrunk(brightest, halvings_to(max(brightest.shape), _BODY_SIDE_PX))
    if lamps:
        small = small.copy()
    for box in lamps:
        small[_glow_around(box, small.shape)] = 0
    body_code = percentile_code(code_counts(small), _BODY_SHARE)
    room_stops = math.log2(_linear(_AIM_CODE) / _linear(max(body_code, 1)))
    return min(max(room_stops, 0.0), _MOST_ROOM_STOPS)


def _glow_around(box: Box, shape: tuple[int, ...]) -> tuple[slice, slice]:
    """Rows and columns of a box three times as wide and high."""
    height, width = shape[:2]
    rows = slice(
        max(0, math.floor((box.top - box.height) * height)),
        math.ceil((box.top + 2 * box.height) * height),
    )
    columns = slice(
        max(0, math.floor((box.left - box.width) * width)),
        math.ceil((box.left + 2 * box.width) * width),
    )
    return rows, columns


def _matters(area: ClippedArea) -> bool:
    """Whether an area is more than what does no harm."""
    if area.share >= TOLERABLE_SHARE:
        return True
    if area.kind is AreaKind.UNSURE and area.widest >= TOLERABLE_WIDTH:
        return area.share >= _WORTH_ASKING_SHARE
    return area.kind is AreaKind.WHITE_WATER and area.widest >= TOLERABLE_WIDTH


def _step_down(deciding: list[ClippedArea]) -> float:
    """Step for white water [stops, positive]."""
    water = [area for area in deciding if area.kind is AreaKind.WHITE_WATER]
    whole = [area for area in water if len(area.channels) == _CHANNELS]
    if sum(area.share for area in whole) > _SHEET_SHARE:
        return _STEP_SHEET_STOPS
    if any(area.widest > _PATCH_WIDTH for area in whole):
        return _STEP_PATCH_STOPS
    return _STEP_SMALL_STOPS


def _linear(code: int) -> float:
    """Linear light of a code, 0 to 1."""
    return float(linear_of(np.asarray(code / 255)))
