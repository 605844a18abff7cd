"""What ends one kind of danger alone: a truck for thunder, always brown, warm again, back here."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.came_away import speaks_for_one, speaks_of_another
from bot.dialogue.danger.good_news import is_only_good, without
from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.danger.meaning import all_cues
from bot.dialogue.danger.replies import Safe, is_serious, says, spelled
from bot.dialogue.folding import folded
from bot.dialogue.tongues import single_words, whole_words

#: What nobody says of another kind of danger; it counts where a message says nothing unknown.
_GOOD_OF: Final = {
    DangerKind.MISSING: "here_again",
    DangerKind.COLD: "warm_again",
    DangerKind.LOST: "found_way",
}
_HEDGE: Final = whole_words("clauses.hedge")
#: What warms, beside it.
_WARMTH: Final = single_words("good_news.warmth")
#: The sound was something else, the water always is so, it is dark for a picture alone.
_HARMLESS: Final = {
    DangerKind.THUNDER: ("only", "meant"),
    DangerKind.FLOOD: ("always_so", "meant"),
    DangerKind.DARK: ("not_dark", "meant"),
}


def explained(text: str, kind: DangerKind) -> Safe | None:
    """What an explanation says that only this kind of danger can have.

    Args:
        text: the message as typed.
        kind: the danger that is held.

    Returns:
        That a sound was a truck, that the water is always brown, that the missing one is back, a
        cold one warm; None for anything else.
    """
    if "?" in text or is_serious(text):
        return None
    if kind is DangerKind.MISSING and says(text, "back_by_themselves"):
        return Safe.ONE
    if kind in _GOOD_OF:
        return _good(text, kind)
    if kind is DangerKind.FLOOD and _is_still_clear(text):
        return Safe.RETRACTED
    nobody = "other" not in all_cues(text)
    said = any(says(text, meaning) for meaning in _HARMLESS.get(kind, ()))
    return Safe.RETRACTED if nobody and said else None


def _is_still_clear(text: str) -> bool:
    """Whether water is said to be clear and not to rise: brown as tea is brown by its bog."""
    sure = _HEDGE.search(folded(text)) is None
    return sure and says(text, "clear_water") and says(text, "not_rising")


def without_good(text: str, kind: str) -> str:
    """A part of a message without its good news of one kind of danger: "not shivering".

    Args:
        text: as typed.
        kind: the danger that is held, by its value.

    Returns:
        The same text where it holds none.
    """
    meaning = next((meaning for danger, meaning in _GOOD_OF.items() if danger.value == kind), None)
    if meaning is None or "?" in text:
        return text
    for said, table in spelled(text):
        rest = table[meaning].sub(" ", said)
        if rest != said:
            return rest
    return text


def _good(text: str, kind: DangerKind) -> Safe | None:
    """Good news of that kind alone, and whose: who writes says it of themselves."""
    meaning = _GOOD_OF[kind]
    only = any(
        table[meaning].search(said)
        and is_only_good(without(said, (table[meaning], table["here"], table["place"])), _WARMTH)
        for said, table in spelled(text)
    )
    if not only:
        return None
    if kind is DangerKind.MISSING or speaks_of_another(text):
        return Safe.ONE
    return Safe.OWN if speaks_for_one(text) else Safe.ALL
