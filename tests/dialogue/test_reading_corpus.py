"""Whole messages in many voices: how many of their facts are read, and how many wrongly."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import pytest

from bot.dialogue.facts import Facts
from tests.dialogue.reading_checks import Row, count, rows
from tests.people.rate import Half, half_of

CORPUS = Path(__file__).parent / "corpus"
#: The English ones; German and Spanish messages are read once they are glossed.
FILES = [
    "facts.jsonl",
    *sorted(path.name for path in CORPUS.glob("later_*.jsonl")),
    "still_facts.jsonl",
    "thumbs_facts.jsonl",
    "dozen_facts.jsonl",
    "walkers/trail_facts.jsonl",
    "walkers/march_facts.jsonl",
    "walkers/hut_facts.jsonl",
]
#: The lowest rates that any slot may fall to; pins current behaviour.
SLOT_PRECISION = 0.98
SLOT_RECALL = 0.95


@cache
def rows_of(name: str) -> list[Row]:
    """The messages of a file, read."""
    return rows((CORPUS / name).read_text("utf-8").splitlines())


def test_first_corpus_is_large_and_has_no_message_twice() -> None:
    """At least 250 messages, each once."""
    texts = [(row.text, str(row.facts)) for row in rows_of("facts.jsonl")]
    assert len(texts) >= 250
    assert len(set(texts)) == len(texts)


@pytest.mark.parametrize("name", FILES)
def test_facts_are_read_and_not_invented(name: str) -> None:
    """Over all slots of a file at most 2 % are read wrongly and at most 5 % missed."""
    right, wrong, missed = count(rows_of(name)).totals()
    assert right / (right + wrong) >= SLOT_PRECISION
    assert right / (right + missed) >= SLOT_RECALL


def test_every_slot_is_read_and_not_invented() -> None:
    """The same holds for each slot over all files; no slot hides behind the others."""
    right, wrong, missed = count([row for name in FILES for row in rows_of(name)])
    rates = {
        slot: (
            right[slot] / (right[slot] + wrong[slot]),
            right[slot] / (right[slot] + missed[slot]),
        )
        for slot in right.keys() | missed.keys()
    }
    low = {
        slot: rate
        for slot, rate in rates.items()
        if rate[0] < SLOT_PRECISION or rate[1] < SLOT_RECALL
    }
    assert low == {}


def test_corpus_speaks_of_every_slot() -> None:
    """No slot of the facts is without a message that fills it, but what frames alone tell."""
    spoken = {slot for name in FILES for row in rows_of(name) for slot in row.facts}
    assert set(Facts.model_fields) - spoken == {"camera_name", "crop_factor", "unread"}


@pytest.mark.parametrize("name", FILES)
def test_numbers_without_a_place_are_told(name: str) -> None:
    """What was not placed is in `unread`, and counts of people or frames are not."""
    told = [(row.text, list(row.read.unread)) for row in rows_of(name)]
    assert told == [(row.text, row.unread) for row in rows_of(name)]


@pytest.mark.parametrize(
    ("half", "precision", "recall"), [("odd", 0.93, 0.90), ("even", 0.99, 0.99)]
)
def test_what_people_wrote_is_read(half: Half, precision: float, recall: float) -> None:
    """What was reached on people's messages is kept; pins current behaviour, less a little.

    Odd lines are those on which no rule was written.
    """
    lines = (CORPUS / "people" / "facts.jsonl").read_text("utf-8").splitlines()
    right, wrong, missed = count(rows(half_of(lines, half))).totals()
    assert right / (right + wrong) >= precision
    assert right / (right + missed) >= recall
