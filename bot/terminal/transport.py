"""The terminal in the place of the homeserver: messages are printed, pictures saved."""

from __future__ import annotations

import tempfile
from datetime import datetime
from pathlib import Path
from typing import TextIO

from bot.dialogue.events import MediaRef
from bot.runtime.ports import (
    MediaGoneError,
    MediaTooLargeError,
    Outgoing,
    UploadedMedia,
    UploadedPicture,
)


class TerminalTransport:
    """Prints what the bot says.

    Args:
        out: where messages are printed, a blank line between two and none inside one.
        pictures: folder of the saved pictures; None makes one when the first picture comes.
    """

    def __init__(self, out: TextIO, pictures: Path | None = None) -> None:
        self._out = out
        self._pictures = pictures
        self._sent: dict[str, str] = {}
        self._uploads: dict[str, bytes] = {}

    @property
    def scope(self) -> str:
        """Transaction ids hold as long as this terminal."""
        return "terminal"

    async def send(self, outgoing: Outgoing) -> str:
        """Print a message; the same row again prints nothing."""
        if outgoing.row_id not in self._sent:
            text = without_blank_lines(outgoing.body)
            if outgoing.picture is not None:
                text += f"\n[picture: {self._save(outgoing.picture)}]"
            print("\n" * bool(self._sent) + text, file=self._out, flush=True)
            self._sent[outgoing.row_id] = f"$said-{len(self._sent)}"
        return self._sent[outgoing.row_id]

    async def find_sent(self, room_id: str, row_id: str, since: datetime) -> str | None:
        """The event id of a printed message."""
        del room_id, since
        return self._sent.get(row_id)

    async def upload(self, data: bytes, mime: str, encrypt_for_room: str) -> UploadedMedia:
        """Keep a picture until its message is printed."""
        del mime, encrypt_for_room
        address = f"terminal:{len(self._uploads)}"
        self._uploads[address] = data
        return UploadedMedia(address)

    async def download(self, media: MediaRef, max_bytes: int) -> bytes:
        """Read a shared file from its path.

        Raises:
            MediaTooLargeError: more than `max_bytes`.
            MediaGoneError: it cannot be read.
        """
        try:
            with Path(media.address).open("rb") as file:  # noqa: ASYNC230  a local file
                data = file.read(max_bytes + 1)
        except OSError as error:
            raise MediaGoneError(error.strerror) from error
        if len(data) > max_bytes:
            raise MediaTooLargeError(max_bytes)
        return data

    async def redact(self, room_id: str, event_id: str, txn_id: str) -> None:
        """What is printed stays printed."""

    async def set_typing(self, room_id: str, on: bool) -> None:
        """A terminal has no typing mark."""

    async def mark_read(self, room_id: str, event_id: str) -> None:
        """A terminal has no read mark."""

    def _save(self, picture: UploadedPicture) -> Path:
        if self._pictures is None:
            self._pictures = Path(tempfile.mkdtemp(prefix="linn-pictures-"))
        return save_picture(self._pictures, picture.file_name, self._uploads[picture.media.address])


def save_picture(folder: Path, name: str, data: bytes) -> Path:
    """Save a picture under a name that is free in the folder, and return its path."""
    folder.mkdir(parents=True, exist_ok=True)
    number = sum(1 for _ in folder.iterdir()) + 1
    # The name is what the bot's message says; only its last part may become a path.
    path = folder / f"{number:02}-{Path(name).name or 'picture'}"
    path.write_bytes(data)
    return path.resolve()


def without_blank_lines(text: str) -> str:
    """The text without empty lines, so that a blank line always parts two messages."""
    return "\n".join(line for line in text.splitlines() if line.strip())
