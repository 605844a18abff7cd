"""Cards are black on white, large, whole, and fit a phone's screen."""

from __future__ import annotations

import io

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image

from bot.dialogue.actions import CardLine
from bot.pictures.card import (
    GREY,
    LEAST_HEIGHT_PX,
    MARGIN_PX,
    MOST_HEIGHT_PX,
    VALUE_SIZES,
    WIDTH_PX,
    _rows,
    draw_card,
)
from bot.pictures.lettering import plain

SETTINGS = [
    CardLine(label="f-number, time, ISO", value="f/11 · 1/4 s · ISO 100"),
    CardLine(label="Focal length", value="27 mm"),
    CardLine(label="Focus", value="2.3 m"),
    CardLine(label="Check", value="Does the main drop clip?"),
]


def opened(card: bytes) -> np.ndarray[tuple[int, ...], np.dtype[np.uint8]]:
    return np.asarray(Image.open(io.BytesIO(card)))


def contrast(grey: int) -> float:
    """Contrast of a grey on white. Source: WCAG 2.2, relative luminance and contrast ratio."""
    value = grey / 255
    linear = value / 12.92 if value <= 0.04045 else ((value + 0.055) / 1.055) ** 2.4
    return 1.05 / (linear + 0.05)


def test_size_and_kind() -> None:
    """A PNG of a phone's width, portrait, without metadata."""
    image = Image.open(io.BytesIO(draw_card("Start", SETTINGS, "For overcast")))
    assert image.format == "PNG"
    assert image.width == WIDTH_PX
    assert LEAST_HEIGHT_PX <= image.height <= MOST_HEIGHT_PX
    assert image.info == {}


def test_black_on_white() -> None:
    """Ground is white, values are black, and even the grey of labels stands 7 : 1."""
    card = opened(draw_card("Start", SETTINGS))
    assert (card == 255).mean() > 0.8
    assert (card == 0).mean() > 0.02
    assert contrast(GREY) > 7


def test_margins_stay_free() -> None:
    """No letter touches the border."""
    card = opened(draw_card("Ready for the " * 6, SETTINGS * 3, "until noon " * 20))
    border = MARGIN_PX - 8
    edges = [card[:border], card[-border:], card[:, :border].T, card[:, -border:].T]
    assert all((edge == 255).all() for edge in edges)


def test_few_lines_are_as_large_as_can_be() -> None:
    """Three short lines are written in the largest size; ten in one that fits a screen."""
    three = opened(draw_card("Ladder", [CardLine(label="a", value="1/4 s")] * 3))
    ten = opened(draw_card("Ladder", [CardLine(label="a", value="1/4 s")] * 10))
    assert three.shape[0] <= ten.shape[0] <= MOST_HEIGHT_PX


def test_more_than_a_screen_grows() -> None:
    """What does not fit at the smallest size makes the card taller; nothing is dropped."""
    long = opened(draw_card("All", [CardLine(label="a", value="value " * 20)] * 12))
    assert long.shape[0] > MOST_HEIGHT_PX


def test_empty_parts_are_left_out() -> None:
    """No label, no footer: no empty lines for them."""
    bare = _rows("Ladder", [CardLine(label="", value="1/4 s")], "", VALUE_SIZES[0])
    assert [row.text for row in bare] == ["Ladder", "1/4 s"]
    assert bare[1].ruled
    assert opened(draw_card("Only a title", [])).shape == (LEAST_HEIGHT_PX, WIDTH_PX)


texts = st.text(max_size=80)


@given(texts, st.lists(st.builds(CardLine, label=texts, value=texts), max_size=4), texts)
def test_every_word_is_on_the_card(title: str, lines: list[CardLine], footer: str) -> None:
    """All that was given is on some row, in order, at every size."""
    given_texts = [title, *(part for line in lines for part in (line.label, line.value)), footer]
    expected = "".join(plain(text) for text in given_texts if text.strip()).replace(" ", "")
    for size in (VALUE_SIZES[0], VALUE_SIZES[-1]):
        rows = _rows(title, lines, footer, size)
        assert "".join(row.text for row in rows).replace(" ", "") == expected


@settings(max_examples=8)
@given(st.text(max_size=200))
def test_any_value_is_drawn(value: str) -> None:
    """Whatever the person wrote, a card comes out."""
    card = opened(draw_card("Note", [CardLine(label="Note", value=value)], value))
    assert card.shape[1] == WIDTH_PX


@pytest.mark.parametrize("value", ["112", "f/11"])
def test_values_can_be_read_at_arms_length(value: str) -> None:
    """A short value's digits are at least 4 mm tall on a screen 68 mm wide (own rule)."""
    card = opened(draw_card("Call", [CardLine(label="", value=value)]))
    rows = np.flatnonzero((card[250:] < 128).any(axis=1))
    assert (rows[-1] - rows[0]) / WIDTH_PX * 68 > 4
