"""One frame server for the corpus, and the table of outcomes at the end of the run."""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Iterable, Iterator

import pytest

from bot.runtime.frames import FrameServer
from tests.hostile.cases import Case, Seen, measure_all, table

#: Measures cases and keeps what was seen for the table.
Measure = Callable[[Iterable[Case]], list[Seen]]

_ALL_SEEN = pytest.StashKey[list[Seen]]()


@pytest.fixture(scope="session")
def measure(pytestconfig: pytest.Config) -> Iterator[Measure]:
    """Each file through a real process of its own, two at the same time."""
    seen = pytestconfig.stash.setdefault(_ALL_SEEN, [])
    server = FrameServer(workers=2)

    def run(cases: Iterable[Case]) -> list[Seen]:
        found = runner.run(measure_all(server, cases))
        seen.extend(found)
        return found

    with asyncio.Runner() as runner:
        runner.run(server.start())
        yield run
        runner.run(server.stop())


def pytest_terminal_summary(
    terminalreporter: pytest.TerminalReporter, config: pytest.Config
) -> None:
    """Print which kinds of files came to what."""
    seen = config.stash.get(_ALL_SEEN, [])
    if seen:
        terminalreporter.section("hostile files: kinds and outcomes")
        for line in table(seen):
            terminalreporter.write_line(line)
