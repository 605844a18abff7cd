"""People of a room, named in words: at the start, as a call, or anywhere."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Final

#: A shorter name is a word too often, anywhere and within a text (own rule).
_SHORTEST: Final = 2
_SHORTEST_WITHIN: Final = 3
_WORD: Final = re.compile(r"[^\W_]+(?:['’-][^\W_]+)*")


def names_of(user_id: str, shown: str | None) -> tuple[str, ...]:
    """How somebody is called: the local part of the id, the shown name, and its first word.

    Args:
        user_id: full user id.
        shown: the name that clients show, None without one.
    """
    local = user_id[1:].partition(":")[0]
    whole = (shown or "").strip()
    first = _WORD.match(whole)
    names = dict.fromkeys((local, whole, first[0] if first else ""))
    return tuple(name for name in names if len(name) >= _SHORTEST)


def is_called(text: str, people: Iterable[tuple[str, ...]]) -> bool:
    """Whether a text calls one of these people at its start: "Ben, …", "@ben …"."""
    name = _any_of(people)
    found = name and re.match(rf"\W*(?:@(?:{name})\b|(?:{name})\s*[,!])", text, re.IGNORECASE)
    return bool(found)


def names_in(text: str, people: Iterable[tuple[str, ...]]) -> tuple[str, ...]:
    """The names of these people that stand in a text, as they are typed there."""
    name = _any_of(people, _SHORTEST_WITHIN)
    found = re.findall(rf"(?<!\w)(?:{name})(?!\w)", text, re.IGNORECASE) if name else ()
    return tuple(dict.fromkeys(found))


def _any_of(people: Iterable[tuple[str, ...]], shortest: int = _SHORTEST) -> str:
    called = {name for names in people for name in names if len(name) >= shortest}
    names = sorted(called, key=len, reverse=True)
    return "|".join(map(re.escape, names))
