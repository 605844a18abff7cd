"""What a typed line asks for."""

from __future__ import annotations

from pathlib import Path

import pytest

from bot.terminal.commands import Frame, LineError, Message, Place, Quit, Said, read_line


@pytest.mark.parametrize(
    ("line", "command"),
    [
        ("start\n", Message("start")),
        ("  1/4 s, f/11 ", Message("1/4 s, f/11")),
        ("/quit", Quit()),
        ("/place 44.15 -71.35", Place(44.15, -71.35)),
        ("/place 44.15, -71.35", Place(44.15, -71.35)),
        ("f/11 \udcb2", Message("f/11 ?")),
        ("", None),
        (" \n", None),
    ],
)
def test_line(line: str, command: Said | Quit | None) -> None:
    """Words go to the bot; a slash begins a command; an empty line asks for nothing."""
    assert read_line(line) == command


@pytest.mark.parametrize("quote", ["", "'", '"'])
def test_frame_with_a_space_in_its_path(tmp_path: Path, quote: str) -> None:
    """A path may hold spaces, and may come in quotation marks."""
    path = tmp_path / "upper fall.jpg"
    path.write_bytes(b"x")
    assert read_line(f"/frame {quote}{path}{quote}") == Frame(path.resolve())


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("/frame nowhere.jpg", "no file “nowhere.jpg”"),
        ("/frame", "no file"),
        ("/place", "no place"),
        ("/place 44.15", "no place"),
        ("/place 91 0", "no place"),
        ("/place 0 181", "no place"),
        ("/place nan 0", "no place"),
        ("/place here there", "no place"),
        ("/picture a.jpg", "/frame PATH, /place LAT LON and /quit"),
    ],
)
def test_line_that_cannot_be_carried_out(line: str, said: str) -> None:
    """It is refused with a sentence that says what to write."""
    with pytest.raises(LineError, match=said):
        read_line(line)
