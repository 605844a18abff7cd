"""A "no" that leaves somebody out, or praises the place, takes nobody from where they stand."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import anyone_out_there
from bot.dialogue.danger.whereabouts import tells_of_staying
from tests.dialogue.player import Player


@pytest.mark.parametrize(
    "text",
    [
        "no, only my wife",
        "not me, my son",
        "no just the two of us on the edge",
        "no, it's fine, I'm holding on",
        "no it's dry",
        "no I'm good up here",
        "I stepped back a bit, still on the lip",
        "he went back down to the pool",
        "nobody sees us",
        "nein, nur ich",
        "nein, passt schon, ich steh gut",
        "nein alles gut hier oben",
        "keiner sieht uns",
        "no, solo mi hijo",
        "no pasa nada, estoy sujeto",
        "nadie nos ve",
    ],
)
def test_no_settings_for_who_is_still_there(text: str) -> None:
    """The question stays, whatever is asked next."""
    assert anyone_out_there(text) is not False
    player = Player()
    for line in ("12 m tall, 18 m away", "I stand on the lip of the fall now, settings?", text):
        player.say(line)
    keys = [key for message in player.say("which settings?") for key in message.keys]
    assert any(key.startswith(("danger.", "ask.out_there", "ask.safe")) for key in keys)


@pytest.mark.parametrize(
    "text",
    [
        "no",
        "no, all back",
        "no, my friend is fine",
        "no, it was only the light",
        "i stepped back from it",
        "we came back down",
        "nein, alle zurück",
        "nein wir sind auf dem weg",
        "nadie",
        "estoy en el mirador",
    ],
)
def test_a_plain_no_opens_the_walk(text: str) -> None:
    """Who is not left out is not asked for again."""
    assert not tells_of_staying(text)
    assert anyone_out_there(text) is False
