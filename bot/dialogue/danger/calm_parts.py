"""Parts of a message that sound of the danger that they deny: water that does not rise."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.tongues import each_once, in_any, whole_words

_SEEN_IDEAS: Final = (
    "calm_parts.where_shown",
    "calm_parts.blinks",
    "calm_parts.trees",
    "calm_parts.looks_crisp",
    "calm_parts.wobbles",
    "calm_parts.own_words",
    "calm_parts.dry_ground",
    "calm_parts.stones",
    "calm_parts.waited",
    "calm_parts.sunset",
)
_LEAD: Final = rf"(?:^|\b{each_once('calm_parts.joined')} )(?:{each_once('calm_parts.lead')} )*"
#: From a sign, or a word that goes on, to the next sign: what goes on behind it may take it back.
_CALM: Final = re.compile(
    rf"{_LEAD}(?:{in_any('calm_parts.not_rising')}|{in_any('calm_parts.pulled_back')})$"
)
#: What is seen or said of the picture and the camera, in the words of a danger; asked or told.
_SEEN: Final = re.compile(
    rf"{_LEAD}(?:{'|'.join(map(in_any, _SEEN_IDEAS))})(?: {in_any('calm_parts.last')})?(?: \?)?$"
)
_NOT_RISING: Final = re.compile(rf"{_LEAD}{in_any('calm_parts.not_rising')}$")
_IDLE: Final = re.compile(
    rf"{_LEAD}(?:{in_any('calm_parts.idle')}|{in_any('calm_parts.planned')}"
    rf"|{in_any('calm_parts.put_under')}(?: \?)?)$"
)
#: A storm, or ice that is walked on: there nothing is harmless.
_UNSAFE: Final = whole_words("calm_parts.unsafe")
#: "My son fell in though": it changes nothing, and is no word of any wording.
_LAST: Final = re.compile(rf"(?:,| )+{in_any('calm_parts.last')}\b[\s.!]*$", re.IGNORECASE)


def without_last_word(text: str) -> str:
    """A message without a word at its end that only joins it to what was said before.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _LAST.sub("", text)


def without_calm(text: str) -> str:
    """A message without its parts that deny a danger in the words of that danger.

    Args:
        text: as typed, in any of Linn's languages; a part that asks stays, unless it asks of what
            the camera shows.

    Returns:
        The rest, in plain letters where something was taken out, else the same text.
    """
    rest = _without(_CALM, text)
    return rest if _UNSAFE.search(folded(rest)) else _without(_SEEN, rest)


def without_idle(text: str) -> str:
    """A message without those of its parts that tell of hunger, boredom or plans alone.

    Args:
        text: as typed; as `without_calm`.
    """
    return _without(_IDLE, text)


def denies_rising(text: str) -> bool:
    """Whether some part of a message says that the water does not rise, and is sure of it.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return any(_NOT_RISING.search(part) for part in _parts(text))


def _parts(text: str) -> Iterator[str]:
    """The parts of a message between signs, in plain letters; a question keeps its mark."""
    for sentence in sentences_of(text):
        *parts, last = folded(sentence).replace(" . ", " , ").strip(" ,").split(" , ")
        yield from parts
        yield f"{last} ?" if sentence.rstrip().endswith("?") else last


def _without(pattern: re.Pattern[str], text: str) -> str:
    parts = list(_parts(text))
    rest = [pattern.sub("", part).strip() for part in parts]
    return text if rest == parts else " , ".join(filter(None, rest))
