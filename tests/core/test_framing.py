"""From a fall's height and distance to focal length, tilt and where to stand."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import NamedTuple

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.errors import OutOfDomainError
from core.framing import frame_fall, section_focal_mm, stand_back_m
from tests.core.numbers import NEVER_POSITIVE

heights_m = st.floats(1.0, 300.0)
distances_m = st.floats(2.0, 500.0)
eyes_m = st.floats(-20.0, 60.0)
sides_mm = st.floats(5.0, 44.0)
places = st.floats(0.02, 1.0)  # of the nearest thing, as a part of the distance


def image_mm(height_m: float, distance_m: float, focal_mm: float, tilt_deg: float) -> float:
    """Where a pinhole camera draws a point, above the middle of its frame.

    Independent of the module: the point is turned into the camera's axes by the tilt, then
    divided by its depth.
    """
    tilt = math.radians(tilt_deg)
    up = height_m * math.cos(tilt) - distance_m * math.sin(tilt)
    depth = distance_m * math.cos(tilt) + height_m * math.sin(tilt)
    return focal_mm * up / depth


def test_fall_of_twelve_metres_behind_a_near_rock() -> None:
    """12 m from 18 m, eye 0.9 m up, a rock 1.5 m ahead, upright 36 mm.

    Computed here: arctangents of 11.1 / 18 and 0.9 / 1.5 make 62.6 degrees, 18 mm over the
    tangent of half of it 29.6 mm, nine tenths of that 26.6 mm; the tilt is half the difference
    of the two, +0.35; level, 18 mm * 18 / 11.1 is 29 mm.
    """
    framing = frame_fall(12, 18, 0.9, 1.5, 36)
    assert framing.needed_deg == pytest.approx(62.6, abs=0.05)
    assert framing.longest_mm == pytest.approx(29.6, abs=0.05)
    assert framing.focal_mm == pytest.approx(26.6, abs=0.05)
    assert framing.tilt_deg == pytest.approx(0.35, abs=0.005)
    assert framing.level_mm == pytest.approx(29.2, abs=0.05)


class High(NamedTuple):
    """One number of a fall seen from too near."""

    what: str
    found: float
    expected: float
    tolerance: float


TOO_NEAR = frame_fall(100, 20, 0, None, 36, spare=0)
#: Hand geometry, computed here: 100 m from 20 m, the eye level with the foot.
HIGH = [
    High("angle", TOO_NEAR.needed_deg, 78.69, 0.0005),  # arctan 5
    High("tilt: half of it", TOO_NEAR.tilt_deg, 39.345, 0.0005),
    High("longest: 18 / ((sqrt 26 - 1) / 5)", TOO_NEAR.longest_mm, 21.9565, 0.0005),
    High("nothing to spare", TOO_NEAR.focal_mm, 21.9565, 0.0005),
    High("level: 18 / 5", TOO_NEAR.level_mm, 3.6, 1e-9),
    High("image of a top at 45 degrees' tilt", image_mm(100, 20, 24, 45), 16, 1e-9),
    High("image of its foot", image_mm(0, 20, 24, 45), -24, 1e-9),
]


@pytest.mark.parametrize("row", HIGH, ids=lambda row: row.what)
def test_high_fall_from_too_near(row: High) -> None:
    """Angles and focal lengths are those of hand geometry."""
    assert row.found == pytest.approx(row.expected, rel=0, abs=row.tolerance)


def test_ninety_metres_from_twenty_five() -> None:
    """A 90 m fall from 25 m needs over 70 degrees: arctan 3.6 is 74.5, for an eye at its foot."""
    framing = frame_fall(90, 25, 0, None, 36)
    assert framing.needed_deg == pytest.approx(74.5, abs=0.05)


@given(heights_m, distances_m, eyes_m, sides_mm, st.none() | places)
def test_longest_lens_just_holds_everything(
    height_m: float, distance_m: float, eye_m: float, side_mm: float, place: float | None
) -> None:
    """At `longest_mm` the outermost points touch the borders; longer, they leave the frame."""
    nearest_m = None if place is None else distance_m * place
    framing = frame_fall(height_m, distance_m, eye_m, nearest_m, side_mm)
    points = [(height_m - eye_m, distance_m), (-eye_m, distance_m)]
    points += [] if nearest_m is None else [(-eye_m, nearest_m)]
    for longer in (1.0, 1.001):
        focal_mm = framing.longest_mm * longer
        drawn = [image_mm(up, away, focal_mm, framing.tilt_deg) for up, away in points]
        assert max(drawn) == pytest.approx(side_mm / 2 * longer)
        assert min(drawn) == pytest.approx(-side_mm / 2 * longer)


@given(heights_m, distances_m, eyes_m, sides_mm, places, st.floats(-30.0, 30.0))
def test_no_other_tilt_holds_it_with_a_longer_lens(
    height_m: float, distance_m: float, eye_m: float, side_mm: float, place: float, turn: float
) -> None:
    """A longer lens cannot hold the fall, however it is tilted."""
    framing = frame_fall(height_m, distance_m, eye_m, distance_m * place, side_mm)
    points = [
        (height_m - eye_m, distance_m),
        (-eye_m, distance_m),
        (-eye_m, distance_m * place),
    ]
    tilt = framing.tilt_deg + turn
    off_axis = [abs(math.degrees(math.atan2(up, away)) - tilt) for up, away in points]
    # A point at or beyond a right angle to the axis is never drawn.
    held = max(off_axis) < 89.9 and all(
        abs(image_mm(up, away, framing.longest_mm * 1.001, tilt)) <= side_mm / 2
        for up, away in points
    )
    assert not held


@given(heights_m, distances_m, eyes_m, sides_mm, st.floats(0.0, 0.45))
def test_spare_is_left_on_both_ends(
    height_m: float, distance_m: float, eye_m: float, side_mm: float, spare: float
) -> None:
    """With `focal_mm` the top and the foot stay that part of the side away from the borders."""
    framing = frame_fall(height_m, distance_m, eye_m, None, side_mm, spare)
    for up in (height_m - eye_m, -eye_m):
        drawn = image_mm(up, distance_m, framing.focal_mm, framing.tilt_deg)
        assert side_mm / 2 - abs(drawn) == pytest.approx(spare * side_mm, abs=1e-6)


@given(heights_m, distances_m, eyes_m, sides_mm, places, st.floats(0.1, 1.2))
def test_spare_of_another_focal_length(
    height_m: float, distance_m: float, eye_m: float, side_mm: float, place: float, part: float
) -> None:
    """The same room is left above the highest and below the lowest point; none when it is cut."""
    near_m = place * distance_m
    framing = frame_fall(height_m, distance_m, eye_m, near_m, side_mm)
    focal_mm = part * framing.longest_mm
    points = ((height_m - eye_m, distance_m), (-eye_m, distance_m), (-eye_m, near_m))
    drawn = [image_mm(up_m, away_m, focal_mm, framing.tilt_deg) for up_m, away_m in points]
    for room_mm in (side_mm / 2 - max(drawn), side_mm / 2 + min(drawn)):
        assert framing.spare(focal_mm) == pytest.approx(room_mm / side_mm, abs=1e-6)


@given(heights_m, distances_m, st.floats(0.1, 1.0), sides_mm)
def test_level_camera_holds_the_top(
    height_m: float, distance_m: float, lower: float, side_mm: float
) -> None:
    """At `level_mm`, not tilted, the top touches the border; standing there is `stand_back_m`."""
    above_m = height_m * lower
    framing = frame_fall(height_m, distance_m, height_m - above_m, None, side_mm)
    assert image_mm(above_m, distance_m, framing.level_mm, 0) == pytest.approx(side_mm / 2)
    assert stand_back_m(above_m, framing.level_mm, side_mm) == pytest.approx(distance_m)


def test_top_below_the_eye_needs_no_short_lens() -> None:
    """Seen from above its top, a fall never leaves a level frame at the top."""
    framing = frame_fall(5, 30, 12, None, 36)
    assert framing.level_mm == math.inf
    assert framing.tilt_deg < 0


@pytest.mark.parametrize(
    ("focal_mm", "factor"),
    # Computed here from focal length over half of 36 mm.
    [(16, 0.89), (24, 1.33), (35, 1.94), (50, 2.78)],
)
def test_stand_back(focal_mm: float, factor: float) -> None:
    """A level camera, upright, stands so many times the height above the eye away."""
    assert stand_back_m(10, focal_mm, 36) == pytest.approx(10 * factor, abs=0.05)


@given(st.floats(0.2, 50.0), distances_m, sides_mm, st.floats(0.0, 0.45))
def test_section_fills_the_frame(
    section_m: float, distance_m: float, side_mm: float, spare: float
) -> None:
    """With that lens the section's ends lie the spare away from the borders."""
    focal_mm = section_focal_mm(section_m, distance_m, side_mm, spare)
    drawn = image_mm(section_m / 2, distance_m, focal_mm, 0)
    assert side_mm / 2 - drawn == pytest.approx(spare * side_mm, abs=1e-9)


@pytest.mark.parametrize("bad", NEVER_POSITIVE)
@pytest.mark.parametrize(
    "call",
    [
        lambda bad: frame_fall(bad, 18, 0.9, 1.5, 36),
        lambda bad: frame_fall(12, bad, 0.9, 1.5, 36),
        lambda bad: frame_fall(12, 18, 0.9, bad, 36),
        lambda bad: frame_fall(12, 18, 0.9, 1.5, bad),
        lambda bad: stand_back_m(bad, 24, 36),
        lambda bad: stand_back_m(11, bad, 36),
        lambda bad: stand_back_m(11, 24, bad),
        lambda bad: section_focal_mm(bad, 18, 36),
        lambda bad: section_focal_mm(3, bad, 36),
        lambda bad: section_focal_mm(3, 18, bad),
    ],
)
def test_bad_numbers_are_refused(call: Callable[[float], object], bad: float) -> None:
    """Zero, negative, NaN and infinity are no length."""
    with pytest.raises(OutOfDomainError):
        call(bad)


@pytest.mark.parametrize(
    "call",
    [
        lambda: frame_fall(12, 18, math.nan, 1.5, 36),
        lambda: frame_fall(12, 18, math.inf, 1.5, 36),
        lambda: frame_fall(12, 18, -1001, 1.5, 36),
        lambda: frame_fall(12, 18, 0.9, 18.1, 36),  # nearest thing beyond the fall
        lambda: frame_fall(12, 18, 0.9, 1.5, 36, spare=-0.01),
        lambda: frame_fall(12, 18, 0.9, 1.5, 36, spare=0.46),
        lambda: section_focal_mm(3, 18, 36, math.nan),
        lambda: section_focal_mm(3, 18, 36, 0.5),
        lambda: frame_fall(30_000, 18, 0.9, 1.5, 36),
    ],
)
def test_impossible_combinations_are_refused(call: Callable[[], object]) -> None:
    """A rock behind the fall, a frame that is all spare, an eye beyond the clouds."""
    with pytest.raises(OutOfDomainError):
        call()
