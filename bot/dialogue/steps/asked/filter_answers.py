"""What is said on filters: whether the light calls for one, and the times that each gives."""

from __future__ import annotations

import math
import re
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.reading import read
from bot.dialogue.reading.inventory import ND, POLARISER
from bot.dialogue.solving import look_is, watch_text
from bot.dialogue.steps.walk import base, reasons, sun_shared
from bot.dialogue.steps.walk.taken import DIM_EV
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.camera import POLARISER_STOPS
from core.exposure import Settings
from core.light import LIGHTS, Light, metered_level
from core.series import EQUAL_STOPS, f_number_label, iso_label, nearest, shutter_label, time_marks

#: A polariser and one ND, or two ND: together they are named, too.
_BOTH: Final = 2
#: From this much too bright on a filter is worth naming [stops] (own rule).
_WORTH_A_FILTER: Final = 1.0
#: So much a polariser takes, with a sixth of a stop of tolerance [stops] (own rule: half a click).
_POLARISER_TAKES: Final = POLARISER_STOPS + 1 / 6
#: "Does it work without an ND?": a yes to it is a no to "do I need one?".
_WITHOUT: Final = re.compile(
    r"^(?!.*\bneed\b).*\b(?:without|no) (?:an? |any |the )?(?:nds?|filters?|gr[ae]y)\b"
)

_POLARISER: Final = re.compile(rf"\b(?:{POLARISER})(?: filters?)?\b")
_GREY: Final = re.compile(
    rf"\b(?:{ND})\b|\bnd ?\d+|\bgr[ae]y\b|\bfilters?\b|\bstops?\b|\bdensity\b"
)


def names_no_polariser(text: str) -> bool:
    """Whether a message in English says nothing of a polariser."""
    return _POLARISER.search(text.casefold()) is None


def light_named(turn: Turn, clause: str) -> str:
    """The light that the question names, else the one that was told or forecast; "" for none."""
    return read(clause).light or turn.facts.light or turn.trip.forecast or ""


def say_nd(turn: Turn, clause: str) -> None:
    """Whether the light calls for a grey filter.

    "I forgot the polariser, does it work without" asks for no other filter.
    """
    others = _POLARISER.sub(" ", clause.casefold())
    if not (names_no_polariser(clause) or _GREY.search(others)):
        turn.say(Role.SETTINGS, "asked.no_polariser")
        return
    without = "_without" if _WITHOUT.search(clause.casefold()) else ""
    named = light_named(turn, clause)
    light = LIGHTS.get(named)
    now = base.standing(turn)
    if sun_shared.is_told(turn):
        turn.say(Role.SETTINGS, "asked.nd_by_turns")
        return
    if light is None or now.camera.sensor.fixed_f_number is not None:
        turn.say(Role.SETTINGS, f"asked.nd_plain{without}")
        return
    given = turn.walk.given
    on = POLARISER_STOPS if given is not None and given.polariser_on else 0.0
    over = metered_level(now.wanted, light.ev100, on)
    say_filter_times(turn, now, light)
    narrower_f = now.camera.sensor.softening_f
    spare_stops = 2 * math.log2(narrower_f / now.wanted.f_number)
    turn.say(
        Role.SETTINGS,
        f"asked.nd_{_verdict(turn, over, spare_stops, on=bool(on))}{without}",
        narrower=f_number_label(narrower_f, now.camera.dial),
        light=TEXTS[f"light.{named}"],
        stops=measures.stops(over),
        time=shutter_label(now.wanted.shutter_s, now.camera.dial),
        f_number=f_number_label(now.wanted.f_number, now.camera.dial),
    )
    reasons.explain_level(turn, now.wanted, named, on)


def say_first(turn: Turn, clause: str) -> None:
    """Whether this light calls for the polariser, the ND, or both of them."""
    named = light_named(turn, clause)
    light, now = LIGHTS.get(named), base.standing(turn)
    if light is None or now.camera.sensor.fixed_f_number is not None:
        turn.say(Role.SETTINGS, "asked.polariser_first")
        return
    over = metered_level(now.wanted, light.ev100)
    longer_s = min(now.wanted.shutter_s * 2**POLARISER_STOPS, now.camera.longest_s)
    turn.say(
        Role.SETTINGS,
        f"asked.first_{_first(over)}",
        light=TEXTS[f"light.{named}"],
        stops=measures.stops(over),
        time=shutter_label(now.wanted.shutter_s, now.camera.dial),
        longer=nearest(time_marks(now.camera.dial), longer_s).label,
        f_number=f_number_label(now.wanted.f_number, now.camera.dial),
    )
    reasons.explain_level(turn, now.wanted, named)


def _first(over: float) -> str:
    """What takes the light that is too much.

    Args:
        over: how much too bright the wished time is without a filter [stops].
    """
    if over < _WORTH_A_FILTER:
        return "neither"
    return "polariser" if over <= _POLARISER_TAKES else "both"


def _verdict(turn: Turn, over: float, spare_stops: float, *, on: bool) -> str:
    """Yes or no: what polariser or aperture take calls for no ND (common practice: in that order).

    Args:
        turn: the answer under construction.
        over: how much too bright the wished time is [stops].
        spare_stops: how much the aperture can take before the format softens.
        on: the polariser is on already.
    """
    if over < _WORTH_A_FILTER:
        return "no"
    if not on and turn.facts.has_polariser is not False and over <= _POLARISER_TAKES:
        return "polariser"
    return "aperture" if over <= spare_stops + EQUAL_STOPS else "yes"


def say_which(turn: Turn, clause: str) -> None:
    """Which of the filters in the bag goes on: the one whose time is nearest to the wished."""
    named = light_named(turn, clause)
    light, now = LIGHTS.get(named), base.standing(turn)
    owned = _owned(turn)
    if light is None or not owned or now.camera.sensor.fixed_f_number is not None:
        turn.say(Role.SETTINGS, "asked.polariser_first")
        return
    bare_s = _bare_s(now, light)
    times = {name: bare_s * 2**stops for name, stops in [(TEXTS["filter.none"], 0.0), *owned]}
    best = min(times, key=lambda name: abs(math.log2(times[name] / now.wanted.shutter_s)))
    turn.say(
        Role.SETTINGS,
        "asked.filter_choice",
        filter=best[:1].upper() + best[1:],
        light=TEXTS[f"light.{named}"],
        time=watch_text(times[best], now.camera),
        look=look_is(turn.facts, times[best]),
    )
    say_filter_times(turn, now, light)


def _owned(turn: Turn) -> list[tuple[str, float]]:
    """The filters that are there, each with its stops; two of them together, too."""
    facts = turn.facts
    owned = [(TEXTS["filter.polariser"], POLARISER_STOPS)] if facts.has_polariser else []
    owned += [
        (TEXTS["filter.nd"].format(stops=measures.plain(stops)), stops)
        for stops in facts.nd_stops or ()
    ]
    if len(owned) == _BOTH:
        owned.append((TEXTS["filter.both"], sum(stops for _, stops in owned)))
    return owned


def _bare_s(now: base.Standing, light: Light) -> float:
    """The time that a light gives without a filter [s]."""
    over = metered_level(now.wanted, light.ev100)
    return float(now.wanted.shutter_s * 2**-over)


def say_filter_times(turn: Turn, now: base.Standing, light: Light) -> None:
    """The times that this light gives bare, and behind each filter that is there."""
    bare_s, owned = _bare_s(now, light), _owned(turn)
    if not owned and turn.facts.nd_stops is None:
        return
    times = [f"{name} {watch_text(bare_s * 2**stops, now.camera)}" for name, stops in owned]
    turn.say(
        Role.CHECK,
        "asked.filter_times",
        f_number=f_number_label(now.wanted.f_number, now.camera.dial),
        iso=iso_label(now.wanted.iso, now.camera.dial),
        bare=watch_text(bare_s, now.camera),
        list="".join(f", {time}" for time in times),
    )
    reasons.explain_level(turn, Settings(now.wanted.f_number, bare_s, now.wanted.iso), light.key)
    turn.reason("why.filter_stops", stops=measures.plain(POLARISER_STOPS))


def say_noon(turn: Turn, clause: str) -> None:
    """Full sun: what to do in it, with the filters that are there."""
    del clause
    owned = turn.facts.nd_stops
    turn.say(Role.SETTINGS, "asked.noon" if owned is None else "asked.noon_bare")
    if owned:
        say_filter_times(turn, base.standing(turn), LIGHTS["full sun"])


def say_polariser_stops(turn: Turn, clause: str) -> None:
    """What a polariser costs, in this person's time."""
    del clause
    _say_polariser(turn, "asked.polariser_stops")


def say_polariser_dark(turn: Turn) -> None:
    """That a polariser makes all darker, and what makes up for it."""
    _say_polariser(turn, "wondered.filter_dark")


def say_polariser(turn: Turn, clause: str) -> None:
    """On or off: off where the light is short."""
    named = light_named(turn, clause)
    light = LIGHTS.get(named)
    if light is not None and light.ev100 <= DIM_EV:
        turn.say(Role.SETTINGS, "asked.polariser_off", light=TEXTS[f"light.{named}"])
        return
    _say_polariser(turn, "asked.polariser_on")


def _say_polariser(turn: Turn, key: str) -> None:
    now, given = base.standing(turn), turn.walk.given
    on = given is not None and given.polariser_on
    without_s = now.settings.shutter_s / (2**POLARISER_STOPS if on else 1.0)
    marks = time_marks(now.camera.dial)
    longer_s = min(without_s * 2**POLARISER_STOPS, now.camera.longest_s)
    turn.say(
        Role.SETTINGS,
        key,
        time=nearest(marks, without_s).label,
        longer=nearest(marks, longer_s).label,
    )
    reasons.explain_polariser(turn, without_s, longer_s)


def say_polariser_left(turn: Turn, text: str) -> None:
    """A polariser that stayed on: what it costs in time."""
    del text
    _say_polariser(turn, "answer.polariser_left")


def say_both_filters(turn: Turn, text: str) -> None:
    """Polariser and ND together: what the time becomes where one of them is on."""
    del text
    given = turn.walk.given
    if given is None or given.polariser_on or not given.nd_on_stops:
        turn.say(Role.SETTINGS, "asked.both_filters")
        return
    camera = turn.camera
    longer_s = given.shutter_s * 2**POLARISER_STOPS
    turn.say(
        Role.SETTINGS,
        "asked.both_filters_now",
        time=watch_text(given.shutter_s, camera),
        longer=watch_text(longer_s, camera),
        look=look_is(turn.facts, longer_s),
    )
