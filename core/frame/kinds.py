"""Clipped areas told apart: sparkle, white water, a gap to the sky, or not sure."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Final

import numpy as np
from numpy.typing import NDArray

from core.frame.patches import Coverage, Patches, closed, find_patches, mean_around, square_sums
from core.frame.report import AreaKind, Box, ClippedArea

# Rules from an own measurement on 39 photographs pushed by 0 to 2.1 stops, 7,260 clipped areas,
# whole photographs left out. "Side" is the short side of the frame, lightness is CIE L*.
_POINT_OVER_SIDE: Final = 0.008  # sparkle is smaller
_DARK_LIGHTNESS: Final = 70.0  # the mean lightness around sparkle is lower
_COMPANY: Final = 6  # sparkle has as many others near
_COMPANY_OVER_SIDE: Final = 0.06
_AROUND_OVER_SIDE: Final = 0.02
_RING_OVER_SIDE: Final = (0.004, 0.025)
_PALE_LIGHTNESS: Final = 85.0  # foam that is not yet clipped
_PALE_SHARE: Final = 0.35  # of the ring around white water
_WATER_TOP: Final = 0.35  # the middle of white water is lower, in shares of the height
_SKY_OVER_SIDE: Final = 0.01  # a gap at the top border is larger

# Own rules, tried on twelve other photographs pushed by 0 to 1.4 stops and on rendered falls: of
# 56 areas called sky 47 were, of 20 frames of water whose largest area was called water 15 were.
# Sunlit stone, snow and pale paths are as white as foam and count as white water.
_MERGE_OVER_SIDE: Final = 0.01  # pieces of one sheet of foam lie closer than this
_GREY_CHROMA: Final = 20.0  # CIE C* of what has hardly a colour
_GREY_SHARE: Final = 0.8  # of the ring around white water
_GREY_RING_OVER_SIDE: Final = (0.002, 0.01)
_MAIN_WATER: Final = 0.1  # an area this small beside the largest water is not named
_SKY_BOTTOM: Final = 0.6  # what hangs lower from the top may be a fall
_BROAD_SKY: Final = (0.5, 0.75)  # but a gap over half the width is sky down to here
_SKY_CONTACT: Final = 0.3  # part of a gap's width that touches the top border
_LEAVES_BOTTOM: Final = 1 / 3  # points higher up may be sky through leaves
#: A patch narrower than this, over the long side, counts with the points. Common practice.
TOLERABLE_WIDTH: Final = 0.005
#: Points that make up less than this share of the frame do no harm. Common practice.
TOLERABLE_SHARE: Final = 0.001

#: As many areas as have room on a phone. Own rule.
_LETTERS: Final = "ABCDEFGH"
#: A channel is named when it is clipped in this part of the area, as the report promises.
_CHANNEL_PART: Final = 0.5

#: Least rate of being right at which a kind is named. Own rule.
_RATE_TO_NAME: Final = 0.75
#: How often a kind that is named is right (the two measurements above).
_RATES: Final = {
    AreaKind.SPARKLE: 0.94,
    AreaKind.SKY_GAP: 0.84,
    AreaKind.WHITE_WATER: 0.75,
    AreaKind.UNSURE: 0.5,
}


@dataclass(frozen=True)
class _Layer:
    """Patches, and the weights of what is clipped in them.

    `clipped`, shape (count,), and `channels`, shape (count, 3), are sums of the coverage.
    """

    patches: Patches
    clipped: NDArray[np.float64]
    channels: NDArray[np.float64]

    @classmethod
    def of(cls, patches: Patches, coverage: Coverage) -> _Layer:
        """Weigh the patches by what is clipped in them."""
        return cls(patches, patches.sums(coverage.clipped), patches.sums(coverage.channels))


def name_areas(coverage: Coverage) -> tuple[ClippedArea, ...]:
    """Clipped areas, lettered by size, all sparkle together as one.

    Args:
        coverage: with some pixel clipped.

    Returns:
        At most eight, the largest first. `widest` of sparkle is that of its widest point.
    """
    mask = closed(coverage.clipped > 0, 1)
    dots = find_patches(mask)
    in_the_dark, sparkle = _points(dots, coverage)
    merge_px = max(1, round(_MERGE_OVER_SIDE * min(mask.shape) / 2))
    body = find_patches(closed(mask & ~dots.mask_of(in_the_dark), merge_px))
    wide = body.largest_sides >= TOLERABLE_WIDTH * max(mask.shape)
    narrow = ~wide
    layer = _Layer.of(body, coverage)
    narrow[0] = False
    areas = _bodies(coverage, layer, wide)
    areas += _scattered(coverage, _Layer.of(dots, coverage), in_the_dark, sparkle, layer, narrow)
    areas.sort(key=lambda area: area.share, reverse=True)
    return tuple(
        replace(area, letter=letter) for letter, area in zip(_LETTERS, areas, strict=False)
    )


def _points(dots: Patches, coverage: Coverage) -> tuple[NDArray[np.bool_], NDArray[np.bool_]]:
    """Small patches in dark surroundings, and which of them are sparkle; shape (count,).

    Sparkle is in company, and not so high up that it could be sky among leaves.
    """
    height, width = dots.labels.shape
    side = min(height, width)
    small = np.flatnonzero(dots.largest_sides < max(2.0, _POINT_OVER_SIDE * side))[1:]
    at = np.rint(dots.middles[small][:, ::-1].T).astype(np.intp)
    around_px = max(2, round(_AROUND_OVER_SIDE * side))
    around = mean_around(coverage.lab[..., 0], dots.labels == 0, at, around_px) * (100 / 255)
    in_the_dark = np.zeros(dots.count, np.bool_)
    in_the_dark[small] = around < _DARK_LIGHTNESS
    field = np.zeros((height, width), np.uint8)
    field[at[0], at[1]] = 1
    company = square_sums(field, at, max(2, round(_COMPANY_OVER_SIDE * side))) - 1
    sparkle = in_the_dark.copy()
    sparkle[small] &= (company >= _COMPANY) & (at[0] > _LEAVES_BOTTOM * height)
    return in_the_dark, sparkle


def _bodies(coverage: Coverage, layer: _Layer, wide: NDArray[np.bool_]) -> list[ClippedArea]:
    """One area for each patch that is wide enough."""
    body = layer.patches
    like_water = _like_water(coverage, body) & wide
    largest = max(layer.clipped[like_water], default=0.0)
    like_water &= layer.clipped >= _MAIN_WATER * largest
    areas = []
    for label in (int(label) for label in np.flatnonzero(wide)):
        kind = AreaKind.WHITE_WATER if like_water[label] else AreaKind.UNSURE
        if body.boxes[label][1] <= 1:
            kind = AreaKind.SKY_GAP if _like_sky(body, label) else AreaKind.UNSURE
        areas.append(
            _area(coverage, kind, body.boxes[label], layer.clipped[label], layer.channels[label])
        )
    return areas


def _like_water(coverage: Coverage, body: Patches) -> NDArray[np.bool_]:
    """Which patches lie low enough, and in something pale or without colour; shape (count,)."""
    height, width = body.labels.shape
    side = min(height, width)
    lab = coverage.lab[::2, ::2].reshape(-1, 3)
    ring, owners = body.rings(*(part * side for part in _RING_OVER_SIDE))
    pale = body.share(owners, lab[ring, 0] > _PALE_LIGHTNESS * 2.55)
    ring, owners = body.rings(*(max(1.0, part * side) for part in _GREY_RING_OVER_SIDE))
    colour = lab[ring, 1:].astype(np.int32) - 128
    grey = body.share(owners, (colour**2).sum(axis=1) < _GREY_CHROMA**2)
    low: NDArray[np.bool_] = body.middles[:, 1] > _WATER_TOP * height
    in_foam: NDArray[np.bool_] = (pale > _PALE_SHARE) | (grey >= _GREY_SHARE)
    return low & in_foam


def _like_sky(body: Patches, label: int) -> bool:
    """Whether a patch that touches the top hangs from it as sky does."""
    height, width = body.labels.shape
    _, top, box_width, box_height = (int(value) for value in body.boxes[label])
    contact = int(np.count_nonzero((body.labels[: top + 1] == label).any(axis=0)))
    broad, broad_bottom = _BROAD_SKY
    bottom = broad_bottom if contact >= broad * width else _SKY_BOTTOM
    large = max(box_width, box_height) > _SKY_OVER_SIDE * min(height, width)
    return large and contact >= _SKY_CONTACT * box_width and top + box_height <= bottom * height


def _scattered(
    coverage: Coverage,
    dots: _Layer,
    in_the_dark: NDArray[np.bool_],
    sparkle: NDArray[np.bool_],
    body: _Layer,
    narrow: NDArray[np.bool_],
) -> list[ClippedArea]:
    """All points as one area: sparkle, unless they weigh something and most are not for sure."""
    boxes = np.concatenate([dots.patches.boxes[in_the_dark], body.patches.boxes[narrow]])
    if len(boxes) == 0:
        return []
    total = float(dots.clipped[in_the_dark].sum() + body.clipped[narrow].sum())
    sure = float(dots.clipped[sparkle].sum())
    few = total < TOLERABLE_SHARE * 255 * coverage.clipped.size
    kind = AreaKind.SPARKLE if few or sure >= _RATE_TO_NAME * total else AreaKind.UNSURE
    left_top = boxes[:, :2].min(axis=0)
    right_bottom = (boxes[:, :2] + boxes[:, 2:]).max(axis=0)
    channels = dots.channels[in_the_dark].sum(axis=0) + body.channels[narrow].sum(axis=0)
    box = np.concatenate([left_top, right_bottom - left_top]).astype(np.int32)
    area = _area(coverage, kind, box, total, channels)
    return [replace(area, widest=float(boxes[:, 2:].max()) / max(coverage.clipped.shape))]


def _area(
    coverage: Coverage,
    kind: AreaKind,
    box: NDArray[np.int32],
    clipped: float,
    channels: NDArray[np.float64],
) -> ClippedArea:
    height, width = coverage.clipped.shape
    left, top, box_width, box_height = (float(value) for value in box)
    return ClippedArea(
        letter="",
        kind=kind,
        box=Box(left / width, top / height, box_width / width, box_height / height),
        share=float(clipped) / (255 * width * height),
        widest=max(box_width, box_height) / max(width, height),
        channels=tuple(
            name
            for name, part in zip(("red", "green", "blue"), channels, strict=True)
            if part >= _CHANNEL_PART * clipped
        ),
        confidence=_RATES[kind],
    )
