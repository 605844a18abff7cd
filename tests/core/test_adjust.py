"""The levers on the trade's own examples, and what is refused."""

from __future__ import annotations

import itertools
import math
from dataclasses import replace
from typing import Any

import pytest

from core.adjust import Lever, Limit, Note, Price, plan
from core.adjust.ranges import marks_of
from core.errors import OutOfDomainError
from core.exposure import Settings
from core.series import Dial, exact_f_number
from tests.core.adjust_cases import (
    FULL_FRAME,
    TIME,
    TIME_AND_F,
    a_situation,
    dialled,
    levers,
    offered,
)


def test_two_stops_under_with_time_and_f_number_fixed_is_iso_400() -> None:
    """All that is left is ISO: 100 to 400, noise twice, no warning below the clean limit."""
    found = plan(a_situation(dialled(11, 1 / 4), 2, keep=TIME_AND_F))
    assert levers(found) == [("iso", 2.0)]
    assert found.settings.labels() == ("f/11", "1/4 s", "ISO 400")
    assert found.met
    (step,) = found.steps
    assert (step.price, step.notes, step.path) == (Price.NOISE, (), ())
    assert step.numbers["noise_ratio"] == pytest.approx(2)  # root of 4, Poisson statistics


def test_small_steps_name_every_mark_on_the_way() -> None:
    """ISO goes by way of 125, 160, 200, 250, 320 to 400."""
    found = plan(a_situation(dialled(11, 1 / 4), 2, keep=TIME_AND_F, small_steps=True))
    passed = [mark.label for mark in found.steps[0].path]
    assert passed == [f"ISO {iso}" for iso in (125, 160, 200, 250, 320, 400)]


def test_small_steps_downwards_and_without_dial() -> None:
    """Towards darker the marks come darker and darker; a filter passes none."""
    wish = a_situation(dialled(8, 1 / 4, 400), -3.7, keep=TIME, polariser="off", small_steps=True)
    found = plan(wish)
    assert levers(found) == [("iso", -2.0), ("polariser", -1.7)]
    passed = [mark.label for mark in found.steps[0].path]
    assert passed == [f"ISO {iso}" for iso in (320, 250, 200, 160, 125, 100)]
    assert found.steps[1].path == ()


def test_a_half_stop_dial_goes_in_half_stops() -> None:
    """On a dial of halves ISO 400 is reached by way of 140, 200, 280."""
    halves = replace(FULL_FRAME, dial=Dial.HALVES)
    found = plan(a_situation(dialled(11, 1 / 4), 2, halves, keep=TIME_AND_F, small_steps=True))
    assert [mark.label for mark in found.steps[0].path] == [
        "ISO 140",
        "ISO 200",
        "ISO 280",
        "ISO 400",
    ]


def test_one_stop_over_takes_the_polariser_first_and_opens_by_the_excess() -> None:
    """1.7 stops for 1: open by two thirds to f/9, or leave that out and keep it darker."""
    found = plan(a_situation(dialled(11, 1 / 4), -1, keep=TIME, polariser="off"))
    assert levers(found) == [("polariser", -1.7), ("aperture", 0.67)]
    assert found.settings.labels() == ("f/9", "1/4 s", "ISO 100")
    assert (found.met, found.polariser) == (True, "on")
    assert found.remaining_stops == pytest.approx(1 / 30)  # 1.7 less 1 less 2/3
    polariser, opening = found.steps
    assert polariser.numbers["excess_stops"] == pytest.approx(0.7)
    assert polariser.settings.labels()[0] == "f/11"
    assert (polariser.price, opening.price) == (Price.REFLECTIONS, Price.DEPTH)
    assert (polariser.optional, opening.optional) == (False, True)


def test_one_stop_over_without_a_polariser_closes_to_the_limit_of_the_format() -> None:
    """f/16 costs sharpness: the diffraction figure grows from 15 to 21 um (2.44 lambda N)."""
    found = plan(a_situation(dialled(11, 1 / 4), -1, keep=TIME))
    assert levers(found) == [("aperture", -1.0)]
    assert found.settings.labels() == ("f/16", "1/4 s", "ISO 100")
    (step,) = found.steps
    assert step.price is Price.DIFFRACTION
    assert step.numbers["blur_um_before"] == pytest.approx(2.44 * 0.55 * 2**3.5)
    assert step.numbers["blur_um_after"] == pytest.approx(2.44 * 0.55 * 16)
    assert step.numbers["visible_um"] == pytest.approx(math.hypot(36, 24) / 1.5)
    assert [offer.lever for offer in found.instead][:3] == [Lever.ND, Lever.WAIT, Lever.AVERAGE]
    assert offered(found.instead, Lever.ND).numbers["stops"] == 1
    assert offered(found.instead, Lever.AVERAGE).numbers["frames"] == 2


def test_beyond_dials_and_filters_come_nd_waiting_and_averaging() -> None:
    """3 stops over with the time kept: f/16 gives one; two are left, told in all their forms."""
    found = plan(a_situation(dialled(11, 1 / 4), -3, keep=TIME))
    assert levers(found) == [("aperture", -1.0)]
    assert not found.met
    assert found.remaining_stops == pytest.approx(-2)
    nd = offered(found.others, Lever.ND)
    assert (nd.stops, nd.nd_on) == (-2, 2)
    assert nd.numbers["density"] == pytest.approx(0.602, abs=5e-4)
    assert offered(found.others, Lever.WAIT).stops == -3  # EV 15 to EV 12
    frames = offered(found.others, Lever.AVERAGE)
    assert (frames.numbers["frames"], frames.numbers["each_s"]) == (4, 1 / 16)
    assert frames.numbers["noise_ratio"] == 0.5
    assert offered(found.others, Lever.SECTION).stops == pytest.approx(-2)
    assert offered(found.others, Lever.SHORTER_TIME).settings.labels()[1] == "1/15 s"
    last = offered(found.others, Lever.APERTURE)
    assert (last.settings.labels()[0], last.notes) == ("f/22", (Note.LAST_RESORT,))
    assert dict(found.blocked) == {
        Lever.ISO: Limit.BASE_ISO,
        Lever.TIME: Limit.KEPT,
        Lever.APERTURE: Limit.FORMAT,
        Lever.POLARISER: Limit.NOT_OWNED,
        Lever.ND: Limit.NOT_OWNED,
    }


def test_stopped_down_iso_high_time_too_long_and_clipped_all_at_once() -> None:
    """f/22, ISO 400, 1 s, a stop over, mush: the time into the look, f/11, ISO down."""
    wish = a_situation(
        dialled(22, 1, 400), -1, look_times=(1 / 50, 0.4), depth_f=5.6, wished_f=2**3.5
    )
    found = plan(wish)
    assert levers(found) == [("time", -1.33), ("iso", -1.67), ("aperture", 2.0)]
    assert found.settings.labels() == ("f/11", "0.4 s", "ISO 125")
    assert (found.met, found.look_met) == (True, True)
    opening = found.steps[2]
    assert (opening.price, opening.optional) == (Price.NOTHING, False)  # a gain


@pytest.mark.parametrize(
    ("depth_f", "f_label"),
    [
        (None, "f/16"),  # depth unknown: no further than the format's limit
        (5.6, "f/11"),  # depth known: back to the best range
        (exact_f_number(14), "f/14"),  # never wider than the depth needs
        (exact_f_number(20), "f/20"),  # depth needs more than the format likes: still depth first
    ],
)
def test_where_a_lens_stopped_down_too_far_returns_to(depth_f: float | None, f_label: str) -> None:
    """High ISO pays for the way back from f/22; the depth is never given up for it."""
    found = plan(a_situation(dialled(22, 1 / 4, 800), -1 / 3, keep=TIME, depth_f=depth_f))
    assert found.settings.labels()[0] == f_label
    assert found.met


def test_stopped_down_too_far_without_iso_to_pay_for_it_stays() -> None:
    """At base ISO, a stop over: opening f/22 would make it worse; a filter is needed."""
    found = plan(a_situation(dialled(22, 1 / 4), -1, keep=TIME))
    assert found.steps == ()
    assert not found.met
    mended = plan(a_situation(dialled(22, 1 / 4), -1, keep=TIME, nd_owned=(3,)))
    assert levers(mended) == [("nd", -3.0), ("aperture", 2.0)]  # back into the best range
    assert mended.met


@pytest.mark.parametrize(
    "wrong",
    [
        {"change_stops": 21.0},
        {"change_stops": math.nan},
        {"widest_f": 0.0},
        {"widest_f": 32.0},
        {"narrowest_f": math.inf},
        {"depth_f": -1.0},
        {"wished_f": math.nan},
        {"focal_mm": 0.0},
        {"near_m": 0.0},
        {"far_m": 0.0},
        {"far_m": math.nan},
        {"steady_s": 0.0},
        {"contrast_stops": -1.0},
        {"nd_owned": (3.0, 0.0)},
        {"nd_owned": (30.0,)},
        {"nd_on": -1.0},
        {"look_times": (0.5, 0.1)},
        {"look_times": (-1.0, 0.1)},
        {"look_times": (0.0, 0.0)},
        {"look_times": (math.inf, math.inf)},
    ],
    ids=str,
)
def test_what_cannot_be_is_refused(wrong: dict[str, Any]) -> None:
    """Numbers out of range and swapped ranges are errors that carry the number."""
    with pytest.raises(OutOfDomainError):
        replace(a_situation(dialled(11, 1 / 4), 1), **wrong)


def test_a_settings_grid_never_breaks() -> None:
    """All marks from f/4 to f/22, every dial position of three stops, both directions."""
    f_numbers = [mark.exact for mark in marks_of(Lever.APERTURE, Dial.THIRDS)][9:25]
    for f_number, change in itertools.product(f_numbers, (-9, -1.5, 1.5, 9)):
        found = plan(a_situation(Settings(f_number, 1 / 8, 200), change, keep=TIME))
        assert found.met or found.others
