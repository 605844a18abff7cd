"""Words that Linn told people to type: sent back as a whole message, they tell of no danger."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache

from bot.dialogue.questions import QUESTIONS
from bot.dialogue.texts import TEXTS, speaking
from bot.dialogue.texts.commands import COMMAND_WORDS, folded
from bot.dialogue.texts.languages import LANGUAGES


def is_own(text: str) -> bool:
    """Whether a whole message is a command, a question of Linn's, or an option of one.

    Args:
        text: as typed, in any of the languages.
    """
    return folded(text) in _own_words()


@cache
def _own_words() -> frozenset[str]:
    """All of them, folded; texts in which numbers are put are not typed word by word."""
    return frozenset(COMMAND_WORDS) | {folded(text) for text in _asked() if "{" not in text}


def _asked() -> Iterator[str]:
    for language in LANGUAGES:
        with speaking(language):
            for asked in QUESTIONS.values():
                keys = (asked.key, *asked.option_keys)
                taps = (f"{key}.tap" for key in asked.option_keys)
                yield from (TEXTS[key] for key in (*keys, *taps) if key in TEXTS)
