"""Settings told in free words: those of a frame just taken, or a wish to have them looked over."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps import reasons
from bot.dialogue.steps.taken import take_settings
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from core.exposure import Settings, ev100
from core.series import f_number_label


def answer(turn: Turn, changed: set[str]) -> bool:
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
        look=solving.look_is(turn.facts, solved.given.shutter_s),
    )
    reasons.explain_share(turn, solved.flow, solved.given.shutter_s, camera)
    reasons.tell_assumed(turn, solved.assumed, camera)
    turn.ask("seen")


def _say_look(turn: Turn) -> None:
    given = turn.given
    camera = reckoning.camera_of(turn.facts, reckoning.Assumed())
    turn.say(
        Role.SETTINGS,
        "told.settings",
        settings=solving.settings_text(given, camera),
        look=solving.look_is(turn.facts, given.shutter_s),
    )
    warn_of_f_number(turn, given.f_number)


def warn_of_f_number(turn: Turn, f_number: float) -> None:
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
