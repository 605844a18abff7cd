"""Sparkle, white water and sky gaps told apart, on painted photographs and rendered falls."""

from __future__ import annotations

from functools import cache

import cv2
import numpy as np
import pytest

from core.frame.clipping import find_clipping
from core.frame.decode import decode
from core.frame.report import AreaKind, Clipping
from tests.core.frame_files import Pixels, jpeg, natural
from tests.scenes.waterfall import Kind, Plan, Taken, compose, take


def glints(pixels: Pixels, top: int, bottom: int, number: int, size: int = 2) -> Pixels:
    """A copy with white dots strewn over some rows."""
    pixels = pixels.copy()
    chance = np.random.default_rng(11)
    for _ in range(number):
        row = int(chance.integers(top, bottom - size))
        column = int(chance.integers(200, 900))
        pixels[row : row + size, column : column + size] = 255
    return pixels


def sheet(pixels: Pixels, middle: tuple[int, int], axes: tuple[int, int]) -> Pixels:
    """A copy with a soft grey-white patch whose inside is clipped, as foam is."""
    height, width = pixels.shape[:2]
    down, across = np.mgrid[0:height, 0:width]
    far = np.hypot((across - middle[0]) / axes[0], (down - middle[1]) / axes[1])
    level = np.clip(380 - 180 * far, 0, 255)
    share = np.clip(2 - far, 0, 1)[..., np.newaxis]
    mixed = pixels * (1 - share) + level[..., np.newaxis] * share
    return np.asarray(np.clip(mixed, 0, 255), dtype=np.uint8)


def sky(pixels: Pixels, height: int) -> Pixels:
    """A copy with a white gap from the top border, ragged below."""
    pixels = pixels.copy()
    edge = height + (12 * np.sin(np.arange(300) / 9)).astype(int)
    for column, bottom in enumerate(edge, start=500):
        pixels[:bottom, column] = 255
    return pixels


def kinds(clipping: Clipping) -> list[AreaKind]:
    return [area.kind for area in clipping.areas]


def through_jpeg(pixels: Pixels, quality: int = 90) -> Clipping:
    frame = decode(jpeg(pixels, quality))
    return find_clipping(frame.pixels, jpeg_quality=frame.jpeg_quality)


@pytest.mark.parametrize("quality", [95, 85, 70])
def test_sparkle(quality: int) -> None:
    """Dots strewn over dark ground are one area of sparkle."""
    clipping = through_jpeg(glints(natural(), 450, 700, 120), quality)
    (area,) = clipping.areas
    assert area.kind is AreaKind.SPARKLE
    assert area.widest < 0.01
    assert area.box.width > 0.5


@pytest.mark.parametrize("quality", [95, 85, 70])
def test_white_water(quality: int) -> None:
    """A soft white patch in the lower part is white water."""
    assert kinds(through_jpeg(sheet(natural(), (600, 520), (70, 110)), quality))[0] is (
        AreaKind.WHITE_WATER
    )


@pytest.mark.parametrize("quality", [95, 85, 70])
def test_sky_gap(quality: int) -> None:
    """A white area that hangs from the top border is a sky gap."""
    assert kinds(through_jpeg(sky(natural(), 130), quality)) == [AreaKind.SKY_GAP]


def test_all_three_by_size() -> None:
    """All three in one frame are named, and lettered by size."""
    pixels = glints(sheet(sky(natural(), 200), (400, 560), (60, 90)), 650, 780, 60)
    clipping = through_jpeg(pixels)
    assert kinds(clipping) == [AreaKind.SKY_GAP, AreaKind.WHITE_WATER, AreaKind.SPARKLE]
    assert [area.letter for area in clipping.areas] == ["A", "B", "C"]
    shares = [area.share for area in clipping.areas]
    assert shares == sorted(shares, reverse=True)
    assert sum(shares) == pytest.approx(clipping.share, rel=0.01)


def test_white_from_top_to_foot_is_not_named() -> None:
    """What touches the top and reaches far down could be a fall or the sky."""
    pixels = natural().copy()
    pixels[:600, 500:620] = 255
    assert kinds(through_jpeg(pixels)) == [AreaKind.UNSURE]


def test_narrow_touch_is_not_named() -> None:
    """A wide area that touches the top with a small part of its width is not named."""
    pixels = natural().copy()
    pixels[60:260, 300:900] = 255
    pixels[:60, 590:610] = 255
    assert kinds(through_jpeg(pixels)) == [AreaKind.UNSURE]


def test_broad_sky_may_hang_low() -> None:
    """A sky over the whole width is sky down to three quarters of the height."""
    pixels = natural().copy()
    pixels[:560] = 255
    assert kinds(find_clipping(pixels))[0] is AreaKind.SKY_GAP


def test_white_high_up_is_not_named() -> None:
    """A white area high up that does not touch the top could be anything."""
    assert kinds(through_jpeg(sheet(natural(), (600, 170), (70, 60))))[0] is AreaKind.UNSURE


def test_hard_white_in_coloured_ground_is_not_named() -> None:
    """A hard white area in strongly coloured ground, a lamp or a sign, is not named."""
    pixels = np.empty((800, 1200, 3), np.uint8)
    pixels[:] = (170, 60, 20)
    pixels[480:560, 500:640] = 255
    assert kinds(find_clipping(pixels)) == [AreaKind.UNSURE]


def test_points_among_leaves_are_not_sparkle() -> None:
    """Many dots high up could be sky through leaves: with some weight they are not named."""
    assert set(kinds(find_clipping(glints(natural(), 5, 200, 400)))) == {AreaKind.UNSURE}
    # Below a tenth of a percent they do no harm, and stand with the sparkle.
    assert kinds(find_clipping(glints(natural(), 5, 200, 60))) == [AreaKind.SPARKLE]


def test_small_area_beside_large_water_is_not_named() -> None:
    """Only what carries weight beside the largest white water is called so."""
    large = sheet(natural(), (400, 520), (110, 150))
    clipping = through_jpeg(sheet(large, (950, 600), (10, 10)))
    assert kinds(clipping)[0] is AreaKind.WHITE_WATER
    assert AreaKind.UNSURE in kinds(clipping)


def test_at_most_eight_areas() -> None:
    """A frame with many areas names the eight largest."""
    pixels = natural().copy()
    for index in range(12):
        pixels[500 : 520 + index, 60 + 90 * index : 90 + 90 * index] = 255
    clipping = find_clipping(pixels)
    assert "".join(area.letter for area in clipping.areas) == "ABCDEFGH"


@cache
def rendered(seed: int, sky_gap: bool, white_stops: float) -> Taken:
    """A fall with known truth."""
    plan = Plan(seed=seed, sky_gap=sky_gap, white_stops=white_stops, sparkle_share=0.0006)
    return take(compose(plan))


def truth(taken: Taken, kind: Kind) -> float:
    return taken.share(kind)


@pytest.mark.parametrize("seed", [21, 22, 23])
def test_rendered_fall(seed: int) -> None:
    """In a rendered gorge the gap is sky, the largest low area is water, and shares hold."""
    taken = rendered(seed, sky_gap=True, white_stops=3.4)
    clipping = through_jpeg(taken.pixels, 92)
    named = dict.fromkeys(AreaKind, 0.0)
    for area in clipping.areas:
        named[area.kind] += area.share
    assert named[AreaKind.SKY_GAP] == pytest.approx(truth(taken, Kind.SKY_GAP), rel=0.15)
    assert named[AreaKind.WHITE_WATER] >= 0.4 * truth(taken, Kind.WHITE_WATER)
    assert named[AreaKind.WHITE_WATER] <= 1.3 * truth(taken, Kind.WHITE_WATER)


@pytest.mark.parametrize("seed", [21, 22])
def test_rendered_fall_with_room(seed: int) -> None:
    """A rendered fall that is exposed with room shows sparkle and nothing else that is named."""
    taken = rendered(seed, sky_gap=False, white_stops=1.6)
    found = kinds(find_clipping(taken.pixels))
    assert AreaKind.WHITE_WATER not in found
    assert AreaKind.SKY_GAP not in found


def test_frame_of_any_size() -> None:
    """The kinds hold on a large and on a small copy of the same frame."""
    pixels = sheet(sky(natural(), 200), (400, 560), (60, 90))
    for size in ((600, 400), (4200, 2800)):
        copy = cv2.resize(pixels, size, interpolation=cv2.INTER_AREA).astype(np.uint8)
        assert kinds(find_clipping(copy))[:2] == [AreaKind.SKY_GAP, AreaKind.WHITE_WATER]
