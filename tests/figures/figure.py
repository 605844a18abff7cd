"""One figure: what was measured on which material, and what it should reach."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import Enum


class Material(Enum):
    """Where the pictures come from; figures of different material are never mixed."""

    RENDERED = "rendered"  # scenes of our own with known truth
    MADE = "made"  # files and planted things in real pictures of the registries' packages
    SHIFTED = "shifted real"  # real water, moved and averaged by known lengths
    REAL = "real"  # pictures from the folder that FRAMES_DIR names, as they are


@dataclass(frozen=True)
class Figure:
    """`value` of `name` over `count` cases; `aim` is a least value, or a most (`at_least`)."""

    topic: str
    material: Material
    name: str
    value: float
    count: int
    aim: float | None = None
    at_least: bool = True

    @property
    def reached(self) -> bool | None:
        """Whether the aim is reached; None without one."""
        if self.aim is None:
            return None
        return self.value >= self.aim if self.at_least else self.value <= self.aim


def table(figures: Iterable[Figure]) -> list[str]:
    """Figures as lines."""
    rows = [_row(figure) for figure in figures]
    heads = ("topic", "material", "figure", "value", "cases", "aim", "")
    widths = [max(len(row[column]) for row in (heads, *rows)) for column in range(len(heads))]
    return [_line(row, widths) for row in (heads, *rows)]


def _row(figure: Figure) -> tuple[str, ...]:
    aim = ""
    if figure.aim is not None:
        aim = f"{'≥' if figure.at_least else '≤'} {figure.aim:g}"
    verdict = {None: "", True: "reached", False: "SHORT"}[figure.reached]
    return (
        figure.topic,
        figure.material.value,
        figure.name,
        f"{figure.value:.4g}",
        str(figure.count),
        aim,
        verdict,
    )


def _line(row: Sequence[str], widths: Sequence[int]) -> str:
    cells = [
        f"{cell:>{width}}" if index in (3, 4) else f"{cell:<{width}}"
        for index, (cell, width) in enumerate(zip(row, widths, strict=True))
    ]
    return "  ".join(cells).rstrip()
