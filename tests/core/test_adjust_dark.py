"""Too dark: order, limits and prices of the levers."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from core.adjust import Lever, Limit, Note, plan
from core.exposure import Settings
from tests.core.adjust_cases import (
    FULL_FRAME,
    TIME,
    a_situation,
    dialled,
    levers,
    offered,
)


@pytest.mark.parametrize(
    ("settings", "change_stops", "more", "expected"),
    [
        # f-number as far as the depth allows, then ISO
        (dialled(11, 1 / 4), 1, {}, [("aperture", 1.0)]),
        (dialled(11, 1 / 4), 2, {}, [("aperture", 1.0), ("iso", 1.0)]),
        (dialled(11, 1 / 4), 2, {"depth_f": 5.6}, [("aperture", 2.0)]),
        (dialled(11, 1 / 4), 2, {"depth_f": 2.0, "widest_f": 8.0}, None),
        # the filters were the mistake
        (dialled(11, 1 / 4), 3, {"nd_on": 3.0, "nd_owned": (3,)}, [("nd", 3.0)]),
        (dialled(11, 1 / 4), 3, {"nd_on": 6.0, "nd_owned": (3, 6)}, [("nd", 3.0)]),
        (
            dialled(11, 1 / 4, 1600),
            1,
            {"nd_on": 3.0, "nd_owned": (3,), "polariser": "on"},
            [("nd", 3.0), ("iso", -2.0)],
        ),
        (
            dialled(8, 1 / 4),
            4.7,
            {"nd_on": 3.0, "nd_owned": (3,), "polariser": "on"},
            [("nd", 3.0), ("polariser", 1.7)],
        ),
        # the polariser comes off before ISO, and the excess is closed
        (
            dialled(8, 1 / 4),
            1,
            {"polariser": "on"},
            [("polariser", 1.7), ("aperture", -0.67)],
        ),
        # for a third it stays on
        (dialled(8, 1 / 4), 1 / 3, {"polariser": "on"}, [("iso", 0.33)]),
        # a strong ND that would give three stops for one stays, the depth allowing
        (dialled(11, 1 / 4), 1, {"nd_on": 6.0, "nd_owned": (3, 6)}, [("aperture", 1.0)]),
        # stopped down too far and too dark: opening is a gain
        (dialled(22, 1 / 4), 1, {}, [("aperture", 1.0)]),
    ],
)
def test_too_dark_with_the_time_kept(
    settings: Settings,
    change_stops: float,
    more: dict[str, Any],
    expected: list[tuple[str, float]] | None,
) -> None:
    """Filters that do not fit, f-number as the depth allows, polariser, ISO."""
    found = plan(a_situation(settings, change_stops, keep=TIME, **more))
    assert expected is None or levers(found) == expected
    assert found.met


def test_noise_has_two_limits_and_then_other_ways() -> None:
    """ISO 1600 is the acceptable end on full frame; beyond: silkier, stack, more noise, frames."""
    wish = a_situation(
        dialled(8, 1 / 4), 6, keep=TIME, focal_mm=24.0, near_m=1.2, far_m=18.0, wind=True
    )
    found = plan(wish)
    assert levers(found) == [("iso", 4.0)]
    assert found.steps[0].notes == (Note.BEYOND_CLEAN,)
    assert found.remaining_stops == pytest.approx(2)
    assert offered(found.others, Lever.LONGER_TIME).settings.labels()[1] == "1 s"
    stack = offered(found.others, Lever.STACK)
    assert (stack.settings.labels()[0], stack.notes) == ("f/4", (Note.WIND,))
    assert stack.numbers["frames"] >= 2
    assert offered(found.others, Lever.ISO).settings.iso == 6400
    rock = offered(found.others, Lever.AVERAGE_ROCK)
    assert (rock.numbers["frames"], rock.numbers["noise_ratio"]) == (4, 0.5)
    assert offered(found.others, Lever.WAIT).stops == pytest.approx(2)
    assert dict(found.blocked)[Lever.ISO] is Limit.TOP_ISO
    assert dict(found.blocked)[Lever.APERTURE] is Limit.DEPTH
    assert found.instead[0].lever is Lever.LONGER_TIME


def test_a_stack_of_unknown_depth_is_offered_without_a_count() -> None:
    """Without the near distance nobody can say how many frames it takes."""
    found = plan(a_situation(dialled(8, 1 / 4, 1600), 1, keep=frozenset({"time", "iso"})))
    assert "frames" not in offered(found.others, Lever.STACK).numbers
    assert {step.lever for step in found.others} >= {Lever.LONGER_TIME, Lever.AVERAGE_ROCK}
    assert Lever.ISO not in {step.lever for step in found.others}  # it is kept


def test_nothing_left_but_to_wait_for_light() -> None:
    """Longest time, widest opening, highest ISO: still there is an answer."""
    camera = replace(FULL_FRAME, bulb=False, highest_iso=1600)
    found = plan(a_situation(dialled(4, 30, 1600), 2, camera, depth_f=4.0))
    assert found.steps == ()
    assert [step.lever for step in found.others] == [Lever.WAIT]
    assert dict(found.blocked)[Lever.TIME] is Limit.CAMERA
    assert dict(found.blocked)[Lever.APERTURE] in {Limit.LENS, Limit.DEPTH}


def test_by_hand_the_time_ends_where_the_hand_does() -> None:
    """24 mm by hand: 1/25 s at the longest; a rest would allow the look's full time."""
    wish = a_situation(dialled(8, 1 / 30), 6, look_times=(1 / 50, 0.5), tripod=False, focal_mm=24.0)
    found = plan(wish)
    assert levers(found) == [("time", 0.33), ("iso", 4.0)]
    assert dict(found.blocked)[Lever.TIME] is Limit.STEADY
    support = offered(found.others, Lever.SUPPORT)
    assert support.stops == pytest.approx(5 / 3)
    assert support.numbers["steady_s"] == pytest.approx(1 / 24)
    assert plan(replace(wish, steady_s=1 / 8)).settings.labels()[1] == "1/8 s"
    assert plan(replace(wish, focal_mm=None)).settings.labels()[1] == "1/30 s"  # nothing known


def test_by_hand_with_the_time_kept_no_rest_is_offered() -> None:
    """A rest would help nothing when the time stays; a time too long for the hand is named."""
    found = plan(a_situation(dialled(8, 1 / 4, 1600), 2, keep=TIME, tripod=False, focal_mm=50.0))
    assert Lever.SUPPORT not in {step.lever for step in found.others}
    assert found.notes == (Note.BY_HAND,)
    assert offered(found.others, Lever.LONGER_TIME).notes == (Note.BY_HAND,)


def test_by_hand_a_rest_that_gives_nothing_is_not_offered() -> None:
    """The look itself ends where the hand does."""
    wish = a_situation(
        dialled(8, 1 / 60, 1600), 2, look_times=(1 / 200, 1 / 64), tripod=False, focal_mm=50.0
    )
    found = plan(wish)
    assert Lever.SUPPORT not in {step.lever for step in found.others}


def test_bulb_is_named() -> None:
    """Two stops more than the dial's 30 s (which means 32 s) are 128 s, held in bulb."""
    found = plan(a_situation(dialled(11, 30), 2, keep=frozenset({"f_number", "iso"})))
    assert found.settings.shutter_s == 128
    assert found.steps[0].notes == (Note.BULB,)
