"""Whole messages about frames that were shared: compare, average, as 1/4 s, cells, a direction."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Final, Literal, TypeAlias

FrameWish: TypeAlias = Literal["compare", "average", "illustrate", "grid", "cells", "direction"]

#: Longest and shortest time that is drawn [s] (own rule: beyond, nothing changes any more).
_TIMES_S: Final = (1 / 1000, 30.0)
_NUMBERS: Final = {"two": 2, "both": 2, "three": 3, "four": 4, "five": 5, "six": 6}
_FRAMES: Final = r"(?: (?:frames?|pictures?|photos?|shots?|ones?))?"
_COUNT: Final = r"(?: (?:the|my|all|these|those|them))*(?: last)?(?: (?P<number>\d{1,2}|[a-z]+))?"
_COMPARE: Final = re.compile(rf"(?:compare|ladder){_COUNT}{_FRAMES}")
_AVERAGE: Final = re.compile(rf"average{_COUNT}{_FRAMES}")
_GRID: Final = re.compile(r"(?:show )?(?:me )?(?:the )?(?:grid|cells)|where is the water")
_ILLUSTRATE: Final = re.compile(
    r"illustrate(?: it)?|(?:show|draw)(?: me)? (?:the )?(?:other )?times"
)
_CELL: Final = "[a-d][1-4]"
_CELLS: Final = re.compile(
    rf"(?:(?:the )?(?:water|fall|stream) |it )?(?:(?:is|s|runs) )?(?:(?:in|at|cells?) )?"
    rf"(?P<cells>{_CELL}(?: (?:and )?{_CELL})*)"
)
_AS: Final = re.compile(r"(?:as(?: at| if)?|(?:draw|show)(?: it| me)?(?: as| at)?) (?P<times>.+)")
_TIME: Final = re.compile(
    r"(?:1/(?P<part>[1-9]\d{0,3})|(?P<whole>\d{1,2}(?:\.\d{1,3})?))(?P<unit>s?)"
)
_RUNS: Final = r"(?:it |the water )?(?:flow|run|fall)s "
#: Axes of the water in the picture [deg, anticlockwise from the horizontal].
_AXES: Final = (
    (
        rf"(?:{_RUNS})?(?:(?:straight|steep|right) )?down(?:wards?)?|it falls|up|vertical(?:ly)?",
        90.0,
    ),
    (r"(?:from )?left to right|right to left|across|sideways|level|horizontal(?:ly)?", 0.0),
    (r"down (?:to the )?left|left down|up right|from (?:the )?(?:top )?right", 45.0),
    (r"down (?:to the )?right|right down|up left|from (?:the )?(?:top )?left", 135.0),
)


@dataclass(frozen=True)
class Wished:
    """What a message wishes of shared frames.

    Args:
        what: the wish.
        number: of frames, None where none was named.
        times_s: to be drawn [s].
        cells: of the grid, A1 to D4, in the order of typing.
        axis_deg: of the flow in the picture [deg, anticlockwise from the horizontal].
    """

    what: FrameWish
    number: int | None = None
    times_s: tuple[float, ...] = ()
    cells: tuple[str, ...] = ()
    axis_deg: float | None = None


def wished(text: str) -> Wished | None:
    """What a whole message wishes of shared frames; None for anything else.

    Args:
        text: the message as typed.
    """
    said = " ".join(re.sub(r"[^\w./ ]", " ", text.casefold()).split()).strip(". ")
    for pattern, what in ((_COMPARE, "compare"), (_AVERAGE, "average")):
        match = pattern.fullmatch(said)
        if match is not None:
            return _counted("compare" if what == "compare" else "average", match.group("number"))
    if _GRID.fullmatch(said):
        return Wished("grid")
    if _ILLUSTRATE.fullmatch(said):
        return Wished("illustrate")
    return _as_times(said) or _cells(said) or _direction(said)


def _counted(what: Literal["compare", "average"], number: str | None) -> Wished | None:
    if number is None:
        return Wished(what)
    count = int(number) if number.isdecimal() else _NUMBERS.get(number)
    return None if count is None else Wished(what, number=count)


def _as_times(said: str) -> Wished | None:
    match = _AS.fullmatch(said)
    if match is None:
        return None
    words = re.sub(r"\b(?:and|at|or|seconds?|secs?|second s)\b", " ", match.group("times"))
    pieces = re.sub(r"(?<=\d) s\b", "s", words).split()
    found = [_TIME.fullmatch(piece) for piece in pieces]
    times = [_seconds(one) for one in found if one is not None]
    told = "sec" in said or any(one is not None and (one["part"] or one["unit"]) for one in found)
    if not pieces or None in found or not told:
        return None
    inside = all(_TIMES_S[0] <= time <= _TIMES_S[1] for time in times)
    return Wished("illustrate", times_s=tuple(times)) if inside else None


def _seconds(match: re.Match[str]) -> float:
    if match["part"]:
        return 1 / int(match["part"])
    return float(match["whole"])


def _cells(said: str) -> Wished | None:
    match = _CELLS.fullmatch(said)
    if match is None:
        return None
    named = re.findall(_CELL, match["cells"])
    return Wished("cells", cells=tuple(dict.fromkeys(cell.upper() for cell in named)))


_OUTSIDE: Final = re.compile(
    r"(?:(?:the )?(?:water|fall|stream) |it )?(?:(?:is|s|runs) )?(?:(?:in|at|cells?) )?"
    r"(?:[a-d][1-4] )*(?!f\d)[a-h](?:0|[1-9]\d?)(?: (?:and )?[a-h]\d{1,2})*"
)


def names_no_cell(text: str) -> bool:
    """Whether a whole message names a cell that the grid has not: `b9`, `F2`."""
    said = " ".join(re.sub(r"[^\w./ ]", " ", text.casefold()).split()).strip(". ")
    return wished(text) is None and _OUTSIDE.fullmatch(said) is not None


def _direction(said: str) -> Wished | None:
    for pattern, axis_deg in _AXES:
        if re.fullmatch(pattern, said):
            return Wished("direction", axis_deg=axis_deg)
    return None
