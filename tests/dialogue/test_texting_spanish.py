"""Spanish in the short words of thumbs."""

from __future__ import annotations

import pytest

from bot.dialogue.reading.texting_spanish import in_full
from tests.dialogue.player import Player


@pytest.mark.parametrize(
    ("typed", "full"),
    [
        ("q llevo?", "que llevo?"),
        ("x la izq se asoma una ramita", "por la izquierda se asoma una ramita"),
        ("q valores pongo pa q salga sedosa", "que valores pongo para que salga sedosa"),
        ("un 12-40 y un nd x favor", "un 12-40 y un nd por favor"),
        ("6x4 y f/8", "6x4 y f/8"),
        ("1/8 s, ISO 100", "1/8 s, ISO 100"),
        ("jajaja", "jajaja"),
    ],
)
def test_short_words_are_read_in_full(typed: str, full: str) -> None:
    """Numbers, signs and what has no short words stay."""
    assert in_full(typed) == full


def test_a_plan_in_short_words() -> None:
    """What to take along is answered, in the language that was asked for."""
    said = Player().say("hola, en español xfa. maniana voy a una cascada de 9 m. q llevo?")[0].body
    assert said.startswith("Cuatro paños secos")
