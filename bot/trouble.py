"""Trouble that lasts is told when it begins, every ten minutes, and when it is over."""

from __future__ import annotations

import logging
import time
from collections import Counter
from collections.abc import Callable
from typing import Final

_LOG: Final = logging.getLogger(__name__)

#: Trouble that goes on is told again after this [s] (own rule).
AGAIN_S: Final = 600.0
#: Trouble that comes back within this is the same one [s] (own rule): what fails now and then
#: would fill the log with beginnings and ends.
CALM_S: Final = 60.0


class Trouble:
    """One thing that can fail for a while: sync, sending, the store.

    Whoever tries it calls `met` at each failure and `over` at each success. One line tells the
    beginning with its kind, one every ten minutes how often it failed, one the end.

    Args:
        subject: what fails, as the log names it.
        time_s: a clock that only goes forward [s].
    """

    def __init__(self, subject: str, time_s: Callable[[], float] = time.monotonic) -> None:
        self._subject = subject
        self._time_s = time_s
        self._began_s: float | None = None
        self._ended_s: float | None = None
        self._told_s: float | None = None  # when its last line was written
        self._is_told = False  # whether there is a line of the trouble that lasts
        self._kinds: Counter[str] = Counter()  # since the last line

    def met(self, kind: str) -> None:
        """It failed.

        Args:
            kind: what went wrong, without anybody's words.
        """
        now_s = self._time_s()
        self._kinds[kind] += 1
        if self._began_s is None:
            self._began_s = now_s
        if self._is_told:
            if self._is_past(self._told_s, AGAIN_S, now_s):
                self._tell("Still trouble with %s: %s in the last %.0f min", now_s)
        elif self._is_news(now_s):
            self._is_told = True
            self._told_s = now_s
            _LOG.warning("Trouble with %s (%s); it is tried again and again", self._subject, kind)
            self._kinds.clear()
        elif self._is_past(self._told_s, AGAIN_S, now_s):
            self._is_told = True
            self._tell("Trouble with %s comes and goes: %s in the last %.0f min", now_s)

    def over(self) -> None:
        """It worked."""
        if self._began_s is None:
            return
        now_s = self._time_s()
        if self._is_told:
            lasted_s = now_s - self._began_s
            _LOG.warning("No more trouble with %s, after %.0f s", self._subject, lasted_s)
            self._kinds.clear()
        self._began_s, self._ended_s, self._is_told = None, now_s, False

    def _is_news(self, now_s: float) -> bool:
        """Whether there was calm before, or there has been none for as long."""
        began_s = now_s if self._began_s is None else self._began_s
        if self._ended_s is None or began_s - self._ended_s >= CALM_S:
            return True
        return now_s - began_s >= CALM_S

    @staticmethod
    def _is_past(since_s: float | None, wait_s: float, now_s: float) -> bool:
        return since_s is not None and now_s - since_s >= wait_s

    def _tell(self, line: str, now_s: float) -> None:
        kinds = ", ".join(f"{number} x {kind}" for kind, number in self._kinds.most_common())
        minutes = (now_s - (self._told_s or now_s)) / 60
        _LOG.warning(line, self._subject, kinds, minutes)
        self._told_s = now_s
        self._kinds.clear()


class Troubles:
    """The trouble of each subject: one for all who try the same thing.

    Args:
        time_s: a clock that only goes forward [s].
    """

    def __init__(self, time_s: Callable[[], float] = time.monotonic) -> None:
        self._time_s = time_s
        self._by_subject: dict[str, Trouble] = {}

    def of(self, subject: str) -> Trouble:
        """The trouble with this subject; the same one for the same words."""
        if subject not in self._by_subject:
            self._by_subject[subject] = Trouble(subject, self._time_s)
        return self._by_subject[subject]

    @property
    def sync(self) -> Trouble:
        """Receiving from the homeserver."""
        return self.of("sync")

    @property
    def sending(self) -> Trouble:
        """Messages on their way to the homeserver."""
        return self.of("sending")

    @property
    def keys(self) -> Trouble:
        """Device keys and room keys."""
        return self.of("device keys")

    @property
    def jobs(self) -> Trouble:
        """Slow work, downloads above all."""
        return self.of("downloads and other jobs")

    @property
    def cluster(self) -> Trouble:
        """The cluster that measures frames."""
        return self.of("the cluster of frames")

    @property
    def store(self) -> Trouble:
        """The database."""
        return self.of("the store")
