"""What stands at an edge that was just asked about, in whatever words: a thing, and a place."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.edge_words import COVER, FRAME, THINGS, TOUCHES

_CLAUSES: Final = re.compile(r"[.,;:!?] +|\b(?:and|but|otherwise)\b")
_PLACE: Final = r"(?:left|right|corner|bottom|lower|side|edge|border|lh|rh)"
_BRIGHT: Final = r"(?:bright\w*|white|shiny|pale|glaring|gleaming|sunny|sunlit|light)"
#: What is bright at an edge, and no sky.
_STUFF: Final = (
    r"(?:stone|rock|pebble|slab|boulder|puddle|pool|patch|spot|thing|sign|foam|something|blob|sand"
    r"|gravel|post|bag|rail\w*)"
)
_ENTERS: Final = (
    r"(?:pok|hang|stick|lean|reach|com|creep|jutt?|peek|intrud|grow|dangl|swing)(?:es|e|ing|s)?"
    r"(?: (?:right|just|down|up|a|bit|little|slightly))* (?:in|into|over)"
)
_NEAR: Final = r"(?: \w+){0,5} "
_TWIG: Final = re.compile(
    rf"\b{THINGS}(?:{_NEAR}|\s){_PLACE}\b|\b{_PLACE}{_NEAR}{THINGS}\b|\b{THINGS}{_NEAR}{_ENTERS}\b"
    rf"|\b{THINGS} {_ENTERS}\b"
)
_IT: Final = rf"(?:{_BRIGHT} (?:\w+ )?{_STUFF}s?|{_STUFF}s? {_BRIGHT})"
_BRIGHT_THING: Final = re.compile(rf"\b{_IT}(?:{_NEAR}|\s){_PLACE}\b|\b{_PLACE}{_NEAR}{_IT}\b")
#: A clause with one of these tells of no thing that stands there: it is denied, has gone, moves in
#: the wind, or somebody stepped to that side.
_NOT_THERE: Final = re.compile(
    r"\b(?:no|not|nothing|without|never|isn't|aren't|gone|out|away|raus|moved|moving|moves?|stepped"
    r"|shifted|went|turned|wind\w*|blow\w*|flutter\w*|shak\w*|sway\w*|nodd\w*|still|clean|clear"
    r"|free)\b"
)
_PIECE: Final = r"(?:bit|piece|patch|strip|sliver|chunk|gap|hole|hint|spot|line|lots?)"
_SKY: Final = re.compile(
    rf"\b{_PIECE}s?(?: of)?(?: \w+){{0,2}} sky\b|\b(?:white|bright|pale|blank|burnt|blown) sky\b"
    rf"|\bsky(?: \w+){{0,3}} (?:through|between|behind|above|over) (?:the )?(?:\w+ )?{COVER}"
)
_LIP: Final = re.compile(rf"\b{TOUCHES}(?: \w+){{0,2}} {FRAME}\b")


def top(said: str) -> str | None:
    """What stands along the top edge, while that is asked about.

    Args:
        said: in English or glossed, in lower case.
    """
    clauses = [one for one in _CLAUSES.split(said) if not _NOT_THERE.search(one)]
    if any(map(_SKY.search, clauses)):
        return "sky"
    return "lip" if any(map(_LIP.search, clauses)) else None


def sides(said: str) -> tuple[str, ...]:
    """What stands at the sides and corners, while edges are asked about, as it is told.

    Args:
        said: in English or glossed, in lower case.
    """
    found: list[str] = []
    for clause in _CLAUSES.split(said):
        if _NOT_THERE.search(clause):
            continue
        if _TWIG.search(clause):
            found.append("twig")
        elif _BRIGHT_THING.search(clause):
            found.append("bright")
    return tuple(dict.fromkeys(found))
