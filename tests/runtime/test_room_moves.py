"""A room that is replaced: all that was begun in it goes on in the new one, once."""

from __future__ import annotations

import asyncio
from datetime import timedelta

import pytest
from sqlalchemy.exc import OperationalError

from bot.dialogue.events import Event
from bot.runtime import sender as sender_module
from bot.runtime.ports import Outgoing, SendRefusedError, SendUncertainError
from bot.runtime.runtime import utc_now
from tests.runtime.fakes import FERN, MOSS, ROOM, FakeTransport, World, frame, origin, text

NEW = "!upgraded"  # rooms of version 12 have no server in their ids


@pytest.fixture(autouse=True)
def _short_pauses(monkeypatch: pytest.MonkeyPatch) -> None:
    """A pause between attempts is over at once."""
    monkeypatch.setattr(sender_module, "pause_s", lambda _: 0.001)


class Closing(FakeTransport):
    """A homeserver on which the old room takes nothing any more once it is closed."""

    closed = False
    held: asyncio.Event | None = None

    async def send(self, outgoing: Outgoing) -> str:
        """Send, unless the room is closed; where a test holds it, only when it lets go."""
        if self.held is not None and outgoing.room_id == ROOM:
            await self.held.wait()
        if self.closed and outgoing.room_id == ROOM:
            raise SendRefusedError
        return await super().send(outgoing)


def said_in(world: World, room_id: str) -> list[str]:
    """What was said in one room."""
    return [outgoing.body for _, outgoing in world.server.sent if outgoing.room_id == room_id]


@pytest.mark.parametrize("restarts", [False, True])
async def test_a_direct_talk_goes_on_where_it_was(world: World, *, restarts: bool) -> None:
    """The count of the conversation goes on; so does a reminder, and what the old room brings."""
    await world.says(text("a"), text("later turn back"))
    async with world.running() as runtime:
        await runtime.move_room(ROOM, NEW)
        await runtime.move_room(ROOM, NEW)
        if not restarts:
            await runtime.take_in([text("b", room_id=NEW), text("late")], None)
            await runtime.drain()
    clock = lambda: utc_now() + timedelta(days=366)  # noqa: E731
    async with world.running(clock=clock) as runtime:
        if restarts:
            await runtime.move_room(ROOM, NEW)
            await runtime.take_in([text("b", room_id=NEW), text("late")], None)
        await runtime.drain()
        async with asyncio.timeout(10):
            while len(world.server.sent) < 4:
                await world.server.bell.sleep()
    assert said_in(world, ROOM) == ["1: a"]
    new = dict(body.split(": ")[::-1] for body in said_in(world, NEW))
    assert set(new) == {"b", "late", "turn back"}
    assert (int(new["b"]) >= 3, int(new["late"]) - int(new["b"])) == (True, 1)


async def test_a_group_talk_goes_on_in_the_next_thread(world: World) -> None:
    """What a person brought along belongs to the first thread that they begin, and to no second."""
    group = {"direct": False, "room_id": ROOM}
    await world.says(
        text("a", **group, event_id="$old"),
        text("b", **group, event_id="$older", thread_id="$old"),
        text("later leave", **group, event_id="$timer", thread_id="$old"),
        text("c", **group, person_id=MOSS, event_id="$moss"),
    )
    new = {"direct": False, "room_id": NEW}
    async with world.running() as runtime:
        await runtime.move_room(ROOM, NEW)
        await runtime.take_in([text("unaddressed", **new, addressed=False)], None)
        await runtime.take_in([text("d", **new, event_id="$first")], None)
        await runtime.take_in([text("e", **new, event_id="$second")], None)
        await runtime.take_in([text("f", **new, event_id="$x", thread_id="$first")], None)
        await runtime.drain()
    clock = lambda: utc_now() + timedelta(days=366)  # noqa: E731
    async with world.running(clock=clock) as runtime:
        async with asyncio.timeout(10):
            while "reminder: leave" not in world.server.bodies:
                await world.server.bell.sleep()
        await runtime.drain()
    sent = [
        (outgoing.body, outgoing.thread_id, outgoing.mentions)
        for _, outgoing in world.server.sent
        if outgoing.room_id == NEW
    ]
    assert ("4: d", "$first", (FERN,)) in sent
    assert ("1: e", "$second", (FERN,)) in sent
    assert ("5: f", "$first", (FERN,)) in sent
    assert ("reminder: leave", "$first", (FERN,)) in sent


async def test_what_comes_before_a_new_thread_stands_in_the_room(world: World) -> None:
    """No message names a thread that stayed behind; a reminder and a late event go on without."""
    group = {"direct": False, "room_id": ROOM}
    await world.says(text("a", **group, event_id="$old"))
    async with world.running() as runtime:
        await runtime.move_room(ROOM, NEW)
        inside = {**group, "thread_id": "$old"}
        late: list[Event] = [
            text("b", **inside, event_id="$late"),
            text("timer now", **inside, event_id="$later"),
            frame("frame", **inside, event_id="$frame"),
        ]
        await runtime.take_in(late, None)
        await runtime.drain()
        async with asyncio.timeout(10):
            while len(world.server.sent) < 5:
                await world.server.bell.sleep()
    moved = [outgoing for _, outgoing in world.server.sent if outgoing.room_id == NEW]
    bodies = sorted(outgoing.body for outgoing in moved)
    assert bodies == ["2: b", "checked: not_a_picture", "measuring", "reminder: now"]
    assert {outgoing.thread_id for outgoing in moved} == {None}
    assert all(outgoing.mentions == (FERN,) for outgoing in moved)


async def test_unsent_messages_and_work_under_way_go_over(world: World) -> None:
    """What waits, what is on its way and what is being measured is said once, in the new room."""
    transport = Closing(world.server)
    transport.held = asyncio.Event()
    async with world.running(transport=transport) as runtime:
        await runtime.take_in([text("a"), text("b"), text("c")], None)
        await asyncio.sleep(0.1)  # the first is on its way, two wait
        transport.closed = True
        await runtime.move_room(ROOM, NEW)
        transport.held.set()
        await runtime.drain()
    assert said_in(world, ROOM) == []
    assert sorted(said_in(world, NEW)) == ["1: a", "2: b", "3: c"]
    assert all(outgoing.reply_to is None for _, outgoing in world.server.sent)


async def test_a_message_that_arrived_in_the_old_room_is_not_said_again(world: World) -> None:
    """It was on its way while the room moved: the old room has it, that is enough."""
    transport = Closing(world.server)
    transport.held = asyncio.Event()
    async with world.running(transport=transport) as runtime:
        await runtime.take_in([text("a")], None)
        await asyncio.sleep(0.1)
        await runtime.move_room(ROOM, NEW)
        transport.held.set()
        await runtime.drain()
    assert (said_in(world, ROOM), said_in(world, NEW)) == (["1: a"], [])


async def test_a_frame_that_is_measured_meanwhile_is_told_in_the_new_room(world: World) -> None:
    """A job that was begun in the old room ends in the new one."""
    downloading, release = asyncio.Event(), [False]

    def hook(step: str) -> None:
        if step == "download" and not release[0]:
            downloading.set()
            raise SendUncertainError

    async with world.running(hook=hook) as runtime:
        await runtime.take_in([frame()], None)
        await downloading.wait()
        await runtime.move_room(ROOM, NEW)
        release[0] = True
        await runtime.drain()
    assert said_in(world, NEW)[-1] == "checked: not_a_picture"


async def test_an_event_that_is_answered_meanwhile_is_written_once(world: World) -> None:
    """Between reading the context and writing the answer the room moves; the context follows."""
    await world.says(text("a"))
    moves: list[asyncio.Task[None]] = []

    async with world.running() as runtime:

        def hook(step: str) -> None:
            if step == "before write" and not moves and runtime._workers.busy:
                moves.append(asyncio.get_running_loop().create_task(runtime.move_room(ROOM, NEW)))

        runtime._around.store._database.hook = hook  # type: ignore[attr-defined]
        await runtime.take_in([text("b"), text("c")], None)
        await runtime.drain()
        await asyncio.gather(*moves)
        await runtime.drain()
    bodies = [outgoing.body for _, outgoing in world.server.sent]
    assert bodies == ["1: a", "2: b", "3: c"]


async def test_a_move_that_fails_is_no_move(world: World) -> None:
    """All of it in one transaction: a failure leaves the old room as it was, the next try moves."""
    await world.says(text("a"))
    left = [OperationalError("UPDATE", {}, Exception("locked"))]

    def locked(step: str) -> None:
        if step == "before commit" and armed and left:
            raise left.pop()

    armed: list[bool] = []
    async with world.running(hook=locked) as runtime:
        armed.append(True)
        with pytest.raises(OperationalError):
            await runtime.move_room(ROOM, NEW)
        await runtime.move_room(ROOM, NEW)
        await runtime.take_in([text("b", room_id=NEW)], None)
        await runtime.drain()
    assert said_in(world, NEW) == ["2: b"]


async def test_a_talk_that_has_begun_in_the_new_room_stays(world: World) -> None:
    """Somebody was quicker than the news: the newer conversation is the one that counts."""
    await world.says(text("a"), text("b"))
    async with world.running() as runtime:
        await runtime.take_in([text("c", room_id=NEW)], None)
        await runtime.drain()
        await runtime.move_room(ROOM, NEW)
        await runtime.move_room(NEW, ROOM)  # and a circle is no trap
        await runtime.move_room(ROOM, NEW)
        await runtime.take_in([text("d", room_id=NEW, event_id="$d")], None)
        await runtime.drain()
    assert world.server.bodies[-1] == "2: d"
    assert origin().room_id == ROOM
