"""Causes of `symptoms.jsonl`: how often the first one named is the first one told."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import Any, Final

from bot.dialogue.causes import diagnose, scene_of
from bot.dialogue.facts import Blink, Facts
from bot.dialogue.meaning.said import in_english
from tests.people.rate import Half, Rate, lines_of

#: The first cause is the one that the answer names.
AIM: Final = 0.9


def figures(half: Half) -> Iterable[Rate]:
    """How often the first cause is right, and how often it is among the first two."""
    rows = _rows(half)
    found = [named(row) for row in rows]
    first = sum(names[0] == row["causes"][0] for names, row in zip(found, rows, strict=True))
    two = sum(row["causes"][0] in names[:2] for names, row in zip(found, rows, strict=True))
    yield Rate("causes", half, "first cause", first, len(rows), AIM)
    yield Rate("causes", half, "among the first two", two, len(rows))


def misses() -> Iterable[str]:
    """Messages of the even half whose first cause is another one."""
    for row in _rows("even"):
        names = named(row)
        if names[0] != row["causes"][0]:
            yield f"{row['text']!r}: {row['causes'][0]}, named {names[:3]}"


def named(row: dict[str, Any]) -> list[str]:
    """The causes in order, by name."""
    told = dict(row.get("known", {}))
    stabiliser_on = told.pop("stabiliser_on", None)
    slots = {name: value for name, value in told.items() if name in Facts.model_fields}
    if "blink" in slots:
        slots["blink"] = Blink(slots["blink"])
    scene = scene_of(Facts(**slots), row["text"], stabiliser_on=stabiliser_on)
    return [cause.name for cause in diagnose(in_english(row["text"]), scene)]


def _rows(half: Half) -> list[dict[str, Any]]:
    return [json.loads(line) for line in lines_of("symptoms.jsonl", half)]
