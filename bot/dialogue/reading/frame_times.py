"""Exposure times as names of frames: `a fifteenth`, `the quarter one`, `1/4, 1/2, 1 and 2 s`."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Final

from bot.dialogue.reading.draft import RANGES
from bot.dialogue.reading.normal import normalise
from bot.dialogue.reading.spoken_numbers import ORDINALS

#: Words that stand beside a time and say nothing of it.
_STRESS: Final = re.compile(
    r"\b(?:whole|full|entire|good|long|ganze[nrs]?|volle[nrs]?|lange[nrs]?|enter[oa]s?"
    r"|larg[oa]s?)\b "
    r"?(?=(?:s|secs?|seconds?|sekunden?|segundos?)\b)"
)
#: Other frames, not other people.
_OTHERS: Final = re.compile(
    r"\b(?:the )?others?(?= (?:at |with |on |were |all )*(?:f ?/?\d|iso|[\d/]+ ?(?:mm|s)\b))"
)
#: Halves that neither language's number words turn where no second stands behind.
_HALF: Final = re.compile(
    r"\b(?:(?:an?|one|un|una|eine?[rnm]?|el|la|lo|the|de|der|die|das) )(?:halbe[nrs]?|medi[oa])\b"
    r"|(?<=, )medi[oa]\b|(?<= y )medi[oa]\b|(?<=\bof )medi[oa]\b(?! (?:the|segundo))"
)
#: "A half and two seconds"; not "a metre and a half".
_LONE_HALF: Final = re.compile(r"(?<!and )\ba half\b(?= (?:and|or|und|y|then) )")
_SECOND: Final = r"(?:s|secs?|seconds?)"
#: Denominators of parts that are named without a number.
_PARTS: Final = {
    "half": 2, "third": 3, "quarter": 4, "octavo": 8, "cuarto": 4, "quinto": 5, "sexto": 6,
    "decimo": 10, "quinceavo": 15, "treintavo": 30, "sesentavo": 60,
} | {word: below for word, below in ORDINALS.items() if " " not in word}  # fmt: skip
#: Words that name a place in a row, too: "the third one", "el quinto".
_ROW: Final = re.compile(r"th$|third|quinto|sexto|octavo|decimo|cuarto")
_NAMED: Final = "|".join(sorted(_PARTS, key=len, reverse=True))
#: "The top half", "a third of the frame", "half the frames" are no times.
_NO_TIME: Final = (
    r"(?! ?(?:of (?!an? s)|the (?:\w+ )?(?:frames?|pictures?|shots?|width|height|day)\b|way"
    r"|stops?|light|met|moon|hour|mile|time\b|tier|step|day|visit"
    r"|as\b|side|left|right|per|degree))"
)
_NUMBER: Final = r"\d{1,3}(?:\.\d{1,2})?"
_TIME: Final = re.compile(
    rf"(?<![\w/.])(?P<part>1/[1-9]\d{{0,4}}(?:\.\d)?|[23]/[345])(?:th|rd)?"
    rf"(?:[ -]?(?:of an? )?{_SECOND}\b|\"|(?![\w/]))(?! ?-?(?:stops?|ev|of the|less|more|dark"
    rf"|bright"
    r"|under|over)\b)"
    rf"|(?<![\w/.-])(?P<whole>{_NUMBER})[ -]?(?:{_SECOND}\b|\"(?!\w))"
    rf"|(?<![\w/])(?P<one>an? sec(?:ond)?)\b(?! (?:one|frame|shot|picture|try|time|look|later"
    rf"|person))"
    rf"|\b(?:the|this|that|my|in|der|die|das|des|del|el|la|lo|im) (?P<named>{_NAMED})s?\b{_NO_TIME}"
    rf"|\b(?:the|this|that) (?P<below>\d{{1,4}})(?:th|rd|nd|st)\b{_NO_TIME}"
)
#: What stands between the times of a list.
_BETWEEN: Final = r"(?:[ ,;/&+]|\b(?:and|then|or|also|und|dann|oder|y|o|luego|finally|at last)\b)+"
_BARE: Final = re.compile(rf"(?P<bare>(?<![\w/.-])(?<!iso )(?<!f ){_NUMBER}(?![\w/.]|,\d))")
_LISTED: Final = re.compile(rf"{_BETWEEN}{_NUMBER}(?![\w/.])(?= ?(?:$|[,;.:]|(?:and|und|y)\b|\d))")
#: A leaf's time, a timer's or a wait is no exposure.
_OTHER_TIME: Final = re.compile(
    r"\b(?:leaf|stick|twig|cork|bubbles?)\b[^,;.]*$"
    r"|\b(?:timer|delay|wait\w*|every|took me)(?: \w+)? (?:about )?$"
)


@dataclass(frozen=True)
class SpokenTime:
    """A time in a message: its marked value [s], where it stands, and what else it may mean.

    Args:
        shutter_s: as marked.
        start: of its words in the message.
        end: of its words.
        place: the place in a row that the same word may name: "the third one".
    """

    shutter_s: float
    start: int
    end: int
    place: int | None = None


def plain_times(text: str) -> str:
    """A message in one spelling, its times in digits as far as they are times for certain.

    Args:
        text: the message in English.
    """
    said = _OTHERS.sub("the rest", _STRESS.sub("", " ".join(text.casefold().split())))
    return _LONE_HALF.sub("1/2", _STRESS.sub("", normalise(_HALF.sub("1/2", said))))


def times_in(said: str) -> tuple[SpokenTime, ...]:
    """The times that a message names, in its order.

    Args:
        said: as `plain_times` leaves it.
    """
    found = [_time(match) for match in _TIME.finditer(said) if not _is_other(said, match)]
    low_s, high_s = RANGES["shutter_s"]
    return tuple(time for time in _with_bare(said, found) if low_s <= time.shutter_s <= high_s)


def _is_other(said: str, match: re.Match[str]) -> bool:
    return match["whole"] is not None and bool(_OTHER_TIME.search(said[: match.start()]))


def _time(match: re.Match[str]) -> SpokenTime:
    start, end = match.span()
    if match["part"]:
        above, parts = match["part"].split("/")
        return SpokenTime(float(above) / float(parts), start, end)
    if match["named"]:
        below = _PARTS[match["named"]]
        return SpokenTime(1 / below, start, end, below if _ROW.search(match["named"]) else None)
    if match["below"]:
        number = int(match["below"])
        return SpokenTime(1 / max(number, 1), start, end, number)
    return SpokenTime(float(match["whole"]) if match["whole"] else 1.0, start, end)


def _with_bare(said: str, found: list[SpokenTime]) -> list[SpokenTime]:
    """Bare numbers of a list join its times: `1/2, 1 and 2 s`."""
    taken = [(one.start, one.end) for one in found]
    bare = [
        SpokenTime(float(match["bare"]), *match.span())
        for match in _BARE.finditer(said)
        if not any(start <= match.start() < end for start, end in taken)
    ]
    joined = list(found)
    for one in reversed(bare):
        behind = next((time for time in joined if time.start > one.end), None)
        if behind is not None and re.fullmatch(_BETWEEN, said[one.end : behind.start]):
            joined = sorted([*joined, one], key=lambda time: time.start)
    for one in bare:
        before = next((time for time in reversed(joined) if time.end <= one.start), None)
        if one not in joined and before is not None and _goes_on(said, before, one):
            joined = sorted([*joined, one], key=lambda time: time.start)
    return joined


def _goes_on(said: str, before: SpokenTime, one: SpokenTime) -> bool:
    """Whether a bare number ends a list of times."""
    return _LISTED.match(said, before.end) is not None and bool(
        re.fullmatch(_BETWEEN, said[before.end : one.start])
    )
