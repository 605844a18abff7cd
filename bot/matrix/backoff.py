"""Pauses between attempts: doubling, bounded, with jitter."""

from __future__ import annotations

import random
from dataclasses import dataclass, field
from typing import Final

#: Own rule: a hiccup costs a second, an outage at most a look every minute.
_FIRST_S: Final = 1.0


@dataclass
class Backoff:
    """How long to wait after each failure in a row.

    Attributes:
        first_s: the first pause at its longest [s].
        longest_s: no pause is longer [s], unless the server asks for it.
    """

    first_s: float = _FIRST_S
    longest_s: float = 60.0
    _failures: int = field(default=0, init=False)

    def next_s(self, asked_ms: int | None = None) -> float:
        """The next pause [s]; at least what the server asked for [ms]."""
        ceiling = min(self.longest_s, self.first_s * 2.0**self._failures)
        # 2^30 s is past any ceiling, and the exponent stays small.
        self._failures = min(self._failures + 1, 30)
        # Half of it is jitter, so that clients do not come back all at once.
        pause_s = ceiling * random.uniform(0.5, 1.0)  # noqa: S311  (nothing to guess)
        return max(pause_s, (asked_ms or 0) / 1000)

    def reset(self) -> None:
        """Forget the failures: something succeeded."""
        self._failures = 0
