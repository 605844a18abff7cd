"""What an answer rests on: share, depth, angle of view, and what was assumed."""

from __future__ import annotations

import math
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts, Units
from bot.dialogue.flowing import Flowing
from bot.dialogue.reckoning import Assumed
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.blur import airy_diameter_um
from core.camera import POLARISER_STOPS, Camera
from core.exposure import Settings, ev100
from core.f_number import FNumberChoice
from core.framing import Framing, stand_back_m
from core.light import LIGHTS, metered_level
from core.optics import circle_of_confusion_mm, focus_spread_mm
from core.series import f_number_label, nearest, time_marks
from core.water import Look, band_of, coverage_m
from core.water_speed import GRAVITY_MPS2, foot_speed_range_mps

#: Across the view the angle between flow and lens axis takes nothing off [deg].
_ACROSS_DEG: Final = 90.0
#: Less than this is no difference of brightness [stops] (own rule: half of a printed tenth).
_EVEN: Final = 0.05


def explain_share(turn: Turn, flow: Flowing, shutter_s: float, camera: Camera) -> None:
    """Why this time: speed, coverage and share, in a sum that can be done by hand."""
    units = turn.units
    across = flow.angle_deg == _ACROSS_DEG
    turn.reason(
        "why.share" if across else "why.share_towards",
        speed=measures.fine_speed(flow.speed_mps, units),
        coverage=measures.fine_length(flow.coverage_m, units),
        time=measures.exact_time(nearest(time_marks(camera.dial), shutter_s), shutter_s),
        share=measures.percent(flow.share(shutter_s)),
        angle=measures.degrees(flow.angle_deg),
    )
    _explain_speed(turn, flow)


def _explain_speed(turn: Turn, flow: Flowing) -> None:
    """How the speed was found, with what it comes from."""
    units, from_m = turn.units, flow.from_m or 0.0
    values = {
        "speed": measures.fine_speed(flow.speed_mps, units),
        "height": measures.fine_length(from_m, units or Units.METRIC),
        "gravity": measures.gravity(GRAVITY_MPS2, units),
    }
    if flow.how == "foot":
        low, high = foot_speed_range_mps(from_m)
        values |= {"low": measures.fine_speed(low, units), "high": measures.fine_speed(high, units)}
    turn.reason(f"why.speed.{flow.how}", **values)


def explain_depth(turn: Turn, facts: Facts, focal_mm: float, depth: FNumberChoice) -> None:
    """Why this f-number: what the depth needs, where diffraction blurs as much, what limits it."""
    sensor, dial = reckoning.sensor_of(facts), reckoning.dial_of(facts)
    values = {
        "chosen": f_number_label(depth.exact, dial),
        "best": measures.plain(depth.best),
        "low": f_number_label(sensor.best_f[0], dial),
        "limit": f_number_label(sensor.softening_f, dial),
        "frames": str(depth.stack),
    }
    near_m = reckoning.nearest_of(facts)
    if near_m is None:
        turn.reason("why.no_near", **values)
        return
    far_m = reckoning.farthest_of(facts)
    spread_mm = focus_spread_mm(focal_mm, near_m, far_m or math.inf)
    values["spread"] = measures.significant(spread_mm)
    turn.reason(
        "why.depth" if far_m else "why.depth_far",
        focal=measures.significant(focal_mm),
        near=measures.plain(1000 * near_m, 0),
        far=measures.plain(1000 * (far_m or 0.0), 0),
        disc=measures.significant(circle_of_confusion_mm(sensor.diagonal_mm)),
        needed=measures.plain(depth.needed),
        **values,
    )
    limited = "stack" if depth.stack is not None else depth.limited_by.replace(" ", "_")
    turn.reason(f"why.f_number.{limited}", **values)


def explain_focus(turn: Turn, facts: Facts) -> None:
    """Why focus lies there: between the nearest thing and the farthest."""
    near_m, focus_m = reckoning.nearest_of(facts), reckoning.focus_of(facts)
    if near_m is None or focus_m is None or reckoning.is_phone(facts):
        return
    far_m = reckoning.farthest_of(facts)
    turn.reason(
        "why.focus" if far_m else "why.focus_far",
        near=measures.fine_length(near_m, turn.units),
        far=measures.fine_length(far_m or 0.0, turn.units),
        focus=measures.fine_length(focus_m, turn.units),
    )


def explain_band(turn: Turn, look: Look) -> None:
    """Why this look: its shares."""
    named = TEXTS[f"look.{look.value}"].capitalize()
    turn.reason("why.band", look=named, band=measures.band(*band_of(look)))


def explain_framing(turn: Turn, framing: Framing, side_mm: float, near_m: float | None) -> None:
    """Why this focal length: the angle that the fall and what lies before it take.

    Args:
        turn: the answer under construction; height and distance of the fall are told.
        framing: what was reckoned.
        side_mm: side of the sensor along the fall [mm].
        near_m: the nearest thing in it [m]; None: the fall alone.
    """
    facts, units = turn.facts, turn.units
    eye_m = reckoning.camera_height_of(facts)
    distance_m = facts.distance_m or 1.0
    above_m = (facts.fall_height_m or 0.0) - eye_m
    lowest_m = near_m if near_m is not None and eye_m > 0 else distance_m
    turn.reason(
        "why.angle",
        eye=measures.fine_length(eye_m, units),
        above=measures.fine_length(above_m, units),
        distance=measures.fine_length(distance_m, units),
        up=measures.fine_degrees(math.degrees(math.atan(above_m / distance_m))),
        near=measures.fine_length(lowest_m, units),
        down=measures.fine_degrees(math.degrees(math.atan(eye_m / lowest_m))),
        needed=measures.fine_degrees(framing.needed_deg),
    )
    turn.reason(
        "why.framing",
        half=measures.fine_degrees(framing.needed_deg / 2),
        side=measures.plain(side_mm),
        tight=measures.plain(framing.longest_mm),
        spare=measures.plain(framing.focal_mm),
    )


def explain_level(turn: Turn, settings: Settings, light: str, filter_stops: float = 0.0) -> None:
    """Why so bright: the level of a light by its name, less that of the settings and the filters.

    Args:
        turn: the answer under construction.
        settings: what is set, exact values.
        light: a key of `LIGHTS`; of any other nothing is said.
        filter_stops: what the filters take [stops].
    """
    level = LIGHTS.get(light)
    if level is None:
        return
    set_ev = ev100(settings.f_number, settings.shutter_s, settings.iso)
    over = metered_level(settings, level.ev100, filter_stops)
    turn.reason(
        "why.level_estimate" if level.estimate else "why.level",
        f_number=measures.significant(settings.f_number),
        time=measures.significant(settings.shutter_s),
        iso=measures.plain(settings.iso, 0),
        set=measures.plain(set_ev),
        light=measures.plain(level.ev100),
        filters=measures.plain(filter_stops),
        level=measures.fixed(over, sign=True) if abs(over) >= _EVEN else "0",
    )


def explain_diffraction(turn: Turn, *f_numbers: float) -> None:
    """Why small openings soften: the disc of diffraction at these f-numbers."""
    dial = turn.camera.dial
    discs = [
        TEXTS["why.disc_at"].format(
            f_number=f_number_label(f_number, dial),
            disc=measures.plain(airy_diameter_um(f_number), 0),
        )
        for f_number in f_numbers
    ]
    turn.reason("why.diffraction", list=", ".join(discs))


def explain_polariser(turn: Turn, bare_s: float, longer_s: float) -> None:
    """Why so much longer with the polariser."""
    marks = time_marks(turn.camera.dial)
    turn.reason(
        "why.polariser",
        stops=measures.plain(POLARISER_STOPS),
        factor=measures.significant(2**POLARISER_STOPS),
        time=measures.exact_time(nearest(marks, bare_s), bare_s),
        longer=measures.exact_time(nearest(marks, longer_s), longer_s),
    )


def explain_stand_back(turn: Turn, above_m: float, focal_mm: float, side_mm: float) -> None:
    """Why so far back: from there a level camera just holds the top."""
    turn.reason(
        "why.stand_back",
        above=measures.fine_length(above_m, turn.units),
        focal=measures.significant(focal_mm),
        side=measures.plain(side_mm),
        distance=measures.fine_length(stand_back_m(above_m, focal_mm, side_mm), turn.units),
    )


def explain_coverage(turn: Turn, side_mm: float, focal_mm: float) -> None:
    """Why so much of the water is in the frame."""
    distance_m = turn.facts.distance_m or 1.0
    turn.reason(
        "why.coverage",
        side=measures.plain(side_mm),
        distance=measures.fine_length(distance_m, turn.units),
        focal=measures.plain(focal_mm),
        coverage=measures.fine_length(float(coverage_m(distance_m, side_mm, focal_mm)), turn.units),
    )


def tell_assumed(
    turn: Turn, assumed: Assumed, camera: Camera, *, role: Role = Role.ASSUMPTION
) -> None:
    """Name the assumptions behind an answer, in one line; where asked for, in a better place."""
    named = [
        TEXTS[f"assumed.{key}"].format(
            **{
                name: (
                    measures.focal(value, camera.sensor.crop_factor)
                    if name == "focal_mm"
                    else measures.speed(value, turn.units)
                    if name == "speed_mps"
                    else measures.length(value, turn.units)
                )
                for name, value in numbers.items()
            }
        )
        for key, numbers in assumed.keys.items()
    ]
    if named:
        turn.say(role, "assumed", list=measures.listing(named, TEXTS["and"]))
