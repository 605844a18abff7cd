"""Words of all languages as one pattern, where it does not matter in which of them it is told."""

from __future__ import annotations

import re
from collections.abc import Hashable, Iterable, Mapping
from typing import TypeVar

_Key = TypeVar("_Key", bound=Hashable)


def in_any(tables: Iterable[Mapping[_Key, str]], name: _Key) -> str:
    """What tells one thing in any language, as one expression.

    Args:
        tables: of each language, its expressions by what they tell.
        name: what is told.
    """
    return "|".join(table[name] for table in tables)


def whole_words(*expressions: str) -> re.Pattern[str]:
    """A pattern of what one of some expressions says, in whole words."""
    return re.compile(rf"\b(?:{'|'.join(expressions)})\b")
