"""What the photosites of a raw say: room, clipped shares, and how far its preview is off."""

from __future__ import annotations

import math
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.findings import RawExposure
from core.frame.pixels import halvings_to
from core.frame.raw import COLOURS, Plane, RawFrame
from core.frame.raw_saturation import Saturation

#: Averaged to about this long side [px]; of four neighbours there the darkest counts, so that a
#: point of sparkle vanishes in what surrounds it. Own rule.
_BODY_SIDE_PX: Final = 800
#: What this part of the blocks does not exceed is the brightest body: sparkle of 0.1 % of the
#: frame does no harm (own rule).
_BODY_SHARE: Final = 0.999
#: Room that is told at most [stops]; further down the noise of black decides. Own rule.
_MOST_ROOM_STOPS: Final = 6.0
#: The preview's clipped share must lie between these to be compared: below, single pixels
#: decide, above, hardly anything is left to compare. Own rules.
_PREVIEW_SHARES: Final = (2e-4, 0.6)
#: A smaller preview averages small clipped places away [px, long side]. Own rule.
_SMALLEST_PREVIEW_PX: Final = 640
#: Share of the frame that must lie within a sixth of a stop of where the preview clips: between
#: a glint and the water the answer could be anything. Own rule.
_NEARLY: Final = 1e-3
_SIXTH: Final = 2 ** (1 / 6)


def raw_exposure(
    frame: RawFrame,
    preview: NDArray[np.uint8] | None = None,
    preview_level: int = 252,
) -> RawExposure:
    """Room to the right and clipped share of each colour, from the photosites.

    Args:
        frame: unpacked.
        preview: the decoded embedded picture, as stored (not turned), shape (H, W, 3).
        preview_level: code from which its pixels count as clipped.
    """
    return RawExposure(
        room_stops={
            colour: _room_stops(frame.planes[colour], frame.saturation[colour])
            for colour in COLOURS
        },
        clipped={
            colour: _clipped(frame, colour) / int(frame.counts[colour].sum()) for colour in COLOURS
        },
        preview_over_stops=None if preview is None else _over(frame, preview, preview_level),
        saturation_found=all(frame.saturation[colour].found for colour in COLOURS),
    )


def clipped_share(frame: RawFrame) -> float:
    """Share of all photosites that are saturated, 0 to 1."""
    clipped = sum(_clipped(frame, colour) for colour in COLOURS)
    return clipped / sum(int(frame.counts[colour].sum()) for colour in COLOURS)


def _clipped(frame: RawFrame, colour: str) -> int:
    """How many photosites of a colour are saturated."""
    lowest = math.ceil(frame.saturation[colour].clipped_from)
    return int(frame.counts[colour][lowest:].sum())


def _room_stops(planes: tuple[Plane, ...], saturation: Saturation) -> float:
    """Distance of the brightest body of a colour from saturation [stops]."""
    levels = []
    for plane in planes:
        halvings = halvings_to(max(plane.sites.shape), _BODY_SIDE_PX)
        blocks = _darkest_of_four(_shrunk(plane.sites, halvings)).astype(np.float32)
        level = float(np.quantile(blocks, _BODY_SHARE)) - plane.black
        levels.append(level / (saturation.code - plane.black))
    brightest = max(*levels, 2.0**-_MOST_ROOM_STOPS)
    return min(max(0.0, -math.log2(brightest)), _MOST_ROOM_STOPS)


def _darkest_of_four(blocks: NDArray[np.uint16]) -> NDArray[np.uint16]:
    height, width = blocks.shape[0] // 2 * 2, blocks.shape[1] // 2 * 2
    whole = blocks[:height, :width]
    rows = np.minimum(whole[::2], whole[1::2])
    return np.minimum(rows[:, ::2], rows[:, 1::2])


def _shrunk(sites: NDArray[np.uint16], halvings: int) -> NDArray[np.uint16]:
    """As `pixels.shrunk`, of 16 bits."""
    for _ in range(halvings):
        height, width = sites.shape[0] // 2, sites.shape[1] // 2
        half = cv2.resize(
            sites[: 2 * height, : 2 * width], (width, height), interpolation=cv2.INTER_AREA
        )
        sites = np.asarray(half, np.uint16)
    return sites


def _over(frame: RawFrame, preview: NDArray[np.uint8], level: int) -> float | None:
    """By how much the preview overstates what is clipped [stops, 0 or more]; None: can't be told.

    The preview shows a share of the frame as clipped. The light that the same share of the
    photosites reaches is where the preview clips; its distance from saturation is the answer.
    """
    if max(preview.shape) < _SMALLEST_PREVIEW_PX:
        return None
    shown = float(np.count_nonzero(preview.max(axis=2) >= level)) / preview[..., 0].size
    if not _PREVIEW_SHARES[0] <= shown <= _PREVIEW_SHARES[1]:
        return None
    brightest: NDArray[np.float32] | None = None
    for colour in COLOURS:
        saturation = frame.saturation[colour]
        for plane in frame.planes[colour]:
            light = _light(plane, saturation, preview.shape[1])
            brightest = light if brightest is None else np.maximum(brightest, light)
    light = np.asarray(brightest)
    reached = max(float(np.quantile(light, 1 - shown)), 2.0**-_MOST_ROOM_STOPS)
    below = min(
        (saturation.clipped_from - saturation.black) / (saturation.code - saturation.black)
        for saturation in frame.saturation.values()
    )
    near = (light > reached / _SIXTH) & (light < min(reached * _SIXTH, below))
    if np.count_nonzero(near) < _NEARLY * light.size:
        return None
    return max(0.0, -math.log2(reached))


def _light(plane: Plane, saturation: Saturation, width: int) -> NDArray[np.float32]:
    """Light of a plane at about the preview's size, 1 at saturation."""
    halvings = max(0, round(math.log2(plane.sites.shape[1] / width)))
    small = _shrunk(plane.sites, halvings).astype(np.float32)
    light = (small - plane.black) / (saturation.code - plane.black)
    return np.asarray(np.minimum(light, 1.0), np.float32)
