"""The terminal in the place of the homeserver."""

from __future__ import annotations

import io
from datetime import UTC, datetime
from pathlib import Path

import pytest

from bot.dialogue.events import MediaRef
from bot.runtime.ports import (
    MediaGoneError,
    MediaTooLargeError,
    Outgoing,
    UploadedPicture,
)
from bot.terminal.printing import Printer
from bot.terminal.transport import TerminalTransport

ROOM = "!here:terminal"


def outgoing(row_id: str, body: str, picture: UploadedPicture | None = None) -> Outgoing:
    """A message for the one room there is."""
    return Outgoing(row_id=row_id, room_id=ROOM, body=body, picture=picture)


async def test_blank_lines_part_messages_and_nothing_else() -> None:
    """Between two messages stands one blank line, inside a message none."""
    out = io.StringIO()
    transport = TerminalTransport(Printer(out))
    await transport.send(outgoing("a", "f/11, 1/4 s\n\nTake it.\n"))
    await transport.send(outgoing("b", "Blinking?"))
    assert out.getvalue() == "f/11, 1/4 s\nTake it.\n\nBlinking?\n"


async def test_the_same_row_is_printed_once() -> None:
    """A repeat gives the first event id and prints nothing."""
    out = io.StringIO()
    transport = TerminalTransport(Printer(out))
    first = await transport.send(outgoing("a", "Take it."))
    assert await transport.send(outgoing("a", "Take it.")) == first
    assert await transport.find_sent(ROOM, "a", datetime.now(UTC)) == first
    assert await transport.find_sent(ROOM, "b", datetime.now(UTC)) is None
    assert out.getvalue().count("Take it.") == 1
    assert transport.scope == "terminal"


@pytest.mark.parametrize("named", [True, False])
async def test_a_picture_is_saved_and_named(tmp_path: Path, named: bool) -> None:
    """Under the caption stands where the picture lies; a folder is made when none is given."""
    out = io.StringIO()
    folder = tmp_path / "pictures"
    transport = TerminalTransport(Printer(out, folder if named else None))
    for row in "ab":
        media = await transport.upload(b"png " + row.encode(), "image/png", ROOM)
        picture = UploadedPicture(media, "image/png", 4, 3, 5, "../marked.png")
        await transport.send(outgoing(row, "Area A", picture))
    first, second = (
        Path(line.removeprefix("[picture: ").removesuffix("]"))
        for line in out.getvalue().splitlines()
        if line.startswith("[picture: ")
    )
    assert (first.read_bytes(), second.read_bytes()) == (b"png a", b"png b")
    assert first.name == "01-marked.png"
    assert first.parent == second.parent
    assert not named or first.parent == folder


async def test_a_file_is_read_within_the_limit(tmp_path: Path) -> None:
    """A shared file is read from its path; larger ones and missing ones are refused."""
    path = tmp_path / "frame.jpg"
    path.write_bytes(b"12345")
    transport = TerminalTransport(Printer(io.StringIO()))
    assert await transport.download(MediaRef(address=str(path)), 5) == b"12345"
    with pytest.raises(MediaTooLargeError):
        await transport.download(MediaRef(address=str(path)), 4)
    with pytest.raises(MediaGoneError):
        await transport.download(MediaRef(address=str(tmp_path / "none.jpg")), 5)


async def test_marks_that_a_terminal_has_not() -> None:
    """Typing, read marks and withdrawals are taken and print nothing."""
    out = io.StringIO()
    transport = TerminalTransport(Printer(out))
    await transport.set_typing(ROOM, on=True)
    await transport.mark_read(ROOM, "$1")
    await transport.redact(ROOM, "$1", "t")
    assert out.getvalue() == ""
