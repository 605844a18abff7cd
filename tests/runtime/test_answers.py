"""Messages in, answers out: order, isolation, threads, failures."""

from __future__ import annotations

import asyncio
import logging
from datetime import datetime

import pytest

from bot.dialogue.actions import Action, Say
from bot.dialogue.context import Context
from bot.dialogue.events import Event, OtherReceived, TextReceived, Withdrawn
from bot.runtime.workers import Dialogue
from tests.runtime.fakes import (
    FERN,
    MOSS,
    ROOM,
    FakeTransport,
    World,
    failure,
    frame,
    handle,
    origin,
    text,
)


async def test_messages_are_answered_in_order(world: World) -> None:
    """Ten messages of one conversation get ten answers, one after the other."""
    said = await world.says(*(text(f"m{number}") for number in range(10)))
    assert said == [f"{number + 1}: m{number}" for number in range(10)]


async def test_a_message_that_comes_twice_is_answered_once(world: World) -> None:
    """Duplicates are dropped, in one batch, in a later one, and after a restart."""
    event = text("hello")
    await world.says(event, event)
    await world.says(event)
    assert world.server.bodies == ["1: hello"]


async def test_conversations_of_one_person_do_not_lose_each_others_words(world: World) -> None:
    """Two rooms at once write the same person's row; both writes are there in the end."""
    rooms = [f"!room{number}:mill.example" for number in range(6)]
    await world.says(*(text("hi", room_id=room) for room in rooms for _ in range(3)))
    assert sorted(world.server.bodies) == sorted(["1: hi", "2: hi", "3: hi"] * 6)
    seen: list[int] = []

    def look(context: Context, event: object, now: object) -> tuple[Context, tuple[Action, ...]]:
        del event, now
        seen.append(len(context.person.cautions))
        return context, ()

    await world.says(text("look"), dialogue=Dialogue(look, failure))
    assert seen == [18]


@pytest.mark.parametrize(
    ("where", "thread", "reply", "mentions"),
    [
        ({}, None, None, ()),
        ({"thread_id": "$root"}, "$root", "$asked", ()),
        ({"direct": False}, "$asked", "$asked", (FERN,)),
        ({"direct": False, "thread_id": "$root"}, "$root", "$asked", (FERN,)),
    ],
    ids=["direct", "thread in a direct room", "group", "thread in a group"],
)
async def test_answers_stand_where_the_question_stood(
    world: World,
    where: dict[str, object],
    thread: str | None,
    reply: str | None,
    mentions: tuple[str, ...],
) -> None:
    """In a direct room as asked; in a group room always in a thread, and with a mention."""
    await world.says(text("hi", event_id="$asked", **where))
    ((_, said),) = world.server.sent
    assert (said.thread_id, said.reply_to, said.mentions) == (thread, reply, mentions)


async def test_a_message_knows_how_many_wait_behind_it(world: World) -> None:
    """Of several that came together, those count that get an answer: no withdrawal, no aside."""
    behind: list[int] = []

    def look(context: Context, event: Event, now: datetime) -> tuple[Context, tuple[Action, ...]]:
        del now
        behind.append(event.origin.behind)
        return context, ()

    aside = text("to you all", addressed=False)
    gone = Withdrawn(origin=origin(), event_id="$nothing")
    three = (text("one"), frame(), aside, gone, text("two"))
    await world.says(*three, dialogue=Dialogue(look, failure))
    assert behind == [2, 1, 1, 1, 0]


async def test_threads_share_a_conversation_in_a_direct_room_only(world: World) -> None:
    """The count goes on through threads of a direct room and begins anew in those of a group."""
    await world.says(text("a"), text("b", thread_id="$one"))
    group = {"direct": False, "room_id": "!group:mill.example"}
    await world.says(text("c", **group), text("d", thread_id="$two", **group))
    assert sorted(world.server.bodies) == ["1: a", "1: c", "1: d", "2: b"]


async def test_a_correction_belongs_to_the_thread_of_what_it_corrects(world: World) -> None:
    """In a group room the edit of a first message goes on in the thread that its answer began."""
    first = text("f/22", direct=False, event_id="$first")
    edit = TextReceived(origin=origin(direct=False), text="f/11", corrects="$first")
    taken = Withdrawn(origin=origin(direct=False), event_id="$first")
    await world.says(first, edit, taken)
    assert world.server.bodies == ["1: f/22", "2: f/11"]
    assert {outgoing.thread_id for _, outgoing in world.server.sent} == {"$first"}


async def test_no_row_is_made_for_what_changes_nothing(world: World) -> None:
    """An event without an answer leaves only its id behind, so that it stays unanswered."""
    async with world.running() as runtime:
        await runtime.take_in([OtherReceived(origin=origin(), what="sticker")], "token 1")
        await runtime.drain()
        assert await runtime.sync_token() == "token 1"
    assert world.server.sent == []


async def test_own_messages_and_threads_are_known(world: World) -> None:
    """After sending, the event and its thread count as the bot's; others do not."""
    async with world.running() as runtime:
        await runtime.take_in([text("hi", direct=False, event_id="$asked")], None)
        await runtime.drain()
        assert await runtime.is_own_thread(ROOM, "$asked")
        assert await runtime.own_message(ROOM, "$own0") is not None
        assert not await runtime.is_own_thread(ROOM, "$other")
        assert await runtime.own_message("!other:mill.example", "$own0") is None


async def test_a_broken_answer_says_so_and_the_next_message_works(
    world: World, caplog: pytest.LogCaptureFixture
) -> None:
    """The person gets a reference that the log has too; context and later messages are whole."""
    said = await world.says(text("one"), text("break heron"), text("two"))
    assert (said[0], said[2]) == ("1: one", "2: two")
    reference = said[1].removeprefix("broken, reference ")
    assert reference in caplog.text
    assert "ValueError" in caplog.text
    assert "fakes.py" in caplog.text


async def test_an_answer_without_words_for_its_failure_is_not_tried_again(
    world: World, caplog: pytest.LogCaptureFixture
) -> None:
    """When even the message about the failure breaks, the event is done all the same."""

    def speechless(place: object, reference: str) -> object:
        raise RuntimeError(reference, place)

    said = await world.says(
        text("break"),
        text("on"),
        dialogue=Dialogue(handle, speechless),  # type: ignore[arg-type]
    )
    assert said == ["1: on"]
    assert "no words for it" in caplog.text


async def test_logs_hold_no_word_of_a_message(
    world: World, caplog: pytest.LogCaptureFixture
) -> None:
    """Neither what was written nor what was answered gets into the log, even when it breaks."""
    caplog.set_level(logging.DEBUG)
    tries = iter([1, 2])

    def fail_once(request: str) -> None:
        if request == "before send" and next(tries, None):
            raise OSError("kingfisher was here")

    await world.says(
        text("kingfisher"),
        text("break kingfisher"),
        frame("kingfisher"),
        transport=FakeTransport(world.server, fail_once),
    )
    assert len(world.server.sent) == 4
    ours = [record.getMessage() for record in caplog.records if record.name.startswith("bot.")]
    assert ours
    assert not [line for line in ours if "kingfisher" in line]


async def test_urgent_messages_overtake_what_waits_in_the_room(world: World) -> None:
    """While a burst waits, an emergency of somebody else in the room goes next."""
    transport = FakeTransport(world.server)
    transport.delay_s = 0.02
    burst = text("burst b", direct=False, thread_id="$one")
    alarm = text("urgent Step back.", direct=False, thread_id="$two", person_id=MOSS)
    said = await world.says(burst, alarm, transport=transport)
    assert said.index("Step back.") <= 2
    assert [body for body in said if body != "Step back."] == [f"b{part}" for part in range(12)]


async def test_at_most_eight_messages_are_on_their_way_in_a_room(world: World) -> None:
    """Twenty people in one room are answered side by side, up to the limit."""
    transport = FakeTransport(world.server)
    transport.delay_s = 0.3
    people = [f"@walker{number}:mill.example" for number in range(20)]
    events = [text("hi", direct=False, person_id=person) for person in people]
    said = await world.says(*events, transport=transport)
    assert (len(said), transport.most_at_once) == (20, 8)


async def test_read_marks_come_after_the_answer_and_once_for_a_burst(world: World) -> None:
    """One read mark, for the newest event that was meant for the bot."""
    marked: list[str] = []
    events = [text(f"m{number}") for number in range(3)]
    overheard = text("silence", addressed=False)
    async with world.running() as runtime:
        await runtime.take_in([*events, overheard], None)
        await runtime.drain()
        marked += world.server.marks
        while not world.server.marks:
            await _moment()
    assert marked == []
    assert world.server.marks == [f"read {events[-1].origin.event_id} in {ROOM}"]


async def _moment() -> None:
    await asyncio.sleep(0.01)


async def test_marks_that_fail_hold_nothing_up(world: World) -> None:
    """A homeserver that refuses read and typing marks gets the answers all the same."""

    def no_marks(request: str) -> None:
        if request in {"mark_read", "set_typing"}:
            raise OSError

    async with world.running(transport=FakeTransport(world.server, no_marks)) as runtime:
        await runtime.take_in([text("hi"), frame()], None)
        await runtime.drain()
        for _ in range(40):
            await _moment()
    assert world.server.bodies == ["1: hi", "measuring", "checked: not_a_picture"]


async def test_a_reply_names_its_question(world: World) -> None:
    """What replies to a message of the bot carries the question of that message, no other does."""
    answers: list[str | None] = []

    def asks(context: Context, event: Event, _: datetime) -> tuple[Context, tuple[Action, ...]]:
        assert isinstance(event, TextReceived)
        answers.append(event.answers)
        return context, (Say(body=event.text, question=event.text),)

    async def says(words: str, replies_to: str | None = None, person_id: str = FERN) -> str:
        event = text(words, person_id=person_id).model_copy(update={"replies_to": replies_to})
        await world.says(event, dialogue=Dialogue(asks, failure))
        return world.server.sent[-1][0]

    flow = await says("flow")
    silence = await says("")
    for reply in (flow, silence, "$of_somebody_else", None):
        await says("2", reply)
    await says("2", flow, MOSS)
    assert answers == [None, None, "flow", None, None, None, None]
