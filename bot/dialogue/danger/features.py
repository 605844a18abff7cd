"""What in a message may speak for or against danger: what is found in it, and its words."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import chain, combinations, pairwise
from typing import Final, NamedTuple

from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.danger.meaning import cues_of, kind_meant
from bot.dialogue.danger.worded import Worded, worded
from bot.dialogue.folding import folded
from bot.dialogue.word_pieces import pieces_of

_NUMBER: Final = re.compile(r"\d+(?:[.,]\d+)*")
_WORD: Final = re.compile(r"[^\W_]+")


class Heard(NamedTuple):
    """What is found in a message.

    Args:
        worded: what an English wording tells.
        meant: what the cues of any language mean together.
        features: "worded …" or "meant …" with their kind, "taken back", "cue …", "cues … …" of
            two that stand together, "word …", "pair … …" of neighbours, "over … …" of two words
            with one between them, "piece …" of each word. Numbers are one word.
    """

    worded: Worded
    meant: DangerKind | None
    features: frozenset[str]


def heard_in(text: str) -> Heard:
    """Everything that is found in a message as typed."""
    pieces = cues_of(text)
    found, meant = worded(text), kind_meant(pieces)
    rules = {
        *([f"worded {found.kind.value}"] if found.kind else []),
        *([f"meant {meant.value}"] if meant else []),
        *(["taken back"] if found.taken_back else []),
    }
    return Heard(found, meant, frozenset(chain(rules, _of_cues(pieces), _of_words(text))))


def _of_cues(pieces: tuple[frozenset[str], ...]) -> Iterator[str]:
    for cues in map(sorted, pieces):
        yield from (f"cue {cue}" for cue in cues)
        yield from (f"cues {one} {other}" for one, other in combinations(cues, 2))


def _of_words(text: str) -> Iterator[str]:
    words = _WORD.findall(_NUMBER.sub("0", folded(text)))
    yield from (f"word {word}" for word in words)
    yield from (f"pair {first} {second}" for first, second in pairwise(words))
    yield from (f"over {first} {third}" for first, third in zip(words, words[2:], strict=False))
    yield from (f"piece {piece}" for piece in chain.from_iterable(map(pieces_of, words)))
