"""Numbers beside a warning: with their source, and never in the place of its question."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role, fit
from bot.dialogue.danger import DangerKind
from bot.dialogue.reading.command_words import command_of
from bot.dialogue.steps.safety import standing_water, storm_distance
from bot.dialogue.turn import Turn

#: What tells where such a number is from, whatever is held or closed.
_SOURCES: Final = frozenset({"why.thunder.distance", "why.standing"})
_SAID: Final = frozenset(
    {"danger.thunder.distance", "standing.no", "standing.ask", "standing.with_care"}
)


def say(turn: Turn, kind: DangerKind, text: str) -> None:
    """What told numbers say of a storm, or of water to stand in."""
    if kind is DangerKind.THUNDER:
        storm_distance.say(turn, text)
    elif kind is DangerKind.WADING:
        standing_water.say(turn, text)


def keep_question(turn: Turn) -> None:
    """What finds no room beside a number goes to `why`, and never the question."""
    if not any(part.key in _SAID for part in turn.parts) or not fit(turn.parts)[1]:
        return
    for part in turn.parts:
        if part.role is Role.CHECK:
            turn.reason(part.key, **part.values)
    turn.parts = [part for part in turn.parts if part.role is not Role.CHECK]


def source_asked(turn: Turn, text: str) -> bool:
    """Whether a message asks where the number before it is from; then that is told."""
    notes = [note for note in turn.context.conversation.why if note.key in _SOURCES]
    if not notes or command_of(text) != "why":
        return False
    turn.say(Role.SAFETY, notes[0].key, **notes[0].values)
    return True
