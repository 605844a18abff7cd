"""The job that measures a shared frame."""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Final

from bot.dialogue.actions import CheckFrame, MeasureOptions
from bot.dialogue.events import FrameChecked
from bot.runtime.courtesy import Courtesy
from bot.runtime.ending import Endings, WorkEndedError
from bot.runtime.fetching import Fetching
from bot.runtime.origins import derived_origin
from bot.runtime.outcomes import Outcome
from bot.runtime.ports import FrameChecker
from bot.runtime.turns import Turns
from bot.store.pictures import PictureFiles
from bot.store.rows import JobRow, PictureRow, Written
from bot.store.store import Store
from core.errors import FrameFault

#: The frame child has its own, shorter limit; this one is for a checker that hangs (own rule) [s].
_CHECK_S: Final = 180.0


@dataclass(frozen=True)
class FrameJob:
    """Fetches a shared frame, has it measured, and tells its conversation.

    Attributes:
        store: takes the result.
        fetching: fetches the file.
        checker: measures it in a process of its own.
        files: keeps the marked picture.
        courtesy: shows that the bot is at work.
        clock: tells the time.
        kept: for how long the marked picture is kept.
        turns: bounds how many frames are measured at once; more may be on their way here.
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

    async def run(self, job: JobRow) -> Written | None:
        """Measure one frame; None when it was ended."""
        action = CheckFrame.model_validate_json(job.input)
        with self.courtesy.at_work(job.key.room_id):
            try:
                async with self.endings.until_ended(job.job_id):
                    outcome = await self._outcome(job, action)
            except WorkEndedError:
                return None
            return await self._finish(job, outcome)

    async def give_up(self, job: JobRow) -> Written | None:
        """Say that this frame can't be measured."""
        return await self._finish(job, Outcome(fault=FrameFault.CRASHED))

    async def _outcome(self, job: JobRow, action: CheckFrame) -> Outcome:
        data = await self.fetching.fetch(action.media, job.delays)
        if isinstance(data, Outcome):
            return data
        options = MeasureOptions(
            camera_pixels=action.camera_pixels,
            water_cells=action.water_cells,
            axis_deg=action.axis_deg,
            language=action.language,
        )
        async with self.turns.turn(job.key.person_id), asyncio.timeout(_CHECK_S):
            return await self.checker.check(data, options)

    async def _finish(self, job: JobRow, outcome: Outcome) -> Written | None:
        now = self.clock()
        name = None
        if outcome.picture is not None:
            name = await asyncio.to_thread(self.files.write, outcome.picture)
        event = FrameChecked(
            origin=derived_origin(job.origin, f"job-{job.job_id}", now, now),
            frame_event_id=job.frame_event_id or "",
            report=outcome.report,
            fault=outcome.fault,
            fault_numbers=dict(outcome.numbers),
            picture=name,
        )
        pictures: tuple[PictureRow, ...] = ()
        if name is not None:
            person_id = job.key.person_id
            pictures = (PictureRow(name, person_id, now + self.kept, job.frame_event_id),)
        written = await self.store.finish_job(job, now, events=(event,), pictures=pictures)
        if written is None and name is not None:  # the frame was dropped meanwhile
            await asyncio.to_thread(self.files.delete, (name,))
        return written
