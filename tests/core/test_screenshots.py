"""Pages of a screen are told from frames by their bands, unless a camera states its exposure."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import NDArray

from core.frame.report import CameraSettings, FrameMetadata
from core.frame.screenshots import is_screenshot
from core.frame.working import WorkingCopy
from tests.core.frame_files import natural

Pixels = NDArray[np.uint8]
UNKNOWN = FrameMetadata()


def page(lines: int, *, colour: int = 245) -> Pixels:
    """Lines of words on a page of one colour, shape (800, 400, 3)."""
    pixels = np.full((800, 400, 3), colour, np.uint8)
    words = np.random.default_rng(3).random((12, 360)) < 0.4
    for line in range(lines):
        top = 20 + line * 780 // max(lines, 1)
        pixels[top : top + 12, 20:380][words] = 255 - colour
    return pixels


def starry() -> Pixels:
    """Points of light before black, rows without any between them."""
    pixels = np.zeros((800, 400, 3), np.uint8)
    for row in range(10, 800, 20):
        pixels[row, (row * 7) % 400] = 255
    return pixels


def below_white_sky() -> Pixels:
    """A scene under a sky that is all white."""
    pixels = np.array(natural())
    pixels[:300] = 255
    return pixels


@pytest.mark.parametrize(
    ("pixels", "screen"),
    [
        (page(10), True),
        (page(10, colour=12), True),
        (page(2), False),
        (page(0), False),
        (starry(), False),
        (below_white_sky(), False),
        (np.array(natural()), False),
    ],
)
def test_a_page_has_bands_and_words(pixels: Pixels, *, screen: bool) -> None:
    """White sky is one band, stars are no words."""
    assert is_screenshot(WorkingCopy(pixels, 1.0), UNKNOWN) is screen


@pytest.mark.parametrize("settings", [CameraSettings(1 / 8), CameraSettings(f_number=8.0)])
def test_what_a_camera_took_is_a_frame(settings: CameraSettings) -> None:
    """Of a page on a wall, too."""
    taken = FrameMetadata(settings=settings, present=True)
    assert not is_screenshot(WorkingCopy(page(10), 1.0), taken)
