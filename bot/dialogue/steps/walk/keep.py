"""Keep: the ladder of times, the leaf frame, the note of what worked, what comes next."""

from __future__ import annotations

import math
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.meaning.all_sharp import is_all_sharp
from bot.dialogue.solving import settings_on, settings_text
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps.walk import composition, free_drop, sun_shared, taught
from bot.dialogue.steps.walk.taken import take_settings
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings, Question
from core.adjust import leaf
from core.camera import Camera
from core.exposure import Settings
from core.frame.findings import Doubt
from core.series import (
    SAME_STOPS,
    f_number_label,
    f_number_marks,
    iso_label,
    iso_marks,
    nearest,
    shutter_label,
    time_marks,
)

#: The rungs of a ladder, in stops of time around the kept frame (common practice: 1/15 to 1 s
#: around 1/4 s; here only as far as the brightness can be held).
_RUNGS: Final = (-2, -1, 0, 1, 2)
#: Why a look can't be told is said once on a walk.
LOOK_DOUBTS: Final = frozenset(f"seen.look.{doubt.value.replace(' ', '_')}" for doubt in Doubt)
#: Answers that hold for the next frame too: which lens is on, and that the fall was not measured.
_STAYING: Final = frozenset(
    {"focal", "lens", "geometry", free_drop.OVER_ROCK, sun_shared.CHECK}
    | {"together.offer", "drawn.offer", *LOOK_DOUBTS}
)


def reached(turn: Turn) -> None:
    """The frame holds: say the ladder, then ask for the leaves, where nothing was told of them."""
    turn.be_in(State.KEEP, Trigger.HELD)
    if turn.facts.wind:
        leaf_frame(turn)
    rungs = ladder(turn)
    if len(rungs) > 1:  # the question stays rather than the ladder, which `why` tells, too
        turn.say(Role.ASSUMPTION, "keep.ladder", ladder=", ".join(rungs))
        turn.reason("why.ladder")
    ask_on(turn)


def ask_on(turn: Turn) -> None:
    """Ask whether leaves move, where neither a message nor an answer told it; else what is next."""
    known = turn.facts.wind is not None or "leaves" in turn.walk.checks
    turn.ask("next" if known else "leaves")


def ladder(turn: Turn) -> list[str]:
    """The same frame at several times, brightness held, as the dials show it."""
    given = turn.given
    camera = turn.camera
    rungs = [_rung(given, stops, camera) for stops in _RUNGS]
    return [rung for rung in rungs if rung is not None]


def _rung(given: GivenSettings, stops: int, camera: Camera) -> str | None:
    """One rung: shorter times by ISO, longer ones by ISO, then by closing the aperture."""
    wanted_s = given.shutter_s * 2**stops
    if not camera.shortest_s <= wanted_s <= camera.longest_s:
        return None
    time = shutter_label(nearest(time_marks(camera.dial), wanted_s).exact, camera.dial)
    iso = given.iso * 2.0**-stops
    if stops == 0 or camera.base_iso <= iso * 1.01 <= camera.sensor.top_iso * 1.02:
        exact = nearest(iso_marks(camera.dial), iso).exact
        return f"{time} {iso_label(exact, camera.dial)}"
    return _closed_rung(given, iso, camera, time)


def _closed_rung(given: GivenSettings, iso: float, camera: Camera, time: str) -> str | None:
    """A longer rung, once the ISO stands at base: close the aperture by the rest.

    The ISO is named where it is another one than that of the frame.
    """
    if iso > camera.base_iso or camera.sensor.fixed_f_number is not None:
        return None
    closed = given.f_number * math.sqrt(camera.base_iso / iso)
    if camera.sensor.softens(closed):
        return None
    mark = nearest(f_number_marks(camera.dial), closed).exact
    rung = f"{time} {f_number_label(mark, camera.dial)}"
    raised = given.iso > camera.base_iso * 1.01
    return f"{rung} {iso_label(camera.base_iso, camera.dial)}" if raised else rung


def hear_all_sharp(turn: Turn, typed: str) -> bool:
    """Take a closer look that found all of it sharp; whether a message tells that.

    Args:
        turn: the answer under construction.
        typed: the message; of a frame at the water alone.
    """
    if turn.walk.given is None or not is_all_sharp(typed):
        return False
    turn.say(Role.SETTINGS, "keep.all_sharp")
    return True


def answer_leaves(turn: Turn, value: str) -> None:
    """Leaves that move get a frame of their own; of this frame they are not asked about again."""
    turn.change_walk(checks=turn.walk.checks | {"leaves": value})
    if value == "yes":
        leaf_frame(turn)
    close(turn)


def leaf_frame(turn: Turn) -> None:
    """The second, short frame for leaves in the wind, as bright as the frame told or kept last."""
    given = take_settings(turn)
    if given is None:
        turn.say(Role.SETTINGS, "symptom.leaves")
        return
    camera = turn.camera
    water = Settings(given.f_number, given.shutter_s, given.iso)
    found = leaf.leaf_frame(water, camera, _widest(turn, given))
    as_bright_s = found.settings.shutter_s * 2**found.darker_stops
    turn.say(
        Role.SETTINGS,
        "keep.leaf_frame" if found.darker_stops < SAME_STOPS else "keep.leaf_frame_dark",
        settings=settings_text(found.settings, camera),
        stops=measures.stops(found.darker_stops),
        time=shutter_label(nearest(time_marks(camera.dial), as_bright_s).exact, camera.dial),
    )
    turn.change_walk(checks=turn.walk.checks | {"leaf_frame": "given"})
    _no_longer_asked(turn)
    turn.reason("why.leaf_frame_of", settings=settings_text(given, camera))
    turn.reason("why.leaf_frame")


def _no_longer_asked(turn: Turn) -> None:
    """Whether leaves move is known now: what comes next is asked in place of it."""
    question = turn.context.conversation.question
    if question is not None and question.name == "leaves":
        turn.change_conversation(question=Question(name="next", asked_at=turn.now, times=0))


def _widest(turn: Turn, given: GivenSettings) -> float:
    if given.focal_mm is None:
        return given.f_number
    return reckoning.lens_at(turn.facts, given.focal_mm).widest_at(given.focal_mm)


def close(turn: Turn) -> None:
    """All frames are taken: what to look at before leaving, and what comes next."""
    turn.say(Role.CHECK, "keep.check")
    turn.ask("next")


def answer_next(turn: Turn, value: str) -> None:
    """Another frame, another lens, or the end."""
    if value == "finish":
        finish(turn)
        return
    on = ("polariser", "on")  # what they put on they take along to the next lens
    kept = {
        name: check
        for name, check in turn.walk.checks.items()
        if name in _STAYING or (name, check) == on
    }
    before = turn.walk.given or turn.walk.kept
    turn.change_walk(checks=kept, put=(), given=None, kept=before, stays={}, first_stops=None)
    if value == "other_lens":
        turn.unlearn("focal_mm", "section", "section_height_m", "f_number", "shutter_s", "iso")
        turn.be_in(State.LENS, Trigger.TO_LENS)
        turn.ask("other_lens")
        return
    turn.unlearn("f_number", "shutter_s", "iso", "blink", "meter_stops", "symptoms")
    turn.be_in(State.COMPOSITION, Trigger.ANEW)
    composition.go_on(turn)


def finish(turn: Turn) -> None:
    """Close the walk with a note of what was kept."""
    given = turn.walk.given or turn.walk.kept
    if given is not None:  # a phone that shows no settings has none
        _say_log_line(turn, given)
        taught.kept_on_walk(turn)
    turn.say(Role.CHECK, "keep.finished")
    turn.change_conversation(walk=None, history=())
    turn.close_question()


def _say_log_line(turn: Turn, given: GivenSettings) -> None:
    turn.say(Role.SETTINGS, "keep.log_line", settings=noted(turn, given))


def noted(turn: Turn, given: GivenSettings) -> str:
    """Settings as a log has them: with the filters that were on, and the focal length."""
    camera = turn.camera
    crop = camera.sensor.crop_factor
    focal = f", {measures.focal(given.focal_mm, crop)}" if given.focal_mm else ""
    return settings_on(given, camera) + focal
