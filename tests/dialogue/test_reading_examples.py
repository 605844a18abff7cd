"""The bot's own examples: whatever it tells people to type, it reads."""

from __future__ import annotations

import re
from itertools import product
from typing import Any, Final

import pytest

from bot.dialogue.facts import Facts, LensFact, Symptom, Units
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading import read
from bot.dialogue.reading.frame_list import laid, told_in
from bot.dialogue.reading.frame_times import plain_times
from bot.dialogue.reading.frame_words import Wished, wished
from bot.dialogue.texts import COMMAND_WORDS, TEXTS
from bot.dialogue.texts.commands import folded
from tests.every import holds_for_every

_EXAMPLE: Final = re.compile(r"`([^`]+)`")
#: One foot and one mile in metres (exact by definition).
FOOT_M: Final = 0.3048
MILE_KM: Final = 1.609344


def _zoom(shortest: float, longest: float, widest: float | None = None) -> LensFact:
    return LensFact(
        shortest_mm=shortest,
        longest_mm=longest,
        widest_at_shortest=widest,
        widest_at_longest=widest,
    )


#: What every example means, written down by hand; lengths in metres, ways in kilometres.
MEANT: Final[dict[str, dict[str, Any]]] = {
    "no notes": {},
    # a call for help is no fact: see test_danger_cry.py
    "sos": {},
    # who walks along and when is read by `read_visit`: see test_reading_visits.py
    "9:30, two of us, one slow": {},
    "9:30": {},
    "two of us, one slow": {},
    # the air's degrees are no fact of the walk: see test_told_numbers.py
    "-3 °C, 30 km/h wind": {"wind": True},
    "3 km walk out, 150 m climb, sunset 18:40": {
        "walk_km": 3,
        "climb_m": 150,
        "sunset": "18:40",
    },
    "3 km walk out, 150 m climb": {"walk_km": 3, "climb_m": 150},
    "2 miles out, 500 ft climb, sunset 18:40": {
        "walk_km": 2 * MILE_KM,
        "climb_m": 500 * FOOT_M,
        "sunset": "18:40",
    },
    "3 km, 150 m climb, sunset 18:40": {"walk_km": 3, "climb_m": 150, "sunset": "18:40"},
    "2 miles, 500 ft climb, sunset 18:40": {
        "walk_km": 2 * MILE_KM,
        "climb_m": 500 * FOOT_M,
        "sunset": "18:40",
    },
    "sunset 18:40": {"sunset": "18:40"},
    "overcast": {"light": "overcast"},
    "polariser on": {"has_polariser": True, "polariser_on": True},
    "12 m tall, 18 m away, rock at 1.5 m": {
        "fall_height_m": 12,
        "distance_m": 18,
        "nearest_m": 1.5,
    },
    "40 ft tall, 60 ft away, rock at 5 ft": {
        "fall_height_m": 40 * FOOT_M,
        "distance_m": 60 * FOOT_M,
        "nearest_m": 5 * FOOT_M,
    },
    "12 m tall, 18 m away, 24 mm": {"fall_height_m": 12, "distance_m": 18, "focal_mm": 24},
    "12 m tall": {"fall_height_m": 12},
    "40 ft tall": {"fall_height_m": 40 * FOOT_M},
    "stream": {"stream": True},
    "18 m away": {"distance_m": 18},
    "60 ft away": {"distance_m": 60 * FOOT_M},
    "rock at 1.5 m": {"nearest_m": 1.5},
    "rock at 5 ft": {"nearest_m": 5 * FOOT_M},
    "3 m away, rock at 1 m, leaf 3 m in 2 s": {
        "distance_m": 3,
        "nearest_m": 1,
        "water_speed_mps": 1.5,
    },
    "10 ft away, rock at 3 ft, leaf 10 ft in 2 s": {
        "distance_m": 10 * FOOT_M,
        "nearest_m": 3 * FOOT_M,
        "water_speed_mps": 5 * FOOT_M,
    },
    "leaf 3 m in 2 s": {"water_speed_mps": 1.5},
    "leaf 10 ft in 2 s": {"water_speed_mps": 5 * FOOT_M},
    "full frame, 16-35 and 24-105, tripod, polariser": {
        "camera_format": "full frame",
        "lenses": (_zoom(16, 35), _zoom(24, 105)),
        "has_tripod": True,
        "has_polariser": True,
    },
    "full frame, 16-35 f/4, tripod, polariser, 3-stop ND": {
        "camera_format": "full frame",
        "lenses": (_zoom(16, 35, 4),),
        "has_tripod": True,
        "has_polariser": True,
        "nd_stops": (3.0,),
    },
    "no ND": {"nd_stops": ()},
    "6-stop ND on": {"nd_on_stops": 6.0},
    "phone": {"camera_format": "phone"},
    "16-35 and 24-105": {"lenses": (_zoom(16, 35), _zoom(24, 105))},
    "24 mm": {"focal_mm": 24},
    "70-200": {"lenses": (_zoom(70, 200),)},
    "100 mm": {"focal_mm": 100},
    "4 m": {"section_height_m": 4},
    "12 ft": {"section_height_m": 12 * FOOT_M},
    "f/11, 1/4 s, ISO 100": {"f_number": 11, "shutter_s": 0.25, "iso": 100},
    "1/4 s, f/11, ISO 100, no texture": {
        "f_number": 11,
        "shutter_s": 0.25,
        "iso": 100,
        "symptoms": (Symptom.NO_TEXTURE,),
    },
    "f/11": {"f_number": 11},
    "too dark": {"symptoms": (Symptom.TOO_DARK,)},
    "24": {"focal_mm": 24},
    "35": {"lenses": (_zoom(35, 35),)},
    "18-55": {"lenses": (_zoom(18, 55),)},
    "what if f/16": {"f_number": 16},
    "what if 35 mm": {"focal_mm": 35},
}
#: What examples about shared frames wish for, written down by hand.
WISHED: Final = {
    "compare": Wished("compare"),
    "average": Wished("average"),
    "average 4": Wished("average", number=4),
    "grid": Wished("grid"),
    "as 1/4 s": Wished("illustrate", times_s=(0.25,)),
    "b2 b3 c2": Wished("cells", cells=("B2", "B3", "C2")),
    "down": Wished("direction", axis_deg=90.0),
    "down left": Wished("direction", axis_deg=45.0),
}
#: Questions that only try a value; they join with nothing.
_TRIALS: Final = frozenset({"what if f/16", "what if 35 mm"})


#: Lists of frames, read at home: time, f-number and ISO of each.
LISTED: Final[dict[str, tuple[tuple[float, float, float], ...]]] = {
    "1/8 and 1/2 s, f/11, ISO 100": ((1 / 8, 11, 100), (1 / 2, 11, 100)),
}


def _examples() -> list[tuple[str, str]]:
    """Every text with each example in it that is no command and no wish about frames."""
    return [
        (key, example)
        for key, text in sorted(TEXTS.items())
        for example in _EXAMPLE.findall(text)
        if folded(example) not in {*COMMAND_WORDS, "yes", "no"}
        and example not in WISHED.keys() | LISTED.keys()
    ]


def _expected_at(key: str) -> frozenset[str]:
    asked = QUESTIONS.get(key.removeprefix("ask.").removeprefix("explain."))
    return frozenset(asked.expects) if asked else frozenset()


def _agrees(facts: Facts, meant: dict[str, Any]) -> None:
    known = facts.known()
    assert known.keys() == meant.keys()
    for slot, value in meant.items():
        told = known[slot]
        assert told == (pytest.approx(value) if isinstance(value, float) else value), slot
    assert facts.unread == ()
    assert facts.guessed == ()


EXAMPLES: Final = _examples()
#: Examples that say what they are without a question, so that they can be joined.
SPOKEN: Final = [
    example
    for example in dict.fromkeys(example for _, example in EXAMPLES)
    if example not in {*_TRIALS, "24", "35", "4 m", "12 ft", "stream", "24 mm", "100 mm", "f/11"}
]


def test_every_example_is_here() -> None:
    """A new example in a text needs its meaning in this table, a gone one leaves it."""
    assert {example for _, example in EXAMPLES} == MEANT.keys()


@pytest.mark.parametrize(("example", "meant"), LISTED.items())
@pytest.mark.parametrize("change", [str.upper, str.title, lambda text: f"ok, {text}."])
def test_list_of_frames_is_read(
    example: str, meant: tuple[tuple[float, float, float], ...], change: Any
) -> None:
    """A list of frames that the bot tells people to type stands in its texts, and is read."""
    assert any(f"`{example}`" in text for text in TEXTS.values())
    frames = laid((), told_in(plain_times(change(example))))
    assert tuple((one.shutter_s, one.f_number, one.iso) for one in frames) == meant


@pytest.mark.parametrize(("example", "meant"), WISHED.items())
@pytest.mark.parametrize("change", [str.upper, str.title, lambda text: f"{text}."])
def test_wish_about_frames_is_read(example: str, meant: Wished, change: Any) -> None:
    """What the bot tells people to type about frames is in its texts, and means what it says."""
    assert any(f"`{example}`" in text for text in TEXTS.values())
    assert wished(change(example)) == meant


@pytest.mark.parametrize(("key", "example"), EXAMPLES)
def test_example_is_read_at_its_question(key: str, example: str) -> None:
    """The example fills the slots that it shows, with their values, and nothing else."""
    _agrees(read(example, expecting=_expected_at(key)), MEANT[example])


@pytest.mark.parametrize(("key", "example"), EXAMPLES)
@pytest.mark.parametrize("units", list(Units))
@pytest.mark.parametrize("change", [str.upper, str.title, lambda text: f"ok, {text}."])
def test_example_may_be_typed_otherwise(key: str, example: str, units: Units, change: Any) -> None:
    """Capitals, words around it and the person's usual units change nothing."""
    _agrees(read(change(example), units=units, expecting=_expected_at(key)), MEANT[example])


@pytest.mark.parametrize("key", sorted(key for key in TEXTS if key.startswith("ask.")))
def test_example_fills_what_its_question_asks(key: str) -> None:
    """Every example of a question fills a slot that the question expects, or needs no question."""
    for example in _EXAMPLE.findall(TEXTS[key]):
        if example in MEANT and not MEANT[example].keys() & _expected_at(key):
            _agrees(read(example), MEANT[example])
            # the last one tells who walks and when: `read_visit`, in test_reading_visits.py
            assert example in {
                "stream",
                "70-200",
                "9:30, two of us, one slow",
                "9:30",
                "two of us, one slow",
            }


@pytest.mark.parametrize("first", SPOKEN)
def test_examples_may_be_joined(first: str) -> None:
    """Two examples of different things in one message, in either order, are both read."""
    others = [other for other in SPOKEN if not MEANT[first].keys() & MEANT[other].keys()]

    def both_are_read(joined: tuple[str, str]) -> None:
        second, between = joined
        _agrees(read(f"{first}{between}{second}"), MEANT[first] | MEANT[second])

    holds_for_every(product(others, (", ", "; ", "\n", ". ")), both_are_read)


@pytest.mark.parametrize("key", sorted({key for key, _ in EXAMPLES if _expected_at(key)}))
def test_example_answers_beside_the_kit(key: str) -> None:
    """Who answers the open question and tells the kit as well is read in both."""
    kit = "aps-c, tripod, no polariser"
    told = {"camera_format": "aps-c", "has_tripod": True, "has_polariser": False}
    for example in (example for at, example in EXAMPLES if at == key):
        if not MEANT[example].keys() & told.keys():
            facts = read(f"{example}, {kit}", expecting=_expected_at(key))
            _agrees(facts, MEANT[example] | told)
