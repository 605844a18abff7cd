"""A decoded picture as one upright array of the file's own channel codes."""

from __future__ import annotations

import math
from typing import Final, TypeVar

import cv2
import numpy as np
from numpy.typing import NDArray
from PIL import Image

#: Rows turned into an array at a time: the strip stays in the processor's cache, which is three
#: times as quick as the whole picture at once and needs no second copy of it (measured).
_STRIP_ROWS: Final = 64

#: Modes of which each pixel is one, three or four channel codes, with or without a palette.
READABLE_MODES: Final = frozenset(
    {"1", "L", "P", "LA", "PA", "La", "RGB", "RGBX", "RGBA", "RGBa", "CMYK", "YCbCr"}
)
SIXTEEN_BIT_MODES: Final = frozenset({"I;16", "I;16L", "I;16B", "I;16N"})
_ALPHA_MODES: Final = frozenset({"LA", "PA", "La", "RGBA", "RGBa"})

#: Exif orientation to (mirror left-right first, then quarter turns clockwise).
#: Source: CIPA DC-008 (Exif), tag Orientation; from memory.
_TURNS: Final = {
    1: (False, 0),
    2: (True, 0),
    3: (False, 2),
    4: (True, 2),
    5: (True, 3),
    6: (False, 1),
    7: (True, 1),
    8: (False, 3),
}
_ROTATIONS: Final = {
    1: cv2.ROTATE_90_CLOCKWISE,
    2: cv2.ROTATE_180,
    3: cv2.ROTATE_90_COUNTERCLOCKWISE,
}


_Code = TypeVar("_Code", np.uint8, np.uint16)


def picture_pixels(image: Image.Image) -> NDArray[np.uint8]:
    """The codes of a loaded picture, without any colour management.

    Sixteen-bit pictures keep their high byte; grey ones get three equal channels; fully
    transparent pixels become black, since nobody sees what they hold.

    Args:
        image: in one of `READABLE_MODES` or `SIXTEEN_BIT_MODES`.

    Returns:
        Red, green, blue, shape (H, W, 3).
    """
    width, height = image.size
    pixels = np.empty((height, width, 3), np.uint8)
    for top in range(0, height, _STRIP_ROWS):
        bottom = min(top + _STRIP_ROWS, height)
        pixels[top:bottom] = _strip_pixels(image.crop((0, top, width, bottom)))
    return pixels


def _strip_pixels(strip: Image.Image) -> NDArray[np.uint8]:
    """Codes of one strip, shape (h, W, 3)."""
    if strip.mode in SIXTEEN_BIT_MODES:
        high = (np.asarray(strip).astype(np.uint16) >> 8).astype(np.uint8)
        return np.repeat(high[..., np.newaxis], 3, axis=2)
    if strip.mode in _ALPHA_MODES or "transparency" in strip.info:
        return visible(np.asarray(strip.convert("RGBA")))
    colour = strip if strip.mode == "RGB" else strip.convert("RGB")
    return np.asarray(colour)


def visible(pixels: NDArray[np.uint8]) -> NDArray[np.uint8]:
    """Colour of a picture with alpha, fully transparent pixels black.

    Args:
        pixels: shape (H, W, 4), alpha last.

    Returns:
        Shape (H, W, 3).
    """
    colour = pixels[..., :3].copy()
    colour[pixels[..., 3] == 0] = 0
    return colour


def upright(pixels: NDArray[np.uint8], orientation: object) -> NDArray[np.uint8]:
    """The picture as it is meant to be seen.

    Args:
        pixels: as stored, shape (H, W, 3).
        orientation: value of the Exif tag; anything but 1 to 8 counts as 1 (upright).

    Returns:
        Shape (H, W, 3) or (W, H, 3), contiguous.
    """
    mirrored, turns = (
        _TURNS.get(orientation, _TURNS[1]) if isinstance(orientation, int) else _TURNS[1]
    )
    if mirrored:
        pixels = cv2.flip(pixels, 1).astype(np.uint8, copy=False)
    if turns:
        pixels = cv2.rotate(pixels, _ROTATIONS[turns]).astype(np.uint8, copy=False)
    return np.ascontiguousarray(pixels)


def shrunk(pixels: NDArray[_Code], halvings: int) -> NDArray[_Code]:
    """A copy of half the size, as often as asked; each pixel is the mean of a block.

    A last odd row or column is left out. Halving is three times as quick as scaling (measured).

    Args:
        pixels: shape (H, W) or (H, W, 3), both sides at least 2 to the power of `halvings`.
        halvings: 0 or more.

    Returns:
        Shape (H >> halvings, W >> halvings), or that with 3 channels.
    """
    for _ in range(halvings):
        shape = (pixels.shape[0] // 2, pixels.shape[1] // 2, *pixels.shape[2:])
        pixels = halved(pixels, np.empty(shape, pixels.dtype))
    return pixels


def halved(strip: NDArray[_Code], into: NDArray[_Code]) -> NDArray[_Code]:
    """A strip at half its size, in the first rows of some memory; a last odd row is left out.

    Args:
        strip: shape (h, W) or (h, W, 3).
        into: shape (h >> 1 or more, W >> 1), or that with 3 channels.
    """
    rows, columns = strip.shape[0] // 2, strip.shape[1] // 2
    into = into[:rows]
    if rows and columns:
        whole = strip[: 2 * rows, : 2 * columns]
        cv2.resize(whole, (columns, rows), dst=into, interpolation=cv2.INTER_AREA)
    return into


def halvings_to(long_side_px: int, wanted_px: float) -> int:
    """How often to halve to come nearest to a wanted long side, in ratio."""
    return max(0, round(math.log2(long_side_px / wanted_px)))
