"""What a length is in the other unit: "what's 3.9 m in feet"."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.meaning.said import Said
from bot.dialogue.texts import measures
from bot.dialogue.tongues import in_any
from bot.dialogue.turn import Turn

#: Metres in a unit, by the first letters of its names; all exact (the yard and foot of 1959).
_METRES: Final[Mapping[str, float]] = {
    "mm": 0.001,
    "cm": 0.01,
    "km": 1000.0,
    "m": 1.0,
    "in": 0.0254,
    "ft": 0.3048,
    "yd": 0.9144,
    "mi": 1609.344,
}
#: Names of units behind a number, and as what a length is wished in.
_UNITS: Final[Mapping[str, str]] = {
    "mm": r"mm|milli\w+|mil[ií]met\w+",
    "cm": r"cm|centi\w+|zentimeter\w*",
    "km": r"km|kilomet\w*|kil[oó]met\w+|kms",
    "m": r"m|met(?:er|re)s?|metern|metros?|mtrs?",
    "in": r"in|inch(?:es)?|zoll|pulgadas?|\"",
    "ft": r"ft|feet|foot|fu(?:ß|ss)|pies?|'",
    "yd": r"yd|yards?|yardas?",
    "mi": r"mi|miles?|meilen?|millas?",
}
_UNIT: Final = "|".join(f"(?P<{{0}}_{key}>{names})" for key, names in _UNITS.items())
_NUMBER: Final = r"(?P<number>\d{1,5}(?:[.,]\d{1,3})?)"
#: "3.9 m in feet", "3,9 m in Fuß", "3,9 m en pies".
_OTHER_UNIT: Final = re.compile(
    rf"(?<![\d/.,]){_NUMBER} ?(?:{_UNIT.format('told')})(?![\w/]) {in_any('lengths.into')} "
    rf"(?:{_UNIT.format('wished')})(?!\w)",
    re.IGNORECASE,
)
#: "How many feet is 3.9 m", "wie viel Fuß sind 3,9 m", "cuántos pies son 3,9 m".
_HOW_MANY: Final = re.compile(
    rf"\b{in_any('lengths.how_many')} (?:{_UNIT.format('wished')})(?!\w)(?: \w+){{1,2}}? "
    rf"{_NUMBER} ?(?:{_UNIT.format('told')})(?![\w/])",
    re.IGNORECASE,
)

#: What is left of the question before its number.
_ASKING: Final = re.compile(
    r"(?:\b(?:and |so |wait |sorry )*what(?:'?s| is| are)\s*)$", re.IGNORECASE
)


def answer(turn: Turn, said: Said) -> str | None:
    """Answer such a question from its own number, which is not kept.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        What else the message says in English; None when it asks nothing of the kind.
    """
    for text in dict.fromkeys((said.english, said.typed)):
        found = _OTHER_UNIT.search(text) or _HOW_MANY.search(text)
        if found is None or (told := _unit(found, "told")) == (wished := _unit(found, "wished")):
            continue
        length_m = float(found["number"].replace(",", ".")) * _METRES[told]
        turn.say(
            Role.SETTINGS,
            "asked.length_is",
            told=f"{found['number']} {told}",
            length=f"{measures.significant(length_m / _METRES[wished])} {wished}",
        )
        turn.reason("why.practice")
        return _ASKING.sub("", text[: found.start()]) + text[found.end() :]
    return None


def _unit(found: re.Match[str], which: str) -> str:
    """The unit that a match names."""
    return next(key for key in _UNITS if found[f"{which}_{key}"] is not None)
