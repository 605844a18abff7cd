"""What a table was learned from: a fingerprint beside its numbers tells when to train anew."""

from __future__ import annotations

import hashlib
from pathlib import Path

import numpy as np


def fingerprint(*parts: object) -> str:
    """One short text for all that a recipe takes; another one when anything of it changes.

    Args:
        parts: what is taken; its `repr` must be the same in every process (lists, not sets).
    """
    hashed = hashlib.sha256()
    for part in parts:
        hashed.update(repr(part).encode())
    return hashed.hexdigest()


def stored_fingerprint(numbers: Path) -> str:
    """The fingerprint that was written beside the numbers of a table, as `learned_from`."""
    with np.load(numbers) as named:
        return str(named["learned_from"])
