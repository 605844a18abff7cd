"""Slick ground to a side: nobody steps there for the sake of a clean edge."""

from __future__ import annotations

import pytest

from bot.dialogue.context import Conversation
from bot.dialogue.meaning.slick_side import tells_of_slick, without_slick
from tests.dialogue.player import Player

_WALK = {
    "english": ("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod, cloudy", "1"),
    "sprache deutsch": (
        "12 m hoch, 18 m weg, Stein bei 1,5 m, Vollformat 24-70, Stativ, bewölkt",
        "oben Laub",
    ),
    "idioma español": (
        "12 m de alto, a 18 m, roca a 1,5 m, full frame 24-70, trípode, nublado",
        "1",
    ),
}
_STEP = ("10 to 30", "10 bis 30", "10 a 30")
_CAUTION = ("Don't step there", "Tritt da nicht hin", "No pises ahí")


def _conversation(player: Player) -> Conversation:
    assert player.context is not None
    return player.context.conversation


def _at_the_sides(language: str = "english") -> Player:
    player = Player()
    for line in (language, "start", *_WALK[language]):
        player.say(line)
    question = _conversation(player).question
    assert question is not None
    assert question.name == "sides"
    return player


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("english", "a branch comes in on the right. I can go a bit to the left, but the ground"),
        ("english", "2, but left of me its all slippery"),
        ("english", "2. to the left the stones are wet"),
        (
            "sprache deutsch",
            "Ja, rechts ragt ein Ast herein. Etwas nach links kann ich gehen, aber",
        ),
        ("idioma español", "una rama entra por la derecha. puedo ir un poco a la izquierda pero"),
    ],
)
def test_zoom_instead_of_a_step(language: str, text: str) -> None:
    """One caution, and no step of 10 to 30 cm."""
    behind = {
        "the ground": " gets wet there and there's algae on the stones",
        "gehen, aber": " da wird der Boden nass und es hat Algen auf den Steinen.",
        "pero": " ahi hay algas en las piedras",
    }
    text += next((more for end, more in behind.items() if text.endswith(end)), "")
    body = _at_the_sides(language).say(text)[0].body
    assert sum(body.count(caution) for caution in _CAUTION) == 1
    assert not any(step in body for step in _STEP)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("english", "I could step a little to the left but it's slimy there"),
        ("sprache deutsch", "Etwas nach links kann ich gehen, aber da sind Algen auf den Steinen"),
        ("idioma español", "puedo moverme un poco a la izquierda pero ahi esta resbaloso"),
    ],
)
def test_it_is_kept(language: str, text: str) -> None:
    """Told before the twig, it holds for the twig; nobody is asked whether anybody is hurt."""
    player = _at_the_sides(language)
    said = player.say(text)[0].body
    assert any(caution in said for caution in _CAUTION)
    question = _conversation(player).question
    assert question is not None
    assert question.name == "sides"
    body = player.say("2")[0].body
    assert any(caution in body for caution in _CAUTION)
    assert not any(step in body for step in _STEP)


def test_without_a_walk_it_is_only_said() -> None:
    """There is no frame whose edge could be cleaned."""
    player = Player()
    assert "Don't step there" in player.say("to the left the stones are slippery")[0].body


@pytest.mark.parametrize(
    "text",
    [
        "I slipped on the wet rocks to my right",
        "my friend slipped on the algae to the left",
        "to the left the rock is wet and ben lies there",
        "links von mir auf den nassen steinen ist mein freund ausgerutscht",
        "mi amiga resbaló en las algas a la izquierda",
    ],
)
def test_who_slipped_is_in_danger(text: str) -> None:
    """A fall is told in more words than the ground."""
    player = Player()
    player.say(text)
    conversation = _conversation(player)
    assert conversation.emergency is not None or conversation.doubted is not None


def test_a_dry_step_is_still_the_remedy() -> None:
    """Nothing slick was told."""
    assert "10 to 30" in _at_the_sides().say("a twig comes in on the left")[0].body


def test_wet_rock_of_the_picture_tells_of_no_side() -> None:
    """Wet rock is what waterfalls are photographed with."""
    assert not tells_of_slick("the rocks are wet and shiny")
    assert without_slick("the rocks are wet. 2") == "the rocks are wet. 2"
