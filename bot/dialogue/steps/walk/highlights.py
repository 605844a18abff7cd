"""Highlights: what blinks after a test frame, and the next frame as bright as the white allows."""

from __future__ import annotations

import math
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.by_numbers import rests_on_usual
from bot.dialogue.compose import Role
from bot.dialogue.facts import Blink, Facts
from bot.dialogue.solving import Solved
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.walk import keep, liking, planned, reasons
from bot.dialogue.steps.walk.taken import (
    ask_for_settings,
    for_a_look,
    take_settings,
    with_filters,
    with_polariser,
)
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from bot.dialogue.within_light import within_light
from core.adjust import Lever
from core.exposure import Settings
from core.series import SAME_STOPS, Dial, nearest, step_by, time_marks
from core.water import look_of

#: Step for a blinking patch, and for a whole sheet of water [stops] (common practice: the
#: camera's preview overstates by half a stop to one, so 1/3 to 2/3; own rule: one for a sheet).
PATCH_STOPS: Final = 2 / 3
SHEET_STOPS: Final = 1.0
#: The next step where that was not enough [stops] (own rule: doubled, as the edge is far).
AGAIN_STOPS: Final = 2.0
#: First and later steps up while nothing is lost [stops] (common practice: thirds).
UP_STOPS: Final = 2 / 3
UP_AGAIN_STOPS: Final = 1 / 3
#: A frame that has at least so much room is brought up by it at once [stops] (own rule).
FAR_STOPS: Final = 2.0
#: So nearly a whole click is one (own rule): 1/30 of a stop lies within the aim below clipping.
_NEARLY: Final = 0.1
#: What is asked of a frame that was taken.
_OF_A_FRAME: Final = frozenset({"settings", "blink", "blink_again", "seen", "phone_again"})
#: An upward search ends after this much [stops] (own rule).
UP_LIMIT_STOPS: Final = 2.0


def blinked(turn: Turn, blink: Blink) -> None:
    """Answer what blinks after a test frame."""
    turn.white = None
    given = take_settings(turn)
    if given is None:
        _blinked_without_settings(turn, blink)
        return
    enter(turn)
    match blink:
        case Blink.NOTHING | Blink.DOTS if _has_another_look(turn, given):
            for_look(turn)
        case Blink.NOTHING:
            note_levels(turn, given, clipped=False)
            _up(turn, given)
        case Blink.DOTS:
            note_levels(turn, given, clipped=False)
            holds(turn, "highlights.dots")
        case Blink.PATCHES:
            darker(turn, PATCH_STOPS, "highlights.darker")
        case _:
            darker(turn, whole_step(turn, given), "highlights.much_darker")


def _blinked_without_settings(turn: Turn, blink: Blink) -> None:
    """A frame of which no setting is known: white that holds needs none, the walk goes on."""
    question = repeat.standing(turn)
    asked_of_it = question is None or question.name in _OF_A_FRAME
    if blink is not Blink.NOTHING or asked_of_it:
        ask_for_settings(turn, Facts(blink=blink))
        return
    phone = reckoning.is_phone(turn.facts)
    turn.say(Role.SETTINGS, "phone.no_warning" if phone else "plain.holds")
    repeat.put_again(turn)


def _has_another_look(turn: Turn, given: GivenSettings) -> bool:
    """Whether the frame misses the look that was asked for by name, by the person's own numbers."""
    assumed = reckoning.Assumed()
    focal_mm = given.focal_mm or reckoning.focal_of(turn.facts)
    flow = reckoning.flowing_or_usual(turn.facts, focal_mm, assumed)
    if turn.facts.look is None or rests_on_usual(assumed) or liking.holds(turn, given):
        return False
    other = look_of(flow.share(given.shutter_s)) is not reckoning.wished_look(turn.facts)
    return other and _plan_for_look(turn, given).plan.met  # what the light gives stays else


def enter(turn: Turn) -> None:
    """The walk stands at the highlights: a test frame was taken."""
    turn.be_in(State.HIGHLIGHTS, Trigger.NEW_FRAME)


def note_levels(turn: Turn, given: GivenSettings, *, clipped: bool) -> None:
    """Keep the brightest level known to hold and the darkest known to clip."""
    level = solving.level_of(given)
    walk = turn.walk
    if clipped:
        known = walk.clipped_stops
        turn.change_walk(clipped_stops=level if known is None else min(known, level))
    else:
        known = walk.clean_stops
        turn.change_walk(clean_stops=level if known is None else max(known, level))


def _up(turn: Turn, given: GivenSettings) -> None:
    """Nothing lost: brighter, until the edge is known or the search has gone far enough."""
    walk = turn.walk
    level = solving.level_of(given)
    edge = walk.clipped_stops
    first = walk.first_stops if walk.first_stops is not None else level
    turn.change_walk(first_stops=first)
    if liking.holds(turn, given):
        holds(turn, "highlights.held_own")
        return
    near_edge = edge is not None and edge - level <= PATCH_STOPS + SAME_STOPS
    if near_edge or level - first >= UP_LIMIT_STOPS - SAME_STOPS:
        holds(turn, "highlights.held")
        return
    brighter(turn, UP_STOPS if level - first < SAME_STOPS else UP_AGAIN_STOPS)


def brighter(
    turn: Turn, stops: float, *, far: bool = False, other_look: bool = False, lamp: bool = False
) -> None:
    """There is room of a third at least: the next frame is brighter, where a lever gives it.

    Args:
        turn: the answer under construction.
        stops: of room.
        far: there is at least so much, and maybe much more.
        other_look: the frame has another look than the wished one, to which there is a way.
        lamp: a lamp or the sun is lost in it, as it may.
    """
    given = take_settings(turn)
    if given is None:
        ask_for_settings(turn, Facts(blink=Blink.NOTHING))
        return
    stops = min(stops, FAR_STOPS if far else SHEET_STOPS)
    solved = _plan_up(turn, given, stops)
    if solved is None:
        if other_look:
            for_look(turn)
        else:
            holds(turn, "highlights.held_by_iso")  # more ISO gives the white no more light
        return
    turn.change_walk(given=planned.merged(turn, solved))
    turn.say(
        Role.SETTINGS,
        "highlights.far_brighter" if far else f"highlights.brighter{'_lamp' if lamp else ''}",
        settings=solving.settings_text(solved.given, solved.camera) + solving.filters_text(solved),
        stops=measures.stops(solved.situation.change_stops - solved.plan.remaining_stops),
        look=solving.look_text(solved),
    )
    if stops - solved.situation.change_stops >= 1 / solved.camera.dial.value:
        turn.say(Role.CHECK, "highlights.more_by_iso")
    turn.reason("why.to_the_right")
    reasons.explain_share(turn, solved.flow, solved.given.shutter_s, solved.camera)
    turn.ask("blink_again")


def clicks_within(stops: float, dial: Dial) -> int:
    """Whole clicks of a dial within so much room; 1 where there is any.

    Room is never rounded up: half a click more than there is would clip what held.
    """
    return max(1, math.floor(stops * dial.value + _NEARLY))


def _plan_up(turn: Turn, given: GivenSettings, stops: float) -> Solved | None:
    """The brightest plan within some stops that takes whole clicks of the dial, and no ISO."""
    dial = turn.camera.dial
    for clicks in range(clicks_within(stops, dial), 0, -1):
        solved = _plan_from(turn, given, clicks / dial.value)
        levers = {step.lever for step in solved.plan.steps}
        if levers and Lever.ISO not in levers:
            return solved
    return None


def whole_step(turn: Turn, given: GivenSettings) -> float:
    """The step down for a frame that is white as a whole; longer where a darker one is again."""
    clipped = turn.walk.clipped_stops
    again = clipped is not None and solving.level_of(given) < clipped - SAME_STOPS
    return AGAIN_STOPS if again else SHEET_STOPS


def darker(turn: Turn, stops: float, key: str) -> None:
    """The water clips: the next frame is darker by this step, or back where it held."""
    given = take_settings(turn)
    if given is None:
        ask_for_settings(turn, Facts(change_stops=-stops))
        return
    note_levels(turn, given, clipped=True)
    clean = turn.walk.clean_stops
    level = solving.level_of(given)
    back = clean is not None and SAME_STOPS < level - clean <= stops + SAME_STOPS
    if back and clean is not None:
        stops = level - clean
    solved = _plan_from(turn, given, -stops)
    turn.be_in(State.ADJUST, Trigger.TROUBLE)
    if back and solved.plan.met:
        turn.change_walk(given=planned.merged(turn, solved))
        holds(turn, "highlights.back")
        return
    planned.say_within_reach(turn, solved, key)
    turn.move(Trigger.ADJUSTED)
    turn.ask("blink_again")


def _plan_from(turn: Turn, given: GivenSettings, change: float) -> Solved:
    settings = Settings(given.f_number, given.shutter_s, given.iso)
    facts = with_polariser(turn, with_filters(turn.facts, given))
    if liking.is_liked(turn, given):
        kept = solving.solve(facts, settings, change, keep_time=True)
        if kept.plan.met:
            return kept
    times = planned.times_for(turn, set(), settings)
    solved = solving.solve(facts, settings, change, look_times=times)
    return (within_light(solved) or solved) if change > 0 else solved


def holds(turn: Turn, key: str = "highlights.held", *, look: str | None = None) -> None:
    """The whites hold and the look is right: keep.

    Args:
        turn: the answer under construction.
        key: of the sentence.
        look: as a picture shows it, where no numbers tell it.
    """
    given = take_settings(turn)
    if given is None:
        repeat.put_again(turn)
        return
    camera = turn.camera
    flow = reckoning.flow_of(turn.facts)
    look = look or solving.look_is(turn.facts, given.shutter_s)
    settings = solving.settings_on(given, camera)
    turn.say(Role.SETTINGS, key, settings=settings, look=look)
    reasons.explain_share(turn, flow, given.shutter_s, camera)
    keep.reached(turn)


def for_look(turn: Turn) -> None:
    """The whites hold, but the water has another look than was asked for: the way to that."""
    given = turn.given
    note_levels(turn, given, clipped=False)
    solved = _plan_for_look(turn, given)
    turn.be_in(State.ADJUST, Trigger.TROUBLE)
    planned.say_plan(turn, solved, "frame.for_look")
    turn.move(Trigger.ADJUSTED)
    turn.ask("blink_again")


def bracket(turn: Turn) -> None:
    """One darker frame for the sky, by the time alone."""
    given = turn.given
    camera = turn.camera
    shorter = step_by(time_marks(camera.dial), given.shutter_s, 2 * camera.dial.value)
    turn.say(
        Role.SETTINGS,
        "highlights.bracket",
        settings=solving.settings_on(given, camera),
        darker=nearest(time_marks(camera.dial), shorter.exact).label,
    )


def _plan_for_look(turn: Turn, given: GivenSettings) -> Solved:
    settings = Settings(given.f_number, given.shutter_s, given.iso)
    times = planned.well_inside(turn)
    return solving.solve(for_a_look(turn, given), settings, 0.0, look_times=times)
