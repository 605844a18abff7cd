"""What a message tells of the white of the water, clause by clause, beside all else it says."""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache
from itertools import groupby
from typing import Final, NamedTuple

from bot.dialogue.facts import Blink
from bot.dialogue.folding import folded
from bot.dialogue.meaning.asking import asks_in_clause
from bot.dialogue.meaning.said import OWN_TABLES, Said
from bot.dialogue.tongues import in_any, whole_words

#: Where one clause ends and the next begins.
_CLAUSE: Final = re.compile(
    rf"(?<=[,.!?;:…])\s+|\n+|\s+(?=(?:{in_any('told_sights.but')}|{in_any('asking.and')}|plus)\b)",
    re.IGNORECASE,
)
_BLINKS: Final = whole_words("whites.blinks")
_ON_AND_ON: Final = whole_words("whites.on_and_on")
_FEW: Final = rf"(?: (?!{in_any('whites.except')}\b)\w+){{0,4}}"
_NOTHING: Final = re.compile(
    rf"\b{in_any('whites.nothing')}(?: \w+){{0,4}}? {in_any('whites.blinks')}\b"
    rf"|\b{in_any('whites.blinks')}{_FEW}? {in_any('whites.gone')}\b"
)
_EXCEPT: Final = re.compile(rf"\b{in_any('whites.except')}\b(?P<but>.*)")
_NOT_ONLY: Final = re.compile(rf"\b{in_any('whites.not_only')}(?: \w+){{1,3}}")
_SIZES: Final = (
    (Blink.SHEET, in_any("whites.sheet")),
    (Blink.PATCHES, rf"(?:{in_any('whites.sized')}|{in_any('whites.patches')})"),
    (Blink.DOTS, in_any("whites.dots")),
)
_DENIED: Final = rf"\b{in_any('whites.denied')}(?: \w+){{0,2}}? "
_ONLY: Final = whole_words("whites.only")
_NOT_ALL: Final = re.compile(rf"\b{in_any('whites.denied')} {in_any('whites.sheet')}\b")
_PART: Final = whole_words("whites.part")
_HOLDS: Final = re.compile(rf"\b{in_any('whites.part')}(?: \w+){{0,3}}? {in_any('whites.holds')}\b")
_HOW_TO_SEE: Final = re.compile(
    rf"\b{in_any('whites.how_to_see')}\b.*\b{in_any('whites.blinks')}\b"
)
_SAID: Final = whole_words("whites.said")
_PAST: Final = whole_words("whites.past")
_IF: Final = whole_words("whites.if")
_SKY: Final = whole_words("whites.sky")
_WATER: Final = whole_words("whites.water")
_ELSE: Final = whole_words("whites.else")
_WHITE: Final = whole_words("whites.white")
_SIZED: Final = whole_words("whites.sized")
_LOST: Final = whole_words("whites.lost")
_IN_SUN: Final = whole_words("whites.in_sun")
_IN_SHADE: Final = whole_words("whites.in_shade")
#: "Only dots now", in the middle of dictated words.
_ONLY_DOTS: Final = re.compile(
    rf"\b{in_any('whites.only')}(?: {in_any('whites.small')}){{0,3}}? {in_any('whites.dots')}\b"
)
#: What may stand beside a size alone in a clause that tells of nothing else.
_PLAIN: Final = whole_words(
    "whites.small",
    "whites.only",
    "whites.part",
    "whites.water",
    "whites.white",
    "whites.lost",
    "whites.sized",
    "whites.in_sun",
    "whites.in_shade",
)
#: So many other words may stand there (own rule).
_MOST_OTHER: Final = 1
#: The worse one counts where a message tells of several.
_WORSE: Final = (Blink.NOTHING, Blink.DOTS, Blink.PATCHES, Blink.SHEET)


class White(NamedTuple):
    """How the white of the last frame is.

    Args:
        blink: what blinks.
        part: it is a named part of the water, and the rest holds.
        in_sun: it blinks where, or while, the sun is on it.
        in_shade: what blinks while a cloud or shade is over it; None: not told.
        again: it was said before, as the message says.
    """

    blink: Blink
    part: bool = False
    in_sun: bool = False
    in_shade: Blink | None = None
    again: bool = False


class Told(NamedTuple):
    """The white of the water, and what a message says besides.

    Args:
        white: how it is.
        others: the clauses as typed that tell nothing of it.
        rest: all that is told beside it as one text; where something was taken out, a sentence
            ends.
    """

    white: White
    others: tuple[str, ...]
    rest: str


class _Clause(NamedTuple):
    """One clause that tells of the white: how, and whether it tells nothing else."""

    white: White
    pure: bool


@lru_cache(maxsize=16)
def told(said: Said, *, asked: bool) -> Told | None:
    """What a message tells of the white of the frame in question.

    Args:
        said: the message.
        asked: it was asked for, so that a size alone tells it: "a patch, smaller".

    Returns:
        None where it tells nothing of it.
    """
    clauses = [one for one in _CLAUSE.split(said.typed) if one.strip()]
    if any(_HOW_TO_SEE.search(folded(one)) for one in clauses):
        return None  # where the warning is, and what it looks like, is asked
    heard = _clauses(clauses, said.language, asked=asked)
    if not asked and any(heard):
        heard = _clauses(clauses, said.language, asked=True)  # "it blinks, a patch, no dots"
    whites = [one.white for one in heard if one is not None]
    if not whites:
        return None
    kept = [
        not (_is_of_it(one) if found is None else found.pure)
        for one, found in zip(clauses, heard, strict=True)
    ]
    others = tuple(
        one
        for one, stays, found in zip(clauses, kept, heard, strict=True)
        if stays and found is None
    )
    white = _together(whites, holds=any(map(_rest_holds, clauses)))
    white = white._replace(again=_SAID.search(folded(said.typed)) is not None)
    return Told(white, others, said.typed if all(kept) else _joined(clauses, kept))


def _joined(clauses: Sequence[str], kept: Sequence[bool]) -> str:
    """The clauses that are kept as one text."""
    runs = groupby(zip(clauses, kept, strict=True), key=lambda pair: pair[1])
    texts = (" ".join(clause for clause, _ in run).rstrip(" ,") for stays, run in runs if stays)
    return " ".join(text if text[-1:] in ".!?" else f"{text}." for text in texts)


def _clauses(clauses: Sequence[str], language: str, *, asked: bool) -> list[_Clause | None]:
    """What each clause tells of the white."""
    heard: list[_Clause | None] = []
    for one in clauses:
        heard.append(_heard(one, language, asked=asked, listed=any(heard)))
    return heard


def _is_of_it(clause: str) -> bool:
    """Whether a clause beside what blinks only tells how big that is, or that the rest holds."""
    said = _plainly(clause)
    of_its_size = not said or _SIZED.search(said) or _LOST.search(said)
    if of_its_size and not _others(said):
        return True
    return _rest_holds(clause) and _others(said) <= _MOST_OTHER


def _heard(clause: str, language: str, *, asked: bool, listed: bool) -> _Clause | None:
    """What one clause tells of the white.

    Args:
        clause: as typed.
        language: of the message.
        asked: a size alone tells it.
        listed: a clause before it tells of the white.
    """
    said = _plainly(clause)
    sunny = _IN_SUN.search(said)
    if _asks(clause, said, language) or _PAST.search(said):
        return None
    if _IF.search(said) and not (sunny or _IN_SHADE.search(said)):
        return None
    if _SKY.search(said) and not _WATER.search(said):
        return _of_sky(said, listed=listed)
    blink = _blink_of(said, asked=asked)
    if blink is None:
        return None
    shaded = _IN_SHADE.search(said) is not None and not sunny
    white = White(
        blink,
        part=_PART.search(said) is not None,
        in_sun=sunny is not None,
        in_shade=blink if shaded else None,
    )
    tells_light = sunny is not None or _IN_SHADE.search(said) is not None
    return _Clause(white, not tells_light and _others(said) <= _MOST_OTHER)


def _plainly(clause: str) -> str:
    """The words of a clause, folded, without what is only said not to be all of it."""
    return _NOT_ONLY.sub("", folded(clause).replace(" . ", " ").strip(" ,."))


def _asks(clause: str, said: str, language: str) -> bool:
    """Whether a clause asks; "sind nur Punkte" only looks like it."""
    conditional = _IN_SUN.search(said) or _IN_SHADE.search(said)  # "when the cloud goes over"
    told = conditional or (language in OWN_TABLES and not _others(said))
    if told and "?" not in clause:
        return False
    return asks_in_clause(clause, language)


def _of_sky(said: str, *, listed: bool) -> _Clause | None:
    """Sky that blinks; behind what is told of the water it may only be named."""
    blinks, only = _BLINKS.search(said) is not None, _ONLY.search(said) is not None
    if not (blinks or listed):
        return None
    if blinks and _NOTHING.search(said):
        only = _EXCEPT.search(said) is not None
        return _Clause(White(Blink.SKY, part=True), pure=True) if only else None
    return _Clause(White(Blink.SKY, part=only), pure=blinks or only)


def _blink_of(said: str, *, asked: bool) -> Blink | None:
    """What blinks in the water, by a clause."""
    if _BLINKS.search(said):
        return _with_warning(_ON_AND_ON.sub("", said))
    if asked and _ONLY_DOTS.search(said):
        return Blink.DOTS
    beside = _IN_SHADE.sub("", _IN_SUN.sub("", said))
    size = None if _ELSE.search(beside) else _size_of(said)
    if _others(said) > (0 if size is Blink.SHEET else _MOST_OTHER):
        return None
    lost = size is not None and size not in {Blink.DOTS, Blink.SHEET} and _WHITE.search(said)
    return size if asked or lost else None


def _with_warning(said: str) -> Blink:
    """The size of what blinks where the warning is named; a patch where none is told."""
    if _NOT_ALL.search(said):
        return Blink.PATCHES
    if _NOTHING.search(said):
        beside = _EXCEPT.search(said)
        size = Blink.DOTS if _ONLY_DOTS.search(said) else None
        size = size if beside is None else _size_of(beside["but"])
        return size or Blink.NOTHING
    return _size_of(said) or Blink.PATCHES


def _size_of(said: str) -> Blink | None:
    """The largest size that is named and not denied; a part of the whole is a patch."""
    denied: Blink | None = None
    for size, words in _SIZES:
        without = re.sub(rf"{_DENIED}{words}\b", "", said)
        if re.search(rf"\b{words}\b", without):
            partly = size is Blink.SHEET and _PART.search(said)
            return Blink.PATCHES if partly else size
        if without != said:
            denied = denied or (Blink.PATCHES if size is Blink.SHEET else Blink.NOTHING)
    return denied


def _others(said: str) -> int:
    """How many words of a clause tell of something else than the white."""
    left = _LOST.sub(" ", said)
    for words in (in_any("whites.denied"), in_any("whites.blinks"), *(size for _, size in _SIZES)):
        left = re.sub(rf"\b{words}\b", " ", left)
    return len(re.findall(r"\w+", _PLAIN.sub(" ", left)))


def _rest_holds(clause: str) -> bool:
    """Whether a clause says that another part is fine: "but the bottom is good"."""
    said = folded(clause)
    return _HOLDS.search(said) is not None and not _BLINKS.search(said)


def _together(whites: Sequence[White], *, holds: bool) -> White:
    """All that was told of one frame: the worst of the water; the sky only where that holds."""
    in_sun = any(white.in_sun for white in whites)
    shaded = [white.in_shade for white in whites if white.in_shade is not None]
    counted = [white for white in whites if not (in_sun and white.in_shade is not None)]
    water = [white for white in counted if white.blink in _WORSE]
    only_sky = any(white.blink is Blink.SKY and white.part for white in counted)
    holds_under_sky = len(water) < len(counted) and _rank(water) <= _WORSE.index(Blink.DOTS)
    if not water or only_sky or holds_under_sky:
        return White(Blink.SKY)
    worst = max(water, key=lambda white: _WORSE.index(white.blink))
    return White(
        worst.blink,
        part=worst.part and holds,
        in_sun=in_sun,
        in_shade=shaded[0] if in_sun and shaded else None,
    )


def _rank(water: Sequence[White]) -> int:
    return max((_WORSE.index(white.blink) for white in water), default=0)
