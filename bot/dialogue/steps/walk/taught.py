"""What a kept frame teaches: its share moves the aim of its look, each frame once."""

from __future__ import annotations

from bot.dialogue.aims import with_kept
from bot.dialogue.by_numbers import as_taken, share_told
from bot.dialogue.kept import Measured
from bot.dialogue.turn import Turn
from core.exposure import same_stops


def share_of(turn: Turn, frame: Measured) -> float | None:
    """The share by the numbers of the frame's own walk; by those of now where it had none."""
    if frame.share is not None:
        return frame.share
    taken = as_taken(turn.facts, frame.focal_mm, frame.focal_full_frame_mm)
    return share_told(taken, frame.shutter_s)


def learn(turn: Turn, name: str, share: float) -> None:
    """Each frame teaches once."""
    measured = turn.context.conversation.measured
    frame = measured[name]
    if not frame.kept:
        turn.change_person(kept_shares=with_kept(turn.context.person, share))
        kept = {name: frame.model_copy(update={"kept": True})}
        turn.change_conversation(measured=measured | kept)


def kept_on_walk(turn: Turn) -> None:
    """The walk ends with a kept frame: where its time is that of a measured one, it teaches."""
    given = turn.walk.given
    for name, frame in reversed(turn.context.conversation.measured.items()):
        if given is None or frame.shutter_s is None:
            continue
        if same_stops(frame.shutter_s, given.shutter_s):
            share = share_of(turn, frame)
            if share is not None and not frame.foreign:
                learn(turn, name, share)
            return
