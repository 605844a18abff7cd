"""The job that measures a shared frame."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from bot.dialogue.actions import CheckFrame, MeasureOptions
from bot.dialogue.events import FrameChecked
from bot.runtime.origins import derived_origin
from bot.runtime.outcomes import Outcome
from bot.runtime.workbench import Workbench
from bot.store.rows import JobRow, PictureRow, Written
from core.errors import FrameFault

#: The frame child has its own, shorter limit; this one is for a checker that hangs (own rule) [s].
_CHECK_S: Final = 180.0


@dataclass(frozen=True)
class FrameJob:
    """Fetches a shared frame, has it measured, and tells its conversation.

    Attributes:
        bench: what it works with.
    """

    bench: Workbench

    async def run(self, job: JobRow) -> Written | None:
        """Measure one frame; None when it was ended."""
        action = CheckFrame.model_validate_json(job.input)
        with self.bench.courtesy.at_work(job.key.room_id):
            outcome = await self.bench.unless_ended(job, lambda: self._outcome(job, action))
            return None if outcome is None else await self._finish(job, outcome)

    async def give_up(self, job: JobRow) -> Written | None:
        """Say that this frame can't be measured."""
        return await self._finish(job, Outcome(fault=FrameFault.CRASHED))

    async def _outcome(self, job: JobRow, action: CheckFrame) -> Outcome:
        data = await self.bench.fetching.fetch(action.media, job.delays)
        if isinstance(data, Outcome):
            return data
        options = MeasureOptions(
            camera_pixels=action.camera_pixels,
            water_cells=action.water_cells,
            axis_deg=action.axis_deg,
            language=action.language,
        )
        async with self.bench.turn(job, _CHECK_S):
            return await self.bench.checker.check(data, options)

    async def _finish(self, job: JobRow, outcome: Outcome) -> Written | None:
        now = self.bench.clock()
        name = None
        if outcome.picture is not None:
            name = await self.bench.keep(outcome.picture)
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
            pictures = (PictureRow(name, person_id, now + self.bench.kept, job.frame_event_id),)
        return await self.bench.finish(job, now, event, pictures)
