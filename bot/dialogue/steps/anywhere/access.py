"""Ears and eyes: what a person says of them is kept, and messages are made to fit."""

from __future__ import annotations

from bot.dialogue.compose import Role
from bot.dialogue.facts import Need
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading.access import needs_of
from bot.dialogue.texts import TEXTS
from bot.dialogue.turn import Turn


def note(turn: Turn, said: Said) -> bool:
    """Keep what a message says of ears and eyes; whether it said any such thing.

    In a group room nothing of it is repeated: what somebody can't hear or see is theirs to tell.
    """
    glossed, typed = needs_of(said.english), needs_of(said.typed)
    needs = glossed if typed is None else typed | (glossed or frozenset())
    if needs is None:
        return False
    turn.change_person(needs=turn.context.person.needs | needs if needs else frozenset())
    if not turn.origin.direct:
        turn.say(Role.SETTINGS, "access.noted")
    elif not needs:
        turn.say(Role.SETTINGS, "access.none")
    else:
        for need in sorted(needs, key=lambda one: one.value):
            turn.say(Role.SETTINGS, f"access.{need.value}")
    return True


def names(turn: Turn) -> str:
    """What is kept of ears and eyes, in words; "" for nothing."""
    needs = sorted(need.value for need in turn.context.person.needs)
    return ", ".join(TEXTS[f"access.name.{need}"] for need in needs)


def caption(turn: Turn, usual: str, alternative: str) -> str:
    """What stands under a picture: all that it shows, for who can't see it well."""
    return alternative if Need.SIGHT in turn.context.person.needs else usual
