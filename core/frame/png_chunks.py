"""PNG files: whether one is whole, by the check sums of its chunks."""

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


def png_is_whole(data: bytes) -> bool:
    """Whether every chunk that a picture needs is there, with its check sum, to the last one.

    Source: W3C, Portable Network Graphics, 3rd ed., sections 5.3 to 5.5; from memory.

    Args:
        data: a file that begins with a PNG's signature.
    """
    at = _SIGNATURE_BYTES
    view = memoryview(data)
    while at + _HEAD.size + _SUM.size <= len(data):
        length, name = _HEAD.unpack_from(data, at)
        end = at + _HEAD.size + length
        if end + _SUM.size > len(data):
            return False
        needed = not name[0] & _ANCILLARY
        if needed and zlib.crc32(view[at + 4 : end]) != _SUM.unpack_from(data, end)[0]:
            return False
        if name == b"IEND":
            return True
        at = end + _SUM.size
    return False
