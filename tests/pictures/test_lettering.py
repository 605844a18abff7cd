"""Text on pictures is drawable, wrapped, and never cut off."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image, ImageDraw

from bot.pictures.lettering import font, line_height, plain, text_width, wrap, write


@pytest.mark.parametrize(
    ("text", "drawn"),
    [
        ("f/11 · 1/4 s · ISO 100", "f/11 · 1/4 s · ISO 100"),
        ("8 °C ± 2", "8 °C ± 2"),
        ("2½ m, m²", "2½ m, m²"),
        ("3 × 4 – 5 −1 ≤ 0.4 → µ", "3 × 4 – 5 −1 ≤ 0.4 → µ"),
        ("ÄÖÜäöüß „ja“ ‚so‘", "ÄÖÜäöüß „ja“ ‚so‘"),
        ("ÁÉÍÓÚÑáéíóúüñ ¿qué? ¡no! «sí»", "ÁÉÍÓÚÑáéíóúüñ ¿qué? ¡no! «sí»"),
        ("Höllriß, Čertův, Łódź", "Höllriß, Čertův, Łódź"),
        ("Ho\u0308ll", "Höll"),
        ("ｍ㎜", "mmm"),
        ("line\nnext\u00a0one\ttab", "line next one tab"),
        ("a\u200bb\u0007", "ab"),
        ("水 fall", "? fall"),
        ("", ""),
    ],
)
def test_what_the_font_lacks_is_spelled(text: str, drawn: str) -> None:
    """What can be drawn stays, what is made of plain letters is spelled, the rest leaves a mark."""
    assert plain(text) == drawn


@given(st.text(max_size=60))
def test_plain_text_stays(text: str) -> None:
    """Spelling twice changes nothing, and no line breaks remain."""
    once = plain(text)
    assert plain(once) == once
    assert "\n" not in once


@given(st.text(max_size=120), st.integers(20, 60), st.integers(120, 500))
def test_wrapping_keeps_all_and_fits(text: str, size: int, width: int) -> None:
    """Every letter is in some line, in order, and no line is wider than asked."""
    lines = wrap(text, size, width, weight=1)
    assert "".join(lines).replace(" ", "") == plain(text).replace(" ", "")
    assert all(text_width(line, size, 1) <= width for line in lines)


@pytest.mark.parametrize(
    ("text", "lines"),
    [("", [""]), ("one", ["one"]), ("stand back from the lip", ["stand back", "from the lip"])],
)
def test_words_stay_whole_where_they_can(text: str, lines: list[str]) -> None:
    """Lines break between words (pins current behaviour: 30 px letters on 170 px)."""
    assert wrap(text, 30, 170) == lines


@pytest.mark.parametrize("text", ["Agjy|", "1/4 s", "WWW", "f/11"])
@pytest.mark.parametrize("weight", [0, 2])
def test_letters_stay_in_their_place(text: str, weight: int) -> None:
    """Ink stays within the width and the line height that were promised."""
    image = Image.new("L", (600, 200), 255)
    write(ImageDraw.Draw(image), (50, 50), text, 60, weight=weight)
    rows, columns = np.nonzero(np.asarray(image) < 128)
    assert columns.min() >= 50 - 2 - weight
    assert columns.max() <= 50 + text_width(text, 60, weight) + 2
    assert rows.min() >= 50 - weight
    assert rows.max() <= 50 + line_height(60)


@pytest.mark.parametrize("letters", ["ÄÖÜäöüß", "ÁÉÍÓÚÑáéíóúüñ¿¡"])
def test_letters_of_every_language_leave_ink_of_their_own(letters: str) -> None:
    """A letter with its accent is drawn with the accent, not as the box for a missing one."""
    drawn = {bytes(font(40).getmask(letter)) for letter in f"{letters}AOUaouEINein?!\uffff"}
    assert len(drawn) == len(set(f"{letters}AOUaouEINein?!\uffff"))


def test_every_fraction_is_drawn() -> None:
    """Fractions have a form of their own, so that "2½" never becomes "21/2"."""
    fractions = "¼½¾⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞"
    assert plain(fractions) == fractions


def test_items_of_a_list_stay_whole() -> None:
    """A line breaks between two items that fit it, within one only when it does not."""
    item = "1/30 s ISO 400"
    width = text_width(f"{item}, 1/15 s ISO", 30)
    assert wrap(f"{item}, 1/15 s ISO 200", 30, width) == [f"{item},", "1/15 s ISO 200"]
    assert len(wrap(item, 30, text_width("1/30 s", 30))) > 1
