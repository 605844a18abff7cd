"""Outlines show on any ground, keep off what they mark, and their letters stay readable."""

from __future__ import annotations

from dataclasses import replace

import cv2
import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image, ImageDraw

from bot.pictures.outlines import Rectangle, draw_areas, line_width, outline_of, plates
from core.frame.report import AreaKind, Box, ClippedArea

WIDTH, HEIGHT = 1200, 800


def area(kind: AreaKind, box: Box, letter: str = "A") -> ClippedArea:
    return ClippedArea(letter, kind, box, 0.01, box.width, ("red",), 0.9)


def drawn(areas: list[ClippedArea], ground: int) -> np.ndarray[tuple[int, ...], np.dtype[np.uint8]]:
    image = Image.new("RGB", (WIDTH, HEIGHT), (ground,) * 3)
    draw_areas(ImageDraw.Draw(image), areas, WIDTH, HEIGHT)
    return np.asarray(image)


@pytest.mark.parametrize("ground", [0, 128, 255])
def test_double_line_shows_on_any_ground(ground: int) -> None:
    """On black, grey and white alike, black and white lines run round the box."""
    box = Box(0.3, 0.4, 0.2, 0.25)
    edge = outline_of(box, WIDTH, HEIGHT)
    picture = drawn([area(AreaKind.WHITE_WATER, box)], ground)
    line = line_width(WIDTH)
    for column in (edge.left + 20 + line, edge.right - 20):
        assert (picture[edge.bottom - line : edge.bottom, column] == 0).all()
        assert (picture[edge.bottom - 2 * line : edge.bottom - line, column] == 255).all()
    middle = (edge.top + edge.bottom) // 2
    assert (picture[middle, edge.right - line : edge.right] == 0).all()
    assert (picture[middle, edge.right - 2 * line : edge.right - line] == 255).all()


@pytest.mark.parametrize("kind", list(AreaKind))
def test_what_is_marked_stays_visible(kind: AreaKind) -> None:
    """No ink lies on the clipped area itself while there is room around it."""
    box = Box(0.3, 0.4, 0.2, 0.25)
    picture = drawn([area(kind, box)], 128)
    inside = picture[int(0.4 * HEIGHT) : int(0.65 * HEIGHT), int(0.3 * WIDTH) : int(0.5 * WIDTH)]
    assert (inside == 128).all()


def test_sparkle_is_dotted() -> None:
    """Along sparkle's outline ground shows between the dots; white water's line has no gap."""
    box = Box(0.3, 0.4, 0.3, 0.3)
    edge = outline_of(box, WIDTH, HEIGHT)
    strip = (slice(edge.bottom - 25, edge.bottom), slice(edge.left + 40, edge.right - 40))
    dotted = (drawn([area(AreaKind.SPARKLE, box)], 128)[strip] == 128).all(axis=(0, 2))
    solid = (drawn([area(AreaKind.WHITE_WATER, box)], 128)[strip] == 128).all(axis=(0, 2))
    assert dotted.any()
    assert not dotted.all()
    assert not solid.any()


boxes = st.builds(
    lambda left, top, wide, high: Box(left, top, wide * (1 - left), high * (1 - top)),
    st.floats(0, 0.99),
    st.floats(0, 0.99),
    st.floats(0.001, 1),
    st.floats(0.001, 1),
)


@given(st.lists(boxes, min_size=1, max_size=5), st.sampled_from([(1200, 800), (675, 1200)]))
def test_letters_stay_inside_and_apart(found: list[Box], size: tuple[int, int]) -> None:
    """Every letter lies whole inside the frame, off its border, and on no other letter."""
    outlines = [outline_of(box, *size) for box in found]
    places = plates(outlines, *size)
    frame = Rectangle(0, 0, *size)
    for place in places:
        area_px = (place.right - place.left) * (place.bottom - place.top)
        assert place.overlap(frame.grown(-4)) == area_px
    for index, place in enumerate(places):
        crowded = sum(place.overlap(other) for other in places[:index])
        assert crowded == 0 or len({(box.left, box.top) for box in found}) < len(found)


@pytest.mark.parametrize("side", [(1, 1200), (1200, 1), (1, 1), (30, 20)])
def test_tiny_frames_do_not_fail(side: tuple[int, int]) -> None:
    """A frame one pixel high is drawn like any other."""
    image = Image.new("RGB", (max(side[0], 40), max(side[1], 40)))
    areas = [
        area(kind, Box(0.1, 0.1, 0.5, 0.5), letter)
        for letter, kind in zip("ABCDE", AreaKind, strict=True)
    ]
    draw_areas(ImageDraw.Draw(image), areas, *side)
    assert np.asarray(image).max() == 255


def test_long_letters_fit_their_plate() -> None:
    """A mark of two letters is drawn smaller."""
    box = Box(0.3, 0.4, 0.2, 0.25)
    one = drawn([area(AreaKind.SKY_GAP, box, "A")], 128)
    two = drawn([area(AreaKind.SKY_GAP, box, "AB")], 128)
    assert not np.array_equal(one, two)


def test_line_follows_the_contour() -> None:
    """With an outline of its own the lines run round the area, and leave its box's corners."""
    box = Box(0.3, 0.3, 0.3, 0.4)
    corners = ((0.3, 0.3), (0.6, 0.3), (0.3, 0.7))
    marked = replace(area(AreaKind.WHITE_WATER, box), contour=corners)
    picture = drawn([marked], 128)
    inside = np.zeros((HEIGHT, WIDTH), np.uint8)
    cv2.fillPoly(inside, [np.round(np.array(corners) * (WIDTH, HEIGHT)).astype(np.int32)], 1)
    assert (picture[inside > 0] == 128).all()
    assert (
        picture[int(0.66 * HEIGHT) : int(0.7 * HEIGHT), int(0.55 * WIDTH) : int(0.6 * WIDTH)] == 128
    ).all()
    away = cv2.distanceTransform(1 - inside, cv2.DIST_L2, 5)
    line, gap = line_width(WIDTH), round(WIDTH / 100)
    beside = (slice(None, int(0.28 * HEIGHT)), slice(int(0.4 * WIDTH), int(0.5 * WIDTH)))
    assert (
        picture[beside][(away[beside] > gap + line + 1) & (away[beside] < gap + 2 * line - 1)] == 0
    ).all()
    assert (
        picture[beside][(away[beside] > gap + 1) & (away[beside] < gap + line - 1)] == 255
    ).all()


def test_an_area_that_fills_the_frame_is_outlined_along_its_border() -> None:
    """Where an area leaves the frame the lines run along the border."""
    whole = replace(
        area(AreaKind.UNSURE, Box(0, 0, 1, 1)),
        contour=((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)),
    )
    picture = drawn([whole], 128)
    line = line_width(WIDTH)
    assert (picture[HEIGHT // 2, :line] == 0).all()
    assert (picture[HEIGHT // 2, line : 2 * line] == 255).all()
    assert (picture[HEIGHT // 2, 3 * line] == 128).all()
