"""What clipped areas are by what a network of images sees in them: a straight fit."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Final

import numpy as np
from numpy.typing import NDArray

from core.frame.patches import Patches
from core.frame.sight import SEEN, seen_in

Floats = NDArray[np.float64]

#: What training writes; the tests tell how.
NUMBERS: Final = Path(__file__).with_name("sight_numbers.npz")


@dataclass(frozen=True)
class SightFit:
    """Weights of what is seen, shape (SEEN, kinds), and what is added for each kind."""

    weights: Floats
    added: Floats

    def of(self, sights: Floats) -> Floats:
        """How likely each kind is for each area, shape (n, kinds), of sights, shape (n, SEEN)."""
        scores = sights @ self.weights + self.added
        powers = np.exp(scores - scores.max(axis=1, keepdims=True))
        return np.asarray(powers / powers.sum(axis=1, keepdims=True))


def sights_of(colour: NDArray[np.uint8], body: Patches, chosen: NDArray[np.intp]) -> Floats:
    """What the network sees in each chosen area: means over the cells, as far as it fills them.

    Args:
        colour: of the frame's working copy, shape (h, w, 3).
        body: areas on it.
        chosen: labels of the areas that are asked for, shape (n,), at least one.

    Returns:
        Shape (n, SEEN).
    """
    seen = seen_in(colour)
    shares = _shares(body, chosen, seen.shape[1:])
    means = shares @ seen.reshape(SEEN, -1).T / np.maximum(shares.sum(axis=1, keepdims=True), 1e-6)
    return np.asarray(means, np.float64)


def _shares(body: Patches, chosen: NDArray[np.intp], shape: tuple[int, ...]) -> NDArray[np.float32]:
    """The part of each cell that each area takes, 0 to 1; shape (n, cells)."""
    high, wide = (_cells(*sides) for sides in zip(body.labels.shape, shape, strict=True))
    shares = np.empty((len(chosen), *shape), np.float32)
    for share, label in zip(shares, chosen.tolist(), strict=True):
        left, top, width, height = body.boxes[label].tolist()
        rows, columns = slice(top, top + height), slice(left, left + width)
        mask = (body.labels[rows, columns] == label).astype(np.float32)
        share[:] = high[:, rows] @ mask @ wide[:, columns].T
    return shares.reshape(len(chosen), -1)


def _cells(pixels: int, cells: int) -> NDArray[np.float32]:
    """How much of each cell along a side each of its pixels is; shape (cells, pixels)."""
    ends = np.linspace(0, pixels, cells + 1)
    inside = np.clip(ends[:, None] - np.arange(pixels), 0, 1)  # of each pixel, before each end
    return np.asarray(np.diff(inside, axis=0) * (cells / pixels), np.float32)


@lru_cache(maxsize=1)
def fitted() -> SightFit:
    """The fit that comes with the code."""
    with np.load(NUMBERS, allow_pickle=False) as arrays:
        weights, added = (arrays[name].astype(np.float64) for name in ("weights", "added"))
    return SightFit(weights, added)
