"""From the white of the water to the dark rock: stops, and whether one frame holds them."""

from __future__ import annotations

import math
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.findings import Contrast, WaterArea
from core.frame.kinds import TOLERABLE_WIDTH
from core.frame.pixels import halvings_to, shrunk
from core.frame.report import AreaKind, ClippedArea, Clipping
from core.frame.water_area import mask_of
from core.frame.working import LINEAR_OF_CODE, WorkingCopy
from core.light import HELD_STOPS

#: Between two frames of a bracket [stops]. Common practice.
_STEP_STOPS: Final = 2.0
#: Steps down for lost white, small and large: how far over it is can't be known from a JPEG.
#: Own rules, as those of `room`.
_OVER_STOPS: Final = (2 / 3, 1.0)
_LARGE_SHARE: Final = 0.05
#: How much darker than the darkest that can be told blocked shadows are taken for. Own rule.
_BLOCKED_STOPS: Final = 2.0

#: Averaged to about this long side [px], points of sparkle vanish and the body of the white
#: stays, as in `room`. Own rule.
_BODY_SIDE_PX: Final = 400
#: Brightest part of the water (of the frame, where the water is not known) that is not counted.
#: Own rules.
_WATER_PART: Final = 0.98
_FRAME_PART: Final = 0.995

#: Dark rock is looked for in squares of this side [px of the working copy]. Own rule.
_SQUARE_PX: Final = 16
#: A square shows texture where its light varies by so much over its mean. Wet rock of the rendered
#: scenes varies by 0.1 to 0.4, a smooth shadow by less than 0.05 (own measurement).
_TEXTURE: Final = 0.07
#: Least mean light of a square whose texture can be told from rounding to codes: code 5. Own rule.
_LEAST_LIGHT: Final = float(LINEAR_OF_CODE[5])
#: The darkest rock: so much of what shows texture is darker. Own rule.
_DARKEST_PART: Final = 0.02
#: Part of the frame without anything but black from which the shadows are blocked. Own rule.
_BLOCKED_PART: Final = 0.02
_BRIGHT_KINDS: Final = (AreaKind.SKY_GAP, AreaKind.LAMP)


def contrast_of(
    work: WorkingCopy,
    clipping: Clipping,
    water: WaterArea | None = None,
    *,
    level: int | None = None,
) -> Contrast | None:
    """Contrast of a frame from its white to the dark rock that still shows texture.

    Codes are taken through the sRGB curve (IEC 61966-2-1). A camera's curve is flatter at both
    ends, so that the true contrast is rather larger; say "about", except of a raw file.

    Args:
        work: the frame's working copy.
        clipping: of the frame; sky and lamps are left out of the white.
        water: where the water is; None: the white is looked for in the whole frame.
        level: code from which a pixel is clipped; None: that of `clipping`, else 255.

    Returns:
        None where nothing in the frame shows texture.
    """
    ends = _dark_end(work)
    if ends is None:
        return None
    dark, blocked = ends
    end = level or clipping.level or 255
    code = _white_code(work, clipping, water)
    lost = [area for area in clipping.areas if _is_lost(area)]
    clipped = code >= end or any(area.kind is AreaKind.WHITE_WATER for area in lost)
    white = float(LINEAR_OF_CODE[end if clipped else code])
    stops = max(math.log2(white / dark), 0.0)
    over_stops = _OVER_STOPS[sum(area.share for area in lost) > _LARGE_SHARE] if clipped else 0.0
    under_stops = _BLOCKED_STOPS if blocked else 0.0
    return Contrast(
        white_stops=None if clipped else math.log2(float(LINEAR_OF_CODE[end]) / white),
        stops=stops,
        offsets_stops=_offsets(stops, over_stops, under_stops),
        at_least=clipped or blocked,
    )


def _is_lost(area: ClippedArea) -> bool:
    """White that matters, and may be water."""
    named = area.kind in {AreaKind.WHITE_WATER, AreaKind.UNSURE}
    return named and area.widest >= TOLERABLE_WIDTH


def _white_code(work: WorkingCopy, clipping: Clipping, water: WaterArea | None) -> int:
    """Code of the body of the white; of the brightest channel, since the first to clip counts."""
    halvings = halvings_to(max(work.pixels.shape), _BODY_SIDE_PX)
    small = shrunk(work.pixels, halvings).max(axis=2)
    counted = ~_covered(clipping, small.shape)
    part = _FRAME_PART
    if water is not None and (counted & mask_of(water.cells, small.shape)).any():
        counted &= mask_of(water.cells, small.shape)
        part = _WATER_PART
    if not counted.any():
        return int(small.max())
    return int(np.quantile(small[counted], part, method="lower"))


def _covered(clipping: Clipping, shape: tuple[int, ...]) -> NDArray[np.bool_]:
    """Where sky and lamps are clipped, shape (h, w)."""
    height, width = shape[:2]
    covered = np.zeros((height, width), np.uint8)
    for area in clipping.areas:
        if area.kind in _BRIGHT_KINDS and len(area.contour) > 2:
            corners = np.round(np.array(area.contour) * (width, height)).astype(np.int32)
            cv2.fillPoly(covered, [corners], 1)
    grown = cv2.dilate(covered, np.ones((5, 5), np.uint8))  # the glow at their rims
    return grown.astype(np.bool_)


def _dark_end(work: WorkingCopy) -> tuple[float, bool] | None:
    """Light of the darkest rock with texture, 0 to 1, and whether shadows are blocked."""
    light = work.luminance
    rows, columns = (side // _SQUARE_PX for side in light.shape)
    if min(rows, columns) == 0:
        return None
    whole = light[: rows * _SQUARE_PX, : columns * _SQUARE_PX]
    means = _by_squares(whole, columns, rows)
    spreads = np.sqrt(np.maximum(_by_squares(whole * whole, columns, rows) - means**2, 0))
    shown = (means >= _LEAST_LIGHT) & (spreads >= _TEXTURE * means)
    if not shown.any():
        return None
    blocked = float((means < _LEAST_LIGHT).mean()) > _BLOCKED_PART
    return float(np.quantile(means[shown], _DARKEST_PART)), blocked


def _by_squares(values: NDArray[np.float32], columns: int, rows: int) -> NDArray[np.float32]:
    averaged = cv2.resize(values, (columns, rows), interpolation=cv2.INTER_AREA)
    return np.asarray(averaged, np.float32)


def _offsets(stops: float, over_stops: float, under_stops: float) -> tuple[float, ...]:
    """Frames that hold it all, darkest first [stops from this frame].

    A frame that shows both ends is enough. Else the first one holds the white, and others follow,
    each two stops brighter, until the rock is held.
    """
    if over_stops == 0 and under_stops == 0:
        return (0.0,)
    missing = max(stops + over_stops + under_stops - HELD_STOPS, 0.0)
    more = math.ceil(missing / _STEP_STOPS - 1e-9)
    first = -over_stops
    return tuple(first + _STEP_STOPS * place for place in range(more + 1))
