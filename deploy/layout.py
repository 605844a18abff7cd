"""Writes the layout table of DEVELOPERS.md from the first line of every file."""

from __future__ import annotations

import argparse
import ast
import re
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Final

ROOT: Final = Path(__file__).resolve().parent.parent
BEGIN: Final = "<!-- layout: made by deploy/layout.py --write -->"
END: Final = "<!-- end of layout -->"
#: The tests mirror these folders, so their files need no line of their own.
FOLDERS: Final = ("core", "bot", "deploy")


def layout() -> str:
    """The table: one line `path — what it says of itself` for each file, folders first."""
    files = [path for folder in FOLDERS for path in sorted(_sources(ROOT / folder), key=_place)]
    lines = [f"{_shown(path)} — {first_line(path)}" for path in files]
    return "\n".join(["```text", *lines, "```"])


def first_line(path: Path) -> str:
    """The first line of a module's docstring, or of a script's opening comment.

    Raises:
        ValueError: the file does not say what it is.
    """
    text = path.read_text(encoding="utf-8")
    if path.suffix == ".py":
        said = (ast.get_docstring(ast.parse(text)) or "").partition("\n")[0]
    else:
        comment = re.search(r"^# (?P<said>.+)$", text, re.MULTILINE)
        said = re.split(r"(?<=[.:]) ", comment["said"])[0] if comment else ""
    if not said:
        raise ValueError(f"{path} does not say in its first line what it is")
    return said


def written(document: str) -> str:
    """The document with the table between its marks renewed.

    Raises:
        ValueError: the marks are missing.
    """
    before, mark, rest = document.partition(BEGIN)
    _, other_mark, after = rest.partition(END)
    if not mark or not other_mark:
        raise ValueError(f"no {BEGIN} … {END} in the document")
    return f"{before}{BEGIN}\n{layout()}\n{END}{after}"


def _sources(folder: Path) -> Iterator[Path]:
    for path in folder.rglob("*"):
        if path.suffix in (".py", ".sh") and "__pycache__" not in path.parts:
            yield path


def _place(path: Path) -> tuple[str, bool, str]:
    return str(path.parent), path.name != "__init__.py", path.name


def _shown(path: Path) -> str:
    inside = path.relative_to(ROOT)
    return f"{inside.parent}/" if path.name == "__init__.py" else str(inside)


def main() -> int:
    """Print the table, or write it into DEVELOPERS.md."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--write", action="store_true", help="renew the table in DEVELOPERS.md")
    if not parser.parse_args().write:
        print(layout())
        return 0
    document = ROOT / "DEVELOPERS.md"
    document.write_text(written(document.read_text(encoding="utf-8")), encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
