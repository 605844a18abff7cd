"""The water in the frame by the person's own numbers alone, where nothing had to be assumed."""

from __future__ import annotations

import math
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.facts import Facts
from bot.dialogue.flowing import Flowing
from bot.dialogue.reckoning import Assumed
from core import water_speed
from core.frame.report import FrameReport

#: Without these told the share is not by the person's numbers.
_NEEDED: Final = frozenset(
    {"full_frame", "focal", "distance", "height", "stream_speed", "crest_speed"}
)
#: How far the speed may be off, as a factor, by how it was found (own rules: a timed leaf by the
#: stopwatch, the mean of a fall by its drag, a chute by its depth).
_OFF_BY: Final = {"leaf": 1.1, "mean_fall": 1.25, "chute": 1.4}


def flow_told(facts: Facts) -> Flowing | None:
    """The water as the frame sees it, by what was told; None where something is missing."""
    assumed = Assumed()
    flow = reckoning.flowing_or_usual(facts, reckoning.focal_of(facts), assumed)
    return None if rests_on_usual(assumed) else flow


def rests_on_usual(assumed: Assumed) -> bool:
    """Whether a share rests on the usual case instead of the person's numbers."""
    return bool(_NEEDED & set(assumed.keys))


def as_taken(facts: Facts, focal_mm: float | None, full_frame_mm: float | None = None) -> Facts:
    """What is known of one frame: its own focal length, in place of the one that was told.

    Args:
        facts: what was told.
        focal_mm: as the frame's own data state it; None for the one that was told.
        full_frame_mm: the same as on 36 x 24 mm, which counts while no format was told.
    """
    if facts.camera_format is None and full_frame_mm is not None:
        return facts.updated(Facts(camera_format="full frame", focal_mm=full_frame_mm))
    return facts.updated(Facts(focal_mm=focal_mm))


def of_frame(facts: Facts, report: FrameReport) -> Facts:
    """What is known of a measured frame: what was told, and the focal length of its own data."""
    data = report.metadata
    return as_taken(facts, data.settings.focal_mm, data.focal_full_frame_mm)


def share_told(facts: Facts, shutter_s: float | None) -> float | None:
    """The share that the water crosses in a time, by what was told.

    Args:
        facts: what was told, and what the frame's own data state.
        shutter_s: the time.
    """
    flow = flow_told(facts)
    return None if flow is None or shutter_s is None else flow.share(shutter_s)


def share_per_s(facts: Facts) -> tuple[float, float] | None:
    """How far the water runs in a second over the frame's side [1/s], least and most."""
    flow = flow_told(facts)
    if flow is None:
        return None
    middle = flow.share(1.0)
    off_by = _OFF_BY.get(flow.how)
    if off_by is None:
        low, high = water_speed.foot_speed_range_mps(facts.fall_height_m or 1.0)
        off_by = math.sqrt(high / low)
    return middle / off_by, middle * off_by
