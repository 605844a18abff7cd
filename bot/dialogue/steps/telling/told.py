"""Facts told in free words: kept, answered, and the walk taken on from them."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.meaning import lens_put_on
from bot.dialogue.questions import in_units
from bot.dialogue.states import BEFORE_LENS, State, Trigger
from bot.dialogue.steps.anywhere import planning, repeat
from bot.dialogue.steps.asked import what_if
from bot.dialogue.steps.telling import (
    corrected,
    light_told,
    look_wished,
    nothing_near,
    told_settings,
    two_frames,
    water_told,
    wind_told,
)
from bot.dialogue.steps.visits import visit
from bot.dialogue.steps.walk import (
    adjust,
    ahead,
    arrive,
    base,
    free_drop,
    highlights,
    lens,
    lens_depth,
    lens_kit,
    now,
    planned,
    sun_shared,
)
from bot.dialogue.steps.walk.taken import OWN_F, take_settings
from bot.dialogue.texts import known, known_trip
from bot.dialogue.turn import Turn

#: Slots that change what the lens step reckons.
_GEOMETRY: Final = frozenset(
    {
        "fall_height_m",
        "distance_m",
        "camera_height_m",
        "fall_width_m",
        "portrait",
        "section",
        "section_height_m",
        "stream",
        "lenses",
        "camera_format",
        "focal_mm",
    }
)
#: Slots that a focal length chosen before may not hold.
_DEPTH: Final = frozenset({"nearest_m", "farthest_m"})
#: Slots that change the base settings.
_BASE: Final = _GEOMETRY | {
    "nearest_m",
    "farthest_m",
    "water_speed_mps",
    "water_depth_m",
    "flow",
    "look",
    "light",
    "has_tripod",
    "hand_held",
    "has_polariser",
    "nd_stops",
    "automatic",
    "base_iso",
    "dial_halves",
    "keep",
    "polariser_on",
    "nd_on_stops",
}
_SETTINGS: Final = frozenset({"f_number", "shutter_s", "iso"})
_OF_BLINKING: Final = frozenset({"blink", "blink_again", "screen_says"})
#: What a time follows from, beside the f-number.
_FOR_A_TIME: Final = frozenset({"light", "look", "polariser_on", "nd_on_stops"})


def take_in(turn: Turn, facts: Facts, text: str) -> None:
    """Keep the facts of a message and answer it."""
    if facts.ask_what_if:
        what_if.answer(turn, facts)
        return
    facts = _without_part_that_blinks(turn, facts)
    turn.change_conversation(tried=None)
    quiet = visit.is_new(turn) and not planning.is_planning(turn)
    moved(turn, facts, text)
    facts = light_told.in_same_shade(turn, facts, text)
    if facts.light is not None:
        turn.change_walk(clean_stops=None, clipped_stops=None, first_stops=None)
        sun_shared.keep(turn, by_turns=False)
    facts = _settled(turn, water_told.settled(turn, facts, text), text)
    _back_to_the_frame(turn, facts, text)
    turn.learn(facts)
    corrected.note(turn, facts)
    if quiet:
        arrive.begin_quietly(turn)
    nothing_near.hear_beside(turn, text, facts)
    if two_frames.answer(turn, text):
        turn.white = None
        return
    if set(facts.known()) == {"small_steps"} and planned.say_path(turn):
        now.put_question(turn)
        return
    _say_how_read(turn, facts)
    free_drop.say_free_drop(turn)
    _mend_or_go_on(turn, facts, text)


def keep(turn: Turn, facts: Facts) -> None:
    """Keep the facts of a message that is answered otherwise; what found no place is named."""
    quiet = visit.is_new(turn) and not planning.is_planning(turn)
    if facts.known():
        turn.learn(facts)
        if quiet:
            arrive.begin_quietly(turn)
    _say_how_read(turn, facts)


def _without_part_that_blinks(turn: Turn, facts: Facts) -> Facts:
    """While blinking is asked about, "the top, not all of it" is where it blinks, and no wish."""
    question = repeat.standing(turn)
    asked = question is not None and question.name in _OF_BLINKING
    framed = facts.section_height_m is not None or facts.lenses or facts.focal_mm is not None
    return facts.model_copy(update={"section": None}) if asked and not framed else facts


def _mend_or_go_on(turn: Turn, facts: Facts, text: str) -> None:
    """What was wrong with the frame is mended first, as soon as its settings are known."""
    complaint = turn.walk.complaint
    if complaint is not None and turn.facts.shutter_s is not None:
        adjust.trouble(turn, complaint.updated(facts))
        return
    if adjust.is_complaint(facts):
        adjust.trouble(turn, facts)
        return
    if turn.white is not None and turn.beside_white and not _is_elsewhere(turn, facts):
        take_settings(turn)  # of the frame; what blinks in it leads on
        return
    if not look_wished.answer_beside(turn, facts, text):
        _go_on(turn, facts)


def _is_elsewhere(turn: Turn, facts: Facts) -> bool:
    """Whether a message tells of another lens or place than that of the frame before."""
    before = turn.before.facts.known()
    told = facts.only(_GEOMETRY & facts.known().keys()).known()
    return any(before.get(slot) != value for slot, value in told.items())


def _say_how_read(turn: Turn, facts: Facts) -> None:
    """What found no place, and units that were guessed."""
    if facts.unread:
        pieces = ", ".join(f"`{piece}`" for piece in facts.unread[:3])
        turn.say(Role.ASSUMPTION, "unread_rest", pieces=pieces)
    light_told.say(turn, facts)
    if facts.guessed:
        turn.say(Role.ASSUMPTION, f"guessed.{facts.units.value if facts.units else 'metric'}")


#: Lenses named beside these words are in the bag, not on the camera.
_IN_THE_BAG: Final = re.compile(r"\b(?:also|own|bag|and)\b", re.IGNORECASE)


def _settled(turn: Turn, facts: Facts, text: str) -> Facts:
    """What the person set is no longer chosen by the bot: focal length, lens, polariser."""
    known_now = set(facts.known())
    note_filters(turn, facts)
    told_of_it = facts.polariser_on is not None
    if facts.has_polariser is False and turn.facts.polariser_on and not told_of_it:
        facts = facts.updated(Facts(polariser_on=False))  # none is on that is not there
    elif not told_of_it and _names_nd_alone(turn, facts):
        facts = facts.updated(Facts(polariser_on=False))  # not for good: it was never refused
    _note_lens(turn, facts, text)
    if "focal_mm" in known_now:
        turn.change_walk(checks=turn.walk.checks | {"focal": "set"})
    elif known_now & {"lenses"} and turn.walk.checks.get("focal") == "set":
        turn.unlearn("focal_mm")
    return facts


def _note_lens(turn: Turn, facts: Facts, text: str) -> None:
    """The one lens that is told is on, unless it is only in the bag; another shows another part."""
    if len(facts.lenses) != 1 or "focal" not in turn.walk.checks:
        return
    name = lens_kit.name_of(facts.lenses[0])
    switched = lens_put_on.put_on(text) == name
    if not switched and _IN_THE_BAG.search(text):
        return
    framed = facts.section or facts.section_height_m is not None
    if switched and framed and facts.nearest_m is None:
        turn.unlearn("nearest_m")  # what stood at the feet is in no part of the fall
    if switched and not framed and turn.walk.checks.get("lens") not in {None, name}:
        turn.unlearn("section")
        turn.unlearn("section_height_m")
    turn.change_walk(checks=turn.walk.checks | {"lens": name})


def note_filters(turn: Turn, facts: Facts) -> None:
    """What the person put on the lens or took off it, kept with the checks."""
    _note_nd(turn, facts)
    if facts.polariser_on is not None:
        now = "on" if facts.polariser_on else "off"
        turn.change_walk(checks=turn.walk.checks | {"polariser": now})


def _note_nd(turn: Turn, facts: Facts) -> None:
    """An ND that was taken off stays off until another light, look or filter is told."""
    if facts.nd_on_stops is not None:
        now = "on" if facts.nd_on_stops else "off"
        turn.change_walk(checks=turn.walk.checks | {"nd": now})
    elif facts.known().keys() & {"light", "look", "nd_stops"}:
        checks = {name: check for name, check in turn.walk.checks.items() if name != "nd"}
        turn.change_walk(checks=checks)


def _back_to_the_frame(turn: Turn, facts: Facts, text: str) -> None:
    """A setting that is put right is of the frame that was told, not of the plan made from it."""
    before, question = turn.walk.planned_from, turn.context.conversation.question
    if question is None or question.name != "blink_again":
        return  # no plan stands open
    one = len(facts.known().keys() & _SETTINGS) == 1 and facts.known().keys() <= _SETTINGS
    if before is not None and one and corrected.puts_right(text):
        turn.change_walk(given=before)


def _names_nd_alone(turn: Turn, facts: Facts) -> bool:
    """Whether a frame was taken "with the six": then a polariser that was only advised is off."""
    frame = bool(facts.nd_on_stops) and {"f_number", "shutter_s"} <= facts.known().keys()
    advised = turn.facts.polariser_on and "polariser" not in turn.walk.checks
    return frame and facts.polariser_on is None and bool(advised)


def moved(turn: Turn, facts: Facts, text: str) -> None:
    """Another place to stand has another nearest rock: what was nearest before is void.

    A number that was only put right moves nobody.
    """
    old_m = turn.facts.distance_m
    if old_m is None or facts.distance_m is None or facts.nearest_m is not None:
        return
    if corrected.puts_right(text):
        return
    if abs(facts.distance_m / old_m - 1) > _SAME_PLACE:
        turn.unlearn("nearest_m")
        asked = tuple(name for name in turn.walk.asked if not name.startswith("nearest"))
        turn.change_walk(asked=asked)


#: A distance that changes by less is the same place, told better (own rule).
_SAME_PLACE: Final = 0.2


def _go_on(turn: Turn, facts: Facts) -> None:
    changed = set(facts.known())
    said = _way_out_said(turn, changed)
    if said and changed <= arrive.WAY_OUT_SLOTS:
        now.put_question(turn)
        return
    if changed & _SETTINGS and _set_by_them(turn, changed):
        return
    state = turn.walk.state
    if facts.wind is not None and changed <= {"wind"} and wind_told.answer(turn, windy=facts.wind):
        return
    if state in BEFORE_LENS:
        _before_lens(turn, facts)
    elif _is_news(turn, facts, changed & _GEOMETRY) or (
        changed & _DEPTH and lens_depth.no_longer_holds(turn)
    ):
        _anew(turn)
    elif state in {State.HIGHLIGHTS, State.KEEP, State.BASE} and changed & _BASE:
        if not look_wished.answer(turn, facts):
            base.give(turn)
    else:
        _note(turn, facts)


def _is_news(turn: Turn, told: Facts, slots: set[str]) -> bool:
    """Whether one of these is known otherwise than before: who says it again moved nowhere.

    Of the lenses in the bag, another than the one in use is news.
    """
    before, now_known = turn.before.facts, turn.facts
    if any(getattr(before, slot) != getattr(now_known, slot) for slot in slots):
        return True
    focal_mm = reckoning.focal_of(before)
    if focal_mm is None or not told.lenses:
        return False
    return not any(lens.shortest_mm <= focal_mm <= lens.longest_mm for lens in told.lenses)


def _set_by_them(turn: Turn, changed: set[str]) -> bool:
    """Answer settings that are told: the rest of them where that is wanted, else their look."""
    if not _asks_for_time(turn, changed):
        return told_settings.answer(turn, changed)
    take_settings(turn)
    base.give(turn)
    return True


def _asks_for_time(turn: Turn, changed: set[str]) -> bool:
    """Whether an f-number is told with a light, look or filter, and no time: that is wanted."""
    set_anew = "f_number" in changed and "shutter_s" not in changed
    again = turn.walk.state in {State.HIGHLIGHTS, State.KEEP, State.BASE}
    return set_anew and again and turn.walk.given is not None and bool(changed & _FOR_A_TIME)


def _note(turn: Turn, facts: Facts) -> None:
    """What changes no answer is named; of a stream beside a fall there is nothing to name."""
    listed = _listed(turn, facts)
    if listed:
        turn.say(Role.SETTINGS, "noted", list=listed)
    if facts.f_number is not None:
        told_settings.warn_of_f_number(turn, facts.f_number)
    now.put_question(turn)


def _way_out_said(turn: Turn, changed: set[str]) -> bool:
    """Whether the plan of the day is said anew, where a message moves it."""
    told = turn.trip_told.known().keys() & arrive.TRIP_SLOTS
    news = bool(told - {"people", "slowest"}) or (bool(told) and arrive.moves(turn))
    return (news or bool(changed & arrive.WAY_OUT_SLOTS)) and arrive.way_out_told(turn)


def _before_lens(turn: Turn, facts: Facts) -> None:
    """Say what can be said already; the question for what is missing stands behind it."""
    if lens.missing(turn) is not None:
        ahead.say(turn, set(facts.known()))
    _say_noted(turn, facts)
    lens.go_on(turn)


def _say_noted(turn: Turn, facts: Facts) -> None:
    """What was told is named where the same question has to be put again."""
    standing, missing = repeat.standing(turn), lens.missing(turn)
    listed = _listed(turn, facts)
    if planning.is_planning(turn):
        if listed and not any(part.role is Role.SETTINGS for part in turn.parts):
            turn.say(Role.SETTINGS, "noted", list=listed)
        return
    if standing is None or missing is None or not listed:
        return
    if in_units(missing, turn.units) == standing.name:
        turn.say(Role.SETTINGS, "noted", list=listed)


def _listed(turn: Turn, facts: Facts) -> str:
    """What a message told, as a list."""
    lists = (known(facts, turn.units), known_trip(turn.trip_told))
    return ", ".join(told for told in lists if told)


def _anew(turn: Turn) -> None:
    """New geometry or another lens: choose again; composition answers stay."""
    checks = {name: check for name, check in turn.walk.checks.items() if name != OWN_F}
    turn.change_walk(checks=checks)
    turn.be_in(State.LENS, Trigger.TO_LENS)
    lens.go_on(turn)


def answer_seen(turn: Turn, value: str) -> None:
    """What is wrong with a frame, by number; with nothing wrong it is kept."""
    if value == "nothing":
        highlights.holds(turn)
        return
    symptoms = {
        "no_texture": Symptom.NO_TEXTURE,
        "too_white": Symptom.JUST_WHITE,
        "too_dark": Symptom.TOO_DARK,
        "soft": Symptom.SOFT_ALL,
    }
    adjust.trouble(turn, Facts(symptoms=(symptoms[value],)))
