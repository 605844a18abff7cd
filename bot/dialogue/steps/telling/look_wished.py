"""A look that is asked for after a frame: the next settings differ from it, in that direction."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.aims import own_here
from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps.anywhere import phone
from bot.dialogue.steps.walk import base_said, liking, planned
from bot.dialogue.steps.walk.highlights import PATCH_STOPS
from bot.dialogue.steps.walk.taken import for_a_look
from bot.dialogue.tongues import in_any
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.exposure import Settings
from core.water import Look, look_of

#: Facts that words of a look hold by chance: "threads in the stream, top to bottom".
_BESIDE: Final = frozenset({"look", "stream", "flow", "section"})
_AFTER_A_FRAME: Final = frozenset({State.HIGHLIGHTS, State.KEEP})
#: Looks for which a time that is already theirs by the sum is made shorter; longer for the others.
_SHORTER: Final = frozenset({Look.FROZEN, Look.CRISP, Look.TEXTURED})
#: A rung up or down may end half a stop beside it, where the light wants that (own rule).
_AT: Final = 2**0.5
#: Who can't go longer wishes to, and says why not: nothing was too bright yet. In other languages
#: as they are glossed.
_NO_LONGER: Final = re.compile(
    rf"\b{in_any('look_wished.cannot')}\b[^.;!?]{{0,24}}\b{in_any('look_wished.longer')}\b"
    rf"|\b{in_any('look_wished.longer_first')}\b"
    rf"[^.;!?]{{0,16}}\b{in_any('look_wished.cannot_behind')}\b",
    re.IGNORECASE,
)
_TOO_BRIGHT: Final = frozenset({Symptom.TOO_BRIGHT, Symptom.JUST_WHITE})


def wish_behind(text: str, facts: Facts) -> Facts:
    """The facts of a message, where "longer is too bright" is the wish for a longer time.

    Args:
        text: the message in English.
        facts: what was read in it.
    """
    if not (_TOO_BRIGHT & set(facts.symptoms)) or not _NO_LONGER.search(text):
        return facts
    return facts.model_copy(update={"symptoms": (Symptom.TOO_FROZEN,)})


def answer(turn: Turn, told: Facts) -> bool:
    """The next settings for the look that a message asks for, as bright as the frame before it.

    Args:
        turn: the answer under construction; the look is learnt already.
        told: what the message tells.

    Returns:
        Whether there was such a frame; otherwise the base settings are to be given anew.
    """
    given = turn.walk.given
    if given is None or told.look is None or set(told.known()) - _BESIDE:
        return False
    if turn.walk.state not in _AFTER_A_FRAME or not _was_taken(turn):
        return False
    settings = Settings(given.f_number, given.shutter_s, given.iso)
    facts, change = for_a_look(turn, given), _back_from_clipping(turn, given)
    solved = solving.solve(facts, settings, change, look_times=_times(turn, given))
    if phone.gives_no_longer_time(turn, given.shutter_s, solved):
        phone.advise_longer(turn)
        return True
    turn.be_in(State.ADJUST, Trigger.TROUBLE)
    planned.say_within_reach(turn, solved)
    base_said.say_own_look(turn)
    turn.move(Trigger.ADJUSTED)
    liking.note_set(turn, turn.given.shutter_s)
    turn.ask("blink_again")
    return True


def _was_taken(turn: Turn) -> bool:
    """Whether a frame was told of since the settings were given."""
    walk = turn.walk
    return bool(walk.stays) or walk.light_is_measured


def _back_from_clipping(turn: Turn, given: GivenSettings) -> float:
    """As bright as the frame was, or back from what is known to clip [stops]."""
    clipped = turn.walk.clipped_stops
    if clipped is None:
        return 0.0
    return min(clipped - PATCH_STOPS - solving.level_of(given), 0.0)


def _times(turn: Turn, given: GivenSettings) -> tuple[float, float]:
    """Times around the look's aim; a rung further where the frame has that look by the sum.

    The eye that asks for more of it decides (as in `planned.times_for`); where frames were kept
    of that look, it has decided.
    """
    flow = reckoning.flow_of(turn.facts)
    wished = reckoning.wished_look(turn.facts)
    if look_of(flow.share(given.shutter_s)) is not wished or own_here(turn, wished) is not None:
        return planned.well_inside(turn)
    rung = 2**planned.EYE_STOPS
    time_s = given.shutter_s / rung if wished in _SHORTER else given.shutter_s * rung
    return time_s / _AT, time_s * _AT
