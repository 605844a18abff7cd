"""Words that tell nothing are left out before a message is read."""

from __future__ import annotations

import pytest

from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.noise import without_noise
from tests.dialogue.reading_checks import told


@pytest.mark.parametrize(
    ("text", "left"),
    [
        ("how wide? hmm 10 yards", "how wide? 10 yards"),
        ("3 seconds for about 3 m", "3 seconds for 3 m"),
        ("it's actually kind of windy", "it's windy"),
        ("fall is about 30 maybe 35 m", "fall is 30 maybe 35 m"),
        ("a breeze now and then", "a breeze now and then"),
        ("12 m, 24 mm", "12 m, 24 mm"),
        ("actually", "actually"),
    ],
)
def test_noise_is_left_out(text: str, left: str) -> None:
    """Hesitation, hedges before a number and emphasis go; units, choices and lone words stay."""
    assert without_noise(text) == left


@pytest.mark.parametrize(
    ("language", "text", "facts"),
    [
        ("en", "three seconds for about 6 feet", {"water_speed_mps": pytest.approx(0.6096)}),
        ("de", "alles leicht matschig bei f22", {"f_number": 22.0}),
        ("es", "todo un poco blando con f22", {"f_number": 22.0}),
    ],
)
def test_everyday_words_and_hedges_hide_nothing(
    language: str, text: str, facts: dict[str, object]
) -> None:
    """What stands among words of everyday speech is read as in plain English."""
    found = told(glossed(text, language))
    assert {slot: found[slot] for slot in facts} == facts
