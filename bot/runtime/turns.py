"""Whose turn it is: people take turns, however much one of them has brought."""

from __future__ import annotations

import asyncio
from collections import deque
from collections.abc import AsyncIterator, Callable, Iterable
from contextlib import asynccontextmanager
from itertools import count


class Fairness:
    """Remembers who was served when; whoever waits longest for it is next."""

    def __init__(self) -> None:
        self._served: dict[str, int] = {}
        self._numbers = count(1)

    def next(self, people: Iterable[str]) -> str:
        """Of these, who was never served, or the longest ago; the first of several."""
        return min(people, key=lambda person: self._served.get(person, 0))

    def serve(self, person_id: str) -> None:
        """Somebody is served now."""
        self._served[person_id] = next(self._numbers)

    def forget(self) -> None:
        """Nobody waits any more: all are equal again."""
        self._served.clear()


class Turns:
    """So many at the same time, and of those who wait, each person in turn.

    Args:
        at_once: tells how many; it may change.
    """

    def __init__(self, at_once: Callable[[], int]) -> None:
        self._at_once = at_once
        self._running: set[asyncio.Future[None]] = set()
        self._waiting: dict[str, deque[asyncio.Future[None]]] = {}
        self._order = Fairness()

    @asynccontextmanager
    async def turn(self, person_id: str) -> AsyncIterator[None]:
        """Wait for the person's turn, and have it."""
        ticket: asyncio.Future[None] = asyncio.get_running_loop().create_future()
        self._waiting.setdefault(person_id, deque()).append(ticket)
        self._call()
        try:
            await ticket
            yield
        finally:
            self._leave(person_id, ticket)

    def _call(self) -> None:
        """Let those go whose turn it is."""
        while self._waiting and len(self._running) < self._at_once():
            person_id = self._order.next(self._waiting)
            ticket = self._waiting[person_id].popleft()
            self._tidy(person_id)
            if not ticket.done():  # given up this moment
                self._order.serve(person_id)
                self._running.add(ticket)
                ticket.set_result(None)

    def _leave(self, person_id: str, ticket: asyncio.Future[None]) -> None:
        if ticket in self._waiting.get(person_id, ()):  # given up before it was called
            self._waiting[person_id].remove(ticket)
            self._tidy(person_id)
        self._running.discard(ticket)
        self._call()
        if not self._running:
            self._order.forget()

    def _tidy(self, person_id: str) -> None:
        if not self._waiting[person_id]:
            del self._waiting[person_id]
