"""Strings and objects out of JSON that a stranger wrote."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

Source = Mapping[str, Any]


def text_of(value: object) -> str:
    """The string in `value`, "" for anything else, without what no database takes.

    JSON may hold half a surrogate pair and NUL; PostgreSQL refuses both.
    """
    if not isinstance(value, str):
        return ""
    return value.replace("\0", "").encode("utf-8", "replace").decode()


def part_of(source: Source, key: str) -> Source:
    """The object under `key`, empty when there is none."""
    part = source.get(key)
    return part if isinstance(part, dict) else {}
