"""Messages that only sound like danger: asked about first, and nothing of them is lost."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import DangerKind, Level, read_danger
from tests.dialogue.player import Player

#: It sounds like danger, and no rule knows it; facts stand beside it.
DOUBTFUL = "the fall is 5 m, 8 m away, the lady next to me is breathing funny"


def begun() -> Player:
    player = Player()
    player.say("start")
    return player


def keys(player: Player, text: str) -> list[str]:
    return [key for said in player.say(text) for key in said.keys]


def test_it_is_asked_before_anything_is_answered() -> None:
    """No kind of danger is guessed, no settings are given: one question stands first."""
    danger = read_danger(DOUBTFUL)
    assert danger is not None
    assert (danger.kind, danger.level) == (DangerKind.UNCLEAR, Level.UNSURE)
    assert keys(begun(), DOUBTFUL) == ["ask.in_danger"]


@pytest.mark.parametrize("no", ["1", "no", "all fine, nobody is hurt"])
def test_no_takes_up_what_waited(no: str) -> None:
    """The message is then answered as if it had just come."""
    player = begun()
    player.say(DOUBTFUL)
    player.say(no)
    assert player.context is not None
    facts = player.context.facts
    assert (facts.fall_height_m, facts.distance_m) == (5, 8)
    assert player.context.conversation.doubted is None


def test_going_on_keeps_what_was_told() -> None:
    """Who sends something else is in no danger, and has told both."""
    player = begun()
    player.say(DOUBTFUL)
    player.say("rock at 1.5 m")
    assert player.context is not None
    facts = player.context.facts
    assert (facts.fall_height_m, facts.distance_m, facts.nearest_m) == (5, 8, 1.5)


def test_leaving_is_no_emergency() -> None:
    """Who says that they leave names nobody in danger."""
    player = begun()
    player.say(DOUBTFUL)
    assert "ask.safe" not in keys(player, "We are leaving now, thank you")


def test_going_on_from_words_without_facts() -> None:
    """Words that told nothing leave nothing behind."""
    player = begun()
    player.say("ok we're going up to the shelter")
    assert "ask.nearest" in keys(player, "12 m tall, 18 m away")


@pytest.mark.parametrize("yes", ["2", "yes", "yes, he is still out there"])
def test_yes_is_an_emergency(yes: str) -> None:
    """The walk is held until all are safe."""
    player = begun()
    player.say(DOUBTFUL)
    said = keys(player, yes)
    assert "danger.unclear" in said
    assert said[-1] == "ask.safe"
    assert "danger.unclear.again" in keys(player, "1")
    assert "danger.over" in keys(player, "2")


def test_a_known_danger_ends_the_doubt() -> None:
    """A danger that is known is answered as such, and the doubt does not come back."""
    player = begun()
    player.say(DOUBTFUL)
    assert "danger.in_water" in keys(player, "my friend fell in")
    player.say("2")
    assert player.context is not None
    assert player.context.conversation.doubted is None


def test_the_same_doubt_is_not_asked_twice_in_a_row() -> None:
    """While it stands open, more words of the kind are read on."""
    player = begun()
    player.say(DOUBTFUL)
    assert "ask.in_danger" not in keys(player, DOUBTFUL)


def test_in_an_emergency_nothing_is_doubted() -> None:
    """The emergency's own question stays."""
    player = begun()
    player.say("my friend fell in")
    assert keys(player, DOUBTFUL)[-1] == "ask.safe"
