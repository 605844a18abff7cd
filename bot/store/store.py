"""The store: each method is one transaction, named by what it means."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import replace
from datetime import datetime, timedelta

from sqlalchemy import Connection

from bot.dialogue.events import Event
from bot.store import contexts, inbox, jobs, outbox, progress
from bot.store import pictures as shown
from bot.store.database import Database
from bot.store.export import Row, everything_of
from bot.store.finish import finish_event
from bot.store.room_moves import Moves, adopt, move_room
from bot.store.rows import (
    ConversationKey,
    InboxRow,
    JobRow,
    OutboxRow,
    OwnMessage,
    Part,
    PictureRow,
    ProgressRow,
    Result,
    StoredText,
    TimerRow,
    Written,
)
from bot.store.silence import forget_silent


class Store:
    """Everything that outlives the process.

    Args:
        database: not yet opened.
    """

    def __init__(self, database: Database) -> None:
        self._database = database
        self._moves = Moves()

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

    async def empty_log(self) -> None:
        """Take older states out of the database's log; what a stop has kept from being done."""
        await self._database.empty_log()

    async def backlog(self) -> Written:
        """All that a stop has left undone; called once, at the start."""

        def read(connection: Connection) -> Written:
            return Written(
                inbox=inbox.waiting_events(connection),
                messages=outbox.waiting_messages(connection),
                jobs=jobs.waiting_jobs(connection),
                timers=jobs.waiting_timers(connection),
                progress=progress.standing_progress(connection),
            )

        return await self._database.read(read)

    async def count_attempt(self, row: InboxRow) -> InboxRow:
        """Count an event that was left by a stop, before it is begun again.

        Raises:
            GoneError: the event is handled already, or forgotten.
        """
        return await self._database.write(lambda connection: inbox.count_attempt(connection, row))

    async def take_in(
        self, events: Collection[Event], sync_token: str | None, now: datetime
    ) -> tuple[InboxRow, ...]:
        """Keep events and the sync token; only events that were never seen come back."""

        def write(connection: Connection) -> tuple[InboxRow, ...]:
            for event in events:
                adopt(connection, self._moves, event)
            here = [self._moves.event(event) for event in events]
            rows = inbox.add_events(connection, here, now)
            if sync_token is not None:
                inbox.write_sync_token(connection, sync_token)
            return rows

        return await self._database.write(write)

    async def sync_token(self) -> str | None:
        """The token that was kept last, None on a new database."""
        return await self._database.read(inbox.read_sync_token)

    async def read_context(self, key: ConversationKey) -> dict[Part, StoredText]:
        """The parts of a conversation's context that have a row."""
        return await self._database.read(
            lambda connection: contexts.read_context(connection, self._moves.key(key))
        )

    async def talks_in(self, room_id: str) -> tuple[tuple[str, str, datetime], ...]:
        """The conversations of a room: whose, their bodies, and when they changed last."""
        return await self._database.read(lambda connection: contexts.talks_in(connection, room_id))

    async def finish_event(self, result: Result) -> Written:
        """Write all that one handled event changes.

        Raises:
            ConflictError: another has written a part of the context since it was read.
            GoneError: the event is handled already, or forgotten.
        """
        return await self._database.write(
            lambda connection: finish_event(connection, self._moves.result(result))
        )

    async def move_room(self, before: str, after: str) -> tuple[OutboxRow, ...]:
        """Let all that is stored of a room go on in the one that replaces it.

        What still comes from the old room, or was begun for it, goes to the new one from here
        on. The same again does no harm.

        Returns:
            The messages that were not sent, as they are to be sent now.
        """

        def write(connection: Connection) -> tuple[OutboxRow, ...]:
            self._moves.add_room(before, after)
            return move_room(connection, self._moves, before, after)

        return await self._database.write(write)

    async def start_job(self, job: JobRow) -> JobRow | None:
        """Count an attempt before the work begins; None when the job is no longer there."""
        return await self._keep_job(replace(job, attempts=job.attempts + 1))

    async def put_off_job(self, job: JobRow, due: datetime) -> JobRow | None:
        """Do it later; the attempt does not count. None when the job is no longer there."""
        return await self._keep_job(
            replace(job, attempts=job.attempts - 1, delays=job.delays + 1, due=due)
        )

    async def _keep_job(self, job: JobRow) -> JobRow | None:
        kept = await self._database.write(lambda connection: jobs.write_job_state(connection, job))
        return job if kept else None

    async def finish_job(
        self,
        job: JobRow,
        now: datetime,
        *,
        events: tuple[Event, ...] = (),
        pictures: tuple[PictureRow, ...] = (),
        messages: tuple[OutboxRow, ...] = (),
    ) -> Written | None:
        """Write the result of a job and take the job out.

        Returns:
            What was added; None, with nothing written, when the job is no longer there.
        """

        def write(connection: Connection) -> Written | None:
            if not jobs.remove_job(connection, job):
                return None
            shown.add_pictures(connection, pictures)
            here = [self._moves.event(event) for event in events]
            there = [self._moves.message(message) for message in messages]
            return Written(
                inbox=inbox.add_events(connection, here, now),
                messages=outbox.add_messages(connection, there),
            )

        return await self._database.write(write)

    async def show_progress(self, row: ProgressRow, message: OutboxRow) -> Written:
        """Write a message that tells how far work has come."""

        def write(connection: Connection) -> Written:
            here = replace(row, key=self._moves.key(row.key))
            there = self._moves.message(message)
            return Written(messages=(progress.show(connection, here, there),))

        return await self._database.write(write)

    async def change_progress(
        self, row: ProgressRow, message: OutboxRow
    ) -> tuple[ProgressRow, OutboxRow] | None:
        """Write a message that replaces its words; None while that can't be."""
        return await self._database.write(
            lambda connection: progress.change(connection, row, self._moves.message(message))
        )

    async def end_progress(self, row: ProgressRow, job: JobRow) -> Written:
        """Let it stand no more; the job takes it out of its room, where it may be there."""
        return await self._database.write(
            lambda connection: progress.end(connection, row, self._moves.job(job))
        )

    async def fire_timer(
        self, timer: TimerRow, event: Event, now: datetime
    ) -> tuple[InboxRow, ...]:
        """Turn a reminder into an event; nothing when it was cancelled or replaced."""

        def write(connection: Connection) -> tuple[InboxRow, ...]:
            if not jobs.remove_timer(connection, timer):
                return ()
            return inbox.add_events(connection, (self._moves.event(event),), now)

        return await self._database.write(write)

    async def keep_upload(self, row: OutboxRow, uploaded: str) -> None:
        """Keep a picture's address and key before the event that names them is sent."""
        await self._database.write(
            lambda connection: outbox.write_upload(connection, row, uploaded)
        )

    async def message_sent(self, row: OutboxRow, event_id: str) -> bool:
        """Reduce a message to its ids; False when it was forgotten while on its way."""
        return await self._database.write(
            lambda connection: outbox.write_sent(connection, row, event_id)
        )

    async def message_refused(self, row: OutboxRow) -> OutboxRow | None:
        """Drop a message that will never be taken; one whose room has moved comes back."""
        return await self._database.write(lambda connection: outbox.drop_message(connection, row))

    async def is_own_thread(self, room_id: str, thread_id: str) -> bool:
        """Whether a message was written for this thread."""
        return await self._database.read(
            lambda connection: outbox.is_own_thread(connection, room_id, thread_id)
        )

    async def messages_seen(self, seen: Mapping[str, str]) -> None:
        """Take messages for sent that were seen in their rooms: event ids by row ids."""
        await self._database.write(lambda connection: outbox.write_seen(connection, seen))

    async def own_message(self, room_id: str, event_id: str) -> OwnMessage | None:
        """To whom this event was sent from here, None when it was not."""
        return await self._database.read(
            lambda connection: outbox.own_message(connection, room_id, event_id)
        )

    async def thread_with(self, room_id: str, person_id: str, event_id: str) -> str | None:
        """The person's thread in which this event stands, as far as a row names it."""
        return await self._database.read(
            lambda connection: contexts.thread_with(connection, room_id, person_id, event_id)
        )

    async def question_of(self, key: ConversationKey, event_id: str) -> str | None:
        """Name of the question that an event of the bot put to this conversation."""
        return await self._database.read(
            lambda connection: outbox.question_of(connection, key, event_id)
        )

    async def expire(self, now: datetime, silent: timedelta, kept: timedelta) -> tuple[str, ...]:
        """Take out what is past its time; the names of the files to delete come back.

        Args:
            now: the present.
            silent: after how long without a word what is known of a person goes.
            kept: for how long it is known where shared frames lie.
        """

        def write(connection: Connection) -> tuple[str, ...]:
            inbox.forget_handled(connection, now - inbox.HANDLED_KEPT)
            forget_silent(connection, now - silent)
            contexts.forget_media(connection, now - kept)
            return shown.remove_expired(connection, now)

        return await self._database.write(write)

    async def pictures_of(self, person_id: str) -> tuple[PictureRow, ...]:
        """The pictures of one person, those that go first before the others."""
        return await self._database.read(
            lambda connection: shown.pictures_of(connection, person_id)
        )

    async def everything_of(self, person_id: str) -> dict[str, list[Row]]:
        """All rows that bear a person's id, as plain data, by the names of their tables."""
        return await self._database.read(lambda connection: everything_of(connection, person_id))

    async def picture_names(self) -> tuple[str, ...]:
        """The names of all pictures that have a row."""
        return await self._database.read(shown.picture_names)
