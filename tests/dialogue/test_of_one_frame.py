"""A frame's own focal length stands for the one that was told, wherever its water is reckoned."""

from __future__ import annotations

import pytest

from bot.dialogue.by_numbers import as_taken, flow_told, share_per_s
from bot.dialogue.reading import read
from tests.dialogue.player import Player

PLACE = read("12 m tall, 18 m away")


def test_a_format_is_told_by_the_two_focal_lengths_of_a_file() -> None:
    """Without a told format the one as on full frame counts; with one the real one does."""
    unknown = flow_told(as_taken(PLACE, 18.0, 27.0))
    known = flow_told(as_taken(PLACE.updated(read("aps-c")), 18.0, 27.0))
    assert unknown is not None
    assert known is not None
    assert unknown.coverage_m == pytest.approx(18 * 36 / 27)
    assert known.coverage_m == pytest.approx(18 * 23.6 / 18, rel=0.01)
    assert flow_told(as_taken(PLACE, None)) is None


def test_frames_at_home_are_compared_by_the_numbers_that_were_told_there() -> None:
    """The focal length is in the files: height and distance alone make shares of them."""
    player = Player()
    player.say("I'm home now")
    player.frame("half")
    player.frame("clean")
    player.say("12 m tall, 18 m away, full frame")
    player.say("compare")
    told = share_per_s(read("12 m tall, 18 m away, full frame, 27 mm"))
    assert player.asked[-1].options.share_per_s == pytest.approx(told)
    player.say("as 1 s")
    assert player.asked[-1].what == "illustrate"
    assert player.asked[-1].options.share_per_s == pytest.approx(told)


@pytest.mark.parametrize(
    ("name", "keys"),
    [
        ("too_short", {"compared.too_short"}),
        ("too_short_seen", {"compared.too_short_seen"}),
    ],
)
def test_what_no_frame_has_is_said_with_its_source(name: str, keys: set[str]) -> None:
    """None is silky, by the numbers or by the pictures alone; at home that is for next time."""
    player = Player()
    player.say("I'm home now")
    player.frame("half")
    player.frame("clean")
    player.say("compare")
    (said, *_) = player.happen(f"found {name}")
    assert keys <= set(said.keys)
    assert "Next time go longer" in said.body
    assert "nothing is taken yet" not in said.body


def _at_the_highlights() -> Player:
    player = Player()
    player.say("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod")
    player.say("1")
    player.say("1")
    return player


def test_an_area_of_an_older_frame_is_not_asked_about_under_a_new_one() -> None:
    """The new frame has no A at all, or one of its own."""
    player = _at_the_highlights()
    assert "ask.area" in player.frame("unsure")[0].keys
    (said, *_) = player.frame("black")
    assert "ask.area" not in said.keys
    assert "ask.blink_again" in said.keys


def test_an_answer_to_a_question_of_an_older_frame_does_not_count_for_the_new_one() -> None:
    """Both ask whether their A is water: a tap under the first says nothing of the second."""
    player = _at_the_highlights()
    first = player.frame("unsure")[0].question
    second = player.frame("unsure_blue")[0].question
    assert first != second
    (said,) = player.happen(f"tap {first} sky")
    assert "old_answer" in said.keys
    (said,) = player.happen(f"tap {second} sky")
    assert "highlights.sky" in said.keys


def test_an_answer_to_an_older_question_about_borders_is_no_truth_of_the_next() -> None:
    """Two things are asked about one after the other: each answer is kept of its own thing."""
    player = _at_the_highlights()
    first = player.frame("bordered")[0].question
    assert first.startswith("border@")
    player.happen(f"tap {first} yes")
    assert player.context is not None
    assert len(player.context.person.border_answers) == 1
    player.happen(f"reply {first} 3")
    assert len(player.context.person.border_answers) == 1


def test_a_thing_at_the_border_stays_asked_beside_a_comparison() -> None:
    """The frame has answered the walk's question; its own still stands behind other wishes."""
    player = Player()
    player.say("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod")
    player.frame("half")
    asked = player.frame("bordered")[0]
    assert asked.question.startswith("border@")
    player.say("compare")
    for _ in range(2):
        (said, *_) = player.happen("found seen")
        assert said.question == asked.question
        assert "ask.border" in said.keys
    (said, *_) = player.happen("found seen")
    assert "still_open" in said.keys
    (said,) = player.say("1")
    assert "border.meant" in said.keys


def test_where_only_iso_brightens_the_wished_look_is_what_is_left() -> None:
    """More ISO gives the white no more light; a frame of another look still has a next setting."""
    player = Player()
    player.say("20 m tall, 30 m away, rock at 1.5 m, full frame 24-70, tripod, textured")
    player.say("1")
    player.say("1")
    (said, *_) = player.frame("quick_dark")
    assert "frame.for_look" in said.keys
    assert "frame.room" in said.keys


def test_cancel_just_after_the_result_ends_no_walk() -> None:
    """The thumb was on its way when the result came; long after it ends the walk, as ever."""
    player = _at_the_highlights()
    player.frame("half")
    (said,) = player.say("cancel")
    assert "together.ended_before" in said.keys
    player.happen("later 5 min")
    player.frame("second")
    player.say("compare")
    player.happen("found seen")
    (said,) = player.say("cancel")
    assert "together.ended_before" in said.keys
    player.happen("later 5 min")
    (said,) = player.say("cancel")
    assert "stop.done" in said.keys


def test_a_stream_is_not_measured_to_be_drawn() -> None:
    """It is refused at once, and why is said; without the question where none stands open."""
    player = Player()
    player.say("a stream, 4 m away, rock at 1 m, leaf 3 m in 2 s, 24 mm, full frame")
    player.frame("half")
    asked = len(player.asked)
    (said,) = player.say("as 1 s")
    assert "drawn.not_plunging" in said.keys
    assert len(player.asked) == asked


def test_keep_keeps_the_frame_though_something_at_its_border_is_asked_about() -> None:
    """The bare word is the command; "keep it" is said of the thing."""
    player = _at_the_highlights()
    assert player.frame("bordered")[0].question.startswith("border@")
    (said,) = player.say("keep")
    assert "my_look.kept" in said.keys
    player = _at_the_highlights()
    player.frame("bordered")
    (said,) = player.say("keep it")
    assert "border.meant" in said.keys
