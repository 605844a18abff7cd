"""Series of one view with known times, shifts and brightness, for the tests and figures."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import lru_cache

import cv2
import numpy as np
from numpy.typing import NDArray
from sklearn.datasets import load_sample_image

from tests.scenes.camera import Exposure, linear, toned
from tests.scenes.noise import fractal
from tests.scenes.waterfall import Plan, compose, take

Pixels = NDArray[np.uint8]
Matrix = NDArray[np.float64]


@dataclass(frozen=True)
class Hand:
    """How a camera was held against the first frame: shift [px], turn [deg], scale, tilt."""

    right_px: float = 0.0
    down_px: float = 0.0
    turn_deg: float = 0.0
    scale: float = 1.0
    tilt: float = 0.0

    def matrix(self, width: int, height: int) -> Matrix:
        """From pixels of the unmoved frame to those of the moved one, about the middle."""
        middle = np.array([[1, 0, -width / 2], [0, 1, -height / 2], [0, 0, 1]])
        turn = math.radians(self.turn_deg)
        cosine, sine = self.scale * math.cos(turn), self.scale * math.sin(turn)
        turned = np.array([[cosine, -sine, 0], [sine, cosine, 0], [0, 0, 1]])
        tilted = np.array([[1, 0, 0], [0, 1, 0], [self.tilt / height, 0, 1]])
        back = np.array(
            [[1, 0, width / 2 + self.right_px], [0, 1, height / 2 + self.down_px], [0, 0, 1]]
        )
        return np.asarray(back @ tilted @ turned @ middle, np.float64)


def held(pixels: Pixels, hand: Hand, margin: float = 0.04) -> Pixels:
    """The frame as moved, without a margin [share of the sides] that the moving would bare."""
    height, width = pixels.shape[:2]
    moved = cv2.warpPerspective(
        pixels, hand.matrix(width, height), (width, height), flags=cv2.INTER_CUBIC,
        borderMode=cv2.BORDER_REFLECT,
    )  # fmt: skip
    rows, columns = round(margin * height), round(margin * width)
    return np.ascontiguousarray(moved[rows : height - rows, columns : width - columns])


def rendered(
    shutter_s: float, seed: int, *, moment: int = 0, stops: float = 0.0, width: int = 800,
    height: int = 1200, **scene: object,
) -> Pixels:  # fmt: skip
    """A frame of the rendered waterfall: its time, and how much brighter than usual [stops]."""
    iso = 100 * 2**stops * 0.25 / shutter_s
    exposure = Exposure(shutter_s=shutter_s, iso=iso)
    plan = Plan(width=width, height=height, seed=seed, moment=moment, exposure=exposure)
    return take(compose(replace(plan, **scene))).pixels  # type: ignore[arg-type]
