"""Light levels, placing the white, contrast of a scene."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import NamedTuple

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.errors import OutOfDomainError
from core.exposure import Settings, shutter_for
from core.light import (
    FOAM_REFLECTANCE,
    LIGHTS,
    RAW_HEADROOM,
    WET_ROCK_REFLECTANCE,
    WHITE_BOLD_RAW,
    WHITE_PLACEMENT_JPEG,
    WHITE_PLACEMENT_RAW,
    Light,
    contrast_stops,
    metered_level,
    room_above,
    white_change,
)
from core.series import exact_f_number, exact_shutter_s
from tests.core.numbers import NEVER_A_LEVEL, NEVER_POSITIVE, f_numbers, isos, shutters_s


class Level(NamedTuple):
    """A light and the exposure values printed for it."""

    key: str
    low: float
    high: float


#: ANSI PH2.7-1973 and PH2.7-1986, table of exposure values at ISO 100; one value or a range.
PUBLISHED = [
    Level("snow in sun", 16, 16),
    Level("full sun", 15, 15),
    Level("hazy sun", 14, 14),
    Level("bright cloud", 13, 13),
    Level("overcast", 12, 12),
    Level("open shade", 12, 12),
    Level("before sunset", 12, 14),
    Level("sunset", 12, 12),
    Level("after sunset", 9, 11),
    Level("full moonlight", -3, -2),
]


@pytest.mark.parametrize("row", PUBLISHED, ids=lambda row: row.key)
def test_level_is_the_published_one(row: Level) -> None:
    """The level lies in the middle of what the table prints and is no estimate."""
    light = LIGHTS[row.key]
    assert light.ev100 == (row.low + row.high) / 2
    assert not light.estimate
    assert "ANSI" in light.source


def test_all_other_lights_say_that_they_are_estimates() -> None:
    """What the published table does not hold is marked as an estimate (common practice)."""
    estimates = {key: light.ev100 for key, light in LIGHTS.items() if light.estimate}
    assert estimates == {
        "open gorge": 10,
        "light canopy": 9,
        "wooded gorge": 8,
        "dense canopy": 7,
        "deep slot": 6,
        "dusk": 6,
    }
    assert set(estimates) | {row.key for row in PUBLISHED} == set(LIGHTS)


@pytest.mark.parametrize("light", LIGHTS.values(), ids=LIGHTS.keys())
def test_level_lies_in_its_range(light: Light) -> None:
    """Each light is found under its key, with its level inside its own range."""
    assert LIGHTS[light.key] is light
    assert light.low <= light.ev100 <= light.high


@pytest.mark.parametrize(
    ("key", "f_number", "shutter_s"),
    # Computed here from N^2 2^-EV with exact third stops.
    [
        ("full sun", 16, 1 / 128),
        ("bright cloud", 8, 1 / 128),
        ("overcast", 11, 1 / 32),
        ("open gorge", 11, 1 / 8),
        ("light canopy", 11, 1 / 4),
        ("wooded gorge", 11, 1 / 2),
        ("dense canopy", 8, 1 / 2),
        ("deep slot", 16, 4),
    ],
)
def test_time_in_this_light(key: str, f_number: float, shutter_s: float) -> None:
    """At ISO 100 each light asks for the time that the exposure value implies."""
    exact = exact_f_number(f_number)
    assert shutter_for(LIGHTS[key].ev100, exact) == pytest.approx(shutter_s)


def test_quarter_second_at_f11_is_overcast_under_light_canopy() -> None:
    """f/11, 1/4 s, ISO 100 is exactly right for EV 9, which goes by an estimate."""
    settings = Settings(exact_f_number(11), exact_shutter_s(1 / 4))
    light = LIGHTS["light canopy"]
    assert metered_level(settings, light.ev100) == pytest.approx(0.0, abs=1e-12)
    assert light.estimate
    assert metered_level(settings, LIGHTS["overcast"].ev100) == pytest.approx(3.0)
    assert metered_level(settings, LIGHTS["overcast"].ev100, 3.0) == pytest.approx(0.0, abs=1e-12)


@given(f_numbers, shutters_s, isos, st.floats(-6, 17), st.floats(0, 15), st.floats(-3, 3))
def test_level_rises_with_time_and_light(
    f_number: float,
    shutter_s: float,
    iso: float,
    level: float,
    filter_stops: float,
    stops: float,
) -> None:
    """A stop of time or of light is a stop of level; a filter takes its own."""
    once = metered_level(Settings(f_number, shutter_s, iso), level)
    longer = Settings(f_number, shutter_s * 2**stops, iso)
    assert metered_level(longer, level) == pytest.approx(once + stops, abs=1e-9)
    assert metered_level(longer, level - stops) == pytest.approx(once, abs=1e-9)
    filtered = metered_level(Settings(f_number, shutter_s, iso), level, filter_stops)
    assert filtered == pytest.approx(once - filter_stops, abs=1e-9)


def test_raw_headroom_follows_from_the_speed() -> None:
    """Raw clips log2(sqrt(2) / 0.18) above the mid-tone (ISO 12232:2006, from memory)."""
    assert pytest.approx(math.log2(math.sqrt(2) / 0.18), abs=0.01) == RAW_HEADROOM


def test_placements_stay_below_clipping_and_in_order() -> None:
    """JPEG sits below raw, the bold limit above it, and all below clipping."""
    assert WHITE_PLACEMENT_JPEG < WHITE_PLACEMENT_RAW < WHITE_BOLD_RAW < RAW_HEADROOM
    # About a stop spare for sparkle at the usual placement (common practice).
    assert room_above(WHITE_PLACEMENT_RAW) == pytest.approx(1.0, abs=0.05)


@pytest.mark.parametrize(
    ("spot", "placement", "change"),
    # Computed here from placement less reading.
    [(2, 2, 0), (1, 2, 1), (3, 2, -1), (2, 1 + 2 / 3, -1 / 3), (0, 2 + 2 / 3, 2 + 2 / 3)],
)
def test_white_change(spot: float, placement: float, change: float) -> None:
    """What the meter shows short of the placement is what is still to be given."""
    assert white_change(spot, placement) == pytest.approx(change)


@given(st.floats(-5, 5), st.floats(1, 3))
def test_white_lands_where_it_belongs(spot: float, placement: float) -> None:
    """After the change the meter shows the placement, and the room left is what is above it."""
    after = spot + white_change(spot, placement)
    assert after == pytest.approx(placement)
    assert room_above(after) == pytest.approx(RAW_HEADROOM - placement)


def test_foam_and_wet_rock_in_the_same_light() -> None:
    """Foam against wet rock is 3.6 to 4.3 stops, with log2 of the ratio of reflectances."""
    least = contrast_stops(FOAM_REFLECTANCE[0], WET_ROCK_REFLECTANCE[1], 9, 9)
    most = contrast_stops(FOAM_REFLECTANCE[1], WET_ROCK_REFLECTANCE[0], 9, 9)
    assert (least, most) == pytest.approx((3.6, 4.3), abs=0.05)


def test_sun_on_the_water_and_rock_in_shade() -> None:
    """Sun on foam against open shade on the darkest rock is 7.3 stops: 4.3 and 15 - 12."""
    contrast = contrast_stops(0.8, 0.04, LIGHTS["full sun"].ev100, LIGHTS["open shade"].ev100)
    assert contrast == pytest.approx(7.3, abs=0.05)


@given(st.floats(0.01, 1), st.floats(0.01, 1), st.floats(-5, 16), st.floats(-5, 16))
def test_contrast_turns_its_sign_when_swapped(
    bright: float, dark: float, bright_ev: float, dark_ev: float
) -> None:
    """Swapping the two things turns the sign, and nothing else."""
    there = contrast_stops(bright, dark, bright_ev, dark_ev)
    assert contrast_stops(dark, bright, dark_ev, bright_ev) == pytest.approx(-there, abs=1e-9)


@pytest.mark.parametrize("bad", [*NEVER_POSITIVE, 1.01])
@pytest.mark.parametrize(
    "call",
    [
        lambda bad: contrast_stops(bad, 0.04, 9, 9),
        lambda bad: contrast_stops(0.7, bad, 9, 9),
    ],
)
def test_bad_reflectances_are_refused(call: Callable[[float], object], bad: float) -> None:
    """A reflectance lies above 0 and up to 1."""
    with pytest.raises(OutOfDomainError):
        call(bad)


@pytest.mark.parametrize("bad", [*NEVER_A_LEVEL, -31.0, 31.0])
@pytest.mark.parametrize(
    "call",
    [
        lambda bad: metered_level(Settings(8, 1), bad),
        lambda bad: metered_level(Settings(8, 1), 9, bad),
        white_change,
        lambda bad: white_change(2, bad),
        room_above,
        lambda bad: room_above(2, bad),
        lambda bad: contrast_stops(0.7, 0.04, bad, 9),
        lambda bad: contrast_stops(0.7, 0.04, 9, bad),
    ],
)
def test_bad_levels_are_refused(call: Callable[[float], object], bad: float) -> None:
    """NaN, infinity and stops beyond all light are refused."""
    with pytest.raises(OutOfDomainError):
        call(bad)
