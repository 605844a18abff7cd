"""A filter that is told to be on, without its strength: the one that is known, else it is asked."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.folding import folded
from bot.dialogue.meaning import filters_on
from bot.dialogue.meaning.filters_on import PutOn, put_on, with_it
from bot.dialogue.meaning.said import Said
from bot.dialogue.tongues import whole_words
from bot.dialogue.turn import Turn
from core.camera import POLARISER_STOPS, nd_factor

_ALL_ALONG: Final = whole_words("filters_on.all_along")
#: "It's on" is a filter where one was advised.
_ANYTHING: Final = whole_words("filters_on.anything")
_NUMBER: Final = re.compile(r"\d+")
#: So near is a factor that is read to that of a filter (own rule: ND1000 takes 9.97 stops).
_SAME_FACTOR: Final = 0.05


def answer(turn: Turn, said: Said, told: Facts) -> bool:
    """Take in which filter is on, before what else is asked; whether its strength is asked for.

    Args:
        turn: the answer under construction.
        said: the message.
        told: what was read in it.
    """
    _count_before(turn, said, told)
    on = None if turn.walk.given is None else _told(turn, said, told)
    if on is None:
        return False
    if on.known():
        turn.learn(on)
        return False
    turn.say(Role.SETTINGS, "filters.measure")
    turn.ask("strength")
    return True


def _count_before(turn: Turn, said: Said, told: Facts) -> None:
    """A polariser that was on all along was on in the frames before: they were darker by it."""
    walk, given = turn.walk, turn.walk.given
    if given is None or given.polariser_on or not told.polariser_on:
        return
    if not (walk.light_is_measured and _ALL_ALONG.search(folded(said.typed))):
        return
    turn.change_walk(
        given=given.model_copy(update={"polariser_on": True}),
        clean_stops=_darker(walk.clean_stops),
        clipped_stops=_darker(walk.clipped_stops),
        first_stops=_darker(walk.first_stops),
    )


def _darker(level: float | None) -> float | None:
    return None if level is None else level - POLARISER_STOPS


def is_all(turn: Turn, said: Said) -> bool:
    """Whether a message asks nothing beside what it says to be on, once settings were given."""
    return turn.walk.given is not None and filters_on.is_all(said.typed)


def laid_over(turn: Turn, said: Said, told: Facts) -> Facts:
    """The facts of a message with the filter that it says to be on.

    Whose time behind it was asked for, and answered, is not on yet.
    """
    if any(part.key.startswith("asked.nd_time") for part in turn.parts):
        return told
    on = _told(turn, said, told)
    return told if on is None else told.updated(on)


def _told(turn: Turn, said: Said, told: Facts) -> Facts | None:
    """What is on, as facts; empty ones for an ND of unknown strength, None where nothing is."""
    advised = turn.walk.given is not None and turn.walk.given.filter_stops > 0
    if not advised and _ANYTHING.search(folded(said.typed)):
        return None
    kind = put_on(said.typed)
    trial = told.ask_what_if or turn.context.conversation.tried is not None
    if kind is None and turn.walk.given is not None and not trial:
        kind = with_it(said.typed)
    if kind is None or told.nd_on_stops == 0 or told.polariser_on is False:
        return None
    if told.nd_on_stops or (told.polariser_on and kind is not PutOn.BOTH):
        return Facts(nd_on_stops=told.nd_on_stops, polariser_on=told.polariser_on)
    return _of_kind(turn, kind, said)


def _of_kind(turn: Turn, kind: PutOn, said: Said) -> Facts:
    """The filter that is meant, of those that are known."""
    polariser = Facts(polariser_on=True, has_polariser=True)
    if kind is PutOn.POLARISER:
        return polariser
    stops = _known_strength(turn, said)
    if kind is PutOn.UNNAMED and stops is None and turn.facts.has_polariser:
        return polariser if not turn.facts.nd_stops else Facts()
    nd = Facts() if stops is None else Facts(nd_on_stops=stops)
    return polariser.updated(nd) if kind is PutOn.BOTH else nd


def _known_strength(turn: Turn, said: Said) -> float | None:
    """The ND that is meant [stops]: the one that is named, the only one, or the one advised."""
    owned, given = turn.facts.nd_stops or (), turn.walk.given
    numbers = [float(number) for number in _NUMBER.findall(said.typed)]
    named = [nd for nd in owned if any(_is_its(number, nd) for number in numbers)]
    if len(named) == 1 or len(owned) == 1:
        return (named or owned)[0]
    return (given.nd_on_stops or None) if given is not None and not numbers else None


def _is_its(number: float, stops: float) -> bool:
    """Whether a number names an ND: by its stops, or by its factor."""
    return number == stops or abs(number / nd_factor(stops) - 1) < _SAME_FACTOR
