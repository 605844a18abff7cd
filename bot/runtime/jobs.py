"""Jobs: slow work beside the conversations, taken up again after a stop."""

from __future__ import annotations

import asyncio
import logging
from collections import Counter
from collections.abc import Callable, Collection, Iterable, Mapping
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import Final, NamedTuple, Protocol

from sqlalchemy.exc import SQLAlchemyError

from bot.faults import where_it_broke
from bot.pauses import Wake, loop_time_s, pause_s
from bot.runtime.ending import Endings
from bot.runtime.ports import SendLaterError, SendUncertainError, UnreachableError, kind_of
from bot.runtime.turns import Fairness
from bot.store.rows import JobKind, JobRow, Written
from bot.store.store import Store
from bot.trouble import Troubles

_LOG: Final = logging.getLogger(__name__)

#: Work that was begun so often without an end is given up (own rule: a file that ends the whole
#: program does so each time, while a slow machine that is switched off a few times is no fault of
#: the file).
_ATTEMPTS: Final = 5
#: Work that was put off so often is given up (own rule): with the longest pause, about an hour.
_DELAYS: Final = 60
#: No work is put off for longer [s] (own rule: no homeserver is waited for longer, see
#: `bot.matrix.backoff`); what seems due later was put off before the clock was set back.
_LONGEST_S: Final = 900.0
#: While nobody answers at all, no more delays than these count (own rule): the longest pause is
#: reached by then, and a night without a server loses no frame.
_UNCOUNTED: Final = 7


class PutOff(Exception):  # noqa: N818  no error: a job's way to say that it goes on later
    """The job can go on later.

    Args:
        later_s: after how long [s]; None: after a usual pause.
        rest: the input of what is left to do; None: all of it.
    """

    def __init__(self, later_s: float | None = None, rest: str | None = None) -> None:
        self.later_s = later_s
        self.rest = rest
        super().__init__()


class Job(Protocol):
    """One kind of slow work."""

    async def run(self, job: JobRow) -> Written | None:
        """Do it and write the result; None when the job was forgotten meanwhile.

        Raises:
            PutOff: later.
            SendLaterError: as the server asks.
            SendUncertainError: after a pause.
        """
        ...

    async def give_up(self, job: JobRow) -> Written | None:
        """Write the result of work that can't be done."""
        ...


@dataclass(frozen=True)
class Bound:
    """How many jobs of a kind are done at the same time, in all and of one person; may change."""

    total: Callable[[], int]
    each: Callable[[], int]

    @classmethod
    def of(cls, number: int) -> Bound:
        """So many, whosever they are."""
        return cls(lambda: number, lambda: number)


class _Waiting(NamedTuple):
    """A job, and from when on it may begin, by the event loop's clock [s].

    Somebody may set the clock of the machine while a job waits; that moves no work.
    """

    job: JobRow
    from_s: float


class Jobs:
    """Does slow work, so much of each kind at the same time; people take turns.

    Args:
        store: where jobs are.
        kinds: who does which kind.
        bounds: how many of a kind at the same time.
        clock: tells the time.
        hand_on: takes what a result has added to the store.
        troubles: tells the log of what fails.
        over: is told which job is done, or ended.
        endings: how work that has begun is ended.
    """

    def __init__(
        self,
        store: Store,
        kinds: Mapping[JobKind, Job],
        bounds: Mapping[JobKind, Bound],
        *,
        clock: Callable[[], datetime],
        hand_on: Callable[[Written], None],
        troubles: Troubles,
        over: Callable[[str], None],
        endings: Endings,
    ) -> None:
        self._store = store
        self._kinds = kinds
        self._bounds = bounds
        self._clock = clock
        self._hand_on = hand_on
        self._troubles = troubles
        self._waiting: list[_Waiting] = []
        self._running: Counter[JobKind] = Counter()
        self._running_of: Counter[tuple[JobKind, str]] = Counter()
        self._order = Fairness()
        self._over = over
        self._endings = endings
        self._wake = Wake()

    @property
    def busy(self) -> bool:
        """Whether some work is not done."""
        return bool(self._waiting or self._running)

    def put(self, jobs: Iterable[JobRow]) -> None:
        """Take jobs that are in the store."""
        self._waiting += [self._from_now_on(job) for job in jobs]
        self._wake.ring()

    def _from_now_on(self, job: JobRow) -> _Waiting:
        """The job with its moment; one that was never begun may begin at once."""
        is_put_off = job.attempts or job.delays
        wait_s = (job.due - self._clock()).total_seconds() if is_put_off else 0.0
        return _Waiting(job, loop_time_s() + (wait_s if 0.0 < wait_s <= _LONGEST_S else 0.0))

    async def run(self) -> None:
        """Work until cancelled."""
        async with asyncio.TaskGroup() as group:
            while True:
                for job in self._take():
                    group.create_task(self._do(job))
                await self._wake.sleep(self._next_s())

    def end(self, job_ids: Collection[str]) -> None:
        """Leave jobs that are no longer in the store, whether they have begun or not."""
        if not job_ids:
            return
        for job, _ in self._waiting:
            if job.job_id in job_ids:
                self._over(job.job_id)
        self._waiting = [one for one in self._waiting if one.job.job_id not in job_ids]
        self._endings.end(job_ids)

    def _take(self) -> list[JobRow]:
        """The jobs that may begin, as far as the bounds go, each person's in turn."""
        now_s = loop_time_s()
        waiting = sorted(self._waiting, key=lambda one: one.from_s)
        due = [job for job, from_s in waiting if from_s <= now_s]
        taken = []
        while free := [job for job in due if self._has_room(job)]:
            person_id = self._order.next(job.key.person_id for job in free)
            job = next(job for job in free if job.key.person_id == person_id)
            self._order.serve(person_id)
            self._running[job.kind] += 1
            self._running_of[job.kind, person_id] += 1
            due.remove(job)
            taken.append(job)
        self._waiting = [one for one in self._waiting if one.job not in taken]
        return taken

    def _has_room(self, job: JobRow) -> bool:
        bound = self._bounds[job.kind]
        return (
            self._running[job.kind] < bound.total()
            and self._running_of[job.kind, job.key.person_id] < bound.each()
        )

    def _next_s(self) -> float | None:
        """How long until a job may begin [s]; where a kind is full, the end of one rings."""
        now_s = loop_time_s()
        waits = [max(0.0, from_s - now_s) for job, from_s in self._waiting if self._has_room(job)]
        return min(waits, default=None)

    async def _do(self, job: JobRow) -> None:
        again: JobRow | None = None
        try:
            again = await self._attempt(job)
        except SQLAlchemyError as error:
            self._troubles.store.met(where_it_broke(error))
            pause = timedelta(seconds=pause_s(job.delays + 1))
            again = replace(job, due=self._clock() + pause, delays=job.delays + 1)
        self._running -= Counter({job.kind: 1})
        self._running_of -= Counter({(job.kind, job.key.person_id): 1})
        if again is None:
            self._over(job.job_id)
        else:
            self._waiting.append(self._from_now_on(again))
        if not self.busy:
            self._order.forget()
        self._hand_on(Written())
        self._wake.ring()

    async def _attempt(self, job: JobRow) -> JobRow | None:
        """Begin a job; what comes back is to be begun again."""
        started = await self._store.start_job(job)
        if started is None:
            return None
        try:
            written = await self._work(started)
        except PutOff as later:
            self._troubles.jobs.met(kind_of(later.__cause__ or later))
            return await self._put_off(started, later)
        except SQLAlchemyError:
            raise
        except Exception as error:  # a bug: try again, then give up
            _LOG.error("job %s broke: %s", job.job_id, where_it_broke(error))
            return self._again(started)
        self._troubles.jobs.over()
        self._hand_on(written or Written())
        return None

    async def _work(self, job: JobRow) -> Written | None:
        """Do it, or give it up.

        Raises:
            PutOff: later.
        """
        work = self._kinds[job.kind]
        if job.attempts > _ATTEMPTS or job.delays > _DELAYS:
            return await work.give_up(job)
        try:
            return await work.run(job)
        except SendLaterError as error:
            raise PutOff(error.retry_after_s) from error
        except (SendUncertainError, OSError) as error:  # TimeoutError is an OSError
            raise PutOff from error

    async def _put_off(self, job: JobRow, later: PutOff) -> JobRow | None:
        """Keep a job for later, with what is left of it."""
        pause = later.later_s if later.later_s is not None else pause_s(job.delays + 1)
        if later.rest is not None:  # it gets on: the count of delays begins anew
            job = replace(job, input=later.rest, delays=0)
        if isinstance(later.__cause__, UnreachableError):
            job = replace(job, delays=min(job.delays, _UNCOUNTED))
        return await self._store.put_off_job(job, self._clock() + timedelta(seconds=pause))

    def _again(self, job: JobRow) -> JobRow:
        return replace(job, due=self._clock() + timedelta(seconds=pause_s(job.attempts)))
