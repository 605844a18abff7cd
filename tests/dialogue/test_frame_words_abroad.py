"""What German and Spanish texts about frames offer to be typed is what Linn reads there."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final

import pytest

from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.frame_words import Wished, wished
from bot.dialogue.texts import TEXTS, speaking
from bot.dialogue.texts.commands import command_word
from bot.dialogue.texts.english import IN_ENGLISH

_ABOUT_FRAMES: Final = ("together.", "compared.", "average.", "drawn.", "water.", "frame.leaf")
_OFFERED: Final = re.compile(r"`([^`]+)`")


def _offered(language: str) -> Iterator[tuple[str, str, str]]:
    for key in (key for key in IN_ENGLISH if key.startswith(_ABOUT_FRAMES)):
        with speaking(language):
            there = _OFFERED.findall(TEXTS[key])
        yield from (
            (key, one, other)
            for one, other in zip(_OFFERED.findall(TEXTS[key]), there, strict=True)
        )


@pytest.mark.parametrize("language", ["de", "es"])
def test_what_is_offered_is_read(language: str) -> None:
    """Each example means what the English one means."""
    for key, english, other in _offered(language):
        if command_word(english) is not None:
            assert command_word(other) == command_word(english), key
        elif wished(english) is not None:
            assert wished(glossed(other, language)) == wished(english), key
        else:
            assert read(glossed(other, language)) == read(english), key


@pytest.mark.parametrize(
    ("language", "text", "times_s"),
    [
        ("de", "wie 1/8 s und 1/2 s", (1 / 8, 1 / 2)),
        ("de", "Zeichne es wie 2 Sekunden", (2.0,)),
        ("es", "dibuja 1/8 s y 1/2 s", (1 / 8, 1 / 2)),
        ("es", "dibújala a 2 segundos", (2.0,)),
        ("en", "draw it at 1/4 s", (1 / 4,)),
    ],
)
def test_times_to_be_drawn(language: str, text: str, times_s: tuple[float, ...]) -> None:
    """Several at once, and in seconds."""
    said = text if language == "en" else glossed(text, language)
    assert wished(said) == Wished("illustrate", times_s=times_s)


@pytest.mark.parametrize(
    ("language", "text"), [("de", "das Wasser ist in c3"), ("es", "el agua está en c3")]
)
def test_cells_in_a_sentence(language: str, text: str) -> None:
    """Where the water is, as one says it."""
    assert wished(glossed(text, language)) == Wished("cells", cells=("C3",))


@pytest.mark.parametrize(("language", "text"), [("de", "wie viel 1/4 s"), ("es", "como 1/4 s")])
def test_what_is_no_wish(language: str, text: str) -> None:
    """A question, and a time that is only about so long."""
    assert wished(glossed(text, language)) is None
