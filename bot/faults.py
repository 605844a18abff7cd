"""What may be logged of an exception: its type and the lines of code, never its words."""

from __future__ import annotations

import traceback
from pathlib import Path
from typing import Final

#: How many lines of code are named, the innermost first (own rule: enough to find the place).
_DEPTH: Final = 6


def where_it_broke(error: BaseException) -> str:
    """Type and place of an exception.

    The text of an exception can quote what a person wrote, so it is left out.

    Args:
        error: as it was caught; of a group, each member is described.
    """
    if isinstance(error, BaseExceptionGroup):
        return "; ".join(where_it_broke(member) for member in error.exceptions)
    frames = traceback.extract_tb(error.__traceback__)[-_DEPTH:]
    places = [f"{Path(frame.filename).name}:{frame.lineno}" for frame in reversed(frames)]
    return " < ".join([type(error).__name__, *places])
