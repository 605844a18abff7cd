"""Words that nobody knows, read as the known word that is one slip of the thumb away."""

# Not as `reading` mends: there a wrong word costs more than an unread one, so that only a list of
# words which decide a fact is mended to; here a missed danger costs more, so that each word is that
# dangers were ever told in, the likeliest by key and by how often it is used.

from __future__ import annotations

import re
import zlib
from collections.abc import Iterator, Mapping
from functools import cache, lru_cache
from importlib.resources import files
from typing import Final, NamedTuple

import numpy as np

from bot.dialogue.folding import without_accents

#: Rows of the common keyboard (QWERTY, from memory).
_ROWS: Final = ("qwertyuiop", "asdfghjkl", "zxcvbnm")
_LETTERS: Final = "abcdefghijklmnopqrstuvwxyz"
_WORD: Final = re.compile(r"[^\W\d_]+")
#: Shorter words are never mended; those of three letters only to frequent ones, by a letter that is
#: missing or in the other order (own rules: so much stands one letter off from so few).
SHORTEST: Final = 3
_FREQUENT: Final = 50
#: Nor longer ones, nor messages of so many letters, for the time that they would take (own rule).
_LONGEST: Final = 24
_LONGEST_TEXT: Final = 600
#: How likely each slip is, beside a letter that is missing or a key beside the right one (own
#: rule).
_HELD: Final = 3.0
_TURNED: Final = 2.0
_HIT_BOTH: Final = 0.4
#: Two words that lost their blank are words of so many messages each; short ones of more, and of
#: those of one letter three alone (own rule).
_JOINED: Final = 5
_JOINED_SHORT: Final = 30
_SHORT: Final = 3
_TWO_WORDS: Final = 5
_ONE_LETTER: Final = frozenset("aiy")


def _beside() -> dict[str, str]:
    """The keys around each letter, of rows that stand half a key off from each other."""
    near: dict[str, str] = {}
    for number, row in enumerate(_ROWS):
        above = _ROWS[number - 1] if number else ""
        below = _ROWS[number + 1] if number + 1 < len(_ROWS) else ""
        for place, letter in enumerate(row):
            before = max(place - 1, 0)
            sides = row[before:place] + row[place + 1 : place + 2]
            near[letter] = sides + above[place : place + 2] + below[before : place + 1]
    return near


BESIDE: Final[Mapping[str, str]] = _beside()


class Words(NamedTuple):
    """What `python -m tests.training.words` has gathered.

    Args:
        spelt: how a word is spelt mostly, by its plain letters: words that dangers are told in.
        often: in how many messages each of them stands.
        others: other words of many languages that are near one of them, by their hash.
    """

    spelt: Mapping[str, str]
    often: Mapping[str, int]
    others: frozenset[int]

    def knows(self, plain: str) -> bool:
        """Whether a word in plain letters is one that people write."""
        return plain in self.spelt or hash_of(plain) in self.others

    def near(self, plain: str) -> str | None:
        """The word that an unknown one was most likely meant to be; None where none is near."""
        found: dict[str, float] = {}
        for word, likely in _near(plain):
            often = self.often.get(word, 0)
            if often * likely and (len(plain) > SHORTEST or often > _FREQUENT):
                found[word] = max(found.get(word, 0), often * likely)
        return self.spelt[max(found, key=found.__getitem__)] if found else None

    def parted(self, plain: str) -> str | None:
        """The two words that lost the blank between them; None where it has none in it."""
        if len(plain) < _TWO_WORDS:
            return None
        found = {
            (plain[:at], plain[at:]): min(self._alone(plain[:at]), self._alone(plain[at:]))
            for at in range(1, len(plain))
        }
        best = max(found, key=found.__getitem__)
        return " ".join(self.spelt[part] for part in best) if found[best] else None

    def _alone(self, part: str) -> int:
        """In how many messages a part stands as a word, 0 where they are too few."""
        often = self.often.get(part, 0)
        if len(part) == 1:
            return often if part in _ONE_LETTER else 0
        return often if often >= (_JOINED if len(part) > _SHORT else _JOINED_SHORT) else 0


def mended(text: str) -> str:
    """A message with its unknown words mended, where a known word is one slip away.

    Args:
        text: as typed, in any of Linn's languages.

    Returns:
        The message; words that are known stay as they are, with all signs between them, and so
        does a message that is longer than 600 characters.
    """
    return _WORD.sub(_of, text) if len(text) <= _LONGEST_TEXT else text


def _of(match: re.Match[str]) -> str:
    word = match.group()
    # A capital within a message begins a name, or one of the long words of German.
    whole = word[0].isupper() and match.start() > 0
    return _known(word, whole) or word


@lru_cache(maxsize=4096)
def _known(word: str, whole: bool) -> str | None:
    words, plain = gathered(), plain_of(word)
    if not SHORTEST <= len(plain) <= _LONGEST or words.knows(plain):
        return None
    return words.near(plain) or (None if whole else words.parted(plain))


def _near(word: str) -> Iterator[tuple[str, float]]:
    """What may have been meant by a word, and how likely that slip is."""
    parts = [(word[:at], word[at:]) for at in range(len(word) + 1)]
    yield from ((start + end[1] + end[0] + end[2:], _TURNED) for start, end in parts[:-2])
    yield from ((start + letter + end, 1.0) for start, end in parts for letter in _LETTERS)
    if len(word) > SHORTEST:
        for start, end in parts[:-1]:
            yield start + end[1:], _too_many(start[-1:], end)
            yield from ((start + letter + end[1:], 1.0) for letter in BESIDE.get(end[0], ""))


def _too_many(before: str, end: str) -> float:
    """How likely the first letter of an end is one too many: held, or hit beside another."""
    if end[0] == before:
        return _HELD
    return _HIT_BOTH if end[0] in BESIDE.get(before, "") + BESIDE.get(end[1:2], "") else 0


def plain_of(word: str) -> str:
    """A word in plain small letters: "Füße" is "fusse"."""
    return without_accents(word.casefold())


def hash_of(plain: str) -> int:
    """The number that a word is kept by."""
    return zlib.crc32(plain.encode())


@cache
def gathered() -> Words:
    """The words that come with the code."""
    with files(__package__).joinpath("words.npz").open("rb") as stored, np.load(stored) as named:
        spelt = named["spelt"].tolist()
        plain = list(map(plain_of, spelt))
        often = dict(zip(plain, named["often"].tolist(), strict=True))
        return Words(
            dict(zip(plain, spelt, strict=True)), often, frozenset(named["others"].tolist())
        )
