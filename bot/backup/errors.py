"""Why a backup can't be made or brought back, in sentences for the operator."""

from __future__ import annotations

from bot.exits import Exit


class BackupError(Exception):
    """It can't be done.

    Args:
        sentence: what is wrong, and what helps.
    """

    exit_code = Exit.CANNOT_CREATE

    def __init__(self, sentence: str) -> None:
        super().__init__(sentence)


class ArchiveError(BackupError):
    """The archive is damaged, or is none."""

    exit_code = Exit.ARCHIVE_DAMAGED
