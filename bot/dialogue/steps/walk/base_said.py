"""The base settings in words: filters, focus, the level in this light, how to take the frame."""

from __future__ import annotations

import math
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.aims import aim_of, own_here
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.flowing import Flowing
from bot.dialogue.solving import Solved, time_text
from bot.dialogue.steps.walk import reasons, sun_shared
from bot.dialogue.steps.walk.taken import DIM_EV
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from bot.dialogue.within_light import within_light
from core.camera import POLARISER_STOPS, Camera
from core.exposure import Settings
from core.f_number import FNumberChoice
from core.light import LIGHTS
from core.water import look_of

#: Lights that fall by themselves from minute to minute: no filter is offered in them.
AFTER_SUNSET: Final = frozenset({"after sunset", "dusk", "full moonlight"})
#: That a polariser was spoken of is kept with the checks.
_OFFERED: Final = "polariser_offered"
#: Beside these there is little room.
_LONG: Final = ("base.by_turns", "base.level_", "base.bright_", "base.dark_", "lens.")
#: Up to here a predicted level counts as right [stops] (own rule: the light is told in words).
RIGHT_STOPS: Final = 0.5
#: So many frames of a burst are worth averaging (trade: 4 to 16, common practice).
_LEAST_AVERAGED: Final = 3
_MOST_AVERAGED: Final = 16
#: Above this many frames of a focus stack the nearest thing is let go (common practice: about 6).
_MOST_FRAMES: Final = 6


def say_settings(turn: Turn, given: GivenSettings, camera: Camera, depth: FNumberChoice) -> None:
    """The settings with what stands before the lens and where to focus."""
    facts = turn.facts
    settings = solving.settings_text(given, camera)
    filters = _filters(facts, given)
    if camera.sensor.fixed_f_number is not None:
        turn.say(Role.SETTINGS, "base.phone", settings=settings, filters=_on_phone(facts, given))
    elif given.focus_m is None or not math.isfinite(given.focus_m):
        turn.say(Role.SETTINGS, "base.settings_no_focus", settings=settings, filters=filters)
    elif depth.stack is not None and facts.nearest_m is not None:
        stack = stack_of(turn, depth)
        turn.say(
            Role.SETTINGS,
            "base.stack" if stack else "base.stack_too_many",
            settings=settings,
            filters=filters,
            **(stack or _ends(turn, facts.nearest_m)),
        )
    else:
        focus = measures.length(given.focus_m, turn.units)
        turn.say(Role.SETTINGS, "base.settings", settings=settings, filters=filters, focus=focus)


def stack_of(turn: Turn, depth: FNumberChoice) -> dict[str, str] | None:
    """Frames and ends of a focus stack, in words; None where one frame does, or too many would."""
    near_m = turn.facts.nearest_m
    if near_m is None or depth.stack is None or depth.stack > _MOST_FRAMES:
        return None
    return {"frames": str(depth.stack), **_ends(turn, near_m)}


def _ends(turn: Turn, near_m: float) -> dict[str, str]:
    return {"near": measures.length(near_m, turn.units), "far": _far(turn)}


def _far(turn: Turn) -> str:
    far_m = reckoning.farthest_of(turn.facts)
    return measures.length(far_m, turn.units) if far_m else TEXTS["far_wall"]


def _filters(facts: Facts, given: GivenSettings) -> str:
    """What stands before the lens, in words that follow the settings."""
    text = ""
    if not (given.polariser_on or facts.polariser_on or given.nd_on_stops or facts.nd_on_stops):
        return TEXTS["base.bare"] if _may_have_one(facts) else ""
    if given.polariser_on:
        text += TEXTS["base.polariser"]
    elif facts.polariser_on:
        text += TEXTS["base.polariser_off"]
    if given.nd_on_stops:
        text += TEXTS["base.nd"].format(stops=measures.plain(given.nd_on_stops))
    elif facts.nd_on_stops:
        text += TEXTS["base.nd_off"]
    return text


def _on_phone(facts: Facts, given: GivenSettings) -> str:
    """What is before a phone's lens, where anything is or was."""
    bare = not (given.polariser_on or given.nd_on_stops or facts.nd_on_stops)
    return "" if bare else _filters(facts, given)


def _may_have_one(facts: Facts) -> bool:
    """Whether a filter has to be counted out: one is owned, or none was denied in a told light."""
    if facts.has_polariser or facts.nd_stops:
        return True
    return facts.light is not None and not (facts.has_polariser is False and facts.nd_stops == ())


def offer_polariser(turn: Turn, given: GivenSettings, camera: Camera) -> None:
    """A polariser in the bag: when it is worth its light, said once on a walk; it is not on yet."""
    facts, checks = turn.facts, turn.walk.checks
    if not facts.has_polariser or given.polariser_on or checks.get("polariser") == "off":
        return
    if reckoning.is_phone(facts) or _OFFERED in checks or facts.light in AFTER_SUNSET:
        return
    light = LIGHTS.get(facts.light or "")
    dim = light is not None and light.ev100 <= DIM_EV
    if dim and facts.polariser_on is False:
        return  # it is off already
    turn.change_walk(checks=checks | {_OFFERED: "said"})
    if dim:
        turn.say(Role.CHECK, "base.leave_polariser", light=TEXTS[f"light.{facts.light}"])
    else:
        time, longer = (
            solving.time_text(time_s, camera)
            for time_s in (given.shutter_s, given.shutter_s * 2**POLARISER_STOPS)
        )
        turn.say(Role.CHECK, "base.offer_polariser", time=time, longer=longer)


def lit_of(solved: Solved | None) -> Solved | None:
    """The plan with the time that the light gives, where it does not give the wished one."""
    if solved is None or abs(solved.plan.remaining_stops) <= RIGHT_STOPS:
        return None
    return within_light(solved)


def say_level(turn: Turn, solved: Solved | None, lit: Solved | None) -> None:
    """The predicted level in the told light, and which lever comes next.

    Args:
        turn: the answer under construction.
        solved: the plan for the wished look; None while the light is unknown.
        lit: the one that the light gives instead, where it does not give that.
    """
    if sun_shared.is_told(turn):
        turn.say(Role.CHECK, "base.by_turns")
    if solved is None:
        return
    light = light_text(turn, turn.facts)
    rest = solved.plan.remaining_stops
    if solved.plan.met or abs(rest) <= RIGHT_STOPS:
        # A frame that was far too dark told only how much more it takes at least.
        at_least = turn.walk.checks.get("at_least") == f"{turn.walk.clean_stops}"
        turn.say(Role.ASSUMPTION, f"base.level_{'at_least' if at_least else 'ok'}", light=light)
        return
    if lit is not None:
        _say_lit(turn, solved, lit, light)
        return
    turn.say(
        Role.CHECK,
        "base.level_under" if rest > 0 else "base.level_over",
        light=light,
        stops=measures.stops(rest),
        others=solving.others_text(solved, most=2),
    )


def _say_lit(turn: Turn, solved: Solved, lit: Solved, light: str) -> None:
    """What the light's own time makes of the water, and what the wished look would take."""
    share = lit.flow.share(lit.plan.settings.shutter_s)
    over = solved.plan.remaining_stops < 0
    turn.say(
        Role.CHECK,
        _over_key(turn.facts) if over else "base.dark_gives",
        light=light,
        look=TEXTS[f"look.{look_of(share).value}"],
        wished=TEXTS[f"look.{reckoning.wished_look(turn.facts).value}"],
        others=solving.others_text(solved, most=1 if len(turn.parts) > 1 else 2, for_look=True),
    )


def _over_key(facts: Facts) -> str:
    if facts.light in AFTER_SUNSET:
        return "base.level_over_dusk"
    return "base.level_over_phone" if reckoning.is_phone(facts) else "base.bright_gives"


def say_support(turn: Turn, facts: Facts) -> None:
    """How the camera is held still and the frame taken."""
    if facts.automatic:
        turn.say(Role.CHECK, "base.manual")
    elif reckoning.is_phone(facts):
        if not any(part.key == "base.level_over_phone" for part in turn.parts):
            _say_phone(turn)
    elif reckoning.by_hand(facts):
        turn.say(Role.CHECK, "base.no_tripod")
    elif facts.has_tripod is False:
        turn.say(Role.CHECK, "base.rested")
    else:
        full = any(part.key.startswith(_LONG) for part in turn.parts)
        turn.say(Role.ASSUMPTION if full else Role.CHECK, "base.tripod")


def _say_phone(turn: Turn) -> None:
    """How to take it with a phone; where its time is short of the look, averaging makes it up."""
    given, look = turn.walk.given, reckoning.wished_look(turn.facts)
    aim_s = reckoning.flow_of(turn.facts).time_for(aim_of(turn, look))
    frames = 0 if given is None else math.ceil(aim_s / given.shutter_s)
    if given is None or not _LEAST_AVERAGED <= frames <= _MOST_AVERAGED:
        turn.say(Role.CHECK, "base.phone_take")
        return
    time = time_text(frames * given.shutter_s, turn.camera)
    turn.say(Role.CHECK, "base.phone_average", frames=str(frames), time=time)


def explain(
    turn: Turn, given: GivenSettings, flow: Flowing, depth: FNumberChoice, camera: Camera
) -> None:
    """Why: the share and the f-number, with the numbers put in."""
    say_own_look(turn)
    reasons.explain_share(turn, flow, given.shutter_s, camera)
    if camera.sensor.fixed_f_number is None:
        focal_mm = reckoning.focal_of(turn.facts) or reckoning.usual_focal_mm(turn.facts)
        reasons.explain_depth(turn, turn.facts, focal_mm, depth)
        if depth.stack is None:
            reasons.explain_focus(turn, turn.facts)
    reasons.explain_band(turn, look_of(flow.share(given.shutter_s)))
    if not turn.walk.light_is_measured:
        settings = Settings(given.f_number, given.shutter_s, given.iso)
        reasons.explain_level(turn, settings, turn.facts.light or "", given.filter_stops)


def say_own_look(turn: Turn) -> None:
    """Say that the time rests on frames which the person kept."""
    wished = reckoning.wished_look(turn.facts)
    own = own_here(turn, wished)
    if own is not None:
        look = TEXTS[f"look.{wished.value}"]
        turn.say(Role.ASSUMPTION, "my_look.used", look=look, share=measures.crossed(own))


def light_text(turn: Turn, facts: Facts) -> str:
    """The light that settings rest on: what frames of this walk showed, else a told one, or ""."""
    if turn.walk.light_is_measured:
        return TEXTS["light_measured"]
    return TEXTS[f"light.{facts.light}"] if facts.light is not None else ""
