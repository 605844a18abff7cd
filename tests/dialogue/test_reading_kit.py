"""Sensor, lenses, filters, tripod."""

from __future__ import annotations

from typing import Any

import pytest

from bot.dialogue.facts import LensFact
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from core.camera import FORMATS
from tests.dialogue.reading_checks import told, unread


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("full frame", "full frame"),
        ("FF", "full frame"),
        ("35mm sensor", "full frame"),
        ("36x24", "full frame"),
        ("APS-C", "aps-c"),
        ("1.5x crop", "aps-c"),
        ("crop factor 1.5", "aps-c"),
        ("crop body", "aps-c"),
        ("1.6x", "aps-c 1.6"),
        ("aps-c 1.6x", "aps-c 1.6"),
        ("micro four thirds", "four thirds"),
        ("m4/3", "four thirds"),
        ("2x crop", "four thirds"),
        ("1-inch", "1-inch"),
        ('1" sensor', "1-inch"),
        ("medium format", "44x33"),
        ("44x33", "44x33"),
        ("just my phone", "phone"),
        ("cell phone camera", "phone"),
    ],
)
def test_formats(text: str, key: str) -> None:
    """Each name of a format is a key of the format table."""
    assert told(text) == {"camera_format": key}
    assert key in FORMATS


@pytest.mark.parametrize(
    "text", ["I crop it later", "no phone signal", "my phone is in flight mode", "four of us"]
)
def test_words_that_are_no_format(text: str) -> None:
    """Cropping and telephoning say nothing about the sensor."""
    assert told(text) == {}


def test_megapixels() -> None:
    """Megapixels are read, a range of them is not."""
    assert told("24 MP") == {"megapixels": 24}
    assert unread("20-24 mp") == ("20-24 mp",)


@pytest.mark.parametrize(
    ("text", "lens"),
    [
        ("24-70", (24, 70, None, None)),
        ("24 to 70", (24, 70, None, None)),
        ("24-70 f/2.8", (24, 70, 2.8, 2.8)),
        ("70-200/4", (70, 200, 4, 4)),
        ("24-105 f/3.5-6.3", (24, 105, 3.5, 6.3)),
        ("70-200 2.8", (70, 200, 2.8, 2.8)),
        ("21-43mm", (21, 43, None, None)),
        ("20mm prime", (20, 20, None, None)),
        ("50mm f/1.8", (50, 50, 1.8, 1.8)),
        ("I own a 28mm", (28, 28, None, None)),
    ],
)
def test_lenses(text: str, lens: tuple[float, ...]) -> None:
    """A lens by its ends; the f-number behind it is the lens's, not a setting."""
    expected = LensFact(
        shortest_mm=lens[0],
        longest_mm=lens[1],
        widest_at_shortest=lens[2],
        widest_at_longest=lens[3],
    )
    assert told(text) == {"lenses": (expected,)}


@pytest.mark.parametrize("text", ["21-43", "20-65", "24-28", "1-2mm lens", "2000mm lens"])
def test_pairs_that_are_no_zoom(text: str) -> None:
    """Without millimetres a pair must be one that is made; nobody makes a 24-28."""
    assert unread(text)


def test_a_count_of_people_is_no_zoom() -> None:
    """`20-30 people` is nothing that was meant for a slot."""
    assert told("24-30 people") == {}


def test_setting_behind_a_zoom() -> None:
    """No zoom opens at f/8, so that f-number is a setting; `at 35` is its focal length."""
    known = told("24-70 at 35 f/8 1/4")
    assert (known["focal_mm"], known["f_number"], known["shutter_s"]) == (35, 8, 0.25)
    assert told("I have a 24-70, at 24mm")["focal_mm"] == 24
    assert told("24-70 f/8")["f_number"] == 8


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("nd8", {"nd_stops": (3.0,)}),
        ("nd64 on", {"nd_on_stops": 6.0}),
        ("with the 3-stop", {"nd_on_stops": 3.0}),
        ("10-stop off now", {"nd_on_stops": 0.0}),
        ("3 and 6 stop nd", {"nd_stops": (3.0, 6.0)}),
        ("nd filters: 3, 6 and 10 stop", {"nd_stops": (3.0, 6.0, 10.0)}),
        (
            "24-70, 6 stop nd",
            {"lenses": (LensFact(shortest_mm=24, longest_mm=70),), "nd_stops": (6.0,)},
        ),
        ("no filters", {"nd_on_stops": 0.0, "polariser_on": False}),
        ("no filters with me", {"nd_stops": (), "has_polariser": False}),
        ("nd off", {"nd_on_stops": 0.0}),
        ("no nd", {"nd_stops": ()}),
        ("polariser", {"has_polariser": True}),
        ("polarizer on", {"has_polariser": True, "polariser_on": True}),
        ("took the cpl off", {"has_polariser": True, "polariser_on": False}),
        ("no polariser", {"has_polariser": False}),
        ("do I need a polariser", {}),
        ("graduated 2 stop filter", {}),
    ],
)
def test_filters(text: str, expected: dict[str, Any]) -> None:
    """What is owned and what is on are told apart."""
    assert told(text) == expected


def test_density_and_factor() -> None:
    """ND 0.9 is 0.9 / log10(2) stops, ND1000 log2(1000)."""
    assert told("nd 0.9 on")["nd_on_stops"] == pytest.approx(2.990, abs=0.001)
    assert told("nd1000")["nd_stops"] == pytest.approx((9.966,), abs=0.001)


@pytest.mark.parametrize("text", ["nd6", "nd 0", "nd 7.5", "nd 2-5 stops", "variable 2-5 stops"])
def test_filters_that_may_be_two_things_stay_unread(text: str) -> None:
    """`nd6` may be a factor or six stops."""
    assert unread(text)


def test_filters_where_they_were_asked_for() -> None:
    """The question says whether "no filters" is the kit or the lens, and what a 3 is."""
    assert told("no filters", "nd_stops") == {"nd_stops": (), "has_polariser": False}
    assert told("3", "nd_on_stops") == {"nd_on_stops": 3}
    assert told("nd8", "nd_on_stops") == {"nd_on_stops": 3}


@pytest.mark.parametrize(
    ("text", "has_tripod", "hand_held"),
    [
        ("tripod", True, None),
        ("on a tripod", True, False),
        ("no tripod", False, None),
        ("no tripod today", False, True),
        ("tripod in the car", True, True),
        ("handheld", None, True),
        ("tripd", True, None),
    ],
)
def test_support(text: str, has_tripod: bool | None, hand_held: bool | None) -> None:
    """Owning a tripod and standing without one are two facts."""
    facts = read(text)
    assert (facts.has_tripod, facts.hand_held) == (has_tripod, hand_held)


def test_dials() -> None:
    """Halves or thirds; the fraction is no meter reading, another number stays one."""
    assert told("half-stop clicks, 1/4 s") == {"dial_halves": True, "shutter_s": 0.25}
    assert told("dial in thirds")["dial_halves"] is False
    assert told("half-stop clicks, 1 stop under") == {"dial_halves": True, "meter_stops": -1}


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("I dont own any of those filters, polarizer or the ND thing. just a light tripod", "en"),
        ("I don't have any of those: polariser, nd. tripod yes", "en"),
        ("i have neither the polariser nor the ND, but a tripod", "en"),
        ("ich habe keinen dieser Filter, Polfilter oder ND. Stativ ja", "de"),
        ("no tengo ninguno de esos filtros, polarizador o ND. trípode sí", "es"),
    ],
)
def test_none_of_those_is_none_of_the_list(text: str, language: str) -> None:
    """Whoever owns none of the filters that they name has the tripod beside them alone."""
    facts = read(glossed(text, language))
    assert (facts.has_polariser, facts.nd_stops, facts.has_tripod) == (False, (), True)
