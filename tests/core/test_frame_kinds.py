"""Sparkle, white water, sky, lamps and pale things told apart, on planted and rendered truth."""

from __future__ import annotations

from functools import cache

import numpy as np
import pytest

from core.frame.body_features import FEATURES
from core.frame.clipping import find_clipping
from core.frame.decode import decode
from core.frame.kind_places import is_glint, may_be
from core.frame.kind_trees import NUMBERS, Said, likelihoods, trained
from core.frame.kinds import TOLERABLE_WIDTH
from core.frame.report import AreaKind, Box, ClippedArea, Clipping
from core.frame.water_area import UnknownCellError
from tests.core.frame_files import Pixels, jpeg, natural
from tests.scenes.waterfall import Kind, Plan, Taken, compose, take
from tests.scenes.whites import Bright
from tests.training import kinds as recipe
from tests.training.kind_pictures import GORGES, PACKAGED_PUSHED, PLANTED
from tests.training.kinds import TABLE, picture, samples


def glints(pixels: Pixels, top: int, bottom: int, number: int, size: int = 2) -> Pixels:
    """A copy with white dots strewn over some rows."""
    pixels = pixels.copy()
    chance = np.random.default_rng(11)
    for _ in range(number):
        row = int(chance.integers(top, bottom - size))
        column = int(chance.integers(200, 900))
        pixels[row : row + size, column : column + size] = 255
    return pixels


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
    """Dots strewn over dark ground are one area of sparkle, without an outline."""
    clipping = through_jpeg(glints(natural(), 450, 700, 120), quality)
    (area,) = clipping.areas
    assert area.kind is AreaKind.SPARKLE
    assert area.widest < 0.01
    assert area.box.width > 0.5
    assert area.contour == ()


@pytest.mark.parametrize("quality", [95, 85, 70])
def test_sky_gap(quality: int) -> None:
    """A white area that hangs from the top border is a sky gap."""
    assert kinds(through_jpeg(sky(natural(), 130), quality)) == [AreaKind.SKY_GAP]


def test_white_from_top_to_foot_is_no_sky() -> None:
    """What touches the top and reaches far down could be a fall."""
    pixels = natural().copy()
    pixels[:600, 500:620] = 255
    assert AreaKind.SKY_GAP not in kinds(through_jpeg(pixels))


def test_broad_sky_may_hang_low() -> None:
    """A sky over the whole width is sky down to three quarters of the height, and no further."""
    pixels = natural().copy()
    pixels[:560] = 255
    assert kinds(find_clipping(pixels))[0] is AreaKind.SKY_GAP
    pixels[:700] = 255
    assert kinds(find_clipping(pixels))[0] is not AreaKind.SKY_GAP


def test_hard_white_in_coloured_ground_is_not_named() -> None:
    """A hard white area in strongly coloured ground, a sign, is not called water."""
    pixels = np.empty((800, 1200, 3), np.uint8)
    pixels[:] = (170, 60, 20)
    pixels[480:560, 500:640] = 255
    assert AreaKind.WHITE_WATER not in kinds(find_clipping(pixels))


def test_glints_wider_than_points_count_with_the_sparkle() -> None:
    """In a rendered gorge whose glints are as wide as areas, they are one area of sparkle."""
    pixels, quality, whites = picture(PLANTED + 9, None)
    assert np.count_nonzero(whites.shows[pixels.max(axis=2) == 255] == Bright.SPARKLE) > 50
    clipping = find_clipping(pixels, jpeg_quality=quality)
    (sparkle,) = (area for area in clipping.areas if area.kind is AreaKind.SPARKLE)
    assert sparkle.contour == ()
    assert TOLERABLE_WIDTH < sparkle.widest < 0.03


def test_points_among_leaves_are_not_sparkle() -> None:
    """Dots high up could be sky through leaves: they are not named."""
    for number in (60, 400):
        assert AreaKind.SPARKLE not in kinds(find_clipping(glints(natural(), 5, 200, number)))


def test_a_few_points_by_themselves_are_not_sparkle() -> None:
    """A handful of dots without company could be anything, unless white water is beside them."""
    for number in (3, 12):
        assert AreaKind.SPARKLE not in kinds(find_clipping(glints(natural(), 450, 700, number)))


def test_a_few_points_beside_water_are_its_drops() -> None:
    """In a rendered gorge with white water that is named, its few glints are sparkle."""
    taken = rendered(21, sky_gap=True, white_stops=3.4)
    found = kinds(through_jpeg(taken.pixels, 92))
    assert AreaKind.WHITE_WATER in found
    assert AreaKind.SPARKLE in found


def test_at_most_eight_areas() -> None:
    """A frame with many areas reports the eight largest, lettered by size."""
    pixels = natural().copy()
    for index in range(12):
        pixels[500 : 520 + index, 60 + 90 * index : 90 + 90 * index] = 255
    clipping = find_clipping(pixels)
    assert "".join(area.letter for area in clipping.areas) == "ABCDEFGH"
    shares = [area.share for area in clipping.areas]
    assert shares == sorted(shares, reverse=True)


@cache
def rendered(seed: int, sky_gap: bool, white_stops: float) -> Taken:
    """A fall with known truth."""
    plan = Plan(seed=seed, sky_gap=sky_gap, white_stops=white_stops, sparkle_share=0.0006)
    return take(compose(plan))


@pytest.mark.parametrize("seed", [21, 22, 23])
def test_rendered_fall(seed: int) -> None:
    """In a rendered gorge the gap is sky, water is called water, and shares hold."""
    taken = rendered(seed, sky_gap=True, white_stops=3.4)
    clipping = through_jpeg(taken.pixels, 92)
    named = dict.fromkeys(AreaKind, 0.0)
    for area in clipping.areas:
        named[area.kind] += area.share
    assert named[AreaKind.SKY_GAP] == pytest.approx(taken.share(Kind.SKY_GAP), rel=0.15)
    assert named[AreaKind.WHITE_WATER] >= 0.4 * taken.share(Kind.WHITE_WATER)
    assert named[AreaKind.WHITE_WATER] <= 1.3 * taken.share(Kind.WHITE_WATER)


@pytest.mark.parametrize("seed", [21, 22])
def test_rendered_fall_with_room(seed: int) -> None:
    """A rendered fall that is exposed with room shows sparkle and nothing else that is named."""
    taken = rendered(seed, sky_gap=False, white_stops=1.6)
    found = kinds(find_clipping(taken.pixels))
    assert AreaKind.WHITE_WATER not in found
    assert AreaKind.SKY_GAP not in found


#: The first two pictures of the recipe, the last gorges, pushed photographs of packages, and later
#: pictures: planted, and gorges of twice the size.
CHECKED = (
    0, 1, *range(PLANTED + GORGES - 3, PLANTED + GORGES), *PACKAGED_PUSHED[:2], 20_000, 45_000,
)  # fmt: skip


def test_trained_numbers_come_from_the_recipe() -> None:
    """Pictures of the recipe give their rows of the table, and the table gives the first trees."""
    with np.load(TABLE) as table:
        found, columns, pictures = (table[name] for name in ("features", "columns", "pictures"))
    for index in CHECKED:
        rows, there = samples(index), pictures == index
        assert [column for _, column in rows] == columns[there].tolist()
        if not rows:
            continue
        # Another version of a library may round a pixel otherwise, which moves a few numbers.
        near = np.isclose([features for features, _ in rows], found[there], rtol=0.02, atol=0.02)
        assert near.mean() > 0.95
    assert np.isin(pictures, CHECKED).sum() > 5
    first = recipe.trained(found.astype(np.float32), columns, rounds=2)
    with np.load(NUMBERS) as stored:
        for name, array in first.items():
            np.testing.assert_array_equal(array, stored[name][: len(array)])


def test_likelihoods_add_up() -> None:
    """For whatever numbers, the likelihoods of an area make one."""
    features = np.random.default_rng(8).normal(0, 20, (50, FEATURES))
    likely = trained().of(features)
    assert likely.shape == (50, 5)
    np.testing.assert_allclose(likely.sum(axis=1), 1)


@pytest.mark.parametrize(
    ("kind", "likely", "place", "share", "possible"),
    [
        (AreaKind.LAMP, 0.95, (0.4, 0.4, 0.1, 0.1), 0.01, True),
        (AreaKind.LAMP, 0.95, (0.1, 0.1, 0.8, 0.5), 0.2, False),  # larger than any lamp
        (AreaKind.WHITE_WATER, 0.95, (0.4, 0.4, 0.1, 0.1), 0.01, True),
        (AreaKind.WHITE_WATER, 0.95, (0.4, 0.4, 0.01, 0.01), 0.00005, False),  # a speck
        (AreaKind.SPARKLE, 0.95, (0.4, 0.6, 0.01, 0.01), 0.00005, True),
        (AreaKind.SPARKLE, 0.95, (0.4, 0.1, 0.01, 0.01), 0.00005, False),  # sky through leaves
        (AreaKind.SKY_GAP, 0.93, (0.4, 0.0, 0.2, 0.2), 0.02, True),
        (AreaKind.SKY_GAP, 0.93, (0.4, 0.2, 0.2, 0.2), 0.02, False),  # not at the top, not sure
        (AreaKind.SKY_GAP, 0.98, (0.4, 0.2, 0.2, 0.2), 0.02, True),
        (AreaKind.SKY_GAP, 0.99, (0.4, 0.0, 0.2, 0.7), 0.1, False),  # hangs low: may be a fall
        (AreaKind.SKY_GAP, 0.99, (0.2, 0.0, 0.7, 0.7), 0.3, True),  # broad
    ],
)
def test_place_and_size_may_forbid_a_kind(
    kind: AreaKind, likely: float, place: tuple[float, ...], share: float, possible: bool
) -> None:
    """However likely by its numbers, a kind needs a possible place and size."""
    area = ClippedArea("A", AreaKind.UNSURE, Box(*place), share, 0.1, ("red",), 0.5)
    assert may_be(area, Said(kind, likely)) is possible


@pytest.mark.parametrize(
    ("said", "place", "share", "glint"),
    [
        (Said(AreaKind.SPARKLE, 0.9, 0.95), (0.4, 0.6, 0.01, 0.01), 0.00005, True),
        (Said(AreaKind.WHITE_WATER, 0.9, 0.95), (0.4, 0.6, 0.01, 0.01), 0.00005, True),  # a drop
        (Said(AreaKind.UNSURE, 0.5, 0.95), (0.4, 0.6, 0.01, 0.01), 0.00005, True),
        (Said(AreaKind.UNSURE, 0.5, 0.8), (0.4, 0.6, 0.01, 0.01), 0.00005, False),
        (Said(AreaKind.WHITE_WATER, 0.9, 0.95), (0.4, 0.6, 0.02, 0.02), 0.0002, False),  # white
        (Said(AreaKind.WHITE_WATER, 0.9, 0.95), (0.4, 0.6, 0.05, 0.01), 0.00005, False),  # wide
        (Said(AreaKind.SPARKLE, 0.9, 0.95), (0.4, 0.1, 0.01, 0.01), 0.00005, False),  # leaves
    ],
)
def test_drops_of_white_water_count_with_the_sparkle(
    said: Said, place: tuple[float, ...], share: float, glint: bool
) -> None:
    """What is too small to be named as water, but likely of it, is a drop or a glint."""
    area = ClippedArea("A", AreaKind.UNSURE, Box(*place), share, 0.1, ("red",), 0.5)
    assert is_glint(area, said) is glint


def test_nothing_unsure_is_possible() -> None:
    """What is not sure has no name, wherever it lies."""
    area = ClippedArea("A", AreaKind.UNSURE, Box(0.4, 0.4, 0.1, 0.1), 0.01, 0.1, ("red",), 0.5)
    assert not may_be(area, Said(AreaKind.UNSURE, 0.5))


def test_water_is_likelier_where_the_person_says_that_it_is() -> None:
    """The person's cells make water likelier there, and leave the other areas as they are."""
    features = np.random.default_rng(8).normal(0, 20, (50, FEATURES))
    there, even = np.arange(50) % 2 == 0, np.full((50, 5), 0.2)
    before, after = likelihoods(features, even), likelihoods(features, even, there)
    for told, one, other in zip(there, before, after, strict=True):
        assert (other.of_water > one.of_water) if told else (other.kind is one.kind)
        assert told or other.of_water == pytest.approx(one.of_water)


def test_told_water_needs_cells_of_the_grid() -> None:
    """A cell that the grid lacks is refused."""
    pixels = natural().copy()
    pixels[480:560, 500:640] = 255
    assert kinds(find_clipping(pixels, water_cells=("C2", "C3")))
    with pytest.raises(UnknownCellError):
        find_clipping(pixels, water_cells=("E5",))
