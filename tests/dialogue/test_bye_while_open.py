"""A goodbye while a question of safety is open: said kindly, asked once more, no settings."""

from __future__ import annotations

import re

import pytest

from tests.dialogue.player import Player
from tests.dialogue.unsure import unsure

SETTINGS = re.compile(r"\bf/\d|\d s\b")
WALK = ("start", "12 m tall, 18 m away, rock at 1.5 m, full frame, 16-35", "1", "1")


@pytest.mark.parametrize(
    ("danger", "asked"),
    [
        ("I'm at the lip", "ask.out_there"),
        ("the water is brown and rising", "ask.safe"),
        (unsure(), "ask.in_danger"),
    ],
)
@pytest.mark.parametrize(
    "text",
    [
        "dank dir, linn. nächstes mal geh ich erst wenns zwei tage trocken war. gut nacht",
        "thanks, bye",
        "good night linn, see you",
        "gracias, adiós",
    ],
)
def test_it_is_asked_kindly(danger: str, asked: str, text: str) -> None:
    """No reproof, no last settings; the question stands last, and its answer still counts."""
    player = Player()
    for line in (*WALK, danger):
        player.say(line)
    said = player.say(text)
    keys = [key for one in said for key in one.keys]
    assert keys[0] == "danger.bye_open"
    assert keys[-1] == asked
    assert not any(SETTINGS.search(one.body) for one in said)
