"""Pauses between attempts, and waits that end early when there is something to do."""

from __future__ import annotations

import asyncio
import random
from typing import Final

#: Longest pause between attempts [s] (own rule: an outage costs one look a minute).
LONGEST_S: Final = 60.0


def loop_time_s() -> float:
    """Time of the event loop's clock, which no change of the date moves [s]."""
    return asyncio.get_running_loop().time()


def pause_s(failures: int, first_s: float = 1.0, longest_s: float = LONGEST_S) -> float:
    """The pause after so many failures in a row [s]: doubling, bounded, half of it jitter.

    Half of it is jitter, so that not all who failed together come back together.

    Args:
        failures: 1 or more.
        first_s: the longest first pause [s].
        longest_s: no pause is longer [s].
    """
    # 2^30 s is past any ceiling, and the exponent stays small.
    ceiling = min(longest_s, first_s * 2.0 ** min(failures - 1, 30))
    return ceiling * random.uniform(0.5, 1.0)  # noqa: S311  (nothing to guess)


class Wake:
    """A bell: whoever sleeps on it goes on when it rings, or when the time is over."""

    def __init__(self) -> None:
        self._event = asyncio.Event()

    def ring(self) -> None:
        """Wake the sleeper, now or as soon as it lies down."""
        self._event.set()

    async def sleep(self, longest_s: float | None = None) -> None:
        """Sleep until the bell rings, at most so long [s]; None: until it rings."""
        try:
            async with asyncio.timeout(longest_s):
                await self._event.wait()
        except TimeoutError:
            pass
        self._event.clear()
