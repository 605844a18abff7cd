"""Light levels by their names, and how bright settings make a scene in them."""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.errors import OutOfDomainError
from core.exposure import Settings
from core.light import LIGHTS, Light, metered_level
from core.series import exact_f_number, exact_shutter_s
from tests.core.numbers import NEVER_A_LEVEL, f_numbers, isos, shutters_s


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
    """At ISO 100 each light is metered right at the time that the exposure value implies."""
    settings = Settings(exact_f_number(f_number), shutter_s)
    assert metered_level(settings, LIGHTS[key].ev100) == pytest.approx(0.0, abs=1e-9)


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


@pytest.mark.parametrize("bad", [*NEVER_A_LEVEL, -31.0, 31.0])
@pytest.mark.parametrize(
    "call",
    [
        lambda bad: metered_level(Settings(8, 1), bad),
        lambda bad: metered_level(Settings(8, 1), 9, bad),
    ],
)
def test_bad_levels_are_refused(call: Callable[[float], object], bad: float) -> None:
    """NaN, infinity and stops beyond all light are refused."""
    with pytest.raises(OutOfDomainError):
        call(bad)
