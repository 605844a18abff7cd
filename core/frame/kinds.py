"""Clipped areas told apart: sparkle, white water, a gap to the sky, a lamp, or not sure."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from typing import Final

import numpy as np
from numpy.typing import NDArray

from core.frame.area_features import Company
from core.frame.body_features import body_features
from core.frame.contours import contour_of
from core.frame.kind_places import LEAVES_BOTTOM, is_glint, may_be
from core.frame.kind_trees import likelihoods
from core.frame.patches import Coverage, Patches, closed, find_patches, mean_around, square_sums
from core.frame.report import AreaKind, Box, ClippedArea
from core.frame.sight_kinds import fitted, sights_of
from core.frame.water_area import mask_of

# Rules for points from an own measurement on 39 photographs pushed by 0 to 2.1 stops, 7,260
# clipped areas, whole photographs left out. "Side" is the short side of the frame, lightness is
# CIE L*.
_POINT_OVER_SIDE: Final = 0.008  # sparkle is smaller
_DARK_LIGHTNESS: Final = 70.0  # the mean lightness around sparkle is lower
_COMPANY: Final = 6  # sparkle has as many others near
_COMPANY_OVER_SIDE: Final = 0.06
_AROUND_OVER_SIDE: Final = 0.02

#: Pieces of one sheet of foam lie closer than this, over the side. Own rule.
_MERGE_OVER_SIDE: Final = 0.01
#: A patch narrower than this, over the long side, counts with the points. Common practice.
TOLERABLE_WIDTH: Final = 0.005
#: Points that make up less than this share of the frame do no harm. Common practice.
TOLERABLE_SHARE: Final = 0.001

#: As many areas as have room on a phone. Own rule.
_LETTERS: Final = "ABCDEFGH"
#: A channel is named when it is clipped in this part of the area, as the report promises.
_CHANNEL_PART: Final = 0.5

#: Part of the points' weight that has to be sure sparkle for all of them to be called so: not high
#: up where they are few or beside white water, whose drops and glints they then are, else in
#: company; part of it is in company always. Own rules, after pictures of the recipe's kind that are
#: neither trained on nor the figures'. With less beside water twice as many pale points were called
#: so.
_SURE_PART: Final = 0.75
_COMPANY_PART: Final = 0.3
#: How often points that are called sparkle are (the measurement above).
_SPARKLE_RATE: Final = 0.94
#: How sure nothing is called: as good as a guess.
_UNSURE_RATE: Final = 0.5


@dataclass(frozen=True)
class Layer:
    """Patches, and the weights of what is clipped in them.

    `clipped`, shape (count,), and `channels`, shape (count, 3), are sums of the coverage.
    """

    patches: Patches
    clipped: NDArray[np.float64]
    channels: NDArray[np.float64]

    @classmethod
    def of(cls, patches: Patches, coverage: Coverage) -> Layer:
        """Weigh the patches by what is clipped in them."""
        return cls(patches, patches.sums(coverage.clipped), patches.sums(coverage.channels))


@dataclass(frozen=True)
class Divided:
    """What is clipped in a frame, divided into points and bodies.

    `in_the_dark` and `sparkle`, shape (dots.count,), are points in dark surroundings and those
    of them that are sparkle; `wide`, shape (bodies.count,), are bodies that are told apart.
    """

    coverage: Coverage
    dots: Patches
    in_the_dark: NDArray[np.bool_]
    sparkle: NDArray[np.bool_]
    bodies: Layer
    wide: NDArray[np.bool_]

    @cached_property
    def chosen(self) -> NDArray[np.intp]:
        """Labels of the wide bodies, the heaviest first, no more than are reported."""
        labels = np.flatnonzero(self.wide)
        heaviest = np.argsort(-self.bodies.clipped[labels], kind="stable")
        return labels[heaviest[: len(_LETTERS)]]

    @cached_property
    def features(self) -> NDArray[np.float64]:
        """Numbers of the `chosen` bodies, a row each."""
        bodies = self.bodies
        return body_features(
            self.coverage,
            bodies.patches,
            self.chosen,
            (bodies.clipped, bodies.channels),
            Company.of(self.dots, self.in_the_dark),
        )

    @cached_property
    def sights(self) -> NDArray[np.float64]:
        """What a network of images sees in the `chosen` bodies, a row each."""
        return sights_of(self.coverage.colour, self.bodies.patches, self.chosen)


def divide(coverage: Coverage) -> Divided:
    """Divide what is clipped into points in the dark and bodies.

    Args:
        coverage: with some pixel clipped.
    """
    mask = closed(coverage.clipped > 0, 1)
    dots = find_patches(mask)
    in_the_dark, sparkle = _points(dots, coverage)
    merge_px = max(1, round(_MERGE_OVER_SIDE * min(mask.shape) / 2))
    body = find_patches(closed(mask & ~dots.mask_of(in_the_dark), merge_px))
    wide = body.largest_sides >= TOLERABLE_WIDTH * max(mask.shape)
    return Divided(coverage, dots, in_the_dark, sparkle, Layer.of(body, coverage), wide)


def name_areas(
    coverage: Coverage, water_cells: tuple[str, ...] | None = None
) -> tuple[ClippedArea, ...]:
    """Clipped areas, lettered by size, all sparkle together as one.

    Args:
        coverage: with some pixel clipped.
        water_cells: where the person says that the water is, A1 to D4.

    Returns:
        At most eight, the largest first. `widest` of sparkle is that of its widest point.
    """
    divided = divide(coverage)
    areas, glints = _bodies(divided, water_cells)
    at_water = any(area.kind is AreaKind.WHITE_WATER for area in areas)
    areas += _scattered(divided, glints, at_water=at_water)
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
    around_px = max(1, round(_AROUND_OVER_SIDE * side / 2))
    bare = dots.labels[::2, ::2] == 0
    around = mean_around(coverage.half_lab[..., 0], bare, at // 2, around_px) * (100 / 255)
    in_the_dark = np.zeros(dots.count, np.bool_)
    in_the_dark[small] = around < _DARK_LIGHTNESS
    field = np.zeros((height, width), np.uint8)
    field[at[0], at[1]] = 1
    company = square_sums(field, at, max(2, round(_COMPANY_OVER_SIDE * side))) - 1
    sparkle = in_the_dark.copy()
    sparkle[small] &= (company >= _COMPANY) & (at[0] > LEAVES_BOTTOM * height)
    return in_the_dark, sparkle


def _bodies(
    divided: Divided, water_cells: tuple[str, ...] | None
) -> tuple[list[ClippedArea], NDArray[np.bool_]]:
    """One area for each body that is wide enough, and which bodies are wide glints instead."""
    layer, areas = divided.bodies, list[ClippedArea]()
    glints = np.zeros(layer.patches.count, np.bool_)
    if len(divided.chosen) == 0:
        return areas, glints
    seen = fitted().of(divided.sights)
    likely = likelihoods(divided.features, seen, _told(divided, water_cells))
    for label, said in zip(divided.chosen.tolist(), likely, strict=True):
        boxes, clipped = layer.patches.boxes, float(layer.clipped[label])
        area = _area(divided.coverage, boxes[label], clipped, layer.channels[label])
        if is_glint(area, said):
            glints[label] = True
            continue
        area = replace(area, contour=contour_of(layer.patches, label))
        if may_be(area, said):
            area = replace(area, kind=said.kind, confidence=said.confidence)
        areas.append(area)
    return areas, glints


def _told(divided: Divided, water_cells: tuple[str, ...] | None) -> NDArray[np.bool_] | None:
    """Which of the chosen bodies have their middle where the person says that the water is."""
    if not water_cells:
        return None
    patches = divided.bodies.patches
    columns, rows = patches.middles[divided.chosen].astype(np.intp).T
    return np.asarray(mask_of(water_cells, patches.labels.shape)[rows, columns])


def _scattered(divided: Divided, glints: NDArray[np.bool_], *, at_water: bool) -> list[ClippedArea]:
    """All points and glints as one area: sparkle, unless much of their weight is not for sure."""
    dots, bodies, chosen = divided.dots, divided.bodies, divided.in_the_dark
    narrow = ~divided.wide | glints
    narrow[0] = False
    boxes = np.concatenate([dots.boxes[chosen], bodies.patches.boxes[narrow]])
    if len(boxes) == 0:
        return []
    coverage = divided.coverage
    inside, owners = dots.inside
    of_points = chosen[owners]
    at = inside[of_points]
    weights = coverage.clipped.ravel()[at].astype(np.int64)
    total = float(weights.sum() + bodies.clipped[narrow].sum())
    parts = _sure_parts(divided, weights, owners[of_points], float(bodies.clipped[glints].sum()))
    sparkle = _is_sparkle(divided, parts, total, at_water=at_water)
    by_channel = coverage.channels.reshape(-1, 3)[at].sum(axis=0, dtype=np.int64)
    channels = by_channel + bodies.channels[narrow].sum(axis=0)
    area = _area(coverage, _around(boxes), total, channels)
    widest = float(boxes[:, 2:].max()) / max(coverage.clipped.shape)
    if not sparkle:
        return [replace(area, widest=widest)]
    return [replace(area, widest=widest, kind=AreaKind.SPARKLE, confidence=_SPARKLE_RATE)]


def _around(boxes: NDArray[np.int32]) -> NDArray[np.int32]:
    """The box around boxes: left, top, width, height [px]."""
    left_top = boxes[:, :2].min(axis=0)
    right_bottom = (boxes[:, :2] + boxes[:, 2:]).max(axis=0)
    return np.concatenate([left_top, right_bottom - left_top]).astype(np.int32)


def _sure_parts(
    divided: Divided, weights: NDArray[np.int64], owners: NDArray[np.int32], glints: float
) -> tuple[float, float]:
    """What is clipped in points that are not high up, and in those in company; both with glints.

    Args:
        divided: the frame.
        weights: what is clipped in each pixel of the points in the dark, shape (n,).
        owners: the point of each of these pixels, shape (n,).
        glints: what is clipped in the wide glints.
    """
    height = divided.coverage.clipped.shape[0]
    low = divided.dots.middles[:, 1] > LEAVES_BOTTOM * height
    in_low, in_company = (float(weights[sure[owners]].sum()) for sure in (low, divided.sparkle))
    return in_low + glints, in_company + glints


def _is_sparkle(
    divided: Divided, parts: tuple[float, float], total: float, *, at_water: bool
) -> bool:
    """Whether points are sparkle as a whole.

    Args:
        divided: the frame.
        parts: what `_sure_parts` gives.
        total: what is clipped in all points and glints.
        at_water: something in the frame is called white water.
    """
    part_low, in_company = (part / total for part in parts)
    few = total < TOLERABLE_SHARE * 255 * divided.coverage.clipped.size
    sure = part_low if few or at_water else in_company
    return sure >= _SURE_PART and in_company >= _COMPANY_PART


def _area(
    coverage: Coverage, box: NDArray[np.int32], clipped: float, channels: NDArray[np.float64]
) -> ClippedArea:
    """An area that is not named yet."""
    height, width = coverage.clipped.shape
    left, top, box_width, box_height = (float(value) for value in box)
    return ClippedArea(
        letter="",
        kind=AreaKind.UNSURE,
        box=Box(left / width, top / height, box_width / width, box_height / height),
        share=clipped / (255 * width * height),
        widest=max(box_width, box_height) / max(width, height),
        channels=tuple(
            name
            for name, part in zip(("red", "green", "blue"), channels, strict=True)
            if part >= _CHANNEL_PART * clipped
        ),
        confidence=_UNSURE_RATE,
    )
