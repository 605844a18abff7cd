"""What if: the difference that one change makes, without moving the walk."""

from __future__ import annotations

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.context import GivenSettings
from bot.dialogue.facts import Facts
from bot.dialogue.reckoning import Assumed
from bot.dialogue.steps import repeat
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.blur import airy_diameter_um
from core.camera import Camera
from core.series import f_number_label, iso_label, nearest, shutter_label, time_marks
from core.water import look_of


def answer(turn: Turn, asked: Facts) -> None:
    """Say what the change would do to brightness, look and sharpness; keep everything as it is."""
    given = turn.walk.given
    if given is None or not asked.known():
        turn.say(Role.SETTINGS, "what_if.nothing")
    elif asked.f_number is not None and reckoning.is_phone(turn.facts):
        turn.say(Role.SETTINGS, "what_if.fixed")
    else:
        _say_difference(turn, given, asked)
    if repeat.standing(turn) is not None:
        repeat.put_again(turn)


def _say_difference(turn: Turn, given: GivenSettings, asked: Facts) -> None:
    camera = reckoning.camera_of(turn.facts, Assumed())
    after = _changed(given, asked)
    change = solving.level_of(after) - solving.level_of(given)
    time_s = given.shutter_s
    if asked.shutter_s is not None:
        time_s = after.shutter_s
    elif asked.iso is not None or _filters_or_aperture(asked):
        time_s = given.shutter_s * 2**-change
    key = _key(asked, change)
    turn.say(
        Role.SETTINGS,
        key,
        f_number=f_number_label(after.f_number, camera.dial),
        iso=iso_label(after.iso, camera.dial),
        stops=measures.stops(change),
        side=TEXTS["brighter" if change > 0 else "darker"],
        time=_mark(time_s, camera),
        old_time=shutter_label(given.shutter_s, camera.dial),
        look=_look(turn.facts.updated(asked), time_s),
    )
    if asked.f_number is not None:
        _say_sharpness(turn, given, after)


def _filters_or_aperture(asked: Facts) -> bool:
    slots = ("f_number", "polariser_on", "nd_on_stops")
    return any(getattr(asked, slot) is not None for slot in slots)


def _changed(given: GivenSettings, asked: Facts) -> GivenSettings:
    f_number, shutter_s, iso = reckoning.exact_settings(asked)
    changes = {
        "f_number": f_number,
        "shutter_s": shutter_s,
        "iso": iso,
        "polariser_on": asked.polariser_on,
        "nd_on_stops": asked.nd_on_stops,
        "focal_mm": asked.focal_mm,
    }
    return given.model_copy(update={k: v for k, v in changes.items() if v is not None})


def _key(asked: Facts, change: float) -> str:
    if asked.shutter_s is not None:
        return "what_if.time" if abs(change) > 1 / 6 else "what_if.same"
    if abs(change) > 1 / 6:
        return "what_if.exposure"
    return "what_if.geometry" if asked.focal_mm or asked.distance_m else "what_if.same"


def _mark(time_s: float, camera: Camera) -> str:
    """The dial's mark for a time; beyond the dial what the watch shall show."""
    if time_s > camera.longest_s:
        return shutter_label(time_s, camera.dial)
    return nearest(time_marks(camera.dial), time_s).label


def _look(facts: Facts, time_s: float) -> str:
    flow = reckoning.flowing_or_usual(facts, reckoning.focal_of(facts), Assumed())
    share = flow.share(time_s)
    return TEXTS["highlights.look_is"].format(
        look=TEXTS[f"look.{look_of(share).value}"], share=measures.percent(share)
    )


def _say_sharpness(turn: Turn, given: GivenSettings, after: GivenSettings) -> None:
    """Diffraction before and after, and the depth that is lost by opening."""
    old_um, new_um = (airy_diameter_um(s.f_number) for s in (given, after))
    key = "what_if.softer" if new_um > old_um else "what_if.crisper"
    turn.say(
        Role.CHECK,
        key,
        old=measures.plain(float(old_um), 0),
        new=measures.plain(float(new_um), 0),
    )
