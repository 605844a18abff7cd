"""The time at other settings and filters, from a time that was right at those a message names."""

from __future__ import annotations

import re
from typing import Final, NamedTuple

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.values_named import named_in, plainly
from bot.dialogue.reading import read
from bot.dialogue.reading.inventory import POLARISER
from bot.dialogue.steps.asked.supposing import settings_now
from bot.dialogue.steps.asked.told_around import rest_of
from bot.dialogue.texts import TEXTS
from bot.dialogue.tongues import in_any, whole_words
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.series import f_number_label, iso_label

_ASKS: Final = whole_words("time_sum.asks")
#: Where what was right is parted from what is asked.
_PIECE: Final = re.compile(
    rf"(?<=[.!?;])\s+|\n|[\s,]+(?={in_any('time_sum.reference')}\b)"
    rf"|,\s+(?=(?:\w+ )?{in_any('time_sum.asks')})",
    re.IGNORECASE,
)
#: What was too bright or too dark was not right.
_WRONG: Final = frozenset({"meter_stops", "change_stops", "symptoms", "blink"})
_BESIDE: Final = frozenset({"f_number", "iso"})
_POLARISER: Final = re.compile(rf"\b(?:{POLARISER})\b")
_OFF: Final = re.compile(
    rf"\b(?:no|without|sin) (?:\w+ )?(?:{POLARISER})\b|\b(?:{POLARISER}) (?:is )?off\b"
)
#: "With it on", behind a polariser that is spoken of: the settings of now are the ones held on to.
_PUT_ON: Final = re.compile(
    rf"\b(?:{POLARISER})\b[^?!]*\b{in_any('time_sum.with_it')}"
    rf"|\b{in_any('time_sum.with')} (?:\w+ )?(?:{POLARISER})\b",
    re.IGNORECASE,
)
_HOW_MUCH: Final = whole_words("time_sum.how_much")


class _Sum(NamedTuple):
    """The piece that asks for a time, the one that tells of one, and what else is said."""

    asked: str
    right: str
    rest: str


def answer(turn: Turn, said: Said) -> str | None:
    """Answer such a question: each stop of opening, ISO and filters by its definition.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        What else the message tells of the scene; None when it asks nothing of the kind.
    """
    text = plainly(said.english)
    found = _found(text) if _ASKS.search(text) or _ASKS.search(said.typed.casefold()) else None
    now = None if found is None else settings_now(turn)
    if found is None or now is None:
        return None
    right = _settings(turn, found.right, now)
    asked = _settings(turn, found.asked, right)
    stops = solving.level_of(asked.model_copy(update={"shutter_s": 1.0})) - solving.level_of(
        right.model_copy(update={"shutter_s": 1.0})
    )
    time_s = right.shutter_s * 2**-stops
    facts = turn.facts.updated(read(found.rest, units=turn.units).only(frozenset({"focal_mm"})))
    camera = turn.camera
    turn.say(
        Role.SETTINGS,
        "time_sum.is",
        time=solving.watch_text(time_s, camera),
        f_number=f_number_label(asked.f_number, camera.dial),
        iso=iso_label(asked.iso, camera.dial),
        filters=solving.filters_on(asked) or TEXTS["filter.none"],
        look=solving.look_is(facts, time_s),
    )
    turn.say(Role.CHECK, "time_sum.as_bright", right=solving.settings_on(right, turn.camera))
    if _HOW_MUCH.search(text) and asked.polariser_on and not right.polariser_on:
        turn.say(Role.CHECK, "asked.polariser_takes")
    turn.reason("why.practice")
    return rest_of(found.rest)


def _found(text: str) -> _Sum | None:
    """The two pieces; None where there are not just these."""
    pieces = [piece for piece in _PIECE.split(text) if piece.strip()]
    slots = [{one.slot for one in named_in(piece)} for piece in pieces]
    told = [n for n, has in enumerate(slots) if "shutter_s" in has and has & _BESIDE]
    right = [n for n in told if not read(pieces[n]).known().keys() & _WRONG]
    asked = [n for n, has in enumerate(slots) if "shutter_s" not in has and has & _BESIDE]
    if not told and len(asked) == 1 and _PUT_ON.search(text):
        return _Sum(text, "", "")
    if len(right) != 1 or len(asked) != 1:
        return None
    rest = " ".join(piece for n, piece in enumerate(pieces) if n not in {asked[0], right[0]})
    return _Sum(pieces[asked[0]], pieces[right[0]], rest)


def _settings(turn: Turn, piece: str, other: GivenSettings) -> GivenSettings:
    """The settings that a piece names; what it leaves out is as with the other ones."""
    told = {one.slot: one.value for one in named_in(piece) if one.slot in {*_BESIDE, "shutter_s"}}
    facts = read(piece, units=turn.units)
    f_number, shutter_s, iso = reckoning.exact_settings(Facts.model_validate(told))
    changes = {
        "f_number": f_number,
        "shutter_s": shutter_s,
        "iso": iso,
        "polariser_on": False if facts.polariser_on is False else _polariser_on(piece),
        "nd_on_stops": _nd_stops(facts),
    }
    return other.model_copy(update={k: v for k, v in changes.items() if v is not None})


def _nd_stops(facts: Facts) -> float | None:
    """What is on the lens of grey filters [stops]; one that is named for a time is on it."""
    if facts.nd_on_stops is None and facts.nd_stops:
        return sum(facts.nd_stops)
    return facts.nd_on_stops


def _polariser_on(piece: str) -> bool | None:
    """Whether a piece has the polariser on, or off; None where it says nothing of it."""
    if _OFF.search(piece):
        return False
    return True if _POLARISER.search(piece) else None
