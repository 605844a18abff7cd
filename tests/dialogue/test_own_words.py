"""What people ask and confess in their own words, each with the answer of the trade."""

from __future__ import annotations

import pytest

from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of

KIT = "full frame, 24-70, tripod"


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("the whole picture leans to one side", "answer.tilted"),
        ("I never turned the polariser, just screwed it on", "asked.polariser_turn"),
        ("I had the tripod at eye height for all of them", "answer.eye_height"),
        (
            "carried it over my shoulder with the camera on, across the wet stones",
            "answer.carrying",
        ),
        ("totally forgot the time and it was nearly dark when I got back", "arrive.offer"),
        ("my lens gets wet from the mist all the time", "symptom.spots"),
        ("sky is always a white blob on top, how to get rid of it", "asked.sky"),
        ("the graph thing bumps against the right side, have I lost it?", "asked.histogram"),
        ("am I allowed to set up a tripod there", "permit.ask"),
        ("the stones right in front come out fuzzy, how come", "symptom.soft_depth"),
        ("no tripod with me, is handheld hopeless?", "asked.by_hand_short"),
    ],
)
def test_own_words(text: str, key: str) -> None:
    """The first walk of a beginner, gone through afterwards."""
    player = Player()
    player.say(KIT)
    assert key in keys_of(player, text)


@pytest.mark.parametrize("text", ["now only few spots", "just a few spots"])
def test_few_spots_are_dots(text: str) -> None:
    """Where the water was asked about, spots are what blinks."""
    player = Player()
    for line in ("12 m tall, 18 m away, rock at 1.5 m", KIT, "1", "1"):
        player.say(line)
    assert "highlights.dots" in " ".join(keys_of(player, text))


@pytest.mark.parametrize(
    ("text", "begins"),
    [
        ("two cloths, one head torch. Enough?", "Not yet.\nFour dry cloths"),
        ("two cloths. Enough?", "Not yet.\nFour dry cloths or more, a headlamp each"),
        ("5 cloths, 2 lamps. Enough?", "Four dry cloths or more"),
        ("what should I pack?", "Four dry cloths or more"),
    ],
)
def test_a_kit_that_is_too_little_hears_so(text: str, begins: str) -> None:
    """Four cloths and a lamp each are enough (common practice)."""
    (said,) = Player().say(text)
    assert said.body.startswith(begins)


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("what does raw mean in this", "asked.raw_means"),
        ("is raw better", "asked.raw"),
        ("m43, and why does everybody say no f/16 on these?", "asked.why_not_f22"),
    ],
)
def test_what_a_word_means_and_why_not(text: str, key: str) -> None:
    """Who asks what a word means is not told what to choose."""
    assert key in keys_of(Player(), text)


def test_soft_leaves_are_leaves_that_move() -> None:
    """Who tells of them is not asked whether the leaves move."""
    player = Player()
    for line in ("12 m tall, 18 m away, rock at 1.5 m", KIT, "1", "1", "dots"):
        player.say(line)
    keys = keys_of(player, "rock is sharp, leaves aren't, is that focus?")
    assert "keep.leaf_frame" in " ".join(keys)
    assert keys[-1] == "ask.next"


def test_a_light_beside_the_answer_to_a_check_is_kept() -> None:
    """Grey sky answers for the top edge, and tells the light; white sky alone tells none."""
    for text, light in (("grey sky, no trees over it", "overcast"), ("white sky", None)):
        player = Player()
        player.say(f"12 m tall, 18 m away, rock at 1.5 m, {KIT}")
        player.say(text)
        assert player.context is not None
        assert player.context.facts.light == light


def test_when_to_go_is_the_way_out() -> None:
    """Told and asked in one message: 21:10 less an hour less 18 min × 1.5 are 19:43."""
    player = Player()
    player.say(f"12 m tall, 18 m away, rock at 1.5 m, {KIT}")
    (said,) = player.say("when do I have to go? sun sets 21:10, 1.5 km back, 60 m down")
    assert "Turn back by 19:43" in said.body
