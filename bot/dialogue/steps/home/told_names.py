"""How frames told at home are named: by their time, and by what sets them apart."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from bot.dialogue import solving
from bot.dialogue.steps.home.told_frames import common, frames_of
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.camera import Camera
from core.series import exact_f_number, exact_shutter_s, f_number_label


def name(turn: Turn, place: int) -> str:
    """A frame by its time; by what sets it apart, too: `2 s f/22`, `1/4 s 50 mm`."""
    frame = frames_of(turn)[place]
    time = solving.time_text(exact_shutter_s(frame.shutter_s), turn.camera)
    apart = _apart(turn, frame.f_number, "f_number", _f_text)
    if apart:
        return TEXTS["home.frame_f"].format(time=time, f_number=apart)
    apart = _apart(turn, frame.focal_mm, "focal_mm", _focal_text)
    return TEXTS["home.frame_focal"].format(time=time, focal=apart) if apart else time


def _apart(turn: Turn, own: float | None, slot: str, text: Callable[[Camera, float], str]) -> str:
    """A value of a frame in words, where most frames have another one; else ""."""
    usual = common(getattr(frame, slot) for frame in frames_of(turn))
    if own is None or usual is None:
        return ""
    camera = turn.camera
    shown = text(camera, own)
    return "" if shown == text(camera, usual) else shown


def _f_text(camera: Camera, f_number: float) -> str:
    return f_number_label(exact_f_number(f_number), camera.dial)


def _focal_text(camera: Camera, focal_mm: float) -> str:
    return measures.focal(focal_mm, camera.sensor.crop_factor)


def names(turn: Turn, places: Sequence[int]) -> str:
    """Several frames by their names; "all of them" where they are more than two and all."""
    if len(places) > 2 and len(places) == len(frames_of(turn)):
        return TEXTS["home.all"]
    return measures.listing([name(turn, place) for place in places], TEXTS["and"])


def named(turn: Turn, places: Sequence[int]) -> dict[str, str]:
    """Several frames by their names, within a sentence and at its beginning."""
    frames = names(turn, places)
    of_all = frames == TEXTS["home.all"]
    return {"frames": frames, "named": TEXTS["home.all_named"] if of_all else frames}
