"""The command line: what is taken, what is refused, and how it ends."""

from __future__ import annotations

import argparse
import subprocess
import sys

import pytest

from bot import __main__ as command_line
from bot.exits import Exit


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        ([], "COMMAND"),
        (["sing"], "sing"),
        (["talk", "--now", "noon"], "“noon” is no time"),
        (["talk", "--place", "91 0"], "“91 0” is no place"),
        (["frame"], "FILE"),
        (["frame", "a.jpg", "b.jpg", "--picture", "c.png"], "--picture takes one FILE"),
        (["try", "--demo"], "--demo needs --frames"),
    ],
)
def test_wrong_lines_are_refused(
    capsys: pytest.CaptureFixture[str], arguments: list[str], said: str
) -> None:
    """A wrong command line ends with code 2 and says what is wrong."""
    with pytest.raises(SystemExit) as refused:
        command_line.main(arguments)
    assert refused.value.code == Exit.USAGE
    assert said in capsys.readouterr().err


def test_help_lists_every_exit_code(capsys: pytest.CaptureFixture[str]) -> None:
    """The help names all codes that a command can end with."""
    with pytest.raises(SystemExit) as ended:
        command_line.main(["--help"])
    assert ended.value.code == Exit.DONE
    epilog = capsys.readouterr().out.partition("exit codes:")[2].splitlines()
    codes = {line.split()[0] for line in epilog if line[2:3].isdigit()}
    assert codes == {str(code.value) for code in Exit}


def test_ctrl_c_has_its_own_code(monkeypatch: pytest.MonkeyPatch) -> None:
    """Stopping from the keyboard is no failure and prints no traceback."""

    def interrupted(_: argparse.Namespace) -> int:
        raise KeyboardInterrupt

    monkeypatch.setattr(command_line, "_check_config", interrupted)
    assert command_line.main(["check-config"]) == Exit.INTERRUPTED


def test_a_closed_pipe_is_no_failure(monkeypatch: pytest.MonkeyPatch) -> None:
    """A reader that goes away ends the command in silence."""

    class Output:
        closed = False

        def close(self) -> None:
            self.closed = True

    def broken(_: argparse.Namespace) -> int:
        raise BrokenPipeError

    error_output = Output()
    monkeypatch.setattr(command_line, "_check_config", broken)
    monkeypatch.setattr(sys, "stderr", error_output)
    assert command_line.main(["check-config"]) == Exit.DONE
    assert error_output.closed


_STOPPED_WHILE_LOADING = """
import os, signal, sys
from bot.__main__ import main

class Stopping:
    def find_spec(self, name, path=None, target=None):
        if name == "bot.app":
            os.kill(os.getpid(), signal.SIGTERM)

sys.meta_path.insert(0, Stopping())
sys.exit(main(["serve"]))
"""


def test_a_bot_that_is_stopped_while_it_loads_ends_well() -> None:
    """A service manager that stops it in its first seconds sees no failure."""
    ended = subprocess.run(
        [sys.executable, "-c", _STOPPED_WHILE_LOADING], capture_output=True, check=False
    )
    assert (ended.returncode, ended.stderr) == (Exit.DONE, b"")
