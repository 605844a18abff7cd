"""People of the room by name, read as friends: who slipped in is no unknown word."""

from __future__ import annotations

import re

from bot.dialogue.danger import Danger, Level, read_danger
from bot.dialogue.danger.names import without_name
from bot.dialogue.tongues import of_each


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
    friend = of_each("roster.friend")[language]  # a person whom the readers of danger know
    return re.sub(rf"@?(?<!\w)(?:{names})(?!\w)", friend, text, flags=re.IGNORECASE)


def may_be_of_somebody(text: str) -> bool:
    """Whether words that alone say too little are an emergency of whoever is named in them.

    Args:
        text: as typed; a name at its start is of nobody known.
    """
    named = without_name(text)
    if not named:
        return False
    danger = read_danger(text)
    if danger is None or danger.is_told:
        return False
    read = (read_danger(one) for one in named)
    return any(one is not None and one.level is Level.EMERGENCY for one in read)


def danger_in(text: str, with_names: str) -> Danger | None:
    """What danger a message tells of, the surer of both readings.

    Args:
        text: with friends in the place of names.
        with_names: as typed.
    """
    danger = read_danger(with_names)
    if text == with_names or (danger is not None and danger.is_told):
        return danger
    with_friends = read_danger(text)
    if with_friends is None or (danger is not None and with_friends.level is Level.HINT):
        return danger
    return with_friends
