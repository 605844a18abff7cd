"""Whether a message asks something, by how it begins or ends, in each language."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from typing import Final

from bot.dialogue.meaning.said import OWN_TABLES, Said
from bot.dialogue.meaning.sentences import SENTENCE_ENDS
from bot.dialogue.tongues import in_any, of_each

#: How a question begins when it lacks its mark, by language.
_ASKING: Final[Mapping[str, re.Pattern[str]]] = {
    language: re.compile(begins) for language, begins in of_each("asking.begins").items()
}
#: How a question begins behind something told: "no tripod, can it be done".
_ASKING_BEHIND: Final[Mapping[str, re.Pattern[str]]] = {
    language: re.compile(begins) for language, begins in of_each("asking.begins_behind").items()
}
#: What asks wherever it stands, in each language: "the pola eats how many stops", "cpl vs nd".
_ASKING_ANYWHERE: Final = re.compile(
    rf"\b{in_any('asking.anywhere')}\b|\b{in_any('asking.at_end')}\W*$", re.IGNORECASE
)
#: In so few words two things with an "or" between them are a question (own rule).
_OR: Final = re.compile(rf"\w {in_any('asking.or')} \w", re.IGNORECASE)
_FEW: Final = 9
#: Two numbers of which one is to be chosen: "f/8 or f/11".
_EITHER: Final = re.compile(
    rf"\d[^.;?!]{{0,16}}?\b{in_any('asking.either')}\b(?: \w+){{0,3}} ?[a-z]?/?\d"
    rf"|\bstop(?:per)?s? {in_any('asking.either')} (?:\w+ ){{0,3}}stop",
    re.IGNORECASE,
)
_GLOSS_ASKS: Final = re.compile(r"(?:and |so |but )*(?:what|which|where|why|when|how)\b")
#: Who asks what a word means: "was heißt …", "qué es …", "no sé qué es …".
_OF_A_WORD: Final = re.compile(rf"\b{in_any('asking.of_a_word')}\b", re.IGNORECASE)
#: Where something else begins.
_CLAUSE: Final = re.compile(
    rf"[?!.;:,…()\n]+\s*|\s+(?={in_any('asking.or')} )|\s+{in_any('asking.and')}\s+"
)
_SPACE: Final = re.compile(r"\s+")
#: How a question begins where no sign parts it from what is told.
_ASKING_WITHIN: Final[Mapping[str, re.Pattern[str]]] = {
    language: re.compile(begins) for language, begins in of_each("asking.within").items()
}
#: Where a clause begins by its signs, or by a word that goes on from another.
_BEGINS: Final = re.compile(rf"[?!.;:,…()\n]+\s*|\b(?:{in_any('asking.and')}|so)\s+")
_LEADS_UP: Final = re.compile(rf"\b{in_any('asking.and')}\s+|{SENTENCE_ENDS}")
#: "Nobody is down there can she stand on the path": the verb before who is asked about.
_INVERTED: Final = re.compile(rf"\b{in_any('asking.inverted')}\b", re.IGNORECASE)

#: A bare name of what is set, as a whole message, asks for it.
_BARE: Final = re.compile(
    r"(?:and |ok |so )?(?:the )?(?:iso|aperture|f-?stop|f[- ]number|shutter(?: speed)?|focus"
    r"|white balance)\W*"
)


#: "Just tell me how long", "what I asked is whether the water changes".
_INDIRECT: Final = re.compile(
    rf"^\W*(?:\w+[,.]? ){{0,2}}?{in_any('asking.indirect')}[\s,:]+"
    rf"(?:{in_any('asking.whether')}\s+)?",
    re.IGNORECASE,
)


def asked_directly(clause: str) -> str:
    """A question without the words by which it is put at second hand: "just tell me how long".

    Args:
        clause: of a message, typed or glossed; one that asks nothing so stays as it is.
    """
    found = _INDIRECT.match(clause)
    return clause if found is None else clause[found.end() :]


def is_asking(text: str, language: str = "en") -> bool:
    """Whether words have a question's mark or beginning.

    Args:
        text: as typed, or glossed in English.
        language: of the text, by its code; English for those without rules.
    """
    said = text.casefold().strip()
    begins = _ASKING.get(language, _ASKING["en"]).match(said)
    return said.endswith("?") or bool(begins or _BARE.fullmatch(said))


def asks_at_once(said: Said) -> bool:
    """Whether a message begins or ends as a question, in its own words or in English.

    A gloss asks only with a word that asks: "ist alles sauber" and "está limpio" tell.
    """
    if said.language in OWN_TABLES and not _GLOSS_ASKS.match(said.english.casefold()):
        return is_asking(said.typed, said.language)
    return is_asking(said.english) or is_asking(said.typed, said.language)


def asks(said: Said) -> bool:
    """Whether a message asks in whatever part of it."""
    if asks_at_once(said) or _OF_A_WORD.search(said.typed):
        return True
    if "?" in said.typed or _ASKING_ANYWHERE.search(said.typed) or offers_two(said):
        return True
    few = len(said.typed.split()) <= _FEW
    if _INVERTED.search(said.typed) or (few and _OR.search(said.typed)):
        return True
    return any(map(_asks_behind(said.language), _CLAUSE.split(said.typed)))


def offers_two(said: Said) -> bool:
    """Whether a message names two numbers to choose from."""
    return _EITHER.search(said.typed) is not None


def told_beside(said: Said) -> str:
    """What a message that asks tells beside its question, in English: "no tripod" of the above."""
    parts = _CLAUSE.split(said.english)
    asking = _ASKING_BEHIND["en"]
    return ". ".join(part for part in parts if part and not asking.match(part.casefold()))


def asks_in_clause(clause: str, language: str) -> bool:
    """Whether one clause asks, wherever in a message it stands: "do i wait", "how much darker".

    Args:
        clause: as typed.
        language: of the message, by its code.
    """
    return is_asking(clause, language) or _asks_behind(language)(clause)


def questions_begin(said: Said) -> list[int]:
    """Where words of a question stand in a message, or begin what leads up to them, in its order.

    What leads up to a question stands behind an "and" or a "but", or begins a sentence: "but it
    looks green is it that".

    Args:
        said: the message; places count in its own words.
    """
    text = said.own.casefold()
    behind, within = (
        rules.get(said.language, rules["en"]) for rules in (_ASKING_BEHIND, _ASKING_WITHIN)
    )
    clauses = {found.end() for found in _BEGINS.finditer(text)}
    asked = [
        place
        for place in (found.end() for found in _SPACE.finditer(text))
        if within.match(text, place) or (place in clauses and behind.match(text, place))
    ]
    led = [found.end() for found in _LEADS_UP.finditer(text) if asked and found.end() < asked[-1]]
    return sorted({*asked, *led})


def _asks_behind(language: str) -> Callable[[str], bool]:
    asking = _ASKING_BEHIND.get(language, _ASKING_BEHIND["en"])
    return lambda part: asking.match(part.casefold()) is not None
