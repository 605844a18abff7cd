"""A lens of the kit by its number alone: "going for the 85"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Facts, LensFact
from bot.dialogue.turn import Turn

#: A number that stands like the name of a lens; with a unit or a sign it is something else.
_NAMED: Final = re.compile(
    r"\b(?:the|my|with|on) (?P<mm>\d{2,3})\b(?! ?(?:m|mm|cm|ft|feet|s|sec\w*|%|/|-|\.\d|st|th|min"
    r"|degrees?|stop))",
    re.IGNORECASE,
)


def placed(turn: Turn, text: str, facts: Facts) -> Facts:
    """The facts of a message, with a fixed lens of the kit that it names by its number.

    Args:
        turn: the answer under construction; the kit is known.
        text: the message in English.
        facts: what was read in it.
    """
    if facts.focal_mm is not None or facts.lenses:
        return facts
    fixed = {one.shortest_mm for one in turn.facts.lenses if one.shortest_mm == one.longest_mm}
    named = {float(match["mm"]) for match in _NAMED.finditer(text)} & fixed
    if len(named) != 1:
        return facts
    mm = named.pop()
    unread = tuple(piece for piece in facts.unread if piece.strip() != f"{mm:g}")
    lens = LensFact(shortest_mm=mm, longest_mm=mm)
    return facts.model_copy(update={"focal_mm": mm, "lenses": (lens,), "unread": unread})
