"""The job that measures a shared frame."""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Final

from bot.dialogue.actions import CheckFrame
from bot.dialogue.events import FrameChecked
from bot.runtime.courtesy import Courtesy
from bot.runtime.origins import derived_origin
from bot.runtime.ports import (
    CheckedFrame,
    FrameChecker,
    MediaBrokenOffError,
    MediaDamagedError,
    MediaGoneError,
    MediaTooLargeError,
    Transport,
)
from bot.store.pictures import PictureFiles
from bot.store.rows import JobRow, PictureRow, Written
from bot.store.store import Store
from core.errors import FrameFault
from core.frame.report import FrameReport

#: Longest wait for a shared file [s] (own rule): the Matrix side's own limits allow 60 MB so long.
DOWNLOAD_S: Final = 360.0
#: A file that broke off after so many delays is given up (own rule): who sends his file in drips
#: does not keep the bot waiting for an hour, as a homeserver that is away does.
_BROKEN_OFF: Final = 5
#: The frame child has its own, shorter limit; this one is for a checker that hangs (own rule) [s].
_CHECK_S: Final = 180.0


@dataclass(frozen=True)
class Unchecked:
    """The outcome for a file that could not even be fetched."""

    fault: FrameFault
    numbers: dict[str, float]
    report: FrameReport | None = None
    picture_png: bytes | None = None


@dataclass(frozen=True)
class FrameJob:
    """Fetches a shared frame, has it measured, and tells its conversation.

    Attributes:
        store: takes the result.
        transport: fetches the file.
        checker: measures it in a process of its own.
        files: keeps the marked picture.
        courtesy: shows that the bot is at work.
        clock: tells the time.
        max_bytes: largest file that is fetched.
        kept: for how long the marked picture is kept.
        measuring: bounds how many frames are measured at once; more may be on their way here.
    """

    store: Store
    transport: Transport
    checker: FrameChecker
    files: PictureFiles
    courtesy: Courtesy
    clock: Callable[[], datetime]
    max_bytes: int
    kept: timedelta
    measuring: asyncio.Semaphore

    async def run(self, job: JobRow) -> Written | None:
        """Measure one frame."""
        action = CheckFrame.model_validate_json(job.input)
        self.courtesy.begins(job.key.room_id)
        try:
            return await self._finish(job, await self._outcome(action, job.delays))
        finally:
            self.courtesy.ends(job.key.room_id)

    async def give_up(self, job: JobRow) -> Written | None:
        """Say that this frame can't be measured."""
        return await self._finish(job, Unchecked(FrameFault.CRASHED, {}))

    async def _outcome(self, action: CheckFrame, delays: int) -> CheckedFrame:
        try:
            async with asyncio.timeout(DOWNLOAD_S):
                data = await self.transport.download(action.media, self.max_bytes)
        except MediaTooLargeError as error:
            return Unchecked(FrameFault.TOO_MANY_BYTES, {"limit": float(error.limit)})
        except MediaGoneError:
            return Unchecked(FrameFault.GONE, {})
        except MediaDamagedError:
            return Unchecked(FrameFault.DAMAGED, {})
        except MediaBrokenOffError:
            if delays < _BROKEN_OFF:
                raise
            return Unchecked(FrameFault.GONE, {})
        async with self.measuring, asyncio.timeout(_CHECK_S):
            return await self.checker.check(data, action.camera_pixels)

    async def _finish(self, job: JobRow, outcome: CheckedFrame) -> Written | None:
        now = self.clock()
        name = None
        if outcome.picture_png is not None:
            name = await asyncio.to_thread(self.files.write, outcome.picture_png)
        event = FrameChecked(
            origin=derived_origin(job.origin, f"job-{job.job_id}", now, now),
            frame_event_id=job.frame_event_id or "",
            report=outcome.report,
            fault=outcome.fault,
            fault_numbers=dict(outcome.numbers),
            picture=name,
        )
        picture = None
        if name is not None:
            person_id = job.key.person_id
            picture = PictureRow(name, person_id, now + self.kept, job.frame_event_id)
        written = await self.store.finish_job(job, now, events=(event,), picture=picture)
        if written is None and name is not None:  # the frame was dropped meanwhile
            await asyncio.to_thread(self.files.delete, (name,))
        return written
