"""Numbers of storm, cold and current: answered with their source, and never as a leave."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import DangerKind, read_danger
from bot.dialogue.danger.flash_to_bang import flash_to_bang_s
from bot.dialogue.reading.cold_numbers import air_and_wind, cold_water
from bot.dialogue.reading.standing import asks_to_stand, speed_told, water_to_stand_in
from core.wading import Standing, may_wade
from tests.dialogue.player import Player


def last(*lines: str) -> tuple[list[str], str]:
    """Keys and words of the answer to the last of these lines."""
    player = Player()
    said = [player.say(line) for line in lines][-1]
    return [key for one in said for key in one.keys], "\n".join(one.body for one in said)


@pytest.mark.parametrize(
    ("lines", "distance"),
    [
        (("start", "thunder 10 seconds after the flash"), "3.4 km"),
        (("flash to bang 12 s",), "4.1 km"),
        (("start", "I hear thunder", "10 seconds after the flash"), "3.4 km"),
        (("deutsch", "Donner 10 Sekunden nach dem Blitz"), "3,4 km"),
        (("español", "trueno 10 segundos después del relámpago"), "3,4 km"),
        (("I hear thunder", "we are all in the car", "thunder 6 s after the flash"), "2.1 km"),
    ],
)
def test_a_storm_is_told_its_distance(lines: tuple[str, ...], distance: str) -> None:
    """What protects comes first, and the question whether all are safe is not lost."""
    keys, body = last(*lines)
    assert keys[0].startswith("danger.thunder")
    assert distance in body
    assert keys[-1] == "ask.safe" or "danger.thunder.sheltered" in keys


def test_the_source_is_under_why_while_a_storm_is_held() -> None:
    """The number's source, and the question again; without a number why is answered as ever."""
    keys, body = last("thunder 10 seconds after the flash", "why")
    assert keys == ["why.thunder.distance", "ask.safe"]
    assert "343 m/s" in body
    assert last("I hear thunder", "why")[0][0] == "danger.thunder.again"


@pytest.mark.parametrize(
    "text",
    [
        "if thunder comes 10 s after the flash, how far is it",
        "yesterday I counted 9 seconds between lightning and thunder. how far was that?",
        "wenn der Donner 9 s nach dem Blitz kommt, wie weit ist das?",
        "si el trueno viene 9 s después del relámpago, ¿a qué distancia está?",
    ],
)
def test_a_supposed_storm_holds_nobody(text: str) -> None:
    """It is answered all the same with what thunder asks for."""
    keys, _ = last(text)
    assert keys[:2] == ["storm.supposed", "storm.any"]


def test_a_graver_danger_stays_graver() -> None:
    """A storm beside somebody in the water is told of after them."""
    danger = read_danger("my friend fell in the pool, thunder 10 s after the flash")
    assert danger is not None
    assert danger.kind is DangerKind.IN_WATER


@pytest.mark.parametrize(
    ("text", "seconds"),
    [("thunder after 200 s of flash", None), ("flash 1/200 s", None), ("thunder, flash", None)],
)
def test_what_is_no_delay(text: str, seconds: float | None) -> None:
    """Nobody counts so long, and a camera's flash has no thunder."""
    assert flash_to_bang_s(text) == seconds


@pytest.mark.parametrize(
    ("lines", "felt"),
    [
        (("start", "-3 degrees and 30 km/h wind, how cold is that"), "like -10 °C"),
        (("what's the wind chill at 20 F and 15 mph",), "like 6 °F"),
        (("wind chill at 20 F and 2 mph?",), "like 17 °F"),
        (("it's 5 below, wind 10 m/s",), "like -14 °C"),
        (("minus 4, wind 11 knots",), "like -10 °C"),
        (("deutsch", "-3 Grad und 30 km/h Wind, wie kalt ist das"), "wie -10 °C"),
        (("español", "-3 grados y viento de 30 km/h, ¿cuánto frío es?"), "como -10 °C"),
        (("metric", "wind chill at 20 F and 15 mph?"), "like -14 °C"),
    ],
)
def test_wind_chill_is_told(lines: tuple[str, ...], felt: str) -> None:
    """By the chart of the units told, in the units of the person, with its source under why."""
    keys, body = last(*lines)
    assert felt in body
    assert "cold.cover" in keys
    why = "warum" if lines[0] == "deutsch" else "por qué" if lines[0] == "español" else "why"
    assert last(*lines, why)[0] == ["why.cold.chill"]


def test_bare_skin_freezes() -> None:
    """From -28 on the cover is no matter of comfort."""
    assert "cold.frostbite" in last("it's -20 C with 50 km/h wind")[0]


@pytest.mark.parametrize(
    ("lines", "key"),
    [
        (("wind chill?",), "cold.chill_needs"),
        (("how cold is 15 degrees with 20 km/h wind",), "cold.no_chill"),
        (("how long can I keep my hands in 5 degree water",), "cold.water_very_cold"),
        (("water is 18 degrees, how long do my hands work?",), "cold.water_cold"),
        (("the water has 25 degrees",), "cold.water_mild"),
        (("how long do hands work in cold water",), "cold.water_untold"),
        (("deutsch", "wie lange taugen die Hände in 6 Grad kaltem Wasser"), "cold.water_very_cold"),
        (("español", "¿cuánto tiempo aguantan las manos en agua fría?"), "cold.water_untold"),
        (("the water has 50 F, is that cold?",), "cold.water_very_cold"),
    ],
)
def test_cold_is_answered(lines: tuple[str, ...], key: str) -> None:
    """In every case somebody local decides, and no hand is promised a minute too many."""
    assert last(*lines)[0][0] == key


def test_the_walk_goes_on_behind_the_cold() -> None:
    """What stood open is asked again, and beside facts no weather gets in their way."""
    assert last("start", "-3 degrees and 30 km/h wind")[0][-1].startswith("ask.")
    assert "cold.chill" not in last("12 m tall, 18 m away, -3 degrees and 30 km/h wind")[0]


def test_a_closed_place_stays_closed_behind_the_cold() -> None:
    """No weather opens it."""
    assert last("I'm at the lip", "-3 degrees and 30 km/h wind", "f8?")[0][-1] == "ask.out_there"


@pytest.mark.parametrize(
    "text", ["-3 degrees", "wind 20 km/h", "1/4 s at 20 km/h, -3 degrees", "how long are my hands"]
)
def test_half_of_it_is_no_cold(text: str) -> None:
    """One number alone, or no wind and no water."""
    assert air_and_wind(text) is None
    assert cold_water(text) is None


@pytest.mark.parametrize("text", ["the water has 90 degrees", "how long do hands work in water"])
def test_no_stream_is_so_warm(text: str) -> None:
    """What no stream has is none, and water that is not said to be cold is not."""
    assert cold_water(text) is None


@pytest.mark.parametrize(
    ("lines", "key", "words"),
    [
        (("start", "knee deep and fast, can I stand in it"), "standing.no", "knee-deep or more"),
        (("shin deep, 1.5 m/s, can I wade?",), "standing.no", "0.52 m × m/s, too strong from 0.4"),
        (("can my kid stand in the creek, ankle deep",), "standing.no", "a child"),
        (("is it safe to wade here? it is clear",), "standing.ask", "Until all is known"),
        (("deutsch", "knietief und schnell, kann ich da stehen?"), "standing.no", "knietief"),
        (
            ("español", "30 cm de profundidad y 1,5 m/s, ¿puedo entrar en el arroyo?"),
            "standing.no",
            "0,45 m × m/s",
        ),
        (
            (
                (
                    "ankle deep, 0.2 m/s, clear bottom, nothing below, not rising, with my friend,"
                    " dry clothes, can I stand in it"
                ),
            ),
            "standing.with_care",
            "that is no leave",
        ),
        (
            ("water 30 cm deep, leaf takes 3 s for 3 m, may I stand in it",),
            "standing.ask",
            "Not told",
        ),
    ],
)
def test_nobody_is_given_leave_to_wade(lines: tuple[str, ...], key: str, words: str) -> None:
    """What speaks against it, by its number; the place is closed, and its question stands."""
    keys, body = last(*lines)
    assert keys[0] == "danger.wading"
    assert key in keys
    assert words in body
    assert keys[-1] == "ask.out_there"


def test_the_source_of_the_current_is_under_why() -> None:
    """While that place is closed; without a number why tells the reason of the place."""
    keys, body = last("shin deep, 1.5 m/s, can I wade?", "why")
    assert keys == ["why.standing", "ask.out_there"]
    assert "Cox" in body
    assert last("I'm at the lip", "why")[0][0] == "danger.insist"


@pytest.mark.parametrize(
    "text",
    [
        "can I stand on the bridge",
        "can I go to the river tomorrow",
        "where can I stand so that the water fills the frame",
        "can I walk along the creek",
        "kann man das im Wasser sehen",
        "can the camera stand in the water",
    ],
)
def test_what_asks_for_no_wading(text: str) -> None:
    """A way, a bridge, a picture."""
    assert not asks_to_stand(text)


@pytest.mark.parametrize(
    ("text", "standing"),
    [
        ("brown and rising, ankle deep", Standing.NO),
        ("steigt nicht, knöcheltief", Standing.ASK),
        ("I can't see the bottom", Standing.NO),
        ("el agua sube, tobillos", Standing.NO),
        ("waist deep", Standing.NO),
        ("6 inches deep, 10 ft/s", Standing.NO),
    ],
)
def test_what_is_told_of_water(text: str, standing: Standing) -> None:
    """In the three languages, by words and by numbers."""
    assert may_wade(water_to_stand_in(text)).standing is standing


@pytest.mark.parametrize(
    ("text", "speed"),
    [
        ("a leaf takes 5 s for 10 m", 2.0),
        ("a leaf takes 10 ft in 5 s", 0.6096),
        ("36 km/h", 10.0),
        ("a leaf takes 5 s and 3 s", None),
        ("a leaf takes 3 m in 0 s", None),
        ("a leaf lies 3 m and 5 m off", None),
        ("5 s for 10 m", None),
    ],
)
def test_the_speed_of_a_leaf(text: str, speed: float | None) -> None:
    """A way by a time, in whatever order; two times or two ways are none."""
    assert speed_told(text) == (speed if speed is None else pytest.approx(speed))
