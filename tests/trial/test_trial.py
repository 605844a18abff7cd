"""`linn try` from its first to its last line, over a real homeserver."""

from __future__ import annotations

import io
import signal
import sys
import threading
from collections.abc import Iterator
from pathlib import Path

import pytest

from bot.__main__ import main
from bot.exits import Exit
from bot.terminal.commands import Frame, Message
from bot.trial import trial
from bot.trial.demo import Line
from tests.terminal.pictures import small_jpeg

pytestmark = pytest.mark.server


def test_a_talk_and_its_continuation(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    """The person gets answers over the homeserver; the next trial goes on where this one ended."""
    arguments = ["try", "--folder", str(tmp_path / "trial")]
    told = "full frame, 24-70, fall 10 m tall, 15 m away, rock at 2 m\n"
    monkeypatch.setattr(sys, "stdin", io.StringIO("start\n/quit\n"))
    assert main(arguments) == Exit.DONE
    said = capsys.readouterr()
    assert "Signs, closures" in said.out
    for shown in ("http://127.0.0.1:", "@wren:localhost", "@linn:localhost", "Password"):
        assert shown in said.err
    monkeypatch.setattr(sys, "stdin", io.StringIO("/place 44.15 -71.35\ntaps\n" + told))
    assert main(arguments) == Exit.DONE
    again = capsys.readouterr()
    assert "Your position is noted" in again.out
    assert "1 leaves or rock" in again.out  # a poll is read aloud
    assert said.err.partition("Password")[2] == again.err.partition("Password")[2]


def test_a_played_walk(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    """A walk with a frame is played and printed from both sides; the picture is left behind."""
    frame = tmp_path / "frame.jpg"
    frame.write_bytes(small_jpeg())

    def walk(frames: Path) -> tuple[Line, ...]:
        return Line(Message("start"), "signs"), Line(Frame(frames / frame.name), ".", picture=True)

    monkeypatch.setattr(trial, "walk", walk)
    arguments = ["try", "--demo", "--frames", str(tmp_path), "--folder", str(tmp_path / "trial")]
    assert main(arguments) == Exit.DONE
    said = capsys.readouterr().out
    assert "> start\n\n< " in said
    assert "> (shares frame.jpg)" in said
    (picture,) = (tmp_path / "trial" / "demo" / "pictures").iterdir()
    assert f"The bot's pictures are in {picture.parent}" in said


def test_a_walk_that_fails(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    """A demonstration without the expected answer ends with a failure and says what is missing."""

    def walk(_: Path) -> tuple[Line, ...]:
        return (Line(Message("start"), "a song"),)

    monkeypatch.setattr(trial, "walk", walk)
    arguments = ["try", "--demo", "--frames", str(tmp_path), "--folder", str(tmp_path / "trial")]
    assert main(arguments) == Exit.FAILED
    assert "after “start”: an answer that holds “a song”" in capsys.readouterr().err


def test_a_signal_ends_everything(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """SIGTERM while somebody types ends bot and homeserver, with the shell's code for it."""

    class Keyboard:
        def isatty(self) -> bool:
            return False

        def __iter__(self) -> Iterator[str]:
            signal.raise_signal(signal.SIGTERM)
            yield "never"

    monkeypatch.setattr(sys, "stdin", Keyboard())
    threads = threading.active_count()
    with pytest.raises(SystemExit) as ended:
        main(["try", "--folder", str(tmp_path / "trial")])
    assert ended.value.code == 128 + signal.SIGTERM
    assert threading.active_count() == threads
