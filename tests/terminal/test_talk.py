"""`linn talk`: the dialogue in the terminal."""

from __future__ import annotations

import io
import json
import sys
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from bot.__main__ import main
from bot.exits import Exit
from bot.terminal.commands import Message, Place
from bot.terminal.talk import clock_from, commands
from tests.terminal.pictures import small_jpeg


class Keyboard(io.StringIO):
    """An input that says of itself that it is a terminal."""

    def isatty(self) -> bool:
        """It is."""
        return True


def typed(monkeypatch: pytest.MonkeyPatch, *lines: str) -> None:
    """Let these lines stand in a pipe on the standard input."""
    monkeypatch.setattr(sys, "stdin", io.StringIO("".join(line + "\n" for line in lines)))


def test_a_clock_without_a_beginning_is_the_system_s() -> None:
    """Without `--now` the present time is told."""
    assert abs(clock_from(None)() - datetime.now(UTC)) < timedelta(seconds=5)


@pytest.mark.parametrize(
    ("begin", "place", "expected"),
    [
        ("2027-06-21T14:05+02:00", None, "2027-06-21T12:05+00:00"),
        ("2027-06-21T14:05+02:00", (44.15, -71.35), "2027-06-21T12:05+00:00"),
        # UTC-4 in summer on the east coast of North America.
        ("2027-06-21T14:05", (44.15, -71.35), "2027-06-21T18:05+00:00"),
    ],
)
def test_a_clock_begins_where_it_is_told(
    begin: str, place: tuple[float, float] | None, expected: str
) -> None:
    """A time with a zone is itself, one without is the place's; then the clock runs."""
    clock = clock_from(datetime.fromisoformat(begin), place)
    first = clock()
    assert timedelta() <= first - datetime.fromisoformat(expected) < timedelta(seconds=5)
    assert clock() >= first


def test_a_time_without_zone_or_place_is_this_machine_s() -> None:
    """Without a place, a time without a zone is read as the machine's own."""
    begin = datetime(2027, 6, 21, 14, 5)  # noqa: DTZ001  that is the point
    assert clock_from(begin)() - begin.astimezone(UTC) < timedelta(seconds=5)


def test_lines_until_quit(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Empty lines are passed over, wrong ones pointed out, and nothing is read after `/quit`."""
    typed(monkeypatch, "start", "", "/place 91 0", "/place 44.15 -71.35", "/quit", "never")
    assert list(commands()) == [Message("start"), Place(44.15, -71.35)]
    said = capsys.readouterr()
    assert (said.out, said.err.count("\n")) == ("", 1)


def test_a_terminal_gets_a_prompt(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """On a terminal each line has its prompt, and its end ends the talk."""
    prompts: list[str] = []
    lines = iter(["start", "why"])

    def ask(prompt: str) -> str:
        prompts.append(prompt)
        try:
            return next(lines)
        except StopIteration:
            raise EOFError from None

    monkeypatch.setattr(sys, "stdin", Keyboard())
    monkeypatch.setattr("builtins.input", ask)
    assert list(commands("> ")) == [Message("start"), Message("why")]
    assert prompts == ["> ", "> ", "> "]
    assert capsys.readouterr().out == "\n"


def test_a_piped_talk_prints_the_messages_alone(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    """Lines in, messages out, a blank line between them; a frame is answered before the next line.

    The output ends with the answer to the last line, and the end of the input is a good end.
    """
    frame = tmp_path / "frame.jpg"
    frame.write_bytes(small_jpeg())
    (tmp_path / "broken.jpg").write_bytes(b"\xff\xd8\xff broken")
    pictures = tmp_path / "pictures"
    typed(
        monkeypatch,
        "start",
        f"/frame {tmp_path / 'broken.jpg'}",
        f"/frame {frame}",
        "blub",
    )
    arguments = ["talk", "--now", "2027-06-21T14:05", "--place", "44.15 -71.35"]
    assert main([*arguments, "--pictures", str(pictures)]) == Exit.DONE
    said = capsys.readouterr()
    messages = said.out.rstrip("\n").split("\n\n")
    assert all(message.strip() for message in messages)
    assert "EDT" in messages[0]
    assert any("Signs, closures" in message for message in messages)
    (broken,) = (n for n, message in enumerate(messages) if "cut off or damaged" in message)
    (marked,) = (n for n, message in enumerate(messages) if "[picture: " in message)
    (lost,) = (n for n, message in enumerate(messages) if "no number or word" in message)
    assert broken < marked < lost == len(messages) - 1
    (saved,) = pictures.iterdir()
    assert f"[picture: {saved}]" in messages[marked]


def test_my_data_is_saved_as_a_file(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    """What is kept of the person lands in the folder of the pictures, as JSON."""
    typed(monkeypatch, "full frame, 17-28", "my data")
    assert main(["talk", "--pictures", str(tmp_path)]) == Exit.DONE
    (path,) = tmp_path.iterdir()
    assert path.name == "01-linn-my-data.json"
    assert f"[file: {path}]" in capsys.readouterr().out
    kit = json.loads(path.read_text("utf-8"))["people"][0]["body"]["kit"]
    assert kit["lenses"][0]["longest_mm"] == 28
