"""What can be wrong with an input, carrying the numbers."""

from __future__ import annotations

import math
from enum import Enum


class LinnError(Exception):
    """Anything that the core refuses; carries numbers and keys, never prose."""


class OutOfDomainError(LinnError):
    """A value lies outside the range in which a formula holds.

    Args:
        name: what the value is, as the parameter is called (`distance_m`).
        value: the value that was given.
        unit: its unit, "" for a pure number.
        low: lowest allowed value, in the same unit.
        high: highest allowed value, in the same unit.
    """

    def __init__(self, name: str, value: float, unit: str, low: float, high: float) -> None:
        self.name = name
        self.value = value
        self.unit = unit
        self.low = low
        self.high = high
        super().__init__(f"{name} = {value:g} {unit} is outside {low:g} to {high:g}")


class FrameFault(Enum):
    """Why a shared file could not be read as a picture; the value is what is stored.

    TOO_SLOW, CRASHED and GONE are not raised in the core: who runs it and who fetches files for
    it find them.
    """

    EMPTY = "empty"
    NOT_A_PICTURE = "not_a_picture"
    KIND_NOT_READ = "kind_not_read"
    DAMAGED = "damaged"
    TOO_MANY_BYTES = "too_many_bytes"
    TOO_MANY_PIXELS = "too_many_pixels"
    TOO_SMALL = "too_small"
    TOO_SLOW = "too_slow"
    TOO_MUCH_MEMORY = "too_much_memory"
    CRASHED = "crashed"
    GONE = "gone"


class UnreadableFrameError(LinnError):
    """A shared file is no picture that can be measured.

    Args:
        fault: the kind of trouble.
        numbers: what the sentence for the person needs (`pixels`, `limit`, …).
    """

    def __init__(self, fault: FrameFault, **numbers: float) -> None:
        self.fault = fault
        self.numbers = numbers
        super().__init__(f"{fault.value} {numbers}")


def within(name: str, value: float, unit: str, low: float, high: float) -> None:
    """Refuse a value outside `low` to `high`, NaN included.

    Args:
        name: what the value is, as the parameter is called.
        value: in `unit`.
        unit: its unit, "" for a pure number.
        low: lowest allowed value; may be infinite.
        high: highest allowed value; likewise.

    Raises:
        OutOfDomainError: `value` is NaN or outside the closed range.
    """
    if math.isnan(value) or not low <= value <= high:
        raise OutOfDomainError(name, value, unit, low, high)
