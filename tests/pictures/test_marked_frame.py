"""The marked frame shows the areas, the key and three histograms, small and without metadata."""

from __future__ import annotations

import io

import numpy as np
import pytest
from PIL import Image

from bot.pictures import marked_frame
from bot.pictures.marked_frame import FRAME_LONG_PX, LARGEST_BYTES, draw_marked_frame, reduced
from bot.pictures.outlines import line_width, outline_of
from core.frame.report import (
    Advice,
    AreaKind,
    Box,
    ClippedArea,
    Clipping,
    FrameMetadata,
    FrameReport,
    SizeNote,
)

WATER = ClippedArea(
    "A", AreaKind.WHITE_WATER, Box(0.4, 0.35, 0.15, 0.2), 0.02, 0.2, ("red", "green"), 0.8
)
SPARKLE = ClippedArea(
    "B", AreaKind.SPARKLE, Box(0.2, 0.7, 0.3, 0.2), 0.0003, 0.003, ("blue",), 0.94
)


def report_on(width: int, height: int, *areas: ClippedArea) -> FrameReport:
    clipping = Clipping(0.02, {"red": 0.02, "green": 0.01, "blue": 0.0}, areas)
    return FrameReport(
        "JPEG", width, height, FrameMetadata(), SizeNote.FULL, clipping, -1 / 3, Advice.DARKER
    )


def opened(picture: bytes) -> np.ndarray[tuple[int, ...], np.dtype[np.uint8]]:
    return np.asarray(Image.open(io.BytesIO(picture)).convert("RGB"))


def grey(height: int, width: int) -> np.ndarray[tuple[int, ...], np.dtype[np.uint8]]:
    return np.full((height, width, 3), 110, np.uint8)


@pytest.mark.parametrize(
    ("height", "width"),
    [(2000, 3000), (3000, 2000), (2400, 2400), (4000, 3000), (1000, 3000), (3000, 1000), (90, 60)],
)
def test_never_a_tall_strip(height: int, width: int) -> None:
    """The whole is at most half taller than wide, or no slimmer than the frame itself."""
    picture = opened(draw_marked_frame(grey(height, width), report_on(width, height, WATER)))
    assert picture.shape[0] / picture.shape[1] <= max(1.5, 0.55 * height / width)
    assert max(picture.shape[:2]) <= 2000


def test_outline_lies_round_the_box() -> None:
    """White and black lines stand where the box of the report puts them."""
    picture = opened(draw_marked_frame(grey(2000, 3000), report_on(3000, 2000, WATER)))
    edge = outline_of(WATER.box, 1200, 800)
    line = line_width(1200)
    middle = (edge.top + edge.bottom) // 2
    assert picture[middle, edge.right - line : edge.right].mean() < 40
    assert picture[middle, edge.right - 2 * line : edge.right - line].mean() > 215
    inside = picture[edge.top + 30 : edge.bottom - 30, edge.left + 30 : edge.right - 30]
    np.testing.assert_allclose(inside, 110, atol=4)


def test_all_of_the_frame_is_shown() -> None:
    """The frame keeps its proportions at a long side of 1200 px, its corners included."""
    pixels = grey(3000, 2000)
    pixels[-200:, -200:] = (250, 20, 20)
    picture = opened(draw_marked_frame(pixels, report_on(2000, 3000)))
    assert picture[1195, 795, 0] > 200
    assert reduced(pixels).shape == (1200, 800, 3)


def test_small_frames_are_enlarged_as_they_are() -> None:
    """A small frame is enlarged without new values in between."""
    pixels = grey(4, 6)
    pixels[0, 0] = 200
    assert reduced(pixels).shape == (FRAME_LONG_PX * 4 // 6, FRAME_LONG_PX, 3)
    assert set(np.unique(reduced(pixels))) == {110, 200}


def test_carries_no_metadata() -> None:
    """The file holds pixels and nothing of the frame's owner: no Exif, profile or comment."""
    data = draw_marked_frame(grey(200, 300), report_on(300, 200, WATER))
    image = Image.open(io.BytesIO(data))
    assert image.format == "JPEG"
    assert len(image.getexif()) == 0
    assert set(image.info) <= {"jfif", "jfif_version", "jfif_unit", "jfif_density"}
    assert b"Exif" not in data


@pytest.mark.parametrize("seed", [6])
def test_small_enough_for_a_weak_signal(seed: int) -> None:
    """Even noise, which no encoder can shrink, stays under 500 kB."""
    noise = np.random.default_rng(seed).integers(0, 256, (800, 1200, 3)).astype(np.uint8)
    data = draw_marked_frame(noise, report_on(1200, 800, WATER, SPARKLE))
    assert len(data) < LARGEST_BYTES, f"seed {seed}"


def test_key_counts_what_is_not_marked() -> None:
    """With seven areas the four largest and sparkle get marks, the rest are counted."""
    areas = [
        ClippedArea(letter, AreaKind.UNSURE, Box(0.1, 0.1 * n, 0.05, 0.05), 0.001, 0.05, (), 0.5)
        for n, letter in enumerate("ACDEFG", 1)
    ]
    shown = marked_frame._shown((areas[0], SPARKLE, *areas[1:]))
    assert [area.letter for area in shown] == ["A", "B", "C", "D", "E"]
    words = marked_frame._key_words(shown, 2)
    assert words[0] == ("A", "bright area 0.1 %")
    assert words[1] == ("B", "sparkle < 0.1 %")
    assert words[-1] == ("", "and 2 smaller")


@pytest.mark.parametrize(
    ("kind", "words"), [(AreaKind.SPARKLE, "sparkle"), (AreaKind.UNSURE, "bright area")]
)
def test_scattered_points_are_said_not_outlined(kind: AreaKind, words: str) -> None:
    """Points over most of the frame have words in the key and no outline."""
    wide = ClippedArea("A", kind, Box(0, 0.2, 1, 0.8), 0.0002, 0.003, (), 0.94)
    assert marked_frame._key_words((wide,), 0) == [("A", f"{words} < 0.1 %, scattered")]
    picture = opened(draw_marked_frame(grey(800, 1200), report_on(1200, 800, wide)))
    np.testing.assert_allclose(picture[:780], 110, atol=6)


def test_a_large_sheet_is_outlined() -> None:
    """A sheet of white water over half the frame is no scatter of points."""
    sheet = ClippedArea("A", AreaKind.WHITE_WATER, Box(0.1, 0.1, 0.8, 0.8), 0.4, 0.8, (), 0.8)
    assert not marked_frame.scattered(sheet)


def test_nothing_clipped_has_no_key() -> None:
    """Without areas the histograms follow the frame at once."""
    bare = opened(draw_marked_frame(grey(800, 1200), report_on(1200, 800)))
    keyed = opened(draw_marked_frame(grey(800, 1200), report_on(1200, 800, WATER)))
    assert bare.shape[0] < keyed.shape[0]


@pytest.mark.parametrize("height", [1, 3])
def test_frames_a_pixel_high_are_drawn(height: int) -> None:
    """The oddest shapes give a picture too."""
    data = draw_marked_frame(grey(height, 900), report_on(900, height, WATER, SPARKLE))
    assert opened(data).shape[1] == 1200


@pytest.mark.parametrize(
    "pixels",
    [np.zeros((4, 4), np.uint8), np.zeros((4, 4, 4), np.uint8), np.zeros((4, 4, 3), np.float32)],
)
def test_other_arrays_are_refused(pixels: np.ndarray[tuple[int, ...], np.dtype[np.uint8]]) -> None:
    """Anything but 8-bit RGB is a mistake of the caller and says so."""
    with pytest.raises(ValueError, match="pixels"):
        draw_marked_frame(pixels, report_on(4, 4))
