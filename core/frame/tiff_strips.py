"""TIFF files: whether the strips or tiles of a picture are there, and enough of them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

# Tags. Source: TIFF 6.0, sections 3, 8 and 15.
_WIDTH: Final = 256
_HEIGHT: Final = 257
_BITS: Final = 258
_COMPRESSION: Final = 259
_STRIPS: Final = 273
_SAMPLES: Final = 277
_ROWS_PER_STRIP: Final = 278
_STRIP_LENGTHS: Final = 279
_PLANES: Final = 284
_TILE_WIDTH: Final = 322
_TILE_HEIGHT: Final = 323
_TILES: Final = 324
_TILE_LENGTHS: Final = 325

_NOT_COMPRESSED: Final = 1
_SEPARATE_PLANES: Final = 2
_EIGHT_BITS: Final = 8


def strips_are_there(tags: Mapping[int, object], file_bytes: int) -> bool:
    """Whether there are as many strips or tiles as the size asks for, all within the file.

    A reader may leave what is missing black and call it a picture.

    Args:
        tags: of the directory, number to value.
        file_bytes: length of the file.
    """
    tiled = _TILES in tags
    starts = _several(tags, _TILES if tiled else _STRIPS)
    lengths = _several(tags, _TILE_LENGTHS if tiled else _STRIP_LENGTHS)
    if len(starts) < (_tiles(tags) if tiled else _strips(tags)):
        return False
    # A file may leave out the lengths; the reader counts then.
    if any(start + length > file_bytes for start, length in zip(starts, lengths, strict=False)):
        return False
    plain = _one(tags, _COMPRESSION, _NOT_COMPRESSED) == _NOT_COMPRESSED
    return not (plain and lengths) or sum(lengths) >= _plain_bytes(tags)


def in_wide_planes(tags: Mapping[int, object]) -> bool:
    """Whether each channel lies in a plane of its own with more than 8 bits a sample.

    The reader takes such planes for 8 bits, and makes another picture of them.
    """
    apart = _one(tags, _PLANES, 1) == _SEPARATE_PLANES and _one(tags, _SAMPLES, 1) > 1
    return apart and any(bits > _EIGHT_BITS for bits in _several(tags, _BITS))


def _strips(tags: Mapping[int, object]) -> int:
    height = _one(tags, _HEIGHT, 0)
    rows = min(max(_one(tags, _ROWS_PER_STRIP, height), 1), max(height, 1))
    return _planes(tags) * -(-height // rows)


def _tiles(tags: Mapping[int, object]) -> int:
    across = -(-_one(tags, _WIDTH, 0) // max(_one(tags, _TILE_WIDTH, 1), 1))
    down = -(-_one(tags, _HEIGHT, 0) // max(_one(tags, _TILE_HEIGHT, 1), 1))
    return _planes(tags) * across * down


def _planes(tags: Mapping[int, object]) -> int:
    separate = _one(tags, _PLANES, 1) == _SEPARATE_PLANES
    return _one(tags, _SAMPLES, 1) if separate else 1


def _plain_bytes(tags: Mapping[int, object]) -> int:
    """Bytes of the pixels when nothing is compressed; rows end on whole bytes."""
    bits = _several(tags, _BITS) or (1,)
    samples = _one(tags, _SAMPLES, 1)
    row_bits = _one(tags, _WIDTH, 0) * (sum(bits) if len(bits) == samples else bits[0] * samples)
    return _one(tags, _HEIGHT, 0) * (row_bits // 8)  # a little less for odd rows: no false alarm


def _several(tags: Mapping[int, object], tag: int) -> tuple[int, ...]:
    value = tags.get(tag, ())
    values = value if isinstance(value, tuple) else (value,)
    return tuple(number for number in values if isinstance(number, int))


def _one(tags: Mapping[int, object], tag: int, otherwise: int) -> int:
    return next(iter(_several(tags, tag)), otherwise)
