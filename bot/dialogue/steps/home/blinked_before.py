"""White that blinked on the walk is lost in a told frame that is as bright, unless it was denied."""

from __future__ import annotations

from bot.dialogue import solving
from bot.dialogue.steps.home import told_frames
from bot.dialogue.turn import Turn
from core.series import SAME_STOPS, exact_f_number, exact_iso, exact_shutter_s


def keep(turn: Turn) -> None:
    """Mark the frames as lost that are at least as bright as one that blinked in the same light.

    What nobody says of a frame is as it was set last.
    """
    given, clipped = turn.walk.given, turn.walk.clipped_stops
    if given is None or clipped is None:
        return
    for place, frame in enumerate(told_frames.frames_of(turn)):
        changed = {
            "f_number": exact_f_number(frame.f_number) if frame.f_number else given.f_number,
            "iso": exact_iso(frame.iso) if frame.iso else given.iso,
            "shutter_s": exact_shutter_s(frame.shutter_s),
        }
        level = solving.level_of(given.model_copy(update=changed))
        if level > clipped - SAME_STOPS and "holds" not in frame.sights:
            told_frames.see(turn, (place,), "clipped")
