"""A frame that was looked at closely and is sharp, and whites that hold."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning.all_sharp import is_all_sharp
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, walked


@pytest.mark.parametrize(
    "text",
    [
        "All sharp.",
        "everything's sharp at 100 %",
        "rocks and corners are sharp, no drops",
        "sharp everywhere",
        "zoomed in, it's all tack sharp",
        "alles scharf, keine Tropfen",
        "überall scharf",
        "todo nítido, sin gotas",
        "la roca se ve nítida",
    ],
)
def test_sharp_all_over(text: str) -> None:
    """With what may stand beside it."""
    assert is_all_sharp(text)


@pytest.mark.parametrize(
    "text",
    [
        "all sharp except the left corner",
        "is it all sharp?",
        "the near rock isn't sharp",
        "I want everything sharp from 2 m on",
        "everything must be sharp",
        "sharp drop on the left",
        "alles scharf, nur der Stein nicht",
        "no está nítida",
    ],
)
def test_what_is_not(text: str) -> None:
    """A wish, a question, an exception."""
    assert not is_all_sharp(text)


def test_it_is_taken_in_on_a_walk() -> None:
    """With the question that stands open; before any frame it says nothing."""
    player = walked()
    player.say("dots")
    player.say("no wind")
    said = keys_of(player, "All sharp, no drops")
    assert said[0] == "keep.all_sharp"
    assert said[-1] == "ask.next"
    assert "keep.all_sharp" not in keys_of(walked_before_a_frame(), "all sharp")


def walked_before_a_frame() -> Player:
    """A walk that has no settings yet."""
    player = Player()
    player.say("start")
    return player


@pytest.mark.parametrize(
    "text",
    [
        "there's no overexposure on my screen at all, the white keeps its streaks",
        "nothing is overexposed",
        "the whites hold up",
        "whites are intact",
    ],
)
def test_whites_that_hold_blink_nowhere(text: str) -> None:
    """No complaint of brightness, and no wish for a look."""
    assert keys_of(walked(), text)[0] == "highlights.brighter"
