"""What is told beside a question is kept, and words of the walk are not taken for another thing."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning.at_home import is_home
from bot.dialogue.meaning.time_factor import time_factor_in
from bot.dialogue.reading import read
from bot.dialogue.reading.back_by import back_by_in
from tests.dialogue.player import Player
from tests.dialogue.test_next_frames import KEPT
from tests.dialogue.walked import known


def _kept() -> Player:
    player = Player()
    for line in KEPT:
        player.say(line)
    return player


@pytest.mark.parametrize(
    "line",
    [
        "The polariser is on, from the start",
        "it was blinking, from the beginning",
        "das Licht kommt von vorn",
        "tengo el polarizador puesto, desde el principio",
    ],
)
def test_from_the_start_drops_no_walk(line: str) -> None:
    """A new walk is begun by a word of beginning alone."""
    player = _kept()
    before = known(player).facts.distance_m
    assert "caution.arrive" not in player.say(line)[0].keys
    assert known(player).facts.distance_m == before


@pytest.mark.parametrize(
    ("line", "darker"),
    [
        ("it got two stops darker now", True),
        ("the light dropped by two stops", True),
        ("the light got two stops brighter", False),
        ("the sky got brighter by one stop", False),
    ],
)
def test_numbers_in_words_keep_their_sign(line: str, *, darker: bool) -> None:
    """Darker light is met with more exposure, brighter light with less."""
    player = _kept()
    given = _level(player)
    player.say(line)
    assert (_level(player) > given) is darker


def _level(player: Player) -> float:
    walk = known(player).conversation.walk
    assert walk is not None
    given = walk.given
    assert given is not None
    return given.shutter_s * given.iso / given.f_number**2


def test_a_filter_makes_no_darker_light() -> None:
    """What it takes is no change of the light, and no wish."""
    player = _kept()
    given = _level(player)
    player.say("it's 6 stops darker now with the nd on")
    assert _level(player) == given


@pytest.mark.parametrize(
    ("line", "distance_m"),
    [
        ("is that with the filter on? I now stand at 20 m", 20.0),
        ("I don't know the number on my nd, how dark is it? I stand at 20 m", 20.0),
    ],
)
def test_what_is_told_beside_a_question_of_filters_is_kept(line: str, distance_m: float) -> None:
    """The question is answered, too."""
    player = _kept()
    player.say(line)
    assert known(player).facts.distance_m == distance_m


def test_what_is_told_beside_going_on_is_kept() -> None:
    """After a night, with what waited."""
    player = _kept()
    player.happen("later 10 h")
    player.say("the sun is out now")
    player.say("go on, I am 20 m away now")
    assert known(player).facts.distance_m == 20.0


def test_the_bus_that_brought_them_is_no_hour_to_be_back() -> None:
    """One that is still to come is."""
    assert back_by_in("the bus at 17:20 brought us here") is None
    assert back_by_in("the 12:20 bus dropped us here") is None
    assert back_by_in("our bus home is at 17:20") == "17:20"


def test_who_longs_for_home_is_not_there() -> None:
    """Nor is it often that is meant by a time."""
    assert not is_home("I want to be back home again")
    assert is_home("back home again, with tea")
    assert time_factor_in("half the time it is good") is None


def test_start_at_the_water_keeps_what_was_told_on_the_way() -> None:
    """No question whether to drop it; one that was begun with `start` is asked about."""
    player = Player()
    player.say(
        "on the trail to a 9 m fall, aps-c with an 18-55, tripod. back by 17:40, 25 min walk"
    )
    said = player.say("start")[0].keys
    assert "caution.arrive" in said
    assert said[-1] == "ask.distance"
    assert known(player).facts.fall_height_m == 9.0
    assert player.say("start")[0].keys[-1] == "ask.restart"


@pytest.mark.parametrize(
    ("text", "height_m"),
    [
        ("on the trail to a 9 m fall, aps-c with an 18-55", 9.0),
        ("photo of a 12 m fall, full frame with a 24-70", 12.0),
        ("a car 9 m long, full frame with a 24-70", None),
    ],
)
def test_a_height_before_the_name_of_a_fall(text: str, height_m: float | None) -> None:
    """Whatever words of a way or a lens stand around it."""
    assert read(text).fall_height_m == height_m


def test_cold_hands_beside_what_comes_next_are_warmed() -> None:
    """The caution stands before the walk's question."""
    said = _kept().say("my hands are freezing, what's next")[0].keys
    assert said[0] == "precaution.cold_hands"
    assert said[-1].startswith("ask.")


@pytest.mark.parametrize(
    ("doubt", "question"),
    [("we are stuck here", "ask.in_danger"), ("can I climb over the rail?", "ask.out_there")],
)
def test_somebody_left_behind_ends_no_question_of_safety(doubt: str, question: str) -> None:
    """Whichever of them stands open, "all safe" beside it proves nothing."""
    player = _kept()
    assert question in player.say(doubt)[0].keys
    said = player.say("no, all of us are safe, left Ben behind")[0]
    assert said.urgent
    assert "danger.nobody_there" not in said.keys


def test_slick_ground_is_minded_in_an_edit_too() -> None:
    """No remedy sends anybody there, however the answer came."""
    player = Player()
    player.say("start")
    player.say("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70. slippery to the left")
    player.say("1")
    player.say("1")
    assert "sides.twig" not in player.edit(4, "2")[0].keys


def test_a_phones_button_is_no_other_camera() -> None:
    """1.5x of a phone is no APS-C."""
    player = Player()
    player.say("phone, 12 m tall, 18 m away")
    player.say("shot it on 1.5x")
    assert known(player).facts.camera_format == "phone"


def test_a_sum_that_is_checked_leaves_nothing_unread() -> None:
    """And what stands beside it is heard."""
    assert "not_understood" not in _kept().say("3 stops on 1/15 is 1/2 s, right?")[0].keys


def test_who_has_no_nd_is_told_of_none_as_bright() -> None:
    """However it is asked."""
    player = _kept()
    player.say("no nd")
    body = player.say("f/11 1/15 s is brighter than f/8 1/30 s, right?")[0].body
    assert "ND" not in body
