"""Slow work and reminders: rows that go when they are done."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import UTC, datetime
from typing import Any

from sqlalchemy import Connection, Row, and_, delete, insert, select, update

from bot.dialogue.events import Origin
from bot.store.rows import ConversationKey, JobKind, JobRow, TimerRow
from bot.store.tables import JOBS, TIMERS


def add_jobs(connection: Connection, jobs: Sequence[JobRow]) -> None:
    """Write work to do."""
    if jobs:
        connection.execute(insert(JOBS), [_job_columns(job) for job in jobs])


def _job_columns(job: JobRow) -> dict[str, Any]:
    return job.key.values | {
        "job_id": job.job_id,
        "kind": job.kind.value,
        "frame_event_id": job.frame_event_id,
        "due": job.due.timestamp(),
        "origin": job.origin.model_dump_json(),
        "input": job.input,
        "attempts": job.attempts,
        "delays": job.delays,
        "created_at": job.created_at.timestamp(),
    }


def waiting_jobs(connection: Connection) -> tuple[JobRow, ...]:
    """All work that is not done, the oldest first; what was under way counts as not done."""
    rows = connection.execute(select(JOBS).order_by(JOBS.c.due, JOBS.c.created_at))
    return tuple(_job(row) for row in rows)


def _job(row: Row[Any]) -> JobRow:
    return JobRow(
        job_id=row.job_id,
        kind=JobKind(row.kind),
        key=ConversationKey(row.room_id, row.person_id, row.thread_key),
        origin=Origin.model_validate_json(row.origin),
        input=row.input,
        due=datetime.fromtimestamp(row.due, UTC),
        created_at=datetime.fromtimestamp(row.created_at, UTC),
        frame_event_id=row.frame_event_id,
        attempts=row.attempts,
        delays=row.delays,
    )


def write_job_state(connection: Connection, job: JobRow) -> bool:
    """Write how far a job has come; False when the job is no longer there."""
    state = {
        "input": job.input,
        "due": job.due.timestamp(),
        "attempts": job.attempts,
        "delays": job.delays,
    }
    same = JOBS.c.job_id == job.job_id
    changed = connection.execute(update(JOBS).where(same).values(**state))
    return bool(changed.rowcount)


def move_job(connection: Connection, job: JobRow) -> None:
    """Write to which conversation a job belongs by now."""
    where = job.key.values | {"origin": job.origin.model_dump_json()}
    connection.execute(update(JOBS).where(JOBS.c.job_id == job.job_id).values(**where))


def remove_job(connection: Connection, job: JobRow) -> bool:
    """Take out a job whose result is written with this; False when it is no longer there."""
    gone = connection.execute(delete(JOBS).where(JOBS.c.job_id == job.job_id))
    return bool(gone.rowcount)


def set_timers(connection: Connection, timers: Iterable[TimerRow]) -> None:
    """Write reminders; one of the same name in the same conversation is replaced."""
    for timer in timers:
        cancel_timers(connection, timer.key, (timer.name,))
        connection.execute(
            insert(TIMERS).values(
                **timer.key.values,
                timer_id=timer.timer_id,
                name=timer.name,
                due=timer.due.timestamp(),
                origin=timer.origin.model_dump_json(),
            )
        )


def cancel_timers(connection: Connection, key: ConversationKey, names: Sequence[str]) -> None:
    """Drop reminders of a conversation by name; unknown names are ignored."""
    if not names:
        return
    same = and_(*(TIMERS.c[name] == value for name, value in key.values.items()))
    connection.execute(delete(TIMERS).where(same, TIMERS.c.name.in_(names)))


def waiting_timers(connection: Connection) -> tuple[TimerRow, ...]:
    """All reminders that have not fired."""
    rows = connection.execute(select(TIMERS).order_by(TIMERS.c.due))
    return tuple(_timer(row) for row in rows)


def _timer(row: Row[Any]) -> TimerRow:
    return TimerRow(
        timer_id=row.timer_id,
        key=ConversationKey(row.room_id, row.person_id, row.thread_key),
        name=row.name,
        due=datetime.fromtimestamp(row.due, UTC),
        origin=Origin.model_validate_json(row.origin),
    )


def remove_timer(connection: Connection, timer: TimerRow) -> bool:
    """Take out a reminder that fires; False when it was cancelled or replaced."""
    gone = connection.execute(delete(TIMERS).where(TIMERS.c.timer_id == timer.timer_id))
    return bool(gone.rowcount)
