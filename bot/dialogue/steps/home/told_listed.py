"""What is answered at home to facts: the place, the list of frames, the light, the depth."""

from __future__ import annotations

import math
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.reckoning import Assumed
from bot.dialogue.steps.home import told_frames, told_levels, told_names, told_shares
from bot.dialogue.steps.walk import reasons
from bot.dialogue.steps.walk.taken import least_label
from bot.dialogue.texts import TEXTS, known, measures
from bot.dialogue.turn import Turn
from core.exposure import Settings
from core.light import LIGHTS
from core.optics import circle_of_confusion_mm, depth_limits_m
from core.series import exact_f_number, exact_shutter_s, f_number_label

#: A fall or place is told: shares change with it.
SHARES: Final = frozenset(
    {"fall_height_m", "distance_m", "focal_mm", "camera_format", "portrait", "section", "stream"}
    | {"section_height_m", "water_speed_mps", "water_depth_m", "flow", "lenses", "fall_width_m"}
)
_LIGHT: Final = frozenset({"light", "nd_on_stops", "polariser_on"})


def table(turn: Turn) -> None:
    """Each frame with its share, its look and how bright it is, a line each."""
    frames, camera = told_frames.frames_of(turn), turn.camera
    reference = told_levels.reference_of(turn)
    for place in range(len(frames)):
        turn.say(
            Role.SETTINGS,
            "home.listed",
            frame=told_names.name(turn, place),
            level=told_levels.level_text(turn, place, reference),
            # A number beyond the whole frame tells which of several went further.
            share=measures.percent(told_shares.share_of(turn, place)),
            look=TEXTS[f"look.{told_shares.look_in(turn, place).value}"],
        )
    assumed = Assumed()
    facts = told_shares.facts_of(turn, len(frames) - 1)
    flow = reckoning.flowing_or_usual(facts, reckoning.focal_of(facts), assumed)
    reasons.tell_assumed(turn, assumed, camera)
    reasons.explain_share(turn, flow, exact_shutter_s(frames[-1].shutter_s), camera)
    reasons.explain_band(turn, reckoning.wished_look(facts))
    if not any(frame.sights or frame.liked for frame in frames):
        turn.say(Role.CHECK, "home.what_seen")


def told(turn: Turn, facts: Facts, focus_m: float | None, *, new: bool, changed: bool) -> None:
    """Answer what was told: the shares it changes, the meter in that light, the depth.

    Args:
        turn: the answer under construction.
        facts: of the place and the light; kept by now.
        focus_m: where the lens was focused [m], where it was told.
        new: frames are new.
        changed: frames are new, or their settings are.
    """
    slots, frames = set(facts.known()), told_frames.frames_of(turn)
    metered = bool(frames and slots & _LIGHT) and told_levels.meter_level(turn) is not None
    listed = bool(frames) and (new or bool(slots & SHARES) or (changed and not metered))
    if listed:
        table(turn)
    elif slots & SHARES and told_shares.is_placed(turn):
        _say_place(turn)
    if metered:
        _say_metered(turn, listed=listed)
    if "nearest_m" in slots or focus_m is not None:
        _say_depth(turn, focus_m)
    if not turn.parts:
        turn.say(Role.SETTINGS, "noted", list=known(facts, turn.units))
    if not frames:
        turn.say(Role.CHECK, "home.which_frames")


def _say_place(turn: Turn) -> None:
    facts, flow, ends = turn.facts, told_shares.flow_of(turn), told_shares.ends_of_look(turn)
    crop = reckoning.sensor_of(facts).crop_factor
    turn.say(
        Role.SETTINGS,
        "home.place",
        distance=measures.length(facts.distance_m or 0.0, turn.units),
        focal=measures.focal(reckoning.focal_of(facts) or 0.0, crop),
        covers=measures.length(flow.coverage_m, turn.units),
        look=TEXTS[f"look.{reckoning.wished_look(facts).value}"],
        shortest=ends["shortest"],
        longest=ends["longest"],
    )
    assumed = Assumed()
    camera = reckoning.camera_of(facts, assumed)
    reasons.tell_assumed(turn, assumed, camera)


def _say_metered(turn: Turn, *, listed: bool) -> None:
    """The time that the meter wants in the told light; how far each frame is, if not listed."""
    frames, camera = told_frames.frames_of(turn), turn.camera
    f_number = exact_f_number(told_frames.common(frame.f_number for frame in frames) or 1.0)
    iso = told_levels.usual_iso(turn)
    wanted_s = told_levels.metered_s(turn, f_number, iso)
    time_s = min(max(wanted_s, camera.shortest_s), camera.longest_s)
    wanted = Settings(f_number, time_s, iso)
    light = LIGHTS[turn.facts.light or ""]
    turn.say(
        Role.SETTINGS,
        "home.metered",
        light=TEXTS[f"known.light.{light.key}"],
        settings=solving.settings_text(wanted, camera),
        stops=measures.stops(max(light.high - light.ev100, light.ev100 - light.low)),
    )
    reference = told_levels.Reference(told_levels.meter_level(turn) or 0.0, None)
    pieces = [_piece(turn, place, reference) for place in range(len(frames))]
    if not listed:
        turn.say(Role.CHECK, "home.against", list=", ".join(pieces))
    levels = (light.ev100, light.low, light.high)
    named = dict(zip(("ev", "low", "high"), map(measures.plain, levels), strict=True))
    turn.reason("why.metered", light=TEXTS[f"known.light.{light.key}"], **named)


def _piece(turn: Turn, place: int, reference: told_levels.Reference) -> str:
    stops = told_levels.level_of(turn, place) - reference.level_stops
    side = told_levels.side_of(stops)
    frame = told_names.name(turn, place)
    return TEXTS[f"home.piece.{side}"].format(frame=frame, stops=measures.stops(stops))


def _say_depth(turn: Turn, focus_m: float | None) -> None:
    """What the near rock wants, against what most frames were set to, and where it was focused."""
    facts = turn.facts
    focal_mm, near_m = reckoning.focal_of(facts), reckoning.nearest_of(facts)
    f_number = told_frames.common(frame.f_number for frame in told_frames.frames_of(turn))
    if focal_mm is None or near_m is None or reckoning.is_phone(facts):
        return
    depth = reckoning.depth_of(facts, focal_mm)
    sensor, dial = reckoning.sensor_of(facts), reckoning.dial_of(facts)
    values = {
        "near": measures.length(near_m, turn.units),
        "focal": measures.focal(focal_mm, sensor.crop_factor),
        "needed": least_label(max(depth.needed, 1.0), dial),
        "frames": str(depth.stack or 1),
    }
    reasons.explain_depth(turn, facts, focal_mm, depth)
    if depth.stack is not None:
        turn.say(Role.SETTINGS, "home.depth.stack", **values)
    elif f_number is None:
        turn.say(Role.SETTINGS, "home.depth.wants", **values)
    else:
        _judge_depth(turn, (depth.needed, exact_f_number(f_number)), focus_m, values)


def _judge_depth(
    turn: Turn, wanted_and_set: tuple[float, float], told_m: float | None, values: dict[str, str]
) -> None:
    """Whether the f-number was enough, and what was sharp with the focus where it was."""
    facts, (needed, f_number) = turn.facts, wanted_and_set
    sensor, focal_mm = reckoning.sensor_of(facts), reckoning.focal_of(facts) or 0.0
    near_m = facts.nearest_m or 0.0
    focus_m = told_m or reckoning.focus_of(facts) or 2 * near_m
    ends = depth_limits_m(focal_mm, f_number, focus_m, circle_of_confusion_mm(sensor.diagonal_mm))
    far_m = reckoning.farthest_of(facts)
    held = ends[0] <= near_m * _AS_NEAR and ends[1] >= (far_m or math.inf) / _AS_NEAR
    key = "short" if needed > f_number * _AS_NEAR else "ample" if held else "missed"
    turn.say(
        Role.SETTINGS,
        f"home.depth.{key}",
        f_number=f_number_label(f_number, reckoning.dial_of(facts)),
        focus=measures.length(focus_m, turn.units),
        from_m=measures.length(ends[0], turn.units),
        to_m=TEXTS["home.far_wall"]
        if math.isinf(ends[1])
        else measures.length(ends[1], turn.units),
        **values,
    )


#: Ends of the depth within this of a thing hold it (own rule: nobody measures a rock finer).
_AS_NEAR: Final = 1.05
