"""Rooms that were replaced: all that is stored of one goes on in the other."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Final

from pydantic import TypeAdapter
from sqlalchemy import Connection, Table, and_, delete, func, select, update

from bot.dialogue.events import Event, Origin
from bot.store import jobs, outbox
from bot.store.rows import (
    ConversationKey,
    JobRow,
    OutboxRow,
    Result,
    TimerRow,
    conversation_key,
)
from bot.store.tables import CONVERSATIONS, INBOX, OUTBOX, ROOMS

_EVENT: Final[TypeAdapter[Event]] = TypeAdapter(Event)
#: The thread of what came over from another room: none, since its root stayed there. In a group
#: room the answers stand in the room itself, until the person begins a thread.
NO_THREAD: Final = ""


class Moves:
    """Where things go on whose rows in memory still name the place that they had before.

    It is consulted inside of transactions, so that nothing is written to a place that has moved
    meanwhile; after a restart all rows are read anew, so that it need not be stored.
    """

    def __init__(self) -> None:
        self._rooms: dict[str, str] = {}
        self._threads: dict[tuple[str, str], str] = {}  # by room and person

    def add_room(self, before: str, after: str) -> None:
        """What is of one room goes on in the other."""
        self._rooms[before] = after

    def add_thread(self, room_id: str, person_id: str, thread_id: str) -> None:
        """What a person has outside threads goes on in this one."""
        self._threads[room_id, person_id] = thread_id

    def origin(self, origin: Origin) -> Origin:
        """The origin as it is by now."""
        room_id, thread_id = self._room(origin.room_id), origin.thread_id
        if room_id != origin.room_id:
            thread_id = None if origin.direct else NO_THREAD
        if thread_id == NO_THREAD:
            thread_id = self._threads.get((room_id, origin.person_id), thread_id)
        if (room_id, thread_id) == (origin.room_id, origin.thread_id):
            return origin
        return origin.model_copy(update={"room_id": room_id, "thread_id": thread_id})

    def event(self, event: Event) -> Event:
        """The event, with its origin as it is by now."""
        origin = self.origin(event.origin)
        return event if origin is event.origin else event.model_copy(update={"origin": origin})

    def key(self, key: ConversationKey) -> ConversationKey:
        """The key as it is by now."""
        room_id, thread = self._room(key.room_id), key.thread_key
        if room_id != key.room_id:
            thread = NO_THREAD
        if thread == NO_THREAD:
            thread = self._threads.get((room_id, key.person_id), thread)
        return ConversationKey(room_id, key.person_id, thread)

    def message(self, row: OutboxRow) -> OutboxRow:
        """The message as it is to be sent by now: what it stands under or answers stayed behind."""
        key = self.key(row.key)
        if key == row.key:
            return row
        message = row.message.model_copy(update={"reply_to": None})
        thread_id = key.thread_key or None
        return replace(row, key=key, thread_id=thread_id, message=message, uploaded=None)

    def job(self, job: JobRow) -> JobRow:
        """The job as it is by now."""
        return replace(job, key=self.key(job.key), origin=self.origin(job.origin))

    def timer(self, timer: TimerRow) -> TimerRow:
        """The reminder as it is by now."""
        return replace(timer, key=self.key(timer.key), origin=self.origin(timer.origin))

    def result(self, result: Result) -> Result:
        """All that an event changes, where it is by now."""
        if not self._rooms and not self._threads:
            return result
        inbox = result.inbox
        return replace(
            result,
            inbox=replace(inbox, key=self.key(inbox.key), event=self.event(inbox.event)),
            messages=tuple(self.message(row) for row in result.messages),
            jobs=tuple(self.job(row) for row in result.jobs),
            timers=tuple(self.timer(row) for row in result.timers),
            dropped_frames=tuple(self.job(row) for row in result.dropped_frames),
            forget=None if result.forget is None else self.job(result.forget),
        )

    def _room(self, room_id: str) -> str:
        seen = {room_id}
        while (after := self._rooms.get(room_id)) is not None and after not in seen:
            seen.add(after)
            room_id = after
        return room_id


def move_room(
    connection: Connection, moves: Moves, before: str, after: str
) -> tuple[OutboxRow, ...]:
    """Let all rows of one room be of another; what is sent stays known where it stands.

    Args:
        connection: inside a transaction.
        moves: knows of this move already.
        before: the room that was replaced.
        after: the room that replaces it.

    Returns:
        The messages that were not sent, as they are to be sent now.
    """
    _move_conversations(connection, before, after)
    _move_unless_there(connection, ROOMS, {"room_id": before}, {"room_id": after})
    _move_events(connection, moves, before)
    for job in (job for job in jobs.waiting_jobs(connection) if job.key.room_id == before):
        jobs.move_job(connection, moves.job(job))
    for timer in (row for row in jobs.waiting_timers(connection) if row.key.room_id == before):
        jobs.remove_timer(connection, timer)
        jobs.set_timers(connection, (moves.timer(timer),))
    waiting = (row for row in outbox.waiting_messages(connection) if row.key.room_id == before)
    messages = tuple(moves.message(row) for row in waiting)
    for row in messages:
        outbox.move_message(connection, row)
    return messages


def adopt(connection: Connection, moves: Moves, event: Event) -> None:
    """Let what a person brought along from another room go on in the thread that begins here.

    Args:
        connection: inside a transaction.
        moves: learns of the thread.
        event: as it comes from its room.
    """
    origin = event.origin
    if origin.direct or not origin.addressed or origin.thread_id is not None:
        return
    brought = ConversationKey(origin.room_id, origin.person_id, NO_THREAD)
    found = connection.execute(select(CONVERSATIONS.c.version).where(_is(CONVERSATIONS, brought)))
    if found.first() is None:
        return
    moves.add_thread(origin.room_id, origin.person_id, origin.event_id)
    thread = {"thread_key": origin.event_id}
    _move_unless_there(connection, CONVERSATIONS, brought.values, brought.values | thread)
    _move_events(connection, moves, origin.room_id)
    for job in (job for job in jobs.waiting_jobs(connection) if job.key == brought):
        jobs.move_job(connection, moves.job(job))
    for timer in (row for row in jobs.waiting_timers(connection) if row.key == brought):
        jobs.remove_timer(connection, timer)
        jobs.set_timers(connection, (moves.timer(timer),))


def _is(table: Table, key: ConversationKey) -> Any:
    return and_(*(table.c[name] == value for name, value in key.values.items()))


def _move_conversations(connection: Connection, before: str, after: str) -> None:
    """Of each person the conversation that the bot answered in last; threads stay behind."""
    positions = connection.execute(
        select(OUTBOX.c.person_id, OUTBOX.c.thread_key, func.max(OUTBOX.c.position).label("last"))
        .where(OUTBOX.c.room_id == before)
        .group_by(OUTBOX.c.person_id, OUTBOX.c.thread_key)
    )
    last = {(row.person_id, row.thread_key): row.last for row in positions}
    columns = (CONVERSATIONS.c.person_id, CONVERSATIONS.c.thread_key)
    rows = connection.execute(select(*columns).where(CONVERSATIONS.c.room_id == before)).all()
    rows = sorted(rows, key=lambda row: last.get((row.person_id, row.thread_key), 0))
    for row in reversed(rows):  # the latest first: the others find the place taken
        key = ConversationKey(before, row.person_id, row.thread_key)
        to = ConversationKey(after, row.person_id, NO_THREAD)
        _move_unless_there(connection, CONVERSATIONS, key.values, to.values)


def _move_unless_there(
    connection: Connection, table: Table, key: dict[str, str], to: dict[str, str]
) -> None:
    """Give a row another key; when there is one with that key, it is the newer: this one goes."""
    this = and_(*(table.c[name] == value for name, value in key.items()))
    other = and_(*(table.c[name] == value for name, value in to.items()))
    if connection.execute(select(table.c.version).where(other)).first() is not None:
        connection.execute(delete(table).where(this))
    else:
        connection.execute(update(table).where(this).values(**to))


def _move_events(connection: Connection, moves: Moves, room_id: str) -> None:
    """Rewrite the events that wait in a room."""
    rows = connection.execute(
        select(INBOX.c.position, INBOX.c.body).where(INBOX.c.room_id == room_id)
    ).all()
    for row in rows:
        event = moves.event(_EVENT.validate_json(row.body))
        values = conversation_key(event.origin).values | {"body": event.model_dump_json()}
        same = INBOX.c.position == row.position
        connection.execute(update(INBOX).where(same).values(**values))
