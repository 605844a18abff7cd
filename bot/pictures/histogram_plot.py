"""Three histograms, one above the other, each named in words, with the clipped share."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

import numpy as np
from numpy.typing import NDArray
from PIL import ImageDraw

from bot.dialogue.texts import TEXTS, measures
from bot.pictures.lettering import text_width, write
from bot.pictures.outlines import Rectangle
from core.frame.histogram import code_counts

CHANNELS: Final = ("red", "green", "blue")
INK: Final = (0, 0, 0)
#: Grey that keeps a contrast of 7 : 1 on white (WCAG 2.2, 1.4.6): #595959.
QUIET: Final = (89, 89, 89)
#: Pixels that are counted; the shape of a histogram needs no more (own rule).
COUNTED_PIXELS: Final = 500_000
#: Values that may stand higher than the plot (own rule).
SPIKES: Final = 3


def counts(pixels: NDArray[np.uint8]) -> NDArray[np.float64]:
    """Share of the pixels at each value, from a sample evenly spread over the frame.

    Single pixels are taken, never averages: averaging hides clipped ones.

    Args:
        pixels: shape (H, W, 3), RGB.

    Returns:
        Shape (3, 256), each row adds up to 1.
    """
    height, width = pixels.shape[:2]
    step = max(1, int((height * width / COUNTED_PIXELS) ** 0.5))
    sample = pixels[::step, ::step]
    planes = [np.ascontiguousarray(sample[..., channel]) for channel in range(3)]
    found = np.stack([code_counts(plane) for plane in planes]).astype(np.float64)
    return np.asarray(found / found.sum(axis=1, keepdims=True), dtype=np.float64)


def percent(share: float) -> str:
    """A share of 0 to 1 as a short percentage; what is there never reads as nothing."""
    if share <= 0:
        number = "0"
    elif share < 0.0005:
        number = f"< {measures.fixed(0.1)}"
    else:
        number = measures.fixed(share * 100) if share < 0.0995 else measures.plain(share * 100, 0)
    return TEXTS["amount.percent"].format(number=number)


def draw_histograms(
    draw: ImageDraw.ImageDraw,
    place: Rectangle,
    shares: NDArray[np.float64],
    clipped: Mapping[str, float],
    size: int,
) -> None:
    """Draw red, green and blue from top to bottom into `place`.

    Args:
        draw: the drawing; `place` is expected to be white.
        place: where [px].
        shares: shape (3, 256), as `counts` gives.
        clipped: share of the frame clipped in each channel, 0 to 1; a channel that is not
            named counts as 0.
        size: of the text [px].
    """
    height = (place.bottom - place.top) // len(CHANNELS)
    for index, channel in enumerate(CHANNELS):
        top = place.top + index * height
        plot = Rectangle(place.left, top, place.right, top + height - size // 2)
        _one(draw, plot, shares[index], (channel, clipped.get(channel, 0.0)), size)


def _one(
    draw: ImageDraw.ImageDraw,
    place: Rectangle,
    shares: NDArray[np.float64],
    named: tuple[str, float],
    size: int,
) -> None:
    """One plot: text, bars on a base line, an edge on the right, thicker where light clips."""
    name, clipped = named
    weight = max(1, size // 40)
    write(draw, (place.left, place.top), TEXTS[name], size, fill=INK, weight=weight)
    note = TEXTS["picture.clipped"].format(share=percent(clipped))
    write(
        draw,
        (place.right - text_width(note, size) - weight, place.top),
        note,
        size,
        fill=INK if clipped > 0 else QUIET,
        weight=weight if clipped > 0 else 0,
    )
    plot = Rectangle(place.left, place.top + round(size * 1.3), place.right, place.bottom)
    _bars(draw, plot, shares)
    line = max(2, size // 12)
    draw.line((plot.left, plot.bottom, plot.right, plot.bottom), fill=INK, width=line)
    edge = plot.right - (3 if clipped > 0 else 1) * line
    draw.rectangle((edge, plot.top, plot.right, plot.bottom), fill=INK)


def _bars(draw: ImageDraw.ImageDraw, plot: Rectangle, shares: NDArray[np.float64]) -> None:
    """The filled curve, scaled so that a pile-up at an end or a few spikes hide none of it."""
    top_share = max(float(np.sort(shares[1:-1])[-SPIKES - 1]), 1e-9)
    heights = np.minimum(shares / top_share, 1.0) * (plot.bottom - plot.top)
    columns = np.linspace(plot.left, plot.right, shares.size + 1)
    points: list[tuple[float, float]] = [(plot.left, plot.bottom)]
    for left, right, height in zip(columns[:-1], columns[1:], heights, strict=True):
        points += [(left, plot.bottom - height), (right, plot.bottom - height)]
    draw.polygon([*points, (plot.right, plot.bottom)], fill=QUIET)
