"""The levers, in order, with limits and prices."""

from __future__ import annotations

from core.adjust.candidates import BetterTime, Candidate, Ground, better_time
from core.adjust.planning import plan
from core.adjust.situation import (
    Lever,
    Limit,
    Note,
    Plan,
    Polariser,
    Price,
    Setting,
    Situation,
    Step,
)

__all__ = [
    "BetterTime",
    "Candidate",
    "Ground",
    "Lever",
    "Limit",
    "Note",
    "Plan",
    "Polariser",
    "Price",
    "Setting",
    "Situation",
    "Step",
    "better_time",
    "plan",
]
