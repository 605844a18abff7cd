"""Another time at the same brightness: by ISO, by the opening, or by a filter."""

from __future__ import annotations

import math
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.facts import Facts
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.walk_state import GivenSettings
from core.adjust.darker_ways import MOST_FRAMES
from core.camera import Camera
from core.exposure import frames_for
from core.series import (
    SAME_STOPS,
    f_number_label,
    f_number_marks,
    iso_label,
    iso_marks,
    nearest,
    shutter_label,
)

#: Past the format's limit by less an f-number is still that limit (own rule: rounding of marks).
_AT_LIMIT: Final = 1.02


def with_time(given: GivenSettings, time_s: float, camera: Camera, facts: Facts) -> str:
    """The time, with what makes it as bright as the settings given: `1/15 s ISO 400`.

    Shorter times take ISO; longer ones give ISO back, then the opening is closed as far as the
    format stays sharp, then a filter takes the rest.

    Args:
        given: what is as bright as it shall be, exact values.
        time_s: the time that is wanted [s], exact.
        camera: the person's.
        facts: what is known; for who has no ND short frames that are averaged, or darker light,
            stand for it.
    """
    time = shutter_label(time_s, camera.dial)
    stops = math.log2(time_s / given.shutter_s)
    if abs(stops) < SAME_STOPS:
        return time
    iso = given.iso * 2.0**-stops
    if iso * 2**SAME_STOPS >= camera.base_iso:
        return f"{time} {iso_label(nearest(iso_marks(camera.dial), iso).exact, camera.dial)}"
    base = f" {iso_label(camera.base_iso, camera.dial)}" if given.iso > camera.base_iso else ""
    taken = math.log2(camera.base_iso / iso)
    averaged_s = time_s if reckoning.has_no_nd(facts) else None
    return f"{time}{base} {_taken(given, taken, camera, averaged_s)}"


def _taken(given: GivenSettings, stops: float, camera: Camera, averaged_s: float | None) -> str:
    """What takes so many stops: the opening where the format has them, else a filter.

    Without one a time is made of short frames; more of them than anybody takes are no way.
    """
    closed = given.f_number * 2 ** (stops / 2)
    sensor = camera.sensor
    if sensor.fixed_f_number is None and closed <= sensor.softening_f * _AT_LIMIT:
        return f_number_label(nearest(f_number_marks(camera.dial), closed).exact, camera.dial)
    if averaged_s is not None:
        frames = frames_for(stops)
        each = shutter_label(averaged_s / 2**stops, camera.dial)
        text = TEXTS["filter.averaged" if frames <= MOST_FRAMES else "filter.darker_light"]
        return text.format(frames=frames, time=each)
    return TEXTS["filter.nd"].format(stops=measures.plain(round(stops), 0))
