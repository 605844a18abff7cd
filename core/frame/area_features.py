"""Numbers of what lies over, under, beside and inside clipped areas, and of their company."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.patches import Coverage, Patches

Floats = NDArray[np.float64]
Labels = NDArray[np.intp]

#: What lies within this of an area is near, in shares of the frame's short side. Own rules.
_STRIP: Final = 0.12
_MARGIN: Final = 0.02
_COMPANY: Final = (0.06, 0.2)
_LIKE: Final = 0.4
#: Points have a smaller side, in shares of the short side.
_POINT: Final = 0.01
#: Outer ends of the two rims next to an area [px], seen on every second pixel.
_RIMS_PX: Final = (2.5, 5.1)
#: CIE L* in OpenCV's 8-bit codes: paler than foam that is not yet clipped; darker than sky.
_PALE_CODE: Final = 217
_PALE_RIM_CODE: Final = 230
_DARK_RIM_CODE: Final = 153
_GREY_CODE: Final = 128
_WHITE: Final = 255
_THIRDS: Final = 3
#: What is averaged over rectangles, in the order of the planes.
_NAMES: Final = ("light", "red", "yellow", "detail", "across", "down", "pale")

#: Numbers of one area.
AREA_FEATURES: Final = 61


@dataclass(frozen=True)
class Company:
    """Small patches of a frame: middles x, y [px], shape (k, 2), and which are in the dark."""

    middles: Floats
    in_the_dark: NDArray[np.bool_]

    @classmethod
    def of(cls, dots: Patches, in_the_dark: NDArray[np.bool_]) -> Company:
        """The small ones among all patches; `in_the_dark` has shape (count,)."""
        small = dots.largest_sides < _POINT * min(dots.labels.shape)
        small[0] = False
        return cls(dots.middles[small], in_the_dark[small])


@dataclass(frozen=True)
class _Boxes:
    """Sides of rectangles on the half copy, shape (n,) each; whole pixels inside the frame."""

    top: Labels
    bottom: Labels
    left: Labels
    right: Labels

    @classmethod
    def of(cls, sides: tuple[Floats, Floats, Floats, Floats], shape: tuple[int, int]) -> _Boxes:
        ends = (shape[0], shape[0], shape[1], shape[1])
        return cls(*(
            np.rint(side).astype(np.intp).clip(0, end)
            for side, end in zip(sides, ends, strict=True)
        ))  # fmt: skip

    def slices(self) -> Iterator[tuple[slice, slice]]:
        """Rows and columns of each of them."""
        sides = (self.top, self.bottom, self.left, self.right)
        for top, bottom, left, right in zip(*(side.tolist() for side in sides), strict=True):
            yield slice(top, bottom), slice(left, right)


@dataclass(frozen=True)
class _Planes:
    """The half copy's values where nothing is clipped, and 1 there; 1 where something is.

    A few rectangles are summed one by one: running sums of all planes took four times as long,
    most of it for their memory (measured).
    """

    values: tuple[NDArray[np.uint8], NDArray[np.uint8]]
    clipped: NDArray[np.uint8]

    @classmethod
    def of(cls, coverage: Coverage) -> _Planes:
        lost = cv2.threshold(coverage.clipped[::2, ::2], 0, 1, cv2.THRESH_BINARY)[1]
        free = cv2.threshold(lost, 0, _WHITE, cv2.THRESH_BINARY_INV)[1]
        light, red, yellow = cv2.split(coverage.half_lab)
        across, down = (_quarter(slope) for slope in coverage.half_slopes)
        pale = cv2.threshold(light, _PALE_CODE, 1, cv2.THRESH_BINARY)[1]
        planes = (light, red, yellow, coverage.half_detail, across, down, pale, np.ones_like(lost))
        seen = [cv2.bitwise_and(plane, free) for plane in planes]
        first, second = (np.asarray(cv2.merge(four), np.uint8) for four in (seen[:4], seen[4:]))
        return cls((first, second), np.asarray(lost, np.uint8))

    @property
    def shape(self) -> tuple[int, int]:
        """Rows and columns."""
        return self.clipped.shape[0], self.clipped.shape[1]

    def means(self, boxes: _Boxes) -> dict[str, Floats]:
        """Means over what is free in each box, and the clipped part of the box."""
        sums = np.array([self._sums(box) for box in boxes.slices()]).T
        free, lost = sums[-2:]
        found = {
            name: values / np.maximum(free, 1)
            for name, values in zip(_NAMES, sums[:-2], strict=True)
        }
        return found | {"clipped": lost / np.maximum(free + lost, 1)}

    def _sums(self, box: tuple[slice, slice]) -> list[float]:
        """Sums of the seven values, of what is free and of what is clipped in a box."""
        if not self.clipped[box].size:
            return [0.0] * (len(_NAMES) + 2)
        first, second = (cv2.sumElems(four[box]) for four in self.values)
        return [*first, *second, cv2.sumElems(self.clipped[box])[0]]


def _quarter(slopes: NDArray[np.int16]) -> NDArray[np.uint8]:
    """A quarter of a gradient's size, as codes."""
    return np.asarray(cv2.convertScaleAbs(slopes, alpha=0.25), np.uint8)


def area_features(coverage: Coverage, body: Patches, chosen: Labels, company: Company) -> Floats:
    """Numbers of the chosen areas.

    Args:
        coverage: the frame's working copy.
        body: areas on it.
        chosen: labels of the areas that are asked for, shape (n,).
        company: small patches of the frame.

    Returns:
        Shape (n, AREA_FEATURES); 0 where there is nothing to measure.
    """
    planes = _Planes.of(coverage)
    columns = [
        *_of_form(body, chosen),
        *_of_company(body, chosen, company),
        *_of_places(planes, body, chosen),
        *_of_rims(coverage, body, chosen),
        *_of_thirds(planes, coverage, len(chosen)),
    ]
    return np.stack(columns, axis=1)


def _of_form(body: Patches, chosen: Labels) -> list[Floats]:
    """How long, upright and slanted an area is, and how loose."""
    inside, owners = body.inside
    places = _places(body, chosen)[owners]
    inside, places = inside[places < len(chosen)], places[places < len(chosen)]
    count = len(chosen)
    sizes = np.maximum(np.bincount(places, minlength=count), 1)

    def mean(values: NDArray[np.generic]) -> Floats:
        return np.asarray(np.bincount(places, values, count) / sizes, np.float64)

    rows, columns = np.divmod(inside, body.labels.shape[1])
    across, down = body.middles[chosen].T
    high = mean(rows * rows) - down * down + 1 / 12
    wide = mean(columns * columns) - across * across + 1 / 12
    slant = 2 * (mean(rows * columns) - down * across)
    area = np.sqrt(np.maximum(high * wide - slant**2 / 4, 1e-3))
    return [
        np.hypot(wide - high, slant) / (wide + high),
        (high - wide) / (wide + high),
        np.abs(slant) / (wide + high),
        sizes / (4 * np.pi * area),
    ]


def _places(body: Patches, chosen: Labels) -> Labels:
    """For each patch its place among the chosen ones, and their number for the others."""
    places = np.full(body.count, len(chosen), np.intp)
    places[chosen] = np.arange(len(chosen))
    return places


def _of_company(body: Patches, chosen: Labels, company: Company) -> list[Floats]:
    """How many points are near, those in the dark too, and how many areas, of a like size too."""
    side = min(body.labels.shape)
    left, top, wide, high = body.boxes[chosen].T[..., None].astype(np.float64)
    across, down = company.middles.T
    away = np.hypot(
        across - np.clip(across, left, left + wide), down - np.clip(down, top, top + high)
    )
    near = [away < reach * side for reach in _COMPANY]
    apart = body.middles[chosen][:, None] - body.middles[None, 1:]
    distances = np.hypot(apart[..., 0], apart[..., 1])
    sizes, own = body.largest_sides[1:], body.largest_sides[chosen][:, None]
    like = (2 * sizes > own) & (sizes < 2 * own) & (distances < _LIKE * side)
    counted = (*near, near[1] & company.in_the_dark, like, distances < _STRIP * side)
    return [np.log2(1 + found.sum(axis=1)) for found in counted]


def _of_places(planes: _Planes, body: Patches, chosen: Labels) -> list[Floats]:
    """What lies inside an area's box, over it up to the border, over, under and beside it."""
    shape = planes.shape
    left, top, wide, high = body.boxes[chosen].T / 2
    right, bottom = left + wide, top + high
    strip, margin = (share * min(shape) for share in (_STRIP, _MARGIN))
    first, last = left - margin, right + margin
    found: list[Floats] = []
    for sides in (
        (top, bottom, left, right),
        (np.zeros_like(top), top, first, last),
        (top - strip, top, first, last),
        (bottom, bottom + strip, first, last),
    ):
        means = planes.means(_Boxes.of(sides, shape))
        across, down = means.pop("across"), means.pop("down")
        found += [*means.values(), (across - down) / (across + down + 1)]
    one, other = (
        planes.means(_Boxes.of(sides, shape))
        for sides in ((top, bottom, left - strip, left), (top, bottom, right, right + strip))
    )
    return [*found, (one["pale"] + other["pale"]) / 2, np.abs(one["light"] - other["light"])]


def _of_rims(coverage: Coverage, body: Patches, chosen: Labels) -> list[Floats]:
    """How even, pale, dark and coloured the two rims next to an area are."""
    distances, owners = body.surroundings
    at = np.flatnonzero((distances > 0) & (distances <= _RIMS_PX[-1]))
    places = _places(body, chosen)[owners[at]]
    at, places = at[places < len(chosen)], places[places < len(chosen)]
    groups = places * len(_RIMS_PX) + np.searchsorted(_RIMS_PX, distances[at])
    size = len(chosen) * len(_RIMS_PX)
    numbers = np.maximum(np.bincount(groups, minlength=size), 1)

    def mean(values: NDArray[np.generic]) -> Floats:
        sums = np.bincount(groups, values, size) / numbers
        return np.asarray(sums.reshape(-1, len(_RIMS_PX)), np.float64)

    light, red, yellow = coverage.half_lab.reshape(-1, 3)[at].T.astype(np.float64)
    red, yellow = red - _GREY_CODE, yellow - _GREY_CODE
    columns = (
        np.sqrt(np.maximum(mean(light * light) - mean(light) ** 2, 0)),
        mean(light > _PALE_RIM_CODE),
        mean(light < _DARK_RIM_CODE),
        mean(np.hypot(red, yellow)),
        mean(yellow),
    )
    return [column for pair in columns for column in pair.T]


def _of_thirds(planes: _Planes, coverage: Coverage, count: int) -> list[Floats]:
    """What the upper, middle and lower third of the frame are like."""
    height, width = coverage.half_lab.shape[:2]
    ends = np.round(np.linspace(0, height, _THIRDS + 1))
    zero = np.zeros(_THIRDS)
    boxes = _Boxes.of((ends[:-1], ends[1:], zero, zero + width), (height, width))
    means = planes.means(boxes)
    names = ("light", "detail", "clipped", "pale")
    return [np.full(count, value) for name in names for value in means[name]]
