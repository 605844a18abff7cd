"""What is told of the frame's edges while something else has to be answered first."""

from __future__ import annotations

from typing import Final

from bot.dialogue.numbered_reply import numbered
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading.edges import edges_told
from bot.dialogue.states import BEFORE_BASE
from bot.dialogue.steps.anywhere import manner, repeat
from bot.dialogue.turn import Turn

_EDGES: Final = frozenset({"top", "sides", "anchor"})
#: Marks an answer whose remedy was not said yet.
_WAITS: Final = ".waits"


def keep(turn: Turn, text: str) -> None:
    """Keep quietly what a message tells of the edges; its remedies wait.

    Args:
        turn: the answer under construction.
        text: the message, as typed.
    """
    walk, question = turn.context.conversation.walk, repeat.standing(turn)
    if walk is None or walk.state not in BEFORE_BASE:
        return
    asked = "" if question is None else question.name
    said = manner.as_said(turn, text)
    told = edges_told(said.english, asked)
    chosen = numbered(QUESTIONS[asked], said) if asked in _EDGES else None
    if chosen is not None:
        told = {asked: chosen.value} | told
    waits = {f"{name}{_WAITS}": value for name, value in told.items()}
    turn.change_walk(checks=walk.checks | told | waits)


def waiting(turn: Turn) -> dict[str, str]:
    """What was told and not answered yet, by its check; it is answered with this."""
    checks = turn.walk.checks
    waits = {name: value for name, value in checks.items() if name.endswith(_WAITS)}
    turn.change_walk(checks={name: checks[name] for name in checks if name not in waits})
    return {name.removesuffix(_WAITS): value for name, value in waits.items()}
