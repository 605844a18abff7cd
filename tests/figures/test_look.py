"""A small form of the figures of the look."""

from __future__ import annotations

import pytest

from tests.figures import look
from tests.figures.figure import Material


def test_a_few_frames_hold_what_many_do(monkeypatch: pytest.MonkeyPatch) -> None:
    """Bounds for few frames: most are told, nearly all of these right, no sharp one as smooth."""
    monkeypatch.setattr(look, "_FRAMES", 5)
    monkeypatch.setattr(look, "_SPOILED", 1)
    monkeypatch.delenv("FRAMES_DIR", raising=False)
    found = {(one.material, one.name): one.value for one in look.figures(3)}
    assert found[Material.RENDERED, "spoken"] >= 0.5
    assert found[Material.RENDERED, "this look or its neighbour"] >= 0.6
    assert found[Material.RENDERED, "sharp called smooth"] == 0
    assert found[Material.RENDERED, "defocus caught"] == 1
    assert found[Material.RENDERED, "shake caught"] == 1
    assert found[Material.MADE, "sharp called smooth"] == 0
    assert found[Material.RENDERED, "share by formula, median error"] < 0.2
