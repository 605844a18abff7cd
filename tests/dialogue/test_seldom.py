"""What few talks come to, each by the shortest way to it: pieces that meet, and guards."""

from __future__ import annotations

import math

import pytest

from bot.dialogue import reply_beside
from bot.dialogue.danger import Danger, DangerKind, Level
from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.meaning import compared
from bot.dialogue.meaning.said import in_english
from bot.dialogue.meaning.values_named import Named
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading import read
from bot.dialogue.steps.anywhere import edges_kept
from bot.dialogue.steps.asked import stops_between
from bot.dialogue.steps.frames import reviewing
from bot.dialogue.steps.safety import emergency, shore_asked
from bot.dialogue.steps.telling import corrected, late
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, known, turn_of, walked

FLOOD = "the water is brown and rising"


def test_whole_seconds_beside_whole_seconds_stay_what_they_are() -> None:
    """Both of "4 s or 2" are; beside "1/4" a 2 would be none."""
    assert compared._as(2.0, "shutter_s", (Named("shutter_s", 4.0, 0, 0),)) == 2.0


def test_stops_that_a_polariser_is_said_to_take_are_no_filter() -> None:
    told = read("polariser takes about 1.7")
    assert told.nd_stops is None
    assert not told.unread


def test_a_yes_or_no_in_front_names_no_option() -> None:
    assert reply_beside._by_words(QUESTIONS["top"], in_english("no")) is None


def test_a_number_among_words_is_kept_while_something_else_is_answered() -> None:
    player = Player()
    player.say("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70")
    turn = turn_of(player)
    edges_kept.keep(turn, "2 I'd say")
    assert turn.walk.checks["top"] == "sky"


def test_a_try_at_the_end_is_a_try() -> None:
    """Its own answer has the numbers, no topic."""
    assert "what_if.exposure" in keys_of(walked(), "nice only dots should i use f/16 or what")


def test_smeared_leaves_told_and_asked_about_get_one_leaf_frame() -> None:
    keys = keys_of(walked(), "ferns are smeared. what about the leaves in the wind?")
    assert keys.count("keep.leaf_frame") == 1


@pytest.mark.parametrize(
    ("kind", "mark", "stops"),
    [
        (None, 1 / 8, -3.0),  # 2^-3 s
        ("iso ", 400, math.log2(400)),
        ("f/", 8, 6.0),  # 8 squared is 2^6
    ],
)
def test_a_mark_in_stops(kind: str | None, mark: float, stops: float) -> None:
    """The logarithm to base two of the time, the ISO, or the f-number squared."""
    assert stops_between._level(kind, mark) == pytest.approx(stops)


def test_no_time_at_all_is_no_other_time() -> None:
    player = walked("f/11 1/4 s iso 100", "3")
    assert not any(key.startswith("time_enough") for key in keys_of(player, "could i use 0 s?"))


def test_a_look_in_review_is_of_time_and_water() -> None:
    turn = turn_of(walked())
    reviewing._say_verdict(turn, Facts(symptoms=(Symptom.TOO_FROZEN,)), "09:40")
    assert [part.key for part in turn.parts] == ["review.look"]


def test_gear_is_asked_for_after_a_flood() -> None:
    """Nobody goes back for it, whatever the question."""
    keys = keys_of(walked(FLOOD), "2. can i fetch the camera i left on the rock now?")
    assert "danger.gear_stays" in keys


def test_a_danger_taken_back_before_any_walk_keeps_none() -> None:
    player = Player()
    player.say("hi")
    turn = turn_of(player)
    emergency.end_retracted(turn)
    assert "danger.walk_kept" not in [part.key for part in turn.parts]


def test_leaves_at_the_edge_that_only_slide_ask_nothing() -> None:
    turn = turn_of(walked())
    lip = Danger(DangerKind.LIP, Level.STOP)
    assert not shore_asked.answer(turn, lip, "my shoes slide on wet leaves at the edge.")


def test_one_value_is_put_right_by_another() -> None:
    """With the old one beside it, or alone."""
    turn = turn_of(walked("f/11 1/4 s iso 100"))
    exchanged = corrected._put_right(turn, "f/8 not f/11")
    assert exchanged is not None
    assert exchanged.f_number == 8.0
    alone = corrected._put_right(turn, "14 m tall")
    assert alone is not None
    assert alone.fall_height_m == 14.0


def test_who_asks_when_to_leave_begins_a_walk_by_what_is_told() -> None:
    player = Player()
    player.say("full frame 24-70. when do we head back? sunset 18:40")
    assert known(player).conversation.walk is not None


def test_words_beside_another_frame_put_its_question_again() -> None:
    assert keys_of(walked("1", "2", "1"), "1, same spot")[-1] == "ask.top"


def test_a_reply_that_comes_late_moves_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(late, "holds_back_reply", lambda *_: True)
    player = walked("1")
    before = known(player).conversation.walk
    assert before is not None
    player.say("2 yes. and the light is overcast")
    after = known(player).conversation.walk
    assert after is not None
    assert after.state is before.state
