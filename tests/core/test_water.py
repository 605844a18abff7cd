"""Speed of water, share of the frame, look from time and time from look."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
import pytest
import scipy.integrate
from hypothesis import given
from hypothesis import strategies as st

from core.errors import OutOfDomainError
from core.series import at_least, at_most, shutter_label, time_marks
from core.water import AIM, BANDS, Look, coverage_m, look_of, share, time_for_share, time_range
from core.water_speed import (
    GRAVITY_MPS2,
    chute_speed_mps,
    drag_fall_speed_mps,
    foot_speed_range_mps,
    free_fall_speed_mps,
    mean_fall_speed_mps,
)
from tests.core.numbers import (
    NEVER_A_LEVEL,
    NEVER_POSITIVE,
    Ref,
    angles_deg,
    coverages_m,
    shutters_s,
    speeds_mps,
)

shares = st.floats(1e-5, 5.0)
heights_m = st.floats(0.1, 900.0)
looks = st.sampled_from(Look)
MECHANICS = "textbook mechanics, g = 9.80665 m/s2 (formula only)"


REFERENCES = [
    Ref("free fall 0.5 m", free_fall_speed_mps(0.5), 3.132, 0.0006, MECHANICS),
    Ref("free fall 1 m", free_fall_speed_mps(1), 4.429, 0.0006, MECHANICS),
    Ref("free fall 5 m", free_fall_speed_mps(5), 9.903, 0.0006, MECHANICS),
    Ref("free fall 10 m", free_fall_speed_mps(10), 14.005, 0.0006, MECHANICS),
    Ref("free fall 20 m", free_fall_speed_mps(20), 19.806, 0.0006, MECHANICS),
    Ref("free fall 50 m", free_fall_speed_mps(50), 31.316, 0.0006, MECHANICS),
    Ref("mean over 10 m: height over time", mean_fall_speed_mps(10), 10 / 1.4281, 5e-4, MECHANICS),
    Ref("mean over 12 m", mean_fall_speed_mps(12), 7.67, 0.005, MECHANICS),
    Ref("drag, 1 m", drag_fall_speed_mps(1, 9.09), 4.178, 0.001, MECHANICS),
    Ref("drag, 5 m", drag_fall_speed_mps(5, 9.09), 7.577, 0.001, MECHANICS),
    Ref("drag, 10 m", drag_fall_speed_mps(10, 9.09), 8.656, 0.001, MECHANICS),
    Ref("drag, 20 m", drag_fall_speed_mps(20, 9.09), 9.050, 0.001, MECHANICS),
    Ref("chute 0.1 m", chute_speed_mps(0.1), 0.99, 0.001, "Chow 1959, from memory (formula only)"),
    Ref("chute 0.3 m", chute_speed_mps(0.3), 1.715, 0.001, "Chow 1959, from memory (formula only)"),
    Ref("chute 1 m", chute_speed_mps(1), 3.132, 0.001, "Chow 1959, from memory (formula only)"),
]


@pytest.mark.parametrize("ref", REFERENCES, ids=lambda ref: ref.what)
def test_published_value(ref: Ref) -> None:
    """The published value comes out, within the digits that the source prints."""
    assert ref.found == pytest.approx(ref.expected, rel=0, abs=ref.tolerance)


@pytest.mark.parametrize("height_m", [0.5, 2.0, 10.0, 40.0])
def test_drag_against_a_solver(height_m: float) -> None:
    """A general solver of d(v^2)/dh = 2 g (1 - v^2 / vt^2) finds the same speed."""
    terminal = 9.2
    solved = scipy.integrate.solve_ivp(
        lambda _height, squared: 2 * GRAVITY_MPS2 * (1 - squared / terminal**2),
        (0.0, height_m),
        [0.0],
        rtol=1e-10,
        atol=1e-10,
    )
    assert drag_fall_speed_mps(height_m) == pytest.approx(math.sqrt(solved.y[0, -1]), rel=1e-6)


def test_drag_speed_tends_to_the_largest_drops() -> None:
    """High falls of single drops end at 9.2 m/s (Gunn & Kinzer 1949, from memory)."""
    assert drag_fall_speed_mps(200) == pytest.approx(9.2, abs=0.001)


@given(heights_m, heights_m)
def test_speeds_at_the_foot_are_a_range_that_grows(height_m: float, more_m: float) -> None:
    """Air slows, free fall bounds, and a higher fall is never slower."""
    low, high = foot_speed_range_mps(height_m)
    assert 0 < low <= high
    if height_m + more_m <= 1000:
        further = foot_speed_range_mps(height_m + more_m)
        assert further[0] >= low
        assert further[1] > high


def test_whole_fall_of_twelve_metres() -> None:
    """18 mm upright from 18 m covers 36 m; 1/4 s is 5.3 %, textured, 1/2 s is 10.7 %, silky.

    Computed here from distance * side / focal length and v t / coverage, v = sqrt(2 g h) / 2.
    """
    covered = coverage_m(18, 36, 18)
    speed = mean_fall_speed_mps(12)
    assert covered == pytest.approx(36)
    assert speed == pytest.approx(7.7, abs=0.05)
    parts = share(speed, [0.25, 0.5], covered)
    np.testing.assert_allclose(parts, [0.053, 0.107], rtol=0, atol=0.0005)
    assert look_of(share(speed, 0.25, covered)) is Look.TEXTURED
    assert look_of(share(speed, 0.5, covered)) is Look.SILKY


def test_stream_along_across_and_towards() -> None:
    """24 mm upright, 1.5 m/s at 3 m: along the long side 8.3 %, across 12.5 %, at 30 deg half.

    Computed here from v t sin(angle) / coverage.
    """
    along, across = coverage_m(3, 36, 24), coverage_m(3, 24, 24)
    assert share(1.5, 0.25, along) == pytest.approx(0.083, abs=0.0005)
    assert share(1.5, 0.25, across) == pytest.approx(0.125)
    for covered in (along, across):
        towards = share(1.5, 0.25, covered, 30)
        assert towards == pytest.approx(share(1.5, 0.25, covered) / 2)


def test_textured_times_of_that_stream_as_marks() -> None:
    """Along the long side texture lasts from 1/30 to 0.3 s, as marks of the dial.

    Computed here from share * coverage / v: 0.03 s to 0.3 s.
    """
    shortest, longest = time_range(Look.TEXTURED, 1.5, coverage_m(3, 36, 24))
    assert (shortest, longest) == pytest.approx((0.03, 0.3))
    # The mark 1/30 means 1/32 s and 0.3 s means 0.315 s, a fourteenth of a stop beyond the edge.
    assert at_least(time_marks(), shortest).label == "1/30 s"
    assert shutter_label(longest) == "0.3 s"
    assert at_most(time_marks(), longest).label == "1/4 s"


@pytest.mark.parametrize(
    ("shutter_s", "percent", "look"),
    # A 10 m fall, 24 mm upright from 15 m, by which the bands are set (own rule); percentages
    # computed here from v t / coverage.
    [
        (1 / 500, 0.06, Look.FROZEN),
        (1 / 30, 1.0, Look.TEXTURED),
        (1 / 8, 3.9, Look.TEXTURED),
        (1 / 4, 7.8, Look.TEXTURED),
        (1 / 2, 16, Look.SILKY),
        (1, 31, Look.SILKY),
        (2, 62, Look.MISTY),
    ],
)
def test_case_by_which_the_bands_are_set(shutter_s: float, percent: float, look: Look) -> None:
    """The looks that teachers give to times come out for the case behind the bands."""
    part = share(mean_fall_speed_mps(10), shutter_s, coverage_m(15, 36, 24))
    assert part * 100 == pytest.approx(percent, rel=0.06)
    assert look_of(part) is look


@pytest.mark.parametrize(
    ("part", "look"),
    [
        (0, Look.FROZEN),
        (0.00149, Look.FROZEN),
        (0.0015, Look.CRISP),
        (0.01, Look.CRISP),
        (0.0101, Look.TEXTURED),
        (0.1, Look.TEXTURED),
        (0.1 * (1 + 1e-12), Look.TEXTURED),
        (0.101, Look.SILKY),
        (0.35, Look.SILKY),
        (0.351, Look.MISTY),
        (20, Look.MISTY),
    ],
)
def test_look_of_a_share(part: float, look: Look) -> None:
    """Frozen is below its limit, each other look reaches up to and with its limit (own rule)."""
    assert look_of(part) is look


@pytest.mark.parametrize("look", Look)
def test_aim_lies_inside_its_band(look: Look) -> None:
    """What is aimed at has the look that is aimed for, and texture is aimed at with 4 %."""
    assert look_of(AIM[look]) is look
    assert AIM[Look.TEXTURED] == 0.04


@given(speeds_mps, shutters_s, coverages_m, angles_deg, st.floats(0.1, 10.0))
def test_share_scales(
    speed: float, shutter: float, covered: float, angle: float, times: float
) -> None:
    """Share grows with time and speed, falls with coverage, and is alike from both sides."""
    once = share(speed, shutter, covered, angle)
    assert share(speed, shutter * times, covered, angle) == pytest.approx(once * times)
    assert share(speed * times, shutter, covered, angle) == pytest.approx(once * times)
    assert share(speed, shutter, covered * times, angle) == pytest.approx(once / times)
    assert share(speed, shutter, covered, 180 - angle) == pytest.approx(once)
    assert once <= share(speed, shutter, covered) * (1 + 1e-12)


@given(speeds_mps, shutters_s, st.floats(0.5, 200.0), st.floats(8.0, 300.0))
def test_same_look_with_twice_the_lens_takes_half_the_time(
    speed: float, shutter: float, distance: float, focal: float
) -> None:
    """Doubling the focal length, or halving the distance, halves the time for the same share."""
    once = share(speed, shutter, coverage_m(distance, 36, focal))
    longer = share(speed, shutter / 2, coverage_m(distance, 36, focal * 2))
    nearer = share(speed, shutter / 2, coverage_m(distance / 2, 36, focal))
    assert (longer, nearer) == pytest.approx((once, once))


@given(shares, speeds_mps, coverages_m, angles_deg)
def test_time_for_a_share_gives_that_share_and_look(
    part: float, speed: float, covered: float, angle: float
) -> None:
    """From share to time and back is the same share and, inside a band, the same look."""
    time = time_for_share(part, speed, covered, angle)
    back = share(speed, time, covered, angle)
    assert back == pytest.approx(part)
    assert look_of(back) is look_of(part)


@given(looks, speeds_mps, coverages_m, angles_deg)
def test_ends_of_a_range_lie_at_the_edges_of_the_band(
    look: Look, speed: float, covered: float, angle: float
) -> None:
    """The shortest and longest time of a look give the band's limits; the open ends are 0, inf."""
    edges = (0.0, *BANDS, math.inf)
    place = list(Look).index(look)
    for time, edge in zip(
        time_range(look, speed, covered, angle), edges[place : place + 2], strict=True
    ):
        if 0 < edge < math.inf:
            assert share(speed, time, covered, angle) == pytest.approx(edge)
        else:
            assert time == edge


@given(speeds_mps, coverages_m, angles_deg)
def test_ranges_meet_and_hold_their_aim(speed: float, covered: float, angle: float) -> None:
    """One look ends where the next begins, and the aimed time lies inside its range."""
    ranges = [time_range(look, speed, covered, angle) for look in Look]
    assert [end for _, end in ranges[:-1]] == [start for start, _ in ranges[1:]]
    for look, (start, end) in zip(Look, ranges, strict=True):
        assert start < time_for_share(AIM[look], speed, covered, angle) < end


def test_table_of_shares() -> None:
    """Times down and speeds across make a table at once; single numbers a float."""
    table = share([1.0, 2.0, 4.0], [[0.25], [0.5]], 6.0)
    np.testing.assert_allclose(table, [[1 / 24, 1 / 12, 1 / 6], [1 / 12, 1 / 6, 1 / 3]])
    assert isinstance(share(1.0, 0.25, 6.0), float)
    assert share(1.0, 0.25, 6.0, 0.0) == 0.0


@pytest.mark.parametrize("bad", NEVER_POSITIVE)
@pytest.mark.parametrize(
    "call",
    [
        free_fall_speed_mps,
        mean_fall_speed_mps,
        drag_fall_speed_mps,
        lambda bad: drag_fall_speed_mps(10, bad),
        foot_speed_range_mps,
        chute_speed_mps,
        lambda bad: coverage_m(bad, 36, 24),
        lambda bad: coverage_m(3, bad, 24),
        lambda bad: coverage_m(3, 36, bad),
        lambda bad: share(bad, 0.25, 6),
        lambda bad: share(1, [0.25, bad], 6),
        lambda bad: share(1, 0.25, bad),
        lambda bad: time_for_share(bad, 1, 6),
        lambda bad: time_for_share(0.04, bad, 6),
        lambda bad: time_for_share(0.04, 1, bad),
        lambda bad: time_range(Look.SILKY, bad, 6),
        lambda bad: time_range(Look.SILKY, 1, bad),
    ],
)
def test_bad_numbers_are_refused(call: Callable[[float], object], bad: float) -> None:
    """Zero, negative, NaN and infinity are no speed, time or length."""
    with pytest.raises(OutOfDomainError):
        call(bad)


@pytest.mark.parametrize("bad", [*NEVER_A_LEVEL, -0.1, 180.1])
@pytest.mark.parametrize(
    "call",
    [
        lambda bad: share(1, 0.25, 6, bad),
        lambda bad: time_for_share(0.04, 1, 6, bad),
        lambda bad: time_range(Look.SILKY, 1, 6, bad),
    ],
)
def test_bad_angles_are_refused(call: Callable[[float], object], bad: float) -> None:
    """An angle lies between 0 and 180 degrees."""
    with pytest.raises(OutOfDomainError):
        call(bad)


@pytest.mark.parametrize("bad", [math.nan, math.inf, -0.001])
def test_bad_shares_have_no_look(bad: float) -> None:
    """A negative, infinite or undefined share has no look."""
    with pytest.raises(OutOfDomainError):
        look_of(bad)


def test_flow_straight_at_the_camera_has_no_time() -> None:
    """Straight towards the camera the streaks have no length to first order: no time is told."""
    with pytest.raises(OutOfDomainError):
        time_for_share(0.04, 1, 6, 0.0)


def test_depths_and_heights_beyond_the_earth_are_refused() -> None:
    """No fall is higher than 1000 m, no chute deeper than 20 m (own rule)."""
    with pytest.raises(OutOfDomainError):
        free_fall_speed_mps(1001)
    with pytest.raises(OutOfDomainError):
        chute_speed_mps(21)
