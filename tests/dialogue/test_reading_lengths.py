"""Heights, distances, speeds and ways, with and without units."""

from __future__ import annotations

from typing import Any

import pytest

from bot.dialogue.facts import Units
from bot.dialogue.reading import read
from tests.dialogue.reading_checks import FT, M, told, unread

FOOT_M = 0.3048  # international foot, exact
MILE_KM = 1.609344  # international mile, exact
ARRIVAL = ("fall_height_m", "distance_m", "nearest_m")


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("rock 2 m away", {"nearest_m": 2}),
        ("fall 12 m away", {"distance_m": 12}),
        ("2 m to the first rock", {"nearest_m": 2}),
        ("30 m to the trees behind", {"farthest_m": 30}),
        ("a stump 1 m from the lens", {"nearest_m": 1}),
        ("12 m from the fall", {"distance_m": 12}),
        ("the fall is 8 m from the path", {"distance_m": 8}),
        ("1.5 m nearest rock", {"nearest_m": 1.5}),
        ("rock 1 m off the ground", {"nearest_m": 1}),
        ("the fall, as tall as a church, 20 m", {"fall_height_m": 20}),
        ("tripod 1.2 m up", {"has_tripod": True, "camera_height_m": 1.2}),
        ("4 km walk, 250 m up", {"walk_km": 4, "climb_m": 250}),
        ("4 km walk, up 250 m", {"walk_km": 4, "climb_m": 250}),
        ("near 1.2 m, far 18 m", {"nearest_m": 1.2, "farthest_m": 18}),
        ("far end at 20 m", {"farthest_m": 20}),
        ("not too far 20 m or so", {}),
        ("stream 1.5 m/s at 3 m", {"stream": True, "water_speed_mps": 1.5, "distance_m": 3}),
        ("the water is at 6 m", {"distance_m": 6}),
        ("6 m wide", {"fall_width_m": 6}),
        ("20 m is how far I stand", {"distance_m": 20}),
        ("18 m is how tall it is, 6 is how wide", {"fall_height_m": 18, "fall_width_m": 6}),
        ("wide zoom yes or no from 18 m", {}),
        ("pool 30 cm deep", {"water_depth_m": 0.3}),
        ("camera on the ground", {"camera_height_m": 0.2}),
        ("wade up to the knees", {"water_depth_m": 0.5}),
    ],
)
def test_words_say_which_length_it_is(text: str, expected: dict[str, Any]) -> None:
    """The words before and behind a length name its slot."""
    assert told(text) == pytest.approx(expected)


@pytest.mark.parametrize(
    "text",
    [
        "my bottle 1 m from my boots",
        "back wall 25 m behind the fall",
        "I'm 3 m from the path",
        "we're 10 m from the others",
        "15 m from the sign",
        "250 m up",
        "12 m of rope",
        "2 m, 6 m",
    ],
)
def test_a_length_of_nothing_known_stays_unread(text: str) -> None:
    """What the words do not place is told, not guessed."""
    assert unread(text)


def test_bare_numbers_are_in_the_units_of_the_person() -> None:
    """`18 away` is 18 m or 18 ft, as the person uses."""
    assert told("18 away", units=M) == {"distance_m": 18}
    assert told("18 away", units=FT) == pytest.approx({"distance_m": 18 * FOOT_M})


def test_bare_numbers_follow_the_units_that_the_message_shows() -> None:
    """Beside a length in feet a bare one is feet, even for a metric person; nothing is guessed."""
    facts = read("40 ft tall, 60 away", units=M)
    assert facts.distance_m == pytest.approx(60 * FOOT_M)
    assert facts.units is Units.IMPERIAL
    assert facts.guessed == ()


@pytest.mark.parametrize(
    ("slot", "typed", "metres"),
    [
        ("fall_height_m", "40", 40),
        ("fall_height_m", "80", 80 * FOOT_M),
        ("nearest_m", "2", 2),
        ("nearest_m", "8", 8 * FOOT_M),
        ("nearest_m", "80", 0.8),
        ("camera_height_m", "90", 0.9),
        ("distance_m", "150", 150 * FOOT_M),
        ("walk_km", "4", 4),
        ("fall_width_m", "12", 12),
    ],
)
def test_without_any_units_the_size_decides_and_the_guess_is_told(
    slot: str, typed: str, metres: float
) -> None:
    """The guess is an own rule; pins current behaviour."""
    facts = read(typed, expecting=frozenset({slot}))
    assert getattr(facts, slot) == pytest.approx(metres)
    assert facts.guessed == (slot,)


def test_a_walk_in_an_imperial_persons_words_is_miles() -> None:
    """A bare length of the way is miles for who uses feet."""
    assert told("2", "walk_km", units=FT) == pytest.approx({"walk_km": 2 * MILE_KM})


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("12, 18, 1.5", {"fall_height_m": 12, "distance_m": 18, "nearest_m": 1.5}),
        ("12 m, 18 m", {"fall_height_m": 12, "distance_m": 18}),
        ("12", {"fall_height_m": 12}),
        ("18 away and 12", {"distance_m": 18, "fall_height_m": 12}),
    ],
)
def test_bare_answers_go_in_the_order_of_the_question(
    text: str, expected: dict[str, float]
) -> None:
    """The arrival question asks for height, distance, nearest; so are bare lengths taken."""
    assert told(text, *ARRIVAL, units=M) == expected


def test_more_numbers_than_were_asked_are_not_dealt_out() -> None:
    """Four numbers for three questions stay unread."""
    assert unread("12, 18, 1.5, 7", *ARRIVAL, units=M) == ("12", "18", "1.5", "7")


def test_a_length_beside_roles_is_the_height() -> None:
    """The bare first length is the fall when distance or foreground are named, and only then."""
    assert told("9 m, 14 m away") == {"fall_height_m": 9, "distance_m": 14}
    assert unread("9 m") == ("9 m",)
    assert read("nearest 1 m, maybe 1.2 m").unread == ("1.2 m",)


def test_a_section_takes_the_length_that_is_left() -> None:
    """`just a section, 4 m` says how much of the fall is shown."""
    assert told("just a section, 4 m") == {"section": True, "section_height_m": 4}


@pytest.mark.parametrize(
    ("text", "speed_mps"),
    [
        ("3 m in 3 s", 1.0),
        ("leaf takes 4 s for 10 ft", 10 * FOOT_M / 4),
        ("stick took 2 s per metre", 0.5),
        ("leaf 3 s per foot", FOOT_M / 3),
        ("water at 7.2 km/h", 2.0),
        ("5 fps", 5 * FOOT_M),
    ],
)
def test_speed_of_the_water(text: str, speed_mps: float) -> None:
    """Typed speeds and a timed leaf come out in metres a second."""
    assert told(text) == pytest.approx({"water_speed_mps": speed_mps})


def test_wind_speeds_move_leaves_and_no_water() -> None:
    """From a light breeze on leaves move (common practice); a weaker one says nothing."""
    assert told("wind 4 m/s") == {"wind": True}
    assert told("wind 1 m/s") == {}


@pytest.mark.parametrize(
    "text", ["walked 5 km/h", "1-2 m/s", "leaf took 0 s for 3 m", "1-2 m tall"]
)
def test_speeds_and_ranges_that_say_too_little_stay_unread(text: str) -> None:
    """A walker's speed, a range, a leaf in no time: unread."""
    assert unread(text)


def test_a_drive_is_no_walk() -> None:
    """Kilometres by car fill nothing and are not asked about."""
    assert told("drove 40 km") == {}
    assert unread("drove 40 km") == ()


def test_two_lengths_in_two_systems() -> None:
    """Each counts in its own unit, and the message shows neither system."""
    facts = read("fall 30 ft tall, 12 m away")
    assert facts.fall_height_m == pytest.approx(30 * FOOT_M)
    assert facts.distance_m == 12
    assert facts.units is None


def test_inches_by_their_sign() -> None:
    """A double quote behind a length's words is inches, and shows an imperial person."""
    facts = read('rock 18" from the lens')
    assert facts.nearest_m == pytest.approx(18 * 0.0254)
    assert facts.units is Units.IMPERIAL


def test_what_water_runs_over_is_no_near_thing() -> None:
    """The slabs of a slide don't take the distance behind the comma."""
    told = read("10 m slide over slabs, 12 m away, rock at 1 m").known()
    assert (told["fall_height_m"], told["distance_m"], told["nearest_m"]) == (10, 12, 1)
