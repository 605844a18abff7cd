"""A runtime that stores what comes in and answers with an echo."""

from __future__ import annotations

import asyncio
import contextlib
from collections.abc import AsyncIterator, Callable, Mapping, Sequence
from contextlib import asynccontextmanager
from datetime import timedelta

from bot.dialogue.events import Event, FrameReceived, PlaceReceived, TextReceived
from bot.matrix.client import MatrixClient
from bot.matrix.policy import Policy
from bot.matrix.session import Account
from bot.matrix.waiting import GRACE
from bot.runtime.ports import Outgoing, SendLaterError, Transport
from bot.store.rows import OwnMessage
from tests.server.person import PATIENCE_S


class EchoRuntime:
    """Keeps events by their id, and the token with them, as the real one does in its tables.

    Args:
        echoes: which words are answered; by default all.
    """

    def __init__(self, echoes: Callable[[str], bool] = bool) -> None:
        self._echoes = echoes
        self.events: list[Event] = []
        self.token: str | None = None
        self.moves: list[tuple[str, str]] = []
        self.own_messages: dict[tuple[str, str], OwnMessage] = {}
        self.own_threads: set[tuple[str, str]] = set()
        self._to_answer: asyncio.Queue[Event] = asyncio.Queue()
        self._news = asyncio.Condition()

    async def take_in(self, events: Sequence[Event], sync_token: str | None) -> None:
        """Store what is new and queue its answer."""
        known = {event.origin.event_id for event in self.events}
        for event in events:
            if event.origin.event_id not in known:
                self.events.append(event)
                self._to_answer.put_nowait(event)
        self.token = sync_token
        async with self._news:
            self._news.notify_all()

    async def saw_own(self, seen: Mapping[str, str]) -> None:
        """An echo knows what it has sent from the answers to its requests."""

    async def sync_token(self) -> str | None:
        """The token of the last take_in."""
        return self.token

    async def move_room(self, before: str, after: str) -> None:
        """Note the move."""
        self.moves.append((before, after))

    async def is_own_thread(self, room_id: str, thread_id: str) -> bool:
        """Whether an echo went into the thread."""
        return (room_id, thread_id) in self.own_threads

    async def own_message(self, room_id: str, event_id: str) -> OwnMessage | None:
        """To whom the echo went."""
        return self.own_messages.get((room_id, event_id))

    async def answer(self, transport: Transport) -> None:
        """Answer for ever, in order."""
        while True:
            event = await self._to_answer.get()
            words = _words(event)
            if self._echoes(words):
                await self._say(transport, event, f"echo: {words}")

    async def waits(self, until: Callable[[], bool]) -> None:
        """Wait, for as long as a test does, until it is so."""
        async with asyncio.timeout(PATIENCE_S), self._news:
            await self._news.wait_for(until)

    async def takes(self, number: int) -> list[Event]:
        """Wait for so many events in all."""
        await self.waits(lambda: len(self.events) >= number)
        return self.events

    async def _say(self, transport: Transport, event: Event, body: str) -> None:
        origin = event.origin
        outgoing = Outgoing(
            row_id=f"row-{origin.event_id[1:]}",
            room_id=origin.room_id,
            body=body,
            thread_id=origin.thread_id,
            reply_to=origin.event_id,
        )
        while True:
            try:
                event_id = await transport.send(outgoing)
            except SendLaterError:
                await asyncio.sleep(0.2)
            else:
                break
        told = OwnMessage(origin.person_id, origin.thread_id)
        self.own_messages[origin.room_id, event_id] = told
        if origin.thread_id is not None:
            self.own_threads.add((origin.room_id, origin.thread_id))


def _words(event: Event) -> str:
    if isinstance(event, TextReceived):
        return event.text
    if isinstance(event, PlaceReceived):
        return f"{event.latitude}, {event.longitude}"
    return event.caption if isinstance(event, FrameReceived) else ""


@asynccontextmanager
async def running_bot(
    account: Account, runtime: EchoRuntime, *allowed: str, key_grace: timedelta = GRACE
) -> AsyncIterator[MatrixClient]:
    """The bot's Matrix side, started, syncing and echoing; stopped at the end."""
    client = MatrixClient(account, Policy.of(allowed), poll_s=1.0, key_grace=key_grace)
    await client.start()
    tasks = [
        asyncio.create_task(client.run(runtime)),
        asyncio.create_task(runtime.answer(client.transport)),
    ]
    try:
        yield client
    finally:
        for task in tasks:
            task.cancel()
        for task in tasks:
            with contextlib.suppress(asyncio.CancelledError):
                await task
        await client.close()
