"""From the fall's height and distance to focal length, tilt and where to stand."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.questions import in_units
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps.walk import composition, lens_depth, reasons
from bot.dialogue.steps.walk.lens_depth import CLOSE
from bot.dialogue.steps.walk.lens_kit import best_focal, lens_names, lenses_on
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.camera import Lens, SensorFormat
from core.framing import SPARE, Framing, section_focal_mm, stand_back_m
from core.water import coverage_m

#: A tilt up to here is told as a level camera [deg] (own rule: half of what a bubble shows).
LEVEL_DEG: Final = 1.5
#: From here on leaning walls are mentioned [deg] (common practice: a little looks like a mistake).
LEANING_DEG: Final = 6.0
#: Focal length, as on full frame, for a near rock and a stream [mm] (common practice: 16 to 24).
STREAM_FULL_FRAME_MM: Final = 20.0
#: Up to here a near rock leads in; longer lenses take a part of the stream [mm, as full frame]
#: (common practice: 16 to 24 for near rocks, from 70 for parts).
LEADS_IN_FULL_FRAME_MM: Final = 35.0
#: A level camera is offered while it draws the fall larger than this part of the tilted one (own
#: rule).
_STILL_LARGE: Final = 0.45
#: Who sets so many times the widest of a lens that holds no whole fall means a part (own rule).
_ZOOMED_IN: Final = 1.5
#: A lens that shows up to so many times of a wanted part shows about that (own rule).
_ABOUT: Final = 1.2
#: Marks that how much of the fall is wanted was asked often enough.
ASSUMED: Final = "assumed"
#: A camera that is brought down for a near rock [m] (common practice: knee to hip).
KNEE_M: Final = 0.5


@dataclass(frozen=True)
class _View:
    """What the choice rests on."""

    sensor: SensorFormat
    side_mm: float
    framing: Framing
    form: str
    #: Height of the camera that this takes [m]; None: as it is.
    eye_m: float | None = None


def choose(turn: Turn) -> None:
    """Say which focal length, upright or flat, tilted or level; then look at the composition."""
    facts = turn.facts
    if facts.distance_m is None or (facts.fall_height_m is None and not reckoning.is_stream(facts)):
        _by_eye(turn)
    elif reckoning.is_stream(facts) or facts.fall_height_m is None:
        _stream(turn)
    elif facts.section or facts.section_height_m is not None:
        _section(turn)
    else:
        _whole_fall(turn)


def form_of(facts: Facts) -> str:
    """Portrait or landscape, as the person holds the camera or the water wants it."""
    return TEXTS["form.portrait" if reckoning.upright(facts) else "form.landscape"]


def _whole_fall(turn: Turn) -> None:
    facts = turn.facts
    sensor = reckoning.sensor_of(facts)
    side_mm = reckoning.vertical_side_mm(facts, sensor)
    framing = reckoning.framing_of(facts, reckoning.nearest_of(facts))
    view = _View(sensor, side_mm, framing, form_of(facts))
    reasons.explain_framing(turn, framing, side_mm, reckoning.nearest_of(facts))
    if facts.focal_mm is not None and turn.walk.checks.get("focal") != "chosen":
        _judge_set(turn, view, facts)
        return
    _choose_from(turn, lenses_on(turn), view)


def _choose_from(turn: Turn, lenses: list[Lens], view: _View) -> None:
    """The focal length of the kit that holds all of it, and one frame of it sharp."""
    focal_mm = best_focal(lenses, view.framing)
    if focal_mm is None and (lower := _from_lower(turn, view)) is not None:
        focal_mm = best_focal(lenses, lower.framing)
        view = lower if focal_mm is not None else view
    if focal_mm is None:
        widest_mm = min(lens.shortest_mm for lens in lenses)
        if not _without_near(turn, view, widest_mm, chosen=True):
            _too_near(turn, view, widest_mm)
        return
    focal_mm = lens_depth.sharp_or_as_wanted(turn, lenses, focal_mm)
    if view.eye_m is not None:
        turn.learn(Facts(camera_height_m=view.eye_m))
        turn.say(Role.CHECK, "lens.lower", height=measures.length(view.eye_m, turn.units))
    _tell_choice(turn, view, focal_mm, [lens for lens in lenses if lens.covers(focal_mm)])


def _from_lower(turn: Turn, view: _View) -> _View | None:
    """The view from knee height, which brings a near rock in; None where it changes nothing."""
    facts = turn.facts
    near_m = reckoning.nearest_of(facts)
    if near_m is None or facts.camera_height_m is not None:
        return None
    low = facts.updated(Facts(camera_height_m=KNEE_M))
    return replace(view, framing=reckoning.framing_of(low, near_m), eye_m=KNEE_M)


def _without_near(turn: Turn, view: _View, focal_mm: float, *, chosen: bool) -> bool:
    """Whether the fall alone fits, only the near rock does not: then say so and go on."""
    facts = turn.facts
    near_m = reckoning.nearest_of(facts)
    if near_m is None:
        return False
    alone = reckoning.framing_of(facts, None)
    if focal_mm > alone.longest_mm * (1 + CLOSE):
        return False
    turn.say(
        Role.SETTINGS,
        "lens.near_out",
        focal=measures.focal(focal_mm, view.sensor.crop_factor),
        form=view.form,
        tilt=_tilt(alone),
        near=measures.length(near_m, turn.units),
        needed=measures.focal(view.framing.longest_mm, view.sensor.crop_factor),
    )
    _warn_of_lean(turn, replace(view, framing=alone), focal_mm)
    _accept(turn, focal_mm, chosen=chosen)
    return True


def _tell_choice(turn: Turn, view: _View, focal_mm: float, fitting: list[Lens]) -> None:
    framing = view.framing
    named = measures.focal(focal_mm, view.sensor.crop_factor)
    tilt = _tilt(framing)
    spare = focal_mm <= framing.focal_mm * (1 + CLOSE)
    level = abs(framing.tilt_deg) <= LEVEL_DEG and focal_mm <= framing.level_mm
    key = "lens.tight" if not spare else "lens.level" if level else "lens.tilted"
    room = measures.percent(round(framing.spare(focal_mm), 2))
    turn.say(Role.SETTINGS, key, focal=named, form=view.form, tilt=tilt, spare=room)
    if fitting and len(turn.facts.lenses) > 1 and turn.origin.direct:
        turn.say(Role.CHECK, "lens.yours", lenses=lens_names(fitting))
    _warn_of_lean(turn, view, focal_mm)
    _accept(turn, focal_mm, chosen=True)


def _tilt(framing: Framing) -> str:
    way = "tilt.up" if framing.tilt_deg > 0 else "tilt.down"
    return TEXTS[way].format(angle=measures.degrees(abs(framing.tilt_deg)))


def _judge_set(turn: Turn, view: _View, facts: Facts) -> None:
    """The person has a focal length set: does it hold the fall?"""
    focal_mm = reckoning.focal_of(facts) or view.framing.focal_mm
    crop = view.sensor.crop_factor
    named = measures.focal(focal_mm, crop)
    if focal_mm <= view.framing.longest_mm * (1 + CLOSE):
        turn.say(Role.SETTINGS, "lens.set_fits", focal=named, form=view.form)
        lens_depth.say_wider(turn, lenses_on(turn), focal_mm)
        _warn_of_lean(turn, view, focal_mm)
    elif _without_near(turn, view, focal_mm, chosen=False):
        return
    elif best_focal(lenses_on(turn), view.framing) is None:
        widest_mm = min(lens.shortest_mm for lens in lenses_on(turn))
        if focal_mm >= _ZOOMED_IN * widest_mm:
            turn.learn(Facts(section=True))
            _section(turn)
        else:
            _too_near(turn, view, min(widest_mm, focal_mm))
        return
    else:
        needed = measures.focal(view.framing.longest_mm, crop)
        turn.say(Role.SETTINGS, "lens.set_too_long", focal=named, needed=needed)
    _accept(turn, focal_mm, chosen=False)


def _warn_of_lean(turn: Turn, view: _View, focal_mm: float) -> None:
    facts, framing = turn.facts, view.framing
    if abs(framing.tilt_deg) < LEANING_DEG or facts.fall_height_m is None:
        return
    eye_m = reckoning.camera_height_of(facts)
    above_m = max(facts.fall_height_m - eye_m, 0.1)  # a fall below the camera: nothing leans
    back_m = stand_back_m(above_m, focal_mm, view.side_mm)
    if facts.distance_m is not None and facts.distance_m >= back_m:
        turn.say(Role.ASSUMPTION, "lens.level_crop")
        return
    level_mm = framing.level_mm * (1 - 2 * SPARE)
    has_it = any(lens.covers(level_mm, 0.0) for lens in lenses_on(turn))
    if has_it and level_mm > _STILL_LARGE * focal_mm:
        named = measures.focal(level_mm, view.sensor.crop_factor)
        turn.say(Role.CHECK, "lens.lean_or_level", focal=named)
        return
    turn.say(Role.CHECK, "lens.lean", distance=measures.length(back_m, turn.units))


def _too_near(turn: Turn, view: _View, widest_mm: float) -> None:
    """No lens of the kit holds the fall from here: go back, or take a section."""
    facts = turn.facts
    crop = view.sensor.crop_factor
    turn.ask(
        "too_near",
        distance=measures.length(math.ceil(_far_enough_m(turn, widest_mm)), turn.units),
        needed=measures.focal(view.framing.longest_mm, crop),
        widest=measures.focal(widest_mm, crop),
        section=measures.length(
            float(coverage_m(facts.distance_m or 1.0, view.side_mm, widest_mm)), turn.units
        ),
    )


def _far_enough_m(turn: Turn, widest_mm: float) -> float:
    """The distance from which the widest lens holds the fall [m], by halving the interval."""
    facts = turn.facts
    low = facts.distance_m or 0.0
    high = low + 20 * (facts.fall_height_m or 0.0)
    for _ in range(40):
        middle = (low + high) / 2
        framing = reckoning.framing_of(facts, None, distance_m=middle)
        low, high = (low, middle) if framing.longest_mm >= widest_mm else (middle, high)
    return high


def _section(turn: Turn) -> None:
    facts = turn.facts
    sensor = reckoning.sensor_of(facts)
    side_mm = reckoning.vertical_side_mm(facts, sensor)
    distance_m = facts.distance_m or 1.0
    by_bot = facts.focal_mm is None or turn.walk.checks.get("focal") == "chosen"
    focal_mm = None if by_bot else reckoning.focal_of(facts)
    wanted_m = _section_height_m(turn)
    if wanted_m is not None and focal_mm is None:
        focal_mm = section_focal_mm(wanted_m, distance_m, side_mm)
        focal_mm = reckoning.within_kit(lenses_on(turn), focal_mm)
    if focal_mm is None:
        turn.ask(in_units("section", turn.units))
        return
    shown_m = float(coverage_m(distance_m, side_mm, focal_mm))
    if facts.section_height_m is None and shown_m >= (facts.fall_height_m or math.inf):
        turn.unlearn("section")  # no lens of the kit shows less than the whole
        _whole_fall(turn)
        return
    if by_bot and facts.section_height_m is None and shown_m < _ABOUT * (wanted_m or 0.0):
        turn.say(Role.ASSUMPTION, "let_go.section")
    turn.say(
        Role.SETTINGS,
        "lens.section",
        focal=measures.focal(focal_mm, sensor.crop_factor),
        form=form_of(facts),
        section=measures.length(shown_m, turn.units),
    )
    reasons.explain_coverage(turn, side_mm, focal_mm)
    _accept(turn, focal_mm, chosen=by_bot)


def _section_height_m(turn: Turn) -> float | None:
    """How much of the fall the frame is to show [m]: as told, else half of it (own rule).

    Nothing is assumed while neither a lens is known nor the question was put often enough.
    """
    facts = turn.facts
    if facts.section_height_m is not None or facts.fall_height_m is None:
        return facts.section_height_m
    assumes = lenses_on(turn) or turn.walk.checks.get("section") == ASSUMED
    return facts.fall_height_m / 2 if assumes else None


def _stream(turn: Turn) -> None:
    facts = turn.facts
    sensor = reckoning.sensor_of(facts)
    chosen = facts.focal_mm is None or turn.walk.checks.get("focal") == "chosen"
    wanted = STREAM_FULL_FRAME_MM / sensor.crop_factor
    focal_mm = reckoning.within_kit(lenses_on(turn), wanted)
    if not chosen:
        focal_mm = reckoning.focal_of(facts) or focal_mm
    side_mm = sensor.long_mm if not reckoning.upright(facts) else sensor.short_mm
    shown_m = float(coverage_m(facts.distance_m or 1.0, side_mm, focal_mm))
    near = focal_mm * sensor.crop_factor <= LEADS_IN_FULL_FRAME_MM
    turn.say(
        Role.SETTINGS,
        "lens.stream" if near else "lens.stream_part",
        focal=measures.focal(focal_mm, sensor.crop_factor),
        form=form_of(facts),
        coverage=measures.length(shown_m, turn.units),
    )
    turn.reason("why.stream_lens" if near else "why.stream_part")
    reasons.explain_coverage(turn, side_mm, focal_mm)
    _accept(turn, focal_mm, chosen=chosen)


def _by_eye(turn: Turn) -> None:
    """Nobody measured the fall: the usual focal length, framed by eye."""
    sensor = reckoning.sensor_of(turn.facts)
    usual_mm = reckoning.within_kit(lenses_on(turn), reckoning.usual_focal_mm(turn.facts))
    focal_mm = reckoning.focal_of(turn.facts) or usual_mm
    named = measures.focal(focal_mm, sensor.crop_factor)
    turn.say(Role.SETTINGS, "lens.by_eye", focal=named, form=form_of(turn.facts))
    turn.reason("why.by_eye")
    _accept(turn, focal_mm, chosen=turn.facts.focal_mm is None)


def _accept(turn: Turn, focal_mm: float, *, chosen: bool) -> None:
    if chosen:
        turn.learn(Facts(focal_mm=focal_mm))
        turn.change_walk(checks=turn.walk.checks | {"focal": "chosen"})
    turn.be_in(State.COMPOSITION, Trigger.LENS_CHOSEN)
    composition.go_on(turn)
