"""Numbers that tempt: parts, other places, counts, temperatures, telephone numbers, corrections."""

from __future__ import annotations

from typing import Any

import pytest

from bot.dialogue.facts import Blink, Symptom
from bot.dialogue.reading import slips
from bot.dialogue.reading.foreign import slips as foreign_slips
from bot.dialogue.reading.normal import normalise
from tests.dialogue.reading_checks import M, told, unread

GEOMETRY = ("fall_height_m", "distance_m", "nearest_m")


@pytest.mark.parametrize(
    "text",
    [
        "my number is 0171 5550 142",
        "call 555 0199 when you're back",
        "on 12/10 we were 11 people",
        "lot 24, spot 70",
        "hut 7, bed 12, breakfast at 6:30",
        "we walked 1 h 20",
        "it's minus 2 out here",
        "I'm 180 cm tall",
        "we walked 2 km already",
    ],
)
def test_numbers_of_something_else(text: str) -> None:
    """They fill nothing and are not asked about."""
    assert told(text) == {}
    assert unread(text) == ()


@pytest.mark.parametrize(
    ("text", "pieces"),
    [
        ("next fall is 800 m downstream", ("800 m",)),
        ("each 4 m", ("4 m",)),
        ("trailhead elevation 640 m", ("640 m",)),
        ("don't go over f/11", ("f/11",)),
        ("never past 1 s", ("1 s",)),
    ],
)
def test_parts_other_places_and_bounds(text: str, pieces: tuple[str, ...]) -> None:
    """They are no value of this place; Linn asks what they are."""
    assert unread(text) == pieces


def test_steps_are_counted_and_their_sum_is_the_fall() -> None:
    """The number of steps and the height of one are no heights of the fall."""
    assert told("3 steps, each 4 m, 12 m in total", *GEOMETRY) == {"fall_height_m": 12}
    assert told("3 or so", "nearest_m", units=M) == {"nearest_m": 3}


def test_parts_of_a_fall_are_not_its_height() -> None:
    """The drops of a fall in parts say nothing of the whole; a person beside a fall does."""
    text = "two drops, upper one 5 m, lower one 9 m, 20 m away"
    assert told(text, *GEOMETRY) == {"distance_m": 20}
    assert told("I'm at a waterfall about 10 m tall") == {"fall_height_m": 10}


def test_a_count_answers_no_question_for_settings() -> None:
    """`3 dots` is no time, and the larger of two sizes is told."""
    assert told("about 3 dots and one patch blinking", "shutter_s") == {"blink": Blink.PATCHES}
    assert told("dots blink, no patches")["blink"] is Blink.DOTS
    assert told("16-35, no 50", "lenses", "focal_mm").keys() == {"lenses"}


def test_metres_on_the_way_may_be_climb_or_distance() -> None:
    """`200 m` alone answers neither; beside the kilometres it is the climb."""
    assert unread("200 m", "walk_km", "climb_m") == ("200 m",)
    assert unread("200 m down", "walk_km", "climb_m") == ("200 m",)
    assert told("3 km, 200 m", "walk_km", "climb_m") == {"walk_km": 3, "climb_m": 200}


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("20 feet away, i mean 20 metres", {"distance_m": 20}),
        ("12 m tall, sorry, 14 m", {"fall_height_m": 14}),
        ("moved closer, 10 m now", {"distance_m": 10}),
        ("f/11, i mean 20 m", {"f_number": 11}),
        ("12 m tall, over 14 m", {"fall_height_m": 12}),
        ("12 m tall, sorry, 14", {"fall_height_m": 14}),
        ("40 ft tall, no, 30", {"fall_height_m": pytest.approx(30 * 0.3048)}),
        ("1/3 over, no, 2/3", {"meter_stops": pytest.approx(2 / 3)}),
        ("1 stop too dark, sorry, 2", {"change_stops": 2, "symptoms": (Symptom.TOO_DARK,)}),
        ("f/8, i mean 11", {"f_number": 11}),
        ("iso 100, sorry 200", {"iso": 200}),
        ("f/8, sorry, 3 of us", {"f_number": 8}),
        ("3 km walk, no, 4", {"walk_km": 3}),
        ("f/11, i mean 7/8", {"f_number": 11}),
    ],
)
def test_a_correction_takes_the_place_of_the_number_before(
    text: str, expected: dict[str, Any]
) -> None:
    """A number behind words of correction goes where the number before went, in its unit."""
    assert told(text) == expected


@pytest.mark.parametrize(
    ("text", "expecting", "expected"),
    [
        ("one and a half", "nearest_m", {"nearest_m": 1.5}),
        ("3 ft 6", "nearest_m", {"nearest_m": pytest.approx(3.5 * 0.3048)}),
        ("24mm -1/3 ev", "focal_mm", {"focal_mm": 24, "meter_stops": pytest.approx(-1 / 3)}),
        ("1/2.5", "shutter_s", {"shutter_s": 0.4}),
        ("f 8 and a fifteenth", "shutter_s", {"f_number": 8, "shutter_s": pytest.approx(1 / 15)}),
        ("1 and 1/3 over", "meter_stops", {"meter_stops": pytest.approx(4 / 3)}),
        ("a bit under, 1/3", "meter_stops", {"meter_stops": pytest.approx(-1 / 3)}),
        ("dead centre", "meter_stops", {"meter_stops": 0}),
        ("0", "meter_stops", {"meter_stops": 0}),
        ("twenty eight", "focal_mm", {"focal_mm": 28}),
    ],
)
def test_numbers_in_unusual_shapes(text: str, expecting: str, expected: dict[str, Any]) -> None:
    """Halves in words, feet with bare inches, signs behind a blank, decimals under one."""
    assert told(text, expecting, units=M) == expected


def test_people_under_a_tree_are_no_stops() -> None:
    """A count is no meter reading; with its unit "under a" follows a number of stops."""
    assert told("2 under the trees") == {"light": "light canopy"}
    assert told("1 stop under a 12 m fall")["meter_stops"] == -1


@pytest.mark.parametrize(
    ("text", "stream"),
    [
        ("it's just a stream, no fall", True),
        ("a creek, not really a waterfall", True),
        ("a stream below the fall", None),
    ],
)
def test_a_denied_fall_leaves_the_stream(text: str, stream: bool | None) -> None:
    """Only a fall that is there speaks against the stream."""
    assert told(text).get("stream") is stream


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("40 ft hihg", "40 ft high"),
        ("tirpod and polarizr", "tripod and polarizer"),
        ("fulll frame", "full frame"),
        ("apreture 8", "aperture 8"),
        ("forground soft", "foreground soft"),
        ("hieght 14 m, dist 20 m", "height 14 m, distance 20 m"),
        ("soooo dark", "so dark"),
    ],
)
def test_slips_of_the_thumb_are_put_right(text: str, meant: str) -> None:
    """A letter too many, too few, wrong or in its neighbour's place changes nothing."""
    assert normalise(text) == normalise(meant)


@pytest.mark.parametrize(
    "text", ["a steam train", "the closet shuts", "i can leave", "years ago", "a scream", "steps"]
)
def test_words_of_their_own_stay(text: str) -> None:
    """A word that is one letter off a word of the trade is not taken for it."""
    assert normalise(text) == text


@pytest.mark.parametrize(
    "text",
    [
        "my buddy says f/16 is best",
        "my mate is on f/8 and 1/30",
        "my first camera had 6 megapixels",
        "would a 6 stop help",
        "asking for a friend: is a 24-70 any good",
    ],
)
def test_what_is_not_the_persons_own_is_not_told(text: str) -> None:
    """Advice, other people's settings, kit long gone and kit only asked about fill nothing."""
    assert told(text) == {}


@pytest.mark.parametrize("word", ["abbot", "bleak", "shattur"])
def test_two_letters_off_is_another_word(word: str) -> None:
    """A word of the same length that differs in two letters, not turned, is no slip."""
    assert slips.mend_slips(f"the {word} here") == f"the {word} here"


def test_every_exception_of_the_slips_is_needed() -> None:
    """A word stands in the list of others because it would be taken for a slip without it."""
    for word in slips._NEAR.others:
        assert slips._NEAR.of(word) != word, word
    for word in foreign_slips._OTHERS:
        assert any(near.of(word) != word for near in foreign_slips._NEAR.values()), word
