"""Whether another time does it, asked after a frame: "isn't 1/6 enough?", by what has blinked."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.facts import Symptom
from bot.dialogue.reading import read
from bot.dialogue.steps.walk import highlights, liking, reasons
from bot.dialogue.texts import measures
from bot.dialogue.tongues import in_any, whole_words
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.series import SAME_STOPS, exact_shutter_s

#: A time as the readers write it; an f-number is asked about in other words.
_TIME: Final = (
    r"(?:\d+/\d+|\d+(?:\.\d+)? ?s\b|(?:a|one|half) (?:quarter|half|third|\w+th|a?second)\b)"
)
_ASKS: Final = re.compile(
    rf"\b(?:{in_any('time_enough.in_front')})(?: (?!f/|f\d)[\w']+){{0,3}}? (?P<front>{_TIME})"
    rf"[^.;?!]*\??"
    rf"|\b(?:is|isn't|would|wouldn't|will|won't|does|doesn't) (?P<behind>{_TIME})"
    rf"(?: s| of a second)? (?:{in_any('time_enough.behind')})\b[^.;?!]*\??",
    re.IGNORECASE,
)
#: What another time is asked about for.
_OF_THE_TIME: Final = frozenset(
    {Symptom.TOO_FROZEN, Symptom.NO_TEXTURE, Symptom.JUST_WHITE, Symptom.SOFT_ALL}
)
#: Their frame has a time of its own.
_LEAVES: Final = whole_words("told_sights.leaves")
_CLAUSES: Final = re.compile(r"(?<=[.;!?,])\s+")
#: So near to a frame that blinked, another one blinks, too [stops] (common practice: the step of
#: a patch is 1/3 to 2/3).
_LEAST_UNDER: Final = 1 / 3


def answer(turn: Turn, text: str) -> str | None:
    """Answer whether a time would do, by the white and the look.

    Args:
        turn: the answer under construction.
        text: the message in English.

    Returns:
        What else the message says, without the complaint that the time answers; None where it
        asks nothing of the kind, or nothing has blinked yet: the difference alone is said then.
    """
    given, clipped = turn.walk.given, turn.walk.clipped_stops
    found = _ASKS.search(text)
    if given is None or clipped is None or found is None or _LEAVES.search(found.group()):
        return None
    time_s = read(found["front"] or found["behind"], expecting=frozenset({"shutter_s"})).shutter_s
    if time_s is None or reckoning.is_phone(turn.facts):
        return None
    wanted = given.model_copy(update={"shutter_s": exact_shutter_s(time_s, turn.camera.dial)})
    under = clipped - solving.level_of(wanted)
    if under < _LEAST_UNDER - SAME_STOPS:
        _say_no(turn, given, wanted)
    else:
        _say_yes(turn, given, wanted, under)
    return _without_complaint(text.replace(found.group(), " "))


def _say_no(turn: Turn, given: GivenSettings, wanted: GivenSettings) -> None:
    camera = turn.camera
    turn.say(
        Role.SETTINGS,
        "time_enough.no",
        time=solving.time_text(wanted.shutter_s, camera),
        settings=solving.settings_on(given, camera),
    )
    turn.ask("blink_again")


def _say_yes(turn: Turn, given: GivenSettings, wanted: GivenSettings, under: float) -> None:
    """The time is taken over; how much darker it is than what blinked."""
    camera = turn.camera
    turn.change_walk(planned_from=given, given=wanted)
    liking.note_set(turn, wanted.shutter_s)
    highlights.enter(turn)
    turn.say(
        Role.SETTINGS,
        "time_enough.yes",
        settings=solving.settings_on(wanted, camera),
        look=solving.look_is(turn.facts, wanted.shutter_s),
    )
    turn.say(Role.CHECK, "time_enough.under", stops=measures.stops(under))
    reasons.explain_share(turn, reckoning.flow_of(turn.facts), wanted.shutter_s, camera)
    turn.ask("blink_again")


def _without_complaint(text: str) -> str:
    """The clauses that tell of something else than a wrong time."""
    kept = [one for one in _CLAUSES.split(text) if not _complains_of_it(one)]
    return " ".join(kept).strip(" ,.")


def _complains_of_it(clause: str) -> bool:
    facts = read(clause)
    times = all("s" in piece or "/" in piece for piece in facts.unread)
    return bool(_OF_THE_TIME & set(facts.symptoms)) or (bool(facts.unread) and times)
