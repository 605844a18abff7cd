"""Answers that count: frames to average, rounds among students, what was set last, wet ways."""

from __future__ import annotations

import pytest

from bot.dialogue.compose import Part
from bot.dialogue.steps.asked.topic_answers import TOPICS
from bot.dialogue.trip import Trip
from bot.dialogue.turn import Turn
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, turn_of, walked


def answered(topic: str, text: str, turn: Turn | None = None) -> Part:
    """What is said first of a topic."""
    turn = turn or turn_of(walked())
    TOPICS[topic](turn, text)
    return turn.parts[0]


def with_people(number: int | None) -> Turn:
    """Somebody at the first settings who told how many walk along."""
    turn = turn_of(walked())
    turn.change_walk(trip=Trip(people=number))
    return turn


# frames


@pytest.mark.parametrize(
    ("text", "number", "stops", "double"),
    [
        ("do 16 frames make it silky", "16", "4 stops", "32"),  # log2(16)
        ("would four frames be enough", "4", "2 stops", "8"),  # log2(4)
        ("Two exposures on top of each other", "2", "1 stop", "4"),  # log2(2)
        ("64 pictures averaged", "64", "6 stops", "128"),  # log2(64)
    ],
)
def test_averaged_frames_smooth_like_a_filter(
    text: str, number: str, stops: str, double: str
) -> None:
    """So many frames are log2 of them in stops, in figures or spelled; twice as many add one."""
    said = answered("how_many_frames", text)
    assert said.key == "asked.frames"
    assert said.values == {"number": number, "stops": stops, "double": double}


@pytest.mark.parametrize(
    "text",
    [
        "how many frames do I average",
        "how many at 30 s each",  # a time
        "how many with a 10 stop filter",  # of a filter
        "how many 2 m from the fall",  # a distance
        "is one frame enough",  # nothing to average
        "are 200 frames too many",  # past what gains anything
    ],
)
def test_without_a_count_it_is_the_usual_one(text: str) -> None:
    """Numbers of something else, and too few or too many, count no frames."""
    said = answered("how_many_frames", text)
    assert (said.values["number"], said.values["stops"]) == ("8", "3 stops")  # log2(8)


def test_the_first_number_that_may_be_meant_counts() -> None:
    """One that is far too large is passed over."""
    assert answered("how_many_frames", "of my 300 frames I take 32").values["number"] == "32"


def test_frames_in_a_conversation() -> None:
    """The walk's question is put again behind it, and `why` has a reason to tell."""
    player = walked()
    assert keys_of(player, "how many frames do I need to average") == ("asked.frames", "ask.blink")
    assert "why.practice" in keys_of(player, "why")


# rounds


@pytest.mark.parametrize(
    ("text", "people", "number", "minutes"),
    [
        ("I teach nine pupils, how often do I look in", None, "9", "2"),  # 18 min / 9
        ("how long for each of my 3 students", 12, "3", "6"),  # the question counts before all else
        ("how long does each of them get", 5, "4", "4"),  # without who teaches: 18 min / 4 = 4.5
        ("how long does each of them get", 2, "6", "3"),  # two friends are no class
        ("how long does each of them get", None, "6", "3"),
        ("I have 40 pupils, what is the rhythm", None, "6", "3"),  # no one teaches so many at once
        ("how long does each of them get", 31, "30", "1"),  # 18 min / 30 is not a minute
    ],
)
def test_a_round_is_shared_out(text: str, people: int | None, number: str, minutes: str) -> None:
    """By the question's students, those who walk along, or the usual six; a minute at least."""
    said = answered("rounds", text, with_people(people))
    assert said.key == "asked.rounds"
    assert said.values == {"number": number, "minutes": minutes}


# the last settings


def test_the_last_settings_are_those_that_were_given() -> None:
    """As they were told with the base."""
    said = answered("last_settings", "what did I use last time")
    assert said.key == "where.given"
    assert "ISO" in said.values["settings"]
    assert "f/" in said.values["settings"]


def test_without_any_there_are_none() -> None:
    """Before the first settings it is said how to tell one's own."""
    player = Player()
    player.say("start")
    assert answered("last_settings", "my last settings?", turn_of(player)).key == "asked.last_none"


# the warning


def test_a_camera_shows_what_is_lost() -> None:
    """In playback."""
    assert answered("warning_where", "where is that blinking thing").key == "asked.warning_where"


def test_a_phone_shows_nothing_of_the_kind() -> None:
    """There white without structure counts."""
    player = Player()
    player.say("I only have my phone, 12 m tall, 18 m away")
    said = answered("warning_where", "where is that blinking thing", turn_of(player))
    assert said.key == "asked.warning_phone"


# slippery ways


def test_slippery_ways_get_the_usual_cautions() -> None:
    """And no settings; the land manager knows the path."""
    said = answered("walk_slippery", "the boards are slippery on the way down, any advice?")
    assert said.key == "asked.slippery"
    assert "land manager" in said.text()
    assert "f/" not in said.text()
