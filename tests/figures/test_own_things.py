"""Where borders cut what a picture shows by itself, and which statements are about it."""

from __future__ import annotations

import numpy as np
import pytest

from core.frame.findings import Border, BorderFinding, BorderKind
from tests.figures.own_things import is_told, spans_held_out, spans_outside
from tests.training.backdrops import Backdrop, Piece
from tests.training.pictures import light_of

#: The left leg of the right mast, at the top of the picture.
LEG = (0.874, 0.881)


def drawn(turns: int = 0, *, mirrored: bool = False, white: bool = False) -> Backdrop:
    """The whole picture of the rocket as a backdrop."""
    height, width = light_of("rocket.jpg").shape[:2]
    rows, columns = (height, width) if turns % 2 == 0 else (width, height)
    piece = Piece(turns, (0, 0, rows, columns), mirrored)
    light = np.zeros((2 * rows, 2 * columns, 3), np.float32)
    return Backdrop(light, piece, np.full(light.shape[:2], white, np.bool_))


@pytest.mark.parametrize(
    ("backdrop", "border", "low"),
    [
        (drawn(), Border.TOP, LEG[0]),
        (drawn(mirrored=True), Border.TOP, 1 - LEG[1]),
        (drawn(1), Border.LEFT, 1 - LEG[1]),
        (drawn(2), Border.BOTTOM, 1 - LEG[1]),
    ],
)
def test_things_turn_with_the_picture(backdrop: Backdrop, border: Border, low: float) -> None:
    """A leg of a mast is cut where it lies after turning and mirroring."""
    spans = spans_held_out("rocket.jpg", backdrop)
    width = LEG[1] - LEG[0]
    assert any(
        at is border and first == pytest.approx(low, abs=0.004)
        and last == pytest.approx(low + width, abs=0.004)
        for at, first, last in spans
    )  # fmt: skip


def test_what_white_lies_over_does_not_count() -> None:
    """Under laid white nothing is seen of a thing; noise and unknown pictures show nothing."""
    assert spans_held_out("rocket.jpg", drawn(white=True)) == []
    noise = Backdrop(np.zeros((9, 9, 3), np.float32), None, np.zeros((9, 9)) > 0)
    assert spans_held_out("noise", noise) == []
    assert spans_outside("water/elsewhere.jpg") == []


def finding(position: float, width: float, kind: BorderKind = BorderKind.LINE) -> BorderFinding:
    return BorderFinding(Border.TOP, kind, position, width, 0.1, True, 0.9, True)


@pytest.mark.parametrize(
    ("position", "width", "right"),
    [(0.25, 0.1, True), (0.25, 0.03, True), (0.25, 0.6, False), (0.25, 0.01, False),
     (0.5, 0.1, False)],
)  # fmt: skip
def test_a_statement_has_the_things_place_and_width(
    position: float, width: float, right: bool
) -> None:
    """At the thing, and no more than a few times as wide or as narrow."""
    spans = [(Border.TOP, 0.2, 0.3), (Border.LEFT, 0.4, 0.6)]
    assert is_told(spans, finding(position, width)) is right


def test_a_busy_side_has_several_things() -> None:
    """One thing does not make a side busy."""
    busy = finding(0.5, 0.8, BorderKind.BUSY)
    assert not is_told([(Border.TOP, 0.2, 0.3)], busy)
    assert is_told([(Border.TOP, 0.2, 0.3), (Border.TOP, 0.6, 0.61)], busy)


def test_pictures_from_outside_have_their_spans() -> None:
    """Spans are read by border; a span over much of a side is left out."""
    spans = spans_outside("camera/FujiFilm_FinePixS2Pro.jpg")
    assert (Border.TOP, 0.3, 0.36) in spans
    assert all(high - low <= 0.3 for _, low, high in spans)
