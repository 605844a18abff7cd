"""Home with many frames: the review is opened, and where to begin is answered."""

from __future__ import annotations

import pytest

from bot.dialogue.context import Conversation
from bot.dialogue.meaning.at_home import asks_where_to_begin, is_home, wants_review
from tests.dialogue.player import Player

_LANGUAGE = {"en": "english", "de": "sprache deutsch", "es": "idioma español"}


def _conversation(player: Player) -> Conversation:
    assert player.context is not None
    return player.context.conversation


def _walked(language: str) -> Player:
    player = Player()
    for line in (_LANGUAGE[language], "start", "12 m, 18 m, 1.5 m", "f/11 1/8 s ISO 100"):
        player.say(line)
    return player


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "home now, how do i sort out 64 pictures?"),
        (
            "en",
            (
                "I'll pack up here. Back home this evening I have the clipped one, the silky"
                " attempt, the gloomy 35 shot and seven fern frames on the laptop: where"
                " should I begin?"
            ),
        ),
        (
            "de",
            (
                "So, zu Hause, trocken, heißer Tee. Ich sitze am Rechner und gehe die 64 Aufnahmen "
                "durch. Wie fange ich am besten an auszusortieren?"
            ),
        ),
        ("es", "ya en casa, sentada en la compu con 64 fotos. por donde empiezo a escoger?"),
    ],
)
def test_where_to_begin(language: str, text: str) -> None:
    """Shape first, then the frames in one message; the walk's question is over."""
    player = _walked(language)
    body = player.say(text)[0].body
    assert "100 %" in body
    assert "1/8" in body
    assert _conversation(player).home_at is not None
    assert _conversation(player).question is None


def test_what_is_told_beside_does_not_keep_it_closed() -> None:
    """Nothing blinks any more: that is of frames that are taken."""
    player = _walked("de")
    said = player.say(
        "Da blinkt nichts mehr, wir sind fertig und daheim. Ich möchte die Bilder von heute "
        "durchsehen."
    )
    assert "alle Bilder in einer Nachricht" in said[0].body
    assert _conversation(player).home_at is not None


@pytest.mark.parametrize(
    "text",
    ["home now, where do I start with the blue water?", "at home: how do I begin to sharpen?"],
)
def test_other_beginnings(text: str) -> None:
    """Where to begin with one thing is asked of that thing."""
    assert not asks_where_to_begin(text)


@pytest.mark.parametrize(
    "text", ["wir gehen jetzt nach Hause", "noch zu Hause, womit fange ich an"]
)
def test_not_home(text: str) -> None:
    """On the way, or not gone yet."""
    assert not is_home(text)


def test_a_frame_told_from_home_is_gone_through() -> None:
    """Its settings are its answer, whatever else is wished."""
    assert wants_review("ich gehe die 64 Bilder durch")
    said = _walked("en").say("home now, let's review my pictures: f/11, 1/8 s, ISO 100")
    assert "all frames in one message" not in said[0].body


def test_a_file_that_comes_is_waited_for() -> None:
    """Who brings a frame needs no list."""
    said = _walked("en").say("home now, where do I begin? here is the first one")
    assert "100 %" not in said[0].body
