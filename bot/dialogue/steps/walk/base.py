"""Base: ISO, f-number, focus and time for the wished look, fitted to the light if it is known."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.aims import aim_of
from bot.dialogue.facts import Facts, Keep
from bot.dialogue.flowing import Flowing
from bot.dialogue.reckoning import Assumed
from bot.dialogue.solving import Solved
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps.walk import base_said, free_drop, liking, reasons
from bot.dialogue.steps.walk.taken import own_f_number, with_polariser
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.camera import POLARISER_STOPS, Camera
from core.exposure import Settings, ev100
from core.f_number import FNumberChoice
from core.light import LIGHTS, metered_level
from core.series import Mark, nearest, time_marks

#: A frame that clips leaves this much to take back [stops] (common practice: 1/3 to 2/3).
UNDER_CLIPPED_STOPS: Final = 2 / 3
#: For an f-number of their own the ISO goes up by so much at most (own rule: two thirds).
_NEARLY_BASE: Final = 1.6
#: By hand or on a rock, nothing longer is held with several tries [s] (common practice: 1/15).
_BRACED_S: Final = 2**-4


def give(turn: Turn) -> None:
    """Say the base settings, explain them, and ask for a test frame."""
    turn.be_in(State.BASE, Trigger.TO_BASE)
    facts = turn.facts
    assumed = Assumed()
    camera = reckoning.camera_of(facts, assumed)
    focal_mm = _focal_mm(facts, assumed)
    depth = reckoning.depth_of(facts, focal_mm, assumed)
    flow = reckoning.flowing_or_usual(facts, focal_mm, assumed)
    free_drop.note_free_drop(turn, flow.how, flow.speed_mps, assumed)
    wanted = _wanted(turn, depth, flow, camera)
    solved = _fit_to_light(turn, wanted)
    lit = base_said.lit_of(solved)
    given = _as_given(_filters_usable(turn), lit or solved, wanted, focal_mm)
    turn.change_walk(given=given)
    liking.forget_set(turn)
    base_said.say_settings(turn, given, camera, depth)
    base_said.say_level(turn, solved, lit)
    base_said.offer_polariser(turn, given, camera)
    _keep_filters(turn, given)
    turn.unlearn("f_number", "shutter_s", "iso")  # they live on in what was given
    base_said.say_support(turn, facts)
    base_said.explain(turn, given, flow, depth, camera)
    reasons.tell_assumed(turn, assumed, camera)
    turn.move(Trigger.SET)
    turn.ask("blink")


def _focal_mm(facts: Facts, assumed: Assumed) -> float:
    """The focal length in use [mm], else the usual one, which is named."""
    told_mm = reckoning.focal_of(facts)
    if told_mm is not None:
        return told_mm
    usual_mm = reckoning.usual_focal_mm(facts)
    assumed.note("focal", focal_mm=usual_mm)
    return usual_mm


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
    camera = turn.camera
    focal_mm = reckoning.focal_of(facts) or reckoning.usual_focal_mm(facts)
    depth = reckoning.depth_of(facts, focal_mm)
    flow = reckoning.flowing_or_usual(facts, focal_mm)
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
        kept_f or own_f_number(turn, depth) or depth.exact,
        kept_s or _aimed_time(turn, flow, camera).exact,
        kept_iso or camera.base_iso,
    )


def _aimed_time(turn: Turn, flow: Flowing, camera: Camera) -> Mark:
    """The marked time nearest to the aim of the wished look, inside its band and the camera.

    Without a tripod the time is held short, since nobody holds the aim.
    """
    facts = turn.facts
    marks = [m for m in time_marks(camera.dial) if m.exact >= camera.shortest_s * 0.999]
    look = reckoning.wished_look(facts)
    shortest_s, longest_s = flow.times(look)
    aim_s = flow.time_for(aim_of(turn, look))
    if reckoning.by_hand(facts):
        aim_s = max(min(aim_s, _BRACED_S), shortest_s)
    aim_s = min(max(aim_s, camera.shortest_s), camera.longest_s)
    inside = [m for m in marks if shortest_s <= m.exact <= longest_s]
    return nearest(inside or marks, aim_s)


def _fit_to_light(turn: Turn, wanted: Settings) -> Solved | None:
    """The plan that brings the wanted settings to the light; None while it is unknown.

    Frames of this walk tell the light better than words do. A polariser in the bag goes on
    first where the light has its stops to spare (common practice: before time and aperture).
    """
    facts = _filters_usable(turn)
    over = over_stops(turn, facts, wanted)
    if over is None:
        return None
    if over >= POLARISER_STOPS and solving.polariser_of(facts) == "off":
        facts = facts.updated(Facts(polariser_on=True))
        over -= POLARISER_STOPS
    own = own_f_number(turn, reckoning.depth_of(facts, _focal_mm(facts, Assumed())))
    if own is not None and own == wanted.f_number:
        held = facts.model_copy(update={"keep": facts.keep | {Keep.F_NUMBER}})
        solved = solving.solve(held, wanted, -over)
        if solved.plan.met and solved.plan.settings.iso <= wanted.iso * _NEARLY_BASE:
            return solved
    return _with_own_nd(turn, facts, wanted, -over)


def _with_own_nd(turn: Turn, facts: Facts, wanted: Settings, change: float) -> Solved:
    """The plan with the ND that the person put on, where the light allows it; else without."""
    if facts.nd_on_stops and turn.walk.checks.get("nd") == "on":
        held = facts.model_copy(update={"keep": facts.keep | {Keep.ND}})
        solved = solving.solve(held, wanted, change)
        if solved.plan.met:
            return solved
    return solving.solve(facts, wanted, change)


def _filters_usable(turn: Turn) -> Facts:
    """What is known, without filters that stay off.

    The person took the polariser or the ND off, or the sun has set: then they take light that is
    needed (common practice).
    """
    facts = turn.facts
    if facts.light in base_said.AFTER_SUNSET:
        none = {"polariser_on": False, "has_polariser": False, "nd_on_stops": 0.0, "nd_stops": ()}
        return facts.model_copy(update=none)
    off: dict[str, object] = {}
    if turn.walk.checks.get("polariser") == "off":
        off["has_polariser"] = False
    if turn.walk.checks.get("nd") == "off":
        off["nd_stops"] = ()
    return with_polariser(turn, facts.model_copy(update=off))


def over_stops(turn: Turn, facts: Facts, wanted: Settings) -> float | None:
    """How much too bright settings would be, filters as in the facts [stops]; None in the dark."""
    walk = turn.walk
    filters = (POLARISER_STOPS if facts.polariser_on else 0.0) + (facts.nd_on_stops or 0.0)
    level = -ev100(wanted.f_number, wanted.shutter_s, wanted.iso) - filters
    if walk.clean_stops is not None:
        return float(level - walk.clean_stops)
    if walk.clipped_stops is not None:
        return float(level - walk.clipped_stops) + UNDER_CLIPPED_STOPS
    light = LIGHTS.get(facts.light or "")
    return None if light is None else metered_level(wanted, light.ev100, filters)


def _keep_filters(turn: Turn, given: GivenSettings) -> None:
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
        polariser_on=bool(facts.polariser_on),
        nd_on_stops=facts.nd_on_stops or 0.0,
    )
