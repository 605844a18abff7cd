"""Kinds of danger, how far each goes, and which of two is the graver."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import Enum
from typing import Final


class Level(Enum):
    """What a danger asks of the bot."""

    EMERGENCY = "emergency"  # the walk is held until all are safe
    STOP = "stop"  # nobody goes there; no settings for that place
    UNSURE = "unsure"  # it sounds like danger; nothing else is answered before it was asked
    HINT = "hint"  # it may, though most such words don't: said first, and all else is answered


class DangerKind(Enum):
    """Kinds of danger, the gravest first; the value is what texts are keyed by.

    The order is an own rule: a life in the water, then what reaches everybody within minutes,
    then what one person has; places where nobody should stand come last.
    """

    IN_WATER = "in_water"  # somebody is in the water, or was swept away
    FLOOD = "flood"  # brown or rising water
    HURT = "hurt"
    DESPAIR = "despair"  # somebody speaks of ending their life
    THUNDER = "thunder"
    MISSING = "missing"  # somebody has not come back or does not answer
    COLD = "cold"  # shivering, numb
    DARK = "dark"  # caught by the dark
    LOST = "lost"
    LIP = "lip"  # on, above or at the edge of a fall
    ICE = "ice"
    UNDER = "under"  # under overhangs, in the landing zone, behind the curtain
    WADING = "wading"
    CLIMB = "climb"  # up wet rock or beside the fall
    BARRIER = "barrier"  # over a rail, past a sign, into a closed place
    UNCLEAR = "unclear"  # in words that no rule knows


_PLACES: Final = frozenset(
    {
        DangerKind.LIP,
        DangerKind.ICE,
        DangerKind.UNDER,
        DangerKind.WADING,
        DangerKind.CLIMB,
        DangerKind.BARRIER,
    }
)
LEVELS: Final[Mapping[DangerKind, Level]] = {
    kind: Level.STOP if kind in _PLACES else Level.EMERGENCY for kind in DangerKind
} | {DangerKind.UNCLEAR: Level.UNSURE}
_GRAVITY: Final = {kind.value: rank for rank, kind in enumerate(DangerKind)}


@dataclass(frozen=True)
class Danger:
    """A danger that a message tells of.

    Args:
        kind: which.
        level: how far it goes.
        certain: whether by a known wording, known cues or great likeness; two dangers are the same
            without it.
    """

    kind: DangerKind
    level: Level
    certain: bool = field(default=True, compare=False)

    @property
    def is_told(self) -> bool:
        """Whether it is told outright, and answered as that without being asked about."""
        return self.level in {Level.EMERGENCY, Level.STOP}


def gravest(*kinds: str) -> str:
    """The gravest of some kinds, each by its value; a value that is unknown counts least."""
    return min(kinds, key=lambda kind: _GRAVITY.get(kind, len(_GRAVITY)))
