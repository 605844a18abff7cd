"""The job that takes messages and pictures back, and says farewell."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from typing import Final

from bot.faults import where_it_broke
from bot.runtime.delivery import REQUEST_S
from bot.runtime.jobs import PutOff
from bot.runtime.ports import SendLaterError, SendRefusedError, SendUncertainError, Transport
from bot.store.pictures import PictureFiles
from bot.store.rows import JobRow, OutboxRow, TakeBack, Written, thread_of_answer
from bot.store.store import Store

_LOG: Final = logging.getLogger(__name__)


@dataclass(frozen=True)
class TakeBackJob:
    """Finishes outside of the database what was deleted in it.

    Attributes:
        store: takes the farewell.
        transport: redacts the bot's own messages.
        files: holds the pictures to delete.
        scope: tells in which scope transaction ids hold at present.
        clock: tells the time.
    """

    store: Store
    transport: Transport
    files: PictureFiles
    scope: Callable[[], str]
    clock: Callable[[], datetime]

    async def run(self, job: JobRow) -> Written | None:
        """Delete files, redact messages one by one, then send the farewell."""
        work = TakeBack.model_validate_json(job.input)
        await asyncio.to_thread(self.files.delete, work.pictures)
        if work.shred:
            await self.transport.forget_person(job.key.person_id, job.origin.sent_at)
        begun_with = work
        try:
            while work.unsure or work.messages:
                work = await self._next(work)
        except (SendLaterError, SendUncertainError, OSError) as error:
            later_s = error.retry_after_s if isinstance(error, SendLaterError) else None
            rest = None if work == begun_with else work.model_dump_json()
            raise PutOff(later_s, rest) from error
        return await self._finish(job, work)

    async def _next(self, work: TakeBack) -> TakeBack:
        """Take back one message; what is left comes back."""
        if not work.unsure:
            await self._redact(*work.messages[0])
            return work.model_copy(update={"messages": work.messages[1:]})
        unsure = work.unsure[0]
        async with asyncio.timeout(REQUEST_S):
            found = await self.transport.find_sent(unsure.room_id, unsure.row_id, unsure.created_at)
        messages = work.messages if found is None else (*work.messages, (unsure.room_id, found))
        return work.model_copy(update={"unsure": work.unsure[1:], "messages": messages})

    async def give_up(self, job: JobRow) -> Written | None:
        """Leave in the rooms what can't be taken out of them, and say farewell."""
        work = TakeBack.model_validate_json(job.input)
        _LOG.error("job %s: %d messages stay in their rooms", job.job_id, len(work.messages))
        return await self._finish(job, work)

    async def _redact(self, room_id: str, event_id: str) -> None:
        try:
            async with asyncio.timeout(REQUEST_S):
                # The event is taken back once, whoever asks: its id makes the transaction's.
                await self.transport.redact(room_id, event_id, f"back-{event_id}")
        except SendRefusedError as error:
            _LOG.warning("%s in %s stays: %s", event_id, room_id, where_it_broke(error))

    async def _finish(self, job: JobRow, work: TakeBack) -> Written | None:
        messages: tuple[OutboxRow, ...] = ()
        if work.farewell is not None:
            messages = (
                OutboxRow(
                    row_id=job.job_id,
                    key=job.key,
                    message=work.farewell,
                    scope=self.scope(),
                    created_at=self.clock(),
                    thread_id=thread_of_answer(job.origin),
                    kept=False,
                ),
            )
        if work.shred:  # while the job is there: a stop in between begins it anew
            await self.store.shred()
        return await self.store.finish_job(job, self.clock(), messages=messages)
