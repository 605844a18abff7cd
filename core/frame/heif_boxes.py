"""HEIF files: whether all that one says it holds is there, and whether its picture lacks tiles."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

#: Side of the squares that are looked at for missing tiles [px]; no tile is smaller (64 is the
#: largest block of HEVC, and the least that its writers make tiles of; from memory).
_SQUARE_PX: Final = 64
#: A missing tile has codes of zero in all three planes, which no colour has: they come out as a
#: green of about this code, by whichever of the usual matrices (computed: 0.344 and 0.714 of 128
#: with BT.601, 0.187 and 0.468 with BT.709, 0.165 and 0.571 with BT.2020), without red and blue.
_NO_TILE_GREEN: Final = (70, 160)
#: Most boxes or places of items that are read. libheif's own limit is 1000 items of 32 extents
#: (from memory).
_MOST: Final = 32_000


@dataclass(frozen=True)
class _Box:
    """A box: its name, and where its body lies in the file."""

    name: bytes
    start: int
    end: int


class _CutOffError(Exception):
    """Something is stated and not there."""


def heif_is_whole(data: bytes) -> bool:
    """Whether every box ends within the file, and every item's data do.

    The usual reader leaves out tiles that are cut off and calls the rest a picture.
    Source: ISO/IEC 14496-12, sections 4.2 and 8.11.3 (`iloc`); from memory.

    Args:
        data: a file whose first box is `ftyp`.
    """
    try:
        for box in _boxes(data, 0, len(data)):
            if box.name == b"meta":
                _check_places(data, box)
    except _CutOffError:
        return False
    return True


def _boxes(data: bytes, at: int, end: int) -> Iterator[_Box]:
    """The boxes between two places, in order.

    Raises:
        _CutOffError: one reaches beyond.
    """
    for _ in range(_MOST):
        if at >= end:
            return
        size, head = int.from_bytes(data[at : at + 4], "big"), 8
        if size == 1:  # a size of eight bytes follows the name
            size, head = int.from_bytes(data[at + 8 : at + 16], "big"), 16
        elif size == 0:  # to the end
            size = end - at
        if size < head or at + size > end:
            raise _CutOffError
        yield _Box(data[at + 4 : at + 8], at + head, at + size)
        at += size
    raise _CutOffError


def _check_places(data: bytes, meta: _Box) -> None:
    for box in _boxes(data, meta.start + 4, meta.end):  # behind version and flags
        if box.name == b"iloc":
            for start, length in _places(data, box):
                if start + length > len(data):
                    raise _CutOffError


class _Reader:
    """Numbers one after the other out of a box's body."""

    def __init__(self, data: bytes, box: _Box) -> None:
        self._data = data
        self._at = box.start
        self._end = box.end

    def number(self, size: int) -> int:
        """The next whole number of so many bytes; 0 for none.

        Raises:
            _CutOffError: the box ends before.
        """
        end = self._at + size
        if end > self._end:
            raise _CutOffError
        value = int.from_bytes(self._data[self._at : end], "big")
        self._at = end
        return value


def _places(data: bytes, box: _Box) -> Iterator[tuple[int, int]]:
    """Start and length of each piece of an item that lies in this file by its place there."""
    reader = _Reader(data, box)
    version = reader.number(4) >> 24
    sizes = reader.number(2)
    offset_size, length_size, base_size = sizes >> 12, sizes >> 8 & 15, sizes >> 4 & 15
    index_size = sizes & 15 if version in (1, 2) else 0
    left = _MOST
    for _ in range(reader.number(4 if version == 2 else 2)):
        reader.number(4 if version == 2 else 2)  # its id
        method = reader.number(2) & 15 if version in (1, 2) else 0
        elsewhere = reader.number(2) != 0 or method != 0  # in another file, box or item
        base = reader.number(base_size)
        for _ in range(reader.number(2)):
            left -= 1
            if left < 0:
                raise _CutOffError
            reader.number(index_size)
            start, length = base + reader.number(offset_size), reader.number(length_size)
            if not elsewhere:
                yield start, length


def lacks_tiles(pixels: NDArray[np.uint8]) -> bool:
    """Whether squares of a decoded picture hold the colour of a tile that could not be read.

    Args:
        pixels: shape (H, W, 3), red, green, blue, not scaled.
    """
    low, high = _NO_TILE_GREEN
    seen = pixels[:: _SQUARE_PX // 2, :: _SQUARE_PX // 2]
    empty = (
        (seen[..., 0] == 0) & (seen[..., 2] == 0) & (seen[..., 1] >= low) & (seen[..., 1] <= high)
    )
    for row, column in np.argwhere(empty):
        top, left = row * _SQUARE_PX // 2, column * _SQUARE_PX // 2
        square = pixels[top : top + _SQUARE_PX, left : left + _SQUARE_PX]
        if (square == pixels[top, left]).all():
            return True
    return False
