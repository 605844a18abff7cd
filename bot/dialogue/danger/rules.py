"""The shape of the rules for one kind of danger, and the words that many of them share."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Final

from bot.dialogue.danger.kinds import DangerKind

#: Running or standing water that somebody can be in.
WATER: Final = (
    r"(?:waters?|river|creek|stream|brook|beck|burn|pool|plunge ?pool|current|rapids?|torrent|flow"
    r"|whirlpool|shallows|gorge pool)"
)
THE: Final = r"(?:the |a |an |this |that |these |those |our |my |some )?"
#: Up to three words between a verb and its place.
GAP: Final = r"(?:[\w'-]+ ){0,3}?"
#: Somebody, where a name would be too wide a net.
PERSON: Final = (
    r"(?:he|she|they|him|her|them|me|us|someone|somebody|anyone|everyone|everybody|people|person"
    r"|man|woman|guy|lady|boy|girl|kids?|child|children|baby|friends?|mate|buddy|partner|wife"
    r"|husband|son|daughter|brother|sister|mother|father|mum|mom|dad|mother|parents|girlfriend"
    r"|boyfriend|students?|teacher|leader|guide|hikers?|photographers?|tourists?|guests?|members?"
    r"|participants?|colleague|uncle|aunt|cousin|grandpa|grandma|group)"
)
#: What ends a clause, or goes on after "slipped in" and its like.
END: Final = (
    r"(?= [.,]|$| (?:and|but|help|please|pls|now|again|just|right|near|here|somewhere|below|above"
    r"|after|behind|while|so|because|before|he|she|they|i|we|what|up|down|upstream|downstream"
    r"|up there|at the|by the|off the|off|from the|with|too|quick|fast|oh|there|what)\b)"
)


def _alternatives(patterns: tuple[str, ...]) -> re.Pattern[str] | None:
    return re.compile(rf"\b(?:{'|'.join(patterns)})") if patterns else None


@dataclass(frozen=True)
class Rules:
    """How one kind of danger is said.

    Args:
        kind: the kind.
        gate: beginnings of words of which a message must hold one; keeps reading quick.
        plain: patterns for a sentence as `spelling` writes it.
        by_people: patterns that count only when a person does it, not a lens cap.
    """

    kind: DangerKind
    gate: str
    plain: tuple[str, ...] = ()
    by_people: tuple[str, ...] = ()
    _gate: re.Pattern[str] = field(init=False, repr=False)
    _patterns: tuple[tuple[re.Pattern[str], bool], ...] = field(init=False, repr=False)

    def __post_init__(self) -> None:
        """Compile once."""
        pairs = ((_alternatives(self.plain), False), (_alternatives(self.by_people), True))
        found = tuple((pattern, people) for pattern, people in pairs if pattern is not None)
        object.__setattr__(self, "_gate", re.compile(rf"\b(?:{self.gate})"))
        object.__setattr__(self, "_patterns", found)

    def may_hold(self, message: str) -> bool:
        """Whether a message has one of the words without which nothing can be found."""
        return self._gate.search(message) is not None

    def found(self, sentence: str) -> Iterator[tuple[re.Match[str], bool]]:
        """Each place where a pattern fits, and whether it counts only for people."""
        for pattern, people in self._patterns:
            for match in pattern.finditer(sentence):
                yield match, people
