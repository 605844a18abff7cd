"""Dangers that are heard, and false alarms, with slips of the thumb in each message."""

from __future__ import annotations

from collections.abc import Iterable
from random import Random
from typing import Final

from bot.dialogue.danger import read_danger
from tests.people.dangers import LANGUAGES, dangers_of, harmless_of
from tests.people.rate import Half, Rate
from tests.training.thumbs import slipped

#: Slips of another beginning are other slips.
_SEED: Final = 101


def figures(half: Half) -> Iterable[Rate]:
    """Recall and false alarms of each language, with one slip and with two."""
    for language, prefix in LANGUAGES.items():
        for slips in (1, 2):
            named = f"{language}, slips: {slips}"
            dangers = [_heard(row[-1], slips) for row in dangers_of(prefix, half)]
            alarms = [_heard(row[-1], slips) for row in harmless_of(prefix, half)]
            yield Rate("slips", half, f"{named}: recall", sum(dangers), len(dangers))
            yield Rate(
                "slips",
                half,
                f"{named}: false alarms",
                sum(alarms),
                len(alarms),
                at_least=False,
            )


def _heard(text: str, slips: int) -> bool:
    return read_danger(slipped(text, Random(f"{_SEED} {text}"), slips)) is not None


def misses() -> Iterable[str]:
    """Dangers of the even half that one slip makes unheard, and harmless lines that it alarms."""
    for prefix in LANGUAGES.values():
        yield from (row[-1] for row in dangers_of(prefix, "even") if not _heard(row[-1], 1))
        yield from (row[-1] for row in harmless_of(prefix, "even") if _heard(row[-1], 1))
