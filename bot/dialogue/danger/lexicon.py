"""Words of one language as cues: a small notation for wordings, found in a text in one pass."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from functools import cached_property
from itertools import chain
from typing import Final

from bot.dialogue.danger.constellations import CUES

#: A gap in a wording: up to four words within a sentence (own rule).
_GAP: Final = r"(?: [^ .]+){0,4}?"
#: Wordings are looked up by their first word, or by so many letters where its ending is open.
_KEY: Final = 2
#: A table may go on in the next line after a "|".
_BREAK: Final = re.compile(r"\|\s+")
_WORD: Final = re.compile(r"[^ ]+")


class Lexicon:
    """The cues of one language.

    Args:
        common: short words by which the language shows, parted by blanks; none that another of
            the languages has too.
        wordings: for each cue its wordings, parted by commas. `*` stands for any ending, `~` for
            up to four words, `(a|b)` for one of several, `(a|b)?` for one of them or none.
        spelling: brings a message into the spelling of the wordings, sentences parted by " . ".

    Raises:
        ValueError: a cue that no constellation knows.
    """

    def __init__(
        self, common: str, wordings: Mapping[str, str], spelling: Callable[[str], str]
    ) -> None:
        unknown = wordings.keys() - CUES
        if unknown:
            raise ValueError(f"cues that no constellation knows: {sorted(unknown)}")
        self.spelling = spelling
        self._common = frozenset(common.split())
        self._index: dict[str, list[_Wording]] = {}
        for cue, listed in wordings.items():
            for wording in _split(_BREAK.sub("|", " ".join(listed.split())), ","):
                self._add(cue, _split(wording, " "))

    def _add(self, cue: str, words: list[str]) -> None:
        first, *others = words
        following = "".join(map(_following, others))
        for beginning in _alternatives(first):
            wording = _Wording(cue, f"{_sequence(beginning)}{following}(?![^ ])")
            word = beginning.split()[0]
            self._index.setdefault(word if word.isalnum() else word[:_KEY], []).append(wording)

    def likeness(self, said: str) -> int:
        """How many common words of the language a message in its spelling has."""
        return sum(word in self._common for word in said.split())

    def cues(self, said: str) -> frozenset[str]:
        """The cues in a piece of a message in the language's spelling."""
        found: set[str] = set()
        said += " ."
        for match in _WORD.finditer(said):
            word = match.group()
            for wording in chain.from_iterable(map(self._starting, {word, word[:_KEY]})):
                if wording.cue not in found and wording.pattern.match(said, match.start()):
                    found.add(wording.cue)
        return frozenset(found)

    def _starting(self, key: str) -> Sequence[_Wording]:
        return self._index.get(key, ())


class _Wording:
    """A wording of a cue; made ready when it is first looked for, as there are thousands.

    Args:
        cue: what it tells of.
        expression: regular expression of it.
    """

    def __init__(self, cue: str, expression: str) -> None:
        self.cue = cue
        self._expression = expression

    @cached_property
    def pattern(self) -> re.Pattern[str]:
        """The expression, compiled."""
        return re.compile(self._expression)


def _split(text: str, mark: str) -> list[str]:
    """Parts of a text between marks that stand outside all parentheses, stripped."""
    parts, depth = [""], 0
    for letter in text:
        depth += (letter == "(") - (letter == ")")
        if letter == mark and depth == 0:
            parts.append("")
        else:
            parts[-1] += letter
    return [part.strip() for part in parts if part.strip()]


def _alternatives(word: str) -> list[str]:
    """The wordings of a group, or the word itself."""
    return _split(word[1:-1], "|") if word[0] == "(" else [word]


def _sequence(wording: str) -> str:
    """A wording as a regular expression, without a blank before it."""
    first, *others = _split(wording, " ")
    options = _alternatives(first)
    plain = first.replace(".", r"\.").replace("*", "[^ ]*")
    start = plain if first[0] != "(" else f"(?:{'|'.join(map(_sequence, options))})"
    return start + "".join(map(_following, others))


def _following(word: str) -> str:
    """A later word of a wording, with the blank before it."""
    if word == "~":
        return _GAP
    often = word[-1] if word.endswith((")?", ")*")) else ""
    options = "|".join(map(_sequence, _alternatives(word.removesuffix(often))))
    return f"(?: (?:{options})){often}"
