"""The terminal in the place of the homeserver: messages are printed, pictures saved."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from pathlib import Path

from bot.dialogue.events import MediaRef
from bot.runtime.ports import (
    MediaGoneError,
    MediaTooLargeError,
    Outgoing,
    UploadedMedia,
    UploadedPicture,
)
from bot.terminal.printing import Printer


class TerminalTransport:
    """Prints what the bot says.

    Args:
        printer: prints the messages.
    """

    def __init__(self, printer: Printer) -> None:
        self._printer = printer
        self._sent: dict[str, str] = {}
        self._uploads: dict[str, bytes] = {}

    @property
    def scope(self) -> str:
        """Transaction ids hold as long as this terminal."""
        return "terminal"

    async def send(self, outgoing: Outgoing) -> str:
        """Print a message; the same row again, or other words for one, print nothing."""
        if outgoing.row_id not in self._sent and outgoing.replaces is None:
            kind = "file" if outgoing.picture and outgoing.picture.as_file else "picture"
            self._printer.bot(outgoing.body, self._named(outgoing.picture), kind=kind)
        return self._sent.setdefault(outgoing.row_id, f"$said-{len(self._sent)}")

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

    async def forget_person(self, person_id: str, until: datetime) -> None:
        """A terminal keeps nothing."""

    async def set_typing(self, room_id: str, on: bool) -> None:
        """A terminal has no typing mark."""

    async def mark_read(self, room_id: str, event_id: str) -> None:
        """A terminal has no read mark."""

    def people(self, room_id: str) -> Mapping[str, str]:
        """Whoever sits there is alone."""
        del room_id
        return {}

    def _named(self, picture: UploadedPicture | None) -> tuple[str, bytes] | None:
        if picture is None:
            return None
        return picture.file_name, self._uploads[picture.media.address]
