"""What is asked of a day's hours: when to start under which sky, when to leave, what is left."""

from __future__ import annotations

from datetime import datetime

import pytest

from bot.dialogue.actions import SetTimer
from bot.dialogue.reading import read
from bot.dialogue.reading.clock_now import ClockNow, clock_now
from bot.dialogue.reading.sky_hours import spells_in, tells_cold, tells_rain, without_hours
from bot.dialogue.steps.visits import sky
from bot.dialogue.trip import Spell, Trip
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, known, walked

# the sky by the hour


@pytest.mark.parametrize(
    ("text", "spells"),
    [
        (
            "they're saying partly cloudy til noon then full overcast, light rain after 3",
            [("", "partly"), ("12:00", "overcast"), ("15:00", "rain")],
        ),
        ("no not full sun. overcast after noon is what I said", [("12:00", "overcast")]),
        (
            "sunny in the morning, clouding over around 1, showers by 4",
            [("", "sun"), ("13:00", "cloud"), ("16:00", "rain")],
        ),
        ("cloudy in the morning and sunny after 2", [("", "cloud"), ("14:00", "sun")]),
        ("clear until 11 am, then grey", [("", "sun"), ("11:00", "overcast")]),
        ("from noon overcast, after 3:30 light rain", [("12:00", "overcast"), ("15:30", "rain")]),
        ("overcast and after 3 light rain", [("", "overcast"), ("15:00", "rain")]),
        ("cloudy with storms in the afternoon", [("", "cloud"), ("12:00", "storm")]),
        ("sun till 5, then clouds in the evening", [("", "sun"), ("17:00", "cloud")]),
        (
            "bis Mittag teils bewölkt, dann ganz bedeckt, ab 15 Uhr leichter Regen",
            [("", "partly"), ("12:00", "overcast"), ("15:00", "rain")],
        ),
        ("bedeckt und nachmittags Gewitter möglich", [("", "overcast"), ("12:00", "storm")]),
        (
            "parcialmente nublado hasta mediodía, luego cubierto, lluvia a partir de las 3",
            [("", "partly"), ("12:00", "overcast"), ("15:00", "rain")],
        ),
        ("por la mañana sol, por la tarde nublado", [("", "sun"), ("12:00", "cloud")]),
        # no forecast by the hour
        ("overcast all day", []),
        ("forecast says sun and clouds", []),
        ("rain after 3 days of sun", []),
        ("we start at 9:30 and it is overcast", []),
        ("no rain, dry until 5", []),
        ("clouds after 30", []),
        ("the sun sets at 6", []),
        ("la puesta de sol es a las 18:40", []),
    ],
)
def test_a_forecast_by_the_hour(text: str, spells: list[tuple[str, str]]) -> None:
    """Each sky from when it is told; a time that stands first belongs to the sky behind it."""
    assert [(spell.since, spell.sky) for spell in spells_in(text)] == spells


def test_hours_of_a_forecast_are_no_lengths() -> None:
    """They are taken out before a message is read for facts; nothing else is."""
    assert "3" not in without_hours("overcast til noon, light rain after 3")
    assert without_hours("the rock is 3 m away") == "the rock is 3 m away"


@pytest.mark.parametrize(
    ("text", "rain", "cold"),
    [
        ("it'll be low 40s and drizzly by the time i'm headed down", True, True),
        ("no rain, and not cold", False, False),
        ("es wird kühl und regnerisch", True, True),
        ("hará frío", False, True),
    ],
)
def test_rain_and_cold_to_pack_for(text: str, *, rain: bool, cold: bool) -> None:
    """Told, and not denied."""
    assert tells_rain(text) is rain
    assert tells_cold(text) is cold


@pytest.mark.parametrize(
    ("text", "seconds"),
    [
        ("it'll be low 40s by the time i'm headed down", None),
        ("temps in the upper 30s", None),
        ("highs in the 60s", None),
        ("a 40s exposure", 40.0),
        ("highlights gone at 30s", 30.0),
        ("low, 1/30 s", 1 / 30),
    ],
)
def test_tens_of_degrees_are_no_seconds(text: str, seconds: float | None) -> None:
    """Words of the air before them make degrees of them."""
    assert read(text).shutter_s == (None if seconds is None else pytest.approx(seconds))


def test_a_new_forecast_and_one_that_is_put_right() -> None:
    """A whole day replaces what was told; an hour only its own."""
    told = Trip(spells=(Spell(since="", sky="sun"), Spell(since="12:00", sky="cloud")))
    hour = told.updated(Trip(spells=(Spell(since="12:00", sky="overcast"),)))
    assert [spell.sky for spell in hour.spells] == ["sun", "overcast"]
    day = hour.updated(Trip(spells=(Spell(since="", sky="rain"),)))
    assert [spell.sky for spell in day.spells] == ["rain"]


def test_which_clouds_are_waited_for() -> None:
    """The first behind sun, or behind hours of which nothing was told."""
    sunny, clouded = Spell(since="", sky="sun"), Spell(since="", sky="cloud")
    noon, rain = Spell(since="12:00", sky="overcast"), Spell(since="15:00", sky="rain")
    assert sky.clouds_from((sunny, noon, rain)) == noon
    assert sky.clouds_from((noon, rain)) == noon
    assert sky.clouds_from((clouded, noon)) is None
    assert sky.clouds_from((sunny, rain)) is None
    assert sky.at((noon, rain), datetime(2027, 6, 18, 9, 0)) == noon  # noqa: DTZ001


# when to start. 2.2 mi, 650 ft: 62.3 min × 2 = 125 min; 18:10 − 60 − 125 min = 15:05.
# There at 12:00, with the clouds: start 9:55. There at 12:05 for three hours: start 10:00.

PLANNED = (
    "i'm driving to Thornwick Falls tomorrow, just me, sunset is 6:10 pm",
    "2.2 miles in, 650 ft of climbing, i'm slow on wet rock",
)
SKY = "partly cloudy til noon then full overcast, light rain after 3"


def planned(*lines: str) -> Player:
    """Somebody who plans the walk above, and what they said since."""
    player = Player()
    for line in (*PLANNED, *lines):
        player.say(line)
    return player


def body(player: Player, text: str) -> str:
    """What is answered to one more line."""
    return "\n".join(message.body for message in player.say(text))


def test_when_to_start_for_the_clouds() -> None:
    """There as they come; rain is named, and nothing is left unread."""
    said = body(planned(), f"what hour should i leave? they're saying {SKY}")
    assert "Start at 9:55 am: there 12:00 pm, overcast from 12:00 pm, 3 h 5 min at the fall" in said
    assert "turn back by 3:05 pm" in said
    assert "Rain from 3:00 pm" in said
    assert "Not placed" not in said
    assert "full sun" not in said


def test_a_start_that_is_told() -> None:
    """Yes, later, or earlier: a plain answer first."""
    player = planned(SKY)
    first = body(player, "i was thinking start walking at 9:30, is that good or should i go later")
    assert first.startswith("Yes, start 9:30 am: there 11:35 am, overcast from 12:00 pm")
    assert body(player, "would 7:00 am be too early?").startswith("Later will do: start 9:55 am")
    assert body(player, "what about 11:30 am?").startswith(
        "Earlier: from 11:30 am on you are there 1:35 pm, 1 h 30 min before the time to turn back"
    )


def test_when_to_start_without_a_forecast() -> None:
    """Three hours at the fall before the time to turn back; two are enough."""
    assert body(planned(), "when should I set off?").startswith("Start by 10:00 am: there 12:05 pm")
    assert body(planned(), "is 10:30 am ok?").startswith("Yes, start 10:30 am: there 12:35 pm")


def test_storms_are_left_before() -> None:
    """15:00 − 125 min = 12:55 is the time to turn back then; all day, another day."""
    said = body(planned("sunny, storms from 3 pm"), "what time should I leave?")
    assert "Storms from 3:00 pm: be at the car before, so turn back by 12:55 pm." in said
    said = body(planned("storms in the morning, sunny after 2"), "what time should I leave?")
    assert "take another day" in said


def test_rain_all_day_and_clouds_too_late() -> None:
    """Rain needs no hour; clouds behind the time to turn are not waited for."""
    said = body(planned("rain until 6 pm, then clear"), "what time should I leave?")
    assert "Rain all day" in said
    said = body(planned("sunny till 4 pm, then cloudy"), "what time should I leave?")
    assert said.startswith("Start by 10:00 am")


def test_a_start_asked_for_before_the_way_is_known() -> None:
    """What is missing is asked for, in the person's units."""
    player = Player()
    player.say("we go to Thornwick Spout tomorrow")
    (message,) = player.say("when should we start?")
    assert message.keys[0] == "arrive.offer"
    player.say("feet")
    assert keys_of(player, "when should we start?")[0] == "arrive.offer_feet"
    player.say("3 miles each way")
    assert "arrive.sunset_missing" in keys_of(player, "when should we start?")


def test_a_turn_back_time_that_moves_is_said() -> None:
    """Who turns out to be slow hears it beside the answer."""
    player = Player()
    for line in ("we go to Thornwick Spout tomorrow, sunset 18:40", "4 km each way", "start at 9"):
        player.say(line)
    said = player.say("my knee is bad, is that early enough?")[0]
    assert said.keys[0] == "start.good"
    assert {"arrive.turn_back_moved", "arrive.way"} <= set(said.keys)


@pytest.mark.parametrize(
    ("language", "forecast", "asked", "first"),
    [
        (
            "deutsch",
            "bis Mittag teils bewölkt, dann ganz bedeckt, ab 15 Uhr leichter Regen",
            "wann soll ich losgehen?",
            "Los um 10:45: dort 11:57, bedeckt ab 12:00",
        ),
        (
            "español",
            "parcialmente nublado hasta mediodía, luego cubierto, lluvia a partir de las 3",
            "¿a qué hora salgo?",
            "Sal a las 10:45: allí a las 11:57, cubierto desde las 12:00",
        ),
    ],
)
def test_when_to_start_in_other_languages(
    language: str, forecast: str, asked: str, first: str
) -> None:
    """4 km are 48 min × 1.5 = 72 min."""
    plan = {
        "deutsch": "morgen will ich zum Farnfall, 4 km je Weg, Sonnenuntergang 18:40",
        "español": "mañana voy al Salto del Roble, 4 km de ida, puesta de sol 18:40",
    }
    player = Player()
    for line in (language, plan[language], forecast):
        player.say(line)
    assert body(player, asked).startswith(first)


def test_the_sky_of_the_plan_is_named() -> None:
    """With what is known, by the hour."""
    player = planned(SKY)
    assert "sun and clouds, overcast from 12:00 pm, rain from 3:00 pm" in body(player, "where am i")
    assert known(player).trip.forecast == "overcast"
    # from 8:05 to 15:05 the middle is 11:35, in the sun
    player.say("i start at 6 am")
    player.say("two cloths are packed")
    assert known(player).trip.forecast == "full sun"


# when to leave. 2 mi: 38.6 min × 2 = 78 min; 17:00 − 15 − 78 min = 15:27, at the latest 15:42.

GATE = (
    "the gate at the car park shuts at 5, its 2.45 now and about 2 miles back, kids slow. "
    "when do we have to set off"
)


def test_before_a_gate_shuts() -> None:
    """The latest time by the clock, with a margin, and what is left of it; no question behind."""
    (message,) = walked().say(GATE)
    first, left, last, way, _ = message.body.split("\n")
    assert first == "Set off by 3:27 pm: 5:00 pm less 1 h 18 min for the way and 15 min spare."
    assert left == "42 min left, packing included."
    assert last == "At the very latest 3:42 pm, without a stop."
    assert way == "Each way 1 h 18 min: 39 min × 2 (a child sets the pace)."
    assert not message.question


def test_a_gate_that_can_not_be_reached() -> None:
    """Nobody is to run for it: 16:30 + 78 min = 17:48."""
    player = walked(GATE)
    said = body(player, "it's 4:30 now, how much time do we have")
    assert said.startswith("Go now: you are out by 5:48 pm, after 5:00 pm.")
    assert "leave.now" in keys_of(player, "it's 3:30 now, when do we have to leave?")


@pytest.mark.parametrize(
    ("text", "left"),
    [
        # 3 km and 150 m: 51 min × 1.5 = 77 min; 18:40 − 60 − 77 min = 16:23
        ("its 2:20, when do I need to be walking again?", "2 h 3 min"),
        ("es ist 14:20, wann muss ich los?", "2 h 3 min"),
        ("son las 14:20, ¿cuándo tenemos que volver?", "2 h 3 min"),
        ("it's quarter to four, what time do we head back?", "38 min"),
    ],
)
def test_how_long_is_left(text: str, left: str) -> None:
    """The turn-back time, and the minutes to it by the hour that is told; no question behind."""
    player = walked("3 km walk out, 150 m climb, sunset 18:40")
    (message,) = player.say(text)
    assert {"arrive.turn_back", "leave.left", "arrive.back"} <= set(message.keys)
    assert left in message.body
    assert not message.question


def test_the_place_tells_the_hour() -> None:
    """With a shared location nobody has to say what time it is, and the reminders are set."""
    player = walked("3 km walk out, 150 m climb")
    player.happen("place 44.1512 -71.3498")
    said = keys_of(player, "when do we have to head back?")
    assert {"arrive.turn_back", "leave.left"} <= set(said)
    assert any(isinstance(action, SetTimer) for action in player.actions)


def test_who_asks_early_goes_on_with_the_walk() -> None:
    """Before any frame the question that stands open is put again; without a walk none begins."""
    player = Player()
    player.say("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70")
    (message,) = player.say("when do we have to leave?")
    assert message.question == "top"
    fresh = Player()
    assert keys_of(fresh, "when do we have to leave?") == ("arrive.offer", "begin")
    assert known(fresh).conversation.walk is None
    fresh.say("feet")
    assert keys_of(fresh, "when do we have to leave?")[0] == "arrive.offer_feet"


def test_what_stands_before_any_hour() -> None:
    """A frame's fault is answered first; signs of a flood leave no hour; dusk has its own words."""
    assert "leave.left" not in keys_of(walked(), "it's too dark at 1/4 s, when do we leave?")
    assert "Leave now" in body(walked(), "when should we head back? the water is rising")
    player = walked("3 km walk out, 150 m climb, sunset 18:40", "dusk")
    assert "dusk.go" in keys_of(player, "how much time do we have, its 20 min walk to the car")


@pytest.mark.parametrize(
    ("text", "now"),
    [
        ("its 2:20, when do I need to be walking again?", ClockNow(2, 20, either=True)),
        ("its 2.45 now and about 2 miles back", ClockNow(2, 45, either=True)),
        ("it's 2 now", ClockNow(2, 0, either=True)),
        ("its 3 pm", ClockNow(15, 0, either=False)),
        ("it's quarter to three", ClockNow(2, 45, either=True)),
        ("es ist 14 Uhr 20", ClockNow(14, 20, either=False)),
        ("son las 14:45", ClockNow(14, 45, either=False)),
        ("it's 2.2 miles each way", None),
        ("it's 12 m tall", None),
        ("it's 5 stops", None),
        ("it's 2", None),
        ("it's 31:10 now", None),
        ("now the water is white", None),
    ],
)
def test_the_hour_of_now(text: str, now: ClockNow | None) -> None:
    """Told as now, and no length."""
    assert clock_now(text) == now


@pytest.mark.parametrize(
    ("text", "halves"),
    [
        ("the gate shuts at 5, when do we leave", True),
        ("its 2.45 now", True),
        ("the gate shuts at 17:00", False),
        ("it's 10:15 now", False),
    ],
)
def test_hours_after_noon_told_small(text: str, *, halves: bool) -> None:
    """Who says that a gate shuts at 5 is answered in halves of the day."""
    player = Player()
    player.say(text)
    assert known(player).person.halves is halves
    abroad = Player()
    abroad.say("deutsch")
    abroad.say(text)
    assert not known(abroad).person.halves
