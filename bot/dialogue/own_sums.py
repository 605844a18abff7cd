"""What the bot said in numbers last, and the sums behind it: for who asks where they come from."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Final

from bot.dialogue.compose import Part, Role
from bot.dialogue.walk_state import Note

#: So many lines with numbers are kept (own rule: about the last five answers).
_MOST: Final = 32
#: Sums that may be asked about once things have changed, as their keys begin; others are done anew.
_KEPT: Final = ("why.share", "why.speed", "why.focus", "why.stand_back", "why.coverage")


def remembered(
    before: tuple[Note, ...], parts: Iterable[Part], reasons: Iterable[Note]
) -> tuple[Note, ...]:
    """The lines with numbers of the last answers, newest last.

    Args:
        before: those that were kept.
        parts: of the answer that goes out.
        reasons: behind it, a sum each.
    """
    said = [
        Note(key=part.key, values=dict(part.values))
        for part in parts
        if part.role is not Role.QUESTION
    ]
    sums = [note for note in reasons if note.key.startswith(_KEPT)]
    new = [note for note in (*said, *sums) if _has_numbers(note.values)]
    return (*(note for note in before if note not in new), *new)[-_MOST:]


def _has_numbers(values: Mapping[str, str]) -> bool:
    return any(letter.isdigit() for value in values.values() for letter in value)
