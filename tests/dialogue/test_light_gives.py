"""Settings that hold in the light that was told: their level, their filters, what lies beyond.

The level is reckoned here from the definition of the exposure value, EV at ISO 100 = log2(N^2 / t)
- log2(ISO / 100), against the light's (ANSI PH2.7 and common estimates: sun 15, bright cloud 13,
heavy overcast 12, open gorge 10, wooded gorge 8, dusk 6), with 1.7 stops for a polariser (common
practice) and the stops of the ND.
"""

from __future__ import annotations

import math
import re
from itertools import product

import pytest

from bot.dialogue.walk_state import GivenSettings
from tests.dialogue.player import Player
from tests.dialogue.test_first_settings import told, walk_of

KITS = ("full frame 24-105", "aps-c 16-50", "four thirds 12-40", "one inch sensor, lens 9-27 mm")
FALLS = (
    "5 m tall, 8 m away, rock at 1 m",
    "12 m tall, 20 m away, rock at 1.5 m",
    "60 m tall, 90 m away, rock at 8 m",
)
LIGHTS = {
    "full sun": 15.0,
    "bright cloud": 13.0,
    "overcast": 12.0,
    "open gorge": 10.0,
    "wooded gorge": 8.0,
    "dusk": 6.0,
}
FILTERS = ("no filters at all", "polariser and 3-stop nd in the bag", "polariser, no nd")


def given_of(player: Player) -> GivenSettings:
    """The settings given last."""
    given = walk_of(player).given
    assert given is not None
    return given


def level_of(given: GivenSettings, light_ev: float) -> float:
    """How many stops too bright these settings are in a light."""
    filters = 1.7 * given.polariser_on + given.nd_on_stops
    needed = math.log2(given.f_number**2 / given.shutter_s) - math.log2(given.iso / 100)
    return light_ev - filters - needed


def set_up(kit: str, fall: str, light: str, filters: str) -> tuple[Player, str]:
    """Somebody who has told all of it, and the message with the first settings."""
    player = told(f"{kit}, tripod", f"with me: {filters}", fall, light)
    for _ in range(4):
        if walk_of(player).given is not None:
            break
        said = player.say("1")[0].body
    return player, said


@pytest.mark.parametrize(("kit", "fall"), list(product(KITS, FALLS)))
def test_first_settings_are_right_in_their_light(kit: str, fall: str) -> None:
    """Whatever the light and the filters: within half a stop, filters counted and named."""
    for (light, light_ev), filters in product(LIGHTS.items(), FILTERS):
        player, said = set_up(kit, fall, light, filters)
        given = given_of(player)
        assert abs(level_of(given, light_ev)) <= 0.5, (kit, fall, light, filters, said)
        first = said.splitlines()[0]
        assert ("polariser" in first) is given.polariser_on, said
        assert ("-stop ND on" in first) is bool(given.nd_on_stops), said
        if "3-stop" not in filters:
            assert not re.search(r"\bND\b", said), said
        if "no filters" in filters:
            assert "polariser" not in said


# where the light gives no time of the wished look


def test_the_time_that_the_light_gives() -> None:
    """12 m from 20 m on APS-C, f/11, heavy overcast, no filter: no more than 1/32 s.

    11.31^2 / 2^12 = 1/32 s; 7.67 m/s x 1/32 s over 20 x 23.6 / 16 = 29.5 m is 0.8 %: crisp by a
    hair. Silky begins at 10 %, 0.38 s, 3.6 stops further.
    """
    player, _ = set_up("aps-c 16-50", "12 m tall, 20 m away, rock at 1 m", "overcast", FILTERS[0])
    said = player.say("i want it silky")[0]
    given = given_of(player)
    assert given.f_number == pytest.approx(2**3.5)
    assert given.iso == pytest.approx(100)
    assert given.shutter_s == pytest.approx(1 / 32, rel=0.01)
    assert "base.bright_gives" in said.keys
    assert "wait for darker light or average" in said.body  # 0.4 s is 13 frames of 1/30 s
    assert "average 13 frames of 1/30 s" in said.body


def test_a_frame_that_looks_frozen_is_followed_by_what_the_light_gives() -> None:
    """1/60 s at f/8 is right in this light: f/11 doubles it, no filter that is not there is named.

    f/8 to f/11 is one stop, 1/60 s becomes 1/30 s; the texture that is asked for lies further.
    """
    player, _ = set_up("aps-c 16-50", "12 m tall, 20 m away, rock at 1 m", "overcast", FILTERS[0])
    said = player.say("the water is quite frozen, 1/60 is the longest it gives me at f8")[0]
    assert said.body.startswith("The light gives f/11, ISO 100, 1/30 s")
    assert "still" in said.body.splitlines()[1]
    assert "too bright: wait for darker light" in said.body
    assert "ND" not in said.body


def test_no_look_that_the_dark_does_not_give() -> None:
    """At dusk the widest that the depth allows and ISO 1600 end short of frozen water.

    20 m from 30 m, full frame: a frozen frame, 0.1 %, asks for a few thousandths of a second.
    """
    player, _ = set_up("full frame 24-105", "20 m tall, 30 m away, rock at 3 m", "dusk", FILTERS[0])
    said = player.say("i want the drops frozen")[0]
    assert "base.dark_gives" in said.keys
    assert "wait for more light" in said.body or "focus stack" in said.body
    assert abs(level_of(given_of(player), 6.0)) <= 0.5


def test_a_time_that_is_kept_stays_whatever_the_light() -> None:
    """Who keeps the time hears how far it is off instead."""
    player, _ = set_up("aps-c 16-50", "12 m tall, 20 m away, rock at 1 m", "overcast", FILTERS[0])
    player.say("took 1/4 s f/11 iso 100")
    player.say("keep the time at 1/4 s")
    said = player.say("bright cloud")[0]
    assert given_of(player).shutter_s == pytest.approx(1 / 4)
    assert "base.level_over" in said.keys
    assert "4 stops too bright" in said.body  # 1/4 s against 128 / 2^13 = 1/64 s


def test_by_hand_a_dark_frame_is_told_and_not_made_longer() -> None:
    """In the hands no time longer than is held: what is missing is told, and what would help."""
    player = told("full frame 70-200, no tripod", "section of 4 m, 40 m tall, 40 m away", "dusk")
    for _ in range(4):
        if walk_of(player).given is not None:
            break
        said = player.say("1")[0]
    assert "base.level_under" in said.keys
    assert given_of(player).shutter_s <= 1 / 15


def test_a_light_that_is_beyond_the_dial() -> None:
    """Four stops more than 30 s at ISO 1600 gave: the dial ends, and what is missing is told."""
    said = Player().say("full frame 24 mm, f/8, 30 s, iso 1600, still 4 stops too dark")[0]
    assert "adjust.cant" in said.keys
    assert "too dark" in said.body


def test_a_phone_gets_the_long_exposure_mode() -> None:
    """f/1.8 and ISO 50 in the sun: 3.17 / (2^15 / 2) = 1/5160 s, shorter than a dial goes."""
    player = told("only my phone", "10 m tall, 15 m away, rock at 2 m", "full sun")
    for _ in range(3):
        said = player.say("1")[0]
        if walk_of(player).given is not None:
            break
    assert "base.level_over_phone" in said.keys
    assert given_of(player).shutter_s == pytest.approx(2**-12)


def test_room_upwards_is_in_the_time_that_the_light_gives() -> None:
    """Nothing blinks at the light's own time: two thirds more of it, whatever look was wished."""
    player, _ = set_up("aps-c 16-50", "12 m tall, 20 m away, rock at 1 m", "overcast", FILTERS[0])
    player.say("i want it silky")
    before = given_of(player)
    assert "highlights.brighter" in player.say("1")[0].keys
    after = given_of(player)
    assert after.f_number == pytest.approx(before.f_number)
    assert math.log2(after.shutter_s / before.shutter_s) == pytest.approx(2 / 3)


# filters


@pytest.mark.parametrize(
    ("kit", "named"),
    [
        ("full frame 24-105, tripod", True),
        ("full frame 24-105, tripod, polariser, 3-stop nd", True),
        ("full frame 24-105, tripod, no polariser, no nd", False),
    ],
)
def test_settings_for_a_light_name_that_nothing_is_on(kit: str, *, named: bool) -> None:
    """Bare settings say so while a filter may be there, and not to who has none."""
    player = told(kit, "12 m tall, 18 m away, rock at 1.5 m", "open gorge")
    for _ in range(2):
        said = player.say("1")[0].body
    assert (", no filter." in said.splitlines()[0]) is named


def test_what_a_polariser_would_cost_is_offered_with_its_time() -> None:
    """1.7 stops are a factor of 3.25: 1/6 s (2^-2.67 = 0.157) becomes 0.51 s, the mark 1/2."""
    player = told("full frame 24-105, tripod, polariser", "45 ft tall, 70 ft away, boulder at 4 ft")
    player.say("open gorge")
    for _ in range(2):
        said = player.say("1")[0].body
    time = re.search(r"about 1\.7 stops, (\S+ s) becomes (\S+ s)\.", said)
    assert time is not None
    assert time.groups() == ("1/6 s", "1/2 s")


def test_times_behind_each_filter_when_it_is_asked_for() -> None:
    """Four thirds, 13.4 mm, leaf at 1.5 m, EV 12, f/6.3 (6.35), ISO 200.

    6.35^2 / (2^12 x 2) = 1/203 s bare; x 3.25 = 1/62 s with the polariser, x 8 = 1/25 s with the
    3-stop, x 26 = 1/7.8 s with both.
    """
    player = told("15 m fall, 25 m away", "m43 with 12-60, a polariser and a 3-stop nd")
    said = player.say("nearest leaf 1.5 m, cloudy but open above, do i need my 3 stop?")[0].body
    assert said.startswith("Yes, an ND: in heavy overcast")
    assert (
        "f/6.3, ISO 200 there: bare 1/200 s, polariser 1/60 s, 3-stop ND 1/25 s, both 1/8 s" in said
    )
    assert "13 mm" in said


def test_a_filter_called_mine_is_one_that_is_there() -> None:
    """A question for "my 3 stop" tells of an ND; which of two goes on first, of a polariser."""
    player = told("15 m fall, 25 m away", "m43 with 12-60", "do i need my 3 stop?")
    assert player.context is not None
    assert player.context.facts.nd_stops == (3.0,)
    player.say("polariser first or nd first?")
    assert player.context.facts.has_polariser is True
    other = told("15 m fall, 25 m away", "m43 with 12-60", "polariser first or nd first?")
    assert other.context is not None
    assert other.context.facts.has_polariser is None


@pytest.mark.parametrize(
    "question",
    [
        "can i shoot at noon?",
        "don't want to wait for shade",
        "full sun",
        "do i need an nd in full sun?",
    ],
)
def test_no_filter_is_named_that_is_not_there(question: str) -> None:
    """Who has none hears of shade and sections."""
    player = told("full frame 24-105, tripod, no polariser, no nd", FALLS[1], "start", "2")
    asked_of, *rest = player.say(question)[0].body.split("\n")
    body = "\n".join(rest if asked_of.startswith("Yes, an ND:") else (asked_of, *rest))
    assert not re.search(r"\bND\b", body), body


@pytest.mark.parametrize("said", ["polariser yes, I turned it already", "yes, i already turned it"])
def test_a_polariser_that_was_turned_is_on(said: str) -> None:
    """Turned is on; the settings count with it."""
    player = told("full frame 24-105, tripod, polariser", FALLS[1], "open gorge")
    player.say(said)
    assert player.context is not None
    assert player.context.facts.polariser_on is True


def test_both_filters_told_on_are_both_on() -> None:
    """A polariser and a 3-stop that are "both on" take 1.7 + 3 stops."""
    player = told("15 m fall, 25 m away", "m43 with 12-60", "nearest 1.5 m", "1", "1")
    player.say("pola and the 3 stop both on, 1/5 f5.6 iso 100")
    given = given_of(player)
    assert given.polariser_on
    assert given.nd_on_stops == 3.0
    # log2(5.66^2 x 5.04) = 7.33 and 4.7 of filters: EV 12.0, heavy overcast
    assert level_of(given, 12.0) == pytest.approx(0.0, abs=0.05)


def test_the_note_names_what_was_on() -> None:
    """The line to remember holds the filter that made the time."""
    player = told("full frame 24-105, tripod, polariser", FALLS[1], "open gorge", "1", "1")
    player.say("took 1/4 s f/11 iso 100 with the polariser, only dots blink")
    player.say("1")
    assert "polariser" in player.say("finish")[0].body


# another look than the frame before has


@pytest.mark.parametrize(
    ("wish", "share", "change"),
    [
        # 5.42 m/s over 10 x 17.3 / 12 = 14.4 m: 1/2 s crosses 18.8 %, silky
        ("I'd like to see some threads, not only silk", (0.01, 0.10), "shorter"),
        ("i want it misty", (0.35, math.inf), "longer"),
        # silky already by the sum: the eye wants more of it, one rung
        ("silkier please, more silk", (0.20, 0.45), "longer"),
    ],
)
def test_the_next_frame_has_the_look_that_is_asked_for(
    wish: str, share: tuple[float, float], change: str
) -> None:
    """As bright as the frame that was told, in the direction of the wish."""
    player = told("four thirds, 12-40, tripod, no polariser, no nd", "6 m high, 10 m away")
    for line in ("nearest stone 80 cm", "dusk", "1", "1"):
        player.say(line)
    player.say("the camera says half a second at f/5.6 and ISO 100")
    before = given_of(player)
    said = player.say(wish)[0]
    after = given_of(player)
    assert (after.shutter_s < before.shutter_s) is (change == "shorter"), said.body
    assert share[0] <= 5.42 * after.shutter_s / 14.42 <= share[1], said.body
    brightness = [math.log2(one.shutter_s * one.iso / one.f_number**2) for one in (before, after)]
    assert brightness[1] == pytest.approx(brightness[0], abs=0.2)
    assert said.keys[-1] == "ask.blink_again"


def test_threads_asked_for_where_the_sum_has_them_already_go_one_rung_on() -> None:
    """1/8 s is textured by the numbers; who sees no threads in it gets about half the time."""
    player = told("full frame 24-105, tripod", "10 m tall, 15 m away, rock at 3 m", "open gorge")
    for line in ("1", "1", "took 1/8 s f/11 iso 100, nothing blinks"):
        player.say(line)
    before = given_of(player)
    player.say("i'd like more threads")
    after = given_of(player)
    assert math.log2(before.shutter_s / after.shutter_s) == pytest.approx(1.0, abs=0.5)
    brightness = [math.log2(one.shutter_s * one.iso / one.f_number**2) for one in (before, after)]
    assert brightness[1] == pytest.approx(brightness[0], abs=0.2)


def test_a_frame_that_clipped_is_not_made_as_bright_again() -> None:
    """All of it blinked: the next look comes two thirds of a stop darker than that, or more."""
    player = told("full frame 24-105, tripod", "10 m tall, 15 m away, rock at 3 m")
    for line in ("1", "1", "took 1/2 s f/11 iso 100"):
        player.say(line)
    clipped = given_of(player)
    player.say("patches blink")
    player.say("took it again with 1/2 s f/11 iso 100")
    player.say("i want more threads")
    after = given_of(player)
    change = [math.log2(one.shutter_s * one.iso / one.f_number**2) for one in (clipped, after)]
    assert change[1] - change[0] <= -0.6


def test_a_look_asked_for_before_any_frame_is_one_of_the_base() -> None:
    """Nobody has taken a frame: the base settings are given for that look."""
    player = told("full frame 24-105, tripod", "10 m tall, 15 m away, rock at 3 m", "1", "1")
    assert "base.settings" in player.say("i want it silky")[0].keys
    assert "base.settings" in told("full frame 24-105", FALLS[1], "1", "1").say("overcast")[0].keys


def test_dusk_and_a_card_name_no_filter_that_is_not_there() -> None:
    """After sunset nothing has to come off that is not on; a card has no line for an ND."""
    bare = "full frame 24-105, tripod, no polariser, no nd"
    said = told(bare, FALLS[1]).say("dusk")[0]
    assert "light_told.dusk_bare" in said.keys
    with_one = told("full frame 24-105, tripod, polariser, no nd", FALLS[1]).say("dusk")[0]
    assert "light_told.dusk" in with_one.keys
    body = told(bare, FALLS[1]).say("rough settings for my card?")[0].body
    assert "f/" in body
    assert "ND" not in body


def test_all_that_would_hold_the_look_is_said_where_there_is_room() -> None:
    """Waiting, averaging and a shaded section, behind the time that the light gives."""
    player, _ = set_up("aps-c 16-50", "12 m tall, 20 m away, rock at 1 m", "overcast", FILTERS[0])
    body = player.say("the water is quite frozen, 1/60 is the longest it gives me at f8")[0].body
    # 1/13 s at f/11 is 1 1/3 over, three frames of 1/30 s last as long
    assert "wait for darker light, average 3 frames of 1/30 s or a shaded section" in body


def test_no_path_leads_where_nothing_moves() -> None:
    """The light gives what is set already: there are no small steps to it."""
    player, _ = set_up("aps-c 16-50", "12 m tall, 20 m away, rock at 1 m", "overcast", FILTERS[0])
    player.say("took f/11 1/30 iso 100, the water is quite frozen")
    said = player.say("the water is quite frozen")[0]
    assert said.body.startswith("The light gives f/11, ISO 100, 1/30 s")
    assert "adjust.path" not in player.say("in small steps")[0].keys
