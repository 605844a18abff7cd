"""Walking time, turn-back, standing in water, wind chill, cold water and thunder."""

from __future__ import annotations

import math
from datetime import datetime, timedelta, timezone
from typing import NamedTuple
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.errors import OutOfDomainError
from core.trip import (
    COLD_WATER_C,
    FACTOR_GROUP,
    FACTOR_WET_LOADED,
    WaterCold,
    thunder_distance_km,
    turn_back,
    walking_time_min,
    water_cold,
    wind_chill_c,
    wind_chill_f,
)
from core.wading import KNEE_M, Reason, Standing, WaterToStandIn, may_wade


class Walk(NamedTuple):
    """One row of the walking rule."""

    distance_km: float
    climb_m: float
    factor: float
    minutes: float
    source: str


WALKS = [
    Walk(20, 1000, 1, 340, "Naismith in metric form, computed: 5 h 40 min"),
    Walk(2, 100, 1, 34, "5 km/h and 600 m/h, computed"),
    Walk(4, 250, FACTOR_WET_LOADED, 109.5, "the same, half as long again: 1 h 50 min"),
    Walk(6, 400, FACTOR_GROUP, 224, "the same, doubled: 3 h 44 min"),
    Walk(0, 0, 1, 0, "no way, no time"),
]


@pytest.mark.parametrize("walk", WALKS, ids=lambda w: f"{w.distance_km} km {w.climb_m} m")
def test_walking_time(walk: Walk) -> None:
    """The walking rule gives the minutes that it states."""
    minutes = walking_time_min(walk.distance_km, walk.climb_m, walk.factor)
    assert minutes == pytest.approx(walk.minutes)


@given(st.floats(0, 100), st.floats(0, 100), st.floats(0, 4000))
def test_two_ways_take_as_long_as_their_sum(first_km: float, second_km: float, up_m: float) -> None:
    """Walking time adds up over the parts of a way."""
    parts = walking_time_min(first_km, up_m) + walking_time_min(second_km, 0)
    assert parts == pytest.approx(walking_time_min(first_km + second_km, up_m))


@pytest.mark.parametrize(
    ("distance_km", "climb_m", "factor"),
    [(-1, 0, 1), (201, 0, 1), (math.nan, 0, 1), (1, -1, 1), (1, 9001, 1), (1, 0, 0.9), (1, 0, 6)],
)
def test_a_walk_that_cannot_be_is_refused(
    distance_km: float, climb_m: float, factor: float
) -> None:
    """Negative, endless and hurried walks are errors."""
    with pytest.raises(OutOfDomainError):
        walking_time_min(distance_km, climb_m, factor)


def test_turn_back_leaves_an_hour_of_margin() -> None:
    """Sunset 20:30, 90 min out, an hour of margin: leave at 18:00."""
    zone = timezone(timedelta(hours=2))
    sunset = datetime(2027, 6, 1, 20, 30, tzinfo=zone)
    assert turn_back(sunset, 90) == datetime(2027, 6, 1, 18, 0, tzinfo=zone)
    assert turn_back(sunset, 90, margin_min=0).hour == 19


def test_turn_back_counts_real_minutes_over_a_change_of_clocks() -> None:
    """Where the clock is put forward in between, the wall clock shows an hour more of a gap."""
    zone = ZoneInfo("Europe/Zurich")  # clocks go from 02:00 to 03:00 on 28 March 2027
    dawn = datetime(2027, 3, 28, 4, 0, tzinfo=zone)
    assert turn_back(dawn, 60).strftime("%H:%M %z") == "01:00 +0100"


def test_turn_back_needs_a_zone() -> None:
    """A sunset without a zone is no moment."""
    with pytest.raises(ValueError, match="zone"):
        turn_back(datetime(2027, 6, 1, 20, 30), 90)  # noqa: DTZ001  # the point of the test


@pytest.mark.parametrize(("walk_out_min", "margin_min"), [(-1, 60), (2881, 60), (90, -1)])
def test_turn_back_refuses_odd_durations(walk_out_min: float, margin_min: float) -> None:
    """A negative or a two days' way out is a slip."""
    sunset = datetime(2027, 6, 1, 20, 30, tzinfo=ZoneInfo("Europe/Zurich"))
    with pytest.raises(OutOfDomainError):
        turn_back(sunset, walk_out_min, margin_min)


def _water(
    depth_m: float | None = 0.2,
    speed_mps: float | None = 0.5,
    *,
    above_a_drop: bool | None = False,
    bottom_visible: bool | None = True,
    brown: bool | None = False,
    rising: bool | None = False,
    alone: bool | None = False,
    dry_clothes: bool | None = True,
    water_c: float | None = None,
    child_or_frail: bool = False,
) -> WaterToStandIn:
    """Shallow, slow, clear water in company, one thing changed."""
    return WaterToStandIn(
        depth_m=depth_m,
        speed_mps=speed_mps,
        above_a_drop=above_a_drop,
        bottom_visible=bottom_visible,
        brown=brown,
        rising=rising,
        alone=alone,
        dry_clothes=dry_clothes,
        water_c=water_c,
        child_or_frail=child_or_frail,
    )


def test_calm_clear_water_in_company_may_be_stood_in_with_care() -> None:
    """Nothing forbids it; the verdict still says care."""
    verdict = may_wade(_water())
    assert (verdict.standing, verdict.reasons, verdict.unknown) == (Standing.WITH_CARE, (), ())


@pytest.mark.parametrize(
    ("water", "reason"),
    [
        (_water(above_a_drop=True), Reason.ABOVE_A_DROP),
        (_water(bottom_visible=False), Reason.BOTTOM_HIDDEN),
        (_water(depth_m=KNEE_M, speed_mps=0.1), Reason.ABOVE_THE_KNEE),
        (_water(brown=True), Reason.BROWN),
        (_water(rising=True), Reason.RISING),
        (_water(alone=True), Reason.ALONE),
        (_water(dry_clothes=False), Reason.COLD_WITHOUT_DRY_CLOTHES),
        (_water(dry_clothes=False, water_c=20), Reason.COLD_WITHOUT_DRY_CLOTHES),
        (_water(depth_m=0.3, speed_mps=1.5), Reason.TOO_STRONG),
        (_water(child_or_frail=True), Reason.CHILD_OR_FRAIL),
    ],
)
def test_one_thing_against_it_is_enough(water: WaterToStandIn, reason: Reason) -> None:
    """Each of the reasons alone makes the answer no."""
    verdict = may_wade(water)
    assert (verdict.standing, verdict.reasons) == (Standing.NO, (reason,))


@pytest.mark.parametrize(
    ("depth_m", "speed_mps", "too_strong"),
    [
        # depth times speed against 0.4 m2/s, Cox, Yee & Ball 2004
        (0.15, 1.0, False),
        (0.30, 1.0, False),
        (0.30, 1.5, True),
        (0.50, 0.8, True),  # the ceiling itself is too much
        (0.50, 2.0, True),
        (0.15, 2.6, False),
        (0.15, 0.4 / 0.15, True),  # 2.667 m/s, 0.15 m deep
    ],
)
def test_depth_times_speed(depth_m: float, speed_mps: float, too_strong: bool) -> None:
    """From 0.4 m2/s on nobody stands in the water."""
    reasons = may_wade(_water(depth_m=depth_m, speed_mps=speed_mps)).reasons
    assert (Reason.TOO_STRONG in reasons) is too_strong


def test_all_reasons_are_given_at_once() -> None:
    """A person hears everything that speaks against it, not the first thing only."""
    verdict = may_wade(_water(depth_m=0.9, speed_mps=2, brown=True, rising=True, alone=True))
    assert set(verdict.reasons) == {
        Reason.ABOVE_THE_KNEE,
        Reason.TOO_STRONG,
        Reason.BROWN,
        Reason.RISING,
        Reason.ALONE,
    }


def test_warm_water_needs_no_dry_clothes() -> None:
    """At 70 degF and more the clothes decide nothing (US Coast Guard)."""
    assert may_wade(_water(dry_clothes=False, water_c=24)).standing is Standing.WITH_CARE
    assert may_wade(_water(dry_clothes=None, water_c=24)).unknown == ()


def test_what_is_unknown_is_asked() -> None:
    """Without facts the answer is a question, and it names all that is missing."""
    verdict = may_wade(WaterToStandIn())
    assert verdict.standing is Standing.ASK
    assert set(verdict.unknown) == {
        "above_a_drop",
        "brown",
        "rising",
        "depth_m",
        "speed_mps",
        "bottom_visible",
        "alone",
        "dry_clothes",
    }
    assert may_wade(_water(speed_mps=None)).unknown == ("speed_mps",)


def test_unknown_things_never_soften_a_no() -> None:
    """One reason is enough, however little else is known."""
    verdict = may_wade(WaterToStandIn(rising=True))
    assert (verdict.standing, verdict.reasons) == (Standing.NO, (Reason.RISING,))
    assert "depth_m" in verdict.unknown


@given(st.floats(0, 5), st.floats(0, 10), st.floats(0, 5), st.floats(0, 10))
def test_deeper_and_faster_is_never_safer(
    depth_m: float, speed_mps: float, more_m: float, more_mps: float
) -> None:
    """Adding depth or speed never takes a reason away."""
    shallow = may_wade(_water(depth_m=depth_m, speed_mps=speed_mps))
    deep = may_wade(_water(depth_m=depth_m + more_m, speed_mps=speed_mps + more_mps))
    assert set(shallow.reasons) <= set(deep.reasons)


@pytest.mark.parametrize(
    "numbers",
    [{"depth_m": -0.1}, {"speed_mps": 41.0}, {"water_c": 60.0}, {"knee_m": 0.9}],
)
def test_water_that_cannot_be_is_refused(numbers: dict[str, float]) -> None:
    """Numbers that no stream has are errors."""
    with pytest.raises(OutOfDomainError):
        WaterToStandIn(**numbers)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("water_c", "expected"),
    [
        (14.9, WaterCold.VERY_COLD),  # RNLI: below 15 degC
        (15.0, WaterCold.COLD),
        (21.1, WaterCold.COLD),  # US Coast Guard: below 70 degF, 21.11 degC
        (COLD_WATER_C, WaterCold.MILD),
    ],
)
def test_cold_water_has_two_thresholds(water_c: float, expected: WaterCold) -> None:
    """The sea-rescue services differ by 6 K; both limits count."""
    assert water_cold(water_c) is expected


def test_cold_water_threshold_in_both_scales() -> None:
    """70 degF is 21.111 degC."""
    assert pytest.approx(21.111, abs=0.001) == COLD_WATER_C
    with pytest.raises(OutOfDomainError):
        water_cold(math.nan)


#: Row of -15 degF in the chart of the US National Weather Service (2001), a copy of which
#: prints it under -10 degF.
NWS_ROW = {
    5: -28, 10: -35, 15: -39, 20: -42, 25: -44, 30: -46, 35: -48, 40: -50, 45: -51, 50: -52,
    55: -54, 60: -55,
}  # fmt: skip


@pytest.mark.parametrize(("wind_mph", "chill_f"), NWS_ROW.items())
def test_wind_chill_matches_the_us_chart(wind_mph: float, chill_f: float) -> None:
    """The chart's whole degrees come out."""
    assert round(wind_chill_f(-15, wind_mph)) == chill_f


def test_wind_chill_matches_published_test_values() -> None:
    """Values of an open weather library (MetPy, tests of its basic calculations)."""
    assert wind_chill_c(-5, 35 * 3.6) == pytest.approx(-18.9357, abs=1e-4)
    chill_c = wind_chill_c((10 - 32) / 1.8, 4 * 1.609344)
    assert chill_c * 1.8 + 32 == pytest.approx(2.6230789, abs=1e-6)


@pytest.mark.parametrize(
    ("air_c", "wind_kmh", "chill_c"),
    [
        # chart of Environment Canada (2001), from memory
        (5, 5, 4), (0, 10, -3), (-10, 20, -18), (-20, 30, -33), (-25, 30, -39), (-40, 50, -63),
    ],
)  # fmt: skip
def test_wind_chill_matches_the_canadian_chart(
    air_c: float, wind_kmh: float, chill_c: float
) -> None:
    """The chart's whole degrees come out."""
    assert round(wind_chill_c(air_c, wind_kmh)) == chill_c


def test_the_two_wind_chills_agree() -> None:
    """-5 degC in 35 m/s: the two sets of rounded coefficients are 0.05 degF apart."""
    metric_f = wind_chill_c(-5, 35 * 3.6) * 1.8 + 32
    assert metric_f == pytest.approx(wind_chill_f(23, 35 / 0.44704), abs=0.1)


@given(st.floats(-75, 10), st.floats(0, 320))
def test_wind_never_warms(air_c: float, wind_kmh: float) -> None:
    """Wind chill is at most the temperature of the air."""
    assert wind_chill_c(air_c, wind_kmh) <= air_c


@given(st.floats(-75, 0), st.floats(5, 300), st.floats(0.1, 20))
def test_more_wind_chills_more(air_c: float, wind_kmh: float, more_kmh: float) -> None:
    """Below freezing, more wind is colder."""
    assert wind_chill_c(air_c, wind_kmh + more_kmh) < wind_chill_c(air_c, wind_kmh)


def test_calm_air_is_as_cold_as_it_is() -> None:
    """Without wind the form for light wind gives the air itself; at 5 km/h it nearly meets."""
    assert wind_chill_c(-10, 0) == -10
    assert wind_chill_c(-10, 4.999) == pytest.approx(wind_chill_c(-10, 5), abs=0.4)


@pytest.mark.parametrize(("air_f", "wind_mph"), [(51, 10), (20, 2.9), (math.nan, 10), (20, 201)])
def test_us_wind_chill_outside_its_domain(air_f: float, wind_mph: float) -> None:
    """Above 50 degF or under 3 mph there is no wind chill (US National Weather Service)."""
    with pytest.raises(OutOfDomainError):
        wind_chill_f(air_f, wind_mph)


@pytest.mark.parametrize(("air_c", "wind_kmh"), [(10.1, 10), (0, -1), (0, math.nan)])
def test_metric_wind_chill_outside_its_domain(air_c: float, wind_kmh: float) -> None:
    """Above 10 degC there is no wind chill."""
    with pytest.raises(OutOfDomainError):
        wind_chill_c(air_c, wind_kmh)


def test_thunder_three_seconds_a_kilometre() -> None:
    """2.915 s are a kilometre, 4.692 s a mile (343 m/s)."""
    assert thunder_distance_km(2.915451895) == pytest.approx(1, abs=1e-6)
    assert thunder_distance_km(4.691965) == pytest.approx(1.609344, abs=1e-6)
    with pytest.raises(OutOfDomainError):
        thunder_distance_km(-1)
