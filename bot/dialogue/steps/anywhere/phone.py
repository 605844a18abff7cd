"""A phone that shows no settings: what a finger on the glass can do, frame by frame."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import TOO_MUCH_LIGHT, Blink, Facts, Symptom
from bot.dialogue.solving import Solved
from bot.dialogue.states import State, Trigger
from bot.dialogue.turn import Turn
from core.water import Look, look_of

#: The next frame by its number, as the complaint that it is.
_SEEN: Final = {
    "white": Facts(symptoms=(Symptom.JUST_WHITE,)),
    "dark": Facts(symptoms=(Symptom.TOO_DARK,)),
    "mush": Facts(symptoms=(Symptom.NO_TEXTURE,)),
}


def advise(turn: Turn, complaint: Facts) -> None:
    """Say what to touch, and ask about the next frame."""
    turn.be_in(State.ADJUST, Trigger.TROUBLE)
    turn.say(Role.SETTINGS, _key(complaint))
    turn.move(Trigger.ADJUSTED)
    turn.ask("phone_again")


def gives_no_longer_time(turn: Turn, before_s: float, solved: Solved) -> bool:
    """Whether a plan ends at the frame's own time, though the wished look wants a longer one."""
    time_s = solved.plan.settings.shutter_s
    if not reckoning.is_phone(turn.facts) or not solved.plan.met or time_s > before_s * 1.05:
        return False
    looks = list(Look)
    wished = looks.index(reckoning.wished_look(turn.facts))
    return looks.index(look_of(solved.flow.share(time_s))) < wished


def advise_longer(turn: Turn) -> None:
    """A look that one frame of a phone can't give: its mode for long exposures can."""
    advise(turn, Facts(symptoms=(Symptom.TOO_FROZEN,)))


def _key(complaint: Facts) -> str:
    symptoms = set(complaint.symptoms)
    if not symptoms & TOO_MUCH_LIGHT:
        if Symptom.NO_TEXTURE in symptoms:
            return "phone.shorter"
        if Symptom.TOO_FROZEN in symptoms:
            return "phone.longer"
    wanted_stops = complaint.change_stops or -(complaint.meter_stops or 0.0)
    dark = Symptom.TOO_DARK in symptoms or complaint.blink is Blink.NOTHING
    return "phone.brighter" if dark or wanted_stops > 0 else "phone.darker"


def answer_again(turn: Turn, value: str) -> None:
    """What the next frame shows, by number; with nothing wrong it is kept."""
    if value != "nothing":
        advise(turn, _SEEN[value])
        return
    turn.be_in(State.KEEP, Trigger.HELD)
    turn.say(Role.SETTINGS, "phone.kept")
    turn.ask("next")
