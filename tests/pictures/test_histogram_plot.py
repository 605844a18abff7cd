"""The three histograms say what is in the frame, in words too."""

from __future__ import annotations

import numpy as np
import pytest
from PIL import Image, ImageDraw

from bot.pictures.histogram_plot import INK, QUIET, counts, draw_histograms, percent
from bot.pictures.outlines import Rectangle


@pytest.mark.parametrize(
    ("share", "words"),
    [
        (0, "0 %"),
        (0.00001, "< 0.1 %"),
        (0.0005, "0.1 %"),
        (0.0214, "2.1 %"),
        (0.0994, "9.9 %"),
        (0.0999, "10 %"),
        (0.125, "12 %"),
        (1, "100 %"),
    ],
)
def test_percent(share: float, words: str) -> None:
    """Small shares keep a digit, large ones drop it, and a trace never reads as nothing."""
    assert percent(share) == words


def test_counts_are_shares_by_channel() -> None:
    """Half red at 10, all green at 20, a quarter blue at 255."""
    pixels = np.zeros((100, 100, 3), np.uint8)
    pixels[:50, :, 0] = 10
    pixels[..., 1] = 20
    pixels[:, :25, 2] = 255
    found = counts(pixels)
    assert found.shape == (3, 256)
    np.testing.assert_allclose(found.sum(axis=1), 1)
    assert (found[0, 10], found[1, 20], found[2, 255]) == pytest.approx((0.5, 1, 0.25))


def test_large_frames_are_sampled_not_averaged() -> None:
    """A chequer of black and white stays black and white in the counts."""
    rng = np.random.default_rng(8)
    pixels = np.repeat(rng.choice([0, 255], (1500, 1500, 1)).astype(np.uint8), 3, axis=2)
    found = counts(pixels)
    assert found[0, 0] + found[0, 255] == pytest.approx(1)
    assert found[0, 255] == pytest.approx(0.5, abs=0.01), "seed 8"


@pytest.mark.parametrize("shape", [(1, 1, 3), (1, 4000, 3), (3000, 1, 3)])
def test_narrow_frames_are_counted(shape: tuple[int, int, int]) -> None:
    """One row or column is enough."""
    assert counts(np.full(shape, 7, np.uint8))[2, 7] == 1


def plotted(clipped: float) -> np.ndarray[tuple[int, ...], np.dtype[np.uint8]]:
    shares = np.zeros((3, 256))
    shares[:, 20:60] = 1 / 40
    image = Image.new("RGB", (600, 600), "white")
    place = Rectangle(20, 20, 580, 590)
    draw_histograms(ImageDraw.Draw(image), place, shares, {"red": clipped}, 40)
    return np.asarray(image)


def test_clipping_thickens_the_right_edge() -> None:
    """A clipped channel has a thicker edge on the right than one that holds."""
    picture = plotted(0.02)
    black = (picture == INK).all(axis=2)
    red, green = black[150:160, 500:].sum(axis=1).max(), black[340:350, 500:].sum(axis=1).max()
    assert red > 2 * green > 0


def test_three_plots_from_top_to_bottom() -> None:
    """Each plot has its bars where its values are: at the left, none at the right."""
    bars = (plotted(0) == QUIET).all(axis=2)
    for top in (20, 210, 400):
        rows = bars[top + 80 : top + 150]
        assert rows[:, 70:140].any()
        assert not rows[:, 200:560].any()


def test_ink_stays_in_its_place() -> None:
    """Nothing is drawn outside the room given."""
    picture = plotted(0.5)
    outside = np.ones(picture.shape[:2], bool)
    outside[17:594, 17:584] = False
    assert (picture[outside] == 255).all()
