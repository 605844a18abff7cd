"""All numbers of a message that may be lengths: measured, counted in paces, or in small words."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Final

from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.paces import PACE_M
from bot.dialogue.reading.spoken_numbers import SIMPLE, number_said
from bot.dialogue.reading.unit_words import METRES

#: An arm stretched out [m] (own rule).
ARM_M: Final = 0.7
_METRES: Final = METRES | {"step": PACE_M, "arm": ARM_M}
_PACE: Final = r"(?:steps?|paces?|strides?|schritte?n?|pasos?)"
_ARM: Final = r"arm(?:'s|s)?[ -]?lengths?"
_SMALL: Final = "|".join(word for word in SIMPLE if word != "zero")
#: These need their unit: "a couple of feet", "a metre". The longest stands first.
_LOOSE: Final = {"a couple of": 2.0, "half a": 0.5, "a few": 3.0, "a": 1.0}
#: What the scan of numbers leaves as words, or without its unit; a unit stands apart from a word.
_COUNTED: Final = re.compile(
    rf"\b(?P<number>{_SMALL}|\d+|{'|'.join(_LOOSE)})(?P<half> (?:1/2|and a half))?"
    r"(?: (?:big|long|good|small|large))?"
    rf"(?:(?:(?<=\d)| )(?P<unit>(?P<step>{_PACE})|(?P<arm>{_ARM})|(?P<m>m|met(?:re|er)s?)"
    r"|(?P<ft>ft|feet|foot)|(?P<yd>yards?)|(?P<cm>cm)))?(?![\w/])"
)
_ARM_ALONE: Final = re.compile(rf"\b{_ARM}|\barmlänge|\ba (?:stretched )?arm\b")


@dataclass(frozen=True, slots=True)
class Candidate:
    """A number that may be a length.

    Args:
        start: where it begins in the text of the draft, and `end` where it ends.
        end: its unit included.
        value: the number; of a range its middle.
        unit: `m`, `cm`, `ft`, `in`, `yd`, `km`, `mi`, `step`, `arm`, or "" where none is said.
        quantity: as the scan of numbers found it; None for what it leaves as words.
    """

    start: int
    end: int
    value: float
    unit: str
    quantity: Quantity | None = None

    @property
    def metres(self) -> float:
        """The length, a bare number as metres."""
        return self.value * _METRES.get(self.unit, 1.0)


def candidates_in(text: str, quantities: Sequence[Quantity]) -> list[Candidate]:
    """The candidates of a message in their order.

    Args:
        text: of the draft.
        quantities: all its numbers.
    """
    measured = [_of_quantity(quantity) for quantity in quantities if _may_be(quantity)]
    found = list(_with_paces(text, measured))
    taken = [(quantity.start, quantity.end) for quantity in quantities]
    taken += [(candidate.start, candidate.end) for candidate in found]
    for match in _COUNTED.finditer(text):
        if not _overlaps(match.span(), taken) and _counts(match):
            found.append(_of_words(match))
            taken.append(match.span())
    found += [
        Candidate(*match.span(), 1.0, "arm")
        for match in _ARM_ALONE.finditer(text)
        if not _overlaps(match.span(), taken)
    ]
    return sorted(found, key=lambda candidate: candidate.start)


def _counts(match: re.Match[str]) -> bool:
    """Whether words count something; digits that the scan left out are a date or an hour."""
    if match["number"].isdigit():
        return bool(match["step"] or match["arm"])
    return bool(match["unit"]) or match["number"] not in _LOOSE


def _may_be(quantity: Quantity) -> bool:
    """Whether a number has a unit of length, or none and no sign or bar."""
    bare = quantity.unit == "" and not quantity.signed
    return quantity.unit in METRES or (bare and (not quantity.fraction or " " in quantity.text))


def _of_quantity(quantity: Quantity) -> Candidate:
    value = quantity.value if quantity.high is None else (quantity.value + quantity.high) / 2
    return Candidate(quantity.start, quantity.end, value, quantity.unit, quantity)


def _with_paces(text: str, measured: Iterable[Candidate]) -> Iterable[Candidate]:
    """The same, a bare number with the paces or arms that it counts."""
    counted = {match.start(): match for match in _COUNTED.finditer(text)}
    for candidate in measured:
        match = counted.get(candidate.start)
        if candidate.unit or match is None or not (match["step"] or match["arm"]):
            yield candidate
        else:
            unit = "step" if match["step"] else "arm"
            value = candidate.value + (0.5 if match["half"] and candidate.value % 1 == 0 else 0.0)
            yield Candidate(candidate.start, match.end(), value, unit, candidate.quantity)


def _of_words(match: re.Match[str]) -> Candidate:
    said = match["number"]
    value = _LOOSE[said] if said in _LOOSE else number_said(said)
    units = ("step", "arm", "m", "ft", "yd", "cm")
    unit = next((unit for unit in units if match[unit]), "")
    return Candidate(*match.span(), value + (0.5 if match["half"] else 0.0), unit)


def _overlaps(span: tuple[int, int], taken: Iterable[tuple[int, int]]) -> bool:
    return any(start < span[1] and span[0] < end for start, end in taken)
