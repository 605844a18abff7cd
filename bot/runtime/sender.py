"""The sender: everything that waits in the outbox, in order, again and again until it is there."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import Callable, Collection, Iterable
from contextlib import suppress
from functools import partial
from typing import Final

from sqlalchemy.exc import SQLAlchemyError

from bot.faults import where_it_broke
from bot.pauses import Wake, loop_time_s, pause_s
from bot.runtime.delivery import Delivery
from bot.runtime.lanes import Lane, RoomQueue, lane_of
from bot.runtime.ports import (
    SendLaterError,
    SendRefusedError,
    TransportError,
    UnreachableError,
    kind_of,
)
from bot.store.rows import OutboxRow
from bot.store.store import Store
from bot.trouble import Troubles

_LOG: Final = logging.getLogger(__name__)

#: Even when the server asks for a longer pause, an urgent message knocks again after this [s]
#: (own rule: a refused try costs little, a late warning may cost much).
_URGENT_PAUSE_S: Final = 2.0
#: The same for a server that does not answer at all [s] (own rule).
_URGENT_OUTAGE_S: Final = 10.0
#: So often a message may wait for its room or its keys before that is worth a line (own rule):
#: after a start, messages are there before the first sync has brought their rooms.
_USUAL_WAITS: Final = 3
#: Messages on their way in all rooms together when nothing is wrong: the rooms have their own
#: bound (own rule).
_WIDE: Final = 64
#: After so many exceptions that no transport should raise, a message is given up (own rule): it
#: would block its conversation for ever.
_SURPRISES: Final = 5


class Sender:
    """Sends what waits. Nothing is dropped but what the server refuses for good.

    Args:
        store: keeps what was sent.
        delivery: sends one message.
        changed: is called when a message is done.
        troubles: tells the log of what fails.
    """

    def __init__(
        self,
        store: Store,
        delivery: Delivery,
        changed: Callable[[], None],
        troubles: Troubles,
    ) -> None:
        self._store = store
        self._delivery = delivery
        self._changed = changed
        self._troubles = troubles
        self._rooms: dict[str, RoomQueue] = {}
        self._paused: dict[Lane, float] = {}
        self._all_paused = 0.0
        self._outages = 0  # tries in a row that nobody answered
        #: How many messages may be on their way: one after a limit or an outage, one more after
        #: each success, so that a server in trouble is not stormed when a pause ends.
        self._width = _WIDE
        self._failures: dict[str, int] = {}  # by row id
        self._wake = Wake()

    @property
    def busy(self) -> bool:
        """Whether some message is not sent."""
        return bool(self._rooms)

    @property
    def under_way(self) -> bool:
        """Whether some message is on its way, or would go at once."""
        may_go = partial(self._may_go, loop_time_s())
        return any(
            room.in_flight or any(may_go(lane_of(row)) for row in room.waiting.values())
            for room in self._rooms.values()
        )

    @property
    def row_ids(self) -> frozenset[str]:
        """The messages that are not known to be sent, by row id."""
        return frozenset(
            row.row_id
            for room in self._rooms.values()
            for row in (*room.waiting.values(), *room.in_flight.values())
        )

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

    def move(self, rows: Collection[OutboxRow]) -> None:
        """Send messages to another room than before.

        Those that are on their way may arrive yet; when they are refused, they follow.
        """
        rooms = self._rooms.values()
        flying = {row.position for room in rooms for row in room.in_flight.values()}
        self.drop({row.position for row in rows})
        self.put(row for row in rows if row.position not in flying)

    async def run(self) -> None:
        """Send until cancelled."""
        async with asyncio.TaskGroup() as group:
            while True:
                # One moment for both, so that no end of a pause falls between.
                now_s = loop_time_s()
                for room, row in self._going(now_s):
                    group.create_task(self._send(room, row))
                await self._wake.sleep(self._next_end_s(now_s))

    def _going(self, now_s: float) -> Iterable[tuple[RoomQueue, OutboxRow]]:
        """The messages that may go now, with their rooms: the longest waiting first."""
        flying = sum(len(room.in_flight) for room in self._rooms.values())
        for room in sorted(self._rooms.values(), key=RoomQueue.first_position):
            free = self._width - flying
            for row in room.take(partial(self._may_go, now_s), free):
                flying += 1
                yield room, row

    def _may_go(self, now_s: float, lane: Lane) -> bool:
        """Whether a lane is not paused; what holds all others up does not hold up the urgent."""
        _, urgent = lane
        paused_until = max(self._paused.get(lane, 0.0), 0.0 if urgent else self._all_paused)
        return paused_until <= now_s

    def _next_end_s(self, now_s: float) -> float | None:
        """How long until a pause ends that had not ended at that moment [s]; None: no pause."""
        ends = (end for end in (*self._paused.values(), self._all_paused) if end > now_s)
        first = min(ends, default=None)
        return None if first is None else max(0.0, first - loop_time_s())

    async def _send(self, room: RoomQueue, row: OutboxRow) -> None:
        pause = await self._attempt(row)
        if pause is None:
            room.landed(row)
            self._failures.pop(row.row_id, None)
            self._paused.pop(lane_of(row), None)
        else:
            room.put_back(row)
            self._paused[lane_of(row)] = loop_time_s() + pause
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
            return self._put_off(row, error)
        except UnreachableError as error:
            return self._unreachable(row, error)
        except (TransportError, OSError, SQLAlchemyError) as error:  # TimeoutError is an OSError
            return self._failed(row, error)
        except Exception as error:  # no transport should raise it
            pause = self._failed(row, error)
            if self._failures[row.row_id] < _SURPRISES:
                return pause
            await self._give_up(row, error)
        else:
            self._arrived()
        return None

    async def _deliver(self, row: OutboxRow) -> None:
        event_id = await self._delivery.deliver(row)
        if not await self._store.message_sent(row, event_id):
            await self._delivery.take_back(row, event_id)
        if not row.kept:
            await self._store.shred()

    def _arrived(self) -> None:
        self._outages = 0
        self._width = min(self._width + 1, _WIDE)
        self._troubles.sending.over()
        self._troubles.store.over()

    def _put_off(self, row: OutboxRow, error: SendLaterError) -> float:
        """The pause that the server or the transport asks for [s]."""
        if error.limited or self._failures.get(row.row_id, 0) >= _USUAL_WAITS:
            self._troubles.sending.met(kind_of(error))
        if error.limited:
            self._width = 1
        pause = error.retry_after_s if error.limited else self._pause_s(row)
        pause = max(pause, error.retry_after_s)
        if row.urgent:
            return min(pause, _URGENT_PAUSE_S)
        if not error.limited:  # it is this room's affair
            return pause
        self._all_paused = max(self._all_paused, loop_time_s() + error.retry_after_s)
        return error.retry_after_s

    def _unreachable(self, row: OutboxRow, error: UnreachableError) -> float:
        """The pause while nobody answers [s]; the other messages need not try for themselves."""
        self._troubles.sending.met(kind_of(error))
        self._width = 1
        if self._all_paused <= loop_time_s():  # what was on its way at the same time counts once
            self._outages += 1
            self._all_paused = loop_time_s() + pause_s(self._outages)
        pause = max(0.0, self._all_paused - loop_time_s())
        return min(pause, _URGENT_OUTAGE_S) if row.urgent else pause

    def _failed(self, row: OutboxRow, error: Exception) -> float:
        stored = isinstance(error, SQLAlchemyError)
        trouble = self._troubles.store if stored else self._troubles.sending
        trouble.met(kind_of(error) if isinstance(error, TransportError) else where_it_broke(error))
        return self._pause_s(row)

    def _pause_s(self, row: OutboxRow) -> float:
        failures = self._failures.get(row.row_id, 0) + 1
        self._failures[row.row_id] = failures
        return pause_s(failures)

    async def _give_up(self, row: OutboxRow, error: Exception) -> None:
        """Drop a message, or send it to the room to which its own has moved meanwhile."""
        with suppress(SQLAlchemyError):  # then it is tried once more after the next start
            moved = await self._store.message_refused(row)
            if moved is not None:
                self.put((moved,))
                return
        where = where_it_broke(error)
        _LOG.error("message %s to %s is given up: %s", row.row_id, row.key.room_id, where)
