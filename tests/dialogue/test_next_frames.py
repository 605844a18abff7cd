"""Another frame, the frame for the leaves, and what is asked of numbers in the same message."""

from __future__ import annotations

import pytest

from bot.dialogue.reading import read
from tests.dialogue.player import Player

WALK = ("10 m tall, 15 m away, rock at 2 m, full frame 24-70, tripod, overcast", "1", "1")
KEPT = (*WALK, "took 1/4 f/11 iso 100", "nothing blinks")


def talk(*lines: str) -> Player:
    """A person who has said these lines."""
    player = Player()
    for line in lines:
        player.say(line)
    return player


def keys(player: Player, line: str) -> list[str]:
    """The texts of the answer to a line."""
    return [key for message in player.say(line) for key in message.keys]


def given(player: Player) -> float | None:
    """The time of the water's frame."""
    assert player.context is not None
    walk = player.context.conversation.walk
    return None if walk is None or walk.given is None else walk.given.shutter_s


@pytest.mark.parametrize(
    "line", ["did 1/125 iso 1600", "did ferns 1/60 iso 1600", "leaf frame done at 1/125 iso 3200"]
)
def test_the_frame_for_the_leaves_is_not_the_waters(line: str) -> None:
    """After the advice, a short time at a raised ISO is that frame: both are taken."""
    player = talk(*KEPT, "yes")
    water = given(player)
    assert keys(player, line)[0] == "aside.both_frames"
    assert given(player) == water


def test_a_short_frame_without_the_advice_is_the_waters() -> None:
    """Nobody spoke of leaves: it is a new time for the water."""
    player = talk(*KEPT)
    assert "aside.both_frames" not in keys(player, "took 1/125 iso 1600")


@pytest.mark.parametrize(
    "line", ["did 1/125 iso 100", "took 1/125 iso 1600, nothing blinks", "1/125, leaves still soft"]
)
def test_other_short_frames_after_the_advice_are_the_waters(line: str) -> None:
    """At the water's ISO, with what blinks, or with a complaint it is read as told."""
    assert "aside.both_frames" not in keys(talk(*KEPT, "yes"), line)


def test_more_than_settings_beside_the_leaf_frame_is_answered() -> None:
    """What else is told goes on being read."""
    player = talk(*KEPT, "yes")
    said = keys(player, "leaf frame 1/125 iso 3200, with the polariser on")
    assert "aside.both_frames" not in said


@pytest.mark.parametrize("line", ["another frame here", "another lens"])
def test_what_comes_next_may_be_named_before_it_is_asked(line: str) -> None:
    """Whatever question stands open, once a frame was taken."""
    asked = {"another frame here": "ask.top", "another lens": "ask.other_lens"}[line]
    assert keys(talk(*KEPT), line)[-1] == asked
    assert keys(talk(*WALK, "took 1/4 f/11 iso 100"), line)[-1] == asked


def test_before_a_frame_nothing_comes_next() -> None:
    """Without settings there is no other frame."""
    assert "ask.next" not in keys(talk("start"), "another frame here")


def test_keep_after_another_frame_was_begun_is_the_one_before() -> None:
    """Its numbers were told: nothing is asked for."""
    player = talk(*KEPT, "no", "1")
    assert keys(player, "keep") == ["my_look.kept_walk", "ask.top"]


def test_a_walk_that_ends_there_notes_the_frame_before() -> None:
    """The note is of what was kept."""
    assert "keep.log_line" in keys(talk(*KEPT, "no", "1"), "that's me done for today")


@pytest.mark.parametrize(
    ("wind", "asked"),
    [("no wind", "ask.next"), ("windy", "ask.next"), ("full frame", "ask.leaves")],
)
def test_leaves_are_not_asked_about_twice(wind: str, asked: str) -> None:
    """Who told whether they move is not asked; in wind the frame for them comes at once."""
    said = keys(talk(*WALK, wind, "took 1/4 f/11 iso 100"), "nothing blinks")
    assert said[-1] == asked
    assert ("keep.leaf_frame" in "".join(said)) is (wind == "windy")


def test_smeared_leaves_answer_whether_they_move() -> None:
    """Then what comes next is asked; a breeze told after it adds the lull alone."""
    player = talk(*KEPT)
    said = keys(player, "stones are crisp but the ferns are mush")
    assert said[-1] == "ask.next"
    assert keys(player, "there's a little breeze") == ["wind.lull", "ask.next"]


def test_a_ladder_that_is_done_ends_nothing() -> None:
    """It is heard, and the question stands."""
    player = talk(*KEPT, "no")
    assert keys(player, "the ladder is done") == ["aside.good", "ask.next"]


def test_a_question_is_answered_by_the_numbers_beside_it() -> None:
    """The turn-back time comes once, the focus in metres, whichever stands first."""
    said = keys(talk(*WALK), "sunset 19:40, way out 50 min. turn back?")
    assert said.count("arrive.turn_back") == 1
    assert "arrive.sunset_missing" not in said
    stream = talk("shutter for silky, stream 2 m/s, 6 m away, 50mm full frame")
    assert keys(stream, "focus? rock 2 m")[0] == "asked.focus"


@pytest.mark.parametrize(
    ("word", "key"), [("iso", "asked.iso"), ("aperture", "asked.f_number_blur")]
)
def test_a_bare_word_asks(word: str, key: str) -> None:
    """One word is a whole question."""
    assert keys(talk(*WALK), word)[0] == key


@pytest.mark.parametrize(
    ("text", "slot", "value"),
    [
        ("took 1/4 at f/8 iso 100 with the 6 stop, too dark", "nd_on_stops", 6.0),
        ("forget the 6 stop", "nd_on_stops", 0.0),
        ("without the 3 stop", "nd_on_stops", 0.0),
        ("it is 2 stops too dark", "change_stops", 2.0),
        ("I'm 20 m away, oh wait no, more like 25 m", "distance_m", 25.0),
        ("25ft tal", "fall_height_m", 7.62),
        ("its geting dark", "light", "dusk"),
    ],
)
def test_slips_and_second_thoughts(text: str, slot: str, value: object) -> None:
    """A filter is no number of stops too dark, and the second thought counts."""
    assert getattr(read(text), slot) == (pytest.approx(value) if slot != "light" else value)


def test_a_zoom_is_dictated_to_its_end() -> None:
    """It may be said as one oh five."""
    (lens,) = read("full frame camera twenty four to one oh five on a tripod").lenses
    assert (lens.shortest_mm, lens.longest_mm) == (24, 105)


def test_a_setting_put_right_is_of_the_frame_that_was_told() -> None:
    """Not of the plan that was made from the wrong one."""
    player = talk(*WALK, "took 1/4 at f/8 iso 100, too dark")
    message = player.say("sorry, I meant 1/15")[0].body
    assert "f/8, ISO 100, 1/15 s" in message
    player.say("took 1/8 f/11 iso 200")
    assert "f/11, ISO 200, 1/10 s" in player.say("sorry, I meant 1/10")[0].body
    again = talk(*WALK, "took 1/4 at f/8 iso 100, too dark")
    assert "f/8, ISO 100" not in again.say("took 1/15 at f/5.6 iso 100")[0].body


def test_keep_asks_of_the_leaves_only_what_is_not_known() -> None:
    """In wind that was told, what comes next is asked."""
    windy = talk(*WALK, "windy", "took 1/4 f/11 iso 100", "nothing blinks")
    assert keys(windy, "keep")[-1] == "ask.next"
    assert keys(talk(*KEPT), "keep")[-1] == "ask.leaves"


@pytest.mark.parametrize("seen", ["nothing blinks", "only dots"])
def test_a_frame_that_misses_the_look_by_name_leads_to_it(seen: str) -> None:
    """The whites hold, but it is no textured water yet; without a wish it is kept."""
    wished = talk(*WALK, "I want it textured", "took 1 s f/11 iso 100")
    assert keys(wished, seen)[0] == "frame.for_look"
    assert "frame.for_look" not in keys(talk(*WALK, "took 1 s f/11 iso 100"), seen)


def test_closer_by_a_number_is_where_somebody_stands() -> None:
    """A comma changes nothing of it."""
    assert read("landscape this time, closer, 3 m").distance_m == pytest.approx(3.0)


def test_an_nd_that_was_taken_off_is_not_put_on_for_a_look() -> None:
    """Where the frame misses the wished look, other levers make it."""
    kit = "10 m tall, 15 m away, rock at 2 m, full frame 24-70, tripod, 6 stop nd, bright cloud"
    player = talk(kit, "1", "1", "textured please", "forget the 6 stop", "took 1/250 f/8 iso 400")
    assert "ND on" not in player.say("nothing blinks")[0].body


@pytest.mark.parametrize("said", ["1", "no wind", "2"])
def test_leaves_that_were_answered_are_not_asked_about_at_keep(said: str) -> None:
    """The answer to the question tells it as well as a message before it; a new frame asks anew."""
    player = talk(*KEPT)
    assert keys(player, said)[-1] == "ask.next"
    assert keys(player, "keep")[-1] == "ask.next"
    for line in ("1", "1", "1", "took 1/4 f/11 iso 100"):
        player.say(line)
    assert keys(player, "nothing blinks")[-1] == "ask.leaves"
