"""Of several times that were tried, the one to take."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.adjust import Candidate, Ground, better_time
from core.errors import OutOfDomainError
from core.water import Look, coverage_m, look_of, share, time_range
from core.water_speed import mean_fall_speed_mps


def test_a_third_under_with_texture_beats_clipped_mush() -> None:
    """At 1/2 s clipped and without texture, at 1/4 s a third under on the meter: take 1/4 s."""
    half = Candidate(1 / 2, level_stops=2 / 3, clipped=True, textured=False)
    quarter = Candidate(1 / 4, level_stops=-1 / 3, clipped=False, textured=True)
    found = better_time([half, quarter])
    assert found.index == 1
    assert found.against == ((Ground.CLIPPED, Ground.NO_TEXTURE), ())


def test_the_same_from_the_geometry_of_the_fall() -> None:
    """A 10 m fall at 24 mm portrait from 15 m: 1/2 s is silky, 1/4 s textured."""
    speed_mps, side_m = mean_fall_speed_mps(10), coverage_m(15, 36, 24)
    assert look_of(float(share(speed_mps, 1 / 2, side_m))) is Look.SILKY
    assert look_of(float(share(speed_mps, 1 / 4, side_m))) is Look.TEXTURED
    band = time_range(Look.TEXTURED, speed_mps, side_m)
    found = better_time([Candidate(1 / 2, 2 / 3), Candidate(1 / 4, -1 / 3)], band)
    assert (found.index, found.against[0]) == (1, (Ground.OUTSIDE_LOOK,))


@pytest.mark.parametrize(
    ("candidates", "index"),
    [
        # clipping outweighs the look, the look outweighs the level
        ([Candidate(1 / 4, clipped=True), Candidate(1 / 8, -2, clipped=False)], 1),
        ([Candidate(1 / 4, -3.5), Candidate(1 / 2, -0.3)], 1),  # more than can be lifted
        ([Candidate(1 / 4, -1), Candidate(1 / 5, -1 / 3)], 1),  # the nearer level
        ([Candidate(1 / 4), Candidate(1 / 5, -1)], 1),  # a known level before an unknown one
        ([Candidate(1 / 4, 0.5), Candidate(1 / 8, -0.5)], 1),  # else the shorter time
        ([Candidate(1 / 2, clipped=True), Candidate(1, clipped=True)], 0),
        ([Candidate(1 / 4)], 0),
    ],
)
def test_what_counts_in_which_order(candidates: list[Candidate], index: int) -> None:
    """Clipping, texture, look, too dark, level, shorter time."""
    assert better_time(candidates).index == index


@given(
    st.lists(
        st.builds(
            Candidate,
            st.floats(1e-4, 30),
            st.none() | st.floats(-5, 5),
            st.none() | st.booleans(),
            st.none() | st.booleans(),
        ),
        min_size=1,
        max_size=6,
    )
)
def test_a_clean_frame_is_never_passed_over(candidates: list[Candidate]) -> None:
    """If anything speaks against the chosen frame, something speaks against every frame."""
    found = better_time(candidates)
    assert not found.against[found.index] or all(found.against)


def test_odd_candidates_are_refused() -> None:
    """No frame, no time, no number: errors."""
    with pytest.raises(OutOfDomainError):
        better_time([])
    with pytest.raises(OutOfDomainError):
        Candidate(0)
    with pytest.raises(OutOfDomainError):
        Candidate(1 / 4, math.nan)
