"""TIFF files: whether the strips or tiles of a picture are there."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

#: Tags with the places and lengths of strips, and of tiles. Source: TIFF 6.0, sections 3 and 15.
_PLACES: Final = ((273, 279), (324, 325))


def strips_are_there(tags: Mapping[int, object], file_bytes: int) -> bool:
    """Whether every strip and tile ends within the file.

    Args:
        tags: of the directory, number to value.
        file_bytes: length of the file.
    """
    return all(
        start + length <= file_bytes
        for starts, lengths in _PLACES
        # A file may leave out the lengths; the reader counts then.
        for start, length in zip(_several(tags, starts), _several(tags, lengths), strict=False)
    )


def _several(tags: Mapping[int, object], tag: int) -> tuple[int, ...]:
    value = tags.get(tag, ())
    values = value if isinstance(value, tuple) else (value,)
    return tuple(number for number in values if isinstance(number, int))
