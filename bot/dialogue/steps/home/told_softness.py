"""Why a told frame is soft all over: diffraction, too open for the near rock, or it moved."""

from __future__ import annotations

from bot.dialogue import reckoning
from bot.dialogue.steps.home import told_frames, told_shares
from bot.dialogue.steps.walk.taken import least_label
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from core.blur import airy_diameter_um
from core.series import exact_f_number, f_number_label


def cause_of(turn: Turn, place: int) -> str:
    """Why a frame is soft: `diffraction`, `too_open`, `soft_phone` or `moved`."""
    facts, told_f = told_shares.facts_of(turn, place), _f_number(turn, place)
    if reckoning.is_phone(facts):
        return "soft_phone"
    if told_f is None:
        return "moved"
    if reckoning.sensor_of(facts).softens(told_f):
        return "diffraction"
    focal_mm, near_m = reckoning.focal_of(facts), reckoning.nearest_of(facts)
    if focal_mm is None or near_m is None:
        return "moved"
    needed = reckoning.depth_of(facts, focal_mm).needed
    return "too_open" if needed > told_f * 1.05 else "moved"


def _f_number(turn: Turn, place: int) -> float | None:
    frames = told_frames.frames_of(turn)
    marked = frames[place].f_number or told_frames.common(frame.f_number for frame in frames)
    return None if marked is None else exact_f_number(marked)


def values_of(turn: Turn, place: int) -> dict[str, str]:
    """The numbers behind a frame's softness: its blur, and what the near rock wanted."""
    facts, f_number = told_shares.facts_of(turn, place), _f_number(turn, place)
    focal_mm, near_m = reckoning.focal_of(facts), reckoning.nearest_of(facts)
    sensor, dial = reckoning.sensor_of(facts), reckoning.dial_of(facts)
    if f_number is None:
        return {}
    better = sensor.best_f[1]
    values = {
        "f_number": f_number_label(f_number, dial),
        "better": f_number_label(better, dial),
        "blur": measures.plain(airy_diameter_um(f_number), 0),
        "better_blur": measures.plain(airy_diameter_um(better), 0),
    }
    if focal_mm is not None and near_m is not None:
        needed = reckoning.depth_of(facts, focal_mm).needed
        values["needed"] = least_label(max(needed, 1.0), dial)
        values["focal"] = measures.focal(focal_mm, sensor.crop_factor)
        values["near"] = measures.length(near_m, turn.units)
    return values
