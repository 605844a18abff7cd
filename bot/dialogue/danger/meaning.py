"""Danger by meaning: cues of each language that stand close together, weighed."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from bot.dialogue.danger.constellations import against, weigh
from bot.dialogue.danger.english import ENGLISH
from bot.dialogue.danger.german import GERMAN
from bot.dialogue.danger.kinds import DangerKind, gravest
from bot.dialogue.danger.spanish import SPANISH

#: The languages that danger is heard in, whatever language somebody has set.
LEXICONS: Final = (ENGLISH, GERMAN, SPANISH)
#: Up to this many words a message is one piece; a longer one is read by neighbouring sentences
#: (own rule).
_ONE_PIECE: Final = 30


def kind_meant(text: str) -> DangerKind | None:
    """The gravest danger that a message means in any language that it may be in.

    Args:
        text: any text.

    Returns:
        The kind; None where cues are missing or what speaks against them is as strong.
    """
    found = [weigh(cues).value for cues in _cues(text) if weigh(cues)]
    return DangerKind(gravest(*found)) if found else None


def taken_back(text: str) -> bool:
    """Whether a piece of a message has something that speaks against a danger, not for it."""
    return any(against(cues) < 0 for cues in _cues(text))


def _cues(text: str) -> Iterator[frozenset[str]]:
    """Cues of each piece of a message, in each language that it looks like."""
    said = [(lexicon, lexicon.spelling(text)) for lexicon in LEXICONS]
    likeness = [lexicon.likeness(words) for lexicon, words in said]
    for (lexicon, words), common in zip(said, likeness, strict=True):
        if 2 * common >= max(likeness):
            yield from map(lexicon.cues, _pieces(words))


def _pieces(said: str) -> list[str]:
    if said.count(" ") < _ONE_PIECE:
        return [said]
    sentences = said.split(" . ")
    return [" . ".join(sentences[place : place + 2]) for place in range(len(sentences))]
