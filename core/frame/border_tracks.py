"""How far what stands out at a border goes on inwards, and where its edges are."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray

from core.frame.border_lines import Places
from core.frame.border_sides import Floats, Side

#: A step inwards over the short side, or over the width where that is more. Own rules.
_STEP: Final = 0.008
_STEP_OF_WIDTH: Final = 0.5
#: A track ends where twice in a row less than this part of the first contrast is left.
_LEFT: Final = 0.4
_GAPS: Final = 2
#: Leanings that are tried at each step, beside the last one [px along per px inwards].
_TURNS: Final = np.array([-1.0, -0.5, 0.0, 0.5, 1.0], np.float32)
_STEEPEST: Final = 2.5
#: How much of a new leaning is believed. Own rule.
_BELIEF: Final = 0.4
#: The border is looked at so far in for the edges of a thing, over its width.
_EDGE_DEPTH: Final = 0.4
#: Cells over 1.5 widths to each side of the middle in which edges are looked for.
_CELLS: Final = 31
#: An edge is where half of the step is left.
_EDGE: Final = 0.5


@dataclass(frozen=True)
class Tracks:
    """Of n places: `length` inwards [px], `contrast` along it over that at the border, `bend`.

    `low` and `high` are the edges along the border [px], `sharp` the steepest part of the duller
    edge over the step, `lift` the profile's cells over the step, shape (n, cells).
    """

    length: Floats
    contrast: Floats
    bend: Floats
    low: Floats
    high: Floats
    sharp: Floats
    lift: Floats


def tracks_of(side: Side, places: Places) -> Tracks:
    """Follow places inwards and find their edges.

    Args:
        side: where they are.
        places: at least one.
    """
    length, contrast, bend = _followed(side, places)
    low, high, sharp, lift = _edges(side, places)
    return Tracks(length, contrast, bend, low, high, sharp, lift)


def _followed(side: Side, places: Places) -> tuple[Floats, Floats, Floats]:
    """Length [px], mean contrast over the first one, and how much the leaning changes."""
    stride = np.maximum(_STEP * side.short_px, _STEP_OF_WIDTH * places.width)
    stride = np.maximum(np.rint(stride), 2).astype(np.intp)
    at: NDArray[Any] = places.at.astype(np.float32)
    lean: NDArray[Any] = places.slope.copy()
    first = np.maximum(
        _contrasts(side, places, np.zeros_like(stride), stride, at[:, None])[:, 0], 1
    )
    depth, gaps = np.zeros_like(stride), np.zeros(len(at), np.intp)
    length, total, bend = (np.zeros(len(at), np.float32) for _ in range(3))
    steps = np.zeros(len(at), np.float32)
    while (going := (gaps < _GAPS) & (depth < side.reach_px)).any():
        leans = np.clip(lean[:, None] + _TURNS, -_STEEPEST, _STEEPEST)
        tried = at[:, None] + leans * stride[:, None]
        seen = _contrasts(side, places, depth, stride, tried) - 0.5 * np.abs(_TURNS)
        best = np.argmax(seen, axis=1)[:, None]
        height = np.take_along_axis(seen, best, 1)[:, 0]
        good = going & (height >= _LEFT * first)
        turn = np.where(good, np.take_along_axis(leans, best, 1)[:, 0] - lean, 0)
        at = np.where(good, np.take_along_axis(tried, best, 1)[:, 0], at + lean * stride)
        lean = lean + np.float32(_BELIEF) * turn
        depth = depth + np.where(going, stride, 0)
        gaps = np.where(good, 0, gaps + 1)
        length = np.where(good, depth, length)
        total, bend, steps = (
            total + np.where(good, height / first, 0), bend + np.abs(turn), steps + good
        )  # fmt: skip
    taken = np.maximum(steps, 1)
    contrast = np.asarray(total / taken, np.float32)
    return length.astype(np.float32), contrast, np.asarray(bend / taken, np.float32)


def _contrasts(
    side: Side,
    places: Places,
    depth: NDArray[np.intp],
    stride: NDArray[np.intp],
    at: NDArray[np.floating],
) -> Floats:
    """Contrast to the more alike flank around positions of shape (n, m), along `places.way`."""
    width = places.width[:, None]
    low = np.rint(at - width / 2).astype(np.intp)
    high = low + width
    gap, flank = np.maximum(width // 3, 1), np.maximum(width, 4)
    starts = np.stack([low, low - gap - flank, high + gap], -1)
    ends = np.stack([high, low - gap, high + gap + flank], -1)
    rows = np.broadcast_to(depth[:, None, None], starts.shape)
    colours, parts = side.means((rows, rows + stride[:, None, None]), (starts, ends))
    along = np.einsum("nmfc,nc->nmf", colours, places.way)
    missing = parts[..., 1:] < 0.5
    steps = np.where(missing, np.inf, along[..., :1] - along[..., 1:])
    nearest = steps.min(axis=-1)
    usable = np.isfinite(nearest) & (parts[..., 0] >= 0.5)
    return np.where(usable, nearest, 0).astype(np.float32)


def _edges(side: Side, places: Places) -> tuple[Floats, Floats, Floats, Floats]:
    """Edges along the border, the steepness of the duller one, and the profile."""
    cell = np.maximum(3 * places.width / _CELLS, 1.0)[:, None]
    middle = places.at[:, None] + 0.5
    offsets = np.arange(_CELLS) - _CELLS // 2
    starts = np.rint(middle + (offsets - 0.5) * cell).astype(np.intp)
    ends = np.maximum(np.rint(middle + (offsets + 0.5) * cell).astype(np.intp), starts + 1)
    deep = np.maximum(3, np.rint(_EDGE_DEPTH * places.width)).astype(np.intp)[:, None]
    rows = np.zeros_like(starts)
    colours, parts = side.means((rows, rows + deep), (starts, ends))
    along = np.einsum("nmc,nc->nm", colours, places.way)
    inside = parts > 0.5
    ground = np.where(inside, along, np.inf).min(axis=1)[:, None]
    peak = _CELLS // 2
    lift = np.where(inside, along - ground, 0) / np.maximum(
        (along - ground)[:, peak : peak + 1], 1e-3
    )
    below = (lift < _EDGE) & inside | ~inside
    left = peak - np.argmax(below[:, peak::-1] | (offsets[peak::-1] == offsets[0]), axis=1)
    right = peak + np.argmax(below[:, peak:] | (offsets[peak:] == offsets[-1]), axis=1)
    low = places.at + 0.5 + (offsets[left] + 0.5) * cell[:, 0]
    high = places.at + 0.5 + (offsets[right] - 0.5) * cell[:, 0]
    slopes = np.abs(np.diff(np.where(inside, lift, np.nan), axis=1))
    slopes = np.nan_to_num(slopes)
    dull = np.minimum(slopes[:, :peak].max(axis=1), slopes[:, peak:].max(axis=1))
    long = np.float32(side.length_px)
    low = np.clip(np.minimum(low, places.at), 0, long)
    high = np.clip(np.maximum(high, places.at + 1), 0, long)
    return (
        low.astype(np.float32), high.astype(np.float32), dull.astype(np.float32),
        np.clip(lift, 0, 3).astype(np.float32),
    )  # fmt: skip
