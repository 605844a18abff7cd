"""A store on a real SQLite file."""

from __future__ import annotations

from collections.abc import AsyncIterator
from pathlib import Path

import pytest

from bot.store.database import Database
from bot.store.store import Store


@pytest.fixture
def url(tmp_path: Path) -> str:
    """Address of a database that does not exist yet, in a folder that does not either."""
    return f"sqlite:///{tmp_path / 'data' / 'linn.db'}"


@pytest.fixture
async def store(url: str) -> AsyncIterator[Store]:
    """An opened store on that database."""
    opened = Store(Database(url))
    await opened.open()
    yield opened
    await opened.close()
