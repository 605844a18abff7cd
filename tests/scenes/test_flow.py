"""Moving water is streaked by exactly the length that speed, time and coverage give."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.scenes.flow import carried, moved, streak_px, time_of_fall


def impulse(rows: int, at: int) -> np.ndarray[tuple[int, int], np.dtype[np.float32]]:
    pattern = np.zeros((rows, 3), np.float32)
    pattern[at] = 1
    return pattern


@pytest.mark.parametrize(
    ("speed_mps", "shutter_s", "coverage_m", "side_px", "expected"),
    [
        (8.0, 0.25, 20.0, 3000, 300.0),  # 2 m of 20 m is a tenth of the side
        (8.0, 1 / 500, 20.0, 3000, 2.4),
        (0.0, 1.0, 20.0, 3000, 0.0),
    ],
)
def test_streak_length(
    speed_mps: float, shutter_s: float, coverage_m: float, side_px: int, expected: float
) -> None:
    """Way travelled over what the frame covers, times the side (own arithmetic)."""
    assert streak_px(speed_mps, shutter_s, coverage_m, side_px) == pytest.approx(expected)


@pytest.mark.parametrize("length", [1, 7, 40])
def test_a_point_becomes_a_streak_of_that_length(length: int) -> None:
    """An impulse that moves by n pixels lies on exactly n of them, evenly, from its start down."""
    seen = moved(impulse(200, 60), length)[:, 1]
    np.testing.assert_array_equal(np.flatnonzero(seen), np.arange(60, 60 + length))
    np.testing.assert_allclose(seen[60 : 60 + length], 1 / length, rtol=1e-6)


def test_a_fraction_of_a_pixel_counts_as_a_fraction() -> None:
    """After 2.5 pixels the last pixel has half of what the others have."""
    seen = moved(impulse(20, 5), 2.5)[:, 0]
    np.testing.assert_allclose(seen[4:9], [0, 0.4, 0.4, 0.2, 0], atol=1e-7)


def test_still_water_stays_as_it_is() -> None:
    """No movement changes nothing."""
    pattern = impulse(9, 4)
    assert moved(pattern, 0) is pattern


@given(st.floats(0.01, 60), st.integers(0, 200))
def test_moving_keeps_the_light(length: float, at: int) -> None:
    """The streak holds as much light as the point did, as long as it stays in the frame."""
    seen = moved(impulse(400, at + 70), length)
    assert float(seen[:, 0].sum()) == pytest.approx(1, rel=1e-4)


def test_streak_in_the_frame_is_speed_times_time() -> None:
    """Water at 400 pixels a second and 1/8 s leaves a streak of 50 pixels."""
    rows, pixels_per_s, rows_per_s = 600, 400.0, 800.0
    time_s = np.repeat((np.arange(rows) / pixels_per_s)[:, None], 3, axis=1).astype(np.float32)
    across = np.full((rows, 3), 0.5, np.float32)
    seen = carried(
        impulse(1200, 200), across, time_s, rows_per_s=rows_per_s, shutter_s=0.125
    )  # the point lies at 200 / 800 s = 100 pixels down
    lit = np.flatnonzero(seen[:, 1] > 0)
    assert lit[0] == 100
    assert len(lit) == pytest.approx(50, abs=1)


def test_time_of_fall_without_a_start() -> None:
    """From rest, 4.905 m take one second (g 9.81 m/s2: h = g t² / 2)."""
    drops = np.array([0.0, 4.905, 19.62])
    np.testing.assert_allclose(time_of_fall(drops, first_mps=0.0), [0, 1, 2], rtol=1e-9)
