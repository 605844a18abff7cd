"""The shape of the rules for one kind of danger, and the words that many of them share."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Final

from bot.dialogue.danger.kinds import DangerKind

#: Running or standing water that somebody can be in.
WATER: Final = (
    r"(?:waters?|river|creek|stream|brook|beck|burn|pool|plunge ?pool|current|rapids?"
    r"|torrent|flow"
    r"|whirlpool|shallows|gorge pool)"
)
THE: Final = r"(?:the |a |an |this |that |these |those |our |my |some )?"
#: Up to three words between a verb and its place.
GAP: Final = r"(?:(?!not |never |no |nobody )[\w'-]+ ){0,3}?"
#: Somebody, where a name would be too wide a net.
PERSON: Final = (
    r"(?:he|she|they|him|her|them|me|us|someone|somebody|anyone|everyone|everybody|people"
    r"|person"
    r"|man|woman|guy|lady|boy|girl|kids?|child|children|baby|friends?|mate|buddy|partner"
    r"|wife"
    r"|husband|son|daughter|brother|sister|mother|father|mum|mom|dad|mother|parents"
    r"|girlfriend"
    r"|boyfriend|students?|teacher|leader|guide|hikers?|photographers?|tourists?|guests?"
    r"|members?"
    r"|participants?|colleague|uncle|aunt|cousin|grandpa|grandma|group)"
)
#: What ends a clause, or goes on after "slipped in" and its like.
END: Final = (
    r"(?= [.,]|$| (?:and|but|help|please|pls|now|again|just|right|near|here|somewhere"
    r"|below|above"
    r"|after|behind|while|so|because|before|he|she|they|i|we|what|up|down|upstream"
    r"|downstream"
    r"|up there|at the|by the|off the|off|from the|with|too|quick|fast|oh|there|what)\b)"
)


def _alternatives(patterns: tuple[str, ...]) -> re.Pattern[str] | None:
    return re.compile(rf"\b(?:{'|'.join(patterns)})") if patterns else None


@dataclass(frozen=True)
class Cues:
    """Two things that together tell of a danger, wherever they stand in a sentence.

    Args:
        anchor: pattern of the one that denials and the like are looked for around.
        other: pattern of the other.
        unless: pattern of words that make it harmless.
        by_people: counts only when a person does it.
    """

    anchor: str
    other: str
    unless: str = ""
    by_people: bool = False

    def compiled(self) -> _Compiled:
        """The patterns, ready to search; without `unless` the last is None."""
        unless = re.compile(rf"\b(?:{self.unless})\b") if self.unless else None
        anchor, other = (re.compile(rf"\b(?:{p})\b") for p in (self.anchor, self.other))
        return anchor, other, unless, self.by_people


_Compiled = tuple[re.Pattern[str], re.Pattern[str], re.Pattern[str] | None, bool]


@dataclass(frozen=True)
class Rules:
    """How one kind of danger is said.

    Args:
        kind: the kind.
        gate: beginnings of words of which a message must hold one, where that keeps reading quick.
        plain: patterns for a sentence as `spelling` writes it.
        by_people: patterns that count only when a person does it, not a lens cap.
        together: pairs of cues.
    """

    kind: DangerKind
    gate: str = ""
    plain: tuple[str, ...] = ()
    by_people: tuple[str, ...] = ()
    together: tuple[Cues, ...] = ()
    _gate: re.Pattern[str] = field(init=False, repr=False)
    _patterns: tuple[tuple[re.Pattern[str], bool], ...] = field(init=False, repr=False)
    _pairs: tuple[_Compiled, ...] = field(init=False, repr=False)

    def __post_init__(self) -> None:
        """Compile once."""
        pairs = ((_alternatives(self.plain), False), (_alternatives(self.by_people), True))
        found = tuple((pattern, people) for pattern, people in pairs if pattern is not None)
        object.__setattr__(self, "_gate", re.compile(rf"\b(?:{self.gate})"))
        object.__setattr__(self, "_patterns", found)
        object.__setattr__(self, "_pairs", tuple(cues.compiled() for cues in self.together))

    def may_hold(self, message: str) -> bool:
        """Whether a message has one of the words without which nothing can be found."""
        return self._gate.search(message) is not None

    def found(self, sentence: str) -> Iterator[tuple[re.Match[str], bool]]:
        """Each place where a pattern fits, and whether it counts only for people."""
        for pattern, people in self._patterns:
            for match in pattern.finditer(sentence):
                yield match, people
        for anchor, other, unless, people in self._pairs:
            if other.search(sentence) and not (unless and unless.search(sentence)):
                for match in anchor.finditer(sentence):
                    yield match, people
