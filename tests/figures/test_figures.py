"""The figures' table, and a small form of the quick topics."""

from __future__ import annotations

import pytest

from tests.figures import raw
from tests.figures.__main__ import main, topics
from tests.figures.figure import Figure, Material, table


def test_the_table_says_what_is_short() -> None:
    """An aim that is not reached stands out, and an aim may be a most."""
    lines = table(
        [
            Figure("raw", Material.MADE, "recall", 0.5, 10, 0.9),
            Figure("raw", Material.REAL, "error", 0.01, 3, 0.05, at_least=False),
            Figure("raw", Material.REAL, "noted", 0.01, 3),
        ]
    )
    assert [line.split()[-1] for line in lines[1:]] == ["SHORT", "reached", "3"]


def test_raw_reaches_its_aims(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """The command prints its seed and the figures, and ends with 0 when all aims are reached."""
    monkeypatch.setattr(raw, "_SCENES", 2)
    assert "raw" in topics()
    assert main(["--topic", "raw", "--seed", "7"]) == 0
    said = capsys.readouterr().out
    assert said.startswith("seed 7\n")
    assert "room to the right" in said
