"""The frame for the leaves, when it is shared: the settings for the water stay as they are."""

from __future__ import annotations

from bot.dialogue.compose import Role
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.frames import views
from bot.dialogue.turn import Turn


def is_one(turn: Turn, shutter_s: float | None) -> bool:
    """Whether a frame is the short one that was advised, by its time beside the water's.

    Args:
        turn: the answer under construction.
        shutter_s: the frame's own time; None where its file has none.
    """
    given = turn.walk.given
    if given is None or shutter_s is None or "leaf_frame" not in turn.walk.checks:
        return False
    return views.is_for_leaves(shutter_s, given.shutter_s)


def say(turn: Turn) -> None:
    """Say for what it is taken, and what tells whether it will do."""
    turn.say(Role.SETTINGS, "frame.leaf")
    repeat.put_again(turn)
