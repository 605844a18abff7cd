"""The camera of the scenes: exposure, noise, saturation, white balance, tone curve and back."""

from __future__ import annotations

import math
from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.working import LINEAR_OF_CODE
from tests.scenes.noise import Field

#: A mid-tone of 18 % of the level that saturates, as in the sRGB standard's usual use.
MID_TONE = 0.18


@dataclass(frozen=True)
class Exposure:
    """What the camera is set to, as exact values: f/11 is 2**3.5, 1/4 s is 2**-2."""

    f_number: float = 2**3.5
    shutter_s: float = 2**-2
    iso: float = 100.0

    def ev100(self) -> float:
        """Exposure value at ISO 100: log2(N² / t) − log2(ISO / 100)."""
        return math.log2(self.f_number**2 / self.shutter_s) - math.log2(self.iso / 100)


@dataclass(frozen=True)
class Sensor:
    """How light becomes numbers.

    Args:
        saturation_stops: where a channel saturates, above the metered mid-tone [stops].
        balance: gain of red, green, blue before saturation, 1 = neutral.
        full_well: electrons at saturation at ISO 100; sets the shot noise; 0 turns noise off.
        read_noise: electrons.
    """

    saturation_stops: float = math.log2(1 / MID_TONE)
    balance: tuple[float, float, float] = (1.0, 1.0, 1.0)
    full_well: float = 40_000.0
    read_noise: float = 3.0


def level_stops(exposure: Exposure, light_ev100: float, filter_stops: float = 0.0) -> float:
    """How much brighter than metered the frame is [stops]; `light_ev100` meters as 0."""
    return light_ev100 - exposure.ev100() - filter_stops


def linear(
    radiance: Field,
    exposure: Exposure,
    light_ev100: float,
    sensor: Sensor,
    *,
    rng: np.random.Generator,
    filter_stops: float = 0.0,
) -> Field:
    """Linear values of the frame; 1 is where a channel saturates, and above is kept.

    Args:
        radiance: shape (H, W, 3), 1 = the scene's mid-tone under its light.
        exposure: settings.
        light_ev100: the scene's light [EV at ISO 100].
        sensor: the sensor.
        rng: for the noise.
        filter_stops: light that a filter takes [stops].
    """
    stops = level_stops(exposure, light_ev100, filter_stops) - sensor.saturation_stops
    values = radiance * np.float32(2.0**stops) * np.asarray(sensor.balance, np.float32)
    if sensor.full_well <= 0:
        return np.asarray(values, dtype=np.float32)
    electrons = sensor.full_well * 100 / exposure.iso
    # Shot noise as a normal deviate: fine from a few dozen electrons on.
    spread = np.sqrt(np.maximum(values, 0) * np.float32(electrons) + sensor.read_noise**2)
    noise = rng.standard_normal(values.shape, dtype=np.float32)
    return np.asarray(values + noise * spread / np.float32(electrons), dtype=np.float32)


@dataclass(frozen=True)
class Curve:
    """How a camera's picture differs from the sRGB curve; black and white stay.

    Args:
        shoulder: how much the lights are compressed; the slope at white is 1 / (1 + shoulder).
        contrast: how steep the middle is, 0 to below 1; the slopes at both ends are 1 less that.
    """

    shoulder: float = 0.0
    contrast: float = 0.0


def toned(values: Field, curve: Curve = Curve()) -> NDArray[np.uint8]:
    """8-bit values by the sRGB curve and what a camera does to it; 1 and more become 255.

    Source: IEC 61966-2-1, the piecewise curve (from memory).
    """
    # A table over 16 bits: the power of six million values is slow.
    grid = np.arange(65536) / 65535
    codes = np.where(grid <= 0.0031308, 12.92 * grid, 1.055 * grid ** (1 / 2.4) - 0.055)
    codes = (1 + curve.shoulder) * codes / (1 + curve.shoulder * codes)
    codes -= curve.contrast * np.sin(2 * np.pi * codes) / (2 * np.pi)
    table = np.round(codes * 255).astype(np.uint8)
    places = np.clip(values * np.float32(65535), 0, 65535).astype(np.uint16)
    return np.asarray(table[places], dtype=np.uint8)


def codes_of(file: bytes) -> NDArray[np.uint8]:
    """Pixels of a picture file, red, green, blue, shape (h, w, 3)."""
    decoded = cv2.imdecode(np.frombuffer(file, np.uint8), cv2.IMREAD_COLOR)
    return np.asarray(cv2.cvtColor(np.asarray(decoded, np.uint8), cv2.COLOR_BGR2RGB), np.uint8)


def light_of_codes(codes: NDArray[np.generic]) -> Field:
    """Linear light of codes, the sRGB curve assumed, shape (h, w, 3), 0 to 1; to be read only."""
    light = np.asarray(cv2.LUT(np.asarray(codes, np.uint8), LINEAR_OF_CODE), np.float32)
    light.flags.writeable = False
    return light
