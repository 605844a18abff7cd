"""The sender: everything that waits in the outbox, in order, again and again until it is there."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import Callable, Collection, Iterable
from contextlib import suppress
from functools import partial
from typing import Final

from sqlalchemy.exc import SQLAlchemyError

from bot.runtime.delivery import Delivery
from bot.runtime.faults import where_it_broke
from bot.runtime.lanes import Lane, RoomQueue, lane_of
from bot.runtime.pauses import Wake, pause_s
from bot.runtime.ports import (
    SendLaterError,
    SendRefusedError,
    TransportError,
)
from bot.store.rows import OutboxRow
from bot.store.store import Store

_LOG: Final = logging.getLogger(__name__)

#: Even when the server asks for a longer pause, an urgent message knocks again after this [s]
#: (own rule: a refused try costs little, a late warning may cost much).
_URGENT_PAUSE_S: Final = 2.0
#: After so many exceptions that no transport should raise, a message is given up (own rule): it
#: would block its conversation for ever.
_SURPRISES: Final = 5


class Sender:
    """Sends what waits. Nothing is dropped but what the server refuses for good.

    Args:
        store: keeps what was sent.
        delivery: sends one message.
        changed: is called when a message is done.
    """

    def __init__(self, store: Store, delivery: Delivery, changed: Callable[[], None]) -> None:
        self._store = store
        self._delivery = delivery
        self._changed = changed
        self._rooms: dict[str, RoomQueue] = {}
        self._paused: dict[Lane, float] = {}
        self._all_paused = 0.0
        self._failures: dict[str, int] = {}  # by row id
        self._wake = Wake()

    @property
    def busy(self) -> bool:
        """Whether some message is not sent."""
        return bool(self._rooms)

    @property
    def in_flight(self) -> bool:
        """Whether some message is on its way."""
        return any(room.in_flight for room in self._rooms.values())

    def put(self, rows: Iterable[OutboxRow]) -> None:
        """Take messages that are in the store."""
        for row in rows:
            self._rooms.setdefault(row.key.room_id, RoomQueue()).put(row)
        self._wake.ring()

    def drop(self, positions: Collection[int]) -> None:
        """Leave out messages that are no longer in the store."""
        for room in self._rooms.values():
            room.drop(positions)
        self._tidy()

    async def run(self) -> None:
        """Send until cancelled."""
        async with asyncio.TaskGroup() as group:
            while True:
                now_s = _time_s()  # one moment for both, so that no end of a pause falls between
                for room in list(self._rooms.values()):
                    for row in room.take(partial(self._may_go, now_s)):
                        group.create_task(self._send(room, row))
                await self._wake.sleep(self._next_end_s(now_s))

    def _may_go(self, now_s: float, lane: Lane) -> bool:
        """Whether a lane is not paused; what holds all others up does not hold up the urgent."""
        _, urgent = lane
        paused_until = max(self._paused.get(lane, 0.0), 0.0 if urgent else self._all_paused)
        return paused_until <= now_s

    def _next_end_s(self, now_s: float) -> float | None:
        """How long until a pause ends that had not ended at that moment [s]; None: no pause."""
        ends = (end for end in (*self._paused.values(), self._all_paused) if end > now_s)
        first = min(ends, default=None)
        return None if first is None else max(0.0, first - _time_s())

    async def _send(self, room: RoomQueue, row: OutboxRow) -> None:
        pause = await self._attempt(row)
        if pause is None:
            room.landed(row)
            self._failures.pop(row.row_id, None)
            self._paused.pop(lane_of(row), None)
        else:
            room.put_back(row)
            self._paused[lane_of(row)] = _time_s() + pause
        self._tidy()

    def _tidy(self) -> None:
        self._rooms = {room_id: room for room_id, room in self._rooms.items() if not room.empty}
        self._changed()
        self._wake.ring()

    async def _attempt(self, row: OutboxRow) -> float | None:
        """Try once; the pause before the next try [s], None when there is none to come."""
        try:
            await self._deliver(row)
        except SendRefusedError as error:
            await self._give_up(row, error)
        except SendLaterError as error:
            _LOG.warning("the server asks to wait %.1f s", error.retry_after_s)
            if row.urgent:
                return min(error.retry_after_s, _URGENT_PAUSE_S)
            self._all_paused = max(self._all_paused, _time_s() + error.retry_after_s)
            return error.retry_after_s
        except (TransportError, OSError, SQLAlchemyError) as error:  # TimeoutError is an OSError
            return self._failed(row, error)
        except Exception as error:  # no transport should raise it
            pause = self._failed(row, error)
            if self._failures[row.row_id] < _SURPRISES:
                return pause
            await self._give_up(row, error)
        return None

    async def _deliver(self, row: OutboxRow) -> None:
        event_id = await self._delivery.deliver(row)
        if not await self._store.message_sent(row, event_id):
            await self._delivery.take_back(row, event_id)
        if not row.kept:
            await self._store.shred()

    def _failed(self, row: OutboxRow, error: Exception) -> float:
        failures = self._failures.get(row.row_id, 0) + 1
        self._failures[row.row_id] = failures
        pause = pause_s(failures)
        where = where_it_broke(error)
        _LOG.warning("message %s goes again in %.1f s: %s", row.row_id, pause, where)
        return pause

    async def _give_up(self, row: OutboxRow, error: Exception) -> None:
        where = where_it_broke(error)
        _LOG.error("message %s to %s is given up: %s", row.row_id, row.key.room_id, where)
        with suppress(SQLAlchemyError):  # then it is tried once more after the next start
            await self._store.message_refused(row)


def _time_s() -> float:
    """Time of the event loop's clock, which no change of the date moves [s]."""
    return asyncio.get_running_loop().time()
