"""White that blinked on the walk is lost in a told frame as bright, unless that was denied."""

from __future__ import annotations

from bot.dialogue import solving
from bot.dialogue.kept import ToldFrame
from bot.dialogue.reading.frame_list import is_same_time
from bot.dialogue.steps.home import told_frames
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.series import SAME_STOPS, exact_f_number, exact_iso, exact_shutter_s


def _as_set(turn: Turn, given: GivenSettings, frame: ToldFrame) -> GivenSettings:
    """The settings of a frame of which nothing is said: those taken, else those given."""
    taken = turn.walk.planned_from
    same = taken is not None and is_same_time(frame.shutter_s, taken.shutter_s)
    return taken if same and taken is not None else given


def keep(turn: Turn) -> None:
    """Mark the frames as lost that are at least as bright as one that blinked in the same light.

    What nobody says of a frame is as it was set last.
    """
    clipped = turn.walk.clipped_stops
    if turn.walk.given is None or clipped is None:
        return
    for place, frame in enumerate(told_frames.frames_of(turn)):
        given = _as_set(turn, turn.walk.given, frame)
        changed = {
            "f_number": exact_f_number(frame.f_number) if frame.f_number else given.f_number,
            "iso": exact_iso(frame.iso) if frame.iso else given.iso,
            "shutter_s": exact_shutter_s(frame.shutter_s),
        }
        level = solving.level_of(given.model_copy(update=changed))
        if level > clipped - SAME_STOPS and "holds" not in frame.sights:
            told_frames.see(turn, (place,), "clipped")
