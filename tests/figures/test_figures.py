"""The figures' table, and a small form of the quick topics."""

from __future__ import annotations

import pytest

from tests.figures import clipping, raw
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


def test_clipping_in_small(monkeypatch: pytest.MonkeyPatch) -> None:
    """On a few pictures shares, pixels and names are not far from their aims."""
    monkeypatch.setattr(clipping, "_SCENES", 3)
    monkeypatch.setattr(clipping, "_MADE", 6)
    monkeypatch.delenv("FRAMES_DIR", raising=False)
    values = {(one.material, one.name): one.value for one in clipping.figures(5)}
    assert values[Material.MADE, "clipped share without loss, worst off"] == 0
    assert values[Material.RENDERED, "precision, sRGB curve"] > 0.93
    assert values[Material.RENDERED, "recall, sRGB curve"] > 0.95
    assert values[Material.RENDERED, "share, sRGB curve, median off"] < 0.001
    assert values[Material.RENDERED, "white of the water, sRGB curve, off [stops]"] < 1 / 6
    assert values[Material.MADE, "names that are right"] > 0.75
