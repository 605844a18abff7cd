"""Outlines of areas: few points, near the area, in shares of the frame."""

from __future__ import annotations

import json

import cv2
import numpy as np
import pytest
from numpy.typing import NDArray
from pydantic import TypeAdapter

from core.frame.clipping import find_clipping
from core.frame.contours import MOST_POINTS, contour_of
from core.frame.patches import find_patches
from core.frame.report import Clipping
from tests.scenes.noise import fractal


def filled(points: tuple[tuple[float, float], ...], height: int, width: int) -> NDArray[np.bool_]:
    corners = np.round(np.array(points) * (width, height) * 16).astype(np.int32)
    mask = np.zeros((height, width), np.uint8)
    cv2.fillPoly(mask, [corners], 1, cv2.LINE_8, 4)
    return mask.astype(np.bool_)


def test_a_rectangle_has_its_corners() -> None:
    """The outline of a rectangle runs along the outer sides of its pixels."""
    mask = np.zeros((100, 200), np.bool_)
    mask[20:50, 40:120] = True
    contour = contour_of(find_patches(mask), 1)
    assert set(contour) == {(0.2, 0.2), (0.6, 0.2), (0.6, 0.5), (0.2, 0.5)}


@pytest.mark.parametrize("size", [(1, 1), (1, 9), (7, 1), (2, 2)])
def test_the_smallest_areas_have_an_outline(size: tuple[int, int]) -> None:
    """Even one pixel has an outline that can be drawn."""
    mask = np.zeros((300, 400), np.bool_)
    mask[10 : 10 + size[0], 30 : 30 + size[1]] = True
    assert len(contour_of(find_patches(mask), 1)) > 2


@pytest.mark.parametrize("seed", range(6))
def test_ragged_areas(seed: int) -> None:
    """A ragged area keeps within 64 points, and its outline covers nearly what the area does."""
    rng = np.random.default_rng(seed)
    noise = fractal(rng, (500, 700), (200.0, 200.0), 6, 0.6)
    patches = find_patches(noise > 0.5)
    label = int(np.argmax(patches.sizes[1:])) + 1
    contour = contour_of(patches, label)
    assert 2 < len(contour) <= MOST_POINTS
    area = (patches.labels == label).astype(np.uint8)
    outer, _ = cv2.findContours(area, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE)
    whole = cv2.drawContours(np.zeros_like(area), outer, -1, 1, cv2.FILLED) > 0
    found = filled(contour, 500, 700)
    assert (whole & found).sum() / (whole | found).sum() > 0.85


def test_reports_stay_small() -> None:
    """Eight ragged areas make less than 20 kB of JSON."""
    rng = np.random.default_rng(3)
    noise = fractal(rng, (800, 1200), (150.0, 150.0), 7, 0.7)
    pixels = np.where(noise > 0.9, 255, 90).astype(np.uint8)
    clipping = find_clipping(np.stack([pixels] * 3, axis=2))
    assert len(clipping.areas) == 8
    data = TypeAdapter(Clipping).dump_json(clipping)
    assert len(data) < 20_000
    assert TypeAdapter(Clipping).validate_python(json.loads(data)) == clipping


def test_points_lie_in_the_frame() -> None:
    """An area that fills the frame has the frame's corners."""
    contour = contour_of(find_patches(np.ones((30, 40), np.bool_)), 1)
    assert set(contour) == {(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)}
