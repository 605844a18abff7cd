"""Somebody who has walked up to the first settings, for tests that begin there."""

from __future__ import annotations

from typing import Final

from bot.dialogue.context import Context
from bot.dialogue.turn import Turn
from tests.dialogue.player import Player

#: A fall, a near rock and kit: enough for the first settings, once two borders are answered.
TOLD: Final = "12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod"


def walked(*more: str, told: str = TOLD) -> Player:
    """Somebody at the first settings, and what they said since."""
    player = Player()
    for line in (told, "1", "1", *more):
        player.say(line)
    return player


def known(player: Player) -> Context:
    """What is known of somebody who has written."""
    assert player.context is not None
    return player.context


def keys_of(player: Player, text: str) -> tuple[str, ...]:
    """The keys of what is answered."""
    return tuple(key for message in player.say(text) for key in message.keys)


def turn_of(player: Player) -> Turn:
    """An answer under construction to somebody who has written, for a step on its own."""
    return Turn(known(player), player.origin(), player.now)
