"""Builders for the tests of the levers."""

from __future__ import annotations

from typing import Any, Final

from core.adjust import Lever, Plan, Setting, Situation, Step
from core.camera import FORMATS, Camera
from core.exposure import Settings
from core.series import exact_f_number, exact_iso, exact_shutter_s

FULL_FRAME: Final = Camera(FORMATS["full frame"])
PHONE: Final = Camera(
    FORMATS["phone"], base_iso=50, highest_iso=1600, longest_s=0.25, shortest_s=2**-13, bulb=False
)
TIME: Final[frozenset[Setting]] = frozenset({"time"})
TIME_AND_F: Final[frozenset[Setting]] = frozenset({"time", "f_number"})
ALL: Final[frozenset[Setting]] = frozenset({"time", "f_number", "iso"})
DIALS: Final = (Lever.TIME, Lever.ISO, Lever.APERTURE)


def dialled(f_number: float, shutter_s: float, iso: float = 100) -> Settings:
    """Settings as typed, with the exact values behind them."""
    return Settings(exact_f_number(f_number), exact_shutter_s(shutter_s), exact_iso(iso))


def a_situation(
    settings: Settings, change_stops: float, camera: Camera = FULL_FRAME, **more: Any
) -> Situation:
    """A full-frame camera on a tripod with an f/4 lens, unless told otherwise."""
    return Situation(settings, change_stops, camera, **{"widest_f": 4.0, **more})


def levers(found: Plan) -> list[tuple[str, float]]:
    """What a plan moves, in order, by how much."""
    return [(step.lever.value, round(step.stops, 2)) for step in found.steps]


def offered(steps: tuple[Step, ...], lever: Lever) -> Step:
    """The one offer of a lever."""
    (found,) = [step for step in steps if step.lever is lever]
    return found
