"""The mark that a restore leaves in the data folder: what is older was for the bot before."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path
from typing import Final

from bot.matrix.private_file import read_private, write_private

_NAME: Final = "restored.json"


def write_mark(folder: Path, not_before: datetime) -> None:
    """Keep the time before which nothing is answered."""
    write_private(folder / _NAME, {"not_before": not_before.isoformat()})


def not_before(folder: Path) -> datetime | None:
    """The time before which nothing is answered, None when all is.

    Raises:
        ValueError: the file holds something else.
    """
    mark = read_private(folder / _NAME)
    return None if mark is None else datetime.fromisoformat(str(mark.get("not_before")))
