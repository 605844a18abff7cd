"""Frames that came out pale or white, in many words: what comes next is darker."""

from __future__ import annotations

import pytest

from bot.dialogue import solving
from bot.dialogue.causes import Scene, diagnose
from bot.dialogue.facts import Facts
from bot.dialogue.meaning.said import in_english
from tests.dialogue.player import Player
from tests.dialogue.walked import walked

PALE = (
    "far too pale",
    "it came out far too pale, nearly everything is white",
    "it's milky white",
    "washed out",
    "burnt to white",
    "the picture came out pale",
    "the photo has gone horribly pale",
    "shot it, it ended up way paler than i thought",
    "still much too bright, the water is all flashing black and white now",
)
PALE_ABROAD = (
    ("sprache deutsch", "viel zu blass"),
    ("sprache deutsch", "ausgebleicht"),
    ("sprache deutsch", "fast alles weiß"),
    ("sprache deutsch", "das bild ist total verbrannt"),
    ("sprache deutsch", "das wasser ist milchig weiß"),
    ("idioma español", "muy lavado"),
    ("idioma español", "la imagen sale pálida"),
    ("idioma español", "casi todo blanco"),
)


def level(player: Player) -> float:
    """How bright a frame with the settings given last is [stops]."""
    assert player.context is not None
    walk = player.context.conversation.walk
    assert walk is not None
    assert walk.given is not None
    return solving.level_of(walk.given)


@pytest.mark.parametrize("text", PALE)
@pytest.mark.parametrize("look", ["silky", "misty"])
def test_next_frame_is_darker(text: str, look: str) -> None:
    """By a stop, whatever look is wished."""
    player = walked()
    player.say(look)
    before = level(player)
    player.say(text)
    assert level(player) <= before - 0.9


@pytest.mark.parametrize(("command", "text"), PALE_ABROAD)
def test_next_frame_is_darker_in_other_languages(command: str, text: str) -> None:
    """German and Spanish words of the same."""
    player = walked()
    player.say(command)
    before = level(player)
    player.say(text)
    assert level(player) <= before - 0.9


def test_white_again_takes_a_longer_step() -> None:
    """A darker frame that is still white as a whole was far from the edge."""
    player = walked()
    player.say("4")
    once = level(player)
    player.say("4")
    assert level(player) <= once - 1.6


def test_a_sight_never_says_the_opposite() -> None:
    """Words that are near to a dark frame, and call it pale."""
    said = in_english("it has all gone weirdly pale and lifeless in the photo")
    named = {cause.name for cause in diagnose(said, Scene(Facts()))}
    assert "underexposed" not in named
    assert "underexposed" in {cause.name for cause in diagnose(in_english("grim"), Scene(Facts()))}


@pytest.mark.parametrize("text", ["pale sun", "a pale sky up there", "the leaves look a bit pale"])
def test_other_pale_things(text: str) -> None:
    """Sky, sun and leaves are no frame that is too bright."""
    said = walked().say(text)[0].body
    assert "lost texture" not in said
    assert "darker" not in said
