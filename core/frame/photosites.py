"""Photosites in the memory of their decoder: one plane for each place of the pattern, in strips."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.pixels import halved, halvings_to

COLOURS: Final = ("red", "green", "blue")

#: Rows taken out of the pattern at a time [rows of a plane]: to be counted, and to be rendered.
#: Counting clears a table of codes for each strip, and both want to stay in the processor's cache
#: (measured). Multiples of what copies are halved by.
_ROWS_COUNTED: Final = 128
ROWS_RENDERED: Final = 64
#: Long side of the copies on which bodies are looked for and previews compared [px]. Own rule.
_SMALL_SIDE_PX: Final = 1600


@dataclass(frozen=True)
class Plane:
    """The photosites at one place of the pattern.

    `line` are the rows that have this place, with all places of their pattern side by side, shape
    (h, w, places); `at` is this one among them. Nothing is copied.
    """

    line: NDArray[np.uint16]
    at: int
    black: float

    @property
    def sites(self) -> NDArray[np.uint16]:
        """The codes, shape (h, w)."""
        return self.line[..., self.at]


Planes = Mapping[str, tuple[Plane, ...]]


@dataclass(frozen=True)
class Counted:
    """What one look at all photosites gives.

    `counts` say how often each code occurs among the photosites of each colour, shape (65536,);
    `small` are copies of the planes, averaged to a long side of about 1600 px by halving them
    `halvings` times.
    """

    counts: Mapping[str, NDArray[np.int64]]
    small: Mapping[str, tuple[NDArray[np.uint16], ...]]
    halvings: int


def count(planes: Planes) -> Counted:
    """Count the codes of each colour and average the planes down, in one pass.

    Args:
        planes: of each colour, all of one shape.
    """
    shape = planes[COLOURS[0]][0].sites.shape
    halvings = halvings_to(max(shape), _SMALL_SIDE_PX)
    counts = {colour: np.zeros(65536, np.int64) for colour in planes}
    # A table that ends where the codes do: tables of all codes took twice as long (measured).
    codes = 1 + max(int(line.max()) for line in _lines(planes).values())
    small = _memory(planes, [side >> halvings for side in shape])
    between = [
        np.empty((_ROWS_COUNTED >> step, shape[1] >> step), np.uint16)
        for step in range(1, halvings)
    ]
    for top, strip in strips(planes, _ROWS_COUNTED):
        for colour, several in strip.items():
            for sites, copy in zip(several, small[colour], strict=True):
                counts[colour][:codes] += _code_counts(sites, codes)
                _average(sites, between if halvings else None, copy[top >> halvings :])
    return Counted(counts, small, halvings)


def _memory(planes: Planes, shape: list[int]) -> dict[str, tuple[NDArray[np.uint16], ...]]:
    """Room for a copy of each plane, in one piece: numpy asks for large pages then (measured)."""
    number = sum(len(same) for same in planes.values())
    pieces = iter(np.empty((number, *shape), np.uint16))
    return {colour: tuple(next(pieces) for _ in same) for colour, same in planes.items()}


def _average(
    strip: NDArray[np.uint16],
    between: list[NDArray[np.uint16]] | None,
    into: NDArray[np.uint16],
) -> None:
    """A strip at its small size in the first rows of `into`; as it is where nothing is between."""
    if between is None:
        into[: len(strip)] = strip
        return
    for step in [*between, into]:
        strip = halved(strip, step)


def _code_counts(sites: NDArray[np.uint16], codes: int) -> NDArray[np.int64]:
    return cv2.calcHist([sites], [0], None, [codes], [0, codes]).ravel().astype(np.int64)


def _lines(planes: Planes) -> dict[int, NDArray[np.uint16]]:
    """The lines of all planes, each once, by their identities."""
    return {id(plane.line): plane.line for same in planes.values() for plane in same}


def strips(planes: Planes, rows: int) -> Iterator[tuple[int, dict[str, list[NDArray[np.uint16]]]]]:
    """The planes of each colour, so many rows at a time; their memory is used again for the next.

    All places of a line are split at once, five times as quick as one after the other (measured).

    Yields:
        The first row, and the codes of each plane there, shape (rows or fewer, w).
    """
    lines = _lines(planes)
    parts = {
        key: [np.empty((rows, line.shape[1]), np.uint16) for _ in range(line.shape[2])]
        for key, line in lines.items()
    }
    height = len(planes[COLOURS[0]][0].line)
    for top in range(0, height, rows):
        here = min(rows, height - top)
        for key, line in lines.items():
            cv2.split(line[top : top + here], [part[:here] for part in parts[key]])
        yield (
            top,
            {
                colour: [parts[id(plane.line)][plane.at][:here] for plane in same]
                for colour, same in planes.items()
            },
        )
