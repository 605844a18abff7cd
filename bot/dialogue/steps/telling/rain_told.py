"""Rain that is told: after much of it the water may rise, in it the glass gets wet; once a walk."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.compose import Part, Role
from bot.dialogue.steps.anywhere import planning
from bot.dialogue.turn import Turn

#: Much rain before, or much water now.
_MUCH: Final = re.compile(
    r"\b(?:rained|poured|raining) (?:\w+ ){0,3}?(?:yesterday|all night|all day|overnight|last night"
    r"|for days|heavily|hard|a lot|like mad|cats and dogs)\b|\b(?:heavy|lots of|so much) rain\b"
    r"|\b(?:so|very) much water\b|\b(?:in spate|high water|water is (?:very |really )?high)\b"
)
_NOW: Final = re.compile(r"\b(?:drizzl\w*|light rain|raining|it rains|showers?)\b")


def say(turn: Turn, text: str) -> None:
    """Say it beside the answer to a message at the water.

    Args:
        turn: the answer under construction.
        text: the message in English.
    """
    walk = turn.context.conversation.walk
    silent = turn.urgent or not turn.parts or walk is None
    if silent or planning.is_planning(turn) or turn.is_at_home:
        return
    said = text.casefold()
    if _MUCH.search(said) and "rain.before" not in turn.walk.checks:
        turn.say(Role.CAUTION, "rain.before")
        turn.reason("why.practice")
        turn.change_walk(checks=turn.walk.checks | {"rain.before": "said"})
    elif _NOW.search(said) and "rain.now" not in turn.walk.checks:
        part = Part(Role.CHECK, "rain.now")
        if turn.has_room_for(part):
            turn.parts.append(part)
        turn.change_walk(checks=turn.walk.checks | {"rain.now": "said"})
