"""Words by which somebody only tries a change, in each language: how it begins, and steps to go."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final, NamedTuple

from bot.dialogue.meaning.said import Said
from bot.dialogue.tongues import TONGUES

_METRES_PER_FOOT: Final = 0.3048  # by definition
_LENGTH: Final = r"(?P<by>\d+(?:[.,]\d+)?) ?(?P<unit>{units})"


class _Words(NamedTuple):
    """The words of one language."""

    #: How a message begins that only tries something.
    supposes: re.Pattern[str]
    #: How one goes on that builds on what was tried just before.
    goes_on: re.Pattern[str]
    #: Steps away from the water, and towards it.
    back: re.Pattern[str]
    closer: re.Pattern[str]
    #: Without the filter that was tried, or is on.
    without: re.Pattern[str]


def _words(of: Mapping[str, str]) -> _Words:
    length = _LENGTH.format(units=of["trials.unit"])
    patterns = (
        rf"[\W_]*(?:{of['trials.begins']})(?!\w)",
        rf"[\W_]*(?:{of['trials.goes_on']})(?!\w)",
        rf"\b{length}\b(?: (?:{of['trials.back']})\b)",
        rf"\b{length}\b(?: (?:{of['trials.closer']})\b)",
        rf"\b(?:{of['trials.without']})(?!\w)",
    )
    return _Words(*(re.compile(pattern, re.IGNORECASE) for pattern in patterns))


_WORDS: Final = {language: _words(of) for language, of in TONGUES.items()}


def _own(said: Said) -> tuple[_Words, str]:
    """The words of the language of a message, and the message in that language."""
    own = _WORDS.get(said.language)
    return (_WORDS["en"], said.english) if own is None else (own, said.typed)


def supposes(said: Said) -> bool:
    """Whether a message begins as one that only tries something."""
    own, text = _own(said)
    return own.supposes.match(text) is not None


def goes_on(said: Said) -> bool:
    """Whether it begins as one that builds on what was tried before."""
    own, text = _own(said)
    return own.goes_on.match(text) is not None


def is_without(said: Said) -> bool:
    """Whether it is tried without the filter that was spoken of."""
    own, text = _own(said)
    return own.without.search(text) is not None


def moved_by_m(said: Said) -> float | None:
    """How far one would step back [m], below 0 towards the water; None where no step is named."""
    own, text = _own(said)
    for pattern, sign in ((own.back, 1.0), (own.closer, -1.0)):
        found = pattern.search(text)
        if found is not None:
            feet = found["unit"].casefold().startswith(("f", "pie"))
            by_m = float(found["by"].replace(",", "."))
            return sign * by_m * (_METRES_PER_FOOT if feet else 1.0)
    return None
