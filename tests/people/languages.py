"""Facts of messages in other languages: glossed as the dialogue does it, then read."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from typing import Final

from bot.dialogue.reading.foreign import glossed
from tests.dialogue.reading_checks import Row, count, differences, rows
from tests.people.rate import BLIND, Half, Rate, lines_of

LANGUAGES: Final = ("de", "es")
#: As for English.
PRECISION: Final = 0.98
RECALL: Final = 0.95


def figures(half: Half) -> Iterator[Rate]:
    """Precision and recall over all slots, for each language."""
    for language in LANGUAGES:
        right, wrong, missed = count(_rows(language, half), noted=half not in BLIND).totals()
        topic = f"facts in {language}"
        yield Rate(topic, half, "all slots: precision", right, right + wrong, PRECISION)
        yield Rate(topic, half, "all slots: recall", right, right + missed, RECALL)


def misses() -> Iterable[str]:
    """Messages of the even half that are not read as they should be, and what differs."""
    for language in LANGUAGES:
        for row in _rows(language, "even"):
            found = differences(row)
            if found:
                yield f"{row.text!r}"
                yield from (f"    {line}" for line in found)


def _rows(language: str, half: Half) -> list[Row]:
    """Messages with their words glossed, and read."""
    told = [json.loads(line) for line in lines_of(f"{language}_facts.jsonl", half)]
    return rows(json.dumps(row | {"text": glossed(row["text"], language)}) for row in told)
