"""Times Linn's text answers against a bare echo bot on the same homeserver, and its idle memory."""

from __future__ import annotations

import asyncio
import contextlib
import os
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Final

from bot.matrix.session import Account
from bot.trial.homeserver import Homeserver
from bot.trial.person import Heard, Person

ROUNDS: Final = 100
#: Rounds that are not counted: keys are exchanged, caches fill.
WARM_UP: Final = 10
LIMIT_S: Final = 30.0
#: A word that Linn answers with one message and without a change of the walk.
WORDS: Final = {"echo": "units", "linn": "units"}
PASSWORD: Final = "only on loopback"  # noqa: S105  a throwaway homeserver


@contextlib.contextmanager
def process(arguments: list[str], environment: dict[str, str], log: Path) -> Iterator[int]:
    """A Python process that runs while the context is open; its id."""
    with log.open("wb") as file:
        child = subprocess.Popen(
            [sys.executable, *arguments],
            env={**os.environ, **environment},
            stdout=file,
            stderr=subprocess.STDOUT,
        )
    try:
        yield child.pid
    finally:
        child.terminate()
        child.wait(30)


class Line:
    """The person's line to one bot."""

    def __init__(self, account: Account, bot_id: str) -> None:
        self._answers: asyncio.Queue[Heard] = asyncio.Queue()
        self.person = Person(account, bot_id, self._answers.put_nowait)

    async def start(self) -> None:
        """Meet the bot, and hear out what it says at once."""
        await self.person.start()
        async with asyncio.timeout(LIMIT_S):
            await self.person.meet_bot()

    async def answer_s(self, text: str) -> float:
        """Time from sending a message until its answer is decrypted [s]."""
        while not self._answers.empty():
            self._answers.get_nowait()
        started = time.perf_counter()
        await self.person.say(text)
        async with asyncio.timeout(LIMIT_S):
            while (await self._answers.get()).notice:
                pass
        return time.perf_counter() - started


async def alternate(lines: dict[str, Line]) -> dict[str, list[float]]:
    """Answer times of each bot, one message to the one, one to the other [s]."""
    for line in lines.values():
        await line.start()
    times: dict[str, list[float]] = {name: [] for name in lines}
    for number in range(WARM_UP + ROUNDS):
        for name, line in lines.items():
            taken = await line.answer_s(WORDS[name])
            if number >= WARM_UP:
                times[name].append(taken)
    for line in lines.values():
        await line.person.stop()
    return times


def resident_mb(pid: int) -> list[float]:
    """Resident memory of a process and of those that it started [MB]; empty without /proc."""
    sizes = []
    for process_id in (pid, *_children(pid)):
        with contextlib.suppress(OSError):
            status = Path(f"/proc/{process_id}/status").read_text()
            sizes.append(int(status.partition("VmRSS:")[2].split()[0]) / 1024)
    return sizes


def _children(pid: int) -> Iterator[int]:
    for path in Path("/proc").glob("[0-9]*/stat"):
        with contextlib.suppress(OSError):
            # The name in parentheses may hold spaces; the parent stands second after it.
            if int(path.read_text().rpartition(")")[2].split()[1]) == pid:
                child = int(path.parent.name)
                yield child
                yield from _children(child)


def table(times: dict[str, list[float]], idle_mb: dict[str, list[float]]) -> str:
    """The figures as text, with the ratios that are aimed at."""
    rows = ["            p50        p95    idle memory (and of the processes it started)"]
    p50 = {name: statistics.median(taken) for name, taken in times.items()}
    for name, taken in times.items():
        p95 = statistics.quantiles(taken, n=20)[-1]
        memory = " + ".join(f"{size:.0f} MB" for size in idle_mb[name])
        rows.append(f"{name:6} {p50[name] * 1000:6.0f} ms  {p95 * 1000:6.0f} ms   {memory}")
    ratio = p50["linn"] / p50["echo"]
    rows.append(f"p50 of linn over echo: {ratio:.2f} (aim: at most 1.3)")
    rows.append("idle memory of linn: aim at most 150 MB for the bot itself")
    return "\n".join(rows)


def _commands(server: Homeserver, ids: dict[str, str], folder: Path) -> dict[str, list[str]]:
    echo = ["deploy/bench_echo.py", server.url, ids["echo"], PASSWORD, str(folder / "echo")]
    return {"echo": echo, "linn": ["-m", "bot", "serve"]}


def _settings(server: Homeserver, bot_id: str, folder: Path) -> dict[str, str]:
    return {
        "LINN_HOMESERVER": server.url,
        "LINN_USER": bot_id,
        "LINN_PASSWORD": PASSWORD,
        "LINN_DATA_DIR": str(folder / "linn"),
        "LINN_ALLOWED": f"*:{server.server_name}",
    }


def _line(server: Homeserver, bot: str, bot_id: str, folder: Path) -> Line:
    own = folder / f"person-{bot}"
    own.mkdir()
    person = server.register(own.name, PASSWORD)
    return Line(Account(server.url, person, own, password=PASSWORD), bot_id)


def measure(server: Homeserver, folder: Path) -> str:
    """Run both bots beside the homeserver, talk to them in turn, and return the table.

    Raises:
        TimeoutError: a bot did not answer.
    """
    ids = {bot: server.register(bot, PASSWORD) for bot in WORDS}
    settings = _settings(server, ids["linn"], folder)
    lines = {bot: _line(server, bot, bot_id, folder) for bot, bot_id in ids.items()}
    with contextlib.ExitStack() as stack:
        pids = {}
        for bot, command in _commands(server, ids, folder).items():
            (folder / bot).mkdir()
            pids[bot] = stack.enter_context(process(command, settings, folder / f"{bot}.log"))
        times = asyncio.run(alternate(lines))
        return table(times, {bot: resident_mb(pid) for bot, pid in pids.items()})


def main() -> int:
    """Measure beside a throwaway homeserver and print the table."""
    with tempfile.TemporaryDirectory(prefix="linn-bench-") as name:
        folder = Path(name)
        with Homeserver(folder / "homeserver", in_memory=True) as server:
            try:
                print(measure(server, folder))
            except TimeoutError:
                print("no answer in time; the bot's log ends with:", file=sys.stderr)
                print((folder / "linn.log").read_text()[-2000:], file=sys.stderr)
                return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
