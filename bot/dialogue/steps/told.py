"""Facts told in free words: kept, answered, and the walk taken on from them."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.questions import in_units
from bot.dialogue.reading import read
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps import adjust, arrive, base, highlights, lens, lens_kit, repeat, what_if
from bot.dialogue.steps.taken import take_settings
from bot.dialogue.texts import TEXTS, known, measures
from bot.dialogue.turn import Turn
from core.adjust import Candidate, better_time
from core.exposure import Settings, ev100
from core.series import f_number_label, shutter_label
from core.water import look_of

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


def take_in(turn: Turn, facts: Facts, text: str) -> None:
    """Keep the facts of a message and answer it."""
    if facts.ask_what_if:
        what_if.answer(turn, facts)
        return
    quiet = turn.context.conversation.walk is None
    _moved(turn, facts)
    if facts.light is not None:
        turn.change_walk(clean_stops=None, clipped_stops=None, first_stops=None)
    turn.learn(_settled(turn, facts, text))
    if quiet:
        arrive.begin_quietly(turn)
    if _two_frames(turn, text):
        return
    _say_how_read(turn, facts)
    complaint = turn.walk.complaint
    if complaint is not None and turn.facts.shutter_s is not None:
        adjust.trouble(turn, complaint.updated(facts))
        return
    if adjust.is_complaint(facts):
        adjust.trouble(turn, facts)
        return
    _go_on(turn, facts)


def _say_how_read(turn: Turn, facts: Facts) -> None:
    """What found no place, and units that were guessed."""
    if facts.unread:
        pieces = ", ".join(f"`{piece}`" for piece in facts.unread[:3])
        turn.say(Role.ASSUMPTION, "unread_rest", pieces=pieces)
    if facts.guessed:
        turn.say(Role.ASSUMPTION, f"guessed.{facts.units.value if facts.units else 'metric'}")


#: Lenses named beside these words are in the bag, not on the camera.
_IN_THE_BAG: Final = re.compile(r"\b(?:also|own|bag|and)\b", re.IGNORECASE)


def _settled(turn: Turn, facts: Facts, text: str) -> Facts:
    """A focal length told is set, no longer chosen by the bot; one lens told later is on."""
    known_now = set(facts.known())
    if len(facts.lenses) == 1 and "focal" in turn.walk.checks and not _IN_THE_BAG.search(text):
        turn.change_walk(checks=turn.walk.checks | {"lens": lens_kit.name_of(facts.lenses[0])})
    if "focal_mm" in known_now:
        turn.change_walk(checks=turn.walk.checks | {"focal": "set"})
    elif known_now & {"lenses"} and turn.walk.checks.get("focal") == "set":
        turn.unlearn("focal_mm")
    return facts


def _moved(turn: Turn, facts: Facts) -> None:
    """Another place to stand has another nearest rock: what was nearest before is void."""
    old_m = turn.facts.distance_m
    if old_m is None or facts.distance_m is None or facts.nearest_m is not None:
        return
    if abs(facts.distance_m / old_m - 1) > _SAME_PLACE:
        turn.unlearn("nearest_m")
        asked = tuple(name for name in turn.walk.asked if not name.startswith("nearest"))
        turn.change_walk(asked=asked)


#: A distance that changes by less is the same place, told better (own rule).
_SAME_PLACE: Final = 0.2


def _go_on(turn: Turn, facts: Facts) -> None:
    changed = set(facts.known())
    said = bool(changed & arrive.WAY_OUT_SLOTS) and arrive.way_out_told(turn)
    if said and changed <= arrive.WAY_OUT_SLOTS:
        _put_question(turn)
        return
    if changed & _SETTINGS and _settings_told(turn, changed):
        return
    state = turn.walk.state
    if state in {State.ARRIVE, State.LENS}:
        _say_noted(turn, facts)
        lens.go_on(turn)
    elif changed & _GEOMETRY:
        _anew(turn)
    elif state in {State.HIGHLIGHTS, State.KEEP, State.BASE} and changed & _BASE:
        base.give(turn)
    else:
        turn.say(Role.SETTINGS, "noted", list=known(facts, turn.units))
        _put_question(turn)


def _say_noted(turn: Turn, facts: Facts) -> None:
    """What was told is named where the same question has to be put again."""
    standing, missing = repeat.standing(turn), lens.missing(turn)
    listed = known(facts, turn.units)
    if standing is None or missing is None or not listed:
        return
    if in_units(missing, turn.units) == standing.name:
        turn.say(Role.SETTINGS, "noted", list=listed)


def _put_question(turn: Turn) -> None:
    """The walk's question once more; where none stands open, the one of its step."""
    if repeat.standing(turn) is not None:
        repeat.put_again(turn)
    elif turn.walk.state in {State.ARRIVE, State.LENS}:
        lens.go_on(turn)
    else:
        turn.ask("blink")


def _anew(turn: Turn) -> None:
    """New geometry or another lens: choose again; composition answers stay."""
    turn.move(Trigger.TO_LENS)
    lens.go_on(turn)


def _settings_told(turn: Turn, changed: set[str]) -> bool:
    """Settings without a complaint: taken as those of the frame; whether it was answered."""
    later = turn.walk.state in {State.HIGHLIGHTS, State.ADJUST, State.KEEP}
    if turn.facts.shutter_s is None and not (later and turn.walk.given is not None):
        return False
    if later:
        take_settings(turn)
        turn.be_in(State.HIGHLIGHTS, Trigger.NEW_FRAME)
        _say_look(turn)
        turn.ask("blink")
        return True
    if not changed & {"f_number", "iso"}:
        return False
    _review(turn)
    return True


def _review(turn: Turn) -> None:
    """Settings told outright: the same brightness at base ISO, sharper where theirs blurs."""
    facts = turn.facts
    take_settings(turn)
    given = turn.given
    assumed = reckoning.Assumed()
    camera = reckoning.camera_of(facts, assumed)
    focal_mm = given.focal_mm or reckoning.USUAL_FULL_FRAME_MM / camera.sensor.crop_factor
    depth = reckoning.depth_of(facts, focal_mm, assumed)
    told = ev100(given.f_number, given.shutter_s, given.iso)
    fine = depth.needed * 0.98 <= given.f_number <= camera.sensor.softening_f * 1.02
    f_number = given.f_number if fine else depth.exact
    better = Settings(f_number, given.shutter_s, camera.base_iso)
    wanted = ev100(better.f_number, better.shutter_s, better.iso) - told
    solved = solving.solve(
        facts, better, wanted, look_times=(given.shutter_s / 64, given.shutter_s * 64)
    )
    turn.be_in(State.HIGHLIGHTS, Trigger.NEW_FRAME)
    turn.change_walk(given=solved.given.model_copy(update={"focus_m": reckoning.focus_of(facts)}))
    changed = not (given.f_number == solved.given.f_number and given.iso == solved.given.iso)
    turn.say(
        Role.SETTINGS,
        "told.better" if changed else "told.settings",
        settings=solving.settings_text(solved.given, camera),
        look=_look_is(turn, solved.given.shutter_s),
    )
    base.tell_assumed(turn, solved.assumed, camera)
    turn.ask("seen")


def _look_is(turn: Turn, shutter_s: float) -> str:
    flow = reckoning.flowing_or_usual(
        turn.facts, reckoning.focal_of(turn.facts), reckoning.Assumed()
    )
    share = flow.share(shutter_s)
    return TEXTS["highlights.look_is"].format(
        look=TEXTS[f"look.{look_of(share).value}"], share=measures.percent(share)
    )


def _say_look(turn: Turn) -> None:
    given = turn.given
    camera = reckoning.camera_of(turn.facts, reckoning.Assumed())
    turn.say(
        Role.SETTINGS,
        "told.settings",
        settings=solving.settings_text(given, camera),
        look=_look_is(turn, given.shutter_s),
    )
    _warn_of_f_number(turn, given.f_number)


def _warn_of_f_number(turn: Turn, f_number: float) -> None:
    """An f-number that the person chose against the depth, or past the format's limit."""
    facts = turn.facts
    focal_mm = reckoning.focal_of(facts)
    sensor = reckoning.sensor_of(facts, reckoning.Assumed())
    if focal_mm is None or sensor.fixed_f_number is not None:
        return
    depth = reckoning.depth_of(facts, focal_mm, reckoning.Assumed())
    if f_number > sensor.softening_f * _CLEARLY:
        limit = f_number_label(sensor.softening_f, reckoning.dial_of(facts))
        turn.say(Role.CHECK, "told.past_limit", limit=limit)
    elif facts.nearest_m is not None and f_number * _CLEARLY < depth.needed <= sensor.softening_f:
        near, needed = measures.length(facts.nearest_m, turn.units), measures.plain(depth.needed)
        turn.say(Role.CHECK, "told.too_open", near=near, needed=needed)


#: An f-number that differs by more than this factor is another one (own rule: a sixth of a stop).
_CLEARLY: Final = 1.06


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


# two frames in one message


def _two_frames(turn: Turn, text: str) -> bool:
    """Two times with what was seen at each: take the better one; whether that was the case."""
    clauses = [read(clause, units=turn.units) for clause in _CLAUSE.split(text)]
    seen = [c for c in clauses if c.shutter_s is not None and adjust.is_complaint(c)]
    times = {c.shutter_s for c in seen}
    if len(times) < 2:
        return False
    facts = turn.facts
    flow = reckoning.flowing_or_usual(facts, reckoning.focal_of(facts), reckoning.Assumed())
    found = better_time([_candidate(c) for c in seen], flow.times(reckoning.wished_look(facts)))
    best = seen[found.index]
    turn.learn(Facts(shutter_s=best.shutter_s))
    take_settings(turn)
    given = turn.given
    camera = reckoning.camera_of(facts, reckoning.Assumed())
    turn.be_in(State.HIGHLIGHTS, Trigger.NEW_FRAME)
    turn.say(
        Role.SETTINGS,
        "told.better_time",
        settings=solving.settings_text(given, camera),
        look=_look_is(turn, given.shutter_s),
    )
    turn.reason("why.better_time", time=shutter_label(given.shutter_s, camera.dial))
    base.explain_share(turn, flow, given.shutter_s, camera)
    turn.ask("blink_again")
    return True


#: Where one frame's report ends and the next begins.
_CLAUSE: Final = re.compile(r"[;\n]|\.\s|,\s*(?=(?:and |but )?(?:at|with)\b)|\b(?:but|then)\b")


def _candidate(facts: Facts) -> Candidate:
    clipped = facts.blink is not None and facts.blink.value in {"patches", "sheet"}
    white = Symptom.JUST_WHITE in facts.symptoms
    mush = Symptom.NO_TEXTURE in facts.symptoms
    return Candidate(
        shutter_s=reckoning.exact_settings(facts)[1] or 1.0,
        level_stops=facts.meter_stops,
        clipped=True if clipped or white else None,
        textured=False if mush else None,
    )
