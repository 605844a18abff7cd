"""Entering and leaving rooms: requests beside the sync loop, tried until they are settled."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import Awaitable, Callable
from typing import Final, Never

from aiohttp import ClientError

from bot.matrix.backoff import Backoff
from bot.matrix.errors import ServerAnswerError
from bot.matrix.repeating import kind_of
from bot.matrix.server_api import transport_error
from bot.pauses import Wake
from bot.runtime.ports import SendRefusedError
from bot.trouble import Troubles

_log: Final = logging.getLogger(__name__)

#: Own rule: a room on a server that is away for long is asked for every ten minutes.
_LONGEST_PAUSE_S: Final = 600.0
#: Own rule: with these pauses a day; a restart tries again.
_MOST_TRIES: Final = 150
#: Own rule: a slow server must not hold up the others, and the homeserver has other work.
_AT_ONCE: Final = 4

Act = Callable[[], Awaitable[None]]


class Chores:
    """Things to be done about rooms.

    Args:
        troubles: tells the log of what fails.
    """

    def __init__(self, troubles: Troubles) -> None:
        self._troubles = troubles
        self._few = asyncio.Semaphore(_AT_ONCE)
        self._pending: dict[str, Act] = {}
        self._new: list[str] = []
        self._wake = Wake()

    @property
    def busy(self) -> bool:
        """Whether something is not settled."""
        return bool(self._pending)

    def add(self, name: str, act: Act) -> None:
        """Do this soon.

        Args:
            name: what it is, for the log; while it is not settled, the same is not begun again.
            act: does it; what it raises says whether it is tried again.
        """
        if name not in self._pending:
            self._pending[name] = act
            self._new.append(name)
            self._wake.ring()

    async def run(self) -> Never:
        """Work until cancelled."""
        async with asyncio.TaskGroup() as group:
            while True:
                new, self._new = self._new, []
                for name in new:
                    group.create_task(self._settle(name))
                await self._wake.sleep()

    async def _settle(self, name: str) -> None:
        backoff = Backoff(longest_s=_LONGEST_PAUSE_S)
        for _ in range(_MOST_TRIES):
            async with self._few:
                asked_s, settled = await self._try(name)
            if settled:
                break
            await asyncio.sleep(backoff.next_s(asked_s))
        else:
            _log.error("Gave up %s", name)
        del self._pending[name]

    async def _try(self, name: str) -> tuple[float | None, bool]:
        """Try once: how long the server asks to wait [s], and whether it is settled."""
        trouble, asked_s = self._troubles.of("rooms"), None
        try:
            await self._pending[name]()
        except ServerAnswerError as error:
            if isinstance(transport_error(error), SendRefusedError):
                _log.warning("The server refuses %s: %s", name, error)
                return None, True
            trouble.met(str(error))
            asked_s = error.asked_s
        except (ClientError, TimeoutError) as error:
            trouble.met(kind_of(error))
        except Exception as error:
            # A bug over one room must not end the others' service.
            _log.error("Broke over %s: %s", name, kind_of(error))
            return None, True
        else:
            trouble.over()
            return None, True
        return asked_s, False
