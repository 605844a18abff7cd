"""The cast of a frame's rock or water: in words, in mired, and the white balance that mends it."""

from __future__ import annotations

from typing import Final

from bot.dialogue.texts import TEXTS, measures
from core.frame.findings import SurfaceCast, Tint
from core.frame.report import FrameReport

#: A cast of the rock and of the water from which on it is worth a line [mired] (own rules: rock
#: has colours of its own; water may stay slightly cool, common practice).
_ROCK_MIRED: Final = 40.0
_WATER_MIRED: Final = 50.0
#: Daylight as cameras name it, and their highest setting [K] (common practice).
_DAYLIGHT_K: Final = 5500.0
_HIGHEST_K: Final = 10_000.0


def line(report: FrameReport) -> tuple[str, dict[str, str]] | None:
    """The cast of the rock, else of the water: key and values; None where there is none.

    Rock has colours of its own, and in a frame without water nobody knows that what is grey is
    rock.
    """
    if report.cast is None:
        return None
    for name, surface, least in (
        ("rock" if report.water is not None else "grey", report.cast.rock, _ROCK_MIRED),
        ("water", report.cast.water, _WATER_MIRED),
    ):
        if surface is None or surface.tint is Tint.NEUTRAL:
            continue
        if surface.mired is None or abs(surface.mired) >= least:
            return _named(name, surface)
    return None


def _named(name: str, surface: SurfaceCast) -> tuple[str, dict[str, str]]:
    values = {"surface": TEXTS[f"surface.{name}"], "tint": TEXTS[f"tint.{surface.tint.value}"]}
    if surface.mired is None:
        return "seen.cast.tint", values
    values["mired"] = measures.plain(round(abs(surface.mired), -1), 0)
    values["kelvin"] = measures.plain(_kelvin_for(surface.mired), 0)
    return f"seen.cast.{'cold' if surface.mired > 0 else 'warm'}", values


def _kelvin_for(mired: float) -> float:
    """The white balance that makes up for a shift, where daylight was set [K].

    A temperature in mired is 10⁶ ÷ K (Priest 1933, from memory); the setting goes the other way.
    """
    wanted = 1e6 / max(1e6 / _DAYLIGHT_K - mired, 1e6 / _HIGHEST_K)
    return round(wanted, -2)
