"""Linn and the bare echo bot beside one throwaway homeserver, and people who talk to them."""

from __future__ import annotations

import asyncio
import contextlib
import os
import subprocess
import sys
import tempfile
import time
from collections.abc import Awaitable, Callable, Iterator
from pathlib import Path
from typing import Final

from bot.matrix.session import Account
from bot.trial.homeserver import Homeserver
from bot.trial.person import Heard, Person

#: The two that are compared; the first is the yardstick.
BOTS: Final = ("echo", "linn")
#: In which kind of room, and whether it is encrypted.
KINDS: Final = {"plain": False, "encrypted": True}
#: A word that Linn answers with one message and without a change of the walk.
WORD: Final = "units"
LIMIT_S: Final = 60.0
PASSWORD: Final = "only on loopback"  # noqa: S105  a throwaway homeserver
#: How many messages the echo bot sends at a time, and so does Linn.
AT_ONCE: Final = 8


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
    """One person's line to one bot.

    Args:
        account: of the person.
        bot_id: of the bot.
        encrypted: whether their room is.
    """

    def __init__(self, account: Account, bot_id: str, *, encrypted: bool = True) -> None:
        self._answers: asyncio.Queue[Heard] = asyncio.Queue()
        self.person = Person(account, bot_id, self._answers.put_nowait, encrypted=encrypted)

    async def start(self) -> None:
        """Meet the bot."""
        await self.person.start()
        async with asyncio.timeout(LIMIT_S):
            await self.person.meet_bot()

    async def answer_s(self, text: str) -> float:
        """Time from sending a message until its answer is decrypted [s]."""
        while not self._answers.empty():
            self._answers.get_nowait()
        started = time.perf_counter()
        await self.person.say(text)
        await self._hear(1)
        return time.perf_counter() - started

    async def burst(self, text: str, number: int) -> None:
        """Send so many messages without waiting for answers, then hear as many answers."""
        async with asyncio.TaskGroup() as group:
            group.create_task(self._hear(number))
            for _ in range(number):
                await self.person.say(text)

    async def _hear(self, number: int) -> None:
        async with asyncio.timeout(LIMIT_S):
            while number:
                number -= not (await self._answers.get()).notice


class Pair:
    """Both bots, running.

    Args:
        server: the homeserver.
        folder: for keys and logs.
        ids: full user ids of the bots.
    """

    def __init__(self, server: Homeserver, folder: Path, ids: dict[str, str]) -> None:
        self._server = server
        self._folder = folder
        self._ids = ids
        self.pids: dict[str, int] = {}

    def line(self, bot: str, name: str, *, encrypted: bool) -> Line:
        """A line to a bot for a new person of that name."""
        own = self._folder / f"{name}-{bot}"
        own.mkdir()
        user_id = self._server.register(own.name, PASSWORD)
        account = Account(self._server.url, user_id, own, password=PASSWORD)
        return Line(account, self._ids[bot], encrypted=encrypted)

    def command(self, bot: str) -> list[str]:
        """What starts a bot."""
        if bot == "linn":
            return ["-m", "bot", "serve"]
        store = str(self._folder / bot)
        words = [self._server.url, self._ids[bot], PASSWORD, store, str(AT_ONCE)]
        return ["deploy/bench_echo.py", *words]

    def settings(self) -> dict[str, str]:
        """Linn's settings; a burst is no reason to ask anybody to wait."""
        return {
            "LINN_HOMESERVER": self._server.url,
            "LINN_USER": self._ids["linn"],
            "LINN_PASSWORD": PASSWORD,
            "LINN_DATA_DIR": str(self._folder / "linn"),
            "LINN_ALLOWED": f"*:{self._server.server_name}",
            "LINN_MESSAGES_A_MINUTE": "100000",
        }

    def log(self, bot: str) -> Path:
        """Where a bot's log goes."""
        return self._folder / f"{bot}.log"


@contextlib.contextmanager
def running_pair() -> Iterator[Pair]:
    """Both bots beside a throwaway homeserver."""
    with contextlib.ExitStack() as stack:
        name = stack.enter_context(tempfile.TemporaryDirectory(prefix="linn-bench-"))
        folder = Path(name)
        server = stack.enter_context(Homeserver(folder / "homeserver", in_memory=True))
        pair = Pair(server, folder, {bot: server.register(bot, PASSWORD) for bot in BOTS})
        for bot in BOTS:
            (folder / bot).mkdir()
            runs = process(pair.command(bot), pair.settings(), pair.log(bot))
            pair.pids[bot] = stack.enter_context(runs)
        yield pair


def print_measured(measure: Callable[[Pair], Awaitable[str]]) -> int:
    """Measure, print what comes of it, and return the exit code."""
    failed = 0
    with running_pair() as pair:
        try:
            print(asyncio.run(_whole(measure, pair)))
        except* TimeoutError:
            print("no answer in time; the bot's log ends with:", file=sys.stderr)
            print(pair.log("linn").read_text()[-2000:], file=sys.stderr)
            failed = 1
    return failed


async def _whole(measure: Callable[[Pair], Awaitable[str]], pair: Pair) -> str:
    return await measure(pair)
