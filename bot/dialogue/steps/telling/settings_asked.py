"""Settings where they are asked for outright: now, whatever the walk has not asked yet."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.compose import Part, Role
from bot.dialogue.meaning import settings_asked
from bot.dialogue.meaning.said import Said
from bot.dialogue.states import BEFORE_BASE
from bot.dialogue.steps.anywhere import planning
from bot.dialogue.steps.walk import base, composition
from bot.dialogue.turn import Turn

#: The settings say all of these, or make them needless.
_SAID_BY_THEM: Final = (
    *("asked.time", "ahead.times", "noted", "not_understood", "let_go"),
    *("base.", "light_told.", "asked.card", "where."),
)
#: Rough numbers for a card are asked for, and are no settings of now.
_FOR_A_CARD: Final = re.compile(r"\brough(?:ly)?\b|\b(?:for|onto?) (?:a|my|the) card\b")


def give(turn: Turn, said: Said) -> None:
    """Give the settings in front of all else but a caution, with what is assumed.

    Args:
        turn: the answer under construction; what the message tells is learnt.
        said: the message.
    """
    walk = turn.context.conversation.walk
    if walk is None or turn.urgent or turn.is_at_home or planning.is_planning(turn):
        return
    if not settings_asked.asked(said) or _FOR_A_CARD.search(said.english.casefold()):
        return
    if walk.state not in BEFORE_BASE:
        _leave_out_the_old(turn)
        return
    before = [part for part in turn.parts if part.role is not Role.QUESTION]
    before = [part for part in before if not part.key.startswith(_SAID_BY_THEM)]
    unseen = {"top", "sides"} & set(composition.checks_for(turn)) - walk.checks.keys()
    turn.parts = []
    base.give(turn)
    if turn.facts.light is None and not turn.walk.light_is_measured:
        turn.say(Role.CHECK, "base.light_untold")
    if unseen:
        turn.say(Role.ASSUMPTION, "base.borders_first")
    warned = [part for part in before if part.role is Role.SAFETY]
    beside = [part for part in before if part.role is not Role.SAFETY]
    turn.parts = [*warned, *_in_front(turn.parts), *beside, *_question(turn.parts)]


def _leave_out_the_old(turn: Turn) -> None:
    """Settings that were just given anew are not said beside those before them."""
    if any(part.key.startswith("base.") for part in turn.parts):
        turn.parts = [part for part in turn.parts if not part.key.startswith("where.")]


def _in_front(parts: list[Part]) -> list[Part]:
    return [part for part in parts if part.role is not Role.QUESTION]


def _question(parts: list[Part]) -> list[Part]:
    return [part for part in parts if part.role is Role.QUESTION]
