"""Scenes and frames of somebody else's: what who teaches supposes, or brings to be judged."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.frame_owner import is_theirs
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading.phrases import straight
from bot.dialogue.tongues import in_any, whole_words

_LEARNER: Final = whole_words("of_others.learner")
_ONE: Final = re.compile(rf"\b(?:{in_any('of_others.one')})\b")
_ONE_ALONE: Final = whole_words("of_others.alone")
_THEY: Final = re.compile(rf"\b(?:{in_any('of_others.they')})\b")
_THEIR: Final = re.compile(rf"\b(?:{in_any('of_others.their')})\b")
_IS: Final = re.compile(r"\b(?:she|he|they)(?:'s|'re| is| are)(?= )")
#: What a verb says of one who is spoken of, as who writes would say it.
_VERB: Final = re.compile(r"\bi (stand|use|shoot|take|want|get|see|focu|need)s(?:es)?\b")
_HAS: Final = re.compile(r"\bi has\b")
_NEXT: Final = re.compile(rf"\W*(?:{in_any('of_others.next')})\b[:.,]?")
_CAUSE: Final = whole_words("of_others.cause")
_BLOWN: Final = whole_words("of_others.blown")
_LONG: Final = whole_words("of_others.long")


def speaks_of_learner(said: Said) -> bool:
    """Whether a message speaks of somebody who is taught.

    Args:
        said: the message.
    """
    return _LEARNER.search(_both(said)) is not None


def speaks_of_one(said: Said) -> bool:
    """Whether a message speaks of one of those who are taught, not of all of them.

    Args:
        said: the message.
    """
    return _ONE_ALONE.search(_both(said)) is not None


def is_next_case(said: Said) -> bool:
    """Whether it begins as a further case behind the last one: "another one."."""
    text = straight(said.typed.casefold())
    return _NEXT.match(text) is not None


def speaks_of_them(said: Said) -> bool:
    """Whether it speaks of a person, by whatever word."""
    return _THEY.search(_both(said)) is not None


def is_their_frame(said: Said) -> bool:
    """Whether it brings a frame that somebody else took."""
    return speaks_of_learner(said) or is_theirs(said.typed)


def asks_for_cause(said: Said) -> bool:
    """Whether it asks what went wrong with a frame."""
    return _CAUSE.search(_both(said)) is not None and asks(said)


def asks_blown_or_long(said: Said) -> bool:
    """Whether it asks which of the two made white water without lines: clipping or the time."""
    both = _both(said)
    return bool(_BLOWN.search(both) and _LONG.search(both)) and asks(said)


def as_own(text: str) -> str:
    """A message with the one who is spoken of in the place of who writes, to be read for facts.

    Args:
        text: the message in English.
    """
    plain = _IS.sub("i'm", straight(" ".join(text.casefold().split())))
    plain = _THEIR.sub("my", _THEY.sub("i", _ONE.sub("i", plain)))
    return _HAS.sub("i have", _VERB.sub(r"i \1", plain))


def _both(said: Said) -> str:
    return f"{said.english.casefold()}\n{straight(said.typed.casefold())}"
