"""A world for a runtime: a real database file and a homeserver in memory."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.runtime.fakes import World


@pytest.fixture
def world(tmp_path: Path) -> World:
    """An empty world."""
    return World(tmp_path)
