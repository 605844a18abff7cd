"""The settings of the frame in question: those told, those given before, the rest assumed."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.steps.anywhere import phone
from bot.dialogue.steps.walk import liking
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings

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
    turn.change_walk(given=given)
    turn.unlearn("f_number", "shutter_s", "iso")  # they live on in what was given
    return given


def _assumed(turn: Turn, shutter_s: float) -> GivenSettings:
    """A frame of which the time alone was told: base ISO, and the f-number that suits the depth."""
    facts, camera = turn.facts, turn.camera
    used_mm = reckoning.focal_of(facts) or reckoning.usual_focal_mm(camera.sensor)
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


def with_filters(facts: Facts, given: GivenSettings) -> Facts:
    """What is known, with the filters as they were given last."""
    on = {"polariser_on": True} if given.polariser_on and facts.polariser_on is None else {}
    nd = {"nd_on_stops": given.nd_on_stops} if given.nd_on_stops else {}
    return facts.model_copy(update=on | nd)


def for_a_look(turn: Turn, given: GivenSettings) -> Facts:
    """The same for another look: an ND that was taken off is not put on for it again."""
    facts = with_filters(turn.facts, given)
    if turn.walk.checks.get("nd") == "off" and not given.nd_on_stops:
        return facts.model_copy(update={"nd_stops": ()})
    return facts
