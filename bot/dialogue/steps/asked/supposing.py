"""Messages that only try a change: which they are, and what they would change."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.facts import Facts
from bot.dialogue.meaning.compared import weighed_in
from bot.dialogue.meaning.lens_put_on import put_on
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.time_factor import time_factor_in
from bot.dialogue.reading import read
from bot.dialogue.reading.asked_behind import tried_in
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.inventory import POLARISER
from bot.dialogue.solving import time_text
from bot.dialogue.steps.asked import trials
from bot.dialogue.steps.walk import arrive, base
from bot.dialogue.steps.walk.taken import take_settings
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings

#: "What time with the 3 stop at f/11": a time is asked for, nothing was set.
_ASKS_TIME: Final = re.compile(
    r"(?:^|[.,;!?] ?)(?:(?:and|so|ok|then|what|which|the|my)\W+)*"
    r"(?:time|shutter(?: speed| time)?|exposure(?: time)?|how long)\b[^.?!]*"
    r"\b(?:at|with|without|for|through|behind) ",
    re.IGNORECASE,
)
#: Changes that are told by what happens rather than by a value.
_LIGHTS: Final = (
    (re.compile(r"\bsun (?:comes|came|is|breaks|peeks|shines)\b"), "full sun"),
    (re.compile(r"\bclouds? (?:comes?|came|over|moves?|covers?)\b|\bclouds over\b"), "overcast"),
)
_POLARISER_ON: Final = re.compile(
    rf"\b(?:use|with|put|add|mount|plus|and)\W+(?:\w+\W+){{0,2}}{POLARISER}\b(?! off)"
    rf"|\b{POLARISER}\b ?(?:plus|and|\+|&) ?|\b{POLARISER}\b[^?!]*\bwith (?:it|that|this) on\b"
)
_POLARISER_OFF: Final = re.compile(
    rf"\b(?:without|no|take off|remove|leave)\W+(?:\w+\W+)?{POLARISER}\b|\b{POLARISER} off\b"
)
_ND_OFF: Final = re.compile(
    r"\b(?:without|no|take off|remove|leave)\W+(?:\w+\W+)?(?:nd|gr[ea]y filter)\b"
)
#: An ND that is named without its strength: the person's own.
_OWN_ND: Final = re.compile(r"\b(?:nd|gr[ea]y filter)\b(?!\W?\d)")
#: Nobody stands nearer than this for a fall [m] (own rule).
_NEAREST_M: Final = 1.0
#: Slots that are tried on paper.
TRIED: Final = frozenset(
    {"f_number", "shutter_s", "iso", "focal_mm", "polariser_on", "nd_on_stops", "distance_m"}
    | {"nearest_m", "camera_height_m", "portrait", "light", "change_stops", "meter_stops"}
)
#: What the words of a try may hold beside it.
_BESIDE: Final = frozenset({"nd_stops", "has_polariser", "lenses", "units", "section"})


#: Where a message that told something begins to try.
_BEGINS_TO_TRY: Final = re.compile(
    r"[.;,!?]+\s*(?:(?:and|so|but|now)\W+)*(?=what if\b)", re.IGNORECASE
)
_SETTINGS: Final = frozenset({"f_number", "shutter_s"})


def after_told(turn: Turn, said: Said) -> Said:
    """A message that tells the settings of a frame and tries others: only what it tries is left.

    Args:
        turn: the answer under construction; what is told is kept in it.
        said: the message.
    """
    told, tries = _told_and_tried(said)
    facts = read(told, units=turn.units) if tries else Facts()
    if not _are_of_a_frame(facts) or turn.is_at_home:
        return said
    turn.remember_for_back()
    if turn.context.conversation.walk is None:
        arrive.begin_quietly(turn)
    turn.learn(facts)
    take_settings(turn)
    return said._replace(english=tries)


def _told_and_tried(said: Said) -> tuple[str, str]:
    """What a message tells before it begins to try, and what it tries; "" without such an end."""
    told, *tries = _BEGINS_TO_TRY.split(said.english, maxsplit=1)
    if tries:
        return told, tries[0]
    head, _, tail = said.typed.rpartition(". ")
    if head and trials.supposes(said._replace(english=tail, typed=tail)):
        return glossed(head, said.language), f"what if {glossed(tail, said.language)}"
    return said.english, ""


def _are_of_a_frame(facts: Facts) -> bool:
    """Whether f-number and time of a frame are told."""
    return facts.known().keys() >= _SETTINGS


def supposed(turn: Turn, said: Said, facts: Facts) -> Facts:
    """The facts of a message, marked where it only tries them, with what happens in words.

    Args:
        turn: the answer under construction; what was tried last is built on by "and with …".
        said: the message.
        facts: what was read in it.
    """
    before = turn.context.conversation.tried
    goes_on = before is not None and trials.goes_on(said)
    asks = _ASKS_TIME.search(said.english) is not None and facts.shutter_s is None
    asks = asks and turn.walk.given is not None and put_on(said.english) is None
    if not (facts.ask_what_if or trials.supposes(said) or goes_on or asks):
        return facts
    tried = facts.updated(happening(turn, said, facts))
    if not tried.known().keys() & TRIED:
        return facts
    if before is not None and goes_on:
        tried = before.updated(tried)
    return tried.model_copy(update={"ask_what_if": True, "unread": ()})


def happening(turn: Turn, said: Said, told: Facts) -> Facts:
    """What the words of a try change, beside the values that were read in them.

    Args:
        turn: the answer under construction.
        said: the message, or the piece of it that tries.
        told: what was read in it.
    """
    text = said.english.casefold()
    changes = _filters(turn, said, told)
    light = next((light for pattern, light in _LIGHTS if pattern.search(text)), None)
    if light is not None and told.light is None:
        changes["light"] = light  # a light that is told says more than what happens
    by_m, distance_m = trials.moved_by_m(said), turn.facts.distance_m
    if by_m is not None and distance_m is not None:
        changes["distance_m"] = max(distance_m + by_m, _NEAREST_M)
    return Facts().model_copy(update=changes)


def _filters(turn: Turn, said: Said, told: Facts) -> dict[str, object]:
    """The filters that a try puts on or takes off."""
    text = said.english.casefold()
    changes: dict[str, object] = {}
    if trials.is_without(said):
        return {"polariser_on": False, "nd_on_stops": 0.0}
    if _POLARISER_OFF.search(text):
        changes["polariser_on"] = False
    elif _POLARISER_ON.search(text):
        changes["polariser_on"] = True
    if _ND_OFF.search(text):
        changes["nd_on_stops"] = 0.0
    elif told.nd_on_stops is None and told.nd_stops:
        changes["nd_on_stops"] = sum(told.nd_stops)
    elif told.nd_on_stops is None and turn.facts.nd_stops and _OWN_ND.search(text):
        changes["nd_on_stops"] = min(turn.facts.nd_stops)
    return changes


#: One setting as people type it, and words that try it: "what would 1 s give me", "f/11?".
_F: Final = r"f ?/? ?\d+(?:\.\d+)?"
_TIME: Final = r"(?:\d+/\d+|\d+(?:\.\d+)?) ?(?:s|secs?|seconds?)|\d+/\d+"
_TRIAL: Final = re.compile(
    r"\s*(?:(?:ok(?:ay)?|so|but|hmm?|and|now|or|well)\W+)*"
    rf"(?:(?:what|how) (?:would|will|does|do) (?P<of>{_F}|iso ?\d+|\d+ ?mm|{_TIME})\b[^.;!?]*"
    rf"|why not (?P<time>{_TIME})(?: then| instead| here)?|(?P<bare>(?!f ?/? ?(?:22|32)\b){_F}"
    rf"|{_TIME})(?= ?\?)"
    rf"|(?:would|does|will) (?P<would>{_F}|iso ?\d+|\d+ ?mm|{_TIME}) (?:be|make|look|get|give)"
    r" (?:\w+ ){0,2}(?:brighter|darker|softer|sharper|smoother|silkier|a difference))\W*",
    re.IGNORECASE,
)


def as_trial(turn: Turn, said: Said) -> Said:
    """A message that tries settings in other words, as "what if"; any other as it is.

    Args:
        turn: the answer under construction; without settings there is nothing to try on.
        said: the message.
    """
    now = settings_now(turn)
    if now is None:
        return said
    factor = time_factor_in(said.typed)
    if factor is not None and trials.supposes(said):
        return said._replace(english=f"what if {time_text(now.shutter_s * factor, turn.camera)}")
    # What is weighed against another is not tried alone.
    if "what if" in said.english.casefold() or weighed_in(said) is not None:
        return said
    return said._replace(english=_in_other_words(turn, said) or said.english)


def _in_other_words(turn: Turn, said: Said) -> str | None:
    """The trial that a message holds, as "what if"; None for any other message."""
    found = _TRIAL.fullmatch(said.english)
    if found is not None:
        return f"what if {next(value for value in found.groupdict().values() if value)}"
    if (first := tried_in(said.english)) is not None:
        return f"what if {first}"
    tried = turn.context.conversation.tried is not None
    builds = trials.goes_on(said) and (tried or said.typed.rstrip().endswith("?"))
    if not (builds or trials.supposes(said)) or not _only_tries(turn, said):
        return None
    return f"{'and what if' if builds else 'what if'} {said.english}"


def _only_tries(turn: Turn, said: Said) -> bool:
    """Whether a message holds something that can be tried, and nothing that tells."""
    facts = read(said.english, units=turn.units)
    known = facts.updated(happening(turn, said, facts)).known().keys()
    return bool(known & TRIED) and known <= TRIED | _BESIDE


def settings_now(turn: Turn) -> GivenSettings | None:
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
