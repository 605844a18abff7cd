"""The axis of a flow: against another structure tensor, and by laws."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from skimage.feature import structure_tensor

from core.frame.flow_axis import LEVELS, Field, flow_of
from tests.scenes.noise import fractal

SIZE = (256, 256)
EVERYWHERE = np.ones(SIZE, np.bool_)


def waves(axis_deg: float, width_px: float = 12.0) -> Field:
    """Straight streaks along an axis, anticlockwise from the horizontal."""
    down, right = np.indices(SIZE, dtype=np.float32)
    turn = math.radians(axis_deg)
    aside = right * math.sin(turn) + down * math.cos(turn)
    return np.asarray(1 + 0.2 * np.sin(2 * math.pi * aside / width_px), np.float32)


def apart(first: float, second: float) -> float:
    """Angle between two axes [deg]."""
    return abs((first - second + 90) % 180 - 90)


@given(axis_deg=st.floats(0, 179.9), width_px=st.floats(9, 40))
def test_straight_streaks_have_their_axis(axis_deg: float, width_px: float) -> None:
    """The axis of a plane wave is known, whatever its width."""
    flow = flow_of(waves(axis_deg, width_px), EVERYWHERE)
    assert apart(flow.axis_deg, axis_deg) < 3
    assert flow.coherence > 0.9


@pytest.mark.parametrize("seed", range(4))
def test_agrees_with_another_structure_tensor(seed: int) -> None:
    """The axis is that of scikit-image's structure tensor at the octave that rules."""
    rng = np.random.default_rng(seed)
    streaky = np.asarray(1 + 0.1 * fractal(rng, SIZE, (90, 14), 4), np.float32)
    tensor = structure_tensor(streaky, sigma=2, order="rc")  # type: ignore[no-untyped-call]
    rows, mixed, columns = (float(part.mean()) for part in tensor)
    steepest = 0.5 * math.degrees(math.atan2(2 * mixed, columns - rows))
    assert apart(flow_of(streaky, EVERYWHERE).axis_deg, 90 - steepest) < 8


@given(seed=st.integers(0, 50))
def test_a_quarter_turn_of_the_picture_turns_the_axis(seed: int) -> None:
    """Turning the picture by 90 degrees turns the axis by 90 degrees."""
    rng = np.random.default_rng(seed)
    tones = np.asarray(1 + 0.1 * fractal(rng, SIZE, (80, 20), 4), np.float32)
    turned = np.ascontiguousarray(np.rot90(tones))
    before, after = flow_of(tones, EVERYWHERE), flow_of(turned, EVERYWHERE)
    assert apart(after.axis_deg, before.axis_deg + 90) < 3


def test_local_axes_follow_a_bend() -> None:
    """Rings have the axis of the tangent at each place, and none as a whole."""
    down, right = np.indices(SIZE, dtype=np.float32) - 128
    rings = 1 + 0.2 * np.sin(2 * math.pi * np.hypot(down, right) / 12)
    flow = flow_of(np.asarray(rings, np.float32), EVERYWHERE)
    assert flow.coherence < 0.1
    cosine, sine = flow.doubled[32, 58]  # right of the middle: upright
    assert apart(-0.5 * math.degrees(math.atan2(sine, cosine)), 90) < 10
    cosine, sine = flow.doubled[58, 32]  # below it: level
    assert apart(-0.5 * math.degrees(math.atan2(sine, cosine)), 0) < 10


def test_an_axis_that_is_given_is_kept() -> None:
    """What the person says is the axis, and pulls the local ones."""
    flow = flow_of(np.ones(SIZE, np.float32), EVERYWHERE, given_deg=200.0)
    assert flow.axis_deg == pytest.approx(20.0)
    cosine, sine = flow.doubled[20, 20]
    assert apart(-0.5 * math.degrees(math.atan2(sine, cosine)), 20) < 0.1


def test_nothing_to_see_has_no_coherence() -> None:
    """An even region tells no axis, and a few pixels have no octave at all."""
    assert flow_of(np.ones(SIZE, np.float32), EVERYWHERE).coherences == (0.0,) * LEVELS
    few = np.zeros(SIZE, np.bool_)
    few[:9, :9] = True
    assert flow_of(waves(30), few).octaves == ()
    assert flow_of(np.ones((6, 6), np.float32), np.ones((6, 6), np.bool_)).octaves == ()
