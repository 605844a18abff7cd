"""A phone that calls, finds the way or has no signal is no camera; a mention changes no other."""

from __future__ import annotations

from typing import Final

import pytest

from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from tests.dialogue.player import Player
from tests.dialogue.walked import known

_LANGUAGES: Final = {"en": "english", "de": "sprache deutsch", "es": "idioma español"}


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "Phone dies past the car park by the way"),
        ("en", "phone's got no signal"),
        ("en", "my phone for the map"),
        ("en", "no reception on my phone"),
        ("en", "phone doesn't work in the gorge"),
        ("en", "I'll phone my wife"),
        ("en", "left my phone in the car"),
        ("de", "das Handy hat kein Netz"),
        ("de", "Handy nur für die Karte"),
        ("de", "mein Handy stirbt nach dem Parkplatz"),
        ("es", "el móvil no tiene cobertura"),
        ("es", "llevo el móvil para el mapa"),
        ("es", "el móvil se apaga"),
    ],
)
def test_a_phone_that_is_no_camera(language: str, text: str) -> None:
    """What it does not do as a telephone tells nothing of the kit."""
    assert read(glossed(text, language)).camera_format is None


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "only got my phone"),
        ("en", "phone doesnt blink lol"),
        ("en", "phone on the mini tripod"),
        ("de", "hab nur das Handy"),
        ("es", "solo tengo el móvil"),
    ],
)
def test_a_phone_that_is_the_camera(language: str, text: str) -> None:
    """Who has nothing else, or speaks of its frames, has a phone."""
    assert read(glossed(text, language)).camera_format == "phone"


@pytest.mark.parametrize(
    ("language", "kit", "text", "camera"),
    [
        ("en", "full frame, 24-70", "I have my phone along, 12 m tall", "full frame"),
        ("en", "full frame, 24-70", "using the phone now, 12 m tall", "phone"),
        ("en", "full frame, 24-70", "shooting w phone 1x, 12 m tall", "phone"),
        ("en", "16-35 and 24-105", "there is a phone in my pocket, 12 m tall", None),
        ("de", "Vollformat, 24-70", "hab ein Handy dabei, 12 m hoch", "full frame"),
        ("de", "Vollformat, 24-70", "mach es mit dem Handy, 12 m hoch", "phone"),
        ("es", "full frame, 24-70", "llevo un móvil, 12 m de alto", "full frame"),
        ("es", "full frame, 24-70", "ahora uso el móvil, 12 m de alto", "phone"),
    ],
)
def test_another_camera_stays(language: str, kit: str, text: str, camera: str | None) -> None:
    """A phone takes its place where it is used, and not where it is along."""
    player = Player()
    for line in (_LANGUAGES[language], kit, text):
        player.say(line)
    assert known(player).facts.camera_format == camera
    assert known(player).facts.fall_height_m == 12
