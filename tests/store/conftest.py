"""A store on a real SQLite file, and on a real PostgreSQL: the same tests for both."""

from __future__ import annotations

from collections.abc import AsyncIterator
from pathlib import Path
from typing import Final

import pytest

from bot.store.database import Database
from bot.store.store import Store

#: Fixtures that open a store on the database: it has its tables then, and is empty otherwise.
_OPENING: Final = {"store", "house"}


@pytest.fixture
def sqlite_url(tmp_path: Path, request: pytest.FixtureRequest) -> str:
    """Address of a file with its tables, or of one that does not exist yet, as its folder."""
    path = tmp_path / "data" / "linn.db"
    if _OPENING & set(request.fixturenames):
        path.parent.mkdir(mode=0o700)
        path.write_bytes(request.getfixturevalue("sqlite_pattern"))
    return f"sqlite:///{path}"


@pytest.fixture
async def postgres_url(request: pytest.FixtureRequest) -> AsyncIterator[str]:
    """Address of a database on a real server, with its tables or empty."""
    migrated = bool(_OPENING & set(request.fixturenames))
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
