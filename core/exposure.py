"""Exposure value, equivalent settings, averaging, bracketing."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final, overload

import numpy as np
from numpy.typing import ArrayLike

from core.domain import FloatArray, between, positive
from core.series import SAME_STOPS, Dial, f_number_label, iso_label, shutter_label

#: Range of exposure values in which the formulas are used (own rule: starlight is about -7,
#: nothing on land exceeds 20).
EV_RANGE: Final = (-30.0, 30.0)
#: Most stops of light for which frames are averaged (own rule: 4096 frames are more than anybody
#: takes).
MOST_AVERAGED_STOPS: Final = 12.0
#: Largest contrast of a scene, and largest step of a bracket, that are reckoned with [stops] (own
#: rule: the sun against a cave is about 30).
MOST_CONTRAST_STOPS: Final = 30.0
MOST_STEP_STOPS: Final = 5.0


@dataclass(frozen=True)
class Settings:
    """What is set on the camera, as exact values (f/11 is 11.3137); filters are told apart.

    Args:
        f_number: focal length over the diameter of the opening, above 0.
        shutter_s: exposure time [s], above 0.
        iso: speed, above 0.

    Raises:
        OutOfDomainError: a number is not positive and finite.
    """

    f_number: float
    shutter_s: float
    iso: float = 100.0

    def __post_init__(self) -> None:
        positive("f_number", self.f_number, "")
        positive("shutter_s", self.shutter_s, "s")
        positive("iso", self.iso, "")

    def labels(self, dial: Dial = Dial.THIRDS) -> tuple[str, str, str]:
        """F-number, time and speed as the camera's dials show them."""
        return (
            f_number_label(self.f_number, dial),
            shutter_label(self.shutter_s, dial),
            iso_label(self.iso, dial),
        )


@overload
def exposure_value(f_number: float, shutter_s: float) -> float: ...
@overload
def exposure_value(f_number: ArrayLike, shutter_s: ArrayLike) -> float | FloatArray: ...
def exposure_value(f_number: ArrayLike, shutter_s: ArrayLike) -> float | FloatArray:
    """Exposure value of f-number and time: log2(N^2 / t); 0 at f/1 and 1 s, +1 per stop less.

    Args:
        f_number: N, shape (...), above 0.
        shutter_s: t, shape (...) that broadcasts with it, [s], above 0.

    Returns:
        Exposure value, broadcast shape; a float for two numbers.

    Raises:
        OutOfDomainError: an element is not positive and finite.

    Source: GNU units 2.22, definitions file, section on photographic exposure value.
    """
    return aperture_value(f_number) + time_value(shutter_s)


@overload
def ev100(f_number: float, shutter_s: float, iso: float = 100.0) -> float: ...
@overload
def ev100(
    f_number: ArrayLike, shutter_s: ArrayLike, iso: ArrayLike = 100.0
) -> float | FloatArray: ...
def ev100(f_number: ArrayLike, shutter_s: ArrayLike, iso: ArrayLike = 100.0) -> float | FloatArray:
    """Level of light for which settings are right, as exposure value at ISO 100.

    The exposure value of f-number and time, less log2(ISO / 100).

    Args:
        f_number: shape (...), above 0.
        shutter_s: shape (...), [s], above 0.
        iso: shape (...), above 0.

    Returns:
        EV at ISO 100, broadcast shape; a float for numbers.

    Raises:
        OutOfDomainError: an element is not positive and finite.

    Source: as `exposure_value`.
    """
    level: float | FloatArray
    level = exposure_value(f_number, shutter_s) - np.log2(positive("iso", iso, "") / 100)
    return level


@overload
def aperture_value(f_number: float) -> float: ...
@overload
def aperture_value(f_number: ArrayLike) -> float | FloatArray: ...
def aperture_value(f_number: ArrayLike) -> float | FloatArray:
    """Aperture value Av = 2 log2(N), shape of `f_number`; f/1 is 0, f/11 is 7.

    Args:
        f_number: N, shape (...), above 0.

    Raises:
        OutOfDomainError: an element is not positive and finite.

    Source: Exif 2.3 (CIPA DC-008-2010), Annex C, from memory.
    """
    value: float | FloatArray = 2 * np.log2(positive("f_number", f_number, ""))
    return value


@overload
def time_value(shutter_s: float) -> float: ...
@overload
def time_value(shutter_s: ArrayLike) -> float | FloatArray: ...
def time_value(shutter_s: ArrayLike) -> float | FloatArray:
    """Time value Tv = -log2(t / 1 s), shape of `shutter_s`; 1 s is 0, 1/60 s (1/64) is 6.

    Args:
        shutter_s: t, shape (...), [s], above 0.

    Raises:
        OutOfDomainError: an element is not positive and finite.

    Source: Exif 2.3 (CIPA DC-008-2010), Annex C, from memory.
    """
    value: float | FloatArray = -np.log2(positive("shutter_s", shutter_s, "s"))
    return value


def brightness_change(before: Settings, after: Settings) -> float:
    """How much brighter the second settings expose the same scene [stops]; filters apart."""
    return ev100(before.f_number, before.shutter_s, before.iso) - ev100(
        after.f_number, after.shutter_s, after.iso
    )


def frames_for(stops: float) -> int:
    """Frames to average so that together they gather `stops` more light than one: 2^stops, up.

    Args:
        stops: 0 to 12.

    Raises:
        OutOfDomainError: `stops` is out of range.

    Source: sum of exposure times.
    """
    between("stops", stops, "stops", 0.0, MOST_AVERAGED_STOPS)
    # 2^3 shall be 8, whatever the last bit of `stops` says.
    return math.ceil(2**stops * (1 - 1e-9))


def averaging_noise(frames: int) -> float:
    """Noise of the average of so many frames, one frame being 1: 1 / sqrt(frames).

    Args:
        frames: at least 1.

    Raises:
        OutOfDomainError: `frames` is below 1.

    Source: mean of independent values; EMVA Standard 1288, from memory (formula only).
    """
    between("frames", frames, "", 1, math.inf)
    return 1 / math.sqrt(frames)


def bracket(contrast_stops: float, held_stops: float, step: float = 2.0) -> tuple[float, ...]:
    """Offsets of the fewest frames, the middle one unchanged, that hold a scene's contrast.

    Args:
        contrast_stops: from the darkest to the brightest that shall show detail [stops], 0 to 30.
        held_stops: what one frame holds [stops], above 0 to 30.
        step: between two frames [stops], above 0 to 5; 2 is common practice.

    Returns:
        Offsets [stops], rising, an odd number of them; (0.0,) when one frame is enough.

    Raises:
        OutOfDomainError: a number is out of range.
    """
    between("contrast_stops", contrast_stops, "stops", 0.0, MOST_CONTRAST_STOPS)
    positive("held_stops", held_stops, "stops", MOST_CONTRAST_STOPS)
    positive("step", step, "stops", MOST_STEP_STOPS)
    missing_each_side = max(contrast_stops - held_stops, 0.0) / 2
    steps = math.ceil(missing_each_side / step - 1e-9)
    return tuple(step * place for place in range(-steps, steps + 1))


def same_stops(one: float, other: float) -> bool:
    """Whether two times, or two speeds, are the same to a dial and to the eye.

    Args:
        one: time [s] or ISO, above 0.
        other: the same of another frame.
    """
    return abs(math.log2(one / other)) <= SAME_STOPS
