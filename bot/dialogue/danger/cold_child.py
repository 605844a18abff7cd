"""A child that is cold: small bodies cool fast, so it is warmed and taken home at once."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any, whole_words

#: So many words may stand between the child and its being cold, each of them known (own rule).
_COLD: Final = re.compile(
    rf"\b{in_any('cold_child.child')}(?: {in_any('cold_child.is')}){{0,5}}"
    rf" {in_any('cold_child.cold')}\b"
    rf"|\b(?:den |dem |der |meinem |meiner |mir |uns )?{in_any('cold_child.cold')}"
    rf"(?: (?:es|los|las|mis|mi|die|das|den|dem|meine\w?|ist|sind))* {in_any('cold_child.child')}\b"
)
_WET: Final = whole_words("cold_child.wet")
_NOT: Final = whole_words("cold_child.not")


def child_is_cold(text: str) -> bool:
    """Whether a message says that a child is cold.

    Args:
        text: as typed, in any of Linn's languages; cold hands alone are no such thing.
    """
    return any(_COLD.search(said) and not _NOT.search(said) for said in _sentences(text))


def child_cools_out(text: str) -> bool:
    """Whether a child that is cold is wet, shivers, or is worried about: it goes home now.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return child_is_cold(text) and _WET.search(folded(text)) is not None


def _sentences(text: str) -> Iterator[str]:
    """The sentences of a message in plain letters, without commas: "cold, wet" is one thing."""
    for sentence in folded(text).split(" . "):
        yield " ".join(sentence.replace(",", " ").split())
