"""What people tell of the frame's edges, before or beside the question about them."""

from __future__ import annotations

import pytest

from bot.dialogue.reading.edges import edges_told
from tests.dialogue.player import Player


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("leaves come right over the top so there's no sky in it", {"top": "covered"}),
        ("the frame's clean all round, leaves above the lip", {"top": "covered", "sides": "clean"}),
        ("there is a strip of white sky along the top", {"top": "sky"}),
        ("sky peeking through up there", {"top": "sky"}),
        ("lip is touching the edge", {"top": "lip"}),
        ("nothing bright at the edges I think", {"top": "covered", "sides": "clean"}),
        ("corners are all clean", {"sides": "clean"}),
        ("a branch sticking in from the left", {"sides": "twig"}),
        ("a branch in the left corner I'll move over a bit okay it's gone", {"sides": "clean"}),
        ("top is covered with trees, a twig on the right that i cut off by zooming a bit",
         {"top": "covered", "sides": "clean"}),
        ("bright pebble in the left corner which I moved away from", {"sides": "clean"}),
        ("something white on the right side", {"sides": "bright"}),
    ],
)  # fmt: skip
def test_edges_are_read(text: str, told: dict[str, str]) -> None:
    """Each check is answered by the option that the words mean."""
    assert edges_told(text) == told


@pytest.mark.parametrize(
    "text",
    [
        "white patches blink at the top",
        "the left corner is soft",
        "can I stand at the edge with the branch?",
        "branches smeared on the right side",
        "f/11 at the top of the trail",
        "I'd like more sky",
    ],
)
def test_other_talk_is_no_composition(text: str) -> None:
    """Blinking, softness and questions about where to stand answer no check."""
    assert edges_told(text) == {}


def _keys(player: Player, text: str) -> list[str]:
    return [key for said in player.say(text) for key in said.keys]


def test_edges_told_ahead_are_not_asked() -> None:
    """Who tells of both edges before they are asked gets the base settings at once."""
    player = Player()
    for line in ("start", "12 m tall, 18 m away, rock at 1.5 m", "leaves above the lip"):
        player.say(line)
    player.say("nothing at the edges")
    keys = _keys(player, "full frame, 24-105, tripod, overcast")
    assert not {"ask.top", "ask.sides"} & set(keys)


def test_a_fault_told_ahead_gets_its_remedy() -> None:
    """A twig that is told is answered as if it had been asked about."""
    player = Player()
    player.say("start")
    assert "sides.twig" in _keys(player, "a twig comes in from the left")


def test_after_the_frame_edges_are_no_news() -> None:
    """Without a walk, or once the settings are given, nothing is noted."""
    assert "edges.noted" not in _keys(Player(), "corners are clean")


def test_the_answer_to_one_check_may_tell_of_the_other() -> None:
    """Leaves above and clean corners in one message answer both, asked or not."""
    player = Player()
    for line in ("start", "12 m tall, 18 m away, rock at 1.5 m", "full frame, 24-105, tripod"):
        player.say(line)
    assert "ask.sides" not in _keys(player, "leaves over the top, corners are clean")


@pytest.mark.parametrize(
    ("text", "asked", "told"),
    [
        ("moved over a bit, it's gone", "sides", {"sides": "clean"}),
        ("moved left, a tree covers it now. polariser first?", "top", {"top": "covered"}),
        ("nothing bright, just leaves", "top", {"top": "covered"}),
        ("nothing bright, just leaves", "", {}),
        ("it's gone", "blink", {}),
        ("left corner had a can, which I took away", "top", {"sides": "clean"}),
        ("edges fine", "top", {"top": "covered", "sides": "clean"}),
        ("clouds, and a bit of leaves above", "sides", {}),
    ],
)
def test_an_asked_edge_is_settled_without_its_name(
    text: str, asked: str, told: dict[str, str]
) -> None:
    """What names no edge is of the one that was asked about; leaves overhead are none."""
    assert edges_told(text, asked) == told


def test_clean_edges_are_good_news_after_the_frame() -> None:
    """A fault at an edge then has its own answer."""
    player = Player()
    for line in ("start", "12 m tall, 18 m away, rock at 1.5 m", "full frame, 24-105, tripod"):
        player.say(line)
    player.say("edges fine")
    assert "edges.noted" in _keys(player, "borders are clean, I checked again")
    assert "edges.noted" not in _keys(player, "a twig comes in from the left")
