"""Picture files made on the spot, with known content."""

from __future__ import annotations

import io
import struct
import zlib
from collections.abc import Mapping
from functools import cache
from typing import Any

import numpy as np
import pillow_heif
import skimage.data
from numpy.typing import NDArray
from PIL import Image

Pixels = NDArray[np.uint8]

EXIF_DIRECTORY = 34665


@cache
def natural() -> Pixels:
    """A real photograph without clipped pixels, shape (800, 1200, 3), dim: codes up to 200."""
    coffee = Image.fromarray(skimage.data.coffee())  # type: ignore[no-untyped-call]
    large = coffee.resize((1200, 800), Image.Resampling.BICUBIC)
    dim = (np.asarray(large).astype(np.float64) * 0.78).astype(np.uint8)
    dim.flags.writeable = False
    return dim


def exif_block(first: Mapping[int, Any] = {}, inner: Mapping[int, Any] = {}) -> Image.Exif:
    """An Exif block with tags in its first and in its Exif directory."""
    exif = Image.Exif()
    exif.update(first)
    if inner:
        exif.get_ifd(EXIF_DIRECTORY).update(inner)
    return exif


def jpeg(pixels: Pixels, quality: int = 92, exif: Image.Exif | None = None, **more: Any) -> bytes:
    """A JPEG of the pixels, 4:4:4."""
    stream = io.BytesIO()
    image = Image.fromarray(pixels)
    block = Image.Exif() if exif is None else exif
    image.save(stream, "JPEG", quality=quality, subsampling=0, exif=block, **more)
    return stream.getvalue()


def saved(image: Image.Image, kind: str, **more: Any) -> bytes:
    """A file of a kind that Pillow writes."""
    stream = io.BytesIO()
    image.save(stream, kind, **more)
    return stream.getvalue()


def heic(pixels: Pixels, exif: Image.Exif | None = None) -> bytes:
    """A HEIC of the pixels, good quality."""
    stream = io.BytesIO()
    block = {} if exif is None else {"exif": exif.tobytes()}
    pillow_heif.from_pillow(Image.fromarray(pixels)).save(stream, quality=90, **block)
    return stream.getvalue()


def png_header(width: int, height: int) -> bytes:
    """A PNG that states a size and holds one row of zeros."""

    def chunk(name: bytes, body: bytes) -> bytes:
        return (
            struct.pack(">I", len(body)) + name + body + struct.pack(">I", zlib.crc32(name + body))
        )

    header = chunk(b"IHDR", struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0))
    row = chunk(b"IDAT", zlib.compress(bytes(1 + 3 * min(width, 100_000))))
    return b"\x89PNG\r\n\x1a\n" + header + row + chunk(b"IEND", b"")


def tiff_directory(tags: Mapping[int, tuple[int, int, int]], order: str = "<") -> bytes:
    """A TIFF that holds nothing but one directory: tag to (type, count, value)."""
    mark = b"II*\x00" if order == "<" else b"MM\x00*"
    body = struct.pack(order + "IH", 8, len(tags))
    for tag, (kind, count, value) in sorted(tags.items()):
        body += struct.pack(order + "HHI", tag, kind, count)
        body += struct.pack(
            order + ("HH" if kind == 3 else "I"), *([value, 0] if kind == 3 else [value])
        )
    return mark + body + struct.pack(order + "I", 0)
