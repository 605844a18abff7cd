"""Numbers that are quoted, weighed, supposed or denied are set by nobody."""

from __future__ import annotations

import pytest

from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed

_NUMBERS = ("f_number", "shutter_s", "iso", "water_speed_mps", "meter_stops", "change_stops")


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("If the free fall averages eight metres a second and the foot seventeen, why?", "en"),
        ("Never mind. If the water does 8 m/s, which look is that?", "en"),
        ("I asked: f/8 or ISO 400 for the fast frame?", "en"),
        ("should I use f/8 or 1/60 here?", "en"),
        ("f/7.1 at ISO 200 and a quarter would be three stops over", "en"),
        ("f/11 would be too much diffraction", "en"),
        ("It is not eight metres a second and f/7.1 either", "en"),
        ("u said 1/6 before", "en"),
        ("you said f/11, 1/4 s, iso 100", "en"),
        ("1/6 is what you said", "en"),
        ("I never said half a second", "en"),
        ("what time with 3 stops, if 1/60 at f/7.1 iso 160 was right", "en"),
        ("du hast vorhin 1/6 gesagt", "de"),
        ("1/6 hast du gesagt", "de"),
        ("laut dir 1/6, iso 100", "de"),
        ("lieber f/8 oder iso 400 für das schnelle Bild?", "de"),
        ("f/7,1 bei iso 200 und 1/4 wäre drei Blenden drüber", "de"),
        ("wenn das Wasser 8 m/s schnell ist, was nimmst du dann?", "de"),
        ("dijiste 1/6 antes", "es"),
        ("me has dicho 1/6", "es"),
        ("si el agua cae a 8 m/s, ¿cuál usas?", "es"),
        ("f/7,1 con iso 200 y 1/4 sería tres pasos de más", "es"),
    ],
)
def test_nothing_is_set(text: str, language: str) -> None:
    """No setting and no speed is taken from an argument."""
    told = read(glossed(text, language)).known()
    assert not told.keys() & set(_NUMBERS)


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("you said 1/4, took it, too dark", {"shutter_s": 0.25}),
        ("you said f/8, i'm at f/11 now", {"f_number": 11.0}),
        ("I would set f/11 and 1/4", {"f_number": 11.0, "shutter_s": 0.25}),
        ("hab 1/6 genommen wie du gesagt hast", {"shutter_s": 1 / 6}),
        ("f/13 at 1/6 was right, so f/7.1 would be too open", {"f_number": 13.0}),
        ("if i use f/16 what time", {"f_number": 16.0}),
        ("not 8 metres a second and f/7.1 either. f/8, 1/15", {"f_number": 8.0}),
        ("opening to f/8 is 1 1/3 stops, so 1/15", {"f_number": 8.0, "shutter_s": 1 / 15}),
    ],
)
def test_what_is_set_is_read(text: str, told: dict[str, float]) -> None:
    """Who did it, or would do it, sets it; the rest of the sentence is no number not placed."""
    language = "de" if "genommen" in text else "en"
    found = read(glossed(text, language))
    assert {slot: getattr(found, slot) for slot in told} == pytest.approx(told)
    assert found.unread == ()
