"""People of the room by name, read as friends: who slipped in is no unknown word."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

from bot.dialogue.danger import Danger, Level, read_danger

#: Words that the readers of danger know for a person.
_FRIEND: Final[Mapping[str, str]] = {"en": "my friend", "de": "mein Freund", "es": "mi amigo"}


def with_friends(text: str, people: tuple[str, ...], language: str) -> str:
    """The text with these names replaced.

    Args:
        text: as typed.
        people: names that stand in it.
        language: its code.
    """
    if not people:
        return text
    names = "|".join(map(re.escape, sorted(people, key=len, reverse=True)))
    friend = _FRIEND.get(language, _FRIEND["en"])
    return re.sub(rf"@?(?<!\w)(?:{names})(?!\w)", friend, text, flags=re.IGNORECASE)


def danger_in(text: str, with_names: str) -> Danger | None:
    """What danger a message tells of, the surer of both readings.

    Args:
        text: with friends in the place of names.
        with_names: as typed.
    """
    danger = read_danger(with_names)
    if text == with_names or (danger is not None and danger.level is not Level.UNSURE):
        return danger
    return read_danger(text) or danger
