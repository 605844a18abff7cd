"""A message as its meaning is sought: as typed, the language it is in, and glossed in English."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
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


def in_both(names: Sequence[str], language: str) -> Mapping[str, tuple[str, ...]]:
    """The examples of English tables, and after them those in a language, by label.

    Args:
        names: of the English tables.
        language: its code; in English there are no others.
    """
    found: dict[str, tuple[str, ...]] = {}
    tables = [table for name in names for table in (name, table_of(name, language))]
    for table in dict.fromkeys(tables):
        for label, texts in examples(table).items():
            found[label] = (*found.get(label, ()), *texts)
    return found
