"""A message as its meaning is sought: as typed, the language it is in, and glossed in English."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import product
from typing import Final, NamedTuple

from bot.dialogue.meaning.tables import examples

#: Languages with tables of examples of their own.
OWN_TABLES: Final = ("de", "es")


class Said(NamedTuple):
    """What one person said.

    Args:
        english: glossed, for the readers of words; the same as `typed` in English.
        typed: as it came.
        language: of `typed`, by its code (ISO 639-1).
    """

    english: str
    typed: str
    language: str = "en"

    @property
    def own(self) -> str:
        """The words in which the examples of its language are written."""
        return self.typed if self.language in OWN_TABLES else self.english


def in_english(text: str) -> Said:
    """A message in English."""
    return Said(text, text)


def table_of(name: str, language: str) -> str:
    """The name of a table of examples in a language: `topics`, or `topics_de`.

    Args:
        name: of the English table.
        language: its code; the English table stands for those without one.
    """
    return f"{name}_{language}" if language in OWN_TABLES else name


def in_all(names: Sequence[str]) -> Mapping[str, tuple[str, ...]]:
    """The examples of some tables in every language, by label, the English ones first.

    Args:
        names: of the English tables.
    """
    found: dict[str, list[str]] = {}
    for name, language in product(names, ("en", *OWN_TABLES)):
        for label, texts in examples(table_of(name, language)).items():
            found.setdefault(label, []).extend(texts)
    return {label: tuple(texts) for label, texts in found.items()}
