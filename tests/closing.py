"""Tables that a run of the tests prints at its end, also when several processes share it."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

import pytest

#: Takes a table: its title and its lines.
TellAtTheEnd = Callable[[str, list[str]], None]

_TABLES: Final = pytest.StashKey[list[tuple[str, list[str]]]]()
#: Under this name a process that runs a part of the tests hands its tables over.
_HANDED_OVER: Final = "closing_tables"


def _tables(config: pytest.Config) -> list[tuple[str, list[str]]]:
    return config.stash.setdefault(_TABLES, [])


@pytest.fixture(scope="session")
def tell_at_the_end(pytestconfig: pytest.Config) -> TellAtTheEnd:
    """Keeps a table for the end of the run."""
    return lambda title, lines: _tables(pytestconfig).append((title, lines))


def pytest_sessionfinish(session: pytest.Session) -> None:
    """Hand the tables over, in a process that runs a part of the tests."""
    output = getattr(session.config, "workeroutput", None)
    if output is not None:
        output[_HANDED_OVER] = _tables(session.config)


@pytest.hookimpl(optionalhook=True)
def pytest_testnodedown(node: object) -> None:
    """Take them from such a process; nothing comes from one that died."""
    config, output = getattr(node, "config"), getattr(node, "workeroutput", {})  # noqa: B009
    _tables(config).extend((title, lines) for title, lines in output.get(_HANDED_OVER, []))


def pytest_terminal_summary(
    terminalreporter: pytest.TerminalReporter, config: pytest.Config
) -> None:
    """Print them."""
    for title, lines in _tables(config):
        terminalreporter.section(title)
        for line in lines:
            terminalreporter.write_line(line)
