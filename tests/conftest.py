"""What all tests share: a PostgreSQL server, their order, what of them is watched, and how.

A busy machine is no failure of a property test, and each run draws the same;
`HYPOTHESIS_PROFILE=search` draws anew each time, to look for what nobody has thought of.
"""

from __future__ import annotations

import asyncio
import os
from collections.abc import Iterator
from typing import Final

import pytest
from hypothesis import settings

from bot.store.database import Database
from tests.closing import (
    pytest_sessionfinish,
    pytest_terminal_summary,
    pytest_testnodedown,
    tell_at_the_end,
)
from tests.postgres import PostgresServer, running_postgres
from tests.watching import (
    pytest_runtest_call,
    pytest_runtest_protocol,
    pytest_runtest_setup,
    pytest_runtest_teardown,
)

__all__ = [
    "postgres",
    "pytest_runtest_call",
    "pytest_runtest_protocol",
    "pytest_runtest_setup",
    "pytest_runtest_teardown",
    "pytest_sessionfinish",
    "pytest_terminal_summary",
    "pytest_testnodedown",
    "tell_at_the_end",
]

#: What takes longest. It comes first, so that at the end no core waits for another's long file.
_LONGEST: Final = (
    "tests/hostile/",
    "tests/runtime/test_cluster.py",
    "tests/figures/",
    "tests/core/test_frame_hostile.py",
    "tests/runtime/test_kills.py",
    "tests/backup/",
    "tests/dialogue/test_danger",
    "tests/dialogue/test_reading",
    "tests/dialogue/test_message_rules.py",
    "tests/runtime/",
    "tests/core/",
)

settings.register_profile("same", deadline=None, derandomize=True)
settings.register_profile("search", deadline=None)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "same"))


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Long files first, else all in their order."""
    items.sort(key=_place)


def _place(item: pytest.Item) -> int:
    found = (place for place, path in enumerate(_LONGEST) if item.nodeid.startswith(path))
    return next(found, len(_LONGEST))


@pytest.fixture(scope="session")
def postgres() -> Iterator[PostgresServer]:
    """A real PostgreSQL server, started when the first test asks."""
    with running_postgres() as server:
        yield server


@pytest.fixture(scope="session")
def sqlite_pattern(tmp_path_factory: pytest.TempPathFactory) -> bytes:
    """A database file with the newest tables, to be copied: quicker than making them each time."""
    path = tmp_path_factory.mktemp("pattern") / "linn.db"

    async def make() -> None:
        database = Database(f"sqlite:///{path}")
        await database.open()
        await database.close()

    with asyncio.Runner() as runner:
        runner.run(make())
    return path.read_bytes()
