"""The runtime: takes events in, has them answered, sends what is said; nothing is lost."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import Callable, Mapping, Sequence
from datetime import UTC, datetime, timedelta
from typing import Final

from sqlalchemy.exc import SQLAlchemyError

from bot.dialogue.events import Event
from bot.faults import where_it_broke
from bot.pauses import Wake
from bot.runtime.courtesy import Courtesy
from bot.runtime.delivery import Delivery
from bot.runtime.ending import Endings
from bot.runtime.granting import Granting, Limits
from bot.runtime.job_kinds import Surroundings, Workshop
from bot.runtime.jobs import Jobs
from bot.runtime.origins import in_its_thread, moved, withdrawn_from
from bot.runtime.progress import Progress
from bot.runtime.sender import Sender
from bot.runtime.timers import Timers
from bot.runtime.workers import Dialogue, Workers
from bot.store.rows import OwnMessage, Written, thread_of_answer
from bot.trouble import Troubles

_LOG: Final = logging.getLogger(__name__)

#: How often what is past its time is deleted [s] (own rule).
_EXPIRE_EVERY_S: Final = 6 * 3600.0
#: At a stop, what is under way may take so long to end [s]; the rest goes on after the next
#: start. Own rule: well under the 10 s that service managers commonly grant.
_GRACE_S: Final = 5.0


def utc_now() -> datetime:
    """The present time."""
    return datetime.now(UTC)


class Runtime:
    """Implements Inbox. After a stop or a crash, a new one on the same store goes on.

    Args:
        around: store, files, transport and frame checker.
        dialogue: what answers.
        limits: what work may cost.
        clock: tells the time, with a zone.
        troubles: tells the log of what fails.
    """

    def __init__(
        self,
        around: Surroundings,
        dialogue: Dialogue,
        *,
        limits: Limits | None = None,
        clock: Callable[[], datetime] = utc_now,
        troubles: Troubles | None = None,
    ) -> None:
        self._around = around
        troubles = troubles or Troubles()
        self._limits = limits = limits or Limits()
        self._clock = clock
        self._task: asyncio.Task[None] | None = None
        self._stopping = asyncio.Event()
        self._changed = Wake()
        self._courtesy = Courtesy(around.transport)
        self._sender = Sender(
            around.store,
            Delivery(around.store, around.transport, around.files, clock),
            self._changed.ring,
            troubles,
        )
        self._workers = Workers(
            around.store,
            dialogue,
            scope=self._scope,
            clock=clock,
            hand_on=self._hand_on,
            terms=Granting(around.store, around.files, limits, around.transport.people).terms_of,
            trouble=troubles.store,
        )
        self._timers = Timers(around.store, clock, self._workers.put, troubles.store)
        self._progress = Progress(
            around.store,
            dialogue.progress,
            scope=self._scope,
            clock=clock,
            hand_on=self._hand_on,
            trouble=troubles.store,
        )
        self._jobs = self._jobs_of(around, limits, troubles)

    def _jobs_of(self, around: Surroundings, limits: Limits, troubles: Troubles) -> Jobs:
        """Slow work: all kinds of it, and how they are ended."""
        endings = Endings()
        workshop = Workshop(
            around,
            limits,
            self._courtesy,
            self._scope,
            self._clock,
            endings,
            self._progress.reached,
        )
        return Jobs(
            around.store,
            workshop.kinds(),
            workshop.bounds(),
            clock=self._clock,
            hand_on=self._hand_on,
            troubles=troubles,
            over=self._progress.done,
            endings=endings,
        )

    def _scope(self) -> str:
        return self._around.transport.scope

    async def start(self) -> None:
        """Take up what a stop left undone, and begin to work.

        Raises:
            SQLAlchemyError: the store can't be read.
        """
        await self._clean()
        left = await self._around.store.backlog()
        self._progress.resume(left.progress, left.jobs)
        self._take_up_all(left)
        # Held here, watched by drain and stop: the one task that has all others in its groups.
        self._task = asyncio.get_running_loop().create_task(self._run(), name="runtime")
        self._task.add_done_callback(lambda _: self._changed.ring())

    async def stop(self) -> None:
        """End within a few seconds; what is not done then goes on after the next start.

        Raises:
            ExceptionGroup: a part had broken down.
        """
        if self._task is not None:
            self._stopping.set()
            await self._task

    async def wait(self) -> None:
        """Wait until the runtime ends; raises what a part broke down with."""
        if self._task is not None:
            await asyncio.shield(self._task)

    async def drain(self) -> None:
        """Wait until no event, no job and no message is left; reminders to come do not count.

        Raises:
            ExceptionGroup: a part broke down meanwhile.
        """
        parts = (self._workers, self._jobs, self._progress, self._sender)
        await self._until(lambda: not any(part.busy for part in parts))

    async def take_in(self, events: Sequence[Event], sync_token: str | None) -> None:
        """Store events and the sync token in one transaction; known event ids are ignored."""
        rooted = [in_its_thread(event) for event in await self._found_again(events)]
        rows = await self._around.store.take_in(rooted, sync_token, self._clock())
        self._workers.put(rows)
        self._courtesy.has_read(row.event for row in rows)

    async def _found_again(self, events: Sequence[Event]) -> list[Event]:
        """The events; what takes something back stands in the thread of that thing."""
        threads = {event.origin.event_id: thread_of_answer(event.origin) for event in events}
        found: list[Event] = []
        for event in events:
            taken_back, origin = withdrawn_from(event), event.origin
            thread_id = None
            if taken_back is not None:
                thread_id = threads.get(taken_back) or await self._around.store.thread_with(
                    origin.room_id, origin.person_id, taken_back
                )
            found.append(moved(event, thread_id) if thread_id else event)
        return found

    async def move_room(self, before: str, after: str) -> None:
        """Go on in the room `after` with all that is stored of `before`."""
        self._sender.move(await self._around.store.move_room(before, after))

    async def saw_own(self, seen: Mapping[str, str]) -> None:
        """Take messages that stand in rooms for sent, while their requests have no answer."""
        unsure = self._sender.row_ids & seen.keys()
        if unsure:
            await self._around.store.messages_seen({row_id: seen[row_id] for row_id in unsure})

    async def sync_token(self) -> str | None:
        """The token that was stored with the last events, None on a new database."""
        return await self._around.store.sync_token()

    async def is_own_thread(self, room_id: str, thread_id: str) -> bool:
        """Whether the bot has answered in this thread."""
        return await self._around.store.is_own_thread(room_id, thread_id)

    async def own_message(self, room_id: str, event_id: str) -> OwnMessage | None:
        """To whom the bot has sent this event."""
        return await self._around.store.own_message(room_id, event_id)

    async def _run(self) -> None:
        async with asyncio.TaskGroup() as group:
            parts = (
                group.create_task(self._workers.run()),
                group.create_task(self._sender.run()),
                group.create_task(self._jobs.run()),
                group.create_task(self._timers.run()),
                group.create_task(self._courtesy.run()),
                group.create_task(self._progress.run()),
                group.create_task(self._keep_clean()),
            )
            await self._stopping.wait()
            try:
                async with asyncio.timeout(_GRACE_S):
                    await self._until(lambda: not (self._workers.busy or self._sender.under_way))
            except TimeoutError:
                _LOG.info("stopped with work left; it goes on after the next start")
            for part in parts:
                part.cancel()

    async def _until(self, quiet: Callable[[], bool]) -> None:
        while not quiet():
            if self._task is not None and self._task.done():
                self._task.result()
                return
            await self._changed.sleep()

    def _take_up_all(self, written: Written) -> None:
        self._sender.put(written.messages)
        self._progress.put(written.jobs)
        self._jobs.put(written.jobs)
        self._timers.put(written.timers)
        self._workers.put(written.inbox)

    def _hand_on(self, written: Written) -> None:
        """Pass what was written to those who work on it next, without another look at the store."""
        if written.unsent:
            self._sender.drop(written.unsent)
        self._jobs.end(written.ended)
        self._take_up_all(written)
        self._changed.ring()

    async def _keep_clean(self) -> None:
        while True:
            await asyncio.sleep(_EXPIRE_EVERY_S)
            try:
                await self._clean()
            except SQLAlchemyError as error:
                _LOG.error("nothing was deleted, the store failed: %s", where_it_broke(error))

    async def _clean(self) -> None:
        """Delete what is past its time, and files that a crash has left without a row."""
        store, files = self._around.store, self._around.files
        silent = timedelta(days=self._limits.silent_days)
        kept = timedelta(days=self._limits.frames_days)
        await asyncio.to_thread(files.delete, await store.expire(self._clock(), silent, kept))
        if self._task is None:  # later, a file may be written whose row is still to come
            await asyncio.to_thread(files.delete_others, await store.picture_names())
            await store.empty_log()
