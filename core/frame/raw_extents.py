"""Whether all that a raw file's directories promise lies within the file."""

from __future__ import annotations

import io
import warnings
from collections.abc import Iterator
from typing import Final

from PIL.TiffImagePlugin import ImageFileDirectory_v2

from core.frame.tiff_strips import strips_are_there

# Tags. Source: TIFF 6.0 and TIFF/EP (ISO 12234-2); from memory.
_SUB_DIRECTORIES: Final = 330
_WIDTH: Final = 256
_DATA: Final = frozenset({273, 324})  # strips, tiles

#: More directories than this no camera writes. Own rule.
_MOST_DIRECTORIES: Final = 32
#: Length and name of a box [bytes].
_BOX_HEADER: Final = 8

#: Start of a file with lengths of its parts at fixed places: picture, directory, photosites as
#: pairs of start and length, from this byte on, big end first; from memory, and seen in files.
_PARTS_MARK: Final = b"FUJIFILMCCD-RAW"
_PARTS_AT: Final = 84
_PARTS: Final = 3


def raw_is_whole(data: bytes) -> bool:
    """Whether the parts of a raw file lie within it, as far as its kind says where they are.

    A decoder fills with zeros what is cut off, or with what was in its memory before.

    Args:
        data: the whole file.
    """
    if data.startswith(_PARTS_MARK):
        return _parts_are_there(data)
    if data[4:8] == b"ftyp":
        return _boxes_are_there(data)
    if data[:2] in (b"II", b"MM"):
        return _directories_are_there(data)
    return True


def _parts_are_there(data: bytes) -> bool:
    numbers = [
        int.from_bytes(data[at : at + 4], "big")
        for at in range(_PARTS_AT, _PARTS_AT + 8 * _PARTS, 4)
    ]
    return all(
        start + length <= len(data)
        for start, length in zip(numbers[::2], numbers[1::2], strict=True)
    )


def _boxes_are_there(data: bytes) -> bool:
    """Top-level boxes one after the other end where the file ends. Source: ISO/IEC 14496-12."""
    at = 0
    while at + _BOX_HEADER <= len(data):
        length = int.from_bytes(data[at : at + 4], "big")
        if length == 1:
            length = int.from_bytes(data[at + 8 : at + 16], "big")
        elif length == 0:
            return True
        if length < _BOX_HEADER:
            return False
        at += length
    return at == len(data)


def _directories_are_there(data: bytes) -> bool:
    for tags in _directories(data):
        has_pixels = _WIDTH in tags and _DATA.intersection(tags)
        if has_pixels and not strips_are_there(tags, len(data)):
            return False
    return True


def _directories(data: bytes) -> Iterator[dict[int, object]]:
    """All directories that can be read, sub-directories included, each once."""
    order = "little" if data[:2] == b"II" else "big"
    waiting = [int.from_bytes(data[4:8], order)]  # type: ignore[arg-type]
    seen: set[int] = set()
    while waiting and len(seen) < _MOST_DIRECTORIES:
        at = waiting.pop()
        if at in seen or not 8 <= at < len(data):
            continue
        seen.add(at)
        tags, after = _directory(data, at)
        yield tags
        below = tags.get(_SUB_DIRECTORIES, ())
        several = below if isinstance(below, tuple) else (below,)
        waiting += [one for one in several if isinstance(one, int)]
        waiting.append(after)


def _directory(data: bytes, at: int) -> tuple[dict[int, object], int]:
    """Tags of one directory, and where the next one starts (0: nowhere)."""
    # Some makers changed the number behind the byte order; the directories are those of TIFF.
    head = (b"II*\x00" if data[:2] == b"II" else b"MM\x00*") + data[4:8]
    directory = ImageFileDirectory_v2(head)
    stream = io.BytesIO(data)
    stream.seek(at)
    tags: dict[int, object] = {}
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            directory.load(stream)
        wanted = (*_DATA, _WIDTH, 257, 258, 259, 277, 278, 279, 284, 322, 323, 325)
        tags = {tag: directory[tag] for tag in (*wanted, _SUB_DIRECTORIES) if tag in directory}
    except Exception:  # a hostile directory breaks the reader in many ways
        return tags, 0
    return tags, int(getattr(directory, "next", 0) or 0)
