"""`linn talk`: the same dialogue in the terminal, with no server and a throw-away store."""

from __future__ import annotations

import contextlib
import logging
import sys
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from pathlib import Path
from zoneinfo import ZoneInfo

from bot.dialogue.engine import failure, handle
from bot.exits import Exit
from bot.runtime.workers import Dialogue
from bot.terminal.commands import LineError, Place, Quit, Said, read_line
from bot.terminal.loop_thread import LoopThread
from bot.terminal.printing import Printer
from bot.terminal.session import TalkSession
from core.sun.zone import zone_name


def talk(*, now: datetime | None, place: tuple[float, float] | None, pictures: Path | None) -> int:
    """Read lines and print answers until `/quit` or the end of the input.

    Args:
        now: when the talk begins; without a zone it is the place's time, or else this machine's.
        place: latitude and longitude [deg] that are shared at the beginning.
        pictures: where the bot's pictures are saved; None makes a folder.
    """
    logging.basicConfig(level=logging.ERROR, format="%(levelname)s %(message)s")
    printer = Printer(sys.stdout, pictures)
    session = TalkSession(printer, Dialogue(handle, failure), clock_from(now, place))
    with LoopThread() as loop:
        loop.run(session.__aenter__())
        try:
            if place is not None:
                loop.run(session.hear(Place(*place)))
            for command in commands():
                loop.run(session.hear(command))
        finally:
            loop.run(session.__aexit__())
    return Exit.DONE


def clock_from(
    begin: datetime | None, place: tuple[float, float] | None = None
) -> Callable[[], datetime]:
    """A clock that shows `begin` now and goes on from there; without it, the system's own."""
    if begin is None:
        return lambda: datetime.now(UTC)
    if begin.tzinfo is None:
        begin = begin.replace(tzinfo=ZoneInfo(zone_name(*place)) if place else None)
    ahead = begin.astimezone(UTC) - datetime.now(UTC)
    return lambda: datetime.now(UTC) + ahead


def commands(prompt: str = "> ") -> Iterator[Said]:
    """What the person types, until `/quit` or the end; a wrong line is pointed out.

    The prompt is shown on a terminal only.
    """
    for line in _lines(prompt):
        try:
            command = read_line(line)
        except LineError as error:
            print(error, file=sys.stderr)
            continue
        if isinstance(command, Quit):
            return
        if command is not None:
            yield command


def _lines(prompt: str) -> Iterator[str]:
    if not sys.stdin.isatty():
        yield from sys.stdin
        return
    # Its import alone gives `input` line editing; piped output must not see its escape codes.
    with contextlib.suppress(ImportError):
        import readline  # noqa: F401, PLC0415

    while True:
        try:
            yield input(prompt)
        except EOFError:
            print()
            return
