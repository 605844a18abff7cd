"""What all tests share: a PostgreSQL server, and how the property tests run.

A busy machine is no failure of a property test, and each run draws the same;
`HYPOTHESIS_PROFILE=search` draws anew each time, to look for what nobody has thought of.
"""

from __future__ import annotations

import os
from collections.abc import Iterator

import pytest
from hypothesis import settings

from tests.closing import (
    pytest_sessionfinish,
    pytest_terminal_summary,
    pytest_testnodedown,
    tell_at_the_end,
)
from tests.postgres import PostgresServer, running_postgres

__all__ = [
    "postgres",
    "pytest_sessionfinish",
    "pytest_terminal_summary",
    "pytest_testnodedown",
    "tell_at_the_end",
]

settings.register_profile("same", deadline=None, derandomize=True)
settings.register_profile("search", deadline=None)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "same"))


@pytest.fixture(scope="session")
def postgres() -> Iterator[PostgresServer]:
    """A real PostgreSQL server, started when the first test asks."""
    with running_postgres() as server:
        yield server
