"""What the store keeps: events once, contexts by version, messages until sent, jobs until done."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
import sqlalchemy as sa

from bot.store import contexts
from bot.store.database import Database
from bot.store.inbox import HANDLED_KEPT
from bot.store.rows import (
    ConflictError,
    GoneError,
    InboxRow,
    JobKind,
    Part,
    PictureRow,
    Result,
    StoredText,
    TakeBack,
    conversation_key,
    thread_of_answer,
)
from bot.store.store import Store
from bot.store.tables import HANDLED
from tests.store.examples import KEY, NOW, PERSON, job, message, origin, row_of, text, timer


async def one(store: Store, words: str = "f/11", **where: str) -> InboxRow:
    """One event, taken in."""
    return row_of(await store.take_in([text(words, **where)], None, NOW))


@pytest.mark.parametrize(
    ("where", "thread_key", "thread"),
    [
        ({}, "", None),
        ({"thread_id": "$root"}, "", "$root"),
        ({"direct": False}, "$event", "$event"),
        ({"direct": False, "thread_id": "$root"}, "$root", "$root"),
    ],
)
def test_conversations_are_keyed_by_thread_in_group_rooms_only(
    where: dict[str, object], thread_key: str, thread: str | None
) -> None:
    """In a direct room all threads are one conversation; in a group each is its own."""
    place = origin(event_id="$event", **where)  # type: ignore[arg-type]
    assert conversation_key(place).thread_key == thread_key
    assert thread_of_answer(place) == thread


async def test_events_come_back_in_order_and_once(store: Store) -> None:
    """Known ids are ignored, within a batch, in the next, and after they were handled."""
    first, second, third = text("a"), text("b"), text("c")
    rows = await store.take_in([first, second, first], "token", NOW)
    assert [row.event for row in rows] == [first, second]
    await store.finish_event(Result(rows[0]))
    again = await store.take_in([second, third, first], None, NOW)
    assert [row.event for row in again] == [third]
    backlog = await store.backlog()
    assert [row.event for row in backlog.inbox] == [second, third]
    assert await store.sync_token() == "token"


async def test_the_sync_token_follows_the_events(store: Store) -> None:
    """The token is replaced with each batch, also with an empty one."""
    assert await store.sync_token() is None
    for token in ("one", "two"):
        await store.take_in([], token, NOW)
        assert await store.sync_token() == token
    assert await store.take_in([], None, NOW) == ()


async def test_an_event_counts_as_begun_when_it_is_begun(store: Store) -> None:
    """Starts alone blame nobody, since a stop may come from outside; each beginning counts."""
    fresh = await one(store, "a")
    await one(store, "b")
    assert not fresh.left
    for attempts in (1, 2):
        first, _ = (await store.backlog()).inbox
        assert first.left
        begun = await store.count_attempt(first)
        assert (begun.attempts, begun.left) == (attempts, False)
    assert [row.attempts for row in (await store.backlog()).inbox] == [2, 0]
    await store.finish_event(Result(fresh))
    with pytest.raises(GoneError):
        await store.count_attempt(first)


async def test_a_context_is_written_once_per_version(store: Store) -> None:
    """Of two answers that read the same version, the second is refused and writes nothing."""
    first, second = await one(store, "a"), await one(store, "b")
    changes = {part: f'{{"by": "{part.value}"}}' for part in Part}
    await store.finish_event(Result(first, {}, changes))
    late = Result(second, {}, {Part.PERSON: "late"}, messages=(message("late"),))
    with pytest.raises(ConflictError):
        await store.finish_event(late)
    stored = await store.read_context(KEY)
    assert stored == {part: StoredText(changes[part], 1) for part in Part}
    backlog = await store.backlog()
    assert [row.position for row in backlog.inbox] == [second.position]
    assert backlog.messages == ()
    versions = {part: text.version for part, text in stored.items()}
    await store.finish_event(replace(late, versions=versions))
    assert (await store.read_context(KEY))[Part.PERSON] == StoredText("late", 2)


async def test_an_unchanged_part_is_compared_too(store: Store) -> None:
    """An answer that rests on an old kit is computed anew, although it did not change the kit."""
    rows = [await one(store, words) for words in "abc"]
    await store.finish_event(Result(rows[0], {}, {Part.PERSON: "kit"}))
    read = {Part.PERSON: 1}
    await store.finish_event(Result(rows[1], read, {Part.PERSON: "new kit"}))
    with pytest.raises(ConflictError):
        await store.finish_event(Result(rows[2], read, {Part.CONVERSATION: "answer"}))


async def test_a_place_can_be_left(store: Store) -> None:
    """A part that becomes nothing loses its row."""
    first, second = await one(store, "a"), await one(store, "b")
    await store.finish_event(Result(first, {}, {Part.PLACE: "fall"}))
    await store.finish_event(Result(second, {Part.PLACE: 1}, {Part.PLACE: None}))
    assert await store.read_context(KEY) == {}


async def test_an_event_is_finished_once(store: Store) -> None:
    """The result of an event that was finished already is refused."""
    row = await one(store)
    await store.finish_event(Result(row))
    with pytest.raises(GoneError):
        await store.finish_event(Result(row, messages=(message(),)))
    assert (await store.backlog()).messages == ()


async def test_another_process_that_writes_in_between_is_noticed(store: Store, url: str) -> None:
    """The versions are compared in the write itself, not only before it."""
    del store
    database = Database(url)
    await database.write(
        lambda connection: contexts._insert_part(connection, Part.PERSON, KEY, {"body": "kit"})
    )
    for version, body in ((0, "new"), (7, "changed")):
        with pytest.raises(ConflictError):
            await _write(database, version, body)
    await database.close()


async def _write(database: Database, version: int, body: str) -> None:
    await database.write(
        lambda connection: contexts._write_part(
            connection, Part.PERSON, KEY, version, {"body": body}
        )
    )


async def test_messages_wait_in_order_until_they_are_sent(store: Store) -> None:
    """What is written comes back whole; what is sent leaves its ids only."""
    row = await one(store)
    urgent = message("Step back.", urgent=True, thread_id="$root", picture="p.png")
    written = await store.finish_event(Result(row, messages=(message("one"), urgent)))
    assert (await store.backlog()).messages == written.messages
    first, second = written.messages
    assert first.position < second.position
    await store.keep_upload(second, '{"address": "mxc"}')
    (kept,) = (await store.backlog()).messages[1:]
    assert kept == replace(second, uploaded='{"address": "mxc"}')
    assert await store.message_sent(first, "$one")
    assert [row.row_id for row in (await store.backlog()).messages] == [second.row_id]
    await store.message_refused(second)
    assert (await store.backlog()).messages == ()
    assert not await store.message_sent(second, "$two")
    assert await store.own_message(KEY.room_id, "$one") is not None


async def test_a_sent_message_keeps_the_name_of_its_question(store: Store) -> None:
    """A reply is told its question, in the conversation to which it was put and no other."""
    put = message("Which way?\n1 across", question="flow")
    written = await store.finish_event(Result(await one(store), messages=(put, message("f/11"))))
    assert (await store.backlog()).messages == written.messages
    assert await store.question_of(KEY, "$put") is None
    for row, event_id in zip(written.messages, ("$put", "$told"), strict=True):
        await store.message_sent(row, event_id)
    assert await store.question_of(KEY, "$put") == "flow"
    assert await store.question_of(KEY, "$told") is None
    assert await store.question_of(replace(KEY, person_id="@bo:mill.example"), "$put") is None


async def test_an_unkept_message_leaves_nothing(store: Store) -> None:
    """A farewell is gone when it is sent."""
    row = await one(store)
    written = await store.finish_event(Result(row, messages=(message("bye", kept=False),)))
    assert await store.message_sent(written.messages[0], "$bye")
    assert await store.own_message(KEY.room_id, "$bye") is None


async def test_a_job_is_done_once(store: Store) -> None:
    """Its result goes in with the job going out; a second result finds no job."""
    work = job(frame="$frame", input='{"a": 1}')
    await store.finish_event(Result(await one(store), jobs=(work,)))
    assert (await store.backlog()).jobs == (work,)
    started = await store.start_job(work)
    assert started == replace(work, attempts=1)
    later = await store.put_off_job(started, NOW + timedelta(minutes=1))
    assert later == replace(work, delays=1, due=NOW + timedelta(minutes=1))
    assert (await store.backlog()).jobs == (later,)
    event = text("result")
    picture = PictureRow("p.png", PERSON, NOW)
    written = await store.finish_job(
        later, NOW, events=(event,), pictures=(picture,), messages=(message(),)
    )
    assert written is not None
    assert [row.event for row in written.inbox] == [event]
    assert await store.finish_job(later, NOW, events=(text("again"),)) is None
    assert await store.start_job(later) is None
    assert await store.picture_names() == ("p.png",)


async def test_timers_are_named_within_their_conversation(store: Store) -> None:
    """A name replaces its like, and cancelling drops it; other conversations are not touched."""
    other = replace(KEY, thread_key="$other")
    old, new, elsewhere = timer("out"), timer("out"), timer("out", other)
    await store.finish_event(Result(await one(store), timers=(old, elsewhere)))
    await store.finish_event(Result(await one(store), timers=(new,)))
    assert set((await store.backlog()).timers) == {new, elsewhere}
    assert await store.fire_timer(old, text("late"), NOW) == ()
    assert len(await store.fire_timer(new, text("now"), NOW)) == 1
    await store.finish_event(Result(await one(store), cancelled_timers=("out", "unknown")))
    assert (await store.backlog()).timers == (elsewhere,)


async def test_what_is_past_its_time_goes(store: Store, url: str) -> None:
    """Expired pictures and very old event ids go; the others stay."""
    work, more = job(), job()
    await store.finish_event(Result(await one(store), jobs=(work, more)))
    await store.finish_job(work, NOW, pictures=(PictureRow("old.png", PERSON, NOW),))
    later = NOW + HANDLED_KEPT + timedelta(seconds=1)
    await store.take_in([text("young")], None, later)
    await store.finish_job(
        more, NOW, pictures=(PictureRow("new.png", PERSON, NOW + timedelta(days=900)),)
    )
    kept = timedelta(days=400), timedelta(days=30)
    assert await store.expire(later - timedelta(seconds=0.5), *kept) == ("old.png",)
    assert await store.picture_names() == ("new.png",)
    await store.expire(later, *kept)
    database = Database(url)
    known = await database.read(
        lambda connection: connection.execute(sa.select(HANDLED.c.taken_at)).scalars().all()
    )
    await database.close()
    assert known == [later.timestamp()]


async def test_dropping_a_frame_finds_its_pictures_and_messages(store: Store) -> None:
    """Sent pictures are to be taken back, unsent ones are dropped, the check is stopped."""
    work, check = job(frame="$frame"), job(frame="$frame")
    written = await store.finish_event(Result(await one(store), jobs=(work, check)))
    picture = PictureRow("p.png", PERSON, NOW + timedelta(days=1), "$frame")
    done = await store.finish_job(
        work, NOW, pictures=(picture,), messages=tuple(message(picture="p.png") for _ in range(2))
    )
    assert done is not None
    sent, unsent = done.messages
    await store.message_sent(sent, "$shown")
    drop = job(JobKind.TAKE_BACK, frame="$frame")
    nothing = job(JobKind.TAKE_BACK, frame="$other")
    written = await store.finish_event(Result(await one(store), dropped_frames=(drop, nothing)))
    (taken,) = written.jobs
    found = TakeBack.model_validate_json(taken.input)
    assert (found.messages, found.pictures) == (((KEY.room_id, "$shown"),), ("p.png",))
    assert [message.row_id for message in found.unsure] == [unsent.row_id]
    assert written.unsent == (unsent.position,)
    assert [left.job_id for left in (await store.backlog()).jobs] == [drop.job_id]
    assert not await store.message_sent(unsent, "$late")


async def test_forgetting_takes_over_what_is_still_to_take_back(store: Store) -> None:
    """The job of a dropped frame goes with the person's other jobs; its work does not."""
    earlier = TakeBack(messages=(("!r:mill.example", "$old"),), pictures=("old.png",))
    left = job(JobKind.TAKE_BACK, input=earlier.model_dump_json())
    await store.finish_event(Result(await one(store), jobs=(left,)))
    await one(store, "before")
    wish = await one(store, "forget me")
    after = await one(store, "after")
    forget = job(JobKind.TAKE_BACK, input=TakeBack().model_dump_json())
    written = await store.finish_event(Result(wish, forget=forget))
    (work,) = written.jobs
    assert TakeBack.model_validate_json(work.input) == earlier.model_copy(update={"shred": True})
    backlog = await store.backlog()
    assert [row.position for row in backlog.inbox] == [after.position]
    assert [row.job_id for row in backlog.jobs] == [forget.job_id]


async def test_a_sent_message_names_its_person_and_its_thread(store: Store) -> None:
    """Who taps on a message is compared with whom it went to; others' events are nobody's."""
    inside, outside = message("one", thread_id="$root"), message("two")
    written = await store.finish_event(Result(await one(store), messages=(inside, outside)))
    for row, event_id in zip(written.messages, ("$inside", "$outside"), strict=True):
        await store.message_sent(row, event_id)
    assert await store.own_message(KEY.room_id, "$inside") == (KEY.person_id, "$root")
    assert await store.own_message(KEY.room_id, "$outside") == (KEY.person_id, None)
    assert await store.own_message(KEY.room_id, "$other") is None
    assert await store.own_message("!other:mill.example", "$inside") is None


async def test_a_thread_is_found_by_what_stands_in_it(store: Store) -> None:
    """An event that waits or was answered tells its thread, to its own person only."""
    waiting = text(event_id="$wait_s", thread_id="$root", direct=False)  # type: ignore[arg-type]
    (row,) = await store.take_in([waiting], None, NOW)
    key = row.key
    assert await store.thread_with(key.room_id, key.person_id, "$wait_s") == "$root"
    assert await store.thread_with(key.room_id, key.person_id, "$waits") is None
    assert await store.thread_with(key.room_id, "@bo:mill.example", "$wait_s") is None
    body = '{"history": [{"event_id": "$wait_s"}]}'
    await store.finish_event(Result(row, changes={Part.CONVERSATION: body}))
    assert await store.thread_with(key.room_id, key.person_id, "$wait_s") == "$root"
    # An underscore stands for itself alone.
    assert await store.thread_with(key.room_id, key.person_id, "$wait-s") is None
