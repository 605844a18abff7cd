"""Danger by meaning: cues of each language that stand close together, weighed."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from bot.dialogue.danger.constellations import weigh
from bot.dialogue.danger.english import ENGLISH
from bot.dialogue.danger.german import GERMAN
from bot.dialogue.danger.kinds import DangerKind, gravest
from bot.dialogue.danger.spanish import SPANISH

#: The languages that danger is heard in, whatever language somebody has set.
LEXICONS: Final = (ENGLISH, GERMAN, SPANISH)
#: Up to this many words a message is one piece; a longer one is read by neighbouring sentences
#: (own rule).
_ONE_PIECE: Final = 30

Cues = frozenset[str]


def cues_of(text: str) -> tuple[Cues, ...]:
    """The cues of each piece of a message, in each language that it looks like.

    Args:
        text: any text. A language counts when at least half as many of its common words are in
            the message as of the likeliest one's; all do where no common word is.
    """
    said = [(lexicon, lexicon.spelling(text)) for lexicon in LEXICONS]
    likeness = [lexicon.likeness(words) for lexicon, words in said]
    return tuple(
        lexicon.cues(piece)
        for (lexicon, words), common in zip(said, likeness, strict=True)
        if 2 * common >= max(likeness)
        for piece in _pieces(words)
    )


def all_cues(text: str) -> Cues:
    """The cues of a whole message, whichever of its pieces and languages each is found in."""
    return Cues().union(*cues_of(text))


def kind_meant(pieces: Iterable[Cues]) -> DangerKind | None:
    """The gravest danger that the cues of a message mean.

    Args:
        pieces: as `cues_of` gives them.

    Returns:
        The kind; None where cues are missing or what speaks against them is as strong.
    """
    found = [kind.value for kind in map(weigh, pieces) if kind is not None]
    return DangerKind(gravest(*found)) if found else None


def _pieces(said: str) -> list[str]:
    if said.count(" ") < _ONE_PIECE:
        return [said]
    sentences = said.split(" . ")
    return [" . ".join(sentences[place : place + 2]) for place in range(len(sentences))]
