"""Mats and bars are left out, gaps part several pictures, and no scene is taken for these."""

from __future__ import annotations

from collections.abc import Callable

import cv2
import numpy as np
import pytest
from numpy.typing import NDArray

from core.frame.check import check_frame
from core.frame.mats import is_several, picture_inside
from tests.core.frame_files import jpeg, natural
from tests.core.several_frames import rendered

Pixels = NDArray[np.uint8]


def framed(pixels: Pixels, rows: int, columns: int, colour: int) -> Pixels:
    """A picture with a mat of so many pixels at each side."""
    height, width = pixels.shape[:2]
    whole = np.full((height + 2 * rows, width + 2 * columns, 3), colour, np.uint8)
    whole[rows : rows + height, columns : columns + width] = pixels
    return whole


def below_lost_sky() -> Pixels:
    """A scene under a sky that is lost, and black at its foot, both with ragged ends."""
    pixels = np.array(natural())
    edge = 200 + (30 * np.sin(np.arange(1200) / 40)).astype(int)
    for column, row in enumerate(edge):
        pixels[:row, column] = 255
        pixels[800 - row // 2 :, column] = 0
    return pixels


def worded(pixels: Pixels) -> Pixels:
    """A white mat with a line of words under the picture."""
    whole = framed(pixels, 120, 90, 255)
    cv2.putText(whole, "at the linn, f/11", (150, 990), cv2.FONT_HERSHEY_SIMPLEX, 2, (40,) * 3, 4)
    return whole


def read(pixels: Pixels) -> Pixels:
    """The same after a JPEG of usual quality."""
    return np.asarray(cv2.imdecode(cv2.imencode(".jpg", pixels)[1], cv2.IMREAD_COLOR), np.uint8)


@pytest.mark.parametrize(
    ("mat", "rows", "columns"),
    [
        (lambda one: framed(one, 120, 90, 255), 120, 90),
        (lambda one: framed(one, 60, 60, 250), 60, 60),
        (lambda one: framed(one, 200, 0, 0), 200, 0),  # bars above and below
        (lambda one: framed(one, 0, 300, 0), 0, 300),  # bars at the sides
        (worded, 120, 90),
    ],
)
def test_the_picture_inside_a_mat_is_found(
    mat: Callable[[Pixels], Pixels], rows: int, columns: int
) -> None:
    """To within a block of a JPEG, which blurs the edge of the mat."""
    window = picture_inside(read(mat(np.array(natural()))))
    assert window is not None
    found = [window[0].start, window[0].stop, window[1].start, window[1].stop]
    np.testing.assert_allclose(found, [rows, rows + 800, columns, columns + 1200], atol=9)


@pytest.mark.parametrize(
    "pixels",
    [
        np.array(natural()),
        below_lost_sky(),
        rendered(1 / 4, 3),
        np.full((800, 1200, 3), 255, np.uint8),
        np.zeros((800, 1200, 3), np.uint8),
        framed(np.array(natural())[:100, :100], 400, 400, 255),  # next to nothing is inside
        np.concatenate([np.full((200, 1200, 3), 255, np.uint8), np.array(natural())]),  # one side
    ],
)
def test_nothing_of_a_scene_is_a_mat(pixels: Pixels) -> None:
    """Lost sky and black rock end raggedly, and a bar at one side alone is none."""
    assert picture_inside(read(pixels)) is None


def test_what_lies_around_a_picture_changes_nothing_that_is_measured() -> None:
    """Clipped share, room and borders are those of the picture without its mat."""
    bare, _ = check_frame(jpeg(rendered(1 / 4, 3)))
    inside, pixels = check_frame(jpeg(framed(rendered(1 / 4, 3), 120, 90, 255)))
    assert inside.mat_left_out
    assert not bare.mat_left_out
    assert inside.clipping.share == pytest.approx(bare.clipping.share, abs=1e-4)
    assert inside.room_stops == pytest.approx(bare.room_stops, abs=0.1)
    assert inside.advice is bare.advice
    np.testing.assert_allclose(pixels.shape[:2], (1200, 800), atol=18)


def test_a_page_with_margins_is_a_page_still() -> None:
    """Margins are left out of the picture, not out of what tells a screen's page."""
    page = np.full((800, 400, 3), 245, np.uint8)
    words = np.random.default_rng(3).random((12, 300)) < 0.4
    for line in range(10):
        page[40 + line * 74 : 52 + line * 74, 50:350][words] = 10
    assert check_frame(jpeg(page))[0].of_screen


@pytest.mark.parametrize("axis", [0, 1])
def test_pictures_side_by_side_are_several(axis: int) -> None:
    """An even gap parts them, whichever way it runs; a mat around them all is no matter."""
    one = np.array(natural())
    gap = np.full((one.shape[0], 24, 3) if axis else (24, one.shape[1], 3), 255, np.uint8)
    both = np.concatenate([one, gap, np.ascontiguousarray(one[:, ::-1])], axis=axis)
    assert is_several(both)
    assert check_frame(jpeg(framed(both, 24, 24, 255)))[0].several_in_one


def foggy() -> Pixels:
    """Even rows in any number."""
    rows = np.linspace(90, 140, 800).astype(np.uint8)
    return np.repeat(np.repeat(rows[:, None, None], 1200, 1), 3, 2)


def in_bands() -> Pixels:
    """More even bands than anybody lays pictures in."""
    pixels = np.array(natural())
    for top in range(0, 800, 40):
        pixels[top : top + 12] = 255
    return pixels


@pytest.mark.parametrize(
    "pixels", [np.array(natural()), below_lost_sky(), rendered(1 / 4, 3), foggy(), in_bands()]
)
def test_one_picture_is_not_several(pixels: Pixels) -> None:
    """No gap runs from side to side in a scene, in fog, or on a page."""
    assert not is_several(pixels)
