"""What a light means, said as soon as it is told: before any settings, once on a walk."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.turn import Turn

_DUSK: Final = "light_told.dusk"
#: Lights that decide more than a time, with the text that says what.
_MEANS: Final = {
    "full sun": "light_told.sun",
    "hazy sun": "light_told.sun",
    "after sunset": _DUSK,
    "dusk": _DUSK,
}
_WITHOUT_FILTERS: Final = {
    "light_told.sun": "light_told.sun_bare",
    _DUSK: "light_told.dusk_bare",
}
_OF_A_PHONE: Final = {
    "light_told.sun": "light_told.sun_phone",
    _DUSK: "light_told.dusk_phone",
}


#: Shades that are darker than open shade, and are called shady, too.
_DEEPER: Final = frozenset({"open gorge", "light canopy", "wooded gorge", "dense canopy"})
_SHADY: Final = re.compile(r"\bshad(?:y|ed)\b|\bopen shade\b")
#: Who went to another place tells of the shade there.
_MOVED: Final = re.compile(r"\b(?:moved|went|walked|gone|back|out)\b")


def in_same_shade(turn: Turn, told: Facts, text: str) -> Facts:
    """The facts of a message; "it's just shady" under trees is the light that was told before.

    Args:
        turn: the answer under construction.
        told: what was read in it.
        text: the message in English.
    """
    said = text.casefold()
    again = told.light == "open shade" and turn.facts.light in _DEEPER
    if not again or _MOVED.search(said) or not _SHADY.search(said):
        return told
    return told.model_copy(update={"light": turn.facts.light})


def say(turn: Turn, told: Facts) -> None:
    """Say what the light of a message means for the frame, while no settings rest on it yet."""
    key = _MEANS.get(told.light or "")
    if key is None or turn.walk.given is not None or key in turn.walk.checks:
        return
    turn.change_walk(checks=turn.walk.checks | {key: "said"})
    if reckoning.is_phone(turn.facts):
        key = _OF_A_PHONE[key]
    elif turn.facts.nd_stops == () and (key != _DUSK or turn.facts.has_polariser is False):
        key = _WITHOUT_FILTERS[key]
    turn.say(Role.CHECK, key)
