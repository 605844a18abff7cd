"""What the tests of reading share: messages, what they tell, and how much of it is read."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterable
from enum import Enum
from typing import Any, Final, NamedTuple

import pytest

from bot.dialogue.facts import Facts, LensFact, Units
from bot.dialogue.reading import read

M, FT = Units.METRIC, Units.IMPERIAL


def told(text: str, *expecting: str, units: Units | None = None) -> dict[str, Any]:
    """The slots that a message fills, by name."""
    return read(text, units=units, expecting=frozenset(expecting)).known()


def unread(text: str, *expecting: str, units: Units | None = None) -> tuple[str, ...]:
    """The pieces of a message that were not placed; nothing else may be told."""
    facts = read(text, units=units, expecting=frozenset(expecting))
    assert facts == Facts(unread=facts.unread, units=facts.units)
    return facts.unread


class Row(NamedTuple):
    """One message of a corpus, what it tells, and what is read."""

    text: str
    facts: dict[str, Any]
    unread: list[str]
    read: Facts


def rows(lines: Iterable[str]) -> list[Row]:
    """Messages of a corpus, read; each line one JSON object as its README tells."""
    found = []
    for line in lines:
        row = json.loads(line)
        units = Units(row["units"]) if "units" in row else None
        facts = read(row["text"], units=units, expecting=frozenset(row.get("expecting", ())))
        found.append(Row(row["text"], row["facts"], row.get("unread", []), facts))
    return found


def _lens(lens: LensFact) -> list[float]:
    both = [lens.widest_at_shortest, lens.widest_at_longest]
    return [lens.shortest_mm, lens.longest_mm, *(width for width in both if width is not None)]


def _plain(value: object) -> object:
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, LensFact):
        return _lens(value)
    if isinstance(value, frozenset):
        return sorted(str(_plain(item)) for item in value)
    if isinstance(value, tuple):
        return [_plain(item) for item in value]
    return value


#: What a message's label carries of how it is read, beside the slots that it fills.
_NOTES: Final = ("units", "guessed", "ask_what_if")


def _in_words(facts: Facts) -> dict[str, object]:
    """The filled slots and the notes, in the corpus's own words."""
    notes = {name: getattr(facts, name) for name in _NOTES}
    filled = facts.known() | {name: value for name, value in notes.items() if value}
    return {name: _plain(value) for name, value in filled.items()}


def _without_notes(told_of: dict[str, Any]) -> dict[str, Any]:
    return {name: value for name, value in told_of.items() if name not in _NOTES}


def _agree(read_value: object, expected: object) -> bool:
    if isinstance(read_value, list) and isinstance(expected, list):
        ordered = [sorted(map(str, side)) for side in (read_value, expected)]
        return ordered[0] == ordered[1] or (
            len(read_value) == len(expected)
            and all(_agree(one, other) for one, other in zip(read_value, expected, strict=True))
        )
    if isinstance(read_value, float) and isinstance(expected, int | float):
        return read_value == pytest.approx(expected, rel=0.004)  # digits in the corpus
    return read_value == expected


class Counts(NamedTuple):
    """How often each slot was rightly read, wrongly read, missed."""

    right: Counter[str]
    wrong: Counter[str]
    missed: Counter[str]

    def totals(self) -> tuple[int, int, int]:
        """Over all slots: right, wrong, missed."""
        return self.right.total(), self.wrong.total(), self.missed.total()

    def of(self, slot: str) -> Counts:
        """The counts of one slot alone."""
        return Counts(*(Counter({slot: counts[slot]}) for counts in self))


def count(corpus: Iterable[Row], *, noted: bool = True) -> Counts:
    """Rightly read, wrongly read and missed slots; a wrong value is both wrong and missed.

    Args:
        corpus: messages.
        noted: whether the notes on how they are read count, too, both read and told.
    """
    counts = Counts(Counter(), Counter(), Counter())
    for row in corpus:
        filled, facts = _in_words(row.read), row.facts
        if not noted:
            filled, facts = _without_notes(filled), _without_notes(facts)
        for slot in filled.keys() | facts.keys():
            if slot in filled and slot in facts and _agree(filled[slot], facts[slot]):
                counts.right[slot] += 1
            else:
                counts.wrong[slot] += slot in filled
                counts.missed[slot] += slot in facts
    return counts


def differences(row: Row) -> list[str]:
    """What of a message is not read as it should be, in words."""
    filled = _in_words(row.read)
    found = [
        f"{slot}: read {filled.get(slot)}, told {row.facts.get(slot)}"
        for slot in sorted(filled.keys() | row.facts.keys())
        if slot not in filled or slot not in row.facts or not _agree(filled[slot], row.facts[slot])
    ]
    if list(row.read.unread) != row.unread:
        found.append(f"unread: {list(row.read.unread)}, told {row.unread}")
    return found
