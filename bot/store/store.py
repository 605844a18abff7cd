"""The store: each method is one transaction, named by what it means."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime, timedelta
from typing import Final

from sqlalchemy.ext.asyncio import AsyncConnection

from bot.dialogue.events import Event
from bot.store import contexts, forget, inbox, jobs, outbox, pictures
from bot.store.database import Database
from bot.store.rows import (
    ConversationKey,
    InboxRow,
    JobRow,
    OutboxRow,
    Part,
    PictureRow,
    Result,
    StoredText,
    TakeBack,
    TimerRow,
    Written,
)

#: For how long the ids of events are known; far beyond what a homeserver sends again (own rule).
HANDLED_DAYS: Final = 90


class Store:
    """Everything that outlives the process.

    Args:
        database: not yet opened.
    """

    def __init__(self, database: Database) -> None:
        self._database = database

    async def open(self) -> None:
        """Open the database and bring its schema up to date.

        Raises:
            SchemaNewerError: a newer version has been here.
        """
        await self._database.open()

    async def close(self) -> None:
        """Close the database."""
        await self._database.close()

    async def shred(self) -> None:
        """Take what was deleted out of the database's files."""
        await self._database.shred()

    async def backlog(self) -> Written:
        """All that a stop has left undone; called once, at the start, which counts attempts."""
        async with self._database.writing() as connection:
            await inbox.count_new_attempts(connection)
            return Written(
                inbox=await inbox.waiting_events(connection),
                messages=await outbox.waiting_messages(connection),
                jobs=await jobs.waiting_jobs(connection),
                timers=await jobs.waiting_timers(connection),
            )

    async def take_in(
        self, events: Iterable[Event], sync_token: str | None, now: datetime
    ) -> tuple[InboxRow, ...]:
        """Keep events and the sync token; only events that were never seen come back."""
        async with self._database.writing() as connection:
            rows = await inbox.add_events(connection, events, now)
            if sync_token is not None:
                await inbox.write_sync_token(connection, sync_token)
            return rows

    async def sync_token(self) -> str | None:
        """The token that was kept last, None on a new database."""
        async with self._database.reading() as connection:
            return await inbox.read_sync_token(connection)

    async def read_context(self, key: ConversationKey) -> dict[Part, StoredText]:
        """The parts of a conversation's context that have a row."""
        async with self._database.reading() as connection:
            return await contexts.read_context(connection, key)

    async def finish_event(self, result: Result) -> Written:
        """Write all that one handled event changes.

        Raises:
            ConflictError: another has written a part of the context since it was read.
            GoneError: the event is handled already, or forgotten.
        """
        key = result.inbox.key
        async with self._database.writing() as connection:
            await inbox.remove_event(connection, result.inbox)
            await contexts.write_context(connection, key, result.versions, result.changes)
            take_backs, unsent = await self._delete(connection, result)
            await jobs.cancel_timers(connection, key, result.cancelled_timers)
            await jobs.set_timers(connection, result.timers)
            new_jobs = result.jobs + take_backs
            await jobs.add_jobs(connection, new_jobs)
            messages = await outbox.add_messages(connection, result.messages)
        return Written(messages=messages, jobs=new_jobs, timers=result.timers, unsent=unsent)

    async def _delete(
        self, connection: AsyncConnection, result: Result
    ) -> tuple[tuple[JobRow, ...], tuple[int, ...]]:
        """Delete frames and the person; the jobs that take back the rest, and unsent messages."""
        filled: tuple[JobRow, ...] = ()
        unsent: tuple[int, ...] = ()
        for job in result.dropped_frames:
            frame = job.frame_event_id or ""
            found = await forget.drop_frame(connection, job.key.person_id, frame)
            unsent += found.unsent
            if found.take_back != TakeBack():
                filled += (replace(job, input=found.take_back.model_dump_json()),)
        if result.forget is None:
            return filled, unsent
        await jobs.add_jobs(connection, filled)  # so that forgetting finds and absorbs them
        found = await forget.forget_person(connection, result.inbox)
        farewell = TakeBack.model_validate_json(result.forget.input).farewell
        everything = found.take_back.model_copy(update={"farewell": farewell})
        job = replace(result.forget, input=everything.model_dump_json())
        return (job,), unsent + found.unsent

    async def start_job(self, job: JobRow) -> JobRow | None:
        """Count an attempt before the work begins; None when the job is no longer there."""
        return await self._keep_job(replace(job, attempts=job.attempts + 1))

    async def put_off_job(self, job: JobRow, due: datetime) -> JobRow | None:
        """Do it later; the attempt does not count. None when the job is no longer there."""
        return await self._keep_job(
            replace(job, attempts=job.attempts - 1, delays=job.delays + 1, due=due)
        )

    async def _keep_job(self, job: JobRow) -> JobRow | None:
        async with self._database.writing() as connection:
            return job if await jobs.write_job_state(connection, job) else None

    async def finish_job(
        self,
        job: JobRow,
        now: datetime,
        *,
        events: tuple[Event, ...] = (),
        picture: PictureRow | None = None,
        messages: tuple[OutboxRow, ...] = (),
    ) -> Written | None:
        """Write the result of a job and take the job out.

        Returns:
            What was added; None, with nothing written, when the job is no longer there.
        """
        async with self._database.writing() as connection:
            if not await jobs.remove_job(connection, job):
                return None
            await pictures.add_pictures(connection, (picture,) if picture else ())
            return Written(
                inbox=await inbox.add_events(connection, events, now),
                messages=await outbox.add_messages(connection, messages),
            )

    async def fire_timer(
        self, timer: TimerRow, event: Event, now: datetime
    ) -> tuple[InboxRow, ...]:
        """Turn a reminder into an event; nothing when it was cancelled or replaced."""
        async with self._database.writing() as connection:
            if not await jobs.remove_timer(connection, timer):
                return ()
            return await inbox.add_events(connection, (event,), now)

    async def keep_upload(self, row: OutboxRow, uploaded: str) -> None:
        """Keep a picture's address and key before the event that names them is sent."""
        async with self._database.writing() as connection:
            await outbox.write_upload(connection, row, uploaded)

    async def message_sent(self, row: OutboxRow, event_id: str) -> bool:
        """Reduce a message to its ids; False when it was forgotten while on its way."""
        async with self._database.writing() as connection:
            return await outbox.write_sent(connection, row, event_id)

    async def message_refused(self, row: OutboxRow) -> None:
        """Drop a message that will never be taken."""
        async with self._database.writing() as connection:
            await outbox.drop_message(connection, row)

    async def is_own_thread(self, room_id: str, thread_id: str) -> bool:
        """Whether a message was written for this thread."""
        async with self._database.reading() as connection:
            return await outbox.is_own_thread(connection, room_id, thread_id)

    async def is_own_message(self, room_id: str, event_id: str) -> bool:
        """Whether this event was sent from here."""
        async with self._database.reading() as connection:
            return await outbox.is_own_message(connection, room_id, event_id)

    async def expire(self, now: datetime) -> tuple[str, ...]:
        """Take out what is past its time; the names of the files to delete come back."""
        async with self._database.writing() as connection:
            await inbox.forget_handled(connection, now - timedelta(days=HANDLED_DAYS))
            return await pictures.remove_expired(connection, now)

    async def picture_names(self) -> tuple[str, ...]:
        """The names of all pictures that have a row."""
        async with self._database.reading() as connection:
            return await pictures.picture_names(connection)
