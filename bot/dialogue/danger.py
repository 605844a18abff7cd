"""What counts as danger in a message, and how far it goes; read before anything else."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


class Level(Enum):
    """What a danger asks of the bot."""

    EMERGENCY = "emergency"  # the walk is held until all are safe
    STOP = "stop"  # nobody goes there; no settings for that place


class DangerKind(Enum):
    """Kinds of danger; the value is what texts are keyed by."""

    IN_WATER = "in_water"  # somebody is in the water, or was swept away
    HURT = "hurt"
    LOST = "lost"
    MISSING = "missing"  # somebody has not come back or does not answer
    DARK = "dark"  # caught by the dark
    COLD = "cold"  # shivering, numb
    FLOOD = "flood"  # brown or rising water
    THUNDER = "thunder"
    LIP = "lip"  # on, above or at the edge of a fall
    WADING = "wading"
    BARRIER = "barrier"  # over a rail, past a sign, into a closed place
    CLIMB = "climb"  # up wet rock or beside the fall
    UNDER = "under"  # under overhangs, in the landing zone, behind the curtain
    ICE = "ice"


@dataclass(frozen=True)
class Danger:
    """A danger that a message tells of."""

    kind: DangerKind
    level: Level


def read_danger(text: str) -> Danger | None:
    """The gravest danger in a message, None where there is none."""
    del text
    return None
