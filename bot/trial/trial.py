"""`linn try`: homeserver, bot and one person on this machine, and a talk in the terminal."""

from __future__ import annotations

import contextlib
import signal
import sys
from collections.abc import Iterator
from pathlib import Path
from types import FrameType
from typing import Final

from bot.exits import Exit
from bot.log import set_up_log
from bot.matrix.errors import MatrixError
from bot.terminal.loop_thread import LoopThread
from bot.terminal.printing import Printer
from bot.terminal.talk import commands
from bot.trial.company import Company
from bot.trial.demo import MissingAnswerError, play, walk
from bot.trial.folder import FolderInUseError, kept, trial_folder
from bot.trial.homeserver import Homeserver, HomeserverError
from bot.trial.person import PersonError

#: Signals that end a program from outside; homeserver and bot must end with it.
_ENDING: Final = (signal.SIGTERM, signal.SIGHUP)


def run_trial(folder: Path, *, fresh: bool, demo_frames: Path | None) -> int:
    """Run a trial until the person leaves, or until the demonstration has ended.

    Args:
        folder: where everything is kept for the next trial.
        fresh: forget what earlier trials have kept.
        demo_frames: folder of the frames of the demonstration; None talks with the person.

    Returns:
        `Exit.FAILED` when something did not start, or an expected answer did not come.
    """
    try:
        # The demonstration begins a walk, so it must not find one that is half done.
        folder, fresh = (folder, fresh) if demo_frames is None else (folder / "demo", True)
        with _ended_by_signals(), trial_folder(folder, fresh=fresh) as own:
            set_up_log("INFO", own / "bot.log")
            return _with_homeserver(own, demo_frames)
    except (FolderInUseError, HomeserverError, PersonError, MissingAnswerError) as error:
        print(error, file=sys.stderr)
    except ExceptionGroup as group:
        # The bot's own parts end in groups; what an operator has to know stands in a MatrixError.
        known, others = group.split(MatrixError)
        if others is not None or known is None:
            raise
        print(*known.exceptions, sep="\n", file=sys.stderr)
    except TimeoutError:
        print(f"The bot did not come in time; see {folder / 'bot.log'}.", file=sys.stderr)
    return Exit.FAILED


def _with_homeserver(folder: Path, demo_frames: Path | None) -> int:
    values = kept(folder)
    print("Starting a homeserver on this machine ...", file=sys.stderr)
    demo = demo_frames is not None
    printer = Printer(sys.stdout, folder / "pictures", bot_mark="< " if demo else "")
    homeserver = Homeserver(folder / "homeserver", port=values.port, in_memory=demo)
    with homeserver as server, LoopThread() as loop:
        print("Starting the bot ...", file=sys.stderr)
        company = Company(server, folder, values, printer)
        with _entered(loop, company):
            if demo_frames is not None:
                _play(loop, company, printer, demo_frames)
            else:
                print(_welcome(server, company, values.person_password), file=sys.stderr)
                _talk(loop, company)
    return Exit.DONE


@contextlib.contextmanager
def _entered(loop: LoopThread, company: Company) -> Iterator[None]:
    loop.run(company.__aenter__())
    try:
        yield
    finally:
        loop.run(company.__aexit__())


def _talk(loop: LoopThread, company: Company) -> None:
    for said in commands():
        if not loop.run(company.ask(said)):
            print("(no answer came)", file=sys.stderr)


def _play(loop: LoopThread, company: Company, printer: Printer, frames: Path) -> None:
    loop.run(play(walk(frames), company.ask, printer.person))
    print(f"\nThe walk is done. The bot's pictures are in {printer.pictures}")


def _welcome(server: Homeserver, company: Company, password: str) -> str:
    return f"""
Homeserver  {server.url}
User        {company.person_id}
Password    {password}
Bot         {company.bot_id}

Sign in with any Matrix client on this machine and write to the bot in a direct room,
or talk right here: /frame PATH shares a picture, /place LAT LON a place, /quit ends.
Begin with: start
"""


@contextlib.contextmanager
def _ended_by_signals() -> Iterator[None]:
    """Leave by an exception when a signal ends the program, so that nothing is left running."""

    def leave(number: int, _: FrameType | None) -> None:
        # 128 + the signal's number, as shells report it.
        sys.exit(128 + number)

    before = {number: signal.signal(number, leave) for number in _ENDING}
    try:
        yield
    finally:
        for number, handler in before.items():
            signal.signal(number, handler)
