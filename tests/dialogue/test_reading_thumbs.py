"""What thumbs type at the foot of a fall: lengths, times and kit in many wordings, and traps."""

from __future__ import annotations

from typing import Any

import pytest

from bot.dialogue.reading import read
from tests.dialogue.reading_checks import told, unread


@pytest.mark.parametrize(
    ("text", "speed_mps"),
    [
        ("threw a twig in. four metres, eight seconds", 0.5),
        ("water speed = leaf 5m / 4s", 1.25),
        ("dropped a stick in, 10 ft, 4 sec", 0.762),
        ("tossed a cork off the bridge; 6 m and it took 4 seconds", 1.5),
        ("floated an acorn, 2 seconds, 3 metres", 1.5),
        ("leaf needs 3 s per metre", 1 / 3),
        ("the stick did 3 m over 2 s", 1.5),
    ],
)
def test_timed_leaf(text: str, speed_mps: float) -> None:
    """A thing that floats and is timed tells the speed, in any order."""
    assert told(text) == {"water_speed_mps": pytest.approx(speed_mps)}


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("nearest leaf 2 m, 2 s, f/11", {"nearest_m": 2.0, "shutter_s": 2.0, "f_number": 11.0}),
        ("leaf test: fall is 12 m, 3 s at f/11", {"fall_height_m": 12.0, "shutter_s": 3.0}),
        ("leaf in front of me 1 m, 1/2 s", {"nearest_m": 1.0, "shutter_s": 0.5}),
        ("put the leaf test off, stone at 2 m, 4 s", {"nearest_m": 2.0, "shutter_s": 4.0}),
    ],
)
def test_a_leaf_beside_settings_is_not_timed(text: str, expected: dict[str, Any]) -> None:
    """A time that stands beside a named length is the exposure's."""
    assert told(text) | expected == told(text)
    assert "water_speed_mps" not in told(text)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("height? the guidebook: 33 m", {"fall_height_m": 33.0}),
        ("how tall? sign says 33 m", {"fall_height_m": 33.0}),
        ("up to my knees, call it 40 cm", {"water_depth_m": 0.4}),
        ("depth? about 30 cm", {"water_depth_m": 0.3}),
        ("I moved. 10 m now instead of 16", {"distance_m": 10.0}),
        ("crept in to 6.5 m", {"distance_m": 6.5}),
        ("at 35 from 30 metres", {"distance_m": 30.0, "focal_mm": 35.0}),
        ("24mm f/11 from the bridge, 25 m", {"distance_m": 25.0, "focal_mm": 24.0}),
        ("textured, from 40 m with 135mm", {"distance_m": 40.0, "focal_mm": 135.0}),
        ("a mile and a half, uphill 300 ft", {"walk_km": 2.414016, "climb_m": 91.44}),
        ("way out is 900 m", {"walk_km": 0.9}),
        ("5 km out with 250 of climbing", {"walk_km": 5.0, "climb_m": 250.0}),
        ("camera at hip height, 90 cm", {"camera_height_m": 0.9}),
        ("the ledge fans out to 40 feet wide", {"fall_width_m": 12.192}),
        ("1.8 km to the bus", {"walk_km": 1.8}),
        ("not 3 miles sorry, 3 km to the car park", {"walk_km": 3.0}),
    ],
)
def test_lengths_by_what_stands_further_off(text: str, expected: dict[str, Any]) -> None:
    """Another clause, a source or the focal length beside says which length it is."""
    found = told(text)
    assert {slot: found.get(slot) for slot in expected} == pytest.approx(expected)


@pytest.mark.parametrize(
    "text",
    [
        "everything from 2 m to 30 m sharp at 24 mm",
        "24mm from the car park, 800 m",
        "at 24 mm, 12 m",
        "i'm way back, 30 m",
        "3 climbs today",
        "took the bus 12 km",
        "next month the club goes to a fall thats 120 m",
        "at 35 from the bridge",
        "at 24 mm from 3 km",
    ],
)
def test_lengths_that_are_none_of_these(text: str) -> None:
    """What no word makes a length of this place fills none."""
    assert not told(text).keys() & {"distance_m", "fall_height_m", "climb_m", "water_depth_m"}


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("shutter 0.4", {"shutter_s": 0.4}),
        ("f11 .5 iso 100", {"f_number": 11.0, "shutter_s": 0.5, "iso": 100.0}),
        ("f/11 0.5 100", {"f_number": 11.0, "shutter_s": 0.5, "iso": 100.0}),
        (".5 f11 iso 100", {"f_number": 11.0, "shutter_s": 0.5, "iso": 100.0}),
        ("eff sixteen eye ess oh one hundred", {"f_number": 16.0, "iso": 100.0}),
        ("wide open at two point eight", {"f_number": 2.8}),
        ("going from half to a third of a second", {"shutter_s": 1 / 3}),
        ("f/8, base iso which on mine is 200", {"f_number": 8.0, "base_iso": 200.0, "iso": 200.0}),
        ("iso is at 3200 from last night, whoops, now 100", {"iso": 100.0}),
        ("f/22 by mistake, now 8", {"f_number": 8.0}),
        ("iso 800 at the bridge, now 7", {"iso": 800.0}),
        ("cant get under 1/50 here", {"shutter_s": 1 / 50}),
        ("you told me f/11 but i took f/8", {"f_number": 8.0}),
        ("you said 1/4 and i only dare 1/10", {"shutter_s": 1 / 10}),
        ("you said 12 m but i'm 15 m away", {"distance_m": 15.0}),
        ("my zoom shows 45", {"focal_mm": 45.0}),
        ("nd thousand on, 30 seconds, f/8", {"nd_on_stops": 9.965784}),
        ("nd sixty-four on", {"nd_on_stops": 6.0}),
        ("no polariser on this one", {"polariser_on": False}),
    ],
)
def test_settings_in_few_words(text: str, expected: dict[str, Any]) -> None:
    """Settings without units, put right, recommended and not taken."""
    found = told(text)
    assert {slot: found.get(slot) for slot in expected} == pytest.approx(expected)


@pytest.mark.parametrize(
    "text",
    [
        "is 1/60 faster than 1/30",
        "is f/8 sharper than f/11",
        "what is a stop?",
        "ansel adams used f/64 right?",
        "dinner for 9 at the inn, 7.30",
        "breakfast from 7",
        "the glare is gone now",
        "we laughed so hard",
    ],
)
def test_nothing_of_this_is_told(text: str) -> None:
    """Questions in general, other people and meals tell nothing."""
    assert told(text) == {}
    assert unread(text) == ()


@pytest.mark.parametrize("text", ["shutter 4", "exposure 0.3", "f/8 0.6", "f/8 0.6, 2 s"])
def test_bare_numbers_that_may_be_anything(text: str) -> None:
    """A number that may be seconds or a part of one is no time."""
    assert told(text).get("shutter_s") != pytest.approx(0.6)
    assert "shutter_s" not in told(text) or "2 s" in text


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("took both filters off, ND and pola", {"nd_on_stops": 0.0, "polariser_on": False}),
        ("what tripod? i came on a bike. haven't got one", {"has_tripod": False}),
        ("hands shaking, no tripod", {"has_tripod": False, "hand_held": True}),
        ("blinking? nope nothing", {"blink": "nothing"}),
        ("silky but i have no nd, overcast", {"light": "overcast", "look": "silky"}),
        ("kids + pensioners together, does dusk matter?", {"group_mixed": True}),
        ("some of us quick and two with bad knees", {"group_mixed": True}),
        ("it was windy before, leafs are calm now", {"wind": False}),
        ("the wind is zero", {"wind": False}),
        ("my wife wants that dreamy mist version, all fog", {"look": "misty"}),
        ("whole thing in frame now", {"section": False}),
    ],
)
def test_kit_and_sights(text: str, expected: dict[str, Any]) -> None:
    """Answers to an own question, pairs of people, and what was before."""
    found = {
        slot: getattr(value, "value", value)
        for slot, value in told(text).items()
        if slot in expected or slot in {"light", "symptoms", "blink"}
    }
    assert found == expected


@pytest.mark.parametrize(
    ("text", "lens"),
    [
        ("18 to 300, three point five to six point three", (18.0, 300.0, 3.5, 6.3)),
        ("I only carry one lens, a 50, fixed", (50.0, 50.0, None, None)),
        ("brought a fixed 28", (28.0, 28.0, None, None)),
    ],
)
def test_lenses(text: str, lens: tuple[float | None, ...]) -> None:
    """A zoom with both its widest apertures, a prime called fixed."""
    (found,) = told(text)["lenses"]
    ends = (found.shortest_mm, found.longest_mm)
    assert (*ends, found.widest_at_shortest, found.widest_at_longest) == lens


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("big one! 45m id say. bout 60 m off", {"fall_height_m": 45.0, "distance_m": 60.0}),
        ("a 6m fall from 9m", {"fall_height_m": 6.0, "distance_m": 9.0}),
        ("the fall's 15 and I'm at 20", {"fall_height_m": 15.0, "distance_m": 20.0}),
        ("fall: 12m / dist: 18m / wall: 25m", {"distance_m": 18.0, "farthest_m": 25.0}),
        ("near 0.9 far 22", {"nearest_m": 0.9, "farthest_m": 22.0}),
        ("closest thing 0.8 furthest 40", {"nearest_m": 0.8, "farthest_m": 40.0}),
        ("fg 0.8m bg 40m", {"nearest_m": 0.8, "farthest_m": 40.0}),
        ("waterfall @ 15m", {"distance_m": 15.0}),
        ("min distance 0.8", {"nearest_m": 0.8}),
        ("shooting height 1.2", {"camera_height_m": 1.2}),
        ("tripod is fully up, 1.6 m", {"has_tripod": True, "camera_height_m": 1.6}),
        ("chest high, 1.3 m", {"camera_height_m": 1.3}),
        ("The water is falling 18 meter", {"fall_height_m": 18.0}),
        ("from me until the waterfall is 14 meters", {"distance_m": 14.0}),
        ("9 m of height and 4 m of width", {"fall_height_m": 9.0, "fall_width_m": 4.0}),
        ("about 6ft of water falling", {"fall_height_m": 1.8288}),
        ("way back 3 km and 200 m height difference", {"walk_km": 3.0, "climb_m": 200.0}),
        ("5 seconds for ten feet", {"water_speed_mps": 0.6096}),
        ("water goes from left side to right side", {"flow": "across"}),
        ("time is one quarter second", {"shutter_s": 0.25}),
        ("aperture number is 8, one half second", {"f_number": 8.0, "shutter_s": 0.5}),
        ("iso a hundred, f sixteen, a second", {"iso": 100.0, "f_number": 16.0, "shutter_s": 1.0}),
        ("ev comp 0", {"meter_stops": 0.0}),
        ("make it darker by 2/3", {"change_stops": -2 / 3}),
        ("tripod I do not have", {"has_tripod": False}),
        ("hand holding at 1/30", {"hand_held": True, "shutter_s": 1 / 30}),
        ("i leave the iso on auto", {"automatic": True}),
        ("histogram far from the right", {"histogram_at_right": False}),
        ("took everything off the front", {"polariser_on": False, "nd_on_stops": 0.0}),
        ("CPL fitted, rotated to kill glare", {"has_polariser": True, "polariser_on": True}),
        ("thinking of buying a full frame, have a crop now", {"camera_format": "aps-c"}),
        ("looked it up on my phone: sunset 20:41", {"sunset": "20:41"}),
    ],
)
def test_little_english_and_few_words(text: str, expected: dict[str, Any]) -> None:
    """Words in another order, labels, and what is only nearly said; nothing else is told."""
    found = {slot: getattr(value, "value", value) for slot, value in told(text).items()}
    assert found | expected == pytest.approx(found)
    assert expected == pytest.approx(found) or "fall: 12m" in text


@pytest.mark.parametrize(
    "text",
    [
        "two-tier fall, upper 10 m lower 6 m",
        "there is a 5 m wide pool in front",
        "a tree about 10 m tall on the left",
        "people standing 4 m in front of me",
        "fall is about 30 maybe 35 m",
        "lower one is 6 high",
        "12 m by 6 m fall",
        "standing on a boardwalk 1.5 m above the water",
    ],
)
def test_lengths_of_other_things(text: str) -> None:
    """Other things, parts and open ranges fill nothing, and are told as unread."""
    assert told(text) == {}
    assert read(text).unread


@pytest.mark.parametrize(
    "text",
    [
        "i read f/8 is the sharpest aperture",
        "can you explain the 10 stop filter",
        "last time I was here I shot 2 s at f/16",
        "tomorrow I want to go to another fall, 60 m high",
        "would love a full frame",
    ],
)
def test_another_day_and_hearsay(text: str) -> None:
    """What was read, wished or planned is not set."""
    assert told(text) == {}


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("opposite bank is 22 m away", {"farthest_m": 22.0}),
        (
            "framing a 4 m tall section from 12 m",
            {"section": True, "section_height_m": 4.0, "distance_m": 12.0},
        ),
        ("4m/2s", {"water_speed_mps": 2.0}),
        ("a foot from the lens", {"nearest_m": 0.3048}),
        ("sensor height 80cm", {"camera_height_m": 0.8}),
        ("shot at 24, f/11", {"focal_mm": 24.0, "f_number": 11.0}),
        ("2s/4m", {"shutter_s": 2.0}),
        ("timed it: 4 m, 3.2 s", {"water_speed_mps": 1.25}),
        ("up to my calf", {"water_depth_m": 0.35}),
        ("camera is nearly at water level, 15 cm", {"camera_height_m": 0.15}),
        ("zoomed in on the top third", {"section": True}),
        ("everything from lip to pool", {"section": False}),
        ("height 12, no sorry 21", {"fall_height_m": 21.0}),
        ("it's 15 m away, I mean high", {"fall_height_m": 15.0}),
        ("distance is 10 not 15", {"distance_m": 10.0}),
        ("35 mm, correction 24", {"focal_mm": 24.0}),
        ("I've gone from 1/4 to 1 second", {"shutter_s": 1.0}),
        ("hike out: 5 km, +300 m", {"walk_km": 5.0, "climb_m": 300.0}),
        ("half the group is slow", {"group_mixed": True}),
        (
            "24mm/f11/1s/iso100",
            {"focal_mm": 24.0, "f_number": 11.0, "shutter_s": 1.0, "iso": 100.0},
        ),
        ("put the polariser on and lost a stop", {"has_polariser": True, "polariser_on": True}),
        ("histogram ok, no blinkies", {"blink": "nothing"}),
        ("meter zero at f/11", {"meter_stops": 0.0, "f_number": 11.0}),
        ("meter says zero", {"meter_stops": 0.0}),
        ("on sticks", {"has_tripod": True, "hand_held": False}),
        ("bit dark, maybe a third", {"change_stops": 1 / 3, "symptoms": "too_dark"}),
        ("too dark, 1/4 at f/11", {"shutter_s": 0.25, "f_number": 11.0, "symptoms": "too_dark"}),
        ("zebras on the left part of the fall", {"blink": "patches"}),
        ("m4/3s", {"camera_format": "four thirds"}),
        ("77 mm polariser", {"has_polariser": True}),
        ("behind the boulder, 12 m high fall", {"fall_height_m": 12.0}),
        ("six stop goes on now", {"nd_on_stops": 6.0}),
        ("tripod, pola, nd 3 6 10", {"nd_stops": (3.0, 6.0, 10.0)}),
        ("what is a 6 stop", {}),
        ("can't find my polariser", {"has_polariser": False}),
        ("my only nd is a 64", {"nd_stops": (6.0,)}),
        ("I don't like silky", {}),
    ],
)
def test_parts_corrections_and_strokes(text: str, expected: dict[str, Any]) -> None:
    """What is told, and nothing else of the same kind."""
    found = {
        slot: value[0].value
        if slot == "symptoms"
        else value
        if isinstance(value, tuple)
        else getattr(value, "value", value)
        for slot, value in told(text).items()
    }
    if "nd_stops" in expected:
        found = {"nd_stops": found["nd_stops"]}
    assert found == {
        slot: value if isinstance(value, str | tuple | bool) else pytest.approx(value)
        for slot, value in expected.items()
    }


@pytest.mark.parametrize(
    "text",
    [
        "rock is 2 m high and 3 m wide",
        "big boulder, 2 m tall, in front",
        "temp is -2",
        "lens is f/2.8",
        "it took 20 seconds for the buffer",
        "the glare is cut",
        "up a third",
        "meeting at 16, 8 people",
    ],
)
def test_other_sizes_and_times(text: str) -> None:
    """Sizes of rocks, degrees, what a lens can do, and waits fill nothing."""
    assert not told(text).keys() - {"symptoms"}
