"""How much brighter one frame is than another, by their pixels and by what they state."""

from __future__ import annotations

import math
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.exposure import Settings, brightness_change
from core.frame.laid import LEAST_PART, MeasuredFrame
from core.frame.report import CameraSettings
from core.frame.working import luminance_of

Mask = NDArray[np.bool_]
Pixels = NDArray[np.uint8]

#: Linear light between which tones are compared: below noise and black point rule, above the
#: shoulder of the tone curve. Own rule.
_TONES: Final = (0.008, 0.6)
#: Smoothing, so that misalignment and noise don't count [px]. Own rule.
_SMOOTHING_PX: Final = 2.0
#: Measured and stated differences disagree beyond this much, and beyond this part of the larger:
#: tone curves stretched true steps of 1.0 to 1.4, and of 1.6 to 2.1 stops. Measured; own rule.
DISAGREE_STOPS: Final = 0.6
DISAGREE_PART: Final = 0.4
#: Pictures that never differ by more codes than this, and by less on average, are one: a new
#: compression makes no more. Own rule.
_MOST_CODES: Final = 10
_MEAN_CODES: Final = 0.5
#: Stated settings of one picture that differ by more than this [stops] are a false statement.
_SAME_STOPS: Final = 0.2


def measured_stops(first: Pixels, second: Pixels, still: Mask) -> float | None:
    """How much brighter the second frame is, by what stands still [stops], "about".

    Args:
        first: shape (h, w, 3).
        second: the other one laid on it, of the same shape.
        still: what is compared, shape (h, w).

    Returns:
        The median over the places whose tones are good in both, in linear light with the sRGB
        curve assumed; None where there are too few.
    """
    one = cv2.GaussianBlur(luminance_of(first), (0, 0), _SMOOTHING_PX)
    two = cv2.GaussianBlur(luminance_of(second), (0, 0), _SMOOTHING_PX)
    low, high = _TONES
    good = still & (np.minimum(one, two) > low) & (np.maximum(one, two) < high)
    if float(good.mean()) < LEAST_PART:
        return None
    return float(np.median(np.log2(two[good] / one[good])))


def stated_stops(first: CameraSettings, second: CameraSettings) -> float | None:
    """How much brighter the second is by time, f-number and ISO; None where one is missing.

    Filters and the light itself are in no file: a filter that was put on shows as a disagreement.
    """
    settings = [_settings(one) for one in (first, second)]
    if settings[0] is None or settings[1] is None:
        return None
    return float(brightness_change(settings[0], settings[1]))


def _settings(stated: CameraSettings) -> Settings | None:
    if stated.f_number is None or stated.shutter_s is None or stated.iso is None:
        return None
    return Settings(stated.f_number, stated.shutter_s, stated.iso)


def disagree(measured: float | None, stated: float | None, *, identical: bool) -> bool:
    """Pixels and metadata tell different stories.

    Args:
        measured: difference by the pixels [stops], None: not known.
        stated: by the metadata [stops].
        identical: the two are one picture.
    """
    if stated is None:
        return False
    if identical:
        return abs(stated) > _SAME_STOPS
    if measured is None:
        return False
    larger = max(abs(measured), abs(stated))
    return bool(abs(measured - stated) > max(DISAGREE_STOPS, DISAGREE_PART * larger))


def identical(first: MeasuredFrame, second: MeasuredFrame) -> bool:
    """The two files hold one picture, if need be compressed anew."""
    if first.bits and first.bits == second.bits:
        return True
    one, two = first.work.pixels, second.work.pixels
    if one.shape != two.shape:
        return False
    difference = cv2.absdiff(one, two)
    return int(difference.max()) <= _MOST_CODES and float(difference.mean()) <= _MEAN_CODES


def times_apart_stops(first_s: float | None, second_s: float | None) -> float | None:
    """How much longer the second time is [stops]; None where one is not known."""
    if first_s is None or second_s is None:
        return None
    return math.log2(second_s / first_s)
