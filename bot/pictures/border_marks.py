"""Things at the borders of a frame: brackets open to the border, with ? where Linn asks."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PIL import ImageDraw

from bot.dialogue.texts.borders import spoken_of
from bot.pictures.outlines import BLACK, GAP, PLATE, WHITE, Rectangle, draw_letter, line_width
from core.frame.findings import Border, BorderFinding

#: Side of a plate over that of an area's letter (own rule: the bracket is what is looked at).
_PLATE: Final = 0.6


def draw_borders(
    draw: ImageDraw.ImageDraw, borders: Sequence[BorderFinding], width: int, height: int
) -> None:
    """Draw a bracket around each thing that is spoken of.

    Args:
        draw: the drawing, at least `width` by `height` [px].
        borders: as the check found them, the surest first.
        width: of the frame [px].
        height: of the frame [px].
    """
    for finding in spoken_of(borders):
        place = place_of(finding, width, height)
        _bracket(draw, place, finding.border, line_width(max(width, height)))
        if not finding.stated:
            draw_letter(draw, "?", _plate(place, finding.border, width, height))


def place_of(finding: BorderFinding, width: int, height: int) -> Rectangle:
    """Where a thing lies on a frame of that size, with a margin, held in the frame [px]."""
    margin = round(max(width, height) * GAP)
    lying = finding.border in {Border.TOP, Border.BOTTOM}
    along, across = (width, height) if lying else (height, width)
    low = round((finding.position - finding.width / 2) * along) - margin
    high = round((finding.position + finding.width / 2) * along) + margin
    deep = round(finding.depth * min(width, height)) + margin
    first, last = (
        (0, deep) if finding.border in {Border.TOP, Border.LEFT} else (across - deep, across)
    )
    whole = Rectangle(low, first, high, last) if lying else Rectangle(first, low, last, high)
    return whole.held_in(width, height)


def _bracket(draw: ImageDraw.ImageDraw, place: Rectangle, border: Border, line: int) -> None:
    """Three sides of a rectangle in a black and a white line; the border is the fourth."""
    left, top, right, bottom = place.left, place.top, place.right - 1, place.bottom - 1
    corners = {
        Border.TOP: ((left, top), (left, bottom), (right, bottom), (right, top)),
        Border.BOTTOM: ((left, bottom), (left, top), (right, top), (right, bottom)),
        Border.LEFT: ((left, top), (right, top), (right, bottom), (left, bottom)),
        Border.RIGHT: ((right, top), (left, top), (left, bottom), (right, bottom)),
    }[border]
    draw.line(corners, fill=BLACK, width=3 * line, joint="curve")
    draw.line(corners, fill=WHITE, width=line, joint="curve")


def _plate(place: Rectangle, border: Border, width: int, height: int) -> Rectangle:
    """Beside the bracket's inner side, in the frame."""
    side = max(8, round(max(width, height) * PLATE * _PLATE))
    middle = ((place.left + place.right - side) // 2, (place.top + place.bottom - side) // 2)
    left, top = {
        Border.TOP: (middle[0], place.bottom),
        Border.BOTTOM: (middle[0], place.top - side),
        Border.LEFT: (place.right, middle[1]),
        Border.RIGHT: (place.left - side, middle[1]),
    }[border]
    left = min(max(left, 0), max(width - side, 0))
    top = min(max(top, 0), max(height - side, 0))
    return Rectangle(left, top, left + side, top + side)
