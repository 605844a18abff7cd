"""Sending: again and again until it is there, nothing twice, nothing lost, others not held up."""

from __future__ import annotations

import asyncio
import sqlite3
from collections.abc import Callable
from contextlib import closing
from datetime import datetime, timedelta

import pytest
from sqlalchemy.exc import OperationalError

from bot.runtime import runtime as runtime_module
from bot.runtime import sender as sender_module
from bot.runtime import workers as workers_module
from bot.runtime.ports import (
    Outgoing,
    SendLaterError,
    SendRefusedError,
    SendUncertainError,
    UnreachableError,
    UploadedMedia,
)
from bot.runtime.runtime import utc_now
from tests.runtime.fakes import ROOM, FakeTransport, World, frame, text


@pytest.fixture(autouse=True)
def _short_pauses(monkeypatch: pytest.MonkeyPatch) -> None:
    """A pause between attempts is over at once, and a stop waits for nothing."""
    monkeypatch.setattr(runtime_module, "_GRACE_S", 0.1)
    for module in (sender_module, workers_module):
        monkeypatch.setattr(module, "pause_s", lambda _: 0.001)


def failing(request: str, *errors: Exception | None) -> Callable[[str], None]:
    """A hook that raises these, one after the other, at a request; None lets it pass."""
    left = list(errors)

    def hook(name: str) -> None:
        if name == request and left:
            error = left.pop(0)
            if error is not None:
                raise error

    return hook


@pytest.mark.parametrize("request_name", ["before send", "after send", "before upload"])
@pytest.mark.parametrize(
    "error",
    [SendUncertainError(), SendLaterError(0.001), TimeoutError(), OSError(), KeyError("a bug")],
    ids=lambda error: type(error).__name__,
)
async def test_what_fails_is_sent_again_and_is_there_once(
    world: World, request_name: str, error: Exception
) -> None:
    """Whether or not it had arrived, the repeat has the same id; order holds."""
    hook = failing(request_name, error, error)
    said = await world.says(frame(), text("a"), text("b"), hook=hook)
    assert [body for body in said if body[0] != "c"] == ["measuring", "2: a", "3: b"]
    assert sorted(said)[-2:] == ["checked: not_a_picture", "measuring"]


async def test_a_refused_message_is_dropped_and_the_next_goes(
    world: World, caplog: pytest.LogCaptureFixture
) -> None:
    """What the server will never take is logged by its id and holds nothing up."""
    hook = failing("before send", SendRefusedError())
    assert await world.says(text("a"), text("b"), hook=hook) == ["2: b"]
    assert "is given up: SendRefusedError" in caplog.text
    assert await world.says() == ["2: b"]


async def test_a_transport_with_a_bug_is_tried_five_times(world: World) -> None:
    """An exception that no transport should raise does not block the conversation for ever."""
    hook = failing("before send", *(KeyError("bug") for _ in range(5)))
    assert await world.says(text("a"), text("b"), hook=hook) == ["2: b"]


async def test_a_wait_holds_all_rooms_but_not_an_emergency(world: World) -> None:
    """The server's limit is the account's: others wait, an urgent message knocks all the same."""
    hook = failing("before send", SendLaterError(0.5, limited=True))
    async with world.running(hook=hook) as runtime:
        await runtime.take_in([text("a")], None)
        await asyncio.sleep(0.1)
        others = [text("b", room_id="!other:mill.example")]
        urgent = [text("urgent Out of the water.", room_id="!third:mill.example")]
        await runtime.take_in(others + urgent, None)
        await runtime.drain()
    assert world.server.bodies[0] == "Out of the water."
    assert sorted(world.server.bodies[1:]) == ["1: a", "1: b"]


async def test_an_emergency_waits_at_most_two_seconds(world: World) -> None:
    """When the server asks for five minutes, an urgent message is tried again much sooner."""
    hook = failing("before send", SendLaterError(300, limited=True))
    begin = asyncio.get_running_loop().time()
    assert await world.says(text("urgent Step back."), hook=hook) == ["Step back."]
    assert 1.9 < asyncio.get_running_loop().time() - begin < 10


async def test_an_upload_is_not_repeated_when_only_the_message_failed(world: World) -> None:
    """The picture's address and key are known before the message goes."""
    await world.says(frame(), hook=failing("before send", None, SendUncertainError()))
    assert len(world.server.sent) == 2
    assert len(world.server.uploads) == 2  # the picture and its thumbnail


async def test_a_picture_whose_file_is_gone_goes_as_words(world: World) -> None:
    """A picture that was deleted before it was sent takes its caption not with it."""

    def lose_the_file(request: str) -> None:
        if request == "before commit":
            for path in world.pictures.iterdir():
                path.unlink()

    await world.says(frame(), hook=lose_the_file)
    assert world.server.bodies[-1] == "checked: not_a_picture"
    assert world.server.sent[-1][1].picture is None


class Watching(FakeTransport):
    """Counts how often it is asked to look for a message."""

    looks = 0

    async def find_sent(self, room_id: str, row_id: str, since: datetime) -> str | None:
        """Look, and count."""
        self.looks += 1
        return await super().find_sent(room_id, row_id, since)


@pytest.mark.parametrize(
    ("later", "scope", "arrived", "looks"),
    [
        (timedelta(minutes=5), "DEVICE", True, 0),
        (timedelta(minutes=30), "DEVICE", True, 1),
        (timedelta(minutes=5), "OTHER", True, 1),
        (timedelta(minutes=30), "DEVICE", False, 1),
        (timedelta(hours=-1), "DEVICE", True, 1),
    ],
    ids=["id still known", "too long ago", "another device", "never arrived", "clock set back"],
)
async def test_an_old_uncertain_message_is_looked_for_before_it_is_sent_again(
    world: World, later: timedelta, scope: str, *, arrived: bool, looks: int
) -> None:
    """When the server may have forgotten the transaction id, the room is asked first."""
    stuck = asyncio.Event()
    request = "after send" if arrived else "before send"

    def lost(name: str) -> None:
        if name == request:
            stuck.set()
            raise asyncio.CancelledError

    async with world.running(hook=lost) as runtime:
        await runtime.take_in([text("a")], None)
        await stuck.wait()
    if looks:
        world.server.transactions.clear()
    transport = Watching(world.server, scope=scope)
    assert await world.says(transport=transport, clock=lambda: utc_now() + later) == ["1: a"]
    assert transport.looks == looks


async def test_a_message_seen_in_its_room_is_known_before_its_request_ends(world: World) -> None:
    """A person may reply, or tap, while the answer to the bot's own request is lost."""
    stuck = asyncio.Event()

    def lost(name: str) -> None:
        if name == "after send":
            stuck.set()
            raise asyncio.CancelledError

    async with world.running(hook=lost) as runtime:
        await runtime.take_in([text("a")], None)
        await stuck.wait()
        ((event_id, outgoing),) = world.server.sent
        assert await runtime.own_message(ROOM, event_id) is None
        await runtime.saw_own({outgoing.row_id: event_id, "other": "$other"})
        assert await runtime.own_message(ROOM, event_id) is not None
        assert await runtime.own_message(ROOM, "$other") is None
    world.server.transactions.clear()
    assert await world.says() == ["1: a"]


async def test_trouble_with_the_database_delays_and_loses_nothing(
    world: World, caplog: pytest.LogCaptureFixture
) -> None:
    """A full disk at every third transaction: every message is answered once, in order."""
    count = [0]

    def full(step: str) -> None:
        if step == "before commit":
            count[0] += 1
            if count[0] > 3 and count[0] % 3 == 0:  # the start and taking in are the caller's
                raise OperationalError("INSERT", {"body": "kingfisher"}, Exception("disk full"))

    said = await world.says(*(text(f"m{number}") for number in range(5)), frame(), hook=full)
    assert [body for body in said if body[0].isdigit()] == [f"{n + 1}: m{n}" for n in range(5)]
    assert said[-1] == "checked: not_a_picture"
    assert "kingfisher" not in caplog.text


async def test_a_message_forgotten_on_its_way_is_taken_back(world: World) -> None:
    """Deleted while the server was taking it: it is redacted as soon as its id is known."""

    class Slow(FakeTransport):
        async def send(self, outgoing: Outgoing) -> str:
            if outgoing.body == "1: a":
                await going.wait()
            return await super().send(outgoing)

    going = asyncio.Event()
    async with world.running(transport=Slow(world.server)) as runtime:
        await runtime.take_in([text("a")], None)
        await asyncio.sleep(0.1)
        await runtime.take_in([text("forget me")], None)
        await asyncio.sleep(0.1)
        going.set()
        await runtime.drain()
    sent = {outgoing.body: event_id for event_id, outgoing in world.server.sent}
    assert world.server.redacted == [sent["1: a"]]


async def test_what_waits_is_dropped_when_the_person_is_forgotten(world: World) -> None:
    """Messages that could not be sent yet are not sent after a farewell."""
    blocked = [True]

    def hook(request: str) -> None:
        if request == "before send" and blocked[0]:
            raise SendUncertainError

    async with world.running(hook=hook) as runtime:
        await runtime.take_in([text("burst b")], None)
        await asyncio.sleep(0.1)
        await runtime.take_in([text("forget me")], None)
        await asyncio.sleep(0.1)
        blocked[0] = False
        await runtime.drain()
    late = set(world.server.bodies) - {"deleting", "all deleted"}
    assert late <= {"b0"}  # the one that was on its way, which is taken back
    assert len(world.server.redacted) == len(late)


async def test_encrypted_uploads_keep_their_key(world: World) -> None:
    """The key that the upload gave is what the message carries, after a restart too."""
    ended = asyncio.Event()

    def end(request: str) -> None:
        if request == "before send" and world.server.uploads:
            ended.set()
            raise asyncio.CancelledError

    async with world.running(hook=end) as runtime:
        await runtime.take_in([frame()], None)
        await ended.wait()
    await world.says()
    picture = world.server.sent[-1][1].picture
    assert picture is not None
    assert picture.media == UploadedMedia("mxc://mill.example/0", {"key": "!gorge:mill.example"})
    assert len(world.server.uploads) == 2


async def _until_waiting(world: World, messages: int) -> None:
    """Until so many messages wait to be sent, however slow the machine."""
    path = world.url.removeprefix("sqlite:///")
    async with asyncio.timeout(30):
        while True:
            with closing(sqlite3.connect(path)) as database:
                (waiting,) = database.execute("SELECT count(*) FROM outbox").fetchone()
            if waiting >= messages:
                return
            await asyncio.sleep(0.02)


async def test_a_server_that_does_not_answer_is_asked_by_one_message_at_a_time(
    world: World, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Twenty conversations wait; only one knocks after each pause, and all go when it is over."""
    monkeypatch.setattr(sender_module, "pause_s", lambda failures: 0.02 * failures)
    tries, away = [0], [True]

    def hook(request: str) -> None:
        if request == "before send":
            tries[0] += 1
            if away[0]:
                raise UnreachableError("no answer")

    async with world.running(hook=hook) as runtime:
        await runtime.take_in(
            [text(f"m{n}", room_id=f"!r{n}:mill.example") for n in range(20)], None
        )
        await _until_waiting(world, 20)
        await asyncio.sleep(0.5)
        first = tries[0]
        await asyncio.sleep(0.5)
        assert tries[0] - first <= 6  # pauses of some 0.1 s by then
        away[0] = False
        await runtime.drain()
    assert sorted(world.server.bodies) == sorted(f"1: m{n}" for n in range(20))


async def test_an_emergency_knocks_during_an_outage(
    world: World, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The pauses of an outage grow to a minute, those of an urgent message to ten seconds."""
    monkeypatch.setattr(sender_module, "pause_s", lambda _: 60.0)
    monkeypatch.setattr(sender_module, "_URGENT_OUTAGE_S", 0.01)
    hook = failing("before send", *(UnreachableError("no answer") for _ in range(3)))
    assert await world.says(text("urgent Step back."), hook=hook) == ["Step back."]


@pytest.mark.parametrize(("times", "lines"), [(3, 0), (4, 2)])
async def test_a_short_wait_for_a_room_is_no_trouble(
    world: World, caplog: pytest.LogCaptureFixture, times: int, lines: int
) -> None:
    """After a start, messages wait for the first sync; only a wait that lasts is worth a line."""
    hook = failing("before send", *(SendLaterError(0.001) for _ in range(times)))
    assert await world.says(text("a"), hook=hook) == ["1: a"]
    assert sum("rouble with sending" in line for line in caplog.messages) == lines


async def test_a_room_that_must_wait_holds_no_other_up(world: World) -> None:
    """Keys that can't be shared in one room are no limit of the server's."""
    hook = failing("before send", SendLaterError(0.3))
    async with world.running(hook=hook) as runtime:
        await runtime.take_in([text("a")], None)
        await asyncio.sleep(0.05)
        await runtime.take_in([text("b", room_id="!other:mill.example")], None)
        await runtime.drain()
    assert world.server.bodies == ["1: b", "1: a"]
