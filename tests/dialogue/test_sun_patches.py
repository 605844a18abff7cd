"""Patches of sun on the water and the rocks are light; a bit of foam beside the fall is sparkle."""

from __future__ import annotations

import pytest

from bot.dialogue.facts import Blink
from bot.dialogue.meaning import sun_by_turns
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from tests.dialogue.player import Player

_LANGUAGE = {"en": "english", "de": "sprache deutsch", "es": "idioma español"}


def _answer(language: str, text: str) -> str:
    player = Player()
    for line in (_LANGUAGE[language], "start", "12 m, 18 m, 1.5 m", "f/11 1/8 s ISO 100"):
        player.say(line)
    return player.say(text)[0].body


@pytest.mark.parametrize(
    ("language", "text", "said"),
    [
        (
            "en",
            (
                "Now the sun is coming in, bright blotches on the rocks on the left and half the"
                " fall, the rest still in shade. What should I do now?"
            ),
            "Wait for cloud or shade",
        ),
        ("en", "splotches of sunlight on the water, rest in shade", "Wait for cloud or shade"),
        (
            "de",
            (
                "Jetzt kommt die Sonne rein, helle Flecken auf den Felsen links und dem halben"
                " Fall, der Rest noch im Schatten. Was tun?"
            ),
            "Wolken oder Schatten abwarten",
        ),
        (
            "es",
            (
                "ya entra el sol, manchones de luz en las piedras de la izquierda y media cascada,"
                " lo demas en sombra. que hago?"
            ),
            "Espera nube",
        ),
    ],
)
def test_patches_of_sun_are_light(language: str, text: str, said: str) -> None:
    """Mixed sun and shade: wait, or take a shaded section; nothing is on the glass."""
    assert said in _answer(language, text)


def test_blotches_of_the_glass_are_none_of_the_sun() -> None:
    """They are on the lens, or all over the picture."""
    assert "Drops on the glass" in _answer("en", "round blotches all over the picture")
    text = "the sun is coming in. bright blotches on the glass"
    assert sun_by_turns.told(Said(text, text)) is None


def test_a_time_that_is_told_is_heard() -> None:
    """Sun patches beside a setting are no question alone."""
    text = "patches of sun on the fall, rest in shade, I took 1/50 s. what now?"
    assert _answer("en", text)


@pytest.mark.parametrize(
    ("language", "text", "blink"),
    [
        (
            "en",
            "smooth, but one little bit at the bottom foam flashes, not the main fall",
            Blink.DOTS,
        ),
        ("en", "just a small bit of foam blinks, not the fall", Blink.DOTS),
        ("de", "nur ein kleines bisschen Schaum unten blinkt, nicht der Fall selbst", Blink.DOTS),
        ("es", "solo un pedacito de espuma abajo parpadea, no la cascada", Blink.DOTS),
        ("en", "a big patch in the foam at the bottom blinks, not the fall", Blink.PATCHES),
        ("en", "one little bit at the bottom of the fall blinks", Blink.PATCHES),
        ("en", "just a bit of foam at the bottom blinks and half the fall", Blink.PATCHES),
    ],
)
def test_foam_beside_the_fall(language: str, text: str, blink: Blink) -> None:
    """It is fine like dots only where the fall itself is said to hold."""
    assert read(glossed(text, language) if language != "en" else text).blink is blink
