"""PNG files: whether one is whole, by the check sums of its chunks and the number of its rows."""

from __future__ import annotations

import struct
import zlib
from typing import Final

_SIGNATURE_BYTES: Final = 8
#: Length and name before a chunk's body, check sum behind it.
_HEAD: Final = struct.Struct(">I4s")
_SUM: Final = struct.Struct(">I")
#: Bit of a name's first letter that says that a reader may do without the chunk.
_ANCILLARY: Final = 0x20
#: Body of the header: width, height, depth, colour, compression, filter, interlace.
_HEADER: Final = struct.Struct(">IIBBBBB")


#: Channels of a pixel by colour type: grey, colour, palette, grey and colour with alpha.
_CHANNELS: Final = {0: 1, 2: 3, 3: 1, 4: 2, 6: 4}
#: Passes of an interlaced picture: first column and row, steps across and down.
_PASSES: Final = (
    (0, 0, 8, 8), (4, 0, 8, 8), (0, 4, 4, 8), (2, 0, 4, 4), (0, 2, 2, 4), (1, 0, 2, 2),
    (0, 1, 1, 2),
)  # fmt: skip
#: Pieces in which rows are unfolded, to be counted [bytes].
_PIECE_BYTES: Final = 1 << 20


def png_is_whole(data: bytes) -> bool:
    """Whether all that a picture needs is there: chunks with their check sums, and every row.

    A reader may leave missing rows black and call it a picture.
    Source: W3C, Portable Network Graphics, 3rd ed., sections 5.3 to 5.5, 7.2 and 8; from memory.

    Args:
        data: a file that begins with a PNG's signature.
    """
    view = memoryview(data)
    at, wanted, rows = _SIGNATURE_BYTES, 0, _Rows()
    while at + _HEAD.size + _SUM.size <= len(data):
        length, name = _HEAD.unpack_from(data, at)
        start, end = at + _HEAD.size, at + _HEAD.size + length
        if end + _SUM.size > len(data):
            return False
        needed = not name[0] & _ANCILLARY
        if needed and zlib.crc32(view[at + 4 : end]) != _SUM.unpack_from(data, end)[0]:
            return False
        if name == b"IHDR":
            wanted = _bytes_of_rows(data[start:end])
        elif name == b"IDAT":
            rows.add(view[start:end], wanted)
        elif name == b"IEND":
            return rows.bytes >= wanted > 0
        at = end + _SUM.size
    return False


class _Rows:
    """Counts the bytes of a picture's rows, without keeping them."""

    def __init__(self) -> None:
        self._unfold = zlib.decompressobj()
        self.bytes = 0

    def add(self, folded: memoryview, wanted: int) -> None:
        """Unfold a chunk, as far as the picture needs it."""
        rest: bytes | memoryview = folded
        try:
            while self.bytes < wanted and rest:
                self.bytes += len(self._unfold.decompress(rest, _PIECE_BYTES))
                rest = self._unfold.unconsumed_tail
        except zlib.error:
            self.bytes = -1 << 62  # damaged: no number of rows mends it


def _bytes_of_rows(header: bytes) -> int:
    """Bytes of all rows of a picture, each with its filter byte; 0 for a header that is none."""
    if len(header) != _HEADER.size:
        return 0
    width, height, depth, colour, _, _, interlaced = _HEADER.unpack(header)
    bits = depth * _CHANNELS.get(colour, 0)
    passes = _PASSES if interlaced else ((0, 0, 1, 1),)
    total = 0
    for left, top, across, down in passes:
        columns, lines = -(-(width - left) // across), -(-(height - top) // down)
        if columns > 0 and lines > 0:
            total += lines * (1 + -(-columns * bits // 8))
    return total
