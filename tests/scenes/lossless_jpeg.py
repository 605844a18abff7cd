"""Photosites compressed without loss, as cameras store most raws: JPEG's lossless process."""

from __future__ import annotations

import heapq
import struct
from collections.abc import Sequence
from itertools import count
from typing import Final

import numpy as np
from numpy.typing import NDArray

#: Bits of a sample, and what the first one is foretold as. Source: ITU-T T.81, H.1.2.1.
_PRECISION: Final = 16
_FIRST: Final = 1 << (_PRECISION - 1)
#: Classes of differences, by their bits. Source: ITU-T T.81, table H.2.
_CLASSES: Final = 17
#: Powers of two by which a class may be rarer than all together. Own rule.
_RAREST: Final = 10
#: Bits of the words that codes are laid into.
_WORD: Final = 32


def lossless_jpeg(codes: NDArray[np.uint16]) -> bytes:
    """A file of two interleaved components: the even and the odd columns.

    A sample is foretold by its left neighbour (selection 1), the first of a row by the one above.

    Args:
        codes: shape (H, W), W even.
    """
    pairs = codes.reshape(len(codes), -1, 2).astype(np.int64)
    foretold = np.empty_like(pairs)
    foretold[:, 1:] = pairs[:, :-1]
    foretold[1:, 0] = pairs[:-1, 0]
    foretold[0, 0] = _FIRST
    # Modulo 2^16, from -32767 to 32768 (T.81, H.1.2.1).
    away = ((pairs - foretold + _FIRST - 1) % (2 * _FIRST) - (_FIRST - 1)).ravel()
    classes = np.frexp(np.abs(away).astype(np.float64))[1].astype(np.int64)
    lengths = _lengths(np.bincount(classes, minlength=_CLASSES))
    scan = _packed(away, classes, lengths).replace(b"\xff", b"\xff\x00")
    height, columns = pairs.shape[:2]
    frame = struct.pack(">BHHB6B", _PRECISION, height, columns, 2, 0, 0x11, 0, 1, 0x11, 0)
    order = sorted(range(_CLASSES), key=lambda one: (lengths[one], one))
    used = [one for one in order if lengths[one]]
    by_length = bytes(sum(lengths[one] == bits for one in used) for bits in range(1, 17))
    return b"".join(
        (
            b"\xff\xd8",
            _segment(0xC3, frame),
            _segment(0xC4, b"\x00" + by_length + bytes(used)),
            _segment(0xDA, bytes((2, 0, 0, 1, 0, 1, 0, 0))),
            scan,
            b"\xff\xd9",
        )
    )


def _segment(mark: int, content: bytes) -> bytes:
    return struct.pack(">BBH", 0xFF, mark, len(content) + 2) + content


def _lengths(counts: NDArray[np.int64]) -> list[int]:
    """Bits of the code of each class, 0 for what does not occur; the code of all ones stays free.

    Source: Huffman (1952); T.81, K.2 keeps a place free in the same way.
    """
    ties = count()
    least = int(counts.sum()) >> _RAREST  # or rare classes got more bits than a table may name
    heap = [(max(int(number), least), next(ties), [one])
            for one, number in enumerate(counts) if number]  # fmt: skip
    heap.append((0, next(ties), [_CLASSES]))
    heapq.heapify(heap)
    lengths = [0] * (_CLASSES + 1)
    while len(heap) > 1:
        (few, _, left), (more, _, right) = heapq.heappop(heap), heapq.heappop(heap)
        for one in left + right:
            lengths[one] += 1
        heapq.heappush(heap, (few + more, next(ties), left + right))
    return lengths[:_CLASSES]


def _codes(lengths: Sequence[int]) -> NDArray[np.int64]:
    """The code of each class: in order of length, then of the class (T.81, C.2)."""
    codes = np.zeros(_CLASSES, np.int64)
    code, before = 0, 0
    for one in sorted(range(_CLASSES), key=lambda one: (lengths[one], one)):
        if lengths[one]:
            code <<= lengths[one] - before
            codes[one], before = code, lengths[one]
            code += 1
    return codes


def _packed(away: NDArray[np.int64], classes: NDArray[np.int64], lengths: Sequence[int]) -> bytes:
    """Each difference as the code of its class and its bits, one after the other; ones fill up."""
    extra = np.where(classes == _PRECISION, 0, classes)  # 32768 needs no bits of its own
    bits = np.asarray(lengths)[classes] + extra
    low = np.where(away < 0, away - 1, away) & ((1 << extra) - 1)
    values = (_codes(lengths)[classes] << extra) | low
    ends = np.cumsum(bits)
    words, inside = np.divmod(ends - bits, _WORD)
    laid = values.astype(np.uint64) << (2 * _WORD - bits - inside).astype(np.uint64)
    total = int(ends[-1])
    length = total // _WORD + 2
    # Bits of different differences never meet, so sums are unions.
    high = np.bincount(words, (laid >> np.uint64(_WORD)).astype(np.float64), length)
    rest = np.bincount(words + 1, (laid & np.uint64(2**_WORD - 1)).astype(np.float64), length)
    stream = bytearray((high + rest).astype(">u4").tobytes()[: -(-total // 8)])
    if total % 8:
        stream[-1] |= (1 << (8 - total % 8)) - 1
    return bytes(stream)
