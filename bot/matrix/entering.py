"""Rooms that the bot is about to enter, kept in a file: a server tells of an invitation once."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

from bot.matrix.private_file import read_private, write_private


class Entering:
    """Accepted invitations that are not settled yet, by whom each room was offered.

    Args:
        path: the file; it outlives a restart.
    """

    def __init__(self, path: Path) -> None:
        self._path = path
        kept = read_private(path) or {"rooms": {}}
        self._rooms: dict[str, str] = dict(kept["rooms"])
        self._saved = dict(self._rooms)

    @property
    def rooms(self) -> Mapping[str, str]:
        """The rooms to enter, and by whose invitation."""
        return self._rooms

    def add(self, rooms: Mapping[str, str]) -> None:
        """Note rooms, before the sync that told of them is forgotten."""
        self._rooms |= rooms

    def drop(self, room_id: str) -> None:
        """The room is entered, or can't be."""
        self._rooms.pop(room_id, None)

    def save(self) -> None:
        """Write the file, when something changed."""
        if self._rooms != self._saved:
            write_private(self._path, {"rooms": self._rooms})
            self._saved = dict(self._rooms)
