"""The share that a look aims at: the usual one, or that of the frames which the person kept."""

from __future__ import annotations

import math
from statistics import median
from typing import Final

from bot.dialogue.context import Person
from bot.dialogue.turn import Turn
from core.water import AIM, Look, look_of

#: So many kept frames of a look move its aim (own rule: one or two are chance).
LEAST_KEPT: Final = 3
#: The newest kept frames of a look count (own rule: a taste changes).
MOST_KEPT: Final = 9


def own_aim(person: Person, look: Look) -> float | None:
    """The share that the person's kept frames of a look have; None while there are too few.

    The middle one on a scale of stops: a single odd frame moves it little.
    """
    shares = person.kept_shares.get(look.value, ())
    if len(shares) < LEAST_KEPT:
        return None
    return math.exp(median(math.log(share) for share in shares))


def own_here(turn: Turn, look: Look) -> float | None:
    """The person's own aim, where it may be used: what they keep is not for a group to see."""
    return own_aim(turn.context.person, look) if turn.origin.direct else None


def aim_of(turn: Turn, look: Look) -> float:
    """The share to aim at for a look, 0 to 1."""
    return own_here(turn, look) or AIM[look]


def with_kept(person: Person, share: float) -> dict[str, tuple[float, ...]]:
    """The person's kept shares with one more, under the look that it makes.

    Args:
        person: whose frame was kept.
        share: of the frame that the water crosses, above 0.
    """
    look = look_of(share)
    shares = (*person.kept_shares.get(look.value, ()), share)[-MOST_KEPT:]
    return {**person.kept_shares, look.value: shares}
