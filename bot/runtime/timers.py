"""Timers: reminders that become events when they are due."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from datetime import datetime
from typing import Final

from sqlalchemy.exc import SQLAlchemyError

from bot.dialogue.events import TimerFired
from bot.faults import where_it_broke
from bot.pauses import Wake
from bot.runtime.origins import derived_origin
from bot.store.rows import InboxRow, TimerRow
from bot.store.store import Store
from bot.trouble import Trouble

#: Longest sleep [s]: after it the date is read again, which somebody may have set (own rule).
_LOOK_S: Final = 3600.0
#: Pause after trouble with the database [s] (own rule).
_TROUBLE_S: Final = 5.0


class Timers:
    """Fires reminders, late ones at once.

    Args:
        store: says whether a reminder still stands.
        clock: tells the time.
        hand_on: takes the events.
        trouble: tells the log when the store fails.
    """

    def __init__(
        self,
        store: Store,
        clock: Callable[[], datetime],
        hand_on: Callable[[tuple[InboxRow, ...]], None],
        trouble: Trouble,
    ) -> None:
        self._store = store
        self._clock = clock
        self._hand_on = hand_on
        self._trouble = trouble
        self._waiting: dict[str, TimerRow] = {}
        self._wake = Wake()

    def put(self, timers: Iterable[TimerRow]) -> None:
        """Take reminders that are in the store; the store knows which of them still stand."""
        self._waiting |= {timer.timer_id: timer for timer in timers}
        self._wake.ring()

    async def run(self) -> None:
        """Fire until cancelled."""
        while True:
            trouble = not await self._fire_due()
            await self._wake.sleep(_TROUBLE_S if trouble else self._next_s())

    def _next_s(self) -> float:
        now = self._clock()
        waits = ((timer.due - now).total_seconds() for timer in self._waiting.values())
        return max(0.0, min((_LOOK_S, *waits)))

    async def _fire_due(self) -> bool:
        """Fire what is due, the earliest first; False when the database failed."""
        now = self._clock()
        for timer in sorted(self._waiting.values(), key=lambda timer: timer.due):
            if timer.due > now:
                break
            origin = derived_origin(timer.origin, f"timer-{timer.timer_id}", timer.due, now)
            event = TimerFired(origin=origin, name=timer.name, due=timer.due)
            try:
                self._hand_on(await self._store.fire_timer(timer, event, now))
            except SQLAlchemyError as error:
                self._trouble.met(where_it_broke(error))
                return False
            self._trouble.over()
            del self._waiting[timer.timer_id]
        return True
