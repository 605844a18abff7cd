"""A phone's picture of a camera's back, its screen showing a frame."""

from __future__ import annotations

from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray

from tests.scenes.noise import Field, fractal

#: The camera's back, laid flat [px]: the whole, and the screen on it (left, top, width, height).
BACK = (1500, 1000)
SCREEN = (110, 190, 960, 640)


@dataclass(frozen=True)
class ScreenPicture:
    """The phone's picture, shape (H, W, 3), and the screen's corners in it [px].

    Corners are (column, row): top left, top right, bottom right, bottom left.
    """

    pixels: NDArray[np.uint8]
    corners: NDArray[np.float64]


def photograph_screen(
    shown: NDArray[np.uint8], seed: int = 1, size: tuple[int, int] = (1512, 2016)
) -> ScreenPicture:
    """Show a frame on a camera's dim screen and take a picture of it with a phone.

    Args:
        shown: shape (h, w, 3), the frame on the screen, whole, with dark bars beside it.
        seed: of the background, the tilt and the noise.
        size: (H, W) of the phone's picture [px].
    """
    rng = np.random.default_rng(seed)
    height, width = size
    flat = _back(_on_screen(shown), rng)
    target = _quadrilateral(rng, height, width)
    source = np.array([(0, 0), (BACK[0], 0), BACK, (0, BACK[1])], np.float32)
    turn = cv2.getPerspectiveTransform(source, target)
    body = cv2.warpPerspective(flat, turn, (width, height), flags=cv2.INTER_AREA)
    mask = np.zeros((BACK[1], BACK[0]), np.uint8)
    _rounded(mask, (0, 0, BACK[0] - 1, BACK[1] - 1), 90, 255)
    share = cv2.warpPerspective(mask, turn, (width, height)).astype(np.float32)[..., None] / 255
    picture = _behind(rng, size) * (1 - share) + body * share
    picture += rng.standard_normal(picture.shape, dtype=np.float32) * np.float32(2.2)
    left, top, wide, high = SCREEN
    corners = np.array(
        [(left, top), (left + wide, top), (left + wide, top + high), (left, top + high)]
    )
    seen = cv2.perspectiveTransform(corners[None].astype(np.float64), turn)[0]
    return ScreenPicture(np.clip(picture, 0, 255).astype(np.uint8), np.asarray(seen))


def _on_screen(shown: NDArray[np.uint8]) -> Field:
    """The frame fitted into the screen, dim and a little blue, black where it does not reach."""
    _, _, wide, high = SCREEN
    scale = min(wide / shown.shape[1], high / shown.shape[0])
    size = (round(shown.shape[1] * scale), round(shown.shape[0] * scale))
    small = cv2.resize(shown, size, interpolation=cv2.INTER_AREA)
    screen = np.full((high, wide, 3), 9.0, np.float32)
    top, left = (high - size[1]) // 2, (wide - size[0]) // 2
    screen[top : top + size[1], left : left + size[0]] = small
    return np.asarray(screen * np.array([0.60, 0.63, 0.68], np.float32) + 8, np.float32)


def _back(screen: Field, rng: np.random.Generator) -> Field:
    """The camera's back seen straight on: body, screen, a wheel and buttons."""
    grain = fractal(rng, (BACK[1], BACK[0]), (6, 6), 2)
    falling = np.linspace(1.2, 0.8, BACK[1], dtype=np.float32)[:, None]
    back = np.repeat(((30 + 2.2 * grain) * falling)[..., None], 3, axis=2)
    left, top, wide, high = SCREEN
    _rounded(back, (left - 34, top - 30, left + wide + 34, top + high + 44), 26, (13, 13, 14))
    back[top : top + high, left : left + wide] = screen
    cv2.circle(back, (1290, 560), 104, (20, 20, 21), -1, cv2.LINE_AA)
    cv2.circle(back, (1290, 560), 104, (58, 58, 60), 5, cv2.LINE_AA)
    cv2.circle(back, (1290, 560), 40, (44, 44, 46), -1, cv2.LINE_AA)
    for place in ((1210, 330), (1370, 330), (1215, 780), (1365, 780)):
        cv2.circle(back, place, 30, (17, 17, 18), -1, cv2.LINE_AA)
        cv2.circle(back, place, 30, (62, 62, 64), 4, cv2.LINE_AA)
    _rounded(back, (430, 20, 760, 130), 40, (10, 10, 10))
    return np.asarray(back, np.float32)


def _rounded(
    picture: Field | NDArray[np.uint8],
    edges: tuple[int, int, int, int],
    radius: int,
    colour: float | tuple[int, int, int],
) -> None:
    left, top, right, bottom = edges
    fill = (colour,) * 3 if isinstance(colour, int | float) else colour
    cv2.rectangle(picture, (left + radius, top), (right - radius, bottom), fill, -1)
    cv2.rectangle(picture, (left, top + radius), (right, bottom - radius), fill, -1)
    for across in (left + radius, right - radius):
        for down in (top + radius, bottom - radius):
            cv2.circle(picture, (across, down), radius, fill, -1, cv2.LINE_AA)


def _quadrilateral(rng: np.random.Generator, height: int, width: int) -> Field:
    """Where the corners of the back come to lie: nearly filling the picture, held askew."""
    wide = 0.9 * min(width, 1.3 * height * BACK[0] / BACK[1] / 1.3)
    high = wide * BACK[1] / BACK[0]
    left, top = (width - wide) / 2, (height - high) / 2
    square = np.array(
        [(left, top), (left + wide, top), (left + wide, top + high), (left, top + high)]
    )
    askew = rng.uniform(-0.035, 0.035, (4, 2)) * wide
    return np.asarray(square + askew, np.float32)


def _behind(rng: np.random.Generator, size: tuple[int, int]) -> Field:
    """Ground and leaves far out of focus."""
    width = size[1]
    lumps = cv2.GaussianBlur(fractal(rng, size, (width / 6, width / 6), 4), (0, 0), width / 70)
    green = cv2.GaussianBlur(fractal(rng, size, (width / 4, width / 4), 3), (0, 0), width / 60)
    level = 74 * np.exp(0.4 * lumps)
    planes = [level * (0.8 - 0.12 * green), level * (0.9 + 0.08 * green), level * 0.62]
    return np.asarray(cv2.merge([np.asarray(plane, np.float32) for plane in planes]), np.float32)
