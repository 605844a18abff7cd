"""Whether an f-number holds the depth: yes or no, what it takes, and which other one would."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.values_named import Named, named_in, plainly
from bot.dialogue.reading import read
from bot.dialogue.steps.asked import two_settings
from bot.dialogue.steps.asked.told_around import rest_of
from bot.dialogue.steps.asked.tried_values import lens_named
from bot.dialogue.steps.walk import base, reasons
from bot.dialogue.steps.walk.taken import NEARLY_F, least_label
from bot.dialogue.texts import measures
from bot.dialogue.tongues import in_any, whole_words
from bot.dialogue.turn import Turn
from core.camera import SensorFormat
from core.series import exact_f_number, f_number_label

_ENOUGH: Final = whole_words("depth_enough.enough")
_THAT: Final = whole_words("depth_enough.that")
_NO_DEPTH: Final = whole_words("depth_enough.no_depth")
#: "Is that enough?", of the settings given last.
_ALONE: Final = re.compile(
    rf"\W*(?:(?:so|and|ok|but|und|aber|y|pero)\W+)*(?:{in_any('depth_enough.that')}"
    rf"|{in_any('depth_enough.enough')})"
    rf"(?:\W+(?:{in_any('depth_enough.enough')}|for|the|a|für|para|la|{in_any('own_asked.nearest')}"
    r"|depth|tiefe|profundidad))*\W*"
)
_PIECE: Final = re.compile(r"(?<=[.!?;])\s+|,\s+(?=\D)|\n|\s+-\s+")
#: What a question about depth may tell of itself.
_OF_DEPTH: Final = frozenset({"nearest_m", "farthest_m", "focal_mm", "camera_format", "portrait"})
#: Wider than this no lens for water opens (common practice).
_LEAST_F: Final = 1.4


def answer(turn: Turn, said: Said) -> str | None:
    """Answer such a question.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        What else the message tells and asks; None when it asks nothing of the kind.
    """
    text, typed = plainly(said.english), said.typed.casefold()
    found = _asked(text, typed) if asks(said) else None
    given, near_m = turn.walk.given, reckoning.nearest_of(turn.facts)
    if found is None and given is not None and near_m is not None and _ALONE.fullmatch(text):
        found = [Named("f_number", given.f_number, 0, 0)]
    if found is None:
        return None
    pieces = _PIECE.split(text)
    mine = [piece for piece in pieces if _is_of_it(piece)]
    told = read(". ".join(map(_without_f, pieces)), units=turn.units)
    told = told.only(told.known().keys() & _OF_DEPTH).updated(lens_named(turn, text, told))
    told = told.updated(_nearest_named(text, told))
    _say(turn, turn.facts.updated(told), [one.value for one in found])
    return rest_of(". ".join(piece for piece in pieces if piece not in mine))


def _asked(text: str, typed: str) -> list[Named] | None:
    """The f-numbers of a message that asks whether the first of them is enough."""
    named = named_in(text)
    found = [one for one in named if one.slot == "f_number"]
    both = f"{text}\n{typed}"
    if not found or not _ENOUGH.search(both) or _NO_DEPTH.search(both):
        return None
    return None if _are_settings(text, named) else found


def _are_settings(text: str, named: Sequence[Named]) -> bool:
    """Whether a time stands right beside an f-number: of both together no depth is asked."""
    return any(
        {one.slot, other.slot} == {"f_number", "shutter_s"}
        and not text[one.end : other.start].strip(" ,/")
        for one, other in pairwise(named)
    )


def _is_of_it(piece: str) -> bool:
    """Whether a piece of the message names an f-number, or only asks whether that is enough."""
    if any(one.slot == "f_number" for one in named_in(piece)):
        return True
    return _ENOUGH.search(piece) is not None or _THAT.search(piece) is not None


def _without_f(piece: str) -> str:
    """A piece without its f-numbers, which say nothing of the depth that is needed."""
    for one in reversed([one for one in named_in(piece) if one.slot == "f_number"]):
        piece = f"{piece[: one.start]} {piece[one.end :]}"
    return piece


def _nearest_named(text: str, told: Facts) -> Facts:
    """The nearest of the lengths that are named, where nothing says which they are."""
    lengths = [one.value for one in named_in(text) if one.slot == "length"]
    return Facts() if told.nearest_m or not lengths else Facts(nearest_m=min(lengths))


def _say(turn: Turn, facts: Facts, f_numbers: Sequence[float]) -> None:
    now = base.standing(turn)
    sensor, dial = now.camera.sensor, now.camera.dial
    near_m, focal_mm = reckoning.nearest_of(facts), reckoning.focal_of(facts)
    if near_m is None or sensor.fixed_f_number is not None:
        turn.say(
            Role.SETTINGS,
            "verdict.enough_plain" if sensor.fixed_f_number is None else "asked.f_number_phone",
            low=f_number_label(sensor.best_f[0], dial),
            high=f_number_label(sensor.best_f[1], dial),
        )
        return
    focal_mm = focal_mm or reckoning.usual_focal_mm(facts)
    facts = facts.updated(Facts(focal_mm=focal_mm))
    depth = reckoning.depth_of(facts, focal_mm)
    exact = [exact_f_number(value, dial) for value in dict.fromkeys(f_numbers)]
    reasons.explain_depth(turn, facts, focal_mm, depth)
    turn.say(
        Role.SETTINGS,
        verdict(exact[0], depth.needed, sensor),
        near=measures.length(near_m, turn.units),
        focal=measures.focal(focal_mm, sensor.crop_factor),
        needed=least_label(max(depth.needed * NEARLY_F, _LEAST_F), dial),
        limit=f_number_label(sensor.softening_f, dial),
    )
    if len(exact) > 1:
        two_settings.say_depth(turn, facts, exact[1:])


def verdict(f_number: float, needed: float, sensor: SensorFormat) -> str:
    """Which of the three answers it is."""
    if f_number < needed * NEARLY_F:
        return "verdict.enough_no"
    return "verdict.enough_soft" if sensor.softens(f_number) else "verdict.enough_yes"
