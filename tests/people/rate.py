"""One rate: how many of the cases of a half of a corpus come out right."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Final, Literal, TypeAlias, TypeVar, get_args

#: Line numbers of people's files count from 1: odd lines are only reported, rules may be written
#: on even ones. Of blind files all lines are only reported.
Half: TypeAlias = Literal[
    "odd", "even", "strangers", "newcomers", "visitors", "aside", "plain", "outings"
]
HALVES: Final[tuple[Half, ...]] = get_args(Half)
_CORPUS: Final = Path(__file__).parents[1] / "dialogue" / "corpus"
PEOPLE: Final = _CORPUS / "people"
#: Folders of which nobody reads a line, the older one first.
BLIND: Final[Mapping[Half, Path]] = {
    "strangers": _CORPUS / "strangers",
    "newcomers": _CORPUS / "newcomers",
    "visitors": _CORPUS / "visitors",
    "aside": _CORPUS / "aside",
    "plain": _CORPUS / "plain",
    "outings": _CORPUS / "outings",
}

_Line = TypeVar("_Line")


@dataclass(frozen=True)
class Rate:
    """`hits` of `cases`; `aim` is a least share, or a most (`at_least`)."""

    topic: str
    half: Half
    name: str
    hits: int
    cases: int
    aim: float | None = None
    at_least: bool = True

    @property
    def share(self) -> float:
        """Hits among the cases; without any case nothing is short."""
        return self.hits / self.cases if self.cases else float(self.at_least)

    @property
    def reached(self) -> bool | None:
        """Whether the aim is reached; None without one."""
        if self.aim is None:
            return None
        return self.share >= self.aim if self.at_least else self.share <= self.aim


def lines_of(name: str, half: Half, *, header: bool = False) -> list[str]:
    """The lines of a file of one half; none where a blind folder has no such file.

    Args:
        name: of the file.
        half: which lines.
        header: whether the first line is none of them.
    """
    path = BLIND.get(half, PEOPLE) / name
    if half in BLIND and not path.exists():
        return []
    lines = path.read_text(encoding="utf-8").splitlines()[int(header) :]
    return lines if half in BLIND else half_of(lines, half, first_line=1 + header)


def half_of(lines: Sequence[_Line], half: Half, first_line: int = 1) -> list[_Line]:
    """The lines of one half of people's files.

    Args:
        lines: all lines of a file, in its order.
        half: "odd" or "even", by the number in the file.
        first_line: number of the first of them; 2 where a header stands before.
    """
    wanted = 1 if half == "odd" else 0
    return [line for number, line in enumerate(lines, start=first_line) if number % 2 == wanted]


def table(rates: Iterable[Rate]) -> list[str]:
    """Rates as lines; none of what a half has no case of."""
    counted = [rate for rate in rates if rate.cases]
    rows = [("topic", "half", "rate", "share", "hits", "cases", "aim", ""), *map(_row, counted)]
    widths = [max(len(row[column]) for row in rows) for column in range(len(rows[0]))]
    return [_line(row, widths) for row in rows]


def _row(rate: Rate) -> tuple[str, ...]:
    aim = "" if rate.aim is None else f"{'≥' if rate.at_least else '≤'} {rate.aim:.0%}"
    verdict = {None: "", True: "reached", False: "SHORT"}[rate.reached]
    numbers = (f"{rate.share:.1%}", str(rate.hits), str(rate.cases))
    return (rate.topic, rate.half, rate.name, *numbers, aim, verdict)


def _line(row: Sequence[str], widths: Sequence[int]) -> str:
    cells = [
        f"{cell:>{width}}" if index in (3, 4, 5) else f"{cell:<{width}}"
        for index, (cell, width) in enumerate(zip(row, widths, strict=True))
    ]
    return "  ".join(cells).rstrip()
