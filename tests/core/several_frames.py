"""Series of one view with known times, shifts and brightness, for the tests and figures."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import lru_cache
from pathlib import Path

import cv2
import numpy as np
import skimage
from numpy.typing import NDArray
from sklearn.datasets import load_sample_image

from core.frame.laid import MeasuredFrame
from core.frame.report import (
    Advice,
    CameraSettings,
    Clipping,
    FrameMetadata,
    FrameReport,
    SizeNote,
)
from core.frame.working import working_copy
from tests.scenes.camera import Exposure, Sensor, codes_of, toned
from tests.scenes.noise import Field
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


@lru_cache(maxsize=48)
def rendered(
    shutter_s: float, seed: int, *, moment: int = 0, stops: float = 0.0, width: int = 800,
    height: int = 1200, **scene: object,
) -> Pixels:  # fmt: skip
    """A small copy of the rendered waterfall: its time, how much brighter than usual [stops].

    The noise is that of a frame of 24 megapixels after averaging to this size.
    """
    iso = 100 * 2**stops * 0.25 / shutter_s
    exposure = Exposure(shutter_s=shutter_s, iso=iso)
    averaged = 24e6 / (width * height)
    sensor = Sensor(full_well=40_000 * averaged, read_noise=3 * averaged**0.5)
    plan = Plan(
        width=width, height=height, seed=seed, moment=moment, exposure=exposure, sensor=sensor
    )
    return take(compose(replace(plan, **scene))).pixels  # type: ignore[arg-type]


#: Pictures that stand still and such that flow, with the package data that they come from.
STILL: tuple[str, ...] = ("china", "coffee", "motorcycle", "astronaut", "chelsea", "rocket")
FLOWING: tuple[str, ...] = ("gravel", "grass", "brick", "flower")


@lru_cache(maxsize=16)
def real(name: str) -> Pixels:
    """A sharp real picture that an installed package carries, shape (h, w, 3)."""
    if name in {"china", "flower"}:
        return np.asarray(load_sample_image(f"{name}.jpg"), np.uint8)
    return codes_of((Path(skimage.__file__).parent / "data" / FILES[name]).read_bytes())


FILES = {
    "coffee": "coffee.png", "motorcycle": "motorcycle_left.png", "astronaut": "astronaut.png",
    "chelsea": "chelsea.png", "rocket": "rocket.jpg", "gravel": "gravel.png", "grass": "grass.png",
    "brick": "brick.png",
}  # fmt: skip


def light(pixels: Pixels) -> Field:
    """Linear light by the sRGB curve, 0 to 1. Source: IEC 61966-2-1, from memory."""
    codes = pixels.astype(np.float32) / 255
    return np.where(codes <= 0.04045, codes / 12.92, ((codes + 0.055) / 1.055) ** 2.4).astype(
        np.float32
    )


def flowed(texture: Field, length_px: float, angle_deg: float, start_px: float) -> Field:
    """The mean of a texture that moves on by `length_px` from a start, at an angle; exact box."""
    along = np.array([math.cos(math.radians(angle_deg)), -math.sin(math.radians(angle_deg))])
    steps = max(1, round(length_px))
    height, width = texture.shape[:2]
    total = np.zeros_like(texture)
    for step in range(steps):
        way = (start_px + (step + 0.5) * length_px / steps) * along
        moved = np.array([[1, 0, way[0]], [0, 1, way[1]]])
        total += cv2.warpAffine(
            texture, moved, (width, height), flags=cv2.INTER_LINEAR | cv2.WARP_INVERSE_MAP,
            borderMode=cv2.BORDER_REFLECT,
        )  # fmt: skip
    return total / np.float32(steps)


def shifted(
    still: str, flowing: str, length_px: float, *, angle_deg: float = 80.0, start_px: float = 0.0,
    stops: float = 0.0, noise: float = 0.004, seed: int = 1,
) -> tuple[Pixels, NDArray[np.bool_]]:  # fmt: skip
    """A real picture in whose middle another flows, and where that is.

    Args:
        still: of `STILL`.
        flowing: of `FLOWING`; grey, and lighter than it is.
        length_px: of the streaks.
        angle_deg: of the flow, anticlockwise from the right.
        start_px: how far the water has come when the shutter opens.
        stops: how much brighter the frame is.
        noise: of each pixel, in linear light, 1 being white.
        seed: of the noise.
    """
    ground = light(real(still))
    height, width = ground.shape[:2]
    texture = cv2.cvtColor(light(real(flowing)), cv2.COLOR_RGB2GRAY)
    texture = cv2.resize(texture, (width, height), interpolation=cv2.INTER_AREA)
    texture = texture * np.float32(0.3 / texture.mean())
    water = flowed(texture, length_px, angle_deg, start_px)
    rows, columns = np.mgrid[0:height, 0:width].astype(np.float32)
    inside = (np.abs(columns / width - 0.5) < 0.22) & (np.abs(rows / height - 0.55) < 0.33)
    soft = cv2.GaussianBlur(inside.astype(np.float32), (0, 0), 2)[..., None]
    lit = (ground * (1 - soft) + water[..., None] * soft) * np.float32(2**stops)
    random = np.random.default_rng(seed).standard_normal(lit.shape, np.float32)
    return toned(np.asarray(lit + np.float32(noise) * random, np.float32)), inside


def report(pixels: Pixels, **known: object) -> FrameReport:
    """A report with the settings that are named, and fields of the report itself."""
    settings = {key: known.pop(key) for key in ("shutter_s", "f_number", "iso") if key in known}
    plain = FrameReport(
        file_kind="JPEG",
        width=pixels.shape[1],
        height=pixels.shape[0],
        metadata=FrameMetadata(CameraSettings(**settings)),  # type: ignore[arg-type]
        size_note=SizeNote.FULL,
        clipping=Clipping(0.0, {}),
        room_stops=None,
        advice=Advice.KEEP,
    )
    return replace(plain, **known)  # type: ignore[arg-type]


def frame(pixels: Pixels, share: float | None = None, **known: object) -> MeasuredFrame:
    """The frame as measured; see `report`."""
    return MeasuredFrame(working_copy(pixels), report(pixels, **known), share)
