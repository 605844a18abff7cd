"""What the jobs of frames work with, and what they do alike: end early, keep what was made."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator, Awaitable, Callable
from contextlib import asynccontextmanager
from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.dialogue.events import Event
from bot.runtime.courtesy import Courtesy
from bot.runtime.ending import Endings, WorkEndedError
from bot.runtime.fetching import Fetching
from bot.runtime.outcomes import Outcome
from bot.runtime.ports import FrameChecker
from bot.runtime.turns import Turns
from bot.store.pictures import PictureFiles
from bot.store.rows import JobRow, PictureRow, Written
from bot.store.store import Store


@dataclass(frozen=True)
class Workbench:
    """Store, files and frame checker, and who may use them when.

    Attributes:
        store: takes the result.
        fetching: fetches the files.
        checker: measures them, each in a process of its own.
        files: keeps the pictures.
        courtesy: shows that the bot is at work.
        clock: tells the time.
        kept: for how long the pictures are kept.
        turns: bounds how much is measured at once; more may be on its way here.
        endings: what can be ended.
    """

    store: Store
    fetching: Fetching
    checker: FrameChecker
    files: PictureFiles
    courtesy: Courtesy
    clock: Callable[[], datetime]
    kept: timedelta
    turns: Turns
    endings: Endings

    async def unless_ended(
        self, job: JobRow, make: Callable[[], Awaitable[Outcome]]
    ) -> Outcome | None:
        """What comes of the work; None when it was ended.

        Args:
            job: the work, as it is ended by.
            make: does it.
        """
        try:
            async with self.endings.until_ended(job.job_id):
                return await make()
        except WorkEndedError:
            return None

    @asynccontextmanager
    async def turn(self, job: JobRow, within_s: float) -> AsyncIterator[None]:
        """It is the person's turn to have frames measured in here, for so long at most [s].

        Raises:
            TimeoutError: it took longer.
        """
        async with self.turns.turn(job.key.person_id), asyncio.timeout(within_s):
            yield

    async def keep(self, picture: bytes) -> str:
        """Keep a picture; the name of its file comes back."""
        return await asyncio.to_thread(self.files.write, picture)

    async def finish(
        self, job: JobRow, now: datetime, event: Event, pictures: tuple[PictureRow, ...]
    ) -> Written | None:
        """Write the result with its pictures; where a frame was dropped meanwhile, neither."""
        written = await self.store.finish_job(job, now, events=(event,), pictures=pictures)
        if written is None:
            names = tuple(picture.name for picture in pictures)
            await asyncio.to_thread(self.files.delete, names)
        return written
