"""Turns of speech and courtesies around a fact, and what only sounds like one."""

from __future__ import annotations

import json
from typing import Any

import pytest

from tests.dialogue.reading_checks import count, rows, told

FOOT = 0.3048


@pytest.mark.parametrize(
    ("text", "facts"),
    [
        ("one by eight second, f by 11", {"shutter_s": 1 / 8, "f_number": 11}),
        ("18-55mm 1:3.5-5.6", {"lenses": [[18, 55, 3.5, 5.6]]}),
        ("walk out is a mile and a quarter", {"walk_km": 1.25 * 1.609344}),
        ("went from 5.6 to 11", {"f_number": 11}),
        ("could use two more stops of light", {"change_stops": 2}),
        ("i own a 0.9 and a 1.8 nd", {"nd_stops": [3, 6]}),
        ("height? 60 ft. distance? 80", {"fall_height_m": 60 * FOOT, "distance_m": 80 * FOOT}),
        ("iso isn't 400, it's 100", {"iso": 100}),
        ("the fall isn't 45 feet, the leaflet says 52", {"fall_height_m": 52 * FOOT}),
        ("she's about 22 metres and i'm back 30 odd", {"fall_height_m": 22, "distance_m": 30}),
        ("i have a three, a six and a ten stop", {"nd_stops": [3, 6, 10]}),
        ("two nds here, an 8 and a 64", {"nd_stops": [3, 6]}),
        ("the board puts the fall at 38 m", {"fall_height_m": 38}),
        ("rock, 1 m", {"nearest_m": 1}),
        ("nearest rock 2 m fall 20 m away", {"nearest_m": 2, "distance_m": 20}),
        ("i am 8 m of the water", {"distance_m": 8}),
        ("the lip is 14 m up", {"fall_height_m": 14}),
        ("isos on 320", {"iso": 320}),
        ("tried it at different speeds", {}),
        ("we all walk at different speeds", {"group_mixed": True}),
        ("shall i ditch the 6 stop", {"nd_stops": [6]}),
        ("want lots of texture in the water", {"look": "textured"}),
        ("a total lack of texture in the water", {}),
        ("keep the water crisp and sharp", {"look": "crisp"}),
        ("the picture is quite dark stone and little else", {}),
        ("closed the lens down to 11", {"f_number": 11}),
        ("70-200 as long as it goes", {"lenses": [[70, 200]], "focal_mm": 200}),
        ("12-40 zoomed all the way wide", {"lenses": [[12, 40]], "focal_mm": 12}),
        ("16-35 wide open at f/2.8", {"lenses": [[16, 35]], "f_number": 2.8}),
        ("it says 70 on the ring", {"focal_mm": 70}),
        ("stacked the 6 and the 3, nine stops", {"nd_on_stops": 9}),
        ("stopper on, ten stops", {"nd_on_stops": 10}),
        ("nd8 and nd16, no nd1000", {"nd_stops": [3, 4]}),
        ("an nd8 and an nd16, both at the hotel", {}),
        (
            "do i need the polariser? i have it in my bag",
            {"has_polariser": True, "polariser_on": False},
        ),
        ("hiked 2.5 km in and its the same back", {"walk_km": 2.5}),
        ("3 km back, 220 climb", {"walk_km": 3, "climb_m": 220}),
        ("the wind comes down the gorge and shakes everything", {"wind": True}),
        ("we're in a gorge, breeze in the ferns", {"light": "open gorge", "wind": True}),
        ("pod's up", {"has_tripod": True, "hand_held": False}),
        ("just packed the 35 this time", {"lenses": [[35, 35]]}),
        ("nd set with 3, 6 and 10 stops", {"nd_stops": [3, 6, 10]}),
        ("the ten stopper is back in its case", {"nd_on_stops": 0}),
        ("stepped back 4 m, now 19 m", {"distance_m": 19}),
        ("fall is 70 m across the lake", {"distance_m": 70}),
        ("stream is 4 m across", {"fall_width_m": 4, "stream": True}),
        ("the van is 1.2 km away", {"walk_km": 1.2}),
        ("100-400 stayed in the car, the 24-70 is with me", {"lenses": [[24, 70]]}),
        ("1.7 too bright", {"change_stops": -5 / 3, "symptoms": ["too_bright"]}),
        ("foam has lost its sparkle", {}),
        ("smooth but with strands in it", {}),
        ("clouds but i can make out the sun", {"light": "hazy sun"}),
    ],
)
def test_turns_of_speech_are_read(text: str, facts: dict[str, Any]) -> None:
    """The numbers are those that stand there, in the slots that are meant."""
    _reads(text, facts)


@pytest.mark.parametrize(
    ("text", "lens"),
    [
        ("brought the seventy two hundred", (70, 200)),
        ("my lens is twenty four to one oh five", (24, 105)),
        ("with a twenty-eight to three hundred", (28, 300)),
        ("my one hundred to four hundred", (100, 400)),
        ("the twenty four to 70", (24, 70)),
        ("the one two", None),
        ("got a 24 70 lens", (24, 70)),
        ("got a 70 24 lens", None),
        ("my five oh", None),
        ("the six hundred hundred", None),
        ("the ten to", None),
        ("the bus leaves at eighteen fifty five", None),
    ],
)
def test_zooms_are_said_in_words(text: str, lens: tuple[float, float] | None) -> None:
    """A run of number words is a zoom where such a one is made."""
    lenses = told(text).get("lenses", ())
    assert [(one.shortest_mm, one.longest_mm) for one in lenses] == ([lens] if lens else [])


@pytest.mark.parametrize(
    ("text", "facts"),
    [
        ("ok so, just dots, thanks", {"blink": "dots"}),
        ("Hello again. The water is mush :)", {"symptoms": ["no_texture"]}),
        ("thanks", {}),
    ],
)
def test_courtesies_are_taken_off(text: str, facts: dict[str, Any]) -> None:
    """What is left is read; a message that is only thanks tells nothing."""
    _reads(text, facts)


@pytest.mark.parametrize(
    "text",
    [
        "what does f/8 mean?",
        "is 1/60 the same as 1/30",
        "self timer, two seconds",
        "hot soup in the flask",
        "i've a flash, do i need it",
        "thigh deep in paperwork",
        "the cliff is two stops darker",
        "cliff face is four stops below the water",
        "it says a, s and m",
        "blue hour or golden hour",
        "light swept across the hill",
        "overlap a third",
        "nd or no nd",
        "i'm bored of silk",
        "his tripod is huge",
        "how much bleed, 3mm?",
        "golden hour starts 6:50",
    ],
)
def test_what_only_sounds_like_a_fact_is_none(text: str) -> None:
    """Food, flashes, timers, parts of a scene and questions of words fill nothing."""
    assert told(text) == {}


@pytest.mark.parametrize(
    ("text", "facts"),
    [
        ("not handheld", {"hand_held": False}),
        ("chucked the polariser in the bag", {"has_polariser": True, "polariser_on": False}),
        ("put the polariser back on", {"has_polariser": True, "polariser_on": True}),
        ("a quarter second looked good so i leave that", {"shutter_s": 0.25, "keep": ["time"]}),
        ("half a second is what i want to keep", {"shutter_s": 0.5, "keep": ["time"]}),
        ("my grandma comes along", {"group_mixed": True}),
        ("the car's 2 km off", {"walk_km": 2}),
        ("30 s or 5 min", {}),
        ("tripod a metre from the path", {"has_tripod": True}),
    ],
)
def test_more_is_told_than_words_alone(text: str, facts: dict[str, Any]) -> None:
    """What is denied, put away, kept or comes along."""
    _reads(text, facts)


def _reads(text: str, facts: dict[str, Any]) -> None:
    """Whether a message tells these facts and no others."""
    told_so = json.dumps({"text": text, "facts": facts})
    _, wrong, missed = count(rows([told_so]), noted=False).totals()
    assert (wrong, missed) == (0, 0)
