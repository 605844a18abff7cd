"""Clipped shares against painted truth, through JPEG and without it."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from hypothesis.extra import numpy as arrays
from numpy.typing import NDArray
from PIL import Image

from core.frame import clipping
from core.frame.clipped_pixels import Ends, clipping_ends
from core.frame.clipping import coverage_of, find_clipping
from core.frame.decode import decode
from core.frame.histogram import brightest_channel, code_counts, percentile_code
from core.frame.pixels import shrunk
from core.frame.report import AreaKind
from tests.core.frame_files import Pixels, jpeg, natural

WHITE = (255, 255, 255)


def painted(*boxes: tuple[int, int, int, int], colour: tuple[int, int, int] = WHITE) -> Pixels:
    """The photograph with rectangles painted in: left, top, width, height [px]."""
    pixels = natural().copy()
    for left, top, width, height in boxes:
        pixels[top : top + height, left : left + width] = colour
    return pixels


def grey(codes: NDArray[np.uint8]) -> Pixels:
    """A grey picture of the codes."""
    return np.repeat(codes[..., np.newaxis], 3, axis=2)


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
    ("resized", "quality", "ends"),
    [
        (False, None, Ends(252, 252)),
        (True, None, Ends(250, 250)),
        (False, 95, Ends(255, 240)),
        (True, 60, Ends(255, 240)),
    ],
)
def test_ends(resized: bool, quality: int | None, ends: Ends) -> None:
    """One level without loss, a lower one for copies; in a JPEG the neighbours count (own rule)."""
    counts = counts_of(painted((0, 0, 50, 50)))
    assert clipping_ends(counts, resized=resized, jpeg_quality=quality) == ends


def test_near_the_end_counts_among_the_end() -> None:
    """In a JPEG a code below the end counts where nearly half around it is at the end."""
    codes = np.full((40, 60), 100, np.uint8)
    codes[10:20, 10:20] = 255
    codes[14, 14] = 241  # inside
    codes[14, 19] = 250  # on a long edge: fourteen of twenty-five are at the end
    codes[14, 10 - 1] = 250  # beside it: ten are
    codes[30, 40] = 250  # alone
    codes[30, 50] = 255
    mask = Ends(255, 240).mask(grey(codes), codes) > 0
    assert mask[14, 14]
    assert mask[14, 19]
    assert not mask[14, 9]
    assert not mask[30, 40]
    assert mask[30, 50]
    assert mask.sum() == 100 + 1


@pytest.mark.parametrize(("at_end", "counts"), [(6, False), (7, True)])
def test_grain_of_a_bright_surface_is_not_clipped(at_end: int, counts: bool) -> None:
    """A few codes at the end among many near it count only when there are enough of them."""
    codes = np.full((20, 20), 245, np.uint8)
    codes[8:13, 8:13].flat[[12, 0, 2, 4, 20, 22, 24][:at_end]] = 255
    assert bool(Ends(255, 240).mask(grey(codes), codes)[10, 10]) is counts


@pytest.mark.parametrize(
    ("other", "code", "at_end", "counts"),
    [
        (100, 231, 32, True),
        (100, 231, 31, False),  # too few at the end
        (100, 229, 32, False),  # too far from the end
        (203, 231, 32, True),
        (204, 231, 32, False),  # too pale
    ],
)
def test_strong_colour_is_clipped_from_further_below(
    other: int, code: int, at_end: int, counts: bool
) -> None:
    """Where one channel is far above another, lower codes among fewer of the end count."""
    pixels = np.full((30, 30, 3), other, np.uint8)
    pixels[..., 0] = 200
    square = pixels[10:19, 10:19, 0]
    square.flat[:at_end] = 255
    pixels[14, 14, 0] = code
    assert bool(Ends(255, 240).mask(pixels, pixels.max(axis=2))[14, 14]) is counts


def test_share_at_each_level_is_the_histograms() -> None:
    """With a known level the share is what numpy counts, in any channel and in each."""
    pixels = np.random.default_rng(5).integers(0, 256, (301, 407, 3)).astype(np.uint8)
    for level in (200, 250, 255):
        found = find_clipping(pixels, level=level)
        assert found.share == float((pixels >= level).any(axis=2).mean())
        assert list(found.by_channel.values()) == [
            float((pixels[..., channel] >= level).mean()) for channel in range(3)
        ]
        assert found.level == level


def test_copy_keeps_what_is_clipped() -> None:
    """The working copy's parts add up to the clipped pixels, within the rounding of each block."""
    pixels = np.random.default_rng(6).integers(0, 256, (2048, 3072, 3)).astype(np.uint8)
    coverage, clipped, by_channel = coverage_of(pixels, brightest_channel(pixels), Ends.at(250))
    blocks = 4 / 255  # pixels of a block, over the codes of its part
    assert coverage.clipped.sum() * blocks == pytest.approx(clipped, rel=0.01)
    np.testing.assert_allclose(coverage.channels.sum(axis=(0, 1)) * blocks, by_channel, rtol=0.02)


@settings(max_examples=30, deadline=None)
@given(
    st.tuples(st.integers(16, 300), st.integers(16, 600), st.integers(0, 5)),
    st.sampled_from([Ends(255, 240), Ends.at(251), Ends(242, 227)]),
    st.integers(0, 2**31),
    st.integers(0, 3),
)
def test_strips_and_stretches_make_no_difference(
    size: tuple[int, int, int], ends: Ends, seed: int, halvings: int
) -> None:
    """Looked at only near the end, numbers and copies are those of the whole frame at once."""
    height, width, blobs = size
    rng = np.random.default_rng(seed)
    pixels = rng.integers(0, 256, (height, width, 3)).astype(np.uint8) // 2
    for _ in range(blobs):
        top, left = int(rng.integers(height)), int(rng.integers(width))
        part = pixels[top : top + int(rng.integers(1, 60)), left : left + int(rng.integers(1, 90))]
        part[:] = rng.choice(np.array([230, 241, 252, 255], np.uint8), part.shape)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(clipping, "_WORKING_SIDE_PX", max(height, width) / 2**halvings)
        copy, clipped, by_channel = coverage_of(pixels, brightest_channel(pixels), ends)
    mask = ends.mask(pixels, pixels.max(axis=2))
    channels = ends.by_channel(pixels, mask)
    assert clipped == np.count_nonzero(mask)
    assert by_channel.tolist() == np.count_nonzero(channels, axis=(0, 1)).tolist()
    for found, whole in ((copy.colour, pixels), (copy.clipped, mask), (copy.channels, channels)):
        np.testing.assert_array_equal(found, shrunk(whole, halvings))


@pytest.mark.parametrize("at_end", [14, 15])
def test_few_of_the_end_leave_their_neighbours(at_end: int) -> None:
    """What is near the end counts only where as many as asked are at the end."""
    codes = np.full((9, 9), 250, np.uint8)
    codes[2:7, 2:7].flat[: at_end + 1] = 255
    codes[4, 4] = 250
    mask = Ends(255, 240).mask(grey(codes), codes) > 0
    assert mask[4, 4] == (at_end == 15)


@settings(max_examples=25, deadline=None)
@given(
    arrays.arrays(np.uint8, (24, 31, 3), elements=st.integers(0, 255)),
    st.integers(0, 3),
    st.booleans(),
)
def test_turned_and_mirrored(small: Pixels, turns: int, mirrored: bool) -> None:
    """A turned or mirrored frame has the same clipped share, in any channel and in each."""
    pixels = np.kron(small, np.ones((5, 5, 1), np.uint8))
    turned = np.ascontiguousarray(np.rot90(pixels[:, ::-1] if mirrored else pixels, turns))
    for quality in (None, 90):
        first, second = (find_clipping(one, jpeg_quality=quality) for one in (pixels, turned))
        assert (first.share, first.by_channel) == (second.share, second.by_channel)


@pytest.mark.parametrize("quality", [None, 90])
def test_more_exposure_never_clips_less(quality: int | None) -> None:
    """Pushed by sixths of a stop, the clipped share of a photograph only grows."""
    light = (natural() / 255.0) ** 2.2
    shares = []
    for sixths in range(13):
        codes = np.round(255 * np.clip(light * 2 ** (sixths / 6), 0, 1) ** (1 / 2.2))
        shares.append(find_clipping(codes.astype(np.uint8), jpeg_quality=quality).share)
    assert shares == sorted(shares)
    assert shares[-1] > 0.01


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
