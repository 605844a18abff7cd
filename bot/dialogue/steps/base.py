"""Base: ISO, f-number, focus and time for the wished look, fitted to the light if it is known."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.context import GivenSettings
from bot.dialogue.facts import Facts, Keep
from bot.dialogue.reckoning import Assumed, Flowing
from bot.dialogue.solving import Solved
from bot.dialogue.states import State, Trigger
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.camera import POLARISER_STOPS, Camera
from core.exposure import Settings, ev100
from core.light import LIGHTS, metered_level
from core.optics import FNumberChoice
from core.series import Mark, f_number_label, nearest, time_marks
from core.water import AIM, band_of, look_of

#: Up to here a predicted level counts as right [stops] (own rule: the light is told in words).
_RIGHT_STOPS: Final = 0.5
#: A frame that clips leaves this much to take back [stops] (common practice: 1/3 to 2/3).
UNDER_CLIPPED_STOPS: Final = 2 / 3
#: Above this many frames of a focus stack the nearest thing is let go (common practice: about 6).
_MOST_FRAMES: Final = 6
#: By hand or on a rock, nothing longer is held with several tries [s] (common practice: 1/15).
_BRACED_S: Final = 2**-4


def give(turn: Turn) -> None:
    """Say the base settings, explain them, and ask for a test frame."""
    turn.be_in(State.BASE, Trigger.TO_BASE)
    facts = turn.facts
    assumed = Assumed()
    camera = reckoning.camera_of(facts, assumed)
    focal_mm = reckoning.focal_of(facts)
    if focal_mm is None:
        focal_mm = reckoning.USUAL_FULL_FRAME_MM / camera.sensor.crop_factor
        assumed.note("focal", focal_mm=focal_mm)
    depth = reckoning.depth_of(facts, focal_mm, assumed)
    flow = reckoning.flowing_or_usual(facts, focal_mm, assumed)
    wanted = _wanted(turn, depth, flow, camera)
    solved = _fit_to_light(turn, wanted)
    given = _as_given(facts, solved, wanted, focal_mm)
    turn.change_walk(given=given)
    _say_settings(turn, given, camera, depth)
    _say_level(turn, solved)
    keep_filters(turn, given)
    turn.unlearn("f_number", "shutter_s", "iso")  # they live on in what was given
    _say_support(turn, facts)
    _explain(turn, given, flow, depth, camera)
    tell_assumed(turn, assumed, camera)
    turn.move(Trigger.SET)
    turn.ask("blink")


@dataclass(frozen=True)
class Standing:
    """The settings as they stand: those given last, or those the base would begin with."""

    settings: Settings
    #: What look and depth ask for, whatever the light.
    wanted: Settings
    camera: Camera
    depth: FNumberChoice
    flow: Flowing


def standing(turn: Turn) -> Standing:
    """What holds now, without saying or changing anything."""
    facts, given = turn.facts, turn.walk.given
    camera = reckoning.camera_of(facts, Assumed())
    focal_mm = reckoning.focal_of(facts) or (
        reckoning.USUAL_FULL_FRAME_MM / camera.sensor.crop_factor
    )
    depth = reckoning.depth_of(facts, focal_mm, Assumed())
    flow = reckoning.flowing_or_usual(facts, focal_mm, Assumed())
    settings = wanted = _wanted(turn, depth, flow, camera)
    if given is not None:
        settings = Settings(given.f_number, given.shutter_s, given.iso)
    return Standing(settings, wanted, camera, depth, flow)


def _wanted(turn: Turn, depth: FNumberChoice, flow: Flowing, camera: Camera) -> Settings:
    """The settings to begin with: what the person keeps, else depth, look and base ISO."""
    facts, before = turn.facts, turn.walk.given
    f_number, shutter_s, iso = reckoning.exact_settings(facts)
    if before is not None:
        f_number, shutter_s, iso = (
            f_number or before.f_number,
            shutter_s or before.shutter_s,
            iso or before.iso,
        )
    kept_f = f_number if Keep.F_NUMBER in facts.keep else None
    kept_s = shutter_s if Keep.TIME in facts.keep else None
    kept_iso = iso if Keep.ISO in facts.keep else None
    if camera.sensor.fixed_f_number is not None:
        kept_f = None
    return Settings(
        kept_f or depth.exact,
        kept_s or aimed_time(facts, flow, camera).exact,
        kept_iso or camera.base_iso,
    )


def aimed_time(facts: Facts, flow: Flowing, camera: Camera) -> Mark:
    """The marked time nearest to the aim of the wished look, inside its band and the camera.

    Without a tripod the time is held short, since nobody holds the aim.
    """
    marks = [m for m in time_marks(camera.dial) if m.exact >= camera.shortest_s * 0.999]
    look = reckoning.wished_look(facts)
    shortest_s, longest_s = flow.times(look)
    aim_s = flow.time_for(AIM[look])
    if facts.hand_held or facts.has_tripod is False:
        aim_s = max(min(aim_s, _BRACED_S), shortest_s)
    aim_s = min(max(aim_s, camera.shortest_s), camera.longest_s)
    inside = [m for m in marks if shortest_s <= m.exact <= longest_s]
    return nearest(inside or marks, aim_s)


def _fit_to_light(turn: Turn, wanted: Settings) -> Solved | None:
    """The plan that brings the wanted settings to the light; None while it is unknown.

    Frames of this walk tell the light better than words do. A polariser in the bag goes on
    first where the light has its stops to spare (common practice: before time and aperture).
    """
    facts = turn.facts
    over = _over_stops(turn, wanted)
    if over is None:
        return None
    if over >= POLARISER_STOPS and solving.polariser_of(facts) == "off":
        facts = facts.updated(Facts(polariser_on=True))
        over -= POLARISER_STOPS
    return solving.solve(facts, wanted, -over)


def _over_stops(turn: Turn, wanted: Settings) -> float | None:
    """How much too bright the wanted settings would be, filters as they are [stops]."""
    facts, walk = turn.facts, turn.walk
    filters = (POLARISER_STOPS if facts.polariser_on else 0.0) + (facts.nd_on_stops or 0.0)
    level = -ev100(wanted.f_number, wanted.shutter_s, wanted.iso) - filters
    if walk.clean_stops is not None:
        return float(level - walk.clean_stops)
    if walk.clipped_stops is not None:
        return float(level - walk.clipped_stops) + UNDER_CLIPPED_STOPS
    light = LIGHTS.get(facts.light or "")
    return None if light is None else metered_level(wanted, light.ev100, filters)


def keep_filters(turn: Turn, given: GivenSettings) -> None:
    """What stands before the lens from now on, where that differs from what was known."""
    facts = turn.facts
    if bool(facts.polariser_on) != given.polariser_on:
        turn.learn(Facts(polariser_on=given.polariser_on, has_polariser=True))
    if (facts.nd_on_stops or 0.0) != given.nd_on_stops:
        turn.learn(Facts(nd_on_stops=given.nd_on_stops))


def _as_given(
    facts: Facts, solved: Solved | None, wanted: Settings, focal_mm: float
) -> GivenSettings:
    focus_m = reckoning.focus_of(facts)
    if solved is not None:
        found = solved.given
        return found.model_copy(update={"focal_mm": focal_mm, "focus_m": focus_m})
    return GivenSettings(
        f_number=wanted.f_number,
        shutter_s=wanted.shutter_s,
        iso=wanted.iso,
        focal_mm=focal_mm,
        focus_m=focus_m,
        polariser_on=bool(facts.polariser_on or facts.has_polariser),
        nd_on_stops=facts.nd_on_stops or 0.0,
    )


def _say_settings(turn: Turn, given: GivenSettings, camera: Camera, depth: FNumberChoice) -> None:
    facts = turn.facts
    settings = solving.settings_text(given, camera)
    filters = _filters(facts, given)
    if camera.sensor.fixed_f_number is not None:
        turn.say(Role.SETTINGS, "base.phone", settings=settings)
    elif given.focus_m is None or not math.isfinite(given.focus_m):
        turn.say(Role.SETTINGS, "base.settings_no_focus", settings=settings, filters=filters)
    elif depth.stack is not None and depth.stack > _MOST_FRAMES and facts.nearest_m is not None:
        turn.say(
            Role.SETTINGS,
            "base.stack_too_many",
            settings=settings,
            filters=filters,
            near=measures.length(facts.nearest_m, turn.units),
            far=_far(turn),
        )
    elif depth.stack is not None and facts.nearest_m is not None:
        turn.say(
            Role.SETTINGS,
            "base.stack",
            settings=settings,
            filters=filters,
            frames=str(depth.stack),
            near=measures.length(facts.nearest_m, turn.units),
            far=_far(turn),
        )
    else:
        focus = measures.length(given.focus_m, turn.units)
        turn.say(Role.SETTINGS, "base.settings", settings=settings, filters=filters, focus=focus)


def _far(turn: Turn) -> str:
    far_m = turn.facts.farthest_m or turn.facts.distance_m
    return measures.length(far_m, turn.units) if far_m else TEXTS["far_wall"]


def _filters(facts: Facts, given: GivenSettings) -> str:
    """What stands before the lens, in words that follow the settings."""
    text = ""
    if given.polariser_on:
        text += TEXTS["base.polariser"]
    elif facts.polariser_on:
        text += TEXTS["base.polariser_off"]
    if given.nd_on_stops:
        text += TEXTS["base.nd"].format(stops=measures.plain(given.nd_on_stops))
    elif facts.nd_on_stops:
        text += TEXTS["base.nd_off"]
    return text


def _say_level(turn: Turn, solved: Solved | None) -> None:
    """The predicted level in the told light, and which lever comes next."""
    if solved is None:
        return
    measured = turn.walk.clean_stops is not None or turn.walk.clipped_stops is not None
    light = TEXTS["light_measured" if measured else f"light.{turn.facts.light}"]
    rest = solved.plan.remaining_stops
    if solved.plan.met or abs(rest) <= _RIGHT_STOPS:
        turn.say(Role.ASSUMPTION, "base.level_ok", light=light)
        return
    key = "base.level_under" if rest > 0 else "base.level_over"
    if rest < 0 and reckoning.is_phone(turn.facts):
        key = "base.level_over_phone"
    turn.say(
        Role.CHECK,
        key,
        light=light,
        stops=measures.stops(rest),
        others=solving.others_text(solved, most=2),
    )


def _say_support(turn: Turn, facts: Facts) -> None:
    if facts.automatic:
        turn.say(Role.CHECK, "base.manual")
    elif reckoning.is_phone(facts):
        if not any(part.key == "base.level_over_phone" for part in turn.parts):
            turn.say(Role.CHECK, "base.phone_take")
    elif facts.hand_held or facts.has_tripod is False:
        turn.say(Role.CHECK, "base.no_tripod")
    else:
        full = any(part.key.startswith(("base.level_", "lens.")) for part in turn.parts)
        turn.say(Role.ASSUMPTION if full else Role.CHECK, "base.tripod")


def _explain(
    turn: Turn, given: GivenSettings, flow: Flowing, depth: FNumberChoice, camera: Camera
) -> None:
    """Why: the share and the f-number, with the numbers put in."""
    explain_share(turn, flow, given.shutter_s, camera)
    if camera.sensor.fixed_f_number is None:
        turn.reason(
            "why.f_number",
            best=f"{measures.plain(depth.best)}",
            needed=f"{measures.plain(depth.needed)}",
            chosen=f_number_label(depth.exact, camera.dial),
        )
    look = look_of(flow.share(given.shutter_s))
    named = TEXTS[f"look.{look.value}"].capitalize()
    turn.reason("why.band", look=named, band=measures.band(*band_of(look)))


def explain_share(turn: Turn, flow: Flowing, shutter_s: float, camera: Camera) -> None:
    """Why this time: speed, coverage and share."""
    units = turn.units
    marks = [nearest(time_marks(camera.dial), shutter_s).label]
    turn.reason(
        "why.share",
        speed=measures.speed(flow.speed_mps, units),
        coverage=measures.length(flow.coverage_m, units),
        time=marks[0],
        share=measures.percent(flow.share(shutter_s)),
    )
    turn.reason(f"why.speed.{flow.how}", speed=measures.speed(flow.speed_mps, units))


def tell_assumed(turn: Turn, assumed: Assumed, camera: Camera) -> None:
    """Name the assumptions behind an answer, in one line."""
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
        turn.say(Role.ASSUMPTION, "assumed", list=measures.listing(named, TEXTS["and"]))


def filters_on(given: GivenSettings) -> str:
    """What is on the lens, for the card; "" for nothing."""
    names = [TEXTS["filter.polariser"]] if given.polariser_on else []
    if given.nd_on_stops:
        names.append(TEXTS["filter.nd"].format(stops=measures.plain(given.nd_on_stops)))
    return measures.listing(names, TEXTS["and"])
