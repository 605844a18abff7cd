"""Work that can be ended from outside, while it may be: before its result is written."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator, Iterable
from contextlib import asynccontextmanager


class WorkEndedError(Exception):
    """The work was ended: nobody wants its result any more."""


class Endings:
    """What can be ended at present, by the ids of jobs."""

    def __init__(self) -> None:
        self._scopes: dict[str, asyncio.Timeout] = {}

    @asynccontextmanager
    async def until_ended(self, job_id: str) -> AsyncIterator[None]:
        """What is done in here ends early when the job is ended.

        Raises:
            WorkEndedError: it was.
        """
        scope = asyncio.timeout(None)
        try:
            async with scope:
                self._scopes[job_id] = scope
                yield
        except TimeoutError:
            if scope.expired():
                raise WorkEndedError from None
            raise
        finally:
            self._scopes.pop(job_id, None)

    def end(self, job_ids: Iterable[str]) -> None:
        """End these, where they have begun and have no result yet."""
        now_s = asyncio.get_running_loop().time()
        for job_id in job_ids:
            if scope := self._scopes.pop(job_id, None):
                scope.reschedule(now_s)
