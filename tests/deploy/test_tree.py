"""What must hold for the whole tree: no machine paths, no index addresses, a complete lock."""

from __future__ import annotations

import re
import subprocess
import tomllib
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent.parent
FOLDERS = ("bot", "core", "deploy", "tests", ".ci")
FILES = ("pyproject.toml", "README.md", "DEVELOPERS.md")
LOCK = ROOT / "deploy" / "requirements.lock"

#: Written in two parts, so that this file is not its own finding.
FORBIDDEN = {
    "a path of one machine": re.compile(r"(?<![\w.])/(?:wor" + r"k|ro" + r"ot|tm" + r"p)/"),
    "a package index": re.compile(r"pyp" + r"i\.|pythonho" + r"sted|/simp" + r"le\b"),
    "something left open": re.compile(r"\bTO" + r"DO\b|\bFIX" + r"ME\b|NotImpl" + "ementedError"),
}


def sources() -> Iterator[Path]:
    """Every text file that belongs to the project."""
    yield from (ROOT / name for name in FILES)
    for folder in FOLDERS:
        for path in (ROOT / folder).rglob("*"):
            if path.is_file() and "__pycache__" not in path.parts:
                yield path


@pytest.mark.parametrize("what", FORBIDDEN)
def test_nothing_that_does_not_belong(what: str) -> None:
    """No file of the project carries it."""
    found = [
        f"{path.relative_to(ROOT)}:{number}"
        for path in sources()
        for number, line in enumerate(path.read_bytes().splitlines(), 1)
        if FORBIDDEN[what].search(line.decode("utf-8", "replace"))
    ]
    assert not found


def lock_entries() -> list[str]:
    """The lock's entries, each with its marker and hashes on one line."""
    return LOCK.read_text().replace("\\\n", " ").splitlines()


def test_lock_has_only_pinned_packages_with_hashes() -> None:
    """No option, no address and no path stands in the lock: plain pip can use it anywhere."""
    pinned = re.compile(r"[a-z0-9-]+==[\w.+!]+ (?:; [^;]+? )?(?: *--hash=sha256:[0-9a-f]{64})+ *")
    wrong = [entry[:60] for entry in lock_entries() if not pinned.fullmatch(entry)]
    assert not wrong


def test_lock_covers_what_the_project_asks_for() -> None:
    """Every package of the project, of the trial and of the tests is in the lock."""
    project = tomllib.loads((ROOT / "pyproject.toml").read_text())
    asked = [
        *project["project"]["dependencies"],
        *project["project"]["optional-dependencies"]["trial"],
        *project["dependency-groups"]["build"],
        *(line for line in project["dependency-groups"]["dev"] if isinstance(line, str)),
    ]
    names = {re.split(r"[\[<>=~!; ]", line, maxsplit=1)[0] for line in asked}
    locked = {entry.partition("==")[0] for entry in lock_entries()}
    assert names - locked == set()


@pytest.mark.parametrize("script", ["environment.sh", "try.sh", "test.sh", "lock.sh"])
def test_scripts_are_plain_shell(script: str) -> None:
    """The system's own `sh` can read every script."""
    subprocess.run(["sh", "-n", ROOT / "deploy" / script], check=True)
