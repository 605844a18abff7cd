"""The bot with the terminal as its homeserver: the real runtime on a store that is thrown away."""

from __future__ import annotations

import tempfile
from collections.abc import Callable
from contextlib import AsyncExitStack
from datetime import datetime
from itertools import count
from pathlib import Path
from typing import Final, Self

from bot.dialogue.events import Event, FrameReceived, MediaRef, Origin, PlaceReceived, TextReceived
from bot.runtime.frames import FrameServer
from bot.runtime.job_kinds import Surroundings
from bot.runtime.runtime import Runtime
from bot.runtime.workers import Dialogue
from bot.store.database import Database
from bot.store.pictures import PictureFiles
from bot.store.store import Store
from bot.terminal.commands import Frame, Message, Place, Said
from bot.terminal.printing import Printer
from bot.terminal.transport import TerminalTransport

_ROOM: Final = "!here:terminal"
_PERSON: Final = "@you:terminal"


class TalkSession:
    """One talk, from its first line to its last.

        async with TalkSession(printer, dialogue, clock) as session:
            await session.hear(Message("start"))      # prints the answers

    Args:
        printer: prints what the bot says.
        dialogue: what answers.
        clock: tells the time, with a zone.
    """

    def __init__(self, printer: Printer, dialogue: Dialogue, clock: Callable[[], datetime]) -> None:
        self._printer = printer
        self._dialogue = dialogue
        self._clock = clock
        self._numbers = count(1)
        self._stack = AsyncExitStack()

    async def __aenter__(self) -> Self:
        """Open store and frame server in a folder of their own, and start the runtime."""
        async with AsyncExitStack() as stack:
            folder = Path(stack.enter_context(tempfile.TemporaryDirectory(prefix="linn-talk-")))
            store = Store(Database(f"sqlite:///{folder / 'linn.db'}"))
            await store.open()
            stack.push_async_callback(store.close)
            frames = FrameServer()
            await frames.start()
            stack.push_async_callback(frames.stop)
            around = Surroundings(
                store, PictureFiles(folder / "pictures"), TerminalTransport(self._printer), frames
            )
            self._runtime = Runtime(around, self._dialogue, clock=self._clock)
            await self._runtime.start()
            stack.push_async_callback(self._runtime.stop)
            self._stack = stack.pop_all()
        return self

    async def __aexit__(self, *_: object) -> None:
        """Stop and throw everything away."""
        await self._stack.aclose()

    async def hear(self, command: Said) -> None:
        """Have a line answered, and wait until nothing is left to be said."""
        await self._runtime.take_in([self._event(command)], None)
        await self._runtime.drain()

    def _event(self, command: Said) -> Event:
        origin = Origin(
            event_id=f"$line-{next(self._numbers)}",
            room_id=_ROOM,
            person_id=_PERSON,
            sent_at=self._clock(),
        )
        match command:
            case Message(text):
                return TextReceived(origin=origin, text=text)
            case Frame(path):
                return FrameReceived(origin=origin, media=MediaRef(address=str(path)))
            case Place(latitude, longitude):
                return PlaceReceived(origin=origin, latitude=latitude, longitude=longitude)
