"""Columns of a strip of rows that are looked at, laid side by side as one small picture."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

#: Columns that are looked at or left out together, a multiple of all blocks. Own rule: with 16 it
#: takes as long (measured).
PLACE_COLUMNS: Final = 32


@dataclass(frozen=True)
class Stretches:
    """Stretches of the columns of a strip: first and end of each, from left to right.

    They begin at multiples of `PLACE_COLUMNS` and end there or at the border. With what lies next
    to them, `margin_px` to each side, they are worked on as one picture: for each of a few hundred
    small ones the calls took longer than the work (measured). What lies at a border of the frame
    lies at the same border of that picture, so that what is beyond is taken alike.
    """

    sides: Sequence[tuple[int, int]]
    width: int
    margin_px: int

    @classmethod
    def around(cls, columns: NDArray[np.bool_], margin_px: int) -> Stretches:
        """All places that lie within the margin of a column; columns have shape (width,)."""
        width = len(columns)
        reached = np.zeros(-(-width // PLACE_COLUMNS) + 2, np.bool_)  # one more at each end
        found = np.flatnonzero(columns)
        for side in (-margin_px, margin_px):
            reached[1 + (found + side) // PLACE_COLUMNS] = True
        reached[[0, -1]] = False
        edges = np.minimum(np.flatnonzero(np.diff(reached)) * PLACE_COLUMNS, width).tolist()
        return cls(list(zip(edges[::2], edges[1::2], strict=True)), width, margin_px)

    def with_margins(self, strip: NDArray[np.uint8]) -> NDArray[np.uint8]:
        """Their columns and those of their margins, side by side.

        Args:
            strip: shape (h, width) or (h, width, 3).
        """
        return self._joined(strip, [
            slice(max(first - self.margin_px, 0), end + self.margin_px)
            for first, end in self.sides
        ])  # fmt: skip

    def of(self, strip: NDArray[np.uint8]) -> NDArray[np.uint8]:
        """Their columns, side by side; arguments as in `with_margins`."""
        return self._joined(strip, [slice(*side) for side in self.sides])

    def without_margins(self, joined: NDArray[np.uint8]) -> NDArray[np.uint8]:
        """What `with_margins` has laid side by side, without the margins."""
        inner, at = [], 0
        for first, end in self.sides:
            at += min(first, self.margin_px)
            inner.append(slice(at, at + end - first))
            at += end - first + min(self.width - end, self.margin_px)
        return self._joined(joined, inner)

    def spread(self, joined: NDArray[np.uint8], strip: NDArray[np.uint8], halvings: int) -> None:
        """Lay into a smaller copy's strip what was made smaller as often of `of` or its like."""
        at = 0
        for first, end in self.sides:
            small = slice(first >> halvings, end >> halvings)
            strip[:, small] = joined[:, at : at + small.stop - small.start]
            at += small.stop - small.start

    def _joined(self, strip: NDArray[np.uint8], columns: Sequence[slice]) -> NDArray[np.uint8]:
        whole = self.sides == [(0, self.width)]
        return strip if whole else np.concatenate([strip[:, part] for part in columns], axis=1)
