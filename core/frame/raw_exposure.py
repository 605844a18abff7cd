"""What the photosites of a raw say: room, clipped shares, and how far its preview is off."""

from __future__ import annotations

import math
from typing import Final

import numpy as np
from numpy.typing import NDArray

from core.frame.findings import RawExposure
from core.frame.photosites import COLOURS
from core.frame.pixels import halvings_to, shrunk
from core.frame.raw import RawFrame
from core.frame.room import MOST_RAW_STOPS

#: Averaged to about this long side [px]; of four neighbours there the darkest counts, so that a
#: point of sparkle vanishes in what surrounds it. Own rule.
_BODY_SIDE_PX: Final = 800
#: What this part of the blocks does not exceed is the brightest body: sparkle of 0.1 % of the
#: frame does no harm (own rule).
_BODY_SHARE: Final = 0.999
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
        room_stops={colour: _room_stops(frame, colour) for colour in COLOURS},
        clipped={
            colour: _clipped(frame, colour) / int(frame.counted.counts[colour].sum())
            for colour in COLOURS
        },
        preview_over_stops=None if preview is None else _over(frame, preview, preview_level),
        saturation_found=all(frame.saturation[colour].found for colour in COLOURS),
    )


def clipped_share(frame: RawFrame) -> float:
    """Share of all photosites that are saturated, 0 to 1."""
    clipped = sum(_clipped(frame, colour) for colour in COLOURS)
    return clipped / sum(int(frame.counted.counts[colour].sum()) for colour in COLOURS)


def _clipped(frame: RawFrame, colour: str) -> int:
    """How many photosites of a colour are saturated."""
    lowest = math.ceil(frame.saturation[colour].clipped_from)
    return int(frame.counted.counts[colour][lowest:].sum())


def _room_stops(frame: RawFrame, colour: str) -> float:
    """Distance of the brightest body of a colour from saturation [stops]."""
    saturation, planes = frame.saturation[colour], frame.planes[colour]
    halvings = halvings_to(max(planes[0].sites.shape), _BODY_SIDE_PX) - frame.counted.halvings
    levels = []
    for plane, small in zip(planes, frame.counted.small[colour], strict=True):
        blocks = _darkest_of_four(shrunk(small, halvings)).astype(np.float32)
        level = float(np.quantile(blocks, _BODY_SHARE)) - plane.black
        levels.append(level / (saturation.code - plane.black))
    brightest = max(*levels, 2.0**-MOST_RAW_STOPS)
    return min(max(0.0, -math.log2(brightest)), MOST_RAW_STOPS)


def _darkest_of_four(blocks: NDArray[np.uint16]) -> NDArray[np.uint16]:
    height, width = blocks.shape[0] // 2 * 2, blocks.shape[1] // 2 * 2
    whole = blocks[:height, :width]
    rows = np.minimum(whole[::2], whole[1::2])
    return np.minimum(rows[:, ::2], rows[:, 1::2])


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
    light = _light(frame, preview.shape[1])
    reached = max(float(np.quantile(light, 1 - shown)), 2.0**-MOST_RAW_STOPS)
    below = min(
        (saturation.clipped_from - saturation.black) / (saturation.code - saturation.black)
        for saturation in frame.saturation.values()
    )
    near = (light > reached / _SIXTH) & (light < min(reached * _SIXTH, below))
    if np.count_nonzero(near) < _NEARLY * light.size:
        return None
    return max(0.0, -math.log2(reached))


def _light(frame: RawFrame, width: int) -> NDArray[np.float32]:
    """The brightest light of each place, 1 at saturation, at about the preview's size or less."""
    counted = frame.counted
    at_most = counted.small[COLOURS[0]][0].shape[1]
    halvings = max(0, round(math.log2(at_most / width)))
    brightest: list[NDArray[np.float32]] = []
    for colour in COLOURS:
        saturation = frame.saturation[colour]
        for plane, small in zip(frame.planes[colour], counted.small[colour], strict=True):
            codes = shrunk(small, halvings).astype(np.float32)
            brightest.append((codes - plane.black) / (saturation.code - plane.black))
    return np.asarray(np.minimum(np.maximum.reduce(brightest), 1.0), np.float32)
