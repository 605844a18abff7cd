"""Adjust: from what is wrong with a frame to the next settings, each lever with its price."""

from __future__ import annotations

import math
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.by_numbers import share_told
from bot.dialogue.compose import Role
from bot.dialogue.facts import TOO_MUCH_LIGHT, Blink, Facts, Symptom
from bot.dialogue.solving import Solved
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps.anywhere import phone, repeat
from bot.dialogue.steps.walk import diagnosis, highlights, liking, planned, sun_on_part
from bot.dialogue.steps.walk.highlights import PATCH_STOPS, SHEET_STOPS
from bot.dialogue.steps.walk.taken import ask_for_settings, take_settings, with_filters
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.exposure import Settings
from core.light import LIGHTS, metered_level
from core.series import SAME_STOPS, nearest, time_marks
from core.water import Look, look_of

#: As much under on the meter is right for white water (common practice: -0.7 to -1 for a scene
#: metered as a whole).
RIGHT_UNDER_STOPS: Final = 0.7
#: "Too bright", "too dark" without a number [stops] (own rule).
UNSAID_STOPS: Final = 1.0
_BLINK_CHANGE: Final = {Blink.PATCHES: -PATCH_STOPS, Blink.SHEET: -SHEET_STOPS}
#: Symptoms that are about brightness or the look; the others have their own short answers.
EXPOSURE: Final = frozenset(
    {
        Symptom.NO_TEXTURE,
        Symptom.TOO_FROZEN,
        Symptom.JUST_WHITE,
        Symptom.TOO_BRIGHT,
        Symptom.TOO_DARK,
    }
)
_OF_THE_LOOK: Final = frozenset({Symptom.NO_TEXTURE, Symptom.TOO_FROZEN})
#: What a message must hold to be a complaint about a frame.
COMPLAINTS: Final = frozenset({"symptoms", "meter_stops", "change_stops", "blink"})


def is_complaint(facts: Facts) -> bool:
    """Whether a message says what is wrong with (or right about) a frame that was taken."""
    return bool(COMPLAINTS & set(facts.known())) or facts.histogram_at_right is not None


def trouble(turn: Turn, told: Facts) -> None:
    """Answer a complaint from what was told and what was known before."""
    others = [symptom for symptom in told.symptoms if symptom not in EXPOSURE]
    exposure = set(told.symptoms) & EXPOSURE
    quiet = told.blink in {None, Blink.NOTHING, Blink.DOTS} and not exposure
    if others and quiet and told.meter_stops is None and told.change_stops is None:
        diagnosis.answer(turn, others[0])
        return
    if take_settings(turn) is None:
        if told.blink is not None and not exposure and told.meter_stops is None:
            highlights.blinked(turn, told.blink)
            return
        if others:
            diagnosis.answer(turn, others[0])
            return
        ask_for_settings(turn, told)
        return
    turn.change_walk(complaint=None)
    if not _of_the_white(turn, told, exposure):
        _solve_complaint(turn, told, exposure)


def _of_the_white(turn: Turn, told: Facts, exposure: set[Symptom]) -> bool:
    """Answer what blinks, where that is all that is told of brightness; whether it is."""
    if turn.white is not None and not exposure and sun_on_part.answer(turn, turn.white):
        return True
    if _is_restated(turn):
        given, turn.white = solving.settings_on(turn.given, turn.camera), None
        turn.say(Role.SETTINGS, "highlights.heard", settings=given)
        turn.ask("blink_again")
        return True
    if told.blink is not None:
        turn.white = None
    if told.blink is Blink.SKY:
        highlights.enter(turn)
        turn.say(Role.SETTINGS, "highlights.sky")
        turn.ask("sky_gap")
        return True
    if told.blink is not None and not exposure and told.meter_stops is None:
        highlights.blinked(turn, told.blink)
        return True
    return False


def _is_restated(turn: Turn) -> bool:
    """Whether patches are told again of the frame for which a plan stands open."""
    question, white = repeat.standing(turn), turn.white
    open_plan = question is not None and question.name == "blink_again"
    told_again = white is not None and white.again and white.blink in _BLINK_CHANGE
    return open_plan and told_again and turn.walk.planned_from is not None


# complaints in words and numbers


def _solve_complaint(turn: Turn, told: Facts, exposure: set[Symptom]) -> None:
    facts = turn.facts
    given = turn.walk.given
    assert given is not None  # noqa: S101  # the caller has taken the settings
    settings = Settings(given.f_number, given.shutter_s, given.iso)
    change = _with_told_light(turn, given, wanted_change(told, exposure))
    unsaid = told.change_stops is None and told.meter_stops is None
    if unsaid and exposure & TOO_MUCH_LIGHT:
        change = min(change, -highlights.whole_step(turn, given))
    if exposure == {Symptom.NO_TEXTURE} and not change and _is_short_enough(turn, given):
        _say_not_the_time(turn, given)
        return
    times = planned.times_for(turn, exposure, settings)
    if Symptom.TOO_FROZEN in exposure and not change:
        change = _room_for(turn, given, times)
    solved = solving.solve(with_filters(facts, given), settings, change, look_times=times)
    if not solved.plan.steps and not exposure and solved.plan.met:
        _keep_as_it_is(turn, solved, told)
        return
    if Symptom.TOO_FROZEN in exposure and no_longer(turn, given, solved):
        return
    highlights.note_levels(turn, given, clipped=change < 0)
    turn.be_in(State.ADJUST, Trigger.TROUBLE)
    planned.say_within_reach(turn, solved)
    turn.move(Trigger.ADJUSTED)
    turn.ask("blink_again")
    if exposure & _OF_THE_LOOK:
        liking.note_set(turn, solved.plan.settings.shutter_s)  # no room to the right undoes it
        _offer_next(turn, solved, shorter=Symptom.NO_TEXTURE in exposure)


def _room_for(turn: Turn, given: GivenSettings, times: tuple[float, float] | None) -> float:
    """How much brighter a longer time may make the frame [stops], under what has blinked."""
    clipped = turn.walk.clipped_stops
    if clipped is None or times is None:
        return 0.0
    room = clipped - PATCH_STOPS - solving.level_of(given)
    return max(min(room, math.log2(times[0] / given.shutter_s)), 0.0)


def no_longer(turn: Turn, given: GivenSettings, solved: Solved) -> bool:
    """Whether a longer time is out of a phone's or the hands' reach; then what gives it is said.

    Args:
        turn: the answer under construction.
        given: the settings of the frame, of which the water wants a longer time.
        solved: the plan from there.
    """
    if phone.gives_no_longer_time(turn, given.shutter_s, solved):
        phone.advise_longer(turn)
        return True
    time_s, camera = solved.plan.settings.shutter_s, solved.camera
    if not reckoning.by_hand(turn.facts) or time_s > given.shutter_s * 2**SAME_STOPS:
        return False
    longer_s = time_s * 2**planned.EYE_STOPS
    times = {"time": time_s, "longer": longer_s}
    labels = {name: solving.time_text(value, camera) for name, value in times.items()}
    turn.say(Role.SETTINGS, "adjust.by_hand", **labels)
    highlights.enter(turn)
    turn.ask("blink")
    return True


def _offer_next(turn: Turn, solved: Solved, *, shorter: bool) -> None:
    """The next rung of the ladder, should the water still have the wrong look; prices go before."""
    camera, time_s = solved.camera, solved.plan.settings.shutter_s
    next_s = time_s / 2**planned.EYE_STOPS if shorter else time_s * 2**planned.EYE_STOPS
    key = "adjust.shorter_next" if shorter else "adjust.longer_next"
    turn.say_or_keep(Role.CHECK, key, time=solving.time_text(next_s, camera))


def _is_short_enough(turn: Turn, given: GivenSettings) -> bool:
    """Whether the water is crisp by the person's numbers: what is soft then is not its way."""
    share = share_told(turn.facts, given.shutter_s)
    looks = list(Look)
    if share is None:
        return False
    wished = looks.index(reckoning.wished_look(turn.facts))
    return looks.index(look_of(share)) <= min(wished, looks.index(Look.CRISP))


def _say_not_the_time(turn: Turn, given: GivenSettings) -> None:
    """The time can't be it: what else makes water soft, and how to see which."""
    camera = turn.camera
    time = nearest(time_marks(camera.dial), given.shutter_s).label
    look = solving.look_is(turn.facts, given.shutter_s)
    turn.say(Role.SETTINGS, "adjust.not_the_time", time=time, look=look)
    turn.say(Role.CHECK, "adjust.what_else")
    highlights.enter(turn)
    turn.ask("blink")


def _with_told_light(turn: Turn, given: GivenSettings, change: float) -> float:
    """A warning says little of how far over it is; the light, if it was told, says more."""
    light = LIGHTS.get(turn.facts.light or "")
    if light is None or change >= 0:
        return change
    settings = Settings(given.f_number, given.shutter_s, given.iso)
    over = metered_level(settings, light.ev100, given.filter_stops)
    return min(change, -over)


def wanted_change(told: Facts, exposure: set[Symptom]) -> float:
    """The change of brightness that a complaint asks for [stops], positive: brighter."""
    if told.change_stops is not None:
        return told.change_stops
    if told.blink in _BLINK_CHANGE:
        return _BLINK_CHANGE[told.blink]
    if told.meter_stops is not None:
        dark = Symptom.TOO_DARK in exposure
        right = -RIGHT_UNDER_STOPS <= told.meter_stops <= SAME_STOPS and not dark
        return 0.0 if right else -told.meter_stops
    if Symptom.JUST_WHITE in exposure:
        return -SHEET_STOPS
    if Symptom.TOO_BRIGHT in exposure:
        return -UNSAID_STOPS
    return UNSAID_STOPS if Symptom.TOO_DARK in exposure else 0.0


def _keep_as_it_is(turn: Turn, solved: Solved, told: Facts) -> None:
    """Nothing to change: a third under on the meter is right for white water."""
    turn.change_walk(given=planned.merged(turn, solved))
    key = "adjust.keep"
    values = {
        "settings": solving.settings_on(solved.given, solved.camera),
        "look": solving.look_text(solved),
    }
    if told.meter_stops is not None and told.meter_stops < 0:
        key = "highlights.meter_under"
        values["stops"] = measures.stops(told.meter_stops)
    turn.say(Role.SETTINGS, key, **values)
    if told.histogram_at_right:
        turn.say(Role.CHECK, "asked.histogram")
    highlights.enter(turn)
    turn.ask("blink")
