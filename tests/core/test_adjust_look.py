"""The levers when the look of the water decides the time."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import pytest

from core.adjust import Lever, Limit, plan
from core.exposure import Settings
from tests.core.adjust_cases import (
    FULL_FRAME,
    TIME,
    a_situation,
    dialled,
    levers,
    offered,
)


def test_a_time_inside_the_look_moves_before_f_number_and_noise() -> None:
    """Not kept, the time goes to the end of the look first."""
    found = plan(a_situation(dialled(8, 1 / 8), 6, look_times=(1 / 50, 0.4)))
    assert levers(found) == [("time", 1.67), ("iso", 4.0)]
    assert dict(found.blocked)[Lever.TIME] is Limit.LOOK
    assert offered(found.others, Lever.LONGER_TIME).numbers["inside_look"] == 0


def test_iso_comes_down_before_the_time_shortens() -> None:
    """ISO 400 a stop over: the look stays as it is."""
    found = plan(a_situation(dialled(11, 1 / 8, 400), -1, look_times=(1 / 50, 0.4)))
    assert levers(found) == [("iso", -1.0)]


def test_a_wrong_look_alone_is_mended_at_equal_brightness() -> None:
    """Mush at 1 s, nothing else wrong: 0.4 s, and the light by f-number and ISO."""
    found = plan(a_situation(dialled(11, 1), 0, look_times=(1 / 30, 0.4)))
    assert levers(found) == [("time", -1.33), ("aperture", 1.0), ("iso", 0.33)]
    assert (found.met, found.look_met) == (True, True)


def test_a_little_darker_than_wanted_by_the_look_may_stay() -> None:
    """A third over and 0.6 s of mush: 0.4 s is a third too much, and no noise pays for that."""
    wish = a_situation(
        dialled(11, 0.6), -1 / 3, look_times=(1 / 50, 0.4), keep=frozenset({"f_number"})
    )
    found = plan(wish)
    assert levers(found) == [("time", -0.67)]
    assert found.met
    assert found.remaining_stops == pytest.approx(1 / 3)


def test_too_frozen_and_too_bright_needs_filters() -> None:
    """1/500 s into a look from 1/8 s on: six stops and more, taken by polariser and ND."""
    wish = a_situation(
        dialled(11, 1 / 500), -1, look_times=(1 / 8, 0.5), polariser="off", nd_owned=(3, 6)
    )
    found = plan(wish)
    assert [step.lever for step in found.steps] == [Lever.TIME, Lever.POLARISER, Lever.ND]
    assert (found.met, found.look_met) == (True, True)


def test_filters_come_off_when_the_look_asks_for_a_short_time() -> None:
    """ND 6 and 8 s of mush: in the look no filter is needed, and the time takes the rest."""
    found = plan(
        a_situation(dialled(11, 8), -1, look_times=(1 / 50, 0.4), nd_on=6.0, nd_owned=(3, 6))
    )
    assert levers(found) == [("time", -7.0), ("nd", 6.0)]
    assert (found.met, found.look_met, found.nd_on) == (True, True, 0)


@pytest.mark.parametrize(
    ("settings", "look_times", "more", "label"),
    [
        # the look lies beyond the dial, without bulb: as near as it goes
        (dialled(11, 1), (60.0, math.inf), {"camera": replace(FULL_FRAME, bulb=False)}, "30 s"),
        # by hand: as long as the hand holds
        (dialled(11, 1 / 250), (1 / 4, 1.0), {"tripod": False, "focal_mm": 24.0}, "1/25 s"),
        # the look ends before the dial does
        (dialled(11, 1 / 4), (0.0, 1e-5), {}, "1/4000 s"),
        # a look between two marks: the mark beside it
        (dialled(11, 1), (0.27, 0.29), {}, "1/4 s"),
        # longer by hand than before is not asked, shorter is
        (dialled(11, 1), (1 / 8, 0.5), {"tripod": False, "focal_mm": 24.0}, None),
    ],
)
def test_a_look_out_of_reach_is_approached(
    settings: Settings, look_times: tuple[float, float], more: dict[str, Any], label: str | None
) -> None:
    """Camera and hand limit the time; the plan says when the look is not met."""
    found = plan(a_situation(settings, 0, look_times=look_times, **more))
    if label is None:
        assert found.look_met
        assert found.settings.shutter_s < settings.shutter_s
    else:
        assert found.steps[0].settings.labels()[1] == label
        assert found.look_met is False


def test_a_kept_time_stays_outside_the_look_and_that_is_said() -> None:
    """The person decides; the plan only remarks it."""
    found = plan(a_situation(dialled(11, 1), -1, look_times=(1 / 30, 0.4), keep=TIME))
    assert found.settings.shutter_s == 1
    assert found.look_met is False


def test_contrast_asks_for_a_bracket() -> None:
    """13 stops against 9 clean ones: three frames, two stops apart; 9 and less: one frame."""
    wish = a_situation(dialled(11, 1 / 4), 0, contrast_stops=13.0)
    bracket = offered(plan(wish).others, Lever.BRACKET)
    assert (bracket.numbers["frames"], bracket.numbers["step_stops"]) == (3, 2)
    assert plan(replace(wish, contrast_stops=9.0)).others == ()
