"""The water as a frame sees it: from times to shares and looks, and back."""

from __future__ import annotations

from dataclasses import dataclass

from core import water
from core.water import Look


@dataclass(frozen=True)
class Flowing:
    """The water as the frame sees it."""

    speed_mps: float
    coverage_m: float
    angle_deg: float
    #: Key of how the speed was found (the end of a text's key, `why.speed.…`).
    how: str
    #: The height of the fall, or the depth of the chute, that the speed comes from [m].
    from_m: float | None = None

    def share(self, shutter_s: float) -> float:
        """Share of the frame that the water crosses in a time."""
        return float(water.share(self.speed_mps, shutter_s, self.coverage_m, self.angle_deg))

    def time_for(self, share: float) -> float:
        """The time for a share [s]."""
        found = water.time_for_share(share, self.speed_mps, self.coverage_m, self.angle_deg)
        return float(found)

    def times(self, look: Look) -> tuple[float, float]:
        """Shortest and longest time of a look [s]."""
        return water.time_range(look, self.speed_mps, self.coverage_m, self.angle_deg)
