"""The table of rates, its halves, and the command that prints it."""

from __future__ import annotations

import json

import pytest

from tests.dialogue.reading_checks import count, rows
from tests.people.__main__ import main, topics
from tests.people.rate import Rate, half_of, table


def test_the_table_says_what_is_short() -> None:
    """An aim that is not reached stands out, and an aim may be a most."""
    lines = table(
        [
            Rate("facts", "odd", "recall", 9, 10, 0.95),
            Rate("facts", "odd", "alarms", 1, 100, 0.02, at_least=False),
            Rate("facts", "even", "noted", 1, 3),
        ]
    )
    assert [line.split()[-1] for line in lines[1:]] == ["SHORT", "reached", "3"]


@pytest.mark.parametrize(
    ("at_least", "reached"), [(True, True), (False, True)], ids=["least", "most"]
)
def test_without_a_case_nothing_is_short(*, at_least: bool, reached: bool) -> None:
    """A slot of which a half does not speak reaches whatever it should."""
    assert Rate("facts", "odd", "none", 0, 0, 0.5, at_least=at_least).reached is reached


def test_lines_count_from_one_and_a_header_is_one() -> None:
    """The first line is odd; behind a header the first is even."""
    assert half_of("abcd", "odd") == ["a", "c"]
    assert half_of("abcd", "even") == ["b", "d"]
    assert half_of("abcd", "even", first_line=2) == ["a", "c"]


@pytest.mark.parametrize(
    ("noted", "totals"), [(True, (2, 0, 1)), (False, (1, 0, 0))], ids=["noted", "left out"]
)
def test_notes_count_both_read_and_told_or_not_at_all(
    *, noted: bool, totals: tuple[int, int, int]
) -> None:
    """Where the notes on how a message is read are left out, its label's are, too."""
    facts = {"distance_m": 22.86, "units": "imperial", "ask_what_if": True}
    told = json.dumps({"text": "25 yards to the base", "facts": facts})
    assert count(rows([told]), noted=noted).totals() == totals


def test_the_command_prints_the_rates_and_what_is_misread(
    capsys: pytest.CaptureFixture[str],
) -> None:
    """Facts are a topic; the half on which rules may be written can be looked into."""
    assert "facts" in topics()
    main(["--topic", "facts", "--half", "even", "--misses"])
    said = capsys.readouterr().out
    assert "all slots: precision" in said
    assert "odd" not in said.splitlines()[-1]
