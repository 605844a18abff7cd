"""The marked series (f-number, time, ISO) and the exact values behind them."""

from __future__ import annotations

import math
from bisect import bisect_left
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from enum import Enum
from functools import cache
from typing import Final

from core.domain import positive
from core.errors import OutOfDomainError
from core.printed_marks import F_HALVES, F_THIRDS, ISO_HALVES, ISO_THIRDS, TIME_HALVES, TIME_THIRDS


class Dial(Enum):
    """How finely a camera's dials are marked; the value is the number of steps in a stop."""

    THIRDS = 3
    HALVES = 2


@dataclass(frozen=True)
class Mark:
    """One position of a dial.

    Args:
        exact: the value that the camera means (f/11 is 11.3137, 1/60 s is 1/64 s). Compute with it.
        marked: the value that is printed (11, 1/60). Never compute with it.
        label: how the trade writes it ("f/11", "1/60 s", "ISO 400").
    """

    exact: float
    marked: float
    label: str


#: The mark 30 s means 2^5 s.
LONGEST_MARKED_S: Final = 32.0
#: A printed value is recognised within this share of itself (own rule: 1/60 typed as 0.0167).
_SAME_PRINT: Final = 0.005
#: A typed value is taken for the mark within this distance [stops] (own rule: 1/3 s is 0.08 off
#: the mark 0.3 s and must count; a half stop is 0.17 off the nearest third and must not).
_SAME_MARK_STOPS: Final = 0.12
#: Two values nearer than this [stops], or this factor, are the same setting (own rule: rounding
#: of floats).
EQUAL_STOPS: Final = 1e-6
EQUAL: Final = 1 + 1e-6
#: Nearer than this two values are the same to a dial and to the eye [stops] (own rule: half of a
#: third, the smallest step of a dial).
SAME_STOPS: Final = 1 / 6
#: Two numbers that are nearer than this factor are one mark, rounded in two ways (own rule: 11 for
#: 11.3, 1/13 for 1/12.7, which differ by 3 %).
_SAME_MARK: Final = 1.035
#: From here on a time is told in minutes [s] (own rule).
_MINUTES_FROM_S: Final = 90.0


@cache
def f_number_marks(dial: Dial = Dial.THIRDS) -> tuple[Mark, ...]:
    """All f-numbers from f/1 to f/64, widest first; the k-th is 2^(k/2/steps per stop)."""
    words = (F_THIRDS if dial is Dial.THIRDS else F_HALVES).split()
    return tuple(
        Mark(2 ** (step / 2 / dial.value), float(word), f"f/{word}")
        for step, word in enumerate(words)
    )


@cache
def time_marks(dial: Dial = Dial.THIRDS) -> tuple[Mark, ...]:
    """All exposure times from 30 s to 1/8000 s, longest first; the k-th is 2^(5 - k/steps) s."""
    words = (TIME_THIRDS if dial is Dial.THIRDS else TIME_HALVES).split()
    return tuple(
        Mark(LONGEST_MARKED_S * 2 ** (-step / dial.value), _value(word), f"{word} s")
        for step, word in enumerate(words)
    )


@cache
def iso_marks(dial: Dial = Dial.THIRDS) -> tuple[Mark, ...]:
    """All speeds from ISO 25 to ISO 102400, slowest first; the k-th is 25 * 2^(k/steps)."""
    words = (ISO_THIRDS if dial is Dial.THIRDS else ISO_HALVES).split()
    return tuple(
        Mark(25 * 2 ** (step / dial.value), float(word), f"ISO {word}")
        for step, word in enumerate(words)
    )


def _value(word: str) -> float:
    above, _, below = word.partition("/")
    return float(above) / float(below or 1)


def nearest(marks: Sequence[Mark], exact: float) -> Mark:
    """The mark nearest in stops; of two equally near ones the first in the series.

    Args:
        marks: of one dial.
        exact: an exact value in the unit of the marks, above 0.

    Raises:
        OutOfDomainError: `exact` is not a positive finite number.
    """
    positive("exact", exact, "")
    return min(_beside(marks, exact), key=lambda mark: abs(math.log2(mark.exact / exact)))


def _beside(marks: Sequence[Mark], exact: float) -> Sequence[Mark]:
    """The marks below and above a value, in the order of their series."""
    sign = 1.0 if marks[0].exact < marks[-1].exact else -1.0
    place = bisect_left(marks, sign * exact, key=lambda mark: sign * mark.exact)
    return marks[max(0, place - 1) : place + 1]


def at_most(marks: Sequence[Mark], exact: float) -> Mark:
    """The greatest mark that is not above `exact`.

    Args:
        marks: of one dial.
        exact: an exact value in the unit of the marks, above 0.

    Raises:
        OutOfDomainError: no such mark, or `exact` is not a positive finite number.
    """
    return max(_beyond(marks, exact, -1), key=lambda mark: mark.exact)


def is_same_mark(one: float, other: float) -> bool:
    """Whether two numbers are the same mark of a dial, each rounded in its own way.

    Args:
        one: an f-number, a time or a speed, above 0.
        other: the like.

    Raises:
        OutOfDomainError: one of them is not a positive finite number.
    """
    positive("mark", (one, other), "")
    return max(one / other, other / one) < _SAME_MARK


def at_least(marks: Sequence[Mark], exact: float) -> Mark:
    """The smallest mark that is not below `exact`.

    Args:
        marks: of one dial.
        exact: an exact value in the unit of the marks, above 0.

    Raises:
        OutOfDomainError: no such mark, or `exact` is not a positive finite number.
    """
    return min(_beyond(marks, exact, 1), key=lambda mark: mark.exact)


def _beyond(marks: Sequence[Mark], exact: float, way: int) -> list[Mark]:
    """The marks from a value on, it included: `way` 1 upwards, -1 downwards; there is one."""
    positive("exact", exact, "")
    found = [mark for mark in marks if way * math.log2(mark.exact / exact) >= -EQUAL_STOPS]
    if not found:
        raise _off_series(marks, exact)
    return found


def step_by(marks: Sequence[Mark], exact: float, steps: int) -> Mark:
    """The mark `steps` places further in the series, counted from the one nearest to `exact`.

    Args:
        marks: of one dial.
        exact: an exact value in the unit of the marks, above 0.
        steps: positive towards the end of the series.

    Raises:
        OutOfDomainError: the series ends before that, or `exact` is not a positive finite number.
    """
    place = marks.index(nearest(marks, exact)) + steps
    if not 0 <= place < len(marks):
        raise OutOfDomainError(
            "steps", steps, "steps", steps - place, steps - place + len(marks) - 1
        )
    return marks[place]


def _off_series(marks: Sequence[Mark], exact: float) -> OutOfDomainError:
    values = [mark.exact for mark in marks]
    return OutOfDomainError("exact", exact, "", min(values), max(values))


def exact_f_number(marked: float, dial: Dial = Dial.THIRDS) -> float:
    """The f-number that is meant by a typed one: f/11 is 11.3137; f/9.5 is a half stop.

    Both dials are looked at, `dial` first (f/13 is 12.70 in thirds, 13.45 in halves); a value
    on neither stays itself.

    Args:
        marked: as printed or typed, above 0.
        dial: steps of the camera's dial.

    Raises:
        OutOfDomainError: `marked` is not a positive finite number.
    """
    positive("f_number", marked, "")
    # One stop is a factor of the square root of 2 in the f-number: 2 log2.
    return _exact(marked, f_number_marks, dial, stops_per_doubling=2)


def exact_shutter_s(marked: float, dial: Dial = Dial.THIRDS) -> float:
    """The time that is meant by a typed one [s]: 1/60 is 1/64; 1/3 is the mark 0.3 s, 2^(-5/3).

    Both dials are looked at, `dial` first (10 s is 10.08 s in thirds, 11.31 s in halves); a
    value on neither stays itself, and so does every time above 30 s, which is timed by hand.

    Args:
        marked: as printed or typed [s], above 0.
        dial: steps of the camera's dial.

    Raises:
        OutOfDomainError: `marked` is not a positive finite number.
    """
    positive("shutter_s", marked, "s")
    if marked > time_marks(dial)[0].marked * (1 + _SAME_PRINT):
        return marked
    return _exact(marked, time_marks, dial, stops_per_doubling=1)


def exact_iso(marked: float, dial: Dial = Dial.THIRDS) -> float:
    """The speed that is meant by a typed one: ISO 125 is 125.99; ISO 110 stays itself.

    Args:
        marked: as printed or typed, above 0.
        dial: steps of the camera's dial.

    Raises:
        OutOfDomainError: `marked` is not a positive finite number.
    """
    positive("iso", marked, "")
    return _exact(marked, iso_marks, dial, stops_per_doubling=1)


def _exact(
    marked: float,
    series: Callable[[Dial], tuple[Mark, ...]],
    dial: Dial,
    stops_per_doubling: int,
) -> float:
    """The printed value first (f/1.2 is 0.14 stop off what it means), then the nearest mark."""
    other = Dial.HALVES if dial is Dial.THIRDS else Dial.THIRDS
    both = (series(dial), series(other))
    for marks in both:
        for mark in marks:
            if math.isclose(mark.marked, marked, rel_tol=_SAME_PRINT):
                return mark.exact
    for marks in both:
        near = nearest(marks, marked)
        if stops_per_doubling * abs(math.log2(near.exact / marked)) <= _SAME_MARK_STOPS:
            return near.exact
    return float(marked)


def f_number_label(exact: float, dial: Dial = Dial.THIRDS) -> str:
    """How the dial shows an f-number ("f/11"); beyond f/64 rounded to whole numbers ("f/90").

    Args:
        exact: exact value, above 0.
        dial: steps of the camera's dial.

    Raises:
        OutOfDomainError: `exact` is not a positive finite number.
    """
    marks = f_number_marks(dial)
    mark = nearest(marks, exact)
    beyond = exact > marks[-1].exact and 2 * math.log2(exact / mark.exact) > 0.5 / dial.value
    return f"f/{exact:.0f}" if beyond else mark.label


def shutter_label(exact_s: float, dial: Dial = Dial.THIRDS) -> str:
    """How the dial shows a time ("1/4 s"); beyond 30 s what the watch shall show.

    Beyond the mark 30 s: whole seconds to 90 s ("45 s"), then minutes in steps of ten seconds
    ("2 min", "2 min 30 s"; own rule: finer than a tenth of a stop). Shorter than 1/8000 s:
    the fraction itself ("1/16384 s").

    Args:
        exact_s: exact time [s], above 0.
        dial: steps of the camera's dial.

    Raises:
        OutOfDomainError: `exact_s` is not a positive finite number.
    """
    marks = time_marks(dial)
    mark = nearest(marks, exact_s)
    if math.log2(marks[-1].exact / exact_s) > 0.5 / dial.value:
        return f"1/{1 / exact_s:.0f} s"
    if math.log2(exact_s / LONGEST_MARKED_S) <= EQUAL_STOPS:
        return mark.label
    if exact_s <= _MINUTES_FROM_S:
        return f"{exact_s:.0f} s"
    minutes, seconds = divmod(round(exact_s / 10) * 10, 60)
    return f"{minutes} min {seconds} s" if seconds else f"{minutes} min"


def iso_label(exact: float, dial: Dial = Dial.THIRDS) -> str:
    """How the dial shows a speed ("ISO 400"); beyond the series rounded to whole numbers.

    Args:
        exact: exact value, above 0.
        dial: steps of the camera's dial.

    Raises:
        OutOfDomainError: `exact` is not a positive finite number.
    """
    mark = nearest(iso_marks(dial), exact)
    beyond = abs(math.log2(exact / mark.exact)) > 0.5 / dial.value + EQUAL_STOPS
    return f"ISO {exact:.0f}" if beyond else mark.label
