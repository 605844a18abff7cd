"""Facts of `facts.jsonl`: how many are read (recall), how many of the read are right."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from tests.dialogue.reading_checks import Counts, Row, count, differences, rows
from tests.people.rate import BLIND, Half, Rate, lines_of

#: A wrongly read number is worse than an unread one.
PRECISION: Final = 0.98
RECALL: Final = 0.95


def figures(half: Half) -> Iterable[Rate]:
    """Precision and recall in all, then of each slot that the half speaks of."""
    counts = count(_rows(half), noted=half not in BLIND)
    yield from _pair(half, "all slots", counts, aims=(PRECISION, RECALL))
    for slot in sorted(counts.right.keys() | counts.wrong.keys() | counts.missed.keys()):
        yield from _pair(half, slot, counts.of(slot), aims=(None, None))


def misses() -> Iterable[str]:
    """Messages of the even half that are not read as they should be, and what differs."""
    for row in _rows("even"):
        found = differences(row)
        if found:
            yield f"{row.text!r}"
            yield from (f"    {line}" for line in found)


def _rows(half: Half) -> list[Row]:
    return rows(lines_of("facts.jsonl", half))


def _pair(
    half: Half, name: str, counts: Counts, aims: tuple[float | None, float | None]
) -> list[Rate]:
    right, wrong, missed = counts.totals()
    return [
        Rate("facts", half, f"{name}: precision", right, right + wrong, aims[0]),
        Rate("facts", half, f"{name}: recall", right, right + missed, aims[1]),
    ]
