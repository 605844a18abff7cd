"""Whether a time can be had, behind a filter that is named: yes or no, and what it would take."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.reading import read
from bot.dialogue.solving import look_is, watch_text
from bot.dialogue.steps.walk import base, reasons
from bot.dialogue.steps.walk.base_said import RIGHT_STOPS, light_text
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.camera import POLARISER_STOPS
from core.exposure import Settings
from core.series import f_number_label, iso_label

_WILL: Final = r"(?:will|would|does|do)"
#: How somebody asks whether something can be had.
_CAN: Final = re.compile(
    r"\b(?:can|could) (?:i|we|you|one) (?:\w+ ){0,2}?(?:do|get|use|shoot|take|have|reach|go|manage"
    r"|make|run|expose)\b"
    rf"|\b{_WILL} (?:\w+[ -]?){{1,5}}? (?:give|get|let|allow|manage|be enough|do|work)\b"
    r"|\b(?:is|are|would|will) [^?]{1,40}?\b(?:possible|doable|feasible|realistic|reachable|enough)"
    r"\b"
)
#: What such a question may name beside the time.
_NAMED: Final = frozenset(
    {"shutter_s", "nd_on_stops", "nd_stops", "polariser_on", "has_polariser", "f_number", "iso"}
    | {"light", "look", "units"}
)
_FILTERS: Final = frozenset({"nd_on_stops", "nd_stops", "polariser_on"})


def answer(turn: Turn, text: str, clauses: Sequence[str]) -> str | None:
    """Answer such a question.

    Args:
        turn: the answer under construction.
        text: the message in English.
        clauses: of it.

    Returns:
        What else the message says; None when it asks nothing of the kind.
    """
    if not _CAN.search(text.casefold()):
        return None  # most messages: nothing is read then
    for place, clause in enumerate(clauses):
        told = _asked(clause)
        if told is not None:
            _say(turn, told)
            return " ".join([*clauses[:place], *clauses[place + 1 :]])
    return None


def _asked(clause: str) -> Facts | None:
    """The time that a clause asks for, with the filter behind which it is to be had."""
    if not _CAN.search(clause.casefold()):
        return None
    told = read(re.sub(rf"^(\W*(?:and |so |but |ok )*){_WILL} ", r"\1", clause.casefold()))
    known = told.known().keys()
    if told.shutter_s is None or known - _NAMED or not known & _FILTERS:
        return None
    return told


def _say(turn: Turn, told: Facts) -> None:
    """Yes or no, with what the light gives there; without a light what the filter makes of it."""
    now, given = base.standing(turn), turn.walk.given
    settings = _settings(told, now)
    stops = told.nd_on_stops or max(told.nd_stops or (0.0,))
    on = bool(told.polariser_on or (given is not None and given.polariser_on))
    facts = turn.facts.updated(Facts(nd_on_stops=stops, polariser_on=on, light=told.light))
    over = base.over_stops(turn, facts, settings)
    taken = stops + (POLARISER_STOPS if on else 0.0)
    spare = 0.0 if told.f_number else _spare_stops(now, settings)
    reasons.explain_share(turn, now.flow, settings.shutter_s, now.camera)
    dial = now.camera.dial
    turn.say(
        Role.SETTINGS,
        f"reach.{'unknown' if over is None else _verdict(over, spare)}",
        filters=_filters(stops, on=on),
        light=light_text(turn, facts),
        time=watch_text(settings.shutter_s, now.camera),
        bare=watch_text(settings.shutter_s / 2**taken, now.camera),
        gives=watch_text(settings.shutter_s * 2 ** -(over or 0.0), now.camera),
        f_number=f_number_label(settings.f_number, dial),
        narrower=f_number_label(settings.f_number * 2 ** (min(over or 0.0, spare) / 2), dial),
        iso=iso_label(settings.iso, dial),
        stops=measures.stops(over or 0.0),
        all=measures.stops(taken + (over or 0.0)),
        look=look_is(turn.facts, settings.shutter_s),
    )


def _settings(told: Facts, now: base.Standing) -> Settings:
    """The settings that are asked about, with the wished f-number and base ISO where not told."""
    f_number, shutter_s, iso = reckoning.exact_settings(told)
    return Settings(
        f_number or now.wanted.f_number,
        shutter_s or now.wanted.shutter_s,
        iso or now.camera.base_iso,
    )


def _spare_stops(now: base.Standing, settings: Settings) -> float:
    """How far the opening may be closed before the format softens [stops]."""
    sensor = now.camera.sensor
    if sensor.fixed_f_number is not None:
        return 0.0
    return max(2 * math.log2(sensor.softening_f / settings.f_number), 0.0)


def _verdict(over: float, spare: float) -> str:
    if over < -RIGHT_STOPS:
        return "dark"
    if over <= RIGHT_STOPS:
        return "right"
    return "narrower" if over <= spare + RIGHT_STOPS else "bright"


def _filters(stops: float, *, on: bool) -> str:
    names = [TEXTS["filter.nd"].format(stops=measures.plain(stops))] if stops else []
    names += [TEXTS["filter.polariser"]] if on else []
    return measures.listing(names, TEXTS["and"])
