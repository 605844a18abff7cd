"""What holds for every plan."""

from __future__ import annotations

import math
from dataclasses import replace
from functools import cache

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from core.adjust import Lever, Setting, Situation, plan
from core.adjust.moves import DARKER_KEPT_STOPS
from core.adjust.ranges import marks_of, value_of
from core.camera import FORMATS, POLARISER_STOPS, Camera
from core.exposure import Settings, brightness_change
from core.series import Dial, at_least, exact_iso, iso_marks
from tests.core.adjust_cases import (
    DIALS,
    a_situation,
    dialled,
    levers,
)


@st.composite
def situations(draw: st.DrawFn) -> Situation:
    """Anything that a person may come with."""
    sensor = FORMATS[draw(st.sampled_from(sorted(FORMATS)))]
    dial = draw(st.sampled_from(Dial))
    camera = Camera(
        sensor,
        dial=dial,
        base_iso=draw(st.sampled_from([exact_iso(50), exact_iso(64), 100.0, 200.0])),
        highest_iso=draw(st.sampled_from([800.0, 3200.0, 6400.0])),
        bulb=draw(st.booleans()),
    )
    fixed = sensor.fixed_f_number
    f_number = draw(_marks(Lever.APERTURE, dial, 4, 24)) if fixed is None else fixed
    settings = Settings(
        f_number,
        draw(_marks(Lever.TIME, dial, 1 / 4000, 33)),
        draw(_marks(Lever.ISO, dial, 49, 3300)),
    )
    band = draw(st.none() | st.tuples(st.floats(0, 2), st.floats(2, 30)))
    return Situation(
        settings=settings,
        change_stops=draw(st.floats(-12, 12)),
        camera=camera,
        widest_f=draw(st.sampled_from([1.4142135, 2.8284271, 4.0])),
        depth_f=draw(st.none() | st.floats(1.5, 25)),
        wished_f=draw(st.none() | st.floats(4, 16)),
        look_times=band,
        keep=draw(st.frozensets(st.sampled_from(["time", "f_number", "iso"]))),
        polariser=draw(st.sampled_from(["on", "off", "none"])),
        nd_owned=tuple(draw(st.lists(st.sampled_from([1.0, 2.0, 3.0, 6.0, 10.0]), max_size=3))),
        nd_on=draw(st.sampled_from([0.0, 0.0, 3.0, 6.0])),
        tripod=draw(st.booleans()),
        small_steps=draw(st.booleans()),
        focal_mm=draw(st.none() | st.floats(4, 200)),
        in_sun=draw(st.none() | st.booleans()),
    )


@cache
def _marks(lever: Lever, dial: Dial, low: float, high: float) -> st.SearchStrategy[float]:
    return st.sampled_from([m.exact for m in marks_of(lever, dial) if low <= m.exact <= high])


def _filters(polariser_on: bool, nd_on: float) -> float:
    return POLARISER_STOPS * polariser_on + nd_on


@given(situations())
def test_steps_and_rest_are_what_was_wanted(situation: Situation) -> None:
    """The sum of the steps' stops and what remains is the wanted change, to the last bit or so."""
    found = plan(situation)
    total = sum(step.stops for step in found.steps) + found.remaining_stops
    assert total == pytest.approx(situation.change_stops, abs=1e-9)


@given(situations())
def test_each_step_says_what_its_settings_do(situation: Situation) -> None:
    """A step's stops are the change of its settings and filters; each lever moves once."""
    found = plan(situation)
    settings = situation.settings
    filters = _filters(situation.polariser == "on", situation.nd_on)
    for step in found.steps:
        after = _filters(step.polariser_on, step.nd_on)
        change = brightness_change(settings, step.settings) + filters - after
        assert step.stops == pytest.approx(change, abs=1e-9)
        assert step.stops != 0
        settings, filters = step.settings, after
    assert settings == found.settings
    moved = [step.lever for step in found.steps]
    assert len(set(moved)) == len(moved)


@given(situations())
def test_what_is_kept_never_moves(situation: Situation) -> None:
    """Kept settings and a phone's opening are at the end what they were."""
    found = plan(situation)
    before, after = situation.settings, found.settings
    assert "time" not in situation.keep or after.shutter_s == before.shutter_s
    assert "iso" not in situation.keep or after.iso == before.iso
    fixed = situation.camera.sensor.fixed_f_number is not None or "f_number" in situation.keep
    assert not fixed or after.f_number == before.f_number
    assert found.polariser == "none" or situation.polariser != "none"
    assert found.nd_on in {0.0, situation.nd_on, *situation.nd_owned}


@given(situations())
def test_no_plan_leaves_its_limits(situation: Situation) -> None:
    """What moved lies on a mark, between the limits of camera, lens, format, depth and noise."""
    found = plan(situation)
    camera, sensor = situation.camera, situation.camera.sensor
    for step in found.steps:
        if step.lever in DIALS:
            value = value_of(step.lever, step.settings)
            assert value in {mark.exact for mark in marks_of(step.lever, camera.dial)}
            assert not step.path or step.path[-1].exact == value
    after, before = found.settings, situation.settings
    slack = 1 + 1e-5
    if after.iso != before.iso:
        highest = max(before.iso, camera.base_iso, min(sensor.top_iso, camera.highest_iso))
        assert after.iso >= camera.base_iso / slack
        assert after.iso <= highest * slack
    if after.f_number < before.f_number:
        wide = max(situation.widest_f, situation.depth_f or sensor.best_f[0])
        assert after.f_number >= wide / slack
    if after.f_number > before.f_number:
        assert after.f_number <= min(sensor.softening_f, situation.narrowest_f) * slack
    longest_s = 512 if camera.bulb else camera.longest_s
    assert after.shutter_s <= longest_s * slack
    assert after.shutter_s >= camera.shortest_s / slack


@given(situations())
def test_a_time_never_leaves_the_look_by_a_plan(situation: Situation) -> None:
    """Inside the look it stays inside; by hand it grows no longer than the hand holds."""
    found = plan(situation)
    shortest_s, longest_s = situation.look_times or (0.0, math.inf)
    before, after = situation.settings.shutter_s, found.settings.shutter_s
    if shortest_s <= before <= longest_s:
        assert shortest_s / (1 + 1e-5) <= after <= longest_s * (1 + 1e-5)
    if after > before and not situation.tripod:
        focal_mm = situation.full_frame_focal_mm
        assert after <= (2**-6 if focal_mm is None else 1 / focal_mm) * (1 + 1e-5)


@given(situations())
def test_a_plan_that_falls_short_offers_more(situation: Situation) -> None:
    """Not met: other ways and the reason for every lever; met: within half a step, or darker."""
    found = plan(situation)
    rest = found.remaining_stops
    if not found.met:
        assert found.others
        assert len(found.blocked) == 5
        assert all(offer.stops * rest >= 0 for offer in found.others)
    else:
        assert found.blocked == ()
        assert -situation.half_step <= rest <= DARKER_KEPT_STOPS


@given(situations())
def test_a_plan_is_the_whole_of_what_can_be_done(situation: Situation) -> None:
    """Asked again from where a met plan ends, nothing moves."""
    found = plan(situation)
    assume(found.met and found.look_met is not False)
    after = replace(
        situation,
        settings=found.settings,
        change_stops=0.0,
        polariser=found.polariser,
        nd_on=found.nd_on,
    )
    assert plan(after).steps == ()


@given(situations())
def test_nothing_wanted_moves_nothing(situation: Situation) -> None:
    """No change wanted and the look right: no steps."""
    quiet = replace(situation, change_stops=0.0, look_times=None)
    found = plan(quiet)
    assert (found.steps, found.met, found.settings) == ((), True, situation.settings)


@given(situations(), st.floats(0.01, 6))
def test_more_wanted_never_gives_less(situation: Situation, more_stops: float) -> None:
    """A greater wish moves at least as far, within the rounding of a dial and what stays darker."""
    assume(abs(situation.change_stops) + more_stops < 20)
    greater = situation.change_stops + math.copysign(more_stops, situation.change_stops)
    small, large = plan(situation), plan(replace(situation, change_stops=greater))
    sign = math.copysign(1.0, greater)
    reached = sign * (situation.change_stops - small.remaining_stops)
    reached_more = sign * (greater - large.remaining_stops)
    assert reached_more >= reached - 2 * situation.half_step - DARKER_KEPT_STOPS


@pytest.mark.parametrize(
    ("lever", "kept"),
    [
        (Lever.TIME, {"iso", "f_number"}),
        (Lever.ISO, {"time", "f_number"}),
        (Lever.APERTURE, {"time", "iso"}),
    ],
)
@given(thirds=st.integers(1, 2))
def test_darker_and_brighter_are_mirror_images(
    lever: Lever, kept: set[Setting], thirds: int
) -> None:
    """With one dial free and no limit near, as many stops one way as the other."""
    wish = a_situation(dialled(11, 1 / 4, 200), thirds / 3, keep=frozenset(kept), depth_f=4.0)
    up, down = plan(wish), plan(replace(wish, change_stops=-thirds / 3))
    assert levers(up) == [(lever.value, round(thirds / 3, 2))]
    assert levers(down) == [(lever.value, round(-thirds / 3, 2))]


def _base_mark(situation: Situation) -> float:
    camera = situation.camera
    return at_least(iso_marks(camera.dial), camera.base_iso).exact


@given(situations())
def test_the_way_back_undoes_a_dial(situation: Situation) -> None:
    """One dial alone, moved and moved back by the same wish, stands where it stood."""
    alone = replace(
        situation,
        keep=frozenset({"time", "f_number"}),
        polariser="none",
        nd_owned=(),
        nd_on=0.0,
        look_times=None,
        settings=replace(situation.settings, iso=_base_mark(situation)),
        change_stops=abs(situation.change_stops),
    )
    up = plan(alone)
    back = plan(replace(alone, settings=up.settings, change_stops=-sum(s.stops for s in up.steps)))
    assert back.settings.iso == pytest.approx(alone.settings.iso)
