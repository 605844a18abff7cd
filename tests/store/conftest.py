"""A store on a real SQLite file, and on a real PostgreSQL: the same tests for both."""

from __future__ import annotations

from collections.abc import AsyncIterator
from pathlib import Path

import pytest

from bot.store.database import Database
from bot.store.store import Store


@pytest.fixture
def sqlite_url(tmp_path: Path) -> str:
    """Address of a file that does not exist yet, in a folder that does not either."""
    return f"sqlite:///{tmp_path / 'data' / 'linn.db'}"


@pytest.fixture
async def postgres_url(request: pytest.FixtureRequest) -> AsyncIterator[str]:
    """Address of a database on a real server: empty, for the fixture `store` with its tables."""
    migrated = "store" in request.fixturenames
    async with request.getfixturevalue("postgres").database(migrated=migrated) as address:
        yield address


@pytest.fixture(params=["sqlite", "postgres"])
def url(request: pytest.FixtureRequest) -> str:
    """Address of a database that is empty or not there yet."""
    address: str = request.getfixturevalue(f"{request.param}_url")
    return address


@pytest.fixture
async def store(url: str) -> AsyncIterator[Store]:
    """An opened store on that database."""
    opened = Store(Database(url))
    await opened.open()
    yield opened
    await opened.close()
