"""Which of a person's frames are of one view: by their times, their shape and their lens."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import datetime, timedelta
from itertools import pairwise
from typing import Final

from bot.dialogue.actions import MOST_COMPARED, MOST_TOGETHER
from bot.dialogue.kept import Measured
from core.exposure import same_stops
from core.frame.report import FrameReport

#: Neighbours taken within this, from one lens, are taken for one view (own rule: a ladder and the
#: walk round the tripod take less; the pictures themselves decide when they are compared).
WITHIN: Final = timedelta(minutes=10)
#: Focal lengths and shapes that differ by less are the same (own rule).
_SAME_PART: Final = 0.03
#: A frame for the leaves is as short, and so much shorter than that for the water (own rules:
#: 1/60 s stops most leaves; three stops tell it from a rung of the ladder).
_LEAF_S: Final = 1 / 60
_LEAF_STOPS: Final = 3.0
#: Frames from which on a row of times is a ladder.
_LADDER: Final = 3


def measured_of(report: FrameReport, sent_at: datetime) -> Measured:
    """What is kept of a frame.

    Args:
        report: its measurements.
        sent_at: when it was shared, aware.
    """
    settings, stamp = report.metadata.settings, report.metadata.taken_at
    return Measured(
        shutter_s=settings.shutter_s,
        f_number=settings.f_number,
        iso=settings.iso,
        focal_mm=settings.focal_mm,
        focal_full_frame_mm=report.metadata.focal_full_frame_mm,
        width=report.width,
        height=report.height,
        stamped_at=datetime.fromisoformat(stamp).replace(tzinfo=None) if stamp else None,
        sent_at=sent_at,
    )


def of_one_view(frames: Mapping[str, Measured]) -> tuple[str, ...]:
    """The newest frames that may be of one view, oldest first.

    Args:
        frames: measured ones by their events, newest last.
    """
    names = list(frames)
    run = names[-1:]
    for older, newer in reversed(list(pairwise(names))):
        if not alike(frames[older], frames[newer]):
            break
        run.insert(0, older)
    return tuple(run)


def alike(one: Measured, other: Measured) -> bool:
    """Whether two frames may be of one view: near in time, of one shape, by one focal length."""
    return (
        _apart(one, other) <= WITHIN
        and _same(one.width / one.height, other.width / other.height)
        and _same(one.focal_mm or 1.0, other.focal_mm or one.focal_mm or 1.0)
    )


def _apart(one: Measured, other: Measured) -> timedelta:
    """How far apart they were taken, by their stamps where both have one."""
    if one.stamped_at is not None and other.stamped_at is not None:
        return abs(one.stamped_at - other.stamped_at)
    return abs(one.sent_at - other.sent_at)


def _same(one: float, other: float) -> bool:
    return abs(one / other - 1) <= _SAME_PART


def same_time(one: Measured, other: Measured) -> bool:
    """Whether two frames have the same shutter time, as far as it is known."""
    if one.shutter_s is None or other.shutter_s is None:
        return one.shutter_s is other.shutter_s
    return same_stops(one.shutter_s, other.shutter_s)


def to_compare(frames: Mapping[str, Measured]) -> tuple[str, ...]:
    """The frames that `compare` alone means: a ladder of one view, else the last two."""
    ladder: list[str] = []
    for name in reversed(of_one_view(frames)[-MOST_COMPARED:]):
        if any(same_time(frames[name], frames[other]) for other in ladder):
            break
        ladder.insert(0, name)
    return tuple(ladder) if len(ladder) >= _LADDER else tuple(frames)[-2:]


def to_average(frames: Mapping[str, Measured]) -> tuple[str, ...]:
    """The frames that `average` alone means: the newest of one view and one time."""
    view = of_one_view(frames)
    alike_ones: list[str] = []
    for name in reversed(view):
        if not same_time(frames[name], frames[view[-1]]):
            break
        alike_ones.insert(0, name)
    return tuple(alike_ones[-MOST_TOGETHER:])


def is_for_leaves(short_s: float, long_s: float) -> bool:
    """Whether the shorter of two times [s] stops leaves beside one for the water."""
    return short_s <= _LEAF_S and long_s >= short_s * 2**_LEAF_STOPS


def shortest(frames: Sequence[Measured]) -> int | None:
    """The place of the frame with the shortest time, where all times are known."""
    times = [frame.shutter_s for frame in frames]
    known = [time for time in times if time is not None]
    return times.index(min(known)) if known and len(known) == len(times) else None
