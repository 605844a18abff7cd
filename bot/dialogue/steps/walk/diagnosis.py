"""Symptoms that are not about brightness: one line with the person's own numbers."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts, Keep, Symptom
from bot.dialogue.questions import in_units
from bot.dialogue.reckoning import Assumed
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.walk import keep, reasons
from bot.dialogue.steps.walk.taken import own_f_number, take_settings, with_filters
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.camera import POLARISER_STOPS
from core.exposure import Settings
from core.framing import frame_fall, section_focal_mm, stand_back_m
from core.series import f_number_label, nearest, time_marks

#: Past the format's limit by less than a stop diffraction takes detail, and blurs nothing that a
#: beginner calls blurry: then the camera moved (common practice; the stop is an own rule).
_A_STOP: Final = 2**0.5 * 0.97
_OF_SUPPORT: Final = frozenset({"has_tripod", "hand_held"})


def is_held(turn: Turn, told: Facts) -> bool:
    """Whether a rest is told of beside more, or for settings that hands held; a phone's stay."""
    again = turn.walk.given is not None and not reckoning.is_phone(turn.facts)
    return told.hand_held is False and (again or bool(told.known().keys() - _OF_SUPPORT))


def answer(turn: Turn, symptom: Symptom) -> None:
    """Say the likeliest cause and the remedy, then put the walk's question again."""
    _ANSWERS[symptom](turn)
    if turn.question_put:
        return
    if repeat.standing(turn) is not None:
        repeat.put_again(turn)


def soft_depth(turn: Turn) -> None:
    """Near or far out of focus: f-number and focus for the depth."""
    facts = turn.facts
    assumed = Assumed()
    sensor = reckoning.sensor_of(facts, assumed)
    focal_mm = reckoning.focal_of(facts)
    if facts.nearest_m is None or focal_mm is None:
        turn.say(Role.SETTINGS, "symptom.soft_depth")
        turn.ask(in_units("nearest" if facts.nearest_m is None else "focal", turn.units))
        return
    if sensor.fixed_f_number is not None:
        turn.say(Role.SETTINGS, "symptom.soft_phone")
        return
    depth = reckoning.depth_of(facts, focal_mm, assumed)
    take_settings(turn)
    own = own_f_number(turn, depth)
    focus_m = reckoning.focus_of(facts) or 2 * facts.nearest_m
    key = "symptom.soft_depth_stack" if depth.stack else "symptom.soft_depth_numbers"
    far_m = reckoning.farthest_of(facts)
    turn.say(
        Role.SETTINGS,
        key,
        f_number=f_number_label(own or depth.exact, reckoning.dial_of(facts)),
        focus=measures.length(focus_m, turn.units),
        near=measures.length(facts.nearest_m, turn.units),
        far=measures.length(far_m, turn.units) if far_m else TEXTS["far_wall"],
        frames=str(depth.stack or 1),
    )
    if own is not None and depth.stack is None:
        turn.say(Role.CHECK, "symptom.else_shake")
    reasons.explain_depth(turn, facts, focal_mm, depth)
    reasons.explain_focus(turn, facts)


def soft_all(turn: Turn) -> None:
    """All of it is soft: diffraction where the f-number is far too high, else shake."""
    facts = turn.facts
    sensor = reckoning.sensor_of(facts)
    f_number = reckoning.exact_settings(facts)[0]
    if f_number is None and turn.walk.given is not None:
        f_number = turn.walk.given.f_number
    if f_number is not None and sensor.softens(f_number / _A_STOP):
        dial = reckoning.dial_of(facts)
        turn.say(
            Role.SETTINGS,
            "symptom.diffraction",
            f_number=f_number_label(f_number, dial),
            better=f_number_label(sensor.best_f[1], dial),
        )
        reasons.explain_diffraction(turn, f_number, sensor.best_f[1])
        return
    if reckoning.is_phone(facts):
        turn.say(Role.SETTINGS, "symptom.shake_phone")
    elif facts.hand_held or facts.has_tripod is False:
        turn.say(Role.SETTINGS, "symptom.shake_hand")
    else:
        turn.say(Role.SETTINGS, "symptom.shake")


def glare(turn: Turn) -> None:
    """Shine: the polariser, and the settings that make up for its light with the look kept."""
    facts, given = turn.facts, turn.walk.given
    if facts.has_polariser is False:
        turn.say(Role.SETTINGS, "symptom.glare_none")
    elif facts.has_polariser is None and facts.polariser_on is None:
        turn.say(Role.SETTINGS, "symptom.glare_if")
    elif given is None or given.polariser_on or reckoning.is_phone(facts):
        turn.say(Role.SETTINGS, "symptom.glare")
    else:
        _polariser_on(turn, given)


def _polariser_on(turn: Turn, given: GivenSettings) -> None:
    """The polariser goes on, and as much light comes in elsewhere."""
    known = with_filters(turn.facts, given)
    fixed = known.updated(
        Facts(polariser_on=False, has_polariser=False, keep=known.keep | {Keep.ND})
    )
    settings = Settings(given.f_number, given.shutter_s, given.iso)
    solved = solving.solve(fixed, settings, POLARISER_STOPS)
    now = solved.given.model_copy(update={"polariser_on": True, "focus_m": given.focus_m})
    beside = now.model_copy(update={"polariser_on": False})
    settings_now = solving.settings_on(beside, solved.camera)
    turn.say(Role.SETTINGS, "symptom.glare_time", settings=settings_now)
    turn.change_walk(given=now)
    turn.learn(Facts(polariser_on=True, has_polariser=True))
    reasons.explain_share(turn, solved.flow, now.shutter_s, solved.camera)


def leaning(turn: Turn) -> None:
    """Leaning walls: how far back a level camera holds the top."""
    facts = turn.facts
    focal_mm = reckoning.focal_of(facts)
    if facts.fall_height_m is None or focal_mm is None:
        turn.say(Role.SETTINGS, "symptom.leaning")
        return
    sensor = reckoning.sensor_of(facts)
    eye_m = reckoning.camera_height_of(facts)
    side_mm = reckoning.vertical_side_mm(facts, sensor)
    above_m = max(facts.fall_height_m - eye_m, 0.1)
    distance_m = stand_back_m(above_m, focal_mm, side_mm)
    turn.say(
        Role.SETTINGS,
        "symptom.leaning_numbers",
        distance=measures.length(distance_m, turn.units),
        focal=measures.focal(focal_mm, sensor.crop_factor),
    )
    reasons.explain_stand_back(turn, above_m, focal_mm, side_mm)


def too_small(turn: Turn) -> None:
    """A lost fall: the focal lengths that fill the frame."""
    facts = turn.facts
    if facts.fall_height_m is None or facts.distance_m is None:
        turn.say(Role.SETTINGS, "symptom.too_small")
        return
    sensor = reckoning.sensor_of(facts)
    side_mm = reckoning.vertical_side_mm(facts, sensor)
    eye_m = reckoning.camera_height_of(facts)
    framing = frame_fall(facts.fall_height_m, facts.distance_m, eye_m, None, side_mm)
    half = section_focal_mm(facts.fall_height_m / 2, facts.distance_m, side_mm)
    turn.say(
        Role.SETTINGS,
        "symptom.too_small_numbers",
        focal=measures.focal(framing.focal_mm, sensor.crop_factor),
        longer=measures.focal(half, sensor.crop_factor),
    )
    reasons.explain_framing(turn, framing, side_mm, None)


def _black_rock(turn: Turn) -> None:
    """Black rock and pools: a polariser at its full turn, or more contrast than a frame holds."""
    given = turn.walk.given
    if turn.facts.polariser_on or (given is not None and given.polariser_on):
        turn.say(Role.SETTINGS, "symptom.black_polariser")
    if given is None:
        turn.say(Role.SETTINGS, "symptom.black_rock")
        return
    dial = reckoning.dial_of(turn.facts)
    longer = nearest(time_marks(dial), min(32.0, given.shutter_s * 4))
    camera = turn.camera
    turn.say(
        Role.SETTINGS,
        "symptom.black_rock_numbers",
        settings=solving.settings_on(given, camera),
        time=longer.label,
    )


def _cast(turn: Turn) -> None:
    """A cast: behind an ND its own tint, else the blue of the shade."""
    if turn.facts.nd_on_stops:
        turn.say(Role.SETTINGS, "cause.nd_cast")
        turn.say(Role.ASSUMPTION, "symptom.blue")
    else:
        turn.say(Role.SETTINGS, "symptom.blue")


def _plainly(key: str) -> Callable[[Turn], None]:
    def say(turn: Turn) -> None:
        turn.say(Role.SETTINGS, key)

    return say


_ANSWERS: Final[Mapping[Symptom, Callable[[Turn], None]]] = {
    Symptom.SOFT_NEAR: soft_depth,
    Symptom.SOFT_FAR: soft_depth,
    Symptom.SOFT_ALL: soft_all,
    Symptom.SOFT_SPOTS: _plainly("symptom.spots"),
    Symptom.LEAVES_SMEARED: keep.leaf_frame,
    Symptom.GLARE: glare,
    Symptom.BLUE_CAST: _cast,
    Symptom.LEANING: leaning,
    Symptom.TOO_SMALL: too_small,
    Symptom.BLACK_ROCK: _black_rock,
}
