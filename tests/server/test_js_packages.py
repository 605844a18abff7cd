"""What the second client runs on: pinned packages, from no registry in particular."""

from __future__ import annotations

import json
import re
import subprocess

from tests.server.node import LOCK, find_node


def test_the_lock_names_no_registry() -> None:
    """Every package has its version and its hash, and nothing in the lock is an address."""
    text = LOCK.read_text()
    assert "://" not in text
    assert "resolved" not in text
    packages = json.loads(text)["packages"]
    del packages[""]
    assert all(re.match(r"sha512-\S{88}$", package["integrity"]) for package in packages.values())
    assert packages["node_modules/matrix-js-sdk"]["version"] == "43.0.0"


def test_node_is_there() -> None:
    """The machine's own or the wheel's: new enough, and with its package manager."""
    node, npm = find_node()
    for command in (node, npm):
        shown = subprocess.run([*command, "--version"], capture_output=True, text=True, check=True)
        assert re.match(r"v?\d+\.\d+", shown.stdout)
