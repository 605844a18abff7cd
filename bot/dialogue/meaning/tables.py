"""Tables of examples, all in wordings of our own."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from importlib.resources import files


@cache
def examples(name: str) -> Mapping[str, tuple[str, ...]]:
    """The examples of each label of a table, in the order of the file.

    Args:
        name: of a file in this package: `topics`, `small_talk`, `sights`, `topics_de` …
    """
    found: dict[str, list[str]] = {}
    for line in (files(__package__) / f"{name}.tsv").read_text("utf-8").splitlines():
        label, text = line.split("\t")
        found.setdefault(label, []).append(text)
    return {label: tuple(texts) for label, texts in found.items()}
