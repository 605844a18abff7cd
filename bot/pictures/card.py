"""Cards: large black text on white, to be saved on the phone before the signal goes."""

from __future__ import annotations

import io
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final, Protocol

from PIL import Image, ImageDraw

from bot.pictures.lettering import line_height, wrap, write

#: Width of a card [px]: the width of current phone screens (from memory), three pixels a point.
WIDTH_PX: Final = 1080
#: A card is at least this tall [px], the 3 : 4 at which clients show portrait pictures whole.
LEAST_HEIGHT_PX: Final = 1440
#: Text is made smaller rather than the card taller than this [px] (a phone screen is about
#: 1 : 2); only when the smallest text is reached does a card grow beyond, and scrolls.
MOST_HEIGHT_PX: Final = 2160
MARGIN_PX: Final = 48
BLACK: Final = 0
#: Labels are grey at 7 : 1 or more against white (WCAG 2.2, 1.4.6).
GREY: Final = 70
#: Value text heights that are tried, largest first [px]. At arm's length (0.6 m) on a screen
#: 68 mm wide, 64 px is 4 mm tall type, twice what print asks at reading distance (own rule).
VALUE_SIZES: Final = (120, 108, 96, 84, 74, 64)


class Line(Protocol):
    """A short label above a large value."""

    @property
    def label(self) -> str:
        """What the value is; may be empty."""

    @property
    def value(self) -> str:
        """What to do, set or know."""


@dataclass(frozen=True)
class _Row:
    """One printed line: its text, size [px], stroke [px], grey level and space above [px]."""

    text: str
    size: int
    weight: int = 0
    ink: int = BLACK
    above: int = 0
    ruled: bool = False

    @property
    def height(self) -> int:
        return self.above + line_height(self.size)


def draw_card(title: str, lines: Sequence[Line], footer: str = "") -> bytes:
    """Draw a card in black on white, with the largest text that fits one screen.

    Args:
        title: what the card is for; in large letters at the top.
        lines: labels and values, from top to bottom; ten fit one screen, more make it taller.
        footer: a last line in small text, such as when and for what light it was made.

    Returns:
        A PNG without metadata, 1080 px wide and at least 1440 px tall. Long text is wrapped;
        nothing is left out.
    """
    rows = _largest_rows(title, lines, footer)
    height = max(LEAST_HEIGHT_PX, _height(rows))
    card = Image.new("L", (WIDTH_PX, height), 255)
    draw = ImageDraw.Draw(card)
    top = MARGIN_PX
    for row in rows:
        if row.ruled:
            rule = top + row.above // 2
            draw.line((MARGIN_PX, rule, WIDTH_PX - MARGIN_PX, rule), fill=BLACK, width=4)
        write(
            draw,
            (MARGIN_PX, top + row.above),
            row.text,
            row.size,
            fill=row.ink,
            weight=row.weight,
        )
        top += row.height
    return _encoded(card)


def _height(rows: Sequence[_Row]) -> int:
    return sum(row.height for row in rows) + 2 * MARGIN_PX


def _largest_rows(title: str, lines: Sequence[Line], footer: str) -> list[_Row]:
    """All lines of the card, at the largest size at which it is no taller than a screen."""
    rows: list[_Row] = []
    for size in VALUE_SIZES:
        rows = _rows(title, lines, footer, size)
        if _height(rows) <= MOST_HEIGHT_PX:
            break
    return rows


def _rows(title: str, lines: Sequence[Line], footer: str, size: int) -> list[_Row]:
    """All lines of the card with values of that size [px]."""
    title_size = max(size * 3 // 4, 60)
    rows = _block(title, _Row("", title_size, weight=2))
    for line in lines:
        first = _Row("", max(size // 2, 40), ink=GREY, above=size // 2, ruled=True)
        label = _block(line.label, first) if line.label.strip() else []
        value_row = _Row("", size, weight=1) if label else _Row("", size, 1, BLACK, size // 2, True)
        rows += [*label, *_block(line.value, value_row)]
    last = _Row("", max(size // 2 - 8, 36), ink=GREY, above=size // 2, ruled=True)
    return rows + (_block(footer, last) if footer.strip() else [])


def _block(text: str, first: _Row) -> list[_Row]:
    """The wrapped lines of one text; what stands above comes once."""
    width = WIDTH_PX - 2 * MARGIN_PX - 2 * first.weight
    lines = wrap(text, first.size, width, first.weight)
    rest = [_Row(line, first.size, first.weight, first.ink) for line in lines[1:]]
    return [
        _Row(lines[0], first.size, first.weight, first.ink, first.above, first.ruled),
        *rest,
    ]


def _encoded(card: Image.Image) -> bytes:
    file = io.BytesIO()
    card.save(file, "PNG")
    return file.getvalue()
