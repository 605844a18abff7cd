"""Read marks and typing marks: small politeness that may fail and holds nothing up."""

from __future__ import annotations

import asyncio
import logging
from collections import Counter
from collections.abc import Awaitable, Iterable, Iterator
from contextlib import contextmanager
from typing import Final

from bot.dialogue.events import Event, FrameChecked, FramesMeasured, TimerFired
from bot.faults import where_it_broke
from bot.pauses import Wake, loop_time_s
from bot.runtime.ports import Transport

_LOG: Final = logging.getLogger(__name__)

#: A mark that takes longer is not worth waiting for [s] (own rule).
_REQUEST_S: Final = 10.0
#: Read marks wait so long [s]: one is enough for a burst, the answer goes first, and a mark costs
#: the homeserver nearly as much as a message (own rule).
_READ_AFTER_S: Final = 1.0
#: The homeserver hides a typing mark after 30 s; it is renewed before that [s].
_RENEW_S: Final = 20.0
#: Events that the bot makes itself.
_OWN: Final = (FrameChecked, FramesMeasured, TimerFired)


class Courtesy:
    """Shows that the bot has read, and that it is at work.

    Args:
        transport: the way to the rooms.
    """

    def __init__(self, transport: Transport) -> None:
        self._transport = transport
        self._read: dict[str, str] = {}  # the newest event by room
        self._at_work: Counter[str] = Counter()  # by room
        self._shown: dict[str, float] = {}  # rooms with a typing mark, since when
        self._wake = Wake()
        self._unmarked = Wake()

    def has_read(self, events: Iterable[Event]) -> None:
        """Mark events as read, if they were meant for the bot."""
        for event in events:
            origin = event.origin
            if origin.is_for_linn and not isinstance(event, _OWN):
                self._read[origin.room_id] = origin.event_id
        if self._read:
            self._unmarked.ring()

    @contextmanager
    def at_work(self, room_id: str) -> Iterator[None]:
        """Slow work is done in a room in here."""
        self._at_work[room_id] += 1
        self._wake.ring()
        try:
            yield
        finally:
            self._at_work -= Counter({room_id: 1})
            self._wake.ring()

    async def run(self) -> None:
        """Set marks until cancelled."""
        async with asyncio.TaskGroup() as group:
            group.create_task(self._mark_read())
            while True:
                await self._wake.sleep(_RENEW_S if self._at_work or self._shown else None)
                await self._set_typing()

    async def _mark_read(self) -> None:
        while True:
            await self._unmarked.sleep()
            await asyncio.sleep(_READ_AFTER_S)
            read, self._read = self._read, {}
            for room_id, event_id in read.items():
                await self._try(self._transport.mark_read(room_id, event_id))

    async def _set_typing(self) -> None:
        now_s = loop_time_s()
        for room_id in list(self._at_work):
            if now_s - self._shown.get(room_id, -_RENEW_S) >= _RENEW_S:
                self._shown[room_id] = now_s
                await self._try(self._transport.set_typing(room_id, True))
        for room_id in self._shown.keys() - self._at_work.keys():
            del self._shown[room_id]
            await self._try(self._transport.set_typing(room_id, False))

    async def _try(self, mark: Awaitable[None]) -> None:
        try:
            async with asyncio.timeout(_REQUEST_S):
                await mark
        except Exception as error:  # a mark is not worth more than a line
            _LOG.debug("no mark: %s", where_it_broke(error))
