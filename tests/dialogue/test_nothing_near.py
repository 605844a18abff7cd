"""A rock that is left out of the frame has not to be sharp any more, and ends no walk."""

from __future__ import annotations

import pytest

from bot.dialogue.facts import Facts
from tests.dialogue.player import Player

KIT = "full frame, 24-70, tripod"
FALL = "12 m tall, 18 m away"


def _said(*texts: str) -> Player:
    """Somebody who has typed these messages."""
    player = Player()
    for text in texts:
        player.say(text)
    return player


def _facts(player: Player) -> Facts:
    assert player.context is not None
    return player.context.facts


def _asked(player: Player) -> str | None:
    assert player.context is not None
    question = player.context.conversation.question
    return None if question is None else question.name


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("english", "ok leave the rock out"),
        ("english", "I'll keep the big stone out of the frame this time."),
        ("english", "without the foreground rock then"),
        ("english", "that log's out now"),
        ("deutsch", "den Stein lass ich weg"),
        ("deutsch", "wir lassen den Baumstamm vorne raus"),
        ("español", "dejo fuera la roca"),
        ("español", "saco el tronco fuera del encuadre"),
    ],
)
def test_what_was_near_is_taken_back(language: str, text: str) -> None:
    """It is noted, the open question is put again, and `back` brings the rock back."""
    player = _said(language, KIT, f"{FALL}, rock at 1.5 m")
    assert _facts(player).nearest_m == pytest.approx(1.5)
    (said,) = player.say(text)
    assert "noted" in said.keys
    assert _asked(player) == "top"
    assert _facts(player).nearest_m is None
    player.say("back")
    assert _facts(player).nearest_m == pytest.approx(1.5)


def test_where_the_nearest_is_asked_for_it_is_left_out() -> None:
    """The question is passed over; at the anchor's, nothing near is the answer."""
    player = _said(KIT, FALL)
    assert _asked(player) == "nearest"
    player.say("leave the rock out")
    assert _asked(player) == "top"
    player.say("1")
    player.say("1")
    assert _asked(player) == "anchor"
    player.say("leave the boulder out")
    assert _asked(player) == "blink"


def test_it_ends_no_walk() -> None:
    """To leave a rock is not to leave; a new nearest thing is a fact like any other."""
    player = _said(KIT, f"{FALL}, rock at 1.5 m", "1", "1", "2", "1")
    assert _asked(player) == "next"
    player.say("leave the rock out")
    assert _asked(player) == "next"
    player.say("leave the rock out, the nearest is a log at 3 m")
    assert _facts(player).nearest_m == 3


def test_before_a_walk_it_tells_nothing() -> None:
    """Nobody has told of a rock yet."""
    (said,) = _said().say("leave the rock out")
    assert "noted" not in said.keys
