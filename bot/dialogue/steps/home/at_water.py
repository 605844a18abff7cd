"""Out of the review again: who has not left yet, or stands at the water, has no evening at home."""

from __future__ import annotations

from bot.dialogue.meaning.at_home import asks_for_now, has_no_frame, is_still_home, stands_there
from bot.dialogue.steps.home import told_frames
from bot.dialogue.steps.walk import arrive
from bot.dialogue.turn import Turn


def hear(turn: Turn, typed: str) -> bool:
    """Leave the review where a message shows that nobody is home from the water.

    Args:
        turn: the answer under construction.
        typed: the message as it came.

    Returns:
        Whether the review was left.
    """
    if not turn.is_at_home:
        return False
    there = stands_there(typed) or has_no_frame(typed)
    if not (there or (not _has_frames(turn) and _is_before_walk(typed))):
        return False
    _leave(turn)
    return True


def _is_before_walk(typed: str) -> bool:
    """What is said, or asked, of a walk to come where no frame is at hand."""
    return is_still_home(typed) or asks_for_now(typed)


def _has_frames(turn: Turn) -> bool:
    """Whether there is anything to go through: frames told or shared, or those of a walk."""
    conversation = turn.context.conversation
    return bool(told_frames.frames_of(turn) or conversation.measured or turn.walk.given)


def _leave(turn: Turn) -> None:
    """On the walk again, with what was told meanwhile."""
    facts = told_frames.review_of(turn).facts
    turn.change_conversation(home_at=None, review=None)
    if facts.known():
        if turn.context.conversation.walk is None:
            arrive.begin_quietly(turn)
        turn.learn(facts)
