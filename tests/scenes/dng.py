"""A raw file of our own: photosites with known light, in the open format DNG."""

from __future__ import annotations

import struct
from collections.abc import Sequence
from dataclasses import dataclass, field
from itertools import accumulate
from typing import Final

import numpy as np
from numpy.typing import NDArray

from tests.scenes.lossless_jpeg import lossless_jpeg

# Types and tags. Sources: TIFF 6.0, TIFF/EP and the DNG specification 1.4; from memory.
_ASCII: Final = 2
_SHORT: Final = 3
_LONG: Final = 4
_RATIONAL: Final = 5
_BYTE: Final = 1
_SIGNED_RATIONAL: Final = 10
_FORMATS: Final = {_BYTE: "B", _SHORT: "H", _LONG: "I"}
_MOSAIC: Final = 32803
_LOSSLESS: Final = 7
_YCBCR: Final = 6
#: The header's length.
_FIRST_AT: Final = 8

#: Rows of a compressed tile.
_TILE_ROWS: Final = 256

Entry = tuple[int, int, tuple[float, ...] | bytes]


@dataclass(frozen=True)
class Photosites:
    """A sensor's data before they are written.

    Attributes:
        codes: as read from the sensor, shape (H, W), red top left, then green, blue bottom right.
        black: black level [code].
        stated_white: white level that the file states, true or not [code].
        neutral: what a grey surface gives in red, green and blue, the highest 1.
        shutter_s, f_number, iso: settings.
        orientation: as in Exif.
        preview: an embedded JPEG.
        compressed: without loss, as most cameras store them.
    """

    codes: NDArray[np.uint16] = field(repr=False)
    black: int = 0
    stated_white: int = 65535
    neutral: tuple[float, float, float] = (0.5, 1.0, 0.6)
    shutter_s: float = 0.25
    f_number: float = 8.0
    iso: int = 100
    orientation: int = 1
    preview: bytes | None = None
    compressed: bool = False


def mosaic(light: NDArray[np.floating], saturation: tuple[int, int, int], black: int = 0,
           noise: float = 0.0, seed: int = 1) -> NDArray[np.uint16]:  # fmt: skip
    """Photosites under known light.

    Args:
        light: red, green, blue, 1 where the sensor saturates, shape (H, W, 3), even sides.
        saturation: code at which each colour saturates.
        black: black level [code].
        noise: its spread, also on saturated photosites [codes].
        seed: of the noise.
    """
    rng = np.random.default_rng(seed)
    codes = np.zeros(light.shape[:2])
    for row, column, colour in ((0, 0, 0), (0, 1, 1), (1, 0, 1), (1, 1, 2)):
        ceiling = saturation[colour]
        values = black + np.minimum(light[row::2, column::2, colour], 1.0) * (ceiling - black)
        codes[row::2, column::2] = values + noise * rng.standard_normal(values.shape)
    return np.clip(np.rint(codes), 0, 65535).astype(np.uint16)


def dng(sites: Photosites) -> bytes:
    """The whole file: directories, the photosites in strips or tiles, then the preview."""
    parts = _parts(sites)
    sizes = [len(part) for part in parts]
    preview = sites.preview or b""
    length = len(_directories(sites, [0] * len(parts), sizes, 0))  # wherever the data lie
    *parts_at, preview_at = accumulate(sizes, initial=_FIRST_AT + length)
    directories = _directories(sites, parts_at, sizes, preview_at)
    return struct.pack("<2sHI", b"II", 42, _FIRST_AT) + directories + b"".join(parts) + preview


def _parts(sites: Photosites) -> list[bytes]:
    """The photosites as they are in one strip, or compressed in tiles of the full width."""
    if not sites.compressed:
        return [sites.codes.astype("<u2").tobytes()]
    codes = np.pad(sites.codes, ((0, -len(sites.codes) % _TILE_ROWS), (0, 0)), mode="edge")
    return [
        lossless_jpeg(codes[top : top + _TILE_ROWS]) for top in range(0, len(codes), _TILE_ROWS)
    ]


def _directories(
    sites: Photosites, parts_at: Sequence[int], sizes: Sequence[int], preview_at: int
) -> bytes:
    height, width = sites.codes.shape
    main: list[Entry] = [
        (254, _LONG, (0,)), (256, _LONG, (width,)), (257, _LONG, (height,)),
        (258, _SHORT, (16,)), (259, _SHORT, (_LOSSLESS if sites.compressed else 1,)),
        (262, _SHORT, (_MOSAIC,)), (271, _ASCII, b"Alder\0"), (272, _ASCII, b"Alder One\0"),
        (274, _SHORT, (sites.orientation,)), (277, _SHORT, (1,)), (284, _SHORT, (1,)),
        (33421, _SHORT, (2, 2)), (33422, _BYTE, (0, 1, 1, 2)),
        (33434, _RATIONAL, (sites.shutter_s,)), (33437, _RATIONAL, (sites.f_number,)),
        (34855, _SHORT, (sites.iso,)), (50706, _BYTE, (1, 4, 0, 0)),
        (50708, _ASCII, b"Alder One\0"), (50714, _LONG, (sites.black,)),
        (50717, _LONG, (sites.stated_white,)),
        (50721, _SIGNED_RATIONAL, (1, 0, 0, 0, 1, 0, 0, 0, 1)), (50728, _RATIONAL, sites.neutral),
    ]  # fmt: skip
    main += [
        (322, _LONG, (width,)), (323, _LONG, (_TILE_ROWS,)),
        (324, _LONG, tuple(parts_at)), (325, _LONG, tuple(sizes)),
    ] if sites.compressed else [
        (273, _LONG, tuple(parts_at)), (278, _LONG, (height,)), (279, _LONG, tuple(sizes)),
    ]  # fmt: skip
    main.sort(key=lambda entry: entry[0])
    if sites.preview is None:
        return _directory(main, _FIRST_AT, 0)
    small: list[Entry] = [
        (254, _LONG, (1,)), (256, _LONG, (width,)), (257, _LONG, (height,)),
        (258, _SHORT, (8, 8, 8)), (259, _SHORT, (7,)), (262, _SHORT, (_YCBCR,)),
        (273, _LONG, (preview_at,)), (277, _SHORT, (3,)), (278, _LONG, (height,)),
        (279, _LONG, (len(sites.preview),)),
    ]  # fmt: skip
    second_at = _FIRST_AT + len(_directory(main, _FIRST_AT, 0))
    return _directory(main, _FIRST_AT, second_at) + _directory(small, second_at, 0)


def _directory(entries: list[Entry], at: int, following_at: int) -> bytes:
    """One directory with the values that do not fit into it behind it, of an even length."""
    values_at = at + 2 + 12 * len(entries) + 4
    rows, behind = b"", b""
    for tag, kind, values in entries:
        packed = _packed(kind, values)
        count = len(values)
        if len(packed) <= 4:
            rows += struct.pack("<HHI4s", tag, kind, count, packed)
            continue
        rows += struct.pack("<HHII", tag, kind, count, values_at + len(behind))
        behind += packed + b"\0" * (len(packed) % 2)
    return struct.pack("<H", len(entries)) + rows + struct.pack("<I", following_at) + behind


def _packed(kind: int, values: tuple[float, ...] | bytes) -> bytes:
    if isinstance(values, bytes):
        return values
    if kind in (_RATIONAL, _SIGNED_RATIONAL):
        sign = "i" if kind == _SIGNED_RATIONAL else "I"
        return b"".join(struct.pack(f"<2{sign}", round(value * 10**6), 10**6) for value in values)
    return struct.pack(f"<{len(values)}{_FORMATS[kind]}", *(int(value) for value in values))
