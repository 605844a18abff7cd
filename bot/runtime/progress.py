"""How far measuring has come: one message where it takes its time, replaced, and taken back."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace
from datetime import datetime
from typing import Final

from sqlalchemy.exc import SQLAlchemyError

from bot.dialogue.events import Origin
from bot.dialogue.texts import speaking
from bot.dialogue.texts.languages import ENGLISH
from bot.faults import where_it_broke
from bot.pauses import Wake, loop_time_s
from bot.runtime.results import new_id
from bot.store.rows import (
    ConversationKey,
    JobKind,
    JobRow,
    Message,
    OutboxRow,
    ProgressRow,
    Written,
    thread_of_answer,
)
from bot.store.store import Store
from bot.trouble import Trouble

#: Measuring that takes no longer is not told of [s]. Own rule: the typing mark is enough.
AFTER_S: Final = 2.0
#: The words are replaced no more often [s]. Own rule: homeservers ask for about one message in
#: five seconds when they are busy, and nobody reads faster.
EVERY_S: Final = 5.0
#: Begins the ids of these messages' rows: whoever looks into a room knows them by it.
PREFIX: Final = "progress-"
#: Pause after trouble with the database [s] (own rule).
_TROUBLE_S: Final = 5.0
#: While the last words are on their way, they are not replaced; looked at again after this [s].
_ON_ITS_WAY_S: Final = 1.0
_KINDS: Final = frozenset({JobKind.CHECK_FRAME, JobKind.MEASURE_FRAMES})


@dataclass
class _Batch:
    """What is measured for one conversation, from the first frame to the last."""

    key: ConversationKey
    thread_id: str | None
    since_s: float
    language: str = ENGLISH
    #: Frames of jobs that are done, and of all; then the frames of jobs that are not done, and how
    #: many of these are, by the job.
    finished: int = 0
    total: int = 0
    left: dict[str, int] = field(default_factory=dict)
    reached: dict[str, int] = field(default_factory=dict)
    row: ProgressRow | None = None
    next_s: float = 0.0

    @property
    def done(self) -> int:
        """Frames that are done."""
        return self.finished + sum(self.reached.values())


class Progress:
    """Tells each conversation how far its frames have come.

    Args:
        store: keeps that a message stands, so that none is left hanging by a stop.
        words: the line for the number of a frame and of all.
        scope: tells in which scope transaction ids hold at present.
        clock: tells the time.
        hand_on: takes what was added to the store.
        trouble: tells the log when the store fails.
    """

    def __init__(
        self,
        store: Store,
        words: Callable[[int, int], str],
        *,
        scope: Callable[[], str],
        clock: Callable[[], datetime],
        hand_on: Callable[[Written], None],
        trouble: Trouble,
    ) -> None:
        self._store = store
        self._words = words
        self._scope = scope
        self._clock = clock
        self._hand_on = hand_on
        self._trouble = trouble
        self._batches: dict[ConversationKey, _Batch] = {}
        self._keys: dict[str, ConversationKey] = {}  # by job
        self._wake = Wake()

    @property
    def busy(self) -> bool:
        """Whether some message is still to be taken back."""
        return any(not batch.left for batch in self._batches.values())

    def resume(self, rows: Iterable[ProgressRow], jobs: Iterable[JobRow]) -> None:
        """Take up messages that a stop has left, with the work that is still to do."""
        now_s = loop_time_s()
        for row in rows:
            batch = _Batch(row.key, row.key.thread_key or None, now_s, row=row)
            batch.finished = batch.total = row.total
            self._batches[row.key] = batch
        for job in _measuring(jobs):
            if resumed := self._batches.get(job.key):  # it was counted before the stop
                known = min(resumed.finished, _frames(job))
                resumed.finished -= known
                resumed.total -= known
        self.put(jobs)

    def put(self, jobs: Iterable[JobRow]) -> None:
        """There is more to measure."""
        for job in _measuring(jobs):
            if job.job_id in self._keys:
                continue
            batch = self._batches.get(job.key)
            if batch is None:
                batch = _Batch(job.key, thread_of_answer(job.origin), loop_time_s())
                self._batches[job.key] = batch
            batch.language = _language(job)
            batch.total += _frames(job)
            batch.left[job.job_id] = _frames(job)
            self._keys[job.job_id] = job.key
        self._wake.ring()

    def reached(self, job_id: str, frames: int) -> None:
        """So many frames of a job are done."""
        if batch := self._batch_of(job_id):
            batch.reached[job_id] = min(frames, batch.left[job_id])
            self._wake.ring()

    def done(self, job_id: str) -> None:
        """A job is done, or ended."""
        if batch := self._batch_of(job_id):
            del self._keys[job_id]
            batch.reached.pop(job_id, None)
            batch.finished += batch.left.pop(job_id)
            self._wake.ring()

    def _batch_of(self, job_id: str) -> _Batch | None:
        key = self._keys.get(job_id)
        return None if key is None else self._batches[key]

    async def run(self) -> None:
        """Tell until cancelled."""
        while True:
            now_s = loop_time_s()
            waits = [await self._look_at(batch, now_s) for batch in list(self._batches.values())]
            await self._wake.sleep(min((wait for wait in waits if wait is not None), default=None))

    async def _look_at(self, batch: _Batch, now_s: float) -> float | None:
        """Do for a conversation what is due; when to look again [s], None: when it changes."""
        try:
            return await self._do_due(batch, now_s)
        except SQLAlchemyError as error:
            self._trouble.met(where_it_broke(error))
            return _TROUBLE_S

    async def _do_due(self, batch: _Batch, now_s: float) -> float | None:
        if not batch.left:
            await self._end(batch)
            return None
        due_s = batch.next_s or batch.since_s + AFTER_S
        if now_s < due_s:
            return due_s - now_s
        if batch.row is None:
            await self._show(batch)
        elif (batch.done, batch.total) != (batch.row.done, batch.row.total):
            return await self._change(batch, batch.row)
        return None

    async def _show(self, batch: _Batch) -> None:
        message = self._message(batch)
        row = ProgressRow(message.row_id, batch.key, batch.done, batch.total)
        written = await self._store.show_progress(row, message)
        batch.row, batch.next_s = row, loop_time_s() + EVERY_S
        self._hand_on(written)

    async def _change(self, batch: _Batch, row: ProgressRow) -> float | None:
        newer = replace(row, done=batch.done, total=batch.total)
        changed = await self._store.change_progress(newer, self._message(batch))
        if changed is None:
            return _ON_ITS_WAY_S
        batch.row, message = changed
        batch.next_s = loop_time_s() + EVERY_S
        self._hand_on(Written(messages=(message,)))
        return None

    async def _end(self, batch: _Batch) -> None:
        written = Written()
        if batch.row is not None:
            written = await self._store.end_progress(batch.row, self._taking_back(batch))
        if batch.left:  # more came meanwhile: it begins anew
            batch.row, batch.next_s, batch.since_s = None, 0.0, loop_time_s()
            self._wake.ring()
        else:
            del self._batches[batch.key]
        self._hand_on(written)

    def _message(self, batch: _Batch) -> OutboxRow:
        number = min(batch.done + 1, batch.total)
        with speaking(batch.language):
            body = self._words(number, batch.total)
        words = Message(body=body, notice=True, reply_to=batch.thread_id)
        return OutboxRow(
            row_id=f"{PREFIX}{new_id()}",
            key=batch.key,
            message=words,
            scope=self._scope(),
            created_at=self._clock(),
            thread_id=batch.thread_id,
        )

    def _taking_back(self, batch: _Batch) -> JobRow:
        """The job that takes the message back, once the store knows where it is."""
        now = self._clock()
        origin = Origin(
            event_id=new_id(),
            room_id=batch.key.room_id,
            person_id=batch.key.person_id,
            thread_id=batch.thread_id,
            direct=not batch.key.thread_key,
            sent_at=now,
        )
        return JobRow(new_id(), JobKind.TAKE_BACK, batch.key, origin, "{}", now, now)


def _measuring(jobs: Iterable[JobRow]) -> Iterable[JobRow]:
    return (job for job in jobs if job.kind in _KINDS)


def _frames(job: JobRow) -> int:
    """How many frames a job measures."""
    return len(json.loads(job.input)["frames"]) if job.kind is JobKind.MEASURE_FRAMES else 1


def _language(job: JobRow) -> str:
    """The language of the pictures that a job draws is that of the person."""
    order = json.loads(job.input)
    options = order.get("options", order)
    return str(options.get("language", ENGLISH))
