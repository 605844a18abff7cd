"""How bright frames told at home are, against each other and against the meter."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from bot.dialogue.steps.home.told_frames import common, frames_of
from bot.dialogue.steps.home.told_names import name
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.camera import POLARISER_STOPS
from core.exposure import ev100
from core.light import LIGHTS
from core.series import SAME_STOPS, exact_f_number, exact_iso, exact_shutter_s

#: What a frame is taken to have been set to where nobody says; only differences count.
_ANY_F: Final = 8.0


@dataclass(frozen=True)
class Reference:
    """What the brightness of frames is told against: a frame, or the meter (no place)."""

    level_stops: float
    place: int | None


def level_of(turn: Turn, place: int) -> float:
    """Brightness of a frame against others of the same light [stops]; + is brighter."""
    frames = frames_of(turn)
    frame = frames[place]
    f_number = frame.f_number or common(other.f_number for other in frames) or _ANY_F
    iso = exact_iso(frame.iso) if frame.iso else usual_iso(turn)
    bare = -ev100(exact_f_number(f_number), exact_shutter_s(frame.shutter_s), iso)
    return bare - (frame.nd_on_stops or 0.0)


def usual_iso(turn: Turn) -> float:
    """The ISO of most frames; the camera's base where nobody said, as on a tripod."""
    told = common(frame.iso for frame in frames_of(turn))
    return exact_iso(told) if told else turn.camera.base_iso


def metered_s(turn: Turn, f_number: float, iso: float) -> float:
    """The time that the meter wants at other settings in the light that was told [s]."""
    return float(2 ** ((meter_level(turn) or 0.0) + ev100(f_number, 1.0, iso)))


def meter_level(turn: Turn) -> float | None:
    """The level that the meter wants in the light that was told, filters counted [stops]."""
    facts = turn.facts
    light = LIGHTS.get(facts.light or "")
    if light is None or not any(frame.f_number for frame in frames_of(turn)):
        return None
    polariser = POLARISER_STOPS if facts.polariser_on else 0.0
    return -light.ev100 + (facts.nd_on_stops or 0.0) + polariser


def reference_of(turn: Turn) -> Reference:
    """What brightness is told against: the metered frame, the meter, else the brightest frame."""
    frames, meter = frames_of(turn), meter_level(turn)
    metered = next((place for place, frame in enumerate(frames) if frame.metered), None)
    if metered is not None:
        return Reference(level_of(turn, metered), metered)
    if meter is not None:
        return Reference(meter, None)
    brightest = max(range(len(frames)), key=lambda place: round(level_of(turn, place), 3))
    return Reference(level_of(turn, brightest), brightest)


def side_of(stops: float) -> str:
    """Which way a brightness differs: `same`, `over` or `under`."""
    return "same" if abs(stops) < SAME_STOPS else "over" if stops > 0 else "under"


def level_text(turn: Turn, place: int, against: Reference | None = None) -> str:
    """How a frame's brightness differs: `; 3 stops under 1/2 s`; "" for the reference itself."""
    reference = against or reference_of(turn)
    if reference.place == place:
        return ""
    stops = level_of(turn, place) - reference.level_stops
    side = side_of(stops)
    if reference.place is None:
        side, other = "metered" if side == "same" else side, TEXTS["home.the_meter"]
    else:
        other = name(turn, reference.place)
    return TEXTS[f"home.level.{side}"].format(stops=measures.stops(stops), other=other)
