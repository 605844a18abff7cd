"""One test of many cases: all are tried, and each that fails is named, with what failed in it."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import TypeVar

_Case = TypeVar("_Case")


def holds_for_every(cases: Iterable[_Case], check: Callable[[_Case], None]) -> None:
    """Try all cases; a test of its own for each would take longer than most checks.

    Raises:
        ExceptionGroup: what failed, each with its case as a note.
    """
    faults = []
    for case in cases:
        try:
            check(case)
        except Exception as fault:
            fault.add_note(f"in the case {case!r}")
            faults.append(fault)
    if faults:
        raise ExceptionGroup("what should hold for every case", faults)
