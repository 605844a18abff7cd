"""When something was, as a message tells it: the kind of its words, and their amount."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


class WhenKind(Enum):
    """How a message tells when something was."""

    AGO = "ago"  # "an hour ago"
    CLOCK = "clock"  # "at 14:10"
    PART = "part"  # "this morning"
    DAYS = "days"  # "yesterday"
    EARLIER = "earlier"  # before, and nobody says when


@dataclass(frozen=True)
class When:
    """When something was, as the message tells it.

    Args:
        kind: which of the ways of telling.
        words: the person's own words; for CLOCK the time in 24 hours, for PART its name.
        amount: minutes for AGO, minutes after midnight for CLOCK, days for DAYS.
        either_half: CLOCK alone: "2:10" may be meant for 14:10.
    """

    kind: WhenKind
    words: str
    amount: float = 0.0
    either_half: bool = False
