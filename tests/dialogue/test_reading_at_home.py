"""The lens that was on, by its number alone, and a fall that is named by its height."""

from __future__ import annotations

import pytest

from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed


@pytest.mark.parametrize(
    ("language", "text", "focal_mm"),
    [
        ("en", "it's a ten metre fall, I was 15 m away with the 24 on full frame", 24),
        ("en", "12 m away with the 35, upright", 35),
        ("en", "taken on the 35, from 8 m", 35),
        ("en", "from 30 ft with my 50", 50),
        ("en", "shot it through the 85 at f/8", 85),
        ("de", "ich war 15 m weg mit dem 24er am Vollformat", 24),
        ("de", "15 m weg, mit meinem 35er", 35),
        ("es", "estaba a 15 m con el 24, cuadro completo", 24),
        ("es", "a 15 m con el 35", 35),
        # no lens that was on
        ("en", "we meet on the 24", None),
        ("en", "12 m away with the 24 others", None),
        ("en", "15 m away with the 19", None),
        ("en", "full frame with the 24 mm prime and an 85 mm prime", None),
    ],
)
def test_the_lens_that_was_on(language: str, text: str, focal_mm: float | None) -> None:
    """What was on the camera is named by its number behind "with the" and "on the"."""
    facts = read(glossed(text, language))
    assert facts.focal_mm == focal_mm


@pytest.mark.parametrize(
    ("text", "height_m", "distance_m"),
    [
        ("it's the ten metre one, I was 15 m away", 10, 15),
        ("the 8 m one, from 12 m", 8, 12),
    ],
)
def test_a_fall_named_by_its_height(text: str, height_m: float, distance_m: float) -> None:
    """The one of so many metres is a fall, and "from" says where somebody stood."""
    facts = read(text)
    assert (facts.fall_height_m, facts.distance_m) == (height_m, distance_m)


def test_the_same_view_is_no_section() -> None:
    """Five times the same view takes no part of the fall."""
    facts = read(glossed("fünfmal derselbe Ausschnitt, 10 m hoch", "de"))
    assert facts.section is None
    assert facts.fall_height_m == 10
