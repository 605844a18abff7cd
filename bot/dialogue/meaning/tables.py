"""Tables of examples and of words that mean the same, all in wordings of our own."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from importlib.resources import files
from typing import Final

#: The name under which words without a meaning of their own stand among the ideas.
EMPTY: Final = "-"


@cache
def examples(name: str) -> Mapping[str, tuple[str, ...]]:
    """The examples of each label of a table, in the order of the file.

    Args:
        name: of a file in this package: `topics`, `small_talk`, `sights`, `topics_de` …
    """
    found: dict[str, tuple[str, ...]] = {}
    for line in _lines(name):
        label, text = line.split("\t")
        found[label] = (*found.get(label, ()), text)
    return found


@cache
def ideas() -> Mapping[str, tuple[str, ...]]:
    """Words and phrases by the idea that they stand for."""
    rows = (line.split("\t") for line in _lines("ideas"))
    return {idea: tuple(phrases.split("|")) for idea, phrases in rows}


def _lines(name: str) -> list[str]:
    return (files(__package__) / f"{name}.tsv").read_text("utf-8").splitlines()
