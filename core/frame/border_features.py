"""Numbers of what stands out at the borders, by which things are told from what is usual there."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

import numpy as np
from numpy.typing import NDArray

from core.frame.border_bodies import FEATURES as BODY_FEATURES
from core.frame.border_bodies import body_features
from core.frame.border_lines import Places
from core.frame.border_sides import Floats, Side
from core.frame.border_tracks import Tracks

#: What each column is; sizes are over the short side.
FEATURES: Final = (
    "salience", "step", "width", "slope", "flanks over step", "track", "contrast along",
    "bend", "sharp edge", "step over spread outside", "texture of flanks", "texture inside",
    "unlike inside", "rank on side", "rank in frame", "number on side", "lightness", "chroma",
    "from the end", "alone", "alike at side", "alike in frame", "part of lightness",
    "track over width", "real width", *BODY_FEATURES,
)  # fmt: skip
#: Widths to each side in which the spread of what is usual is taken.
_STEPS_OUT: Final = np.array([-6, -5, -4, -3, -2, 2, 3, 4, 5, 6])
#: Colours nearer than this are alike [CIE dE]. Own rule.
_ALIKE: Final = 12.0
#: Places along a side by which its own colours are known.
_ALONG: Final = 60


def line_features(
    sides: Sequence[Side], places: Sequence[Places], tracks: Sequence[Tracks]
) -> Floats:
    """Numbers of the places of all sides, one row each in their order.

    Args:
        sides: of one frame.
        places: of each.
        tracks: of each.

    Returns:
        Shape (n, features).
    """
    together = list(zip(sides, places, tracks, strict=True))
    found = np.concatenate([_of_side(*one) for one in together])
    rank = np.argsort(np.argsort(-found[:, 0], kind="stable"), kind="stable")
    found[:, FEATURES.index("rank in frame")] = rank
    bodies = np.concatenate([body_features(*one) for one in together])
    return np.concatenate([found, bodies], axis=1)


def _of_side(side: Side, places: Places, tracks: Tracks) -> Floats:
    short = side.short_px
    deep = np.maximum(3, places.width // 2)
    zero = np.zeros_like(deep)
    half = places.width // 2
    middle, _ = side.means((zero, zero + deep), (places.at - half, places.at + half + 1))
    spread, flank_texture = _outside(side, places, deep)
    texture = side.spreads((zero, zero + deep), (places.at - half, places.at + half + 1))
    core = tracks.lift[:, tracks.lift.shape[1] // 2 - 4 : tracks.lift.shape[1] // 2 + 5]
    end = np.minimum(places.at, side.length_px - 1 - places.at)
    count = len(places)
    along, everywhere = _alike(side, middle)
    columns = (
        places.salience, places.step, np.log(places.width / short), np.abs(places.slope),
        np.minimum(places.flanks / places.step, 10), tracks.length / short, tracks.contrast,
        tracks.bend, tracks.sharp, places.step / (spread + 3), places.step / (flank_texture + 2),
        texture / (flank_texture + 2), core.std(axis=1), np.arange(count), np.zeros(count),
        np.full(count, count), middle[:, 0], np.hypot(middle[:, 1], middle[:, 2]),
        np.minimum(end / short, 0.25), places.alone, along, everywhere, places.way[:, 0],
        np.minimum(tracks.length / places.width, 20),
        np.log(np.maximum(tracks.high - tracks.low, 1) / short),
    )  # fmt: skip
    return np.stack(columns, axis=1).astype(np.float32).reshape(count, len(columns))


def _outside(side: Side, places: Places, deep: NDArray[np.intp]) -> tuple[Floats, Floats]:
    """Spread of the colours around each place [CIE dE], and texture of its flanks [L*]."""
    size = np.maximum(places.width, round(0.01 * side.short_px))[:, None]
    start = places.at[:, None] + _STEPS_OUT * size - size // 2
    rows = np.zeros_like(start)
    band = (rows, rows + deep[:, None])
    colours, parts = side.means(band, (start, start + size))
    inside = (parts > 0.5)[..., None]
    count = np.maximum(inside.sum(axis=1), 1)
    mean = np.where(inside, colours, 0).sum(axis=1) / count
    away = np.where(inside, colours - mean[:, None], 0)
    spread = np.sqrt((away**2).sum(axis=(1, 2)) / count[:, 0])
    near = np.abs(_STEPS_OUT) == 2
    texture = side.spreads(band, (start, start + size))
    shown = inside[:, near, 0]
    flank = np.where(shown, texture[:, near], 0).sum(axis=1) / np.maximum(shown.sum(axis=1), 1)
    return spread.astype(np.float32), flank.astype(np.float32)


def _alike(side: Side, colours: Floats) -> tuple[Floats, Floats]:
    """Part of the side, and of the whole frame, that is of about the same colour."""
    edges = np.linspace(0, side.length_px, _ALONG + 1).astype(np.intp)
    rows = np.zeros(_ALONG, np.intp)
    band, _ = side.means((rows, rows + max(3, side.short_px // 50)), (edges[:-1], edges[1:]))
    parts = [
        (np.linalg.norm(colours[:, None] - others, axis=-1) < _ALIKE).mean(axis=1)
        for others in (band, side.canvas.places)
    ]
    return parts[0].astype(np.float32), parts[1].astype(np.float32)
