"""The same small places of several frames at full size, for the eye to compare."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.align import Alignment
from core.frame.comparison import Misfit
from core.frame.laid import LEAST_PART, Laid
from core.frame.srgb import curved_of
from core.frame.working import LINEAR_OF_CODE

Field = NDArray[np.float32]
Mask = NDArray[np.bool_]
Pixels = NDArray[np.uint8]
Matrix = NDArray[np.float64]
#: Left, top, width, height [px].
Window = tuple[int, int, int, int]

#: A motion that moves no corner by more is none: the pixels stay as they are [px]. Own rule.
_UNMOVED_PX: Final = 0.15
#: Brightness is made equal up to this much [stops]; beyond, noise or clipping would be all there
#: is to see. Own rule.
MOST_GAIN_STOPS: Final = 3.0

#: Steps of the root of linear light: 12 bits, so that no code of 8 is missed. Own rule.
_STEPS: Final = 4095
_LIGHTS: Final = (np.arange(_STEPS + 1) / _STEPS) ** 2
#: Code of each step of the root of linear light.
_CODE_OF_ROOT: Final = np.round(255 * curved_of(_LIGHTS)).astype(np.uint8)


@dataclass(frozen=True)
class Piece:
    """A part of a frame, or a picture made of frames.

    `frame` is the place of the frame, None where it was made of several or drawn; `shutter_s` the
    time [s], None: not known; `gain_stops` by how much it was made brighter.
    """

    pixels: Pixels
    frame: int | None = None
    shutter_s: float | None = None
    gain_stops: float = 0.0


@dataclass(frozen=True)
class Sheet:
    """Pieces to be shown side by side; `shows` is "water", "leaves", "whole" and the like."""

    shows: str
    pieces: tuple[Piece, ...]


def codes_of(light: Field) -> Pixels:
    """8-bit codes of linear light by the sRGB curve, same shape; 1 and above become 255."""
    roots = np.sqrt(np.clip(light, 0, 1)) * np.float32(_STEPS)
    return np.asarray(_CODE_OF_ROOT[np.rint(roots).astype(np.int32)], np.uint8)


def brighter(pixels: Pixels, stops: float) -> Pixels:
    """The picture made brighter in linear light, same shape; no more than `MOST_GAIN_STOPS`.

    Args:
        pixels: shape (h, w, 3).
        stops: by how much [stops], 0 or more.
    """
    if stops == 0:
        return pixels
    bounded = max(-MOST_GAIN_STOPS, min(stops, MOST_GAIN_STOPS))
    light = cv2.LUT(pixels, LINEAR_OF_CODE * np.float32(2**bounded))
    return codes_of(np.asarray(light, np.float32))


def window_of(
    pixels: Pixels, motion: Alignment | Misfit, shape: tuple[int, ...], window: Window
) -> tuple[Pixels, Pixels]:
    """A window of the reference as another frame shows it.

    Args:
        pixels: the other frame, full size; or the reference itself.
        motion: how it lies on the reference; a misfit is taken as it is.
        shape: of the reference, (H, W, …) [px].
        window: in the reference; what lies below its last row is cut off.

    Returns:
        The window, shape (h, w, 3), and 1 where the frame reaches, shape (h, w).
    """
    left, top, width, height = window
    height = min(height, shape[0] - top)
    matrix = _matrix(pixels, motion, shape)
    if pixels.shape == shape and _unmoved(matrix, shape):
        cut = pixels[top : top + height, left : left + width]
        return cut, np.ones(cut.shape[:2], np.uint8)
    shifted = matrix @ np.array([[1, 0, left], [0, 1, top], [0, 0, 1]], np.float64)
    laid = cv2.warpPerspective(
        pixels,
        shifted,
        (width, height),
        flags=cv2.INTER_CUBIC | cv2.WARP_INVERSE_MAP,
        borderMode=cv2.BORDER_REPLICATE,
    )
    return np.asarray(laid, np.uint8), _reached(shifted, (width, height), pixels.shape)


def _matrix(pixels: Pixels, motion: Alignment | Misfit, shape: tuple[int, ...]) -> Matrix:
    if isinstance(motion, Misfit):
        scale = pixels.shape[1] / shape[1]
        return np.diag([scale, scale, 1.0])
    return motion.between(shape, pixels.shape)


def _unmoved(matrix: Matrix, shape: tuple[int, ...]) -> bool:
    height, width = shape[:2]
    corners = np.array([[0, 0, 1], [width, 0, 1], [0, height, 1], [width, height, 1]], np.float64)
    moved = corners @ matrix.T
    apart = moved[:, :2] / moved[:, 2:] - corners[:, :2]
    return bool(np.abs(apart).max() <= _UNMOVED_PX)


def _reached(matrix: Matrix, size: tuple[int, int], shape: tuple[int, ...]) -> Pixels:
    """1 where a window's places lie inside the frame."""
    columns, rows = np.meshgrid(
        np.arange(size[0], dtype=np.float32), np.arange(size[1], dtype=np.float32)
    )
    depth = matrix[2, 0] * columns + matrix[2, 1] * rows + matrix[2, 2]
    right = (matrix[0, 0] * columns + matrix[0, 1] * rows + matrix[0, 2]) / depth
    down = (matrix[1, 0] * columns + matrix[1, 1] * rows + matrix[1, 2]) / depth
    inside = (right >= 0) & (right <= shape[1] - 1) & (down >= 0) & (down <= shape[0] - 1)
    return np.asarray(inside, np.uint8)


def fullest_window(
    where: Mask, shape: tuple[int, ...], size: tuple[int, int], seen: Mask
) -> Window | None:
    """The window of a size in which there is most of what is looked for.

    Args:
        where: what is looked for, shape (h, w) of a small copy.
        shape: of the full-size frame, (H, W, …) [px].
        size: width and height of the window [px of the full size]; bounded by the frame.
        seen: where all frames reach, shape (h, w).

    Returns:
        The window; None where there is too little of it.
    """
    if float(where.mean()) < LEAST_PART:
        return None
    width, height = min(size[0], shape[1]), min(size[1], shape[0])
    scale = where.shape[0] / shape[0]
    kernel = (max(1, round(width * scale)), max(1, round(height * scale)))
    wanted = where.astype(np.float32) - (~seen).astype(np.float32)
    full = cv2.boxFilter(wanted, -1, kernel, borderType=cv2.BORDER_CONSTANT)
    row, column = np.unravel_index(int(np.argmax(full)), full.shape)
    left = round((float(column) + 0.5) / scale - width / 2)
    top = round((float(row) + 0.5) / scale - height / 2)
    return (
        max(0, min(left, shape[1] - width)),
        max(0, min(top, shape[0] - height)),
        width,
        height,
    )


def cut(
    shows: str,
    laid: Laid,
    full: Sequence[Pixels],
    window: Window,
    times_s: Sequence[float | None],
    gains_stops: Sequence[float],
    order: Sequence[int],
) -> Sheet:
    """The same window of each frame that lies on the reference, at equal brightness.

    Args:
        shows: what the sheet is for.
        laid: the frames, laid on each other.
        full: full-size pixels of each, shape (H, W, 3).
        window: in the reference [px].
        times_s: exposure time of each frame [s].
        gains_stops: by how much each is made brighter.
        order: the frames from left to right.
    """
    shape = full[laid.reference].shape
    return Sheet(
        shows,
        tuple(
            Piece(
                brighter(
                    window_of(full[place], laid.motions[place], shape, window)[0],
                    gains_stops[place],
                ),
                place,
                times_s[place],
                gains_stops[place],
            )
            for place in order
        ),
    )
