"""Angles and temperatures are no times, lengths or exposures, in words, digits or signs."""

from __future__ import annotations

import pytest

from bot.dialogue.reading import read
from bot.dialogue.reading.angles import in_degrees
from bot.dialogue.reading.foreign import glossed


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("is level better than tilted by four and a half degrees?", "en"),
        ("half a degree, four and a half degrees", "en"),
        ("a degree and a half off level", "en"),
        ("tilted by 4½° i think", "en"),
        ("a 4-degree tilt", "en"),
        ("that is thirty-two degrees", "en"),
        ("tilt of 10 to 15 degrees", "en"),
        ("four or five degrees", "en"),
        ("a quarter of a degree", "en"),
        ("1/2 degree off", "en"),
        ("it is minus two degrees out here", "en"),
        ("it's minus 5°C", "en"),
        ("one hundred and five degrees", "en"),
        ("um viereinhalb Grad gekippt", "de"),
        ("ein halbes Grad schief", "de"),
        ("1/2 Grad schief", "de"),
        ("Kamera 5 Grad nach oben", "de"),
        ("medio grado de inclinación", "es"),
        ("inclinada cuatro grados y medio", "es"),
        ("torcido unos 3 grados", "es"),
    ],
)
def test_degrees_are_no_setting(text: str, language: str) -> None:
    """Nothing is read of degrees, and nothing is told as not placed."""
    told = read(glossed(text, language))
    assert (told.known(), told.unread) == ({}, ())


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("four and a half degrees", "4.5 degrees"),
        ("thirty-two degrees", "32 degrees"),
        ("1/2 of a degree", "0.5 degrees"),
        ("4 1/2°", "4.5 degrees"),
        ("a degree and a quarter", "1.25 degrees"),
        ("one hundred and five degrees", "105 degrees"),
        ("grad 18 m weg", "grad 18 m weg"),
        ("3 stop grad on", "3 stop grad on"),
        ("no angle at all", "no angle at all"),
    ],
)
def test_degrees_in_digits(text: str, said: str) -> None:
    """Words become digits; "grad" alone is a filter, or "just"."""
    assert in_degrees(text) == said


def test_settings_beside_degrees_are_read() -> None:
    """What stands beside an angle is read as ever."""
    told = read("half a degree off, 1/4 s at f/11, 18 m away")
    assert (told.shutter_s, told.f_number, told.distance_m) == (0.25, 11.0, 18.0)
