"""Clipped areas on a frame: double outlines that show on any ground, and their letters."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray
from PIL import Image, ImageDraw

from bot.pictures.lettering import font
from core.frame.report import AreaKind, Box, ClippedArea

BLACK: Final = (0, 0, 0)
WHITE: Final = (255, 255, 255)
#: Line widths and gaps as shares of the frame's long side (own rule; looked at on a screen of
#: 390 points width: two lines of 1.5 points each).
LINE: Final = 1 / 240
#: An outline keeps this far from the pixels that it marks, so as not to hide them.
GAP: Final = 1 / 100
#: Height of a letter's plate (own rule: 25 points where the frame is 390 points wide).
PLATE: Final = 1 / 13


@dataclass(frozen=True)
class Rectangle:
    """Pixels from `left`, `top` up to and without `right`, `bottom`."""

    left: int
    top: int
    right: int
    bottom: int

    def overlap(self, other: Rectangle) -> int:
        """Pixels in both."""
        wide = min(self.right, other.right) - max(self.left, other.left)
        high = min(self.bottom, other.bottom) - max(self.top, other.top)
        return max(wide, 0) * max(high, 0)

    def grown(self, by: int) -> Rectangle:
        """The same with `by` pixels more on each side."""
        return Rectangle(self.left - by, self.top - by, self.right + by, self.bottom + by)

    def held_in(self, width: int, height: int) -> Rectangle:
        """What of it lies inside a picture of that size."""
        return Rectangle(
            max(self.left, 0), max(self.top, 0), min(self.right, width), min(self.bottom, height)
        )


def line_width(long_side: int) -> int:
    """Width of one of the two lines [px] for a frame of that long side [px]."""
    return max(2, round(long_side * LINE))


def outline_of(box: Box, width: int, height: int) -> Rectangle:
    """Where the outline's outer edge runs on a frame of that size [px]."""
    long_side = max(width, height)
    margin = round(long_side * GAP) + 2 * line_width(long_side)
    area = Rectangle(
        int(box.left * width),
        int(box.top * height),
        -int(-(box.left + box.width) * width // 1),
        -int(-(box.top + box.height) * height // 1),
    )
    return area.grown(margin).held_in(width, height)


def plates(outlines: Sequence[Rectangle], width: int, height: int) -> list[Rectangle]:
    """Where the letters go, one for each outline, inside the frame and clear of one another.

    A letter stands outside its outline if there is room, else inside in a corner; the first
    place that hides nothing is taken, or the one that hides least.
    """
    side = max(8, min(round(max(width, height) * PLATE), min(width, height) // 2))
    taken: list[Rectangle] = []
    for outline in outlines:
        others = [*(one for one in outlines if one is not outline), *taken]
        near = _places(outline, side, width, height)
        best = min(near, key=lambda place: _hidden(place, outline, others, taken))
        if any(best.overlap(letter) for letter in taken):  # crowded: the nearest free place
            free = [
                place
                for place in _grid(side, width, height)
                if not any(place.overlap(letter) for letter in taken)
            ]
            best = min(free, key=lambda place: _distance(place, outline), default=best)
        taken.append(best)
    return taken


def _grid(side: int, width: int, height: int) -> list[Rectangle]:
    """Places for a letter all over the frame, a quarter of a letter apart."""
    margin, step = side // 8, max(side // 4, 1)
    return [
        Rectangle(left, top, left + side, top + side)
        for top in range(margin, height - side - margin + 1, step)
        for left in range(margin, width - side - margin + 1, step)
    ]


def _distance(place: Rectangle, outline: Rectangle) -> int:
    """From the middle of a place to the middle of an outline, squared [px]; twice each way."""
    across = place.left + place.right - outline.left - outline.right
    down = place.top + place.bottom - outline.top - outline.bottom
    return across * across + down * down


def _hidden(
    place: Rectangle, own: Rectangle, others: Iterable[Rectangle], letters: Iterable[Rectangle]
) -> int:
    """Cost of a place: two letters on each other are worst, its own area is cheapest."""
    letters_cost = 1000 * sum(place.overlap(letter) for letter in letters)
    return letters_cost + 2 * sum(place.overlap(one) for one in others) + place.overlap(own)


def _places(outline: Rectangle, side: int, width: int, height: int) -> list[Rectangle]:
    """Places for a letter around and in an outline, all inside the frame with a margin."""
    near = 2  # px between the outline and the plate
    rows = (outline.top - side - near, outline.top, outline.bottom - side, outline.bottom + near)
    columns = (
        outline.left,
        outline.right - side,
        outline.left - side - near,
        outline.right + near,
    )
    margin = side // 8
    corners = [(column, row) for row in rows for column in columns]
    held = [
        (
            min(max(left, margin), max(width - side - margin, 0)),
            min(max(top, margin), max(height - side - margin, 0)),
        )
        for left, top in corners
    ]
    return [Rectangle(left, top, left + side, top + side) for left, top in held]


def draw_areas(
    draw: ImageDraw.ImageDraw, areas: Sequence[ClippedArea], width: int, height: int
) -> None:
    """Outline the areas and write their letters on a frame at the drawing's top left.

    Args:
        draw: the drawing, at least `width` by `height` [px].
        areas: what is marked; sparkle gets dots along its outline in place of a line, since
            its box holds many points and much that is not clipped.
        width: of the frame [px].
        height: of the frame [px].
    """
    outlines = [outline_of(area.box, width, height) for area in areas]
    line = line_width(max(width, height))
    for area, outline in zip(areas, outlines, strict=True):
        if area.kind is AreaKind.SPARKLE:
            _dotted(draw, outline, line)
        elif len(area.contour) > 2:
            _ring(draw, area.contour, width, height)
        else:
            _double_line(draw, outline, line)
    for area, plate in zip(areas, plates(outlines, width, height), strict=True):
        draw_letter(draw, area.letter, plate)


def _double_line(draw: ImageDraw.ImageDraw, outline: Rectangle, line: int) -> None:
    for step, colour in ((0, BLACK), (line, WHITE)):
        inner = outline.grown(-step)
        if inner.right > inner.left and inner.bottom > inner.top:
            edges = (inner.left, inner.top, inner.right - 1, inner.bottom - 1)
            draw.rectangle(edges, outline=colour, width=line)


def _ring(
    draw: ImageDraw.ImageDraw, contour: Sequence[tuple[float, float]], width: int, height: int
) -> None:
    """A black and a white line round an area, at the same distance from it all along.

    Where the area leaves the frame, the lines run along the border.
    """
    line = line_width(max(width, height))
    outer = round(max(width, height) * GAP) + 2 * line
    area = np.zeros((height, width), np.uint8)
    corners = np.array(contour) * (width, height)
    cv2.fillPoly(area, [np.round(corners).astype(np.int32)], 255)
    cv2.polylines(area, [np.round(corners).astype(np.int32)], True, 255)
    around = (_distance_to(area) <= outer).astype(np.uint8)
    framed = np.pad(1 - around, 1, constant_values=1)
    inwards = _distance_to(framed)[1:-1, 1:-1]
    for first, last, colour in ((0, line, BLACK), (line, 2 * line, WHITE)):
        inked = (inwards > first) & (inwards <= last)
        draw.bitmap((0, 0), Image.fromarray(inked.astype(np.uint8) * 255), fill=colour)


def _distance_to(area: NDArray[np.uint8]) -> NDArray[np.float32]:
    """Distance of each pixel from the nearest one that is not 0 [px]."""
    away = (area == 0).astype(np.uint8)
    return np.asarray(cv2.distanceTransform(away, cv2.DIST_L2, 5), np.float32)


def _dotted(draw: ImageDraw.ImageDraw, outline: Rectangle, line: int) -> None:
    """White dots with a black ring along the outline."""
    radius = 2 * line
    inner = outline.grown(-radius)
    for across, down in _along(inner, 8 * line):
        ring = (across - radius, down - radius, across + radius, down + radius)
        draw.ellipse(ring, fill=WHITE, outline=BLACK, width=line)


def _along(edge: Rectangle, distance: int) -> list[tuple[int, int]]:
    """Points on the four sides, about `distance` apart, the corners among them."""
    columns = _spread(edge.left, edge.right, distance)
    rows = _spread(edge.top, edge.bottom, distance)
    sides = [(column, row) for column in columns for row in (edge.top, edge.bottom)]
    return sides + [(column, row) for row in rows[1:-1] for column in (edge.left, edge.right)]


def _spread(first: int, last: int, distance: int) -> list[int]:
    gaps = max(1, round((last - first) / distance))
    return [round(first + (last - first) * step / gaps) for step in range(gaps + 1)]


def draw_letter(draw: ImageDraw.ImageDraw, letter: str, plate: Rectangle) -> None:
    """A white letter on a black plate with a white rim."""
    side = plate.right - plate.left
    edges = (plate.left, plate.top, plate.right - 1, plate.bottom - 1)
    draw.rectangle(edges, fill=BLACK, outline=WHITE, width=max(2, side // 24))
    middle = (plate.left + side / 2, plate.top + side / 2)
    size = max(1, round(side * 0.8 if len(letter) == 1 else side * 0.5))
    draw.text(middle, letter, fill=WHITE, font=font(size), anchor="mm", stroke_width=1)
