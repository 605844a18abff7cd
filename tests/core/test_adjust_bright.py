"""Too bright: order, limits and prices of the levers."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from core.adjust import Lever, Limit, Note, plan
from core.camera import FORMATS
from core.exposure import Settings
from tests.core.adjust_cases import (
    ALL,
    FULL_FRAME,
    PHONE,
    TIME,
    TIME_AND_F,
    a_situation,
    dialled,
    levers,
    offered,
)


@pytest.mark.parametrize(
    ("change_stops", "more", "expected", "labels"),
    [
        # ISO above base comes down before anything else
        (-1, {"iso": 400}, [("iso", -1.0)], ("f/11", "1/4 s", "ISO 200")),
        (-3, {"iso": 400}, [("iso", -2.0), ("aperture", -1.0)], ("f/16", "1/4 s", "ISO 100")),
        # a click of f-number before a polariser for a third
        (-1 / 3, {"polariser": "off"}, [("aperture", -0.33)], ("f/13", "1/4 s", "ISO 100")),
        (-1.7, {"polariser": "off"}, [("polariser", -1.7)], ("f/11", "1/4 s", "ISO 100")),
        (
            -2,
            {"polariser": "off"},
            [("polariser", -1.7), ("aperture", -0.33)],
            ("f/13", "1/4 s", "ISO 100"),
        ),
        # the ND that fits: one filter before two, two before a missing stop
        (-3, {"polariser": "off", "nd_owned": (3, 6)}, [("nd", -3.0)], None),
        (-6, {"polariser": "off", "nd_owned": (3, 6)}, [("nd", -6.0)], None),
        (
            -4,
            {"polariser": "off", "nd_owned": (3, 6)},
            [("polariser", -1.7), ("nd", -3.0), ("aperture", 0.67)],
            ("f/9", "1/4 s", "ISO 100"),
        ),
        (
            -8,
            {"polariser": "off", "nd_owned": (3, 6)},
            [("polariser", -1.7), ("nd", -6.0), ("aperture", -0.33)],
            None,
        ),
        # an ND that is on is swapped for a stronger one
        (-3, {"nd_on": 3.0, "nd_owned": (3, 6)}, [("nd", -3.0)], None),
        # too strong an ND alone: the depth leaves room to open
        (-4, {"nd_owned": (6,), "depth_f": 5.6}, [("nd", -6.0), ("aperture", 2.0)], None),
    ],
)
def test_too_bright_with_the_time_kept(
    change_stops: float,
    more: dict[str, Any],
    expected: list[tuple[str, float]],
    labels: tuple[str, str, str] | None,
) -> None:
    """ISO to base, then what costs least of polariser, f-number and ND."""
    iso = more.pop("iso", 100)
    found = plan(a_situation(dialled(11, 1 / 4, iso), change_stops, keep=TIME, **more))
    assert levers(found) == expected
    assert found.met
    assert labels is None or found.settings.labels() == labels


def test_two_filters_on_a_wide_lens_are_avoided_or_remarked() -> None:
    """At 16 mm the ND alone and f/16; when both are needed the corners are named."""
    wide: dict[str, Any] = {"focal_mm": 16.0, "polariser": "off", "nd_owned": (3, 6), "keep": TIME}
    found = plan(a_situation(dialled(11, 1 / 4), -4, **wide))
    assert levers(found) == [("nd", -3.0), ("aperture", -1.0)]
    both = plan(a_situation(dialled(11, 1 / 4), -8, **wide))
    assert Note.UNEVEN_SKY in both.steps[0].notes
    assert Note.CORNERS in both.steps[1].notes
    assert Note.FOCUS_FIRST in both.steps[1].notes
    longer = plan(a_situation(dialled(11, 1 / 4), -8, **{**wide, "focal_mm": 35.0}))
    notes = [note for step in longer.steps for note in step.notes]
    assert notes == [Note.METER_AFTER_TURNING, Note.FOCUS_FIRST]


def test_with_time_and_f_number_kept_the_polariser_leaves_it_darker() -> None:
    """A stop over: 1.7 stops taken, two thirds are lifted afterwards; no noise for that."""
    found = plan(a_situation(dialled(11, 1 / 4), -1, keep=TIME_AND_F, polariser="off"))
    assert levers(found) == [("polariser", -1.7)]
    assert found.met
    assert found.remaining_stops == pytest.approx(0.7)


def test_a_polariser_is_not_put_on_for_a_third_when_nothing_can_give_back() -> None:
    """1.4 stops too dark would be worse than a third too bright: other ways are told."""
    found = plan(a_situation(dialled(11, 1 / 4), -1 / 3, keep=ALL, polariser="off"))
    assert found.steps == ()
    assert not found.met
    assert dict(found.blocked)[Lever.POLARISER] is Limit.NOT_FITTING
    assert offered(found.others, Lever.AVERAGE).numbers["frames"] == 2


def test_a_filter_that_is_too_strong_may_be_paid_for_with_iso() -> None:
    """Time and f-number kept, only ND 3 in the bag, 2 over: a stop of ISO gives back."""
    found = plan(a_situation(dialled(11, 1 / 4), -2, keep=TIME_AND_F, nd_owned=(3,)))
    assert levers(found) == [("nd", -3.0), ("iso", 1.0)]
    assert found.met


def test_giving_back_never_makes_it_too_bright_again() -> None:
    """1.5 over, 1.7 taken: a third opened would be too bright by 0.13, so it stays at f/11."""
    found = plan(a_situation(dialled(11, 1 / 4), -1.5, keep=TIME, polariser="off"))
    assert levers(found) == [("polariser", -1.7)]
    assert found.remaining_stops == pytest.approx(0.2)


def test_extended_low_iso_is_never_used_and_named_when_found() -> None:
    """Below base there is no highlight room: no plan goes there; who is there is told."""
    found = plan(a_situation(dialled(11, 1 / 4), -1, keep=TIME_AND_F))
    assert found.settings.iso == 100
    there = plan(a_situation(dialled(11, 1 / 4, 50), -1, keep=TIME))
    assert levers(there) == [("aperture", -1.0)]
    assert there.notes == (Note.EXTENDED_ISO,)
    brighter = plan(a_situation(dialled(11, 1 / 4, 50), 2, keep=TIME_AND_F))
    assert (levers(brighter), brighter.notes) == ([("iso", 2.0)], ())


def test_extended_iso_goes_to_base_before_depth_is_given_up() -> None:
    """From ISO 50, a stop under: ISO 100 costs nothing, so the f-number stays."""
    found = plan(a_situation(dialled(11, 1 / 4, 50), 1, keep=TIME))
    assert levers(found) == [("iso", 1.0)]
    assert found.steps[0].notes == ()


def test_the_way_out_of_extended_iso_ends_at_base() -> None:
    """From ISO 50 with base 200 and a stop and a half under: base, and the excess is closed."""
    camera = replace(FULL_FRAME, base_iso=200)
    found = plan(a_situation(dialled(8, 1 / 4, 50), 1.5, camera, keep=TIME))
    assert found.settings.iso == 200
    assert found.met


@pytest.mark.parametrize(
    ("in_sun", "stops"), [(None, -3), (True, -3), (False, -2)]
)  # in shade already: only less light helps, as much as is wanted
def test_waiting_for_shade(in_sun: bool | None, stops: float) -> None:
    """From sun to shade are 3 stops; in the shade one waits for what is missing."""
    found = plan(a_situation(dialled(16, 1 / 4), -2, keep=TIME, in_sun=in_sun))
    assert offered(found.others, Lever.WAIT).stops == pytest.approx(stops)


def test_the_nd_to_get_counts_the_one_that_is_on() -> None:
    """8.3 stops in all: 10 would be far too strong, so 6 and 3 together."""
    wish = a_situation(
        dialled(11, 1 / 4),
        -11,
        keep=TIME,
        polariser="off",
        nd_owned=(3, 6),
        tripod=False,
        wind=True,
    )
    found = plan(wish)
    nd = offered(found.others, Lever.ND)
    assert nd.numbers["needed_stops"] == pytest.approx(8.3)
    assert (nd.nd_on, nd.stops) == (9, -3)
    assert (nd.numbers["first_stops"], nd.numbers["second_stops"]) == (6, 3)
    assert nd.numbers["excess_stops"] == pytest.approx(0.7)
    assert offered(found.others, Lever.AVERAGE).notes == (Note.BURST_BY_HAND, Note.WIND)
    assert dict(found.blocked)[Lever.ND] is Limit.IN_USE
    assert dict(found.blocked)[Lever.POLARISER] is Limit.IN_USE


def test_a_filter_that_would_lead_far_past_the_goal_stays_in_the_bag() -> None:
    """ND 10 for 3 stops over, f-number kept: ISO 800 is clean, ISO 12800 is not."""
    found = plan(a_situation(dialled(11, 1 / 4), -3, keep=TIME_AND_F, nd_owned=(10,)))
    assert found.steps == ()
    assert dict(found.blocked)[Lever.ND] is Limit.NOT_FITTING
    assert offered(found.others, Lever.ND).nd_on == 3


def test_without_a_known_look_the_time_moves_last() -> None:
    """Nobody said how the water shall look: f-number first, then the time that is not kept."""
    found = plan(a_situation(dialled(11, 1 / 4), -2))
    assert levers(found) == [("aperture", -1.0), ("time", -1.0)]
    dark = plan(a_situation(dialled(11, 1 / 4, 800), 3))
    assert levers(dark) == [("aperture", 1.0), ("iso", 1.0), ("time", 1.0)]


def test_a_time_at_the_end_of_the_dial_is_not_offered_shorter() -> None:
    """1/8000 s is the shortest that cameras have."""
    camera = replace(FULL_FRAME, shortest_s=2**-13)
    found = plan(a_situation(dialled(16, 1 / 8000), -1, camera, keep=TIME))
    assert Lever.SHORTER_TIME not in {step.lever for step in found.others}


def test_beyond_every_grade_the_exact_number_is_told() -> None:
    """19 stops are two strong filters; 2^19 frames are not offered, nor a time off the dial."""
    found = plan(a_situation(dialled(16, 1 / 4), -19, keep=TIME))
    nd = offered(found.others, Lever.ND)
    assert (nd.numbers["first_stops"], nd.numbers["second_stops"]) == (10, 10)
    beyond = plan(a_situation(dialled(16, 1 / 4), -20, keep=TIME, nd_on=3.0))
    assert offered(beyond.others, Lever.ND).nd_on == 23
    assert {step.lever for step in found.others} == {
        Lever.ND,
        Lever.WAIT,
        Lever.SECTION,
        Lever.APERTURE,
    }


def test_a_lens_that_ends_where_the_format_does_has_no_last_resort() -> None:
    """A lens to f/16 stops there."""
    found = plan(a_situation(dialled(16, 1 / 4), -2, keep=TIME, narrowest_f=16.0))
    assert Lever.APERTURE not in {step.lever for step in found.others}


def test_many_frames_are_remarked() -> None:
    """5.3 stops are 41 frames: beyond what is practical, and so it says."""
    found = plan(a_situation(dialled(16, 1 / 2), -5.3, keep=TIME))
    frames = offered(found.others, Lever.AVERAGE)
    assert frames.numbers["frames"] == 41  # 2^(16/3) = 40.3
    assert frames.notes == (Note.MANY_FRAMES,)


def test_frames_too_many_to_align_are_not_offered() -> None:
    """7 stops would be 128 frames."""
    found = plan(a_situation(dialled(16, 1), -7, keep=TIME))
    assert Lever.AVERAGE not in {step.lever for step in found.others}


def test_a_phone_has_iso_filters_frames_and_patience() -> None:
    """Its f-number is fixed and a polariser does not fit; ISO 100 is a stop above its base."""
    f_number = FORMATS["phone"].fixed_f_number
    assert f_number is not None
    wish = a_situation(
        Settings(f_number, 1 / 8, 100), -3, PHONE, widest_f=f_number, keep=TIME, polariser="off"
    )
    found = plan(wish)
    assert levers(found) == [("iso", -1.0)]
    assert found.settings.f_number == f_number
    assert dict(found.blocked)[Lever.APERTURE] is Limit.FIXED
    assert dict(found.blocked)[Lever.POLARISER] is Limit.NOT_OWNED
    assert offered(found.others, Lever.AVERAGE).numbers["frames"] == 4
    clipped_on = plan(replace(wish, nd_owned=(2.0,)))
    assert (levers(clipped_on), clipped_on.met) == ([("iso", -1.0), ("nd", -2.0)], True)
