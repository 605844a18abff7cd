"""Frames that are named by their times: which to keep, at the water and at home."""

from __future__ import annotations

import pytest

from bot.dialogue.context import Conversation
from bot.dialogue.kept import ToldFrame
from bot.dialogue.meaning import review_words
from bot.dialogue.meaning.told_sights import remarks
from bot.dialogue.reading.frame_list import told_in
from bot.dialogue.reading.frame_times import plain_times
from tests.dialogue.player import Player


def _talk(player: Player) -> Conversation:
    """What the bot keeps of the talk."""
    assert player.context is not None
    return player.context.conversation


_BEGIN = (
    "start",
    "12 m tall, 18 m away, rock at 1.5 m. full frame, 24-70, tripod",
    "1",
    "1",
    "overcast",
)


def _at_the_frame(*before: str) -> Player:
    player = Player()
    for line in (*before, *_BEGIN):
        player.say(line)
    return player


@pytest.mark.parametrize(
    ("language", "text", "kept"),
    [
        ("en", "took 1/4 and 1/8, the 1/4 is blown. which one do i keep", "Keep 1/8 s"),
        (
            "en",
            "one at 1/30 with white blobs, one at 1/60, whites fine, rest gloomy. keep which?",
            "Keep 1/60 s",
        ),
        (
            "en",
            "i took two frames at 1/15 and 1/30, the leaves moved in the 1/15. keep which?",
            "Keep 1/30 s",
        ),
        (
            "de",
            "hab 1/4 und 1/8 gemacht, 1/4 ist ausgefressen. welches soll ich behalten?",
            "Behalte 1/8 s",
        ),
        (
            "es",
            "hice 1/4 y 1/8, la de 1/4 tiene manchas blancas. con cuál me quedo?",
            "Quédate con 1/8 s",
        ),
    ],
)
def test_which_to_keep_at_the_water(language: str, text: str, kept: str) -> None:
    """The choice is answered by what is said of each frame; the walk's question stays open."""
    player = _at_the_frame(*{"en": (), "de": ("deutsch",), "es": ("español",)}[language])
    said = player.say(text)[-1].body
    assert said.startswith(kept)
    question = _talk(player).question
    assert question is not None
    assert question.name == "blink"
    assert not _talk(player).home_at


def test_white_that_blinked_on_the_walk_counts() -> None:
    """A frame as bright as one whose water blinked in patches is not called sound."""
    player = _at_the_frame()
    walk = _talk(player).walk
    assert walk is not None
    player.say("3")
    said = player.say("of the two frames, 1/25 and 1/100, which is better to keep?")[-1].body
    assert said.startswith("Keep 1/100 s")
    assert "Out: 1/25 s (white lost)" in said
    said = player.say("of the frames at 1/25 f/22 iso 50 and 1/100 f/4 iso 400, keep which?")[
        -1
    ].body
    assert said.startswith("Keep 1/25 s")


@pytest.mark.parametrize("text", ["which is better, 1/4 or 1/8?", "keep 1/4 or go to 1/8?"])
def test_times_that_are_only_weighed_are_no_frames(text: str) -> None:
    """Nothing was taken: the two times are compared."""
    said = _at_the_frame().say(text)[-1].body
    assert not said.startswith("Keep")


def test_home_hears_what_blinks_beside_the_choice() -> None:
    """A time that is spoken of again is no other frame, and what was said of it counts."""
    player = _at_the_frame()
    said = player.say(
        "home now. got 1/40, 1/20, 1/8, same frame all three. 1/8 has blinking in big patches,"
        " which do I keep"
    )[-1].body
    assert said.startswith("Keep 1/20 s")
    assert "Out: 1/8 s (white lost)" in said
    assert "1/8 s (white lost), 1/8 s" not in said


@pytest.mark.parametrize(
    ("text", "number"),
    [
        ("got 1/40, 1/20 and 1/8. 1/8 has patches", 3),
        ("took 1/4 and 1/8, 1/4 is blown", 2),
        ("took 1/4 and 1/8. then another at 1/8", 3),
        ("1/8 once, 1/8 a second time", 2),
    ],
)
def test_a_frame_that_is_spoken_of_again(text: str, number: int) -> None:
    """A later sentence, or one that says something of it, takes no frame twice."""
    assert len(told_in(plain_times(text)).times) == number


def test_frames_before_a_sentence_are_not_those_of_it() -> None:
    """A list before a sentence is not what the next sentence is about."""
    frames = (ToldFrame(shutter_s=1 / 20), ToldFrame(shutter_s=1 / 8))
    said = [(one.places, one.seen) for one in remarks("1/20, 1/8. 1/8 is blown", frames)]
    assert said == [((0, 1), ()), ((1,), ("clipped",))]


@pytest.mark.parametrize(
    ("text", "of_taken"),
    [
        ("which of the frames do I keep", True),
        ("welche soll ich behalten", True),
        ("con cuál me quedo", True),
        ("which is better, 1/4 or 1/8", False),
    ],
)
def test_frames_that_are_taken(text: str, of_taken: bool) -> None:
    """Whether a choice is one of frames."""
    assert review_words.speaks_of_taken(text) is of_taken
