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
LOCKS = {name: ROOT / "deploy" / f"{name}.lock" for name in ("requirements", "runtime")}

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


def entries(lock: str) -> list[str]:
    """The lock's entries, each with its marker and hashes on one line."""
    return LOCKS[lock].read_text().replace("\\\n", " ").splitlines()


@pytest.mark.parametrize("lock", LOCKS)
def test_lock_has_only_pinned_packages_with_hashes(lock: str) -> None:
    """No option, no address and no path stands in a lock: plain pip can use it anywhere."""
    pinned = re.compile(r"[a-z0-9-]+==[\w.+!]+ (?:; [^;]+? )?(?: *--hash=sha256:[0-9a-f]{64})+ *")
    wrong = [entry[:60] for entry in entries(lock) if not pinned.fullmatch(entry)]
    assert not wrong


def asked_for() -> dict[str, set[str]]:
    """Names of the packages that each lock must hold."""
    project = tomllib.loads((ROOT / "pyproject.toml").read_text())
    running = [*project["project"]["dependencies"], *project["dependency-groups"]["build"]]
    rest = [
        *project["project"]["optional-dependencies"]["trial"],
        *(line for line in project["dependency-groups"]["dev"] if isinstance(line, str)),
    ]
    lines = {"runtime": running, "requirements": running + rest}
    return {
        lock: {re.split(r"[\[<>=~!; ]", line, maxsplit=1)[0] for line in asked}
        for lock, asked in lines.items()
    }


@pytest.mark.parametrize("lock", LOCKS)
def test_lock_covers_what_the_project_asks_for(lock: str) -> None:
    """Every package that the project names is in the lock."""
    locked = {entry.partition("==")[0] for entry in entries(lock)}
    assert asked_for()[lock] - locked == set()


def test_both_locks_agree() -> None:
    """A server runs the versions that were tested."""
    versions = {lock: {entry.split(" ")[0] for entry in entries(lock)} for lock in LOCKS}
    assert versions["runtime"] - versions["requirements"] == set()


@pytest.mark.parametrize("script", ["environment.sh", "try.sh", "test.sh", "lock.sh"])
def test_scripts_are_plain_shell(script: str) -> None:
    """The system's own `sh` can read every script."""
    subprocess.run(["sh", "-n", ROOT / "deploy" / script], check=True)


def test_what_needs_a_homeserver_lies_where_it_is_looked_for() -> None:
    """The part of the tests that talks is collected from its own folders, the other leaves it out.

    So one that is marked elsewhere would run in neither.
    """
    named = re.search(r"-m server .*?((?: tests/\w+)+) ", (ROOT / "deploy/test.sh").read_text())
    assert named is not None
    mark = "mark." + "server"
    marked = [path for path in (ROOT / "tests").rglob("*.py") if mark in path.read_text()]
    assert {str(path.relative_to(ROOT).parent) for path in marked} == set(named[1].split())
