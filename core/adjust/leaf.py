"""The second, short frame for leaves that the wind moves."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from core.camera import Camera
from core.domain import positive
from core.exposure import Settings, brightness_change
from core.series import EQUAL, at_most, f_number_marks, iso_marks, nearest, time_marks

#: Time that holds leaves in a light wind: the mark 1/125 s, 2^-7 s (common practice).
LEAF_TIME_S: Final = 2**-7
#: Noise is borne in leaves that is not in water: ISO 3200 (common practice).
LEAF_TOP_ISO: Final = 3200.0
#: The aperture may open by a stop if the near leaf stays sharp (common practice) [stops].
LEAF_OPEN_STOPS: Final = 1.0


@dataclass(frozen=True)
class LeafFrame:
    """Settings of the leaf frame, and what it stays darker than the water frame.

    Args:
        settings: exact; filters stay as they are.
        darker_stops: what neither ISO nor aperture could give [stops]; lift it, or wait for a lull.
    """

    settings: Settings
    darker_stops: float


def leaf_frame(
    water: Settings, camera: Camera, widest_f: float, longest_s: float = LEAF_TIME_S
) -> LeafFrame:
    """The same brightness in a time that holds the leaves: ISO first, then a stop of aperture.

    Args:
        water: settings of the water frame, exact.
        camera: its dials and limits; a fixed f-number stays.
        widest_f: smallest f-number of the lens, above 0.
        longest_s: longest time that holds the leaves [s], above 0.

    Returns:
        Settings on the dial's marks; the water frame's own where they are short enough already.

    Raises:
        OutOfDomainError: a number is not positive and finite, or `longest_s` is shorter than
            any mark.
    """
    positive("widest_f", widest_f, "")
    positive("longest_s", longest_s, "s")
    if water.shutter_s <= longest_s * EQUAL:
        return LeafFrame(water, 0.0)
    shutter_s = at_most(time_marks(camera.dial), longest_s).exact
    top_iso = max(min(LEAF_TOP_ISO, camera.highest_iso), water.iso)
    needed_iso = water.iso * water.shutter_s / shutter_s
    iso = water.iso
    if top_iso > water.iso:
        marks = [mark for mark in iso_marks(camera.dial) if mark.exact <= top_iso * EQUAL]
        iso = max(nearest(marks, min(needed_iso, top_iso)).exact, water.iso)
    missing = math.log2(needed_iso / iso)
    f_number = _opened(water.f_number, missing, camera, widest_f)
    settings = Settings(f_number, shutter_s, iso)
    return LeafFrame(settings, max(-brightness_change(water, settings), 0.0))


def _opened(f_number: float, missing: float, camera: Camera, widest_f: float) -> float:
    """The f-number opened by what is missing, a stop at most, on a mark."""
    if camera.sensor.fixed_f_number is not None:
        return f_number
    goal = f_number / 2 ** (min(max(missing, 0.0), LEAF_OPEN_STOPS) / 2)
    marks = [
        mark
        for mark in f_number_marks(camera.dial)
        if widest_f <= mark.exact * EQUAL and mark.exact < f_number
    ]
    if not marks or missing <= 0.5 / camera.dial.value:
        return f_number
    return nearest(marks, max(goal, widest_f)).exact
