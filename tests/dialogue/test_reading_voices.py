"""How people put things when they dictate, correct themselves, wish, or answer with one word."""

from __future__ import annotations

from typing import Any

import pytest

from tests.dialogue.reading_checks import told, unread


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("f five six", {"f_number": 5.6}),
        ("f two eight at a sixtieth", {"f_number": 2.8, "shutter_s": 1 / 60}),
        ("f eight one", {"f_number": 8.0}),
        ("one over eight", {"shutter_s": 1 / 8}),
        ("four tenths of a second", {"shutter_s": 0.4}),
        ("iso two fifty", {"iso": 250.0}),
        ("a metre twenty to the first stone", {"nearest_m": 1.2}),
        ("climbs two hundred and fifty metres", {"climb_m": 250.0}),
        ("a fourteen twenty four and f/11", {"lenses": "14-24", "f_number": 11.0}),
    ],
)
def test_dictated_numbers(text: str, expected: dict[str, Any]) -> None:
    """Number words become numbers where they are meant as such."""
    found = told(text)
    if "lenses" in found:
        lens = found["lenses"][0]
        found["lenses"] = f"{lens.shortest_mm:g}-{lens.longest_mm:g}"
    assert found == pytest.approx(expected) or found == expected


@pytest.mark.parametrize(
    ("text", "slot", "value"),
    [
        ("nope", "has_polariser", False),
        ("no, I don't have one", "has_tripod", False),
        ("yep got one", "has_tripod", True),
        ("yes", "has_polariser", True),
    ],
)
def test_a_bare_answer_fills_the_one_slot_that_was_asked(text: str, slot: str, value: bool) -> None:
    """Yes and no answer the question of one thing; without it they say nothing."""
    assert told(text, slot) == {slot: value}
    assert told(text) == {}
    assert told(text, slot, "iso") == {}


@pytest.mark.parametrize("slot", ["has_tripod", "has_polariser"])
def test_other_words_are_no_yes_and_no_no(slot: str) -> None:
    """Whatever else is typed at such a question stays unsaid."""
    assert told("hm, good question", slot) == {}


@pytest.mark.parametrize(
    "text",
    [
        "do I need a tripod for this?",
        "which way do I turn a polariser",
        "wish I had a polariser",
        "bringing a tripod tomorrow",
    ],
)
def test_what_is_asked_about_or_wished_for_is_not_there(text: str) -> None:
    """A question about a thing, and a wish, tell nothing of the kit."""
    assert told(text) == {}


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("tripod: snapped a leg", {"has_tripod": False}),
        ("i lent my polariser to a friend", {"has_polariser": False}),
        ("should I take the polariser off?", {"has_polariser": True, "polariser_on": False}),
    ],
)
def test_what_is_gone_is_not_there(text: str, expected: dict[str, Any]) -> None:
    """A thing that was lent or is broken is missing; one that may come off is on."""
    found = told(text)
    assert {slot: found[slot] for slot in expected} == expected


@pytest.mark.parametrize(
    ("text", "left"),
    [
        ("goes from f/2.8 to f/22", ()),
        ("sharp from 1.5 m to 30 m", ("1.5 m", "30 m")),
        ("1.200 m of climb", ("1.200 m",)),
        ("iso 100-400 are clean", ("iso 100-400",)),
        ("closed down by 1/3", ("1/3",)),
        ("standing 10 m closer", ("10 m",)),
    ],
)
def test_spans_and_changes_are_no_values(text: str, left: tuple[str, ...]) -> None:
    """What a lens can do, a range, and a step from where one was fill no slot."""
    assert unread(text) == left


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("my wife has the 24-70, i've got f/8", {"f_number": 8.0}),
        ("i'm at f/11, my friend is on f/8", {"f_number": 11.0}),
        ("i'm 6'1 and the fall is 20 ft tall", {"fall_height_m": 6.096}),
        ("i'm 6'1 from the fall", {"distance_m": 1.8542}),
        ("the bus is the 42 from the east side", {}),
        ("he's on full frame, i'm on aps-c", {"camera_format": "aps-c"}),
        ("a full frame and an aps-c", {}),
        ("to f/16 from f/11", {"f_number": 16.0}),
        ("what if I shot it from 30 m", {"distance_m": 30.0}),
        ("the 16-35 at the wide end?", {"lenses": True}),
        ("the 16-35 at its longest, 3 frames", {"lenses": True, "focal_mm": 35.0}),
        ("24-70 f/4 at the long end", {"lenses": True}),
        ("the 16-35 zoomed all the way in", {"lenses": True, "focal_mm": 35.0}),
    ],
)
def test_whose_number_it_is(text: str, expected: dict[str, Any]) -> None:
    """Other people's kit, own heights, names and places left are none of the person's settings."""
    found = told(text)
    if "lenses" in found:
        found["lenses"] = True
    assert found == pytest.approx(expected) or found == expected


@pytest.mark.parametrize(
    ("text", "expecting", "clock"),
    [
        ("sun goes down at quarter to five", (), "16:45"),
        ("sunset at six o'clock", (), "18:00"),
        ("the app says sunset will be 18:32", (), "18:32"),
        ("18:40 is when the sun sets", (), "18:40"),
        ("sunset is at seven forty five", (), "19:45"),
        ("sunset ten past eight", (), "20:10"),
        ("sunset six thirty pm", (), "18:30"),
        ("sunset 12:40 am", (), "00:40"),
        ("sunset 15:10 pm", (), "15:10"),
        ("sunset 0:31", (), "00:31"),
        ("half six", ("sunset",), "18:30"),
        ("1915", ("sunset",), "19:15"),
        ("3 km, 19:12", ("sunset", "walk_km"), "19:12"),
        ("6.42pm", ("sunset",), "18:42"),
    ],
)
def test_sunset_by_the_clock(text: str, expecting: tuple[str, ...], clock: str) -> None:
    """The sun sets in the second half of the day, however the time is put."""
    assert told(text, *expecting)["sunset"] == clock


@pytest.mark.parametrize(
    "text", ["sunset yesterday was 18:20", "sunset 18:20, no 18:40", "bus at 18:20", "sunset 7"]
)
def test_other_times_are_no_sunset(text: str) -> None:
    """Yesterday's time, a bus and a bare hour are none; of two times the first counts."""
    assert told(text).get("sunset") in {None, "18:20"}
