"""A look that is asked for after a frame: the next settings differ from it, in that direction."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.aims import own_here
from bot.dialogue.facts import TOO_MUCH_LIGHT, Facts, Symptom
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading import read
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps.walk import adjust, base_said, liking, planned
from bot.dialogue.steps.walk.highlights import PATCH_STOPS
from bot.dialogue.steps.walk.taken import for_a_look, take_settings
from bot.dialogue.tongues import in_any
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.exposure import Settings
from core.water import Look, look_of

#: Facts that words of a look hold by chance: "threads in the stream, top to bottom".
_BESIDE: Final = frozenset({"look", "stream", "flow", "section"})
_AFTER_A_FRAME: Final = frozenset({State.HIGHLIGHTS, State.KEEP})
_WITH_A_FRAME: Final = _AFTER_A_FRAME | {State.ADJUST}
#: A look beside settings is wished with one of these; else it tells how the frame looks.
_WISHES: Final = re.compile(
    r"\b(?:want|wish|would like|would love|i'd like|i'd love|i like|i love|prefer|rather|more"
    r"|please|make (?:it|this|the \w+)|get (?:it|this|that|the \w+)"
    r"|i'm after|going for|aim(?:ing)? for|should be|supposed to be|hop(?:e|ing) for)\b",
    re.IGNORECASE,
)
#: "How do I get it silky?", "how can we make the water smoother".
_HOW: Final = re.compile(
    r"\bhow (?:do|can|could|would|should) (?:i|we|you) (?:get|make|reach|achieve|have)\b"
    r"[^.?!,;]*\??",
    re.IGNORECASE,
)
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


def wish_behind(text: str, facts: Facts) -> Facts:
    """The facts of a message, where "longer is too bright" is the wish for a longer time.

    Args:
        text: the message in English.
        facts: what was read in it.
    """
    if not (TOO_MUCH_LIGHT & set(facts.symptoms)) or not _NO_LONGER.search(text):
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
    _go_towards(turn, given)
    return True


def answer_beside(turn: Turn, told: Facts, text: str) -> bool:
    """The next settings where a message tells those of a frame and wishes for another look.

    Args:
        turn: the answer under construction; all that was told is learnt already.
        told: what the message tells.
        text: the message in English.

    Returns:
        Whether it tells and wishes so; a frame that has the look by the sum is only told of.
    """
    if told.look is None or told.shutter_s is None or turn.walk.state not in _WITH_A_FRAME:
        return False
    wished = reckoning.wished_look(turn.facts)
    share = reckoning.flow_of(turn.facts).share(told.shutter_s)
    if not _WISHES.search(text) or look_of(share) is wished:
        return False
    take_settings(turn)
    turn.be_in(State.HIGHLIGHTS, Trigger.NEW_FRAME)
    _go_towards(turn, turn.given)
    return True


def as_wish(turn: Turn, said: Said) -> Said:
    """A message in which "how do I get it silky?" wishes for the look, once there are settings.

    Args:
        turn: the answer under construction.
        said: the message.
    """
    walk = turn.context.conversation.walk
    asked = _HOW.search(said.english)
    look = None if walk is None or walk.given is None or not asked else read(asked.group()).look
    if look is None or asked is None:
        return said
    english = f"{said.english[: asked.start()]}i want it {look}{said.english[asked.end() :]}"
    return said._replace(english=english, typed=english if said.language == "en" else said.typed)


def _go_towards(turn: Turn, given: GivenSettings) -> None:
    """The next settings from those of a frame to the look that is wished."""
    settings = Settings(given.f_number, given.shutter_s, given.iso)
    facts, change = for_a_look(turn, given), _back_from_clipping(turn, given)
    solved = solving.solve(facts, settings, change, look_times=_times(turn, given))
    if _wants_longer(turn, given) and adjust.no_longer(turn, given, solved):
        return
    turn.be_in(State.ADJUST, Trigger.TROUBLE)
    planned.say_within_reach(turn, solved)
    base_said.say_own_look(turn)
    turn.move(Trigger.ADJUSTED)
    liking.note_set(turn, turn.given.shutter_s)
    turn.ask("blink_again")


def _wants_longer(turn: Turn, given: GivenSettings) -> bool:
    """Whether the wished look is one of longer times than the frame's."""
    looks = list(Look)
    share = reckoning.flow_of(turn.facts).share(given.shutter_s)
    return looks.index(reckoning.wished_look(turn.facts)) > looks.index(look_of(share))


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
