"""Blur by the lens and by movement of the camera, with known kernels in linear light."""

from __future__ import annotations

import cv2
import numpy as np
from numpy.typing import NDArray

from tests.scenes.camera import codes_of, toned
from tests.scenes.noise import Field

#: Points per pixel at which kernels are drawn.
_FINE = 8


def disc(diameter_px: float) -> Field:
    """Kernel of defocus by a round stop, sum 1."""
    half = int(np.ceil(diameter_px / 2)) + 1
    side = (2 * half + 1) * _FINE
    across = (np.arange(side) + 0.5) / _FINE - half - 0.5
    inside = np.hypot(*np.meshgrid(across, across)) <= diameter_px / 2
    blocks = inside.reshape(2 * half + 1, _FINE, 2 * half + 1, _FINE).mean(axis=(1, 3))
    return np.asarray(blocks / blocks.sum(), np.float32)


def stroke(length_px: float, angle_deg: float, bow: float = 0.0) -> Field:
    """Kernel of a movement, sum 1.

    Args:
        length_px: of the movement.
        angle_deg: its direction from the horizontal, anticlockwise.
        bow: how far it bends sideways, as a part of its length.
    """
    half = int(np.ceil(length_px * (0.5 + abs(bow)))) + 2
    along = np.linspace(-0.5, 0.5, 400 * half)
    turn = np.radians(angle_deg)
    sideways = bow * (4 * along**2 - 1 / 3)
    x = length_px * (along * np.cos(turn) - sideways * np.sin(turn)) + half
    y = -length_px * (along * np.sin(turn) + sideways * np.cos(turn)) + half
    kernel = np.zeros((2 * half + 1, 2 * half + 1))
    column, row = np.floor(x).astype(int), np.floor(y).astype(int)
    for down in (0, 1):
        for right in (0, 1):
            part = np.abs(1 - down - (y - row)) * np.abs(1 - right - (x - column))
            np.add.at(kernel, (row + down, column + right), part)
    return np.asarray(kernel / kernel.sum(), np.float32)


def blurred(light: Field, kernel: Field) -> Field:
    """Linear light behind a kernel; the border is mirrored."""
    turned = np.ascontiguousarray(kernel[::-1, ::-1])
    return np.asarray(cv2.filter2D(light, -1, turned, borderType=cv2.BORDER_REFLECT), np.float32)


def shared(light: Field, noise_codes: float, quality: int, seed: int) -> NDArray[np.uint8]:
    """The picture as it is shared: clipped, with noise [codes], through a JPEG of a quality."""
    noise = np.random.default_rng(seed).normal(0, noise_codes, light.shape)
    codes = np.clip(toned(light) + noise, 0, 255).round().astype(np.uint8)
    file = cv2.imencode(".jpg", codes[..., ::-1], [cv2.IMWRITE_JPEG_QUALITY, quality])[1]
    return codes_of(file.tobytes())
