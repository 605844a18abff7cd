"""The result of one handled event, written whole."""

from __future__ import annotations

from dataclasses import replace

from sqlalchemy import Connection

from bot.store import contexts, forget, inbox, jobs, outbox
from bot.store.rows import JobRow, Result, TakeBack, Written


def finish_event(connection: Connection, result: Result) -> Written:
    """Write all that one event changes, inside the caller's transaction.

    Raises:
        ConflictError: another has written a part of the context since it was read.
        GoneError: the event is handled already, or forgotten.
    """
    key = result.inbox.key
    inbox.remove_event(connection, result.inbox)
    contexts.write_context(connection, key, result.versions, result.changes, result.at)
    take_backs, unsent = _delete(connection, result)
    jobs.cancel_timers(connection, key, result.cancelled_timers)
    jobs.set_timers(connection, result.timers)
    new_jobs = result.jobs + take_backs
    jobs.add_jobs(connection, new_jobs)
    messages = outbox.add_messages(connection, result.messages)
    return Written(messages=messages, jobs=new_jobs, timers=result.timers, unsent=unsent)


def _delete(connection: Connection, result: Result) -> tuple[tuple[JobRow, ...], tuple[int, ...]]:
    """Delete frames and the person; the jobs that take back the rest, and unsent messages."""
    filled: tuple[JobRow, ...] = ()
    unsent: tuple[int, ...] = ()
    for job in result.dropped_frames:
        frame = job.frame_event_id or ""
        found = forget.drop_frame(connection, job.key.person_id, frame)
        unsent += found.unsent
        if found.take_back != TakeBack():
            filled += (replace(job, input=found.take_back.model_dump_json()),)
    if result.forget is None:
        return filled, unsent
    jobs.add_jobs(connection, filled)  # so that forgetting finds and absorbs them
    found = forget.forget_person(connection, result.inbox)
    farewell = TakeBack.model_validate_json(result.forget.input).farewell
    everything = found.take_back.model_copy(update={"farewell": farewell})
    job = replace(result.forget, input=everything.model_dump_json())
    return (job,), unsent + found.unsent
