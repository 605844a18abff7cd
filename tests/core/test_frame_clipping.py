"""Clipped shares against painted truth, through JPEG and without it."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import NDArray
from PIL import Image

from core.frame.clipping import clipping_level, find_clipping
from core.frame.decode import decode
from core.frame.histogram import brightest_channel, code_counts, percentile_code
from core.frame.report import AreaKind
from tests.core.frame_files import Pixels, jpeg, natural

WHITE = (255, 255, 255)


def painted(*boxes: tuple[int, int, int, int], colour: tuple[int, int, int] = WHITE) -> Pixels:
    """The photograph with rectangles painted in: left, top, width, height [px]."""
    pixels = natural().copy()
    for left, top, width, height in boxes:
        pixels[top : top + height, left : left + width] = colour
    return pixels


def counts_of(pixels: Pixels) -> NDArray[np.int64]:
    return code_counts(brightest_channel(pixels))


def test_nothing_clipped() -> None:
    """A dim photograph has no clipped pixel and no area."""
    clipping = find_clipping(natural())
    assert (clipping.share, clipping.areas) == (0, ())
    assert clipping.by_channel == {"red": 0, "green": 0, "blue": 0}


def test_exact_shares_without_loss() -> None:
    """In a file without loss the shares are exact, also in rows that fill no whole block."""
    pixels = painted((100, 500, 120, 60), (0, 799, 1200, 1))
    pixels[600:620, 600:650] = (255, 90, 20)
    clipping = find_clipping(pixels)
    white = 120 * 60 + 1200
    assert clipping.share == (white + 1000) / 960_000
    assert clipping.by_channel == {
        "red": (white + 1000) / 960_000,
        "green": white / 960_000,
        "blue": white / 960_000,
    }


def test_all_white() -> None:
    """A frame that is white throughout is clipped throughout."""
    clipping = find_clipping(np.full((300, 400, 3), 255, np.uint8))
    assert clipping.share == 1
    assert clipping.by_channel == {"red": 1, "green": 1, "blue": 1}
    (area,) = clipping.areas
    assert (area.kind, area.share, area.widest) == (AreaKind.UNSURE, 1, 1)


@pytest.mark.parametrize("quality", [95, 90, 80, 75, 50])
def test_share_through_jpeg(quality: int) -> None:
    """A painted area of 1.5 % is found within a tenth after JPEG, and its box within 3 px."""
    pixels = painted((500, 450, 160, 90))
    frame = decode(jpeg(pixels, quality))
    clipping = find_clipping(frame.pixels, jpeg_quality=frame.jpeg_quality)
    assert clipping.share == pytest.approx(160 * 90 / 960_000, rel=0.1)
    largest = clipping.areas[0]
    assert largest.letter == "A"
    assert largest.channels == ("red", "green", "blue")
    box = largest.box
    found = np.array([box.left * 1200, box.top * 800, box.width * 1200, box.height * 800])
    np.testing.assert_allclose(found, (500, 450, 160, 90), atol=3)
    assert largest.widest == pytest.approx(160 / 1200, abs=0.003)


def test_one_channel() -> None:
    """An area clipped in red alone names red alone."""
    clipping = find_clipping(painted((500, 450, 160, 90), colour=(255, 120, 60)))
    assert clipping.areas[0].channels == ("red",)
    assert clipping.by_channel["green"] == 0


@pytest.mark.parametrize(
    ("resized", "quality", "level"),
    [(False, None, 252), (False, 95, 252), (False, 80, 252), (False, 79, 250), (True, 95, 250)],
)
def test_level(resized: bool, quality: int | None, level: int) -> None:
    """252 at full size and good quality, 250 for coarse files and copies (own measurement)."""
    counts = counts_of(painted((0, 0, 50, 50)))
    assert clipping_level(counts, resized=resized, jpeg_quality=quality) == level


@pytest.mark.parametrize("cap", [236, 242, 248])
@pytest.mark.parametrize("quality", [None, 92, 75])
def test_whites_capped_by_an_editor(cap: int, quality: int | None) -> None:
    """Whites that an editor capped below the end are found by their pile."""
    pixels = painted((500, 450, 160, 90), colour=(cap, cap, cap))
    if quality is not None:
        pixels = decode(jpeg(pixels, quality)).pixels
    share = find_clipping(pixels, jpeg_quality=quality).share
    assert share == pytest.approx(160 * 90 / 960_000, rel=0.1)


def test_bright_sky_is_no_pile() -> None:
    """A bright surface with the grain of a photograph is not taken for capped whites."""
    grain = np.random.default_rng(7).normal(240, 3, (300, 1200))
    pixels = natural().copy()
    pixels[:300] = np.clip(grain, 0, 251)[..., np.newaxis].astype(np.uint8)
    assert find_clipping(pixels).share == 0


def test_sparkle_of_single_pixels_counts() -> None:
    """Single pixels of a large frame are counted, though areas are told apart on a copy."""
    image = Image.fromarray(natural()).resize((4800, 3200), Image.Resampling.BICUBIC)
    large = np.asarray(image).copy()
    chance = np.random.default_rng(3)
    rows, columns = chance.integers(1800, 3100, 300), chance.integers(100, 4700, 300)
    large[rows, columns] = 255
    clipping = find_clipping(large)
    single = len(set(zip(rows.tolist(), columns.tolist(), strict=True)))
    assert clipping.share == single / (4800 * 3200)
    (area,) = clipping.areas
    assert area.kind is AreaKind.SPARKLE
    assert area.share == pytest.approx(clipping.share, rel=0.02)


def test_percentile() -> None:
    """The code below which a share of the pixels lies."""
    counts = np.zeros(256, np.int64)
    counts[[10, 200, 255]] = (90, 9, 1)
    assert [percentile_code(counts, share) for share in (0.5, 0.9, 0.99, 1)] == [10, 10, 200, 255]


def test_rest_lower_than_a_block_counts() -> None:
    """Rows and columns that fill no block of the copy still count in the shares."""
    clipping = find_clipping(np.full((129, 3203, 3), 255, np.uint8))
    assert clipping.share == 1
    assert clipping.by_channel == {"red": 1, "green": 1, "blue": 1}
