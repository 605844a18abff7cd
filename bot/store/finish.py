"""The result of one handled event, written whole."""

from __future__ import annotations

from dataclasses import replace
from typing import NamedTuple

from sqlalchemy import Connection, and_

from bot.store import contexts, forget, inbox, jobs, outbox
from bot.store.rows import JobRow, Result, TakeBack, Written
from bot.store.tables import JOBS


def finish_event(connection: Connection, result: Result) -> Written:
    """Write all that one event changes, inside the caller's transaction.

    Raises:
        ConflictError: another has written a part of the context since it was read.
        GoneError: the event is handled already, or forgotten.
    """
    key = result.inbox.key
    inbox.remove_event(connection, result.inbox)
    contexts.write_context(connection, key, result.versions, result.changes, result.at)
    gone = _delete(connection, result)
    jobs.cancel_timers(connection, key, result.cancelled_timers)
    jobs.set_timers(connection, result.timers)
    new_jobs = result.jobs + gone.take_backs
    jobs.add_jobs(connection, new_jobs)
    messages = outbox.add_messages(connection, result.messages)
    return Written(
        messages=messages,
        jobs=new_jobs,
        timers=result.timers,
        unsent=gone.unsent,
        ended=gone.ended,
    )


class _Gone(NamedTuple):
    """The jobs that take back the rest of what was deleted, unsent messages, and ended jobs."""

    take_backs: tuple[JobRow, ...]
    unsent: tuple[int, ...]
    ended: tuple[str, ...]


def _delete(connection: Connection, result: Result) -> _Gone:
    """Delete frames, what measures them, and the person."""
    filled: tuple[JobRow, ...] = ()
    unsent: tuple[int, ...] = ()
    ended = _cancel(connection, result)
    for job in result.dropped_frames:
        frame = job.frame_event_id or ""
        found = forget.drop_frame(connection, job.key.person_id, frame)
        unsent += found.unsent
        ended += found.ended
        if found.take_back != TakeBack():
            filled += (replace(job, input=found.take_back.model_dump_json()),)
    if result.forget is None:
        return _Gone(filled, unsent, ended)
    jobs.add_jobs(connection, filled)  # so that forgetting finds and absorbs them
    found = forget.forget_person(connection, result.inbox)
    farewell = TakeBack.model_validate_json(result.forget.input).farewell
    everything = found.take_back.model_copy(update={"farewell": farewell})
    job = replace(result.forget, input=everything.model_dump_json())
    return _Gone((job,), unsent + found.unsent, ended + found.ended)


def _cancel(connection: Connection, result: Result) -> tuple[str, ...]:
    """Delete measuring that nobody waits for any more."""
    same = and_(*(JOBS.c[name] == value for name, value in result.inbox.key.values.items()))
    ended: tuple[str, ...] = ()
    for frames in result.cancelled_frames:
        ended += forget.end_measuring(connection, same, frozenset(frames))
    return ended
