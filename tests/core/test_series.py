"""The dials: what is printed, what is meant, and the way from one to the other."""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Sequence
from typing import NamedTuple

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.errors import OutOfDomainError
from core.series import (
    Dial,
    Mark,
    at_least,
    at_most,
    exact_f_number,
    exact_iso,
    exact_shutter_s,
    f_number_label,
    f_number_marks,
    iso_label,
    iso_marks,
    nearest,
    shutter_label,
    step_by,
    time_marks,
)
from tests.core.numbers import NEVER_POSITIVE, f_numbers, isos, shutters_s

#: Each series with the stops in a doubling of its value.
SERIES: list[tuple[Callable[[Dial], tuple[Mark, ...]], int]] = [
    (f_number_marks, 2),
    (time_marks, 1),
    (iso_marks, 1),
]
dials = st.sampled_from(Dial)
series = st.sampled_from(SERIES)


def test_exact_third_stops_are_the_published_ones() -> None:
    """The exact f-numbers from f/1 to f/32 come out, to the two digits that are published."""
    # Third stops 2^(k/6), as listed in a large-format photographers' forum.
    published = (
        "1 1.12 1.26 1.41 1.59 1.78 2 2.24 2.52 2.83 3.17 3.56 4 4.49 5.04 5.66 6.35 7.13 8 8.98 "
        "10.08 11.31 12.7 14.25 16 17.96 20.16 22.63 25.4 28.51 32"
    )
    expected = [float(word) for word in published.split()]
    exact = [mark.exact for mark in f_number_marks()[: len(expected)]]
    np.testing.assert_allclose(exact, expected, rtol=0, atol=0.005)


class FullStops(NamedTuple):
    """A series of printed full stops and the numbers that a standard gives them."""

    marks: tuple[Mark, ...]
    printed: str
    first: int  # number of the first value on the scale of the source
    stops: Callable[[float], float]
    source: str


FULL_STOPS = [
    FullStops(
        f_number_marks(),
        "1 1.4 2 2.8 4 5.6 8 11 16 22 32",
        0,
        lambda exact: 2 * math.log2(exact),
        "Exif 2.3, Annex C, aperture value; from memory",
    ),
    FullStops(
        time_marks(),
        "30 15 8 4 2 1 1/2 1/4 1/8 1/15 1/30 1/60 1/125 1/250 1/500 1/1000 1/2000",
        -5,
        lambda exact: -math.log2(exact),
        "Exif 2.3, Annex C, time value; from memory",
    ),
    FullStops(
        iso_marks(),
        "25 50 100 200 400 800",
        3,
        lambda exact: math.log2(exact / 3.125),
        "Exif 2.3, Annex C, speed value; from memory",
    ),
]


@pytest.mark.parametrize("table", FULL_STOPS, ids=lambda table: table.source)
def test_full_stops_mean_whole_numbers(table: FullStops) -> None:
    """Each printed full stop means the whole number that the standard gives it."""
    words = [re.sub("^f/|^ISO | s$", "", mark.label) for mark in table.marks]
    exact = dict(zip(words, [mark.exact for mark in table.marks], strict=True))
    found = [table.stops(exact[word]) for word in table.printed.split()]
    expected = np.arange(table.first, table.first + len(found))
    np.testing.assert_allclose(found, expected, rtol=0, atol=1e-9)


@pytest.mark.parametrize(
    ("marks", "stops_per_doubling", "worst"),
    [
        # Computed here from the printed series: 2 log2(1.2 / 2^(2/6)), log2(32 / 30) and
        # log2(12800 / (25 * 2^9)) with its neighbours; published series from memory.
        (f_number_marks()[:31], 2, 0.1406),
        (time_marks(), 1, 0.0931),
        (iso_marks()[6:31], 1, 0.0228),
    ],
    ids=["f-number: f/1.2", "time: 30 s", "speed"],
)
def test_print_strays_no_further_than_known(
    marks: Sequence[Mark], stops_per_doubling: int, worst: float
) -> None:
    """The printed values stray from the exact ones by what the printed series implies."""
    stray = [stops_per_doubling * abs(math.log2(mark.marked / mark.exact)) for mark in marks]
    assert max(stray) == pytest.approx(worst, abs=0.0005)


@pytest.mark.parametrize(
    ("marks", "count", "first", "last"),
    [
        (f_number_marks(Dial.THIRDS), 37, "f/1", "f/64"),
        (f_number_marks(Dial.HALVES), 25, "f/1", "f/64"),
        (time_marks(Dial.THIRDS), 55, "30 s", "1/8000 s"),
        (time_marks(Dial.HALVES), 37, "30 s", "1/8000 s"),
        (iso_marks(Dial.THIRDS), 37, "ISO 25", "ISO 102400"),
        (iso_marks(Dial.HALVES), 25, "ISO 25", "ISO 102400"),
    ],
)
def test_series_is_whole(marks: Sequence[Mark], count: int, first: str, last: str) -> None:
    """A series has all its steps, from its first label to its last (steps times stops, plus 1)."""
    assert (len(marks), marks[0].label, marks[-1].label) == (count, first, last)


@pytest.mark.parametrize("dial", Dial)
@pytest.mark.parametrize(("make", "stops_per_doubling"), SERIES)
def test_steps_are_equal(
    make: Callable[[Dial], tuple[Mark, ...]], stops_per_doubling: int, dial: Dial
) -> None:
    """Neighbours lie exactly one step apart, and the print runs the same way.

    The worst print is the half stop 0.3 s for 0.354 s, 0.238 stop.
    """
    exact = np.array([mark.exact for mark in make(dial)])
    marked = np.array([mark.marked for mark in make(dial)])
    steps = np.abs(np.diff(stops_per_doubling * np.log2(exact)))
    np.testing.assert_allclose(steps, 1 / dial.value)
    assert np.all(np.sign(np.diff(marked)) == np.sign(exact[1] - exact[0]))
    assert np.max(np.abs(stops_per_doubling * np.log2(marked / exact))) < 0.24


@pytest.mark.parametrize(
    ("marked", "exact"),
    [
        (11, 2**3.5),
        (1.2, 2 ** (2 / 6)),  # printed 0.14 stop off
        (13, 2 ** (22 / 6)),  # on both dials: the asked one, thirds by default, counts
        (9.5, 2 ** (13 / 4)),
        (6.7, 2 ** (11 / 4)),
        (1.78, 2 ** (5 / 6)),  # a phone's way to write f/1.8
        (3.4, 2 ** (7 / 4)),  # nearest is the half stop f/3.3
        (0.95, 0.95),  # 0.15 stop off f/1
        (128, 128),
    ],
)
def test_exact_f_number(marked: float, exact: float) -> None:
    """A typed f-number is taken for the mark that it means (2^(k/6), 2^(k/4)), or for itself."""
    assert exact_f_number(marked) == pytest.approx(exact, rel=1e-12)


@pytest.mark.parametrize(
    ("marked", "exact"),
    [
        (1 / 60, 1 / 64),
        (0.0167, 1 / 64),
        (1 / 3, 2 ** (-5 / 3)),
        (0.3, 2 ** (-5 / 3)),
        (0.25, 0.25),
        (0.7, 2**-0.5),
        (1.5, 2**0.5),
        (30, 32),
        (30.1, 32),
        (32, 32),
        (7, 7),
        (31, 31),
        (45, 45),
        (60, 60),
        (1 / 16000, 1 / 16000),
    ],
)
def test_exact_shutter(marked: float, exact: float) -> None:
    """A typed time is taken for the mark that it means (2^(k/3), 2^(k/2)), or for itself."""
    assert exact_shutter_s(marked) == pytest.approx(exact, rel=1e-12)


@pytest.mark.parametrize(
    ("marked", "exact"),
    [
        (100, 100),
        (125, 100 * 2 ** (1 / 3)),
        (110, 110),
        (140, 100 * 2**0.5),
        (12800, 12800),
        (64, 100 * 2 ** (-2 / 3)),
        (204800, 204800),
    ],
)
def test_exact_iso(marked: float, exact: float) -> None:
    """A typed speed is taken for the mark that it means (100 * 2^(k/3)), or for itself."""
    assert exact_iso(marked) == pytest.approx(exact, rel=1e-12)


def test_asked_dial_is_looked_at_first() -> None:
    """What both dials print alike means what the asked dial means by it."""
    assert exact_f_number(13, Dial.HALVES) == pytest.approx(2 ** (15 / 4))
    assert exact_shutter_s(10, Dial.HALVES) == pytest.approx(2**3.5)
    assert exact_shutter_s(10) == pytest.approx(2 ** (10 / 3))
    assert exact_iso(125, Dial.HALVES) == pytest.approx(100 * 2 ** (1 / 3))


@given(dials, dials)
def test_marks_are_recognised(dial: Dial, asked: Dial) -> None:
    """Each mark's exact value stays itself, whichever dial is asked for."""
    for mark in f_number_marks(dial):
        assert exact_f_number(mark.exact, asked) == pytest.approx(mark.exact, rel=1e-12)
    for mark in time_marks(dial):
        assert exact_shutter_s(mark.exact, asked) == pytest.approx(mark.exact, rel=1e-12)
    for mark in iso_marks(dial):
        assert exact_iso(mark.exact, asked) == pytest.approx(mark.exact, rel=1e-12)


@pytest.mark.parametrize("dial", Dial)
def test_print_of_a_dial_is_recognised(dial: Dial) -> None:
    """What a dial prints is taken for what that dial means."""
    assert [exact_f_number(m.marked, dial) for m in f_number_marks(dial)] == [
        m.exact for m in f_number_marks(dial)
    ]
    assert [exact_shutter_s(m.marked, dial) for m in time_marks(dial)] == [
        m.exact for m in time_marks(dial)
    ]
    assert [exact_iso(m.marked, dial) for m in iso_marks(dial)] == [
        m.exact for m in iso_marks(dial)
    ]


@given(f_numbers, shutters_s, isos)
def test_typed_value_moves_little(f_number: float, shutter_s: float, iso: float) -> None:
    """Reading a value moves it by less than 0.15 stop: f/1.2 is the worst print, 0.14 stop."""
    assert abs(2 * math.log2(exact_f_number(f_number) / f_number)) < 0.15
    assert abs(math.log2(exact_shutter_s(shutter_s) / shutter_s)) < 0.15
    assert abs(math.log2(exact_iso(iso) / iso)) < 0.15


@given(series, dials, st.floats(0.0, 1.0))
def test_nearest_is_within_half_a_step(
    one: tuple[Callable[[Dial], tuple[Mark, ...]], int], dial: Dial, place: float
) -> None:
    """Anywhere inside a series the nearest mark is at most half a step off."""
    make, stops_per_doubling = one
    marks = make(dial)
    exact = marks[0].exact ** (1 - place) * marks[-1].exact ** place
    off = stops_per_doubling * abs(math.log2(nearest(marks, exact).exact / exact))
    assert off <= 0.5 / dial.value + 1e-9


@given(series, dials, st.floats(0.0, 1.0))
def test_at_most_and_at_least_enclose(
    one: tuple[Callable[[Dial], tuple[Mark, ...]], int], dial: Dial, place: float
) -> None:
    """The marks below and above enclose a value and are the same or neighbours."""
    marks = one[0](dial)
    exact = marks[0].exact ** (1 - place) * marks[-1].exact ** place
    below, above = at_most(marks, exact), at_least(marks, exact)
    assert below.exact <= exact * (1 + 1e-6)
    assert above.exact >= exact * (1 - 1e-6)
    assert abs(marks.index(above) - marks.index(below)) <= 1


@pytest.mark.parametrize("off", [1.0, 1 + 1e-9, 1 - 1e-9])
def test_rounding_does_not_skip_a_mark(off: float) -> None:
    """A value that is a mark but for the last digits is that mark, from both sides."""
    marks = f_number_marks()
    assert at_most(marks, marks[21].exact * off) is marks[21]
    assert at_least(marks, marks[21].exact * off) is marks[21]


def test_nothing_beyond_the_ends() -> None:
    """No mark at most half of the smallest or at least twice the largest: the error says why."""
    marks = f_number_marks()
    with pytest.raises(OutOfDomainError) as caught:
        at_most(marks, 0.5)
    assert (caught.value.value, caught.value.low, caught.value.high) == (0.5, 1.0, 64.0)
    with pytest.raises(OutOfDomainError):
        at_least(marks, 128.0)


@given(series, dials, st.data())
def test_steps_there_and_back(
    one: tuple[Callable[[Dial], tuple[Mark, ...]], int], dial: Dial, data: st.DataObject
) -> None:
    """Stepping forth and back ends at the same mark."""
    marks = one[0](dial)
    start, end = (data.draw(st.integers(0, len(marks) - 1)) for _ in range(2))
    there = step_by(marks, marks[start].exact, end - start)
    assert there is marks[end]
    assert step_by(marks, there.exact, start - end) is marks[start]


def test_steps_end_with_the_series() -> None:
    """Stepping over an end is refused, and the error says how many steps there are."""
    marks = iso_marks()
    with pytest.raises(OutOfDomainError) as caught:
        step_by(marks, 100.0, -7)
    assert (caught.value.value, caught.value.low, caught.value.high) == (-7, -6, 30)
    with pytest.raises(OutOfDomainError):
        step_by(marks, 100.0, 31)


@pytest.mark.parametrize(
    ("exact_s", "label"),
    [
        (2**5, "30 s"),
        (0.5, "1/2 s"),
        (0.25, "1/4 s"),
        (2 ** (-5 / 3), "0.3 s"),
        (2 ** (1 / 3), "1.3 s"),
        (2 ** (-2 / 3), "0.6 s"),
        (1 / 64, "1/60 s"),
        (0.26, "1/4 s"),
        (2**-13, "1/8000 s"),
        (2**-14, "1/16384 s"),
        (31, "30 s"),
        (45.2, "45 s"),
        (90, "90 s"),
        (120, "2 min"),
        (128, "2 min 10 s"),
        (150, "2 min 30 s"),
        (480, "8 min"),
    ],
)
def test_shutter_label(exact_s: float, label: str) -> None:
    """A time is shown as the dial shows it, or as a watch does beyond the dial."""
    assert shutter_label(exact_s) == label


def test_labels_of_the_other_dial() -> None:
    """Half stops show the half stops' marks."""
    assert shutter_label(2**-5.5, Dial.HALVES) == "1/45 s"
    assert f_number_label(2 ** (13 / 4), Dial.HALVES) == "f/9.5"
    assert iso_label(100 * 2**0.5, Dial.HALVES) == "ISO 140"


@pytest.mark.parametrize(
    ("exact", "label"),
    [(2**3.5, "f/11"), (10.9, "f/11"), (2**0.5, "f/1.4"), (0.95, "f/1"), (90.5, "f/90")],
)
def test_f_number_label(exact: float, label: str) -> None:
    """An f-number is shown as the dial shows it; beyond f/64 it shows itself."""
    assert f_number_label(exact) == label


@pytest.mark.parametrize(
    ("exact", "label"),
    [
        (100 * 2 ** (1 / 3), "ISO 125"),
        (110, "ISO 100"),
        (409_600, "ISO 409600"),
        (12, "ISO 12"),
    ],
)
def test_iso_label(exact: float, label: str) -> None:
    """A speed is shown as the dial shows it; beyond the series it shows itself."""
    assert iso_label(exact) == label


@pytest.mark.parametrize("bad", NEVER_POSITIVE)
@pytest.mark.parametrize(
    "call",
    [
        exact_f_number,
        exact_shutter_s,
        exact_iso,
        f_number_label,
        shutter_label,
        iso_label,
        lambda bad: nearest(f_number_marks(), bad),
        lambda bad: at_most(f_number_marks(), bad),
        lambda bad: at_least(f_number_marks(), bad),
        lambda bad: step_by(f_number_marks(), bad, 1),
    ],
)
def test_bad_numbers_are_refused(call: Callable[[float], object], bad: float) -> None:
    """Zero, negative, NaN and infinity are no setting."""
    with pytest.raises(OutOfDomainError):
        call(bad)
