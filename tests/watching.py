"""What is watched for coverage: what runs in a test, and not in every test."""

from __future__ import annotations

import sys
from collections.abc import Generator
from typing import TYPE_CHECKING, Final

import pytest

if TYPE_CHECKING:
    from _typeshed import TraceFunction

#: What goes thousands of times through branches that other tests enter, too, or works in processes
#: of its own. To watch each line of it would take as long again.
_UNWATCHED: Final = (
    "tests/dialogue/test_danger.py::test_messages_full_of_facts_are_harmless",
    "tests/dialogue/test_danger_meaning.py::test_even_half_",
    "tests/dialogue/test_danger_meaning.py::test_imagined_",
    "tests/dialogue/test_danger_meaning.py::test_reported_half_",
    "tests/dialogue/test_danger_meaning.py::test_weights_",
    "tests/dialogue/test_danger_sense.py::test_network_",
    "tests/dialogue/test_danger_slips.py::test_words_",
    "tests/dialogue/test_meaning_sense.py::test_fits_",
    "tests/dialogue/test_message_rules.py::test_any_",
    "tests/dialogue/test_reading_examples.py",
    "tests/dialogue/test_reading_laws.py",
    "tests/dialogue/test_texts.py",
    "tests/figures/",
    "tests/hostile/",
    "tests/runtime/test_kills.py",
)
#: What watches this thread, of a test that is to be watched.
_WATCH: Final[pytest.StashKey[TraceFunction | None]] = pytest.StashKey()


@pytest.hookimpl(wrapper=True, tryfirst=True)
def pytest_runtest_protocol(item: pytest.Item) -> Generator[None, object, object]:
    """Watch nothing between the parts of a test: pytest's own work would take twice its time."""
    watch = sys.gettrace()
    item.stash[_WATCH] = None if item.nodeid.startswith(_UNWATCHED) else watch
    sys.settrace(None)
    try:
        return (yield)
    finally:
        sys.settrace(watch)


@pytest.hookimpl(wrapper=True, trylast=True)
def _watched(item: pytest.Item) -> Generator[None, object, object]:
    sys.settrace(item.stash[_WATCH])
    try:
        return (yield)
    finally:
        sys.settrace(None)


pytest_runtest_setup = pytest_runtest_call = pytest_runtest_teardown = _watched
