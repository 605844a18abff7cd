"""JPEG files: whether one is whole, its pixels with nothing made up, and its quality."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from contextlib import suppress
from typing import Final

import numpy as np
import simplejpeg
from numpy.typing import NDArray

from core.errors import FrameFault, UnreadableFrameError

# Marks of a JPEG. Source: ITU-T T.81 table B.1.
_END: Final = 0xD9
_START_OF_SCAN: Final = 0xDA
_PROGRESSIVE_FRAMES: Final = frozenset({0xC2, 0xC6, 0xCA, 0xCE})
#: The next mark with a segment, or the end mark: inside a scan 0xFF00 is a code, and restart
#: marks belong to the scan.
_NEXT_MARK: Final = re.compile(rb"\xff([^\x00\x01\xd0-\xd7\xff])")
#: Two bytes of a mark.
_MARK_BYTES: Final = 2

#: More scans than this only keep a reader busy: the usual progression has 10, the finest that
#: optimisers write has under 70 (from memory). Own rule.
_MOST_SCANS: Final = 100
#: Coefficients of a block. Source: T.81 A.3.3.
_COEFFICIENTS: Final = 64

#: What the strict reader refuses and what is no damage: headers that it warns of, and ways to
#: sample colour that it does not know.
_NO_DAMAGE: Final = re.compile(
    "unknown JFIF revision|Unknown Adobe color transform|bad ICC marker|subsampling"
)
_TOO_MUCH_AT_THE_END: Final = "extraneous bytes before marker 0xd9"
#: Bytes of zeros with which the codes of a picture may end. Own rule.
_MOST_ZERO_CODES: Final = 3
_NO_MEMORY: Final = re.compile("insufficient memory|memory allocation", re.IGNORECASE)
#: Part of the last row that has one colour, from which on it may be made up. Own rule.
_BLANK_FOOT: Final = 0.9
#: Sum of the luminance quantisation table at quality 50. Source: ITU-T T.81 annex K, table K.1.
_QUALITY_50_SUM: Final = 3688


class NotJudgedError(Exception):
    """The strict reader cannot read this file, and says nothing of damage; another reader may."""


def whole_jpeg(data: bytes) -> bytes:
    """A JPEG up to its own end mark.

    Steps over segments and through scans, so that a preview inside a segment, or another picture
    behind this one, does not pass for it.

    Args:
        data: a file that begins with a JPEG's start mark.

    Raises:
        UnreadableFrameError: DAMAGED: it breaks off, a progressive one lacks scans, or it has so
            many that they serve only to keep a reader busy.
    """
    progress = _Progress()
    scans = 0
    try:
        for mark, header, end in _segments(data):
            if mark in _PROGRESSIVE_FRAMES:
                progress.begin(header)
            elif mark == _START_OF_SCAN:
                progress.add(header)
                scans += 1
            elif mark == _END and 0 < scans <= _MOST_SCANS and progress.complete:
                return data[:end]
    except (IndexError, KeyError, ValueError) as error:
        raise UnreadableFrameError(FrameFault.DAMAGED) from error
    raise UnreadableFrameError(FrameFault.DAMAGED)


def _segments(data: bytes) -> Iterator[tuple[int, bytes, int]]:
    """Mark, header and end of each segment; the end mark is the last, without a header."""
    at = _MARK_BYTES
    while match := _NEXT_MARK.search(data, at):
        mark, at = match[1][0], match.end()
        if mark == _END:
            yield mark, b"", at
            return
        length = int.from_bytes(data[at : at + 2], "big")
        yield mark, data[at : at + length], at + length
        at += max(length, 2)  # a length counts itself


class _Progress:
    """Which bits of which coefficients the scans of a progressive JPEG have brought."""

    def __init__(self) -> None:
        #: Component to the lowest bit of each coefficient; -1 before its first scan.
        self._lowest: dict[int, list[int]] = {}

    def begin(self, header: bytes) -> None:
        """Take the components from a frame header (T.81 B.2.2)."""
        for number in header[8::3][: header[7]]:
            self._lowest[number] = [-1] * _COEFFICIENTS

    def add(self, header: bytes) -> None:
        """Take what a scan header promises (T.81 B.2.3)."""
        if not self._lowest:
            return
        count = header[2]
        first, last, bits = header[3 + 2 * count : 6 + 2 * count]
        for number in header[3 : 3 + 2 * count : 2]:
            for at in range(first, min(last + 1, _COEFFICIENTS)):
                self._lowest[number][at] = bits & 0x0F

    @property
    def complete(self) -> bool:
        """Whether every coefficient is there to its last bit."""
        return not any(any(lowest) for lowest in self._lowest.values())


def jpeg_pixels(
    data: bytes, *, cmyk: bool = False, at_least: tuple[int, int] = (0, 0)
) -> NDArray[np.uint8]:
    """The pixels of a whole JPEG, with nothing made up.

    Other readers paint what is missing grey, or in the last colour, and call it a picture.

    Args:
        data: from `whole_jpeg`.
        cmyk: four channels, as stored, for a file that has four.
        at_least: width and height [px]; the picture is decoded at the smallest scale that gives
            them. (0, 0): at its own size.

    Returns:
        Shape (H, W, 3), red, green, blue; or (H, W, 4).

    Raises:
        UnreadableFrameError: DAMAGED: a code is wrong, missing or too many.
        NotJudgedError: it is unusual in a way that is no damage.
        MemoryError: as it says.
    """
    space = "CMYK" if cmyk else "RGB"
    try:
        return _decoded(data, space, at_least)
    except ValueError as error:
        message = str(error)
        if message.endswith(_TOO_MUCH_AT_THE_END) and data[-3] == 0:
            return _unpadded(data, space, at_least)
        if _NO_MEMORY.search(message):
            raise MemoryError from error
        if _NO_DAMAGE.search(message):
            raise NotJudgedError from error
        raise UnreadableFrameError(FrameFault.DAMAGED) from error


def _unpadded(data: bytes, space: str, at_least: tuple[int, int]) -> NDArray[np.uint8]:
    """Pixels of a file with zeros before its end mark, of which the first may be codes."""
    codes = data[:-_MARK_BYTES].rstrip(b"\x00")
    for zeros in range(_MOST_ZERO_CODES + 1):
        with suppress(ValueError):
            return _decoded(codes + bytes(zeros) + b"\xff\xd9", space, at_least)
    raise UnreadableFrameError(FrameFault.DAMAGED)


def _decoded(data: bytes, space: str, at_least: tuple[int, int]) -> NDArray[np.uint8]:
    width, height = at_least
    pixels: NDArray[np.uint8] = simplejpeg.decode_jpeg(
        data, space, min_width=width, min_height=height, strict=True
    )
    return pixels


def check_foot(pixels: NDArray[np.uint8]) -> None:
    """Refuse a picture with hardly any detail in its last row: so a reader leaves what it lacks.

    Args:
        pixels: as stored, shape (H, W, 3).

    Raises:
        UnreadableFrameError: DAMAGED.
    """
    _, counts = np.unique(pixels[-1], axis=0, return_counts=True)
    if counts.max() >= _BLANK_FOOT * pixels.shape[1]:
        raise UnreadableFrameError(FrameFault.DAMAGED)


def standard_quality(tables: Mapping[int, list[int]]) -> int:
    """Quality of the standard luminance table that is as coarse as the file's first one.

    Source: the scaling of the Independent JPEG Group's library (from memory): a quality q from
    50 scales table K.1 by (200 - 2q) %, a lower one by 5000 / q %. Coarseness alone is compared,
    by the sum of the table, since makers have tables of their own.

    Returns:
        Quality, 1 to 100.
    """
    percent = 100 * sum(tables[min(tables)]) / _QUALITY_50_SUM
    quality = (200 - percent) / 2 if percent <= 100 else 5000 / percent
    return max(1, min(100, round(quality)))
