"""f-number, time, ISO, focal length, stops, what shall stay, and what is only tried."""

from __future__ import annotations

from typing import Any

import pytest

from bot.dialogue.facts import Keep
from bot.dialogue.reading import read
from bot.dialogue.reading.stops import exact_thirds
from tests.dialogue.reading_checks import told, unread


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("f11 1/4 iso100", {"f_number": 11, "shutter_s": 0.25, "iso": 100}),
        ("f/11 1/4 100", {"f_number": 11, "shutter_s": 0.25, "iso": 100}),
        ("100/f8/1/30", {"f_number": 8, "shutter_s": 1 / 30, "iso": 100}),
        ("100 f8 1/30", {"f_number": 8, "shutter_s": 1 / 30, "iso": 100}),
        ('30" exposure', {"shutter_s": 30}),
        ("2 min exposure", {"shutter_s": 120}),
        ("iso 64 is my base", {"base_iso": 64}),
        ("lens goes to f/22, now at f/11", {"f_number": 11}),
        ("18 mm at f/3.5 wide open", {"focal_mm": 18}),
        ("focal length is 35", {"focal_mm": 35}),
        ("was at f/8, now f/11", {"f_number": 11}),
        ("f/8 -> f/11", {"f_number": 11}),
        ("f/8, f/8", {"f_number": 8}),
    ],
)
def test_settings(text: str, expected: dict[str, Any]) -> None:
    """Settings are stored as marked, the last of a correction."""
    assert told(text) == pytest.approx(expected)


@pytest.mark.parametrize(
    "text",
    [
        "f/0.1",
        "iso 3",
        "1/4-1/2",
        "1-2 s",
        "not above iso 400",
        "under 1 s",
        "between f/8 and f/11",
        "f/5.6-8",
        "24mm equivalent",
        "16-17 mm",
        "2/3",
        "f/8 or f/11",
        "f/8, f/11",
        "f/8, f/11, f/16",
        "2",
        "1 click over",
        "2-3 stops",
        "-2 s",
        "between 1 and 2 s",
        "a bit darker, say 1/3",
    ],
)
def test_ranges_bounds_and_choices_stay_unread(text: str) -> None:
    """What names no one value is told as unread and stored nowhere."""
    assert unread(text)


@pytest.mark.parametrize(
    "text",
    [
        "2 s timer",
        "wait 10 seconds",
        "20 min walk",
        "3 hours later",
        "20 mm of rain",
        "filter thread 77 mm, 20 mm of rain",
        "one second",
        "polariser 77mm",
        "1.4x converter",
        "not f/8",
        "1/3 of the frame",
        "half an hour",
        "an hour and a half",
    ],
)
def test_other_times_and_sizes_are_no_settings(text: str) -> None:
    """Timers, walks, rain and filter threads fill no camera slot and are not asked about."""
    facts = read(text)
    assert facts.unread == ()
    assert {"shutter_s", "focal_mm", "f_number"} & facts.known().keys() == set()


@pytest.mark.parametrize(
    ("text", "expecting", "expected"),
    [
        ("11", ["f_number"], {"f_number": 11}),
        (
            "11, 1/4, 100",
            ["f_number", "shutter_s", "iso"],
            {"f_number": 11, "shutter_s": 0.25, "iso": 100},
        ),
        ("one second", ["shutter_s"], {"shutter_s": 1}),
        ("2 min", ["shutter_s"], {"shutter_s": 120}),
        ("24", ["focal_mm"], {"focal_mm": 24}),
        ("-1/3", ["meter_stops"], {"meter_stops": -1 / 3}),
        ("1/8", ["meter_stops"], {"shutter_s": 1 / 8}),
    ],
)
def test_bare_numbers_answer_the_open_question(
    text: str, expecting: list[str], expected: dict[str, float]
) -> None:
    """A number without a unit goes to the slot that was asked for."""
    assert told(text, *expecting) == pytest.approx(expected)


@pytest.mark.parametrize(
    ("text", "expecting"),
    [("1/3", ["meter_stops"]), ("110", ["iso"]), ("8-11", ["f_number"]), ("300", ["f_number"])],
)
def test_bare_numbers_that_cannot_answer_stay_unread(text: str, expecting: list[str]) -> None:
    """An unsigned third is no meter reading, 110 no mark of the ISO series, 8-11 no f-number."""
    assert unread(text, *expecting) == (text,)


@pytest.mark.parametrize(
    ("marked", "exact"), [(0.7, 2 / 3), (-0.3, -1 / 3), (1.3, 4 / 3), (0.5, 0.5), (2, 2), (0, 0)]
)
def test_marked_thirds(marked: float, exact: float) -> None:
    """Meters print thirds as .3 and .7; the exact third is meant."""
    assert exact_thirds(marked) == pytest.approx(exact)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("a third under", {"meter_stops": -1 / 3}),
        ("a third of a stop under", {"meter_stops": -1 / 3}),
        ("under by 2/3", {"meter_stops": -2 / 3}),
        ("over by one stop", {"meter_stops": 1}),
        ("2/3 of a stop under", {"meter_stops": -2 / 3}),
        ("1 stop under f/8", {"meter_stops": -1, "f_number": 8}),
        ("1/4, under the trees", {"shutter_s": 0.25, "light": "light canopy"}),
        ("meter says +1", {"meter_stops": 1}),
        ("needle in the middle", {"meter_stops": 0}),
        ("meter at 0", {"meter_stops": 0}),
        ("another stop of light please", {"change_stops": 1}),
        ("bring it down 2/3", {"change_stops": -2 / 3}),
        ("+1 brighter", {"change_stops": 1}),
        ("-1 darker", {"change_stops": -1}),
    ],
)
def test_stops(text: str, expected: dict[str, float]) -> None:
    """The meter's number and the change that is wanted are told apart by their words."""
    assert told(text) == pytest.approx(expected)


@pytest.mark.parametrize(
    ("text", "keep"),
    [
        ("keep 1/4 s", {Keep.TIME}),
        ("don't touch aperture or iso", {Keep.F_NUMBER, Keep.ISO}),
        ("time and f-number stay as they are", {Keep.TIME, Keep.F_NUMBER}),
        ("only change the iso", {Keep.TIME, Keep.F_NUMBER}),
        ("keep 1/4 for the look and f/16 for depth", {Keep.TIME, Keep.F_NUMBER}),
        ("keep f/11 for depth and raise iso", {Keep.F_NUMBER}),
        ("keep the iso low", set()),
        ("keep left at the junction", set()),
    ],
)
def test_what_shall_stay(text: str, keep: set[Keep]) -> None:
    """Settings that the person will not change."""
    assert read(text).keep == keep


@pytest.mark.parametrize(
    ("text", "automatic"),
    [
        ("P mode", True),
        ("automatic", True),
        ("auto iso", True),
        ("camera is set to auto", True),
        ("set to auto focus", None),
        ("manual", False),
        ("in manual", False),
        ("manual focus", None),
        ("focus on manual", None),
    ],
)
def test_modes(text: str, automatic: bool | None) -> None:
    """An automatic exposure is one in any of its names; manual focus says nothing."""
    assert read(text).automatic is automatic


def test_what_if_needs_something_to_try() -> None:
    """A question that tries a value is marked; one that tries none is not."""
    assert read("what if I use f/16").ask_what_if
    assert read("is it silky at 1/2?").ask_what_if
    assert not read("what if it rains").ask_what_if
    assert not read("f/16").ask_what_if
