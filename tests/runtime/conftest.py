"""A world for a runtime: a real database file and a homeserver in memory."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.runtime.fakes import World


@pytest.fixture
def world(tmp_path: Path, sqlite_pattern: bytes) -> World:
    """An empty world, but for the tables of its database."""
    (tmp_path / "linn.db").write_bytes(sqlite_pattern)
    return World(tmp_path)
