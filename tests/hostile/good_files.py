"""Good files of each kind that is read, small, to be cut and spoiled."""

from __future__ import annotations

import io
from functools import cache

import numpy as np
import pillow_heif
import tifffile
from numpy.typing import NDArray
from PIL import Image

from tests.core.frame_files import Pixels, exif_block, heic, jpeg, natural, saved
from tests.scenes.dng import Photosites, dng, mosaic

#: Kinds that are read.
READ = (
    "JPEG",
    "progressive JPEG",
    "JPEG with restarts",
    "PNG",
    "16-bit PNG",
    "TIFF",
    "LZW TIFF",
    "deflated TIFF",
    "JPEG TIFF",
    "tiled TIFF",
    "16-bit TIFF",
    "BigTIFF",
    "HEIC",
    "HEIC of tiles",
    "DNG",
    "DNG with a preview",
)
#: Kinds that are known and refused whole or in part.
REFUSED = ("WebP", "GIF")


@cache
def good(kind: str) -> bytes:
    """A good file of about 300 × 200 px of a kind."""
    pixels = natural()[300:500, 300:600]
    image = Image.fromarray(pixels)
    exif = exif_block({271: "Alder", 274: 6}, {33434: 0.25, 34855: 100})
    return {
        "JPEG": lambda: jpeg(pixels, exif=exif),
        "progressive JPEG": lambda: jpeg(pixels, exif=exif, progressive=True),
        "JPEG with restarts": lambda: jpeg(pixels, restart_marker_rows=1),
        "PNG": lambda: saved(image, "PNG", exif=exif),
        "16-bit PNG": lambda: saved(_deep(pixels), "PNG"),
        "TIFF": lambda: saved(image, "TIFF", exif=exif),
        "LZW TIFF": lambda: saved(image, "TIFF", compression="tiff_lzw"),
        "deflated TIFF": lambda: saved(image, "TIFF", compression="tiff_adobe_deflate"),
        "JPEG TIFF": lambda: saved(image, "TIFF", compression="jpeg"),
        "tiled TIFF": lambda: _tiff(pixels, tile=(64, 64), compression="deflate"),
        "16-bit TIFF": lambda: _tiff(pixels.astype(np.uint16) * 257),
        "BigTIFF": lambda: saved(image, "TIFF", big_tiff=True),
        "HEIC": lambda: heic(pixels, exif),
        "HEIC of tiles": lambda: tiled_heic(pixels),
        "DNG": lambda: dng(_photosites(pixels)),
        "DNG with a preview": lambda: dng(_photosites(pixels, jpeg(pixels))),
        "WebP": lambda: saved(image, "WEBP"),
        "GIF": lambda: saved(image, "GIF"),
    }[kind]()


def _photosites(pixels: Pixels, preview: bytes | None = None) -> Photosites:
    codes = mosaic(pixels / 255.0, (15_800, 15_800, 15_800), 512, noise=4.0)
    return Photosites(codes, 512, 16_383, orientation=6, preview=preview)


def _deep(pixels: Pixels) -> Image.Image:
    return Image.fromarray(pixels[..., 1].astype(np.uint16) * 257)


def _tiff(
    pixels: NDArray[np.unsignedinteger],
    tile: tuple[int, int] | None = None,
    compression: str | None = None,
) -> bytes:
    stream = io.BytesIO()
    tifffile.imwrite(
        stream, pixels, photometric="rgb", metadata=None, tile=tile, compression=compression
    )
    return stream.getvalue()


def tiled_heic(pixels: Pixels) -> bytes:
    """A HEIC of several tiles, as phones write them."""
    before = pillow_heif.options.GRID_TILE_SIZE
    pillow_heif.options.GRID_TILE_SIZE = 128
    try:
        return heic(pixels)
    finally:
        pillow_heif.options.GRID_TILE_SIZE = before
