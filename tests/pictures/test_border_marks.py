"""Brackets at the borders of a frame: where they are drawn, and what they leave alone."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from PIL import Image, ImageDraw

from bot.pictures.border_marks import draw_borders, place_of
from core.frame.findings import Border, BorderFinding, BorderKind

WIDTH, HEIGHT = 600, 400
GREY = (120, 120, 120)
STICK = BorderFinding(Border.LEFT, BorderKind.LINE, 0.5, 0.05, 0.2, True, 0.9, True)


def drawn(*borders: BorderFinding) -> np.ndarray:
    """What is drawn on a grey frame, shape (h, w): where it is no longer grey."""
    canvas = Image.new("RGB", (WIDTH, HEIGHT), GREY)
    draw_borders(ImageDraw.Draw(canvas), borders, WIDTH, HEIGHT)
    return np.asarray((np.asarray(canvas) != GREY).any(axis=2))


@pytest.mark.parametrize("border", list(Border))
@pytest.mark.parametrize("stated", [True, False])
def test_a_bracket_stands_at_its_border(border: Border, stated: bool) -> None:
    """The marks lie in the half of the frame at the border, and the thing itself stays free."""
    mark = drawn(replace(STICK, border=border, stated=stated))
    rows, columns = np.nonzero(mark)
    nearest = {
        Border.LEFT: columns.min(), Border.RIGHT: WIDTH - 1 - columns.max(),
        Border.TOP: rows.min(), Border.BOTTOM: HEIGHT - 1 - rows.max(),
    }[border]  # fmt: skip
    assert nearest <= 2
    middle = {
        Border.LEFT: (200, 40), Border.RIGHT: (200, 560), Border.TOP: (40, 300),
        Border.BOTTOM: (360, 300),
    }[border]  # fmt: skip
    assert not mark[middle]
    assert mark.mean() < 0.05


def test_what_is_asked_has_a_letter_more() -> None:
    """A question mark stands beside what Linn asks about."""
    assert drawn(replace(STICK, stated=False)).sum() > drawn(STICK).sum()


def test_only_what_is_spoken_of_is_marked() -> None:
    """Two stated things and two asked ones at most."""
    many = [replace(STICK, position=place) for place in (0.1, 0.3, 0.5, 0.7, 0.9)]
    assert (drawn(*many) == drawn(*many[:2])).all()
    unsure = [replace(one, stated=False) for one in many]
    assert (drawn(*unsure) == drawn(*unsure[:2])).all()
    assert not drawn().any()


def test_a_place_is_held_in_the_frame() -> None:
    """A thing in the corner keeps its bracket within the frame."""
    place = place_of(replace(STICK, position=0.0, depth=2.0), WIDTH, HEIGHT)
    assert (place.left, place.top) == (0, 0)
    assert place.right <= WIDTH
    assert place.bottom <= HEIGHT
