"""The settings of the frame in question: those told, those given before, the rest assumed."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts, Keep
from bot.dialogue.steps.anywhere import phone
from bot.dialogue.steps.walk import liking
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.f_number import FNumberChoice
from core.light import LIGHTS
from core.series import Dial, at_least, f_number_label, f_number_marks

#: The f-number that the person set is kept with the checks, its exact value.
OWN_F: Final = "own_f_number"
#: Up to this light a polariser takes what is needed [EV] (common practice: none in a wooded gorge).
DIM_EV: Final = 8.0
#: An f-number that lies under what is needed by less holds it (own rule: a tenth of a stop).
NEARLY_F: Final = 0.965
#: Complaints that have a remedy without numbers.
_PLAINLY: Final = frozenset({"no_texture", "too_frozen", "just_white", "too_bright", "too_dark"})


def take_settings(turn: Turn) -> GivenSettings | None:
    """The settings of the frame in question: those told, the rest as given or assumed."""
    facts, given = turn.facts, turn.walk.given
    f_number, shutter_s, iso = reckoning.exact_settings(facts)
    if shutter_s is None and given is None:
        return None
    if given is None:
        given = _assumed(turn, shutter_s or 1.0)
        if f_number is None and turn.camera.sensor.fixed_f_number is None:
            turn.reason("why.assumed_f_number")
    changes = {
        "f_number": f_number,
        "shutter_s": shutter_s,
        "iso": iso,
        "focal_mm": reckoning.focal_of(facts),
        "polariser_on": facts.polariser_on,
        "nd_on_stops": facts.nd_on_stops,
    }
    told = {name: value for name, value in changes.items() if value is not None}
    given = given.model_copy(update=told)
    if shutter_s is not None:
        liking.note_set(turn, shutter_s)
    if f_number is not None:
        turn.change_walk(checks=turn.walk.checks | {OWN_F: f"{f_number!r}"})
    turn.change_walk(given=given)
    turn.unlearn("f_number", "shutter_s", "iso")  # they live on in what was given
    return given


def _assumed(turn: Turn, shutter_s: float) -> GivenSettings:
    """A frame of which the time alone was told: base ISO, and the f-number that suits the depth."""
    facts, camera = turn.facts, turn.camera
    used_mm = reckoning.focal_of(facts) or reckoning.usual_focal_mm(facts)
    depth = reckoning.depth_of(facts, used_mm)
    return GivenSettings(f_number=depth.exact, shutter_s=shutter_s, iso=camera.base_iso)


def ask_for_settings(turn: Turn, complaint: Facts) -> None:
    """Without settings nothing can be reckoned; the complaint waits until they are told.

    A phone mostly shows none: it gets its own advice, and the next frame is asked about.
    """
    if reckoning.is_phone(turn.facts):
        phone.advise(turn, complaint)
        return
    turn.change_walk(complaint=complaint)
    plain = next((one.value for one in complaint.symptoms if one.value in _PLAINLY), None)
    if plain is not None:
        turn.say(Role.SETTINGS, f"plain.{plain}")
    turn.ask("settings")


def own_f_number(turn: Turn, depth: FNumberChoice) -> float | None:
    """The f-number that the person set on this lens, where it holds the depth; else None.

    Args:
        turn: the answer under construction.
        depth: what the frame needs.
    """
    sensor, told = turn.camera.sensor, turn.walk.checks.get(OWN_F)
    if told is None or sensor.fixed_f_number is not None:
        return None
    f_number = float(told)
    deep = depth.stack is not None or f_number >= depth.needed * NEARLY_F
    return f_number if deep and not sensor.softens(f_number) else None


def least_label(wanted: float, dial: Dial) -> str:
    """The first f-number on the dial that is not wider than one that is wanted.

    Args:
        wanted: exact, above 0.
        dial: steps of the camera's dial.

    Returns:
        A mark of the dial; past its last one the f-number itself ("f/90"), which no lens has.
    """
    marks = f_number_marks(dial)
    past = wanted > marks[-1].exact
    return f_number_label(wanted, dial) if past else at_least(marks, wanted).label


def with_filters(facts: Facts, given: GivenSettings) -> Facts:
    """What is known, with the filters as they were given last."""
    on = {"polariser_on": True} if given.polariser_on and facts.polariser_on is None else {}
    nd = {"nd_on_stops": given.nd_on_stops} if given.nd_on_stops else {}
    return facts.model_copy(update=on | nd)


def with_polariser(turn: Turn, facts: Facts) -> Facts:
    """What is known, with a polariser that the person put on staying on.

    It cuts a shine that they saw; only what they say takes it off, or light so dim that it takes
    what is needed.
    """
    light = LIGHTS.get(facts.light or "")
    dim = light is not None and light.ev100 <= DIM_EV
    if dim or not facts.polariser_on or turn.walk.checks.get("polariser") != "on":
        return facts
    return facts.model_copy(update={"keep": facts.keep | {Keep.POLARISER}})


def for_a_look(turn: Turn, given: GivenSettings) -> Facts:
    """The same for another look: an ND that was taken off is not put on for it again."""
    facts = with_polariser(turn, with_filters(turn.facts, given))
    if turn.walk.checks.get("nd") == "off" and not given.nd_on_stops:
        return facts.model_copy(update={"nd_stops": ()})
    return facts
