"""The layout table is what the files say of themselves."""

from __future__ import annotations

from pathlib import Path

import pytest

from deploy import layout

DOCUMENT = layout.ROOT / "DEVELOPERS.md"


def test_table_is_up_to_date() -> None:
    """`deploy/layout.py --write` would change nothing."""
    text = DOCUMENT.read_text(encoding="utf-8")
    assert layout.written(text) == text


def test_every_module_has_a_line() -> None:
    """No file of the bot, the core or the deployment is left out."""
    table = layout.layout()
    for path in ("core/errors.py", "bot/__main__.py", "bot/dialogue/", "deploy/try.sh"):
        assert f"\n{path} — " in table


@pytest.mark.parametrize(
    ("name", "text", "said"),
    [
        ("a.py", '"""What it is.\n\nMore."""\n', "What it is."),
        ("a.sh", "#!/bin/sh\n# Does one thing. And more.\nset -eu\n", "Does one thing."),
        ("b.sh", "# Does one thing, at length\n# and more.\n", "Does one thing, at length"),
    ],
)
def test_first_line(tmp_path: Path, name: str, text: str, said: str) -> None:
    """The docstring's first line, or the first sentence of a script's first comment."""
    path = tmp_path / name
    path.write_text(text)
    assert layout.first_line(path) == said


@pytest.mark.parametrize(("name", "text"), [("a.py", "x = 1\n"), ("a.sh", "set -eu\n")])
def test_a_silent_file_is_refused(tmp_path: Path, name: str, text: str) -> None:
    """A file that does not say what it is has no place in the table."""
    path = tmp_path / name
    path.write_text(text)
    with pytest.raises(ValueError, match="does not say"):
        layout.first_line(path)


def test_marks_are_needed() -> None:
    """Without its marks the table has no place, and nothing is guessed."""
    with pytest.raises(ValueError, match="no <!-- layout"):
        layout.written("# A document\n")
