"""Frames that were shared and can be measured again, and which of them is meant."""

from __future__ import annotations

from bot.dialogue.kept import Measured
from bot.dialogue.turn import Turn


def at_hand(turn: Turn) -> tuple[str, ...]:
    """Frames whose files can be fetched again and that can be read, as far as is known."""
    conversation = turn.context.conversation
    read = set(conversation.measured) | set(conversation.shared)
    return tuple(name for name in conversation.frames if name in read & set(conversation.media))


def known(turn: Turn) -> dict[str, Measured]:
    """Those of them that were measured, in the order of sharing."""
    measured = turn.context.conversation.measured
    return {name: measured[name] for name in at_hand(turn) if name in measured}


def the_one(turn: Turn) -> str | None:
    """The frame that is meant: the one replied to, else the last one measured."""
    frames = at_hand(turn)
    if turn.replies_to in frames:
        return turn.replies_to
    return next(reversed(known(turn)), frames[-1] if frames else None)
