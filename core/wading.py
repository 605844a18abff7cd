"""Whether anybody may stand in the water: what speaks against it, and what is unknown."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum
from typing import Final

from core.errors import within
from core.trip import COLD_WATER_C

#: Depth times speed from which nobody stands in the water [m2/s]. A floodway design value that
#: was found unsafe for small children (Cox, Yee & Ball 2004): the ceiling here, not a target.
STRONGEST_FLOW_M2PS: Final = 0.4
#: Height of an adult's knee [m]; own rule, on the short side on purpose.
KNEE_M: Final = 0.45


class Standing(Enum):
    """Verdict on standing in the water."""

    NO = "no"
    ASK = "ask"  # nothing forbids it so far, but something is unknown
    WITH_CARE = "with_care"  # nothing forbids it; local orders and one's own doubt still do


class Reason(Enum):
    """Why nobody should stand in this water; the value is what texts are keyed by."""

    ABOVE_A_DROP = "above_a_drop"  # upstream of a fall, a rapid or a log jam
    BOTTOM_HIDDEN = "bottom_hidden"
    ABOVE_THE_KNEE = "above_the_knee"
    BROWN = "brown"
    RISING = "rising"
    ALONE = "alone"
    COLD_WITHOUT_DRY_CLOTHES = "cold_without_dry_clothes"
    TOO_STRONG = "too_strong"  # depth times speed
    CHILD_OR_FRAIL = "child_or_frail"


@dataclass(frozen=True)
class WaterToStandIn:
    """What is known of the water and of the person; None: not known.

    Args:
        depth_m: depth where the person would stand [m], 0 to 20.
        speed_mps: speed of the water there, by a leaf [m/s], 0 to 40.
        above_a_drop: there is a fall, a rapid or a log jam downstream.
        bottom_visible: the bottom can be seen.
        brown: the water is brown or carries twigs and leaves.
        rising: the level is going up.
        alone: nobody else is near.
        dry_clothes: there are dry clothes at hand.
        water_c: temperature of the water [degC], -2 to 45; unknown water counts as cold.
        child_or_frail: the person is a child, or unsteady.
        knee_m: height of the person's knee [m], 0.1 to 0.7.
    """

    depth_m: float | None = None
    speed_mps: float | None = None
    above_a_drop: bool | None = None
    bottom_visible: bool | None = None
    brown: bool | None = None
    rising: bool | None = None
    alone: bool | None = None
    dry_clothes: bool | None = None
    water_c: float | None = None
    child_or_frail: bool = False
    knee_m: float = KNEE_M

    def __post_init__(self) -> None:
        """Refuse numbers that no stream has."""
        within("knee_m", self.knee_m, "m", 0.1, 0.7)
        if self.depth_m is not None:
            within("depth_m", self.depth_m, "m", 0, 20)
        if self.speed_mps is not None:
            within("speed_mps", self.speed_mps, "m/s", 0, 40)
        if self.water_c is not None:
            within("water_c", self.water_c, "degC", -2, 45)


@dataclass(frozen=True)
class StandingVerdict:
    """The verdict, every reason against, and the names of the facts that are still unknown."""

    standing: Standing
    reasons: tuple[Reason, ...]
    unknown: tuple[str, ...]


def may_wade(water: WaterToStandIn) -> StandingVerdict:
    """Whether somebody may stand in the water: no, as soon as one thing speaks against it.

    Args:
        water: what is known.

    Returns:
        NO with all the reasons; else ASK with what is unknown; else WITH_CARE. It never
        outranks posted signs, the land manager or the person's own doubt.

    Source: depth times speed from floodway research (Cox, Yee & Ball 2004); the knee, the
    company and the clothes are common practice and own rule.
    """
    answers = _answers(water)
    reasons = tuple(reason for reason, (speaks_against, _) in answers.items() if speaks_against)
    missing = {name: None for answer, names in answers.values() if answer is None for name in names}
    unknown = tuple(name for name in missing if getattr(water, name) is None)
    if reasons:
        return StandingVerdict(Standing.NO, reasons, unknown)
    return StandingVerdict(Standing.ASK if unknown else Standing.WITH_CARE, (), unknown)


def _answers(water: WaterToStandIn) -> dict[Reason, tuple[bool | None, tuple[str, ...]]]:
    """For each reason: whether it holds (None: unknown), and the facts that it rests on."""
    deep = None if water.depth_m is None else water.depth_m >= water.knee_m
    visible = water.bottom_visible
    return {
        Reason.ABOVE_A_DROP: (water.above_a_drop, ("above_a_drop",)),
        Reason.BROWN: (water.brown, ("brown",)),
        Reason.RISING: (water.rising, ("rising",)),
        Reason.ABOVE_THE_KNEE: (deep, ("depth_m",)),
        Reason.TOO_STRONG: (_too_strong(water), ("depth_m", "speed_mps")),
        Reason.BOTTOM_HIDDEN: (None if visible is None else not visible, ("bottom_visible",)),
        Reason.ALONE: (water.alone, ("alone",)),
        Reason.COLD_WITHOUT_DRY_CLOTHES: (_chilling(water), ("dry_clothes",)),
        Reason.CHILD_OR_FRAIL: (water.child_or_frail, ()),
    }


def _too_strong(water: WaterToStandIn) -> bool | None:
    if water.depth_m is None or water.speed_mps is None:
        return None
    flow = water.depth_m * water.speed_mps
    # 0.5 m times 0.8 m/s is the limit itself and must not slip through by rounding
    return flow > STRONGEST_FLOW_M2PS or math.isclose(flow, STRONGEST_FLOW_M2PS)


def _chilling(water: WaterToStandIn) -> bool | None:
    if water.water_c is not None and water.water_c >= COLD_WATER_C:
        return False
    return None if water.dry_clothes is None else not water.dry_clothes
