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
        "I wanna die",
        "I'd like to die",
        "I wish I was dead",
        "I'd rather be dead",
        "life isn't worth living",
        "ich bringe mich um",
        "er bringt sich um",
        "me voy a matar",
        "quiero acabar con todo",
        "I'm going to jump off that cliff, nobody cares",
        "I'm gonna jump off the bridge, I want to end it",
        "my friend wants to jump off the bridge, says nobody would miss him",
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
        "I don't want to live in the city, I want waterfalls. It blinks all over.",
        "I could kill myself for forgetting the filter",
        "no point living here without a car",
        "is it suicidal to stand on the lip?",
        "me quiero morir de la risa",
        "ich könnte mich umbringen dass ich den Filter vergessen habe",
        "my friends want to jump off the rock for fun",
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
