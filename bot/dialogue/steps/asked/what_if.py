"""What if: the difference that one change makes, without moving the walk."""

from __future__ import annotations

import math
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.solving import watch_text
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.asked.as_bright import with_time
from bot.dialogue.steps.asked.supposing import settings_now
from bot.dialogue.steps.walk import reasons
from bot.dialogue.steps.walk.lens_depth import CLOSE
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.blur import airy_diameter_um
from core.camera import Camera
from core.exposure import Settings
from core.light import LIGHTS, metered_level
from core.series import f_number_label, iso_label, shutter_label
from core.water import coverage_m, look_of

#: What changes the view.
_OF_VIEW: Final = frozenset({"focal_mm", "distance_m", "portrait"})
#: A time alone, or on another lens or from another place.
_OF_TIME: Final = _OF_VIEW | {"shutter_s"}
#: What the dials and the lens hold; of these nothing else is a change.
_OF_SETTINGS: Final = frozenset({"f_number", "shutter_s", "iso", "polariser_on", "nd_on_stops"})
_NO_CHANGE: Final = frozenset({"ask_what_if", "units"})
#: Marks of a dial that differ by less are the same one (own rule: they are rounded by 3 %).
_SAME_MARK: Final = 0.035
#: A share that changes by less is the same look (own rule).
_SAME_SHARE: Final = 0.1


def answer(turn: Turn, asked: Facts) -> None:
    """Say what the change would do to brightness, look and sharpness; keep everything as it is."""
    given = settings_now(turn)
    if given is None or not asked.known():
        turn.say(Role.SETTINGS, "what_if.nothing")
    elif asked.f_number is not None and reckoning.is_phone(turn.facts):
        turn.say(Role.SETTINGS, "what_if.fixed")
    elif is_set(turn, asked):
        if not turn.parts:
            _say_set(turn, given)
    else:
        turn.change_conversation(tried=asked)
        _say_difference(turn, given, asked)
    if repeat.standing(turn) is not None:
        repeat.put_again(turn)


def is_set(turn: Turn, asked: Facts) -> bool:
    """Whether all that a try would change is set like that already: there is no difference.

    Args:
        turn: the answer under construction.
        asked: what is tried.
    """
    given, known = settings_now(turn), asked.known().keys() - _NO_CHANGE
    if given is None or not known or known - _OF_SETTINGS:
        return False
    after = _changed(given, asked)
    return all(
        math.isclose(getattr(after, slot), getattr(given, slot), rel_tol=_SAME_MARK)
        for slot in known
    )


def _say_set(turn: Turn, given: GivenSettings) -> None:
    """What is tried stands on the dials already: with the look that it makes."""
    turn.say(
        Role.SETTINGS,
        "what_if.set",
        settings=solving.settings_on(given, turn.camera),
        look=_look(turn.facts, given.shutter_s),
    )


def _say_difference(turn: Turn, given: GivenSettings, asked: Facts) -> None:
    camera = turn.camera
    after = _changed(given, asked)
    if asked.light in LIGHTS:
        _say_light(turn, after, asked)
        return
    change = solving.level_of(after) - solving.level_of(given)
    time_s = _time_after(given, after, asked, change)
    key = _key(asked, change)
    turn.say(
        Role.SETTINGS,
        key,
        f_number=f_number_label(after.f_number, camera.dial),
        iso=iso_label(after.iso, camera.dial) + _filters_named(after, asked),
        stops=measures.stops(change),
        side=TEXTS["brighter" if change > 0 else "darker"],
        time=_settings_named(after, asked, key, watch_text(time_s, camera), camera),
        old_time=shutter_label(given.shutter_s, camera.dial),
        look=_look(turn.facts.updated(asked), time_s),
    )
    fixed = camera.sensor.fixed_f_number is not None
    if key == "what_if.time" and asked.known().keys() <= _OF_TIME and not fixed:
        equal = with_time(given, time_s, camera, turn.facts)
        turn.say(Role.CHECK, "weighed.as_bright", list=equal)
    _say_view(turn, asked)
    _say_depth(turn, after, asked)
    _say_look_before(turn, given, asked, time_s)
    if not math.isclose(after.f_number, given.f_number, rel_tol=_SAME_MARK):
        _say_sharpness(turn, given, after)


def _filters_named(after: GivenSettings, asked: Facts) -> str:
    """The filters that are tried, behind the settings."""
    if asked.polariser_on is None and asked.nd_on_stops is None:
        return ""
    return f", {solving.filters_on(after) or TEXTS['filter.none']}"


def _settings_named(after: GivenSettings, asked: Facts, key: str, time: str, camera: Camera) -> str:
    """A time, behind the other settings that are tried with it."""
    if key != "what_if.time" or (asked.f_number is None and asked.iso is None):
        return time
    return f"{f_number_label(after.f_number, camera.dial)}, {iso_label(after.iso)}, {time}"


def _say_view(turn: Turn, asked: Facts) -> None:
    """What another place or focal length shows, and whether it still holds the whole fall."""
    facts = turn.facts.updated(asked)
    focal_mm, distance_m = reckoning.focal_of(facts), facts.distance_m
    if focal_mm is None or distance_m is None or not _OF_VIEW & asked.known().keys():
        return
    sensor = reckoning.sensor_of(facts)
    side_mm = reckoning.vertical_side_mm(facts, sensor)
    whole = facts.fall_height_m is not None and not (facts.section or reckoning.is_stream(facts))
    longest_mm = reckoning.framing_of(facts, None).longest_mm if whole else math.inf
    turn.say(
        Role.CHECK,
        "what_if.cuts" if focal_mm > longest_mm * (1 + CLOSE) else "what_if.view",
        focal=measures.focal(focal_mm, sensor.crop_factor),
        distance=measures.length(distance_m, turn.units),
        shown=measures.length(float(coverage_m(distance_m, side_mm, focal_mm)), turn.units),
        needed=measures.focal(longest_mm, sensor.crop_factor) if whole else "",
    )


def _time_after(given: GivenSettings, after: GivenSettings, asked: Facts, change: float) -> float:
    """The time asked for, else the one that keeps the brightness [s]."""
    if asked.shutter_s is not None:
        return after.shutter_s
    if asked.iso is not None or _filters_or_aperture(asked):
        return float(given.shutter_s * 2**-change)
    return given.shutter_s


def _say_light(turn: Turn, after: GivenSettings, asked: Facts) -> None:
    """Another light: how far off the settings are in it, and the time that is right there."""
    camera = turn.camera
    filters = after.filter_stops
    settings = Settings(after.f_number, after.shutter_s, after.iso)
    over = metered_level(settings, LIGHTS[str(asked.light)].ev100, filters)
    time_s = after.shutter_s * 2**-over
    of_now = asked.shutter_s is not None or asked.known().keys() <= {"light"}
    turn.say(
        Role.SETTINGS,
        "what_if.light" if of_now else "what_if.light_time",
        light=TEXTS[f"light.{asked.light}"],
        settings=solving.settings_text(after, camera),
        f_number=f_number_label(after.f_number, camera.dial),
        iso=iso_label(after.iso, camera.dial) + _filters_named(after, asked),
        stops=measures.stops(over),
        side=TEXTS["brighter" if over > 0 else "darker"],
        time=watch_text(time_s, camera),
        look=_look(turn.facts.updated(asked), time_s),
    )
    reasons.explain_level(turn, settings, str(asked.light), filters)


def _say_look_before(turn: Turn, given: GivenSettings, asked: Facts, time_s: float) -> None:
    """The look before, where the change makes another one; and the numbers for `why`."""
    facts = turn.facts
    before = reckoning.flow_of(facts)
    changed = facts.updated(asked)
    after = reckoning.flow_of(changed)
    was, now = before.share(given.shutter_s), after.share(time_s)
    if abs(now / was - 1) > _SAME_SHARE:
        turn.say(
            Role.ASSUMPTION,
            "what_if.look",
            look=TEXTS[f"look.{look_of(was).value}"],
            share=measures.crossed(was),
        )
    reasons.explain_share(turn, after, time_s, turn.camera)


def _say_depth(turn: Turn, after: GivenSettings, asked: Facts) -> None:
    """Where the nearest thing goes soft by the change."""
    facts = turn.facts.updated(asked)
    focal_mm, near_m = reckoning.focal_of(facts), reckoning.nearest_of(facts)
    if focal_mm is None or near_m is None or reckoning.is_phone(facts):
        return
    depth = reckoning.depth_of(facts, focal_mm)
    if depth.needed > after.f_number * 1.05:
        held = depth.needed <= reckoning.sensor_of(facts).softening_f
        turn.say(
            Role.CHECK,
            "told.too_open" if held else "told.too_near",
            near=measures.length(near_m, turn.units),
            needed=measures.plain(depth.needed),
        )


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
    moved = asked.focal_mm or asked.distance_m or asked.portrait is not None
    return "what_if.geometry" if moved else "what_if.same"


def _look(facts: Facts, time_s: float) -> str:
    share = reckoning.flow_of(facts).share(time_s)
    key = "highlights.look_is_whole" if share > 1 else "highlights.look_is"
    look = TEXTS[f"look.{look_of(share).value}"]
    return TEXTS[key].format(look=look, share=measures.percent(share))


def _say_sharpness(turn: Turn, given: GivenSettings, after: GivenSettings) -> None:
    """Diffraction before and after, and the depth that is lost by opening: of two f-numbers."""
    old_um, new_um = (airy_diameter_um(s.f_number) for s in (given, after))
    key = "what_if.softer" if new_um > old_um else "what_if.crisper"
    turn.say(
        Role.ASSUMPTION,
        key,
        old=measures.plain(float(old_um), 0),
        new=measures.plain(float(new_um), 0),
    )
    reasons.explain_diffraction(turn, given.f_number, after.f_number)
