"""An answer on an empty walk: reckoned from what is told in it alone, and kept nowhere."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from bot.dialogue.compose import Part, Role
from bot.dialogue.context import Conversation, Room
from bot.dialogue.facts import Facts
from bot.dialogue.turn import Turn

#: Roles that belong to who stands there: their questions, cautions and dangers.
_OF_WHO_IS_THERE: Final = frozenset({Role.QUESTION, Role.CAUTION, Role.SAFETY})


def empty(turn: Turn, facts: Facts, *, kit: Facts | None = None) -> Turn:
    """Somebody of whom nothing but this is known, spoken of to who writes.

    Args:
        turn: the answer under construction; it stays as it is.
        facts: what is told of them.
        kit: what they have besides.
    """
    person = turn.context.person.model_copy(update={"kit": kit or Facts(), "kept_shares": {}})
    parts = {"conversation": Conversation(), "person": person, "place": None, "room": Room()}
    paper = Turn(turn.context.model_copy(update=parts), turn.origin, turn.now)
    paper.learn(facts)
    return paper


def take_over(turn: Turn, paper: Turn, *, without: Iterable[str] = ()) -> None:
    """Say in this answer what was found on paper, with its reasons.

    Args:
        turn: the answer under construction.
        paper: what was reckoned.
        without: beginnings of the keys of what is left out.
    """
    left_out = tuple(without)
    for part in paper.parts:
        if part.role in _OF_WHO_IS_THERE or part.key.startswith(left_out or ("\0",)):
            continue
        # As a line of its own, so that it is held for no light of here and now.
        turn.say(part.role, "others.line", line=Part(part.role, part.key, part.values).text())
    turn.notes += paper.notes
