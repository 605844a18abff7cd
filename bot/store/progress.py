"""Messages that tell how far slow work has come: shown once, replaced, and taken back."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from sqlalchemy import Connection, Row, delete, insert, select, update

from bot.store.forget import take_back_messages
from bot.store.jobs import add_jobs
from bot.store.outbox import add_messages, sent_as
from bot.store.rows import ConversationKey, JobRow, OutboxRow, ProgressRow, TakeBack, Written
from bot.store.tables import PROGRESS


def standing_progress(connection: Connection) -> tuple[ProgressRow, ...]:
    """All messages of progress that stand in rooms, or are on their way there."""
    return tuple(_row(row) for row in connection.execute(select(PROGRESS)))


def _row(row: Row[Any]) -> ProgressRow:
    key = ConversationKey(row.room_id, row.person_id, row.thread_key)
    return ProgressRow(row.row_id, key, row.done, row.total, row.edit_id)


def show(connection: Connection, row: ProgressRow, message: OutboxRow) -> OutboxRow:
    """Write the message, and that it stands for progress."""
    columns = {"row_id": row.row_id, "done": row.done, "total": row.total}
    connection.execute(insert(PROGRESS).values(**columns, **row.key.values))
    (written,) = add_messages(connection, (message,))
    return written


def change(
    connection: Connection, row: ProgressRow, message: OutboxRow
) -> tuple[ProgressRow, OutboxRow] | None:
    """Write a message that replaces the words of the one that stands.

    Returns:
        None, with nothing written, while that one or its last replacement is on its way, or when
        it does not stand any more.
    """
    same = PROGRESS.c.row_id == row.row_id
    found = connection.execute(select(PROGRESS).where(same)).first()
    original = sent_as(connection, row.row_id)
    if found is None or original is None:
        return None
    if found.edit_id is not None and sent_as(connection, found.edit_id) is None:
        return None
    changes = {"done": row.done, "total": row.total, "edit_id": message.row_id}
    connection.execute(update(PROGRESS).where(same).values(**changes))
    words = message.message.model_copy(update={"replaces": original})
    (written,) = add_messages(connection, (replace(message, message=words),))
    return replace(row, edit_id=message.row_id), written


def end(connection: Connection, row: ProgressRow, job: JobRow) -> Written:
    """Let the message stand for nothing any more; what is in its room is taken out by a job.

    What replaced its words stays known by its ids, for `forget me`: clients show nothing of it
    once the message is taken back.

    Args:
        connection: of the transaction.
        row: the message.
        job: takes messages back; what, is filled in here.

    Returns:
        That job, where there is something for it, and messages that need not be sent.
    """
    take_back, unsent = _end(connection, row)
    if take_back == TakeBack():
        return Written(unsent=unsent)
    filled = replace(job, input=take_back.model_dump_json())
    add_jobs(connection, (filled,))
    return Written(jobs=(filled,), unsent=unsent)


def _end(connection: Connection, row: ProgressRow) -> tuple[TakeBack, tuple[int, ...]]:
    """What is to be taken back outside, and positions of messages that need not be sent."""
    same = PROGRESS.c.row_id == row.row_id
    edit_id = connection.execute(select(PROGRESS.c.edit_id).where(same)).scalar()
    gone = connection.execute(delete(PROGRESS).where(same))
    if not gone.rowcount:
        return TakeBack(), ()
    unsent_edit = edit_id if edit_id is not None and sent_as(connection, edit_id) is None else None
    return take_back_messages(connection, [row.row_id, *([unsent_edit] if unsent_edit else [])])
