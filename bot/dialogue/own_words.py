"""Words that Linn told people to type: sent back as a whole message, they tell of no danger."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache

from bot.dialogue.questions import QUESTIONS
from bot.dialogue.texts import TEXTS, speaking
from bot.dialogue.texts.commands import command_word, folded
from bot.dialogue.texts.languages import LANGUAGES


def is_own(text: str) -> bool:
    """Whether a whole message is a command, a question of Linn's, or an option of one.

    Args:
        text: as typed, in any of the languages.
    """
    return command_word(text) is not None or folded(text) in _own_words()


@cache
def _own_words() -> frozenset[str]:
    """Questions and options, folded; those in which numbers are put nobody types word by word."""
    return frozenset(folded(text) for text in _asked() if "{" not in text)


def _asked() -> Iterator[str]:
    for language in LANGUAGES:
        with speaking(language):
            for asked in QUESTIONS.values():
                keys = (asked.key, *asked.option_keys)
                taps = (f"{key}.tap" for key in asked.option_keys)
                yield from (TEXTS[key] for key in (*keys, *taps) if key in TEXTS)
