"""Spelling, numbers with units, answers that are only a number."""

from __future__ import annotations

import pytest

from bot.dialogue.reading import number_answer
from bot.dialogue.reading.normal import LONGEST_TEXT, normalise
from bot.dialogue.reading.numbers import scan


@pytest.mark.parametrize(
    ("typed", "plain"),
    [
        ("  F/11\u00a0\u2009ISO 100 ", "f/11 iso 100"),
        ("ƒ⁄8", "f/8"),
        ("12′ 6″", "12' 6\""),
        ("it’s “fine”", 'it\'s "fine"'),
        ("24–70 — or −2", "24-70 - or -2"),
        ("¼", "1/4"),
        ("1½ stops", "1 1/2 stops"),
        ("44×33", "formatmedium"),
        ("one\ntwo", "one; two"),
        ("half a second", "1/2 second"),
        ("a quarter of a second", "1/4 of a second"),
        ("a third of a stop under", "1/3 stop under"),
        ("two-thirds over", "2/3 over"),
        ("a stop and a half", "1 1/2 stop"),
        ("2/3 of a stop under", "2/3 stop under"),
        ("three quarters of a stop", "3/4 stop"),
        ("a metre and a half", "1.5 metre"),
        ("an hour and a half", "an hour and a half"),
        ("2 full seconds", "2 seconds"),
        ("three and a half stops", "3 1/2 stops"),
        ("one and two thirds under", "1 2/3 under"),
        ("a couple of stops", "2 stops"),
        ("f eleven", "f 11"),
        ("f five point six", "f 5.6"),
        ("twenty-four megapixels", "24 megapixels"),
        ("a 60th", "1/60"),
        ("micro 4/3", "formatmft"),
        ("35mm sensor", "formatfull"),
        ("dont", "don't"),
        ("12 m (40 ft) tall", "12 m tall"),
        ("minus one", "minus 1"),
        # Words that only look like numbers stay words.
        ("the two of us", "the two of us"),
        ("a third frame", "a third frame"),
        ("plus one of my friends", "plus one of my friends"),
        ("give me a second", "give me a second"),
    ],
)
def test_one_spelling(typed: str, plain: str) -> None:
    """Signs, fractions, number words and names of formats come out in one spelling."""
    assert normalise(typed) == plain


def test_long_messages_are_cut() -> None:
    """Nothing is read beyond the longest text that is looked at."""
    assert len(normalise("9" * (LONGEST_TEXT + 5))) == LONGEST_TEXT


@pytest.mark.parametrize(
    ("plain", "expected"),
    [
        ("12 m", [(12, "m")]),
        ("9m", [(9, "m")]),
        ("1,5 m", [(1.5, "m")]),
        (".3s", [(0.3, "s")]),
        ("iso 1,600", [(1600, "iso")]),
        ("12, 18, 1.5", [(12, ""), (18, ""), (1.5, "")]),
        ("12' 6\"", [(12.5, "ft")]),
        ("1m20", [(1.2, "m")]),
        ('30"', [(30, "quote")]),
        ('1"3', [(1.3, "s")]),
        ('he said "under 10"', [(10, "")]),
        ("f/5,6", [(5.6, "f")]),
        ("aperture is 8", [(8, "f")]),
        ("100iso", [(100, "iso")]),
        ("iso100,24mm", [(100, "iso"), (24, "mm")]),
        ("f/11,24mm", [(11, "f"), (24, "mm")]),
        ("f/8,5 m", [(8, "f"), (5, "m")]),
        ("1/4 iso 100", [(0.25, ""), (100, "iso")]),
        ("100 iso 18 m", [(100, "iso"), (18, "m")]),
        ("40,60,5", [(40, ""), (60, ""), (5, "")]),
        ("nd64", [(64, "nd")]),
        ("1/60th", [(1 / 60, "")]),
        ("1/4 of a second", [(0.25, "s")]),
        ("1/0 s", [(0, "s")]),
        ("1 1/3 stops", [(4 / 3, "stop")]),
        ("8 1/4 100", [(8, ""), (0.25, ""), (100, "")]),
        ("-1/3", [(-1 / 3, "")]),
        ("1.5 m/s", [(1.5, "m/s")]),
        ("2.5 mi", [(2.5, "mi")]),
        ("24 mp", [(24, "mp")]),
    ],
)
def test_numbers_with_their_units(plain: str, expected: list[tuple[float, str]]) -> None:
    """Each number is found once, with the unit before or behind it."""
    found = [(quantity.value, quantity.unit) for quantity in scan(plain)]
    assert [unit for _, unit in found] == [unit for _, unit in expected]
    assert [value for value, _ in found] == pytest.approx([value for value, _ in expected])


def test_ranges_are_one_quantity() -> None:
    """`24-70`, `24 to 70` and `1 to 2 m` are ranges; a sign is no range."""
    assert [(q.value, q.high, q.unit) for q in scan("24-70mm")] == [(24, 70, "mm")]
    assert [(q.value, q.high) for q in scan("24 to 70")] == [(24, 70)]
    assert [(q.value, q.high, q.unit) for q in scan("1 to 2 m")] == [(1, 2, "m")]
    assert [(q.value, q.signed, q.is_range) for q in scan("at -2")] == [(-2, True, False)]


@pytest.mark.parametrize(
    "plain",
    [
        "2027-06-18",
        "18 june 2027",
        "12/10/27",
        "18:40",
        "8:31pm",
        "60 %",
        "10-15 °c",
        "5 degrees",
        "44.1512, -71.3498",
        "+49 170 1234567",
        "555-0142",
        "https://example.org/24-70",
        "@mara:example.org",
        "the 2nd one",
        "trail 7b",
        "back at 16.00",
        "(1)",
    ],
)
def test_what_holds_digits_and_is_no_measure(plain: str) -> None:
    """Dates, clock times, shares, coordinates, telephone numbers and names hold no quantity."""
    assert scan(plain) == ()


@pytest.mark.parametrize(
    ("text", "number"),
    [
        ("2", 2),
        (" 2. ", 2),
        ("2)", 2),
        ("(2)", 2),
        ("two", 2),
        ("no 2", 2),
        ("No. 2", 2),
        ("option 3 please", 3),
        ("#1", 1),
        ("0", 0),
        ("2 m", None),
        ("2 lenses", None),
        ("1/4", None),
        ("-2", None),
        ("+1", None),
        ("1.5", None),
        ("100", None),
        ("yes", None),
        ("", None),
    ],
)
def test_answers_that_are_only_a_number(text: str, number: int | None) -> None:
    """A whole message that is an option's number is one; anything more is not."""
    assert number_answer(text) == number
