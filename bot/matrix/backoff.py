"""Pauses between requests: growing, and at least as long as the homeserver asks for."""

from __future__ import annotations

import math
import random
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import UTC, datetime
from email.utils import parsedate_to_datetime
from typing import Any, Final

from bot.pauses import LONGEST_S, pause_s

#: Own rule: a server that asks for more is asked again after this; a slip in its clock or its
#: units would silence the bot for days.
LONGEST_ASKED_S: Final = 900.0


def asked_s(answer: Mapping[str, Any], headers: Mapping[str, str]) -> float | None:
    """How long a server asks to wait [s], None when it does not say; at most a quarter hour.

    Args:
        answer: the JSON body, which may hold `retry_after_ms` (deprecated since version 1.10 of
            the specification; from memory).
        headers: with `Retry-After`, maybe: seconds or a date (RFC 9110, section 10.2.3), which
            is compared with the server's own date.
    """
    waits = (_of_headers(headers), _of_body(answer))
    known = [min(wait_s, LONGEST_ASKED_S) for wait_s in waits if wait_s is not None]
    return max(known, default=None)


def _of_body(answer: Mapping[str, Any]) -> float | None:
    wait_ms = answer.get("retry_after_ms")
    if isinstance(wait_ms, bool) or not isinstance(wait_ms, int | float) or math.isnan(wait_ms):
        return None
    return max(0.0, min(wait_ms, LONGEST_ASKED_S * 1000) / 1000)


def _of_headers(headers: Mapping[str, str]) -> float | None:
    words = headers.get("Retry-After", "").strip()
    if words.isascii() and words.isdigit():
        return float(words[:9])  # more digits are no more of a wait
    until, now = _date(words), _date(headers.get("Date", ""))
    return None if until is None or now is None else max(0.0, (until - now).total_seconds())


def _date(words: str) -> datetime | None:
    try:
        date = parsedate_to_datetime(words)
    except ValueError:
        return None
    return date if date.tzinfo is not None else date.replace(tzinfo=UTC)


@dataclass
class Backoff:
    """How long to wait after each failure in a row.

    Attributes:
        first_s: the first pause at its longest [s].
        longest_s: no pause is longer [s], unless the server asks for it.
    """

    first_s: float = 1.0
    longest_s: float = LONGEST_S
    _failures: int = field(default=0, init=False)

    def next_s(self, asked_s: float | None = None) -> float:
        """The next pause [s]; at least what the server asked for [s]."""
        self._failures += 1
        usual_s = pause_s(self._failures, self.first_s, self.longest_s)
        # A little later than asked, and not all at the same moment.
        return max(usual_s, (asked_s or 0.0) * random.uniform(1.0, 1.1))  # noqa: S311

    def reset(self) -> None:
        """Forget the failures: something succeeded."""
        self._failures = 0
