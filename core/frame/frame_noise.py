"""Noise that is plainly there, from a few crops of the whole frame."""

from __future__ import annotations

import math
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

#: Side of a crop and of a block in it [px], and where the crops lie, as shares of the frame.
#: Own rule.
_CROP_PX: Final = 384
_BLOCK_PX: Final = 16
_CENTRES: Final = ((0.2, 0.2), (0.2, 0.8), (0.5, 0.5), (0.8, 0.2), (0.8, 0.8))
#: Blocks that are neither black nor near clipping [codes]. Own rule.
_MEANS: Final = (30.0, 200.0)
#: Blocks in which there is least to see. Own rule.
_QUIETEST: Final = 10.0
#: Fewer blocks than this tell nothing. Own rule.
_LEAST_BLOCKS: Final = 40
#: From this estimate on noise is plainly there [codes]; what a camera's own noise reduction and
#: JPEG leave reads 0.3 to 1.2. Own rule.
_PLAIN: Final = 2.0
#: Noise halves when four pixels are averaged into one; fine texture hardly fades. Measured:
#: noise 0.46 to 0.65, texture of grass, gravel, leaves 0.9 and more. Own rule.
_FADES_TO: Final = 0.7

#: Blind to flat parts, slopes and straight edges. Source: Immerkaer, Fast noise variance
#: estimation, 1996, from memory.
_KERNEL: Final = np.array([[1, -2, 1], [-2, 4, -2], [1, -2, 1]], np.float32)


def is_noisy(pixels: NDArray[np.uint8]) -> bool:
    """Whether noise is plainly there; a no proves nothing.

    Args:
        pixels: the whole frame, shape (H, W, 3), red, green, blue.
    """
    noise = noise_codes(pixels)
    if noise is None or noise <= _PLAIN:
        return False
    halved = _of_crops([_halved(crop) for crop in _crops(pixels)])
    return halved is not None and halved <= _FADES_TO * noise


def noise_codes(pixels: NDArray[np.uint8]) -> float | None:
    """Standard deviation of the noise in the quietest blocks [codes], 0 or more.

    Args:
        pixels: the whole frame, shape (H, W, 3), red, green, blue.

    Returns:
        None when too little of the frame is neither black nor bright.
    """
    return _of_crops(_crops(pixels))


def _of_crops(crops: list[NDArray[np.uint8]]) -> float | None:
    means, responses = zip(*(_blocks(crop) for crop in crops), strict=True)
    mean, response = np.concatenate(means), np.concatenate(responses)
    usable = response[(mean > _MEANS[0]) & (mean < _MEANS[1])]
    if usable.size < _LEAST_BLOCKS:
        return None
    return float(np.percentile(usable, _QUIETEST)) * math.sqrt(math.pi / 2) / 6


def _halved(crop: NDArray[np.uint8]) -> NDArray[np.uint8]:
    rows, columns = (max(1, side // 2) for side in crop.shape[:2])
    small = cv2.resize(crop, (columns, rows), interpolation=cv2.INTER_AREA)
    return np.asarray(small, np.uint8)


def _crops(pixels: NDArray[np.uint8]) -> list[NDArray[np.uint8]]:
    """Crops at fixed places; of a small frame the whole, once."""
    height, width = pixels.shape[:2]
    if min(height, width) < 2 * _CROP_PX:
        return [pixels[: 4 * _CROP_PX, : 4 * _CROP_PX]]
    corners = [
        (round(down * height) - _CROP_PX // 2, round(across * width) - _CROP_PX // 2)
        for down, across in _CENTRES
    ]
    return [pixels[max(0, top) :, max(0, left) :][:_CROP_PX, :_CROP_PX] for top, left in corners]


def _blocks(crop: NDArray[np.uint8]) -> tuple[NDArray[np.float32], NDArray[np.float32]]:
    """Mean, and mean absolute response, of each whole block of a crop."""
    grey = cv2.cvtColor(np.ascontiguousarray(crop), cv2.COLOR_RGB2GRAY).astype(np.float32)
    response = np.abs(cv2.filter2D(grey, cv2.CV_32F, _KERNEL))
    return _block_means(grey), _block_means(response)


def _block_means(plane: NDArray[np.float32]) -> NDArray[np.float32]:
    rows, columns = (side // _BLOCK_PX for side in plane.shape)
    whole = plane[: rows * _BLOCK_PX, : columns * _BLOCK_PX]
    blocks = whole.reshape(rows, _BLOCK_PX, columns, _BLOCK_PX)
    return np.asarray(blocks.mean(axis=(1, 3)).ravel(), np.float32)
