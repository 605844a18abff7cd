"""What if: the difference that one change makes, without moving the walk."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.solving import watch_text
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.walk import base, reasons
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.blur import airy_diameter_um
from core.exposure import Settings
from core.light import LIGHTS, metered_level
from core.series import f_number_label, iso_label, shutter_label
from core.water import look_of

#: How a message begins that only tries something.
_SUPPOSING: Final = re.compile(
    r"\s*(?:(?:ok(?:ay)?|so|but|hmm?|and|now)\W+)*(?:what if|what about|how about|suppose|if)\b",
    re.IGNORECASE,
)
#: "What time with the 3 stop at f/11": a time is asked for, nothing was set.
_ASKS_TIME: Final = re.compile(
    r"(?:^|[.,;!?] ?)(?:(?:and|so|ok|then|what|which|the|my)\W+)*"
    r"(?:time|shutter(?: speed| time)?|exposure(?: time)?|how long)\b[^.?!]*"
    r"\b(?:at|with|without|for|through|behind) ",
    re.IGNORECASE,
)
#: How one goes on that builds on what was tried just before.
_GOES_ON: Final = re.compile(r"\s*(?:and|or|plus|then|at|with|without|from|in|if)\b", re.IGNORECASE)
#: Changes that are told by what happens rather than by a value.
_LIGHTS: Final = (
    (re.compile(r"\bsun (?:comes|came|is|breaks|peeks|shines)\b"), "full sun"),
    (re.compile(r"\bclouds? (?:comes?|came|over|moves?|covers?)\b|\bclouds over\b"), "overcast"),
)
_POLARISER_ON: Final = re.compile(r"\b(?:use|with|put|add|mount)\W+(?:\w+\W+){0,2}polari[sz]er\b")
_ND_OFF: Final = re.compile(
    r"\b(?:without|no|take off|remove|leave)\W+(?:\w+\W+)?(?:nd|gr[ea]y filter)\b"
)
#: An ND that is named without its strength: the person's own.
_OWN_ND: Final = re.compile(r"\b(?:nd|gr[ea]y filter)\b(?!\W?\d)")
_BY: Final = re.compile(
    r"\b(\d+(?:[.,]\d+)?) ?(m|met(?:er|re)s?|ft|feet|foot)\b"
    r"(?: (?:further|farther|more))? (back|closer|nearer)\b"
)
_METRES_PER_FOOT: Final = 0.3048  # by definition
#: Nobody stands nearer than this for a fall [m] (own rule).
_NEAREST_M: Final = 1.0
#: A share that changes by less is the same look (own rule).
_SAME_SHARE: Final = 0.1
#: Slots that are tried on paper.
_TRIED: Final = frozenset(
    {"f_number", "shutter_s", "iso", "focal_mm", "polariser_on", "nd_on_stops", "distance_m"}
    | {"nearest_m", "camera_height_m", "portrait", "light", "change_stops", "meter_stops"}
)


def supposed(turn: Turn, text: str, facts: Facts) -> Facts:
    """The facts of a message, marked where it only tries them, with what happens in words.

    Args:
        turn: the answer under construction; what was tried last is built on by "and with …".
        text: the message in English.
        facts: what was read in it.
    """
    before = turn.context.conversation.tried
    goes_on = before is not None and _GOES_ON.match(text) is not None
    asks = _ASKS_TIME.search(text) is not None and facts.shutter_s is None
    asks = asks and turn.walk.given is not None
    if not (facts.ask_what_if or _SUPPOSING.match(text) or goes_on or asks):
        return facts
    tried = facts.updated(_happening(turn, text.casefold(), facts))
    if not tried.known().keys() & _TRIED:
        return facts
    if before is not None and goes_on:
        tried = before.updated(tried)
    return tried.model_copy(update={"ask_what_if": True, "unread": ()})


def _happening(turn: Turn, text: str, told: Facts) -> Facts:
    changes: dict[str, object] = {}
    for pattern, light in _LIGHTS:
        if pattern.search(text):
            changes["light"] = light
    if _POLARISER_ON.search(text):
        changes["polariser_on"] = True
    if _ND_OFF.search(text):
        changes["nd_on_stops"] = 0.0
    elif told.nd_on_stops is None and turn.facts.nd_stops and _OWN_ND.search(text):
        changes["nd_on_stops"] = min(turn.facts.nd_stops)
    moved, distance_m = _BY.search(text), turn.facts.distance_m
    if moved is not None and distance_m is not None:
        by_m = float(moved[1].replace(",", "."))
        by_m *= _METRES_PER_FOOT if moved[2].startswith("f") else 1.0
        farther_m = by_m if moved[3] == "back" else -by_m
        changes["distance_m"] = max(distance_m + farther_m, _NEAREST_M)
    return Facts().model_copy(update=changes)


#: One setting as people type it, and words that try it: "what would 1 s give me", "f/11?".
_F: Final = r"f ?/? ?\d+(?:\.\d+)?"
_TIME: Final = r"(?:\d+/\d+|\d+(?:\.\d+)?) ?(?:s|secs?|seconds?)|\d+/\d+"
_TRIAL: Final = re.compile(
    r"\s*(?:(?:ok(?:ay)?|so|but|hmm?|and|now|or|well)\W+)*"
    rf"(?:(?:what|how) (?:would|will|does|do) (?P<of>{_F}|iso ?\d+|\d+ ?mm|{_TIME})\b[^.;!?]*"
    rf"|why not (?P<time>{_TIME})(?: then| instead| here)?|(?P<bare>(?!f ?/? ?(?:22|32)\b){_F}"
    rf"|{_TIME})(?= ?\?))\W*",
    re.IGNORECASE,
)


def as_trial(turn: Turn, text: str) -> str:
    """A message that tries one setting in other words, as "what if"; any other as it is.

    Args:
        turn: the answer under construction; without settings there is nothing to try on.
        text: the message in English.
    """
    found = _TRIAL.fullmatch(text)
    if found is None or _settings_now(turn) is None:
        return text
    return f"what if {found['of'] or found['time'] or found['bare']}"


def _settings_now(turn: Turn) -> GivenSettings | None:
    """The settings given last; before any, those to begin with where fall and lens are known."""
    if turn.walk.given is not None:
        return turn.walk.given
    facts, focal_mm = turn.facts, reckoning.focal_of(turn.facts)
    if focal_mm is None or facts.distance_m is None:
        return None
    now = base.standing(turn).settings
    return GivenSettings(
        f_number=now.f_number, shutter_s=now.shutter_s, iso=now.iso, focal_mm=focal_mm
    )


def answer(turn: Turn, asked: Facts) -> None:
    """Say what the change would do to brightness, look and sharpness; keep everything as it is."""
    given = _settings_now(turn)
    if given is None or not asked.known():
        turn.say(Role.SETTINGS, "what_if.nothing")
    elif asked.f_number is not None and reckoning.is_phone(turn.facts):
        turn.say(Role.SETTINGS, "what_if.fixed")
    else:
        turn.change_conversation(tried=asked)
        _say_difference(turn, given, asked)
    if repeat.standing(turn) is not None:
        repeat.put_again(turn)


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
        iso=iso_label(after.iso, camera.dial),
        stops=measures.stops(change),
        side=TEXTS["brighter" if change > 0 else "darker"],
        time=watch_text(time_s, camera),
        old_time=shutter_label(given.shutter_s, camera.dial),
        look=_look(turn.facts.updated(asked), time_s),
    )
    _say_depth(turn, after, asked)
    _say_look_before(turn, given, asked, time_s)
    if asked.f_number is not None:
        _say_sharpness(turn, given, after)


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
    turn.say(
        Role.SETTINGS,
        "what_if.light",
        light=TEXTS[f"light.{asked.light}"],
        settings=solving.settings_text(after, camera),
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
    """Diffraction before and after, and the depth that is lost by opening."""
    old_um, new_um = (airy_diameter_um(s.f_number) for s in (given, after))
    key = "what_if.softer" if new_um > old_um else "what_if.crisper"
    turn.say(
        Role.CHECK,
        key,
        old=measures.plain(float(old_um), 0),
        new=measures.plain(float(new_um), 0),
    )
    reasons.explain_diffraction(turn, given.f_number, after.f_number)
