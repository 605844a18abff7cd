"""What pictures show at their borders by themselves, judged by eye before anything was told."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from functools import lru_cache
from pathlib import Path
from typing import Any, Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.border_sides import turned
from core.frame.findings import Border, BorderFinding, BorderKind
from tests.training.backdrops import Backdrop
from tests.training.pictures import light_of

#: A border, and from where to where along it something enters, 0 to 1.
Span = tuple[Border, float, float]

#: Corners of things in the pictures held out, (x, y) over width and height, and spans along the
#: borders of pictures from outside. Drawn and read off on the clean pictures, under a grid of
#: tenths or between ticks. A thing in itself counts that a border may cut: a post, a bough, a
#: wheel, a roof, a stripe of a flag, a stone in the grass. What repeats all over does not (grass,
#: ripples, gravel, rows of windows and pillars, the lines of paper), nor do sky, shadows, layers
#: of hills or the water itself.
_OUTLINES: Final = Path(__file__).with_name("own_things.json")
_SPANS: Final = Path(__file__).with_name("own_spans.json")
#: A span that takes more of a border is of the picture, not at its border. Own rule.
_MOST: Final = 0.3
#: Rows that count as the border, over the short side.
_TOUCH: Final = 0.006
#: How well corners are read off, over a side; a statement is about a thing if its width is within
#: this factor of the thing's, beside that. Own rules.
_NEAR: Final = 0.012
_FACTOR: Final = 3.0
#: A busy side has as many things at least.
_BUSY: Final = 2


def spans_outside(name: str) -> list[Span]:
    """What enters a picture from outside, by its path in the folder."""
    return [
        (Border(border), low, high)
        for border, spans in _read(_SPANS).get(name, {}).items()
        for low, high in spans
        if high - low <= _MOST
    ]


def spans_held_out(name: str, backdrop: Backdrop) -> list[Span]:
    """What the borders of a piece of a picture held out cut, and no white lies over."""
    if backdrop.piece is None:
        return []
    size = light_of(name).shape[1::-1]
    spans = []
    for outline in _read(_OUTLINES).get(name, {}).values():
        mask = np.zeros(size[::-1], np.uint8)
        cv2.fillPoly(mask, [np.round(np.array(outline) * size).astype(np.int32)], 1)
        piece = backdrop.piece.of(mask)
        large = cv2.resize(piece, backdrop.white.shape[::-1], interpolation=cv2.INTER_NEAREST)
        spans += list(_cut((large > 0) & ~backdrop.white))
    return spans


def _cut(thing: NDArray[np.bool_]) -> Iterator[Span]:
    """From where to where each border cuts a thing."""
    touch = max(2, round(_TOUCH * min(thing.shape)))
    for border in Border:
        rows: NDArray[np.bool_] = np.asarray(turned(thing, border)[:touch].any(axis=0))
        edges = np.flatnonzero(np.diff(np.concatenate([[0], rows.astype(np.int8), [0]])))
        for low, high in (edges.reshape(-1, 2) / len(rows)).tolist():
            if high - low <= _MOST:
                yield border, low, high


def is_told(spans: Iterable[Span], finding: BorderFinding) -> bool:
    """Whether a finding is about one of these things; a busy side about some of them."""
    there = [(low, high) for border, low, high in spans if border is finding.border]
    first = finding.position - finding.width / 2
    last = finding.position + finding.width / 2
    if finding.kind is BorderKind.BUSY:
        return sum(first <= (low + high) / 2 <= last for low, high in there) >= _BUSY
    return any(_fits(first, last, low, high) for low, high in there)


def _fits(first: float, last: float, low: float, high: float) -> bool:
    """Whether a finding from `first` to `last` is a thing from `low` to `high`."""
    told, true = last - first, high - low
    apart = abs((first + last) / 2 - (low + high) / 2)
    alike = true <= _FACTOR * (told + _NEAR) and told <= _FACTOR * (true + _NEAR)
    return (
        alike
        and first < high + _NEAR
        and last > low - _NEAR
        and apart <= max(told, true) / 2 + _NEAR
    )


@lru_cache(maxsize=2)
def _read(path: Path) -> dict[str, Any]:
    return dict(json.loads(path.read_text("utf-8")))
