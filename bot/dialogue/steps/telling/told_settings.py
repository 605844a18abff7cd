"""Settings told in free words: those of a frame just taken, or a wish to have them looked over."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.walk import reasons
from bot.dialogue.steps.walk.taken import take_settings
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.camera import Camera
from core.exposure import Settings, ev100
from core.series import f_number_label


def answer(turn: Turn, changed: set[str]) -> bool:
    """Settings without a complaint: taken as those of the frame; whether it was answered."""
    later = turn.walk.state in {State.HIGHLIGHTS, State.ADJUST, State.KEEP}
    if turn.facts.shutter_s is None and not (later and turn.walk.given is not None):
        return False
    if later:
        before = turn.walk.given
        if take_settings(turn) == before and turn.walk.state is State.KEEP:
            _say_look(turn)  # of the same frame nothing is asked again
            repeat.put_again(turn)
            return True
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
    focal_mm = given.focal_mm or reckoning.usual_focal_mm(facts)
    depth = reckoning.depth_of(facts, focal_mm, assumed)
    least = camera.sensor.best_f[0] if depth.stack else depth.needed  # no f-number holds a stack
    fine = least * 0.98 <= given.f_number and not camera.sensor.softens(given.f_number)
    if fine and given.iso <= camera.base_iso * _NEAR_BASE:
        _keep_theirs(turn, camera)
        return
    f_number = given.f_number if fine else depth.exact
    solved = _as_bright(facts, given, Settings(f_number, given.shutter_s, camera.base_iso))
    turn.be_in(State.HIGHLIGHTS, Trigger.NEW_FRAME)
    turn.change_walk(given=solved.given.model_copy(update={"focus_m": reckoning.focus_of(facts)}))
    changed = not (given.f_number == solved.given.f_number and given.iso == solved.given.iso)
    turn.say(
        Role.SETTINGS,
        "told.better" if changed else "told.settings",
        settings=solving.settings_on(solved.given, camera),
        look=solving.look_is(turn.facts, solved.given.shutter_s),
    )
    reasons.explain_share(turn, solved.flow, solved.given.shutter_s, camera)
    reasons.tell_assumed(turn, solved.assumed, camera)
    turn.ask("seen")


def _as_bright(facts: Facts, given: GivenSettings, better: Settings) -> solving.Solved:
    """Better settings made as bright as those that were given, the time kept near theirs."""
    told = ev100(given.f_number, given.shutter_s, given.iso)
    wanted = ev100(better.f_number, better.shutter_s, better.iso) - told
    times = given.shutter_s / _NEAR_TIMES, given.shutter_s * _NEAR_TIMES
    return solving.solve(facts, better, wanted, look_times=times)


def _keep_theirs(turn: Turn, camera: Camera) -> None:
    """Settings that need no mending stay, mark for mark, and so does the light they let in."""
    turn.be_in(State.HIGHLIGHTS, Trigger.NEW_FRAME)
    facts, assumed = turn.facts, reckoning.Assumed()
    reckoning.camera_of(facts, assumed)
    flow = reckoning.flowing_or_usual(facts, reckoning.focal_of(facts), assumed)
    turn.change_walk(given=turn.given.model_copy(update={"focus_m": reckoning.focus_of(facts)}))
    _say_look(turn)
    reasons.explain_share(turn, flow, turn.given.shutter_s, camera)
    reasons.tell_assumed(turn, assumed, camera)
    turn.ask("seen")


def _say_look(turn: Turn) -> None:
    given = turn.given
    camera = turn.camera
    turn.say(
        Role.SETTINGS,
        "told.settings",
        settings=solving.settings_on(given, camera),
        look=solving.look_is(turn.facts, given.shutter_s),
    )
    warn_of_f_number(turn, given.f_number)


def warn_of_f_number(turn: Turn, f_number: float) -> None:
    """An f-number that the person chose against the depth, or past the format's limit."""
    facts = turn.facts
    focal_mm = reckoning.focal_of(facts)
    sensor = reckoning.sensor_of(facts)
    if focal_mm is None or sensor.fixed_f_number is not None:
        return
    depth = reckoning.depth_of(facts, focal_mm)
    if f_number > sensor.softening_f * _CLEARLY:
        limit = f_number_label(sensor.softening_f, reckoning.dial_of(facts))
        turn.say(Role.CHECK, "told.past_limit", limit=limit)
    elif facts.nearest_m is not None and f_number * _CLEARLY < depth.needed <= sensor.softening_f:
        near, needed = measures.length(facts.nearest_m, turn.units), measures.plain(depth.needed)
        turn.say(Role.CHECK, "told.too_open", near=near, needed=needed)


#: Up to this factor above the base a raised ISO is nothing to mend (own rule: a stop).
_NEAR_BASE: Final = 2.02
#: The time stays within this factor of theirs (own rule: six stops, more than a base ISO takes).
_NEAR_TIMES: Final = 64.0
#: An f-number that differs by more than this factor is another one (own rule: a sixth of a stop).
_CLEARLY: Final = 1.06
