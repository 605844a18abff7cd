"""Formats, lenses, bodies and filters."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import NamedTuple

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.camera import (
    FORMATS,
    POLARISER_STOPS,
    Camera,
    Lens,
    SensorFormat,
    density_stops,
    factor_stops,
    nd_factor,
)
from core.errors import OutOfDomainError
from core.series import f_number_marks, iso_marks, time_marks
from tests.core.numbers import NEVER_POSITIVE, focals_mm

FULL_FRAME = FORMATS["full frame"]


class Sides(NamedTuple):
    """A format and its published size."""

    key: str
    diagonal_mm: float
    crop: float
    source: str


SIDES = [
    Sides("full frame", 43.27, 1.0, "36x24 mm, published table of angles of view"),
    Sides("aps-c", 28.35, 1.526, "makers' data sheets, from memory"),
    Sides("aps-c 1.6", 26.82, 1.613, "makers' data sheets, from memory"),
    Sides("four thirds", 21.64, 2.0, "17.3x13.0 mm, published table of angles of view"),
    Sides("1-inch", 15.86, 2.727, "makers' data sheets, from memory"),
    Sides("44x33", 54.78, 0.79, "makers' data sheets, from memory"),
    Sides("phone", 9.5, 4.554, "common practice, from memory"),
]


@pytest.mark.parametrize("sides", SIDES, ids=lambda sides: sides.key)
def test_diagonal_and_crop_factor(sides: Sides) -> None:
    """Diagonals and crop factors are the published ones, to the digits printed."""
    sensor = FORMATS[sides.key]
    assert sensor.diagonal_mm == pytest.approx(sides.diagonal_mm, abs=0.006)
    assert sensor.crop_factor == pytest.approx(sides.crop, abs=0.001)
    assert sensor.long_mm > sensor.short_mm
    assert sensor.long_mm * sensor.short_mm == pytest.approx(sensor.width_mm * sensor.height_mm)


def test_every_format_is_in_the_table() -> None:
    """The table of sides above leaves no format out, and keys name what they hold."""
    assert {sides.key for sides in SIDES} == set(FORMATS)
    assert all(key == sensor.key for key, sensor in FORMATS.items())


@pytest.mark.parametrize("sensor", FORMATS.values(), ids=FORMATS.keys())
def test_formats_hold_exact_marks_in_order(sensor: SensorFormat) -> None:
    """F-numbers and speeds are exact values of the dial, low before high before softening."""
    stops = {mark.exact for mark in f_number_marks()}
    speeds = {mark.exact for mark in iso_marks()}
    assert {*sensor.best_f, sensor.softening_f} <= stops
    assert {sensor.base_iso, sensor.clean_iso, sensor.top_iso} <= speeds
    assert sensor.best_f[0] <= sensor.best_f[1] <= sensor.softening_f
    assert sensor.base_iso <= sensor.clean_iso <= sensor.top_iso


def test_smaller_formats_soften_sooner() -> None:
    """The softening limit is about f/16 over the crop factor, to half a stop."""
    for sensor in FORMATS.values():
        scaled = 16 / sensor.crop_factor
        assert abs(2 * math.log2(sensor.softening_f / scaled)) < 1 / 2


def test_only_the_phone_cannot_stop_down() -> None:
    """A phone has one f-number, f/1.8 (common practice, from memory); no other format has one."""
    fixed = {key: sensor.fixed_f_number for key, sensor in FORMATS.items()}
    assert fixed.pop("phone") == pytest.approx(2 ** (5 / 6))
    assert set(fixed.values()) == {None}


def test_widest_opening_follows_the_zoom() -> None:
    """Between the ends the opening closes linearly in stops over the focal length's logarithm."""
    lens = Lens(25.0, 100.0, 2.0, 4.0)
    assert lens.is_zoom
    assert [lens.widest_at(focal) for focal in (25.0, 50.0, 100.0)] == pytest.approx(
        [2.0, math.sqrt(8.0), 4.0]
    )


@pytest.mark.parametrize(
    ("lens", "focal_mm", "widest"),
    [
        (Lens(24.0, 105.0), 50.0, 4.0),  # unknown: f/4, common practice
        (Lens(24.0, 105.0, narrowest=2.8), 50.0, 2.8),
        (Lens(24.0, 105.0, 4.0), 105.0, 4.0),
        (Lens(24.0, 105.0, None, 5.6), 24.0, 5.6),
        (Lens(50.0, 50.0, 1.4, 1.4), 51.0, 1.4),
        (Lens(24.0, 105.0, 2.8, 4.0), 23.5, 2.8),  # within 3 %: as at the end
        (Lens(24.0, 105.0, 2.8, 4.0), 107.0, 4.0),
    ],
)
def test_widest_opening_at(lens: Lens, focal_mm: float, widest: float) -> None:
    """One known end stands for both, none is f/4; just beyond an end counts as the end."""
    assert lens.widest_at(focal_mm) == pytest.approx(widest)


@given(focals_mm, st.floats(1.0, 10.0), st.floats(0.0, 1.0))
def test_widest_opening_lies_between_the_ends(shortest: float, ratio: float, place: float) -> None:
    """Anywhere in a zoom's range the opening lies between those of its ends."""
    lens = Lens(shortest, shortest * ratio, 2.8, 5.6)
    assert 2.8 - 1e-9 <= lens.widest_at(shortest * ratio**place) <= 5.6 + 1e-9


@pytest.mark.parametrize(
    ("focal_mm", "covered"),
    [(23.2, False), (23.3, True), (24, True), (70, True), (72.1, True), (72.2, False)],
)
def test_lens_covers_its_range_and_a_little_more(focal_mm: float, covered: bool) -> None:
    """A lens covers its range, give or take 3 % (own rule)."""
    lens = Lens(24.0, 70.0)
    assert lens.covers(focal_mm) is covered
    if not covered:
        with pytest.raises(OutOfDomainError):
            lens.widest_at(focal_mm)


def test_prime_is_no_zoom() -> None:
    """One focal length is no zoom."""
    assert not Lens(35.0, 35.0).is_zoom


def test_camera_takes_exact_values_of_the_dial() -> None:
    """What a camera allows unless told otherwise is 30 s to 1/4000 s, as exact values."""
    camera = Camera(FULL_FRAME)
    exact = {mark.label: mark.exact for mark in time_marks()}
    assert (camera.longest_s, camera.shortest_s) == (exact["30 s"], exact["1/4000 s"])
    assert Camera(FULL_FRAME, pixels=(6000, 4000)).pixels == (6000, 4000)


class Density(NamedTuple):
    """A neutral density and the stops that its maker prints."""

    density: float
    stops: float
    tolerance: float
    source: str


#: Makers print the density rounded, hence the tolerance.
DENSITIES = [
    Density(0.3, 1, 0.04, "Kodak Wratten 96 list"),
    Density(0.6, 2, 0.04, "Kodak Wratten 96 list"),
    Density(0.9, 3, 0.04, "Kodak Wratten 96 list"),
    Density(1.2, 4, 0.04, "published list of neutral density glass"),
    Density(1.8, 6, 0.04, "published list of neutral density glass"),
    Density(2.0, 6 + 2 / 3, 0.04, "Kodak Wratten 96 list"),
    Density(3.0, 10, 0.04, "Kodak Wratten 96 list"),
    Density(4.0, 13 + 1 / 3, 0.05, "Kodak Wratten 96 list"),
]


@pytest.mark.parametrize("row", DENSITIES, ids=lambda row: f"{row.density} {row.source}")
def test_density_in_stops(row: Density) -> None:
    """A density takes the stops that its maker says, within the maker's rounding."""
    assert density_stops(row.density) == pytest.approx(row.stops, abs=row.tolerance)


@pytest.mark.parametrize(
    ("factor", "stops"),
    # Computed here from log2(factor).
    [(1, 0), (8, 3), (64, 6), (1000, 9.9658), (1024, 10), (2**20, 20)],
)
def test_factor_in_stops(factor: float, stops: float) -> None:
    """A factor of time is its binary logarithm in stops."""
    assert factor_stops(factor) == pytest.approx(stops, abs=5e-5)


@given(st.floats(0.0, 30.0))
def test_stops_and_factor_are_inverse(stops: float) -> None:
    """From stops to factor and back changes nothing."""
    assert factor_stops(nd_factor(stops)) == pytest.approx(stops, abs=1e-9)


@given(st.floats(0.01, 6.0))
def test_density_is_the_decimal_logarithm_of_the_factor(density: float) -> None:
    """A density and the factor 10^density take the same stops."""
    assert density_stops(density) == pytest.approx(factor_stops(10**density))


def test_polariser_lies_between_theory_and_practice() -> None:
    """A polariser takes more than the ideal stop (Malus, mean over angles) and at most two."""
    assert 1.0 < POLARISER_STOPS <= 2.0


@pytest.mark.parametrize("bad", NEVER_POSITIVE)
@pytest.mark.parametrize(
    "call",
    [
        lambda bad: SensorFormat("x", bad, 24, (8, 11), 16, 100, 800, 1600),
        lambda bad: SensorFormat("x", 36, bad, (8, 11), 16, 100, 800, 1600),
        lambda bad: SensorFormat("x", 36, 24, (bad, 11), 16, 100, 800, 1600),
        lambda bad: SensorFormat("x", 36, 24, (8, bad), 16, 100, 800, 1600),
        lambda bad: SensorFormat("x", 36, 24, (8, 11), bad, 100, 800, 1600),
        lambda bad: SensorFormat("x", 36, 24, (8, 11), 16, bad, 800, 1600),
        lambda bad: SensorFormat("x", 36, 24, (8, 11), 16, 100, bad, 1600),
        lambda bad: SensorFormat("x", 36, 24, (8, 11), 16, 100, 800, bad),
        lambda bad: SensorFormat("x", 36, 24, (8, 11), 16, 100, 800, 1600, bad),
        lambda bad: Lens(bad, 70.0),
        lambda bad: Lens(24.0, bad),
        lambda bad: Lens(24.0, 70.0, bad),
        lambda bad: Lens(24.0, 70.0, None, bad),
        lambda bad: Lens(24.0, 70.0, narrowest=bad),
        lambda bad: Lens(24.0, 70.0).covers(bad),
        lambda bad: Lens(24.0, 70.0).widest_at(bad),
        lambda bad: Camera(FULL_FRAME, base_iso=bad),
        lambda bad: Camera(FULL_FRAME, highest_iso=bad),
        lambda bad: Camera(FULL_FRAME, longest_s=bad),
        lambda bad: Camera(FULL_FRAME, shortest_s=bad),
        lambda bad: Camera(FULL_FRAME, pixels=(bad, 4000)),
        density_stops,
        factor_stops,
    ],
)
def test_bad_numbers_are_refused(call: Callable[[float], object], bad: float) -> None:
    """Zero, negative, NaN and infinity are no size, opening, time or speed."""
    with pytest.raises(OutOfDomainError):
        call(bad)


@pytest.mark.parametrize(
    "call",
    [
        lambda: Lens(70.0, 24.0),
        lambda: Lens(24.0, 70.0, 32.0),
        lambda: Lens(24.0, 70.0).covers(50.0, -0.1),
        lambda: Lens(24.0, 70.0).covers(50.0, math.nan),
        lambda: Camera(FULL_FRAME, base_iso=200, highest_iso=100),
        lambda: Camera(FULL_FRAME, longest_s=1, shortest_s=2),
        lambda: factor_stops(0.5),
        lambda: nd_factor(-1),
        lambda: nd_factor(31),
        lambda: nd_factor(math.nan),
    ],
)
def test_swapped_ends_are_refused(call: Callable[[], object]) -> None:
    """A range whose end lies before its start, and a filter that gives light, are refused."""
    with pytest.raises(OutOfDomainError):
        call()
