"""Somebody who speaks of ending their life is never left with a line about water."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import Danger, DangerKind, Level, read_danger
from tests.dialogue.player import Player


@pytest.mark.parametrize(
    "text",
    [
        "He wants to jump off the bridge, he says he wants to die",
        "my friend says she wants to kill herself",
        "i want to die",
        "she is suicidal",
        "f/8, 1/4 s. I really don't want to live any more",
        "mein Freund will sich umbringen",
        "ich will nicht mehr leben",
        "ella no quiere vivir",
        "dice que quiere morirse",
    ],
)
def test_a_wish_to_die_is_an_emergency(text: str) -> None:
    """Whatever stands beside it."""
    assert read_danger(text) == Danger(DangerKind.DESPAIR, Level.EMERGENCY)


@pytest.mark.parametrize(
    "text",
    [
        "I could die for this light",
        "I'd kill for that view",
        "we're going to die laughing here",
        "the wind just wants to die down",
        "dieses Licht ist zum Sterben schön",
        "me muero por esta luz",
    ],
)
def test_a_manner_of_speaking_is_none(text: str) -> None:
    """Light and views are died for."""
    found = read_danger(text)
    assert found is None or found.kind is not DangerKind.DESPAIR


def test_what_is_said_and_how_it_ends() -> None:
    """Help first, no settings; it is held until all are safe."""
    player = Player()
    player.say("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70")
    said = player.say("my friend wants to kill himself")[0]
    assert said.urgent
    assert said.keys[0] == "danger.despair"
    assert player.say("what shutter?")[0].keys[0] != "base.settings"
    assert player.say("2")[0].keys[0] == "danger.over"
