"""Bare numbers: answers to the open question, and what people count, number and pay beside it."""

from __future__ import annotations

import pytest

from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed

GEOMETRY = frozenset({"fall_height_m", "distance_m", "nearest_m"})
SETTINGS = frozenset({"f_number", "shutter_s", "iso"})
WAY = frozenset({"walk_km", "climb_m", "sunset"})


@pytest.mark.parametrize("expecting", [GEOMETRY, SETTINGS, WAY, frozenset({"nearest_m"})])
@pytest.mark.parametrize(
    ("language", "text"),
    [
        *(
            ("en", text)
            for text in (
                "my son is 12",
                "I'm 34",
                "page 24",
                "room 12",
                "bus at 5",
                "the train leaves 17:45",
                "dinner at 6",
                "we are 8 people",
                "8 of us",
                "it's 15 degrees",
                "20 euros",
                "$20",
                "parking was 20",
                "battery at 40",
                "40 percent",
                "took 30 shots so far",
                "3 dogs",
                "day 3 of the trip",
                "8 out of 10",
                "10/10",
                "2 waterfalls here",
                "I take the 42",
                "half past 5",
                "a 10 minute break",
                "from 9 to 5",
                "the kids are 4 and 7",
            )
        ),
        *(
            ("de", text)
            for text in (
                "mein Sohn ist 12",
                "ich bin 34",
                "Seite 24",
                "Zimmer 12",
                "der Bus fährt um 17",
                "wir sind 8 Leute",
                "20 Euro",
                "Akku bei 40",
                "Tag 3",
                "Auf Seite 12 vom Heft steht das anders",
            )
        ),
        *(
            ("es", text)
            for text in (
                "mi hijo tiene 12",
                "tengo 34",
                "página 24",
                "habitación 12",
                "el bus a las 5",
                "somos 8",
                "batería al 40",
                "son las 3",
                "40 por ciento",
                "talla 43",
            )
        ),
    ],
)
def test_small_talk_fills_nothing(language: str, text: str, expecting: frozenset[str]) -> None:
    """A number that counts or names something else answers no question."""
    assert read(glossed(text, language), expecting=expecting).known() == {}


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "12"),
        ("en", "about 12"),
        ("en", "12 or so I guess"),
        ("en", "maybe 12 m"),
        ("en", "well, 12 then"),
        ("en", "it's roughly 12, give or take"),
        ("en", "the sign says 12"),
        ("en", "my book says 12 m"),
        ("en", "just under 12 m"),
        ("en", "no idea, maybe twelve"),
        ("de", "ich glaub so 12"),
        ("de", "12 würd ich sagen"),
        ("de", "dürften 12 sein"),
        ("de", "auf dem Schild steht 12 m"),
        ("es", "diría que 12"),
        ("es", "serán unos 12"),
        ("es", "12 más o menos"),
        ("es", "el cartel pone 12 m"),
    ],
)
def test_a_number_with_hedges_answers(language: str, text: str) -> None:
    """Words that only hedge, greet or tell where it was read leave the number an answer."""
    told = read(glossed(text, language), expecting=GEOMETRY)
    assert told.known() == {"fall_height_m": 12}


@pytest.mark.parametrize(
    ("text", "slot", "value"),
    [
        ("18 is the height", "fall_height_m", 18),
        ("12 is the distance", "distance_m", 12),
        ("change the height to 14", "fall_height_m", 14),
        ("camera 1.2 m high", "camera_height_m", 1.2),
        ("500 m to the car", "walk_km", 0.5),
        ("15 tall, no, 18 m tall", "fall_height_m", 18),
        ("was at iso 800 before, I'm on 200 now", "iso", 200),
        ("I'm on the 24 end of my 24-105", "focal_mm", 24),
        ("stopped down to 11", "f_number", 11),
        ("she's fifty feet high", "fall_height_m", 15.24),
    ],
)
def test_a_number_is_what_it_is_called(text: str, slot: str, value: float) -> None:
    """Its name decides, before or behind it, whatever is asked; 1 ft = 0.3048 m by definition."""
    assert getattr(read(text, expecting=frozenset({"nearest_m"})), slot) == pytest.approx(value)


@pytest.mark.parametrize(
    "text",
    [
        "the tree is 20 m tall",
        "a 2 m tall guy",
        "the tree is 20 tall",
        "the depth is 3",
        "the snow is 20 cm deep",
        "we're at 1450 m above the sea",
        "300 m to the hut",
        "3 km to go",
        "walked 5 km this morning",
        "my rope is 30 m",
        "the video is 30 seconds",
        "f1 race on sunday",
        "page 12 from the book",
        "my phone has 20 percent",
    ],
)
def test_measures_of_other_things_fill_nothing(text: str) -> None:
    """Trees, people, snow, ropes and ways behind us are no measures of the fall."""
    assert read(text, expecting=GEOMETRY).known() == {}


def test_of_several_guesses_the_own_one_counts() -> None:
    """Somebody else's number gives way to the one that the person believes."""
    told = read("hubby reckons 9 ft, no way, the fall is 12 ft high")
    assert told.fall_height_m == pytest.approx(12 * 0.3048)
    assert told.unread == ()


@pytest.mark.parametrize(
    ("text", "sunset"),
    [
        ("19:40", "19:40"),
        ("it's gone by 19:40 tonight", "19:40"),
        ("bus at 19:40", None),
        ("sunrise 6:40", None),
        ("the gate closes at 20:00", None),
    ],
)
def test_only_a_time_that_may_be_sunset_is_one(text: str, sunset: str | None) -> None:
    """Where the way out is asked for, a bus is no sunset."""
    assert read(text, expecting=WAY).sunset == sunset
