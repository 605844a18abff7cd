"""The frame that the walk of the day ended with: it needs no telling at home."""

from __future__ import annotations

from bot.dialogue.kept import ToldFrame
from bot.dialogue.reading.frame_list import Told
from bot.dialogue.steps.home import told_frames
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.series import f_number_marks, iso_marks, nearest, time_marks


def known(turn: Turn, told: Told) -> tuple[ToldFrame, ...]:
    """The frames that were told; else the last of the walk, where a message tells of no other one.

    Args:
        turn: the answer under construction.
        told: by the message.
    """
    frames = told_frames.frames_of(turn)
    return frames if frames or told.times else _of(turn, turn.walk.given)


def take(turn: Turn) -> bool:
    """Take in what the walk kept, else its last frame, where none was told; whether it has one."""
    if not told_frames.frames_of(turn):
        told_frames.change(turn, frames=_of(turn, turn.walk.kept or turn.walk.given))
    return bool(told_frames.frames_of(turn))


def _of(turn: Turn, given: GivenSettings | None) -> tuple[ToldFrame, ...]:
    """A frame by the settings of the walk."""
    if given is None:
        return ()
    camera = turn.camera
    return (
        ToldFrame(
            shutter_s=nearest(time_marks(camera.dial), given.shutter_s).marked,
            f_number=nearest(f_number_marks(camera.dial), given.f_number).marked,
            iso=nearest(iso_marks(camera.dial), given.iso).marked,
            focal_mm=given.focal_mm,
        ),
    )
