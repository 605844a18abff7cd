"""One frame server for the corpus, and the table of outcomes at the end of the run."""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Iterable, Iterator

import pytest

from bot.runtime.frames import FrameServer
from tests.closing import TellAtTheEnd
from tests.hostile.cases import Case, Seen, measure_all, table

#: Measures cases and keeps what was seen for the table.
Measure = Callable[[Iterable[Case]], list[Seen]]


@pytest.fixture(scope="session")
def measure(tell_at_the_end: TellAtTheEnd) -> Iterator[Measure]:
    """Each file through a real process of its own, two at the same time."""
    seen: list[Seen] = []
    server = FrameServer(workers=2)

    def run(cases: Iterable[Case]) -> list[Seen]:
        found = runner.run(measure_all(server, cases))
        seen.extend(found)
        return found

    with asyncio.Runner() as runner:
        runner.run(server.start())
        yield run
        runner.run(server.stop())
    tell_at_the_end("hostile files: kinds and outcomes", table(seen))
