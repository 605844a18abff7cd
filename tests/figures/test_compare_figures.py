"""A small form of the figures of comparing and averaging, with honest bounds."""

from __future__ import annotations

import pytest

from tests.figures import average, compare
from tests.figures.figure import Material


def test_compare_keeps_its_bounds(monkeypatch: pytest.MonkeyPatch) -> None:
    """A few pairs: all aligned, no other view taken for one, no shifted pair out of order."""
    monkeypatch.setattr(compare, "RENDERED_CASES", 3)
    monkeypatch.setattr(compare, "SHIFTED_CASES", 4)
    monkeypatch.setattr(compare, "STOPS_CASES", 2)
    found = {(one.material, one.name): one.value for one in compare.figures(12)}
    assert found[Material.RENDERED, "aligned"] == 1
    assert found[Material.RENDERED, "other views taken for one"] == 0
    assert found[Material.SHIFTED, "order right, of those told"] == 1
    assert found[Material.RENDERED, "stops, sRGB curve: median error"] < 0.05


def test_average_keeps_its_bounds(monkeypatch: pytest.MonkeyPatch) -> None:
    """One case each: the noise lies by the law, and a visitor is refused."""
    monkeypatch.setattr(average, "CASES", 1)
    found = {one.name: one.value for one in average.figures(11)}
    assert found["noise of an average over the law, tripod: median error"] < 0.08
    assert found["visited frames refused"] == 1
