"""A homeserver in trouble: nothing is lost or doubled, nothing runs hot, the log says it once."""

from __future__ import annotations

import asyncio
import logging
from collections import Counter
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import pytest
from aiohttp import web
from nio import AsyncClient

from bot import pauses
from bot.matrix import receiver as receiver_module
from bot.matrix.backoff import Backoff
from bot.matrix.chores import Chores
from bot.matrix.entering import Entering
from bot.matrix.keys import RoomKeys
from bot.matrix.policy import Policy
from bot.matrix.receiver import Receiver
from bot.matrix.room_reader import RoomReader
from bot.matrix.room_states import RoomStates
from bot.matrix.rooms import Rooms
from bot.matrix.server_api import ServerApi
from bot.matrix.session import Account
from bot.matrix.transport import MatrixTransport
from bot.matrix.waiting import WaitingEvents
from bot.runtime import delivery as delivery_module
from bot.runtime import jobs as jobs_module
from bot.runtime import sender as sender_module
from bot.runtime.job_kinds import Surroundings
from bot.runtime.runtime import Runtime, utc_now
from bot.store.database import Database
from bot.store.pictures import PictureFiles
from bot.store.store import Store
from bot.trouble import Troubles
from tests.matrix.receiving import ADA, MEMBERS, event, said
from tests.matrix.scripted_server import Answer, ScriptedServer, error, file, hang_up, json, page
from tests.runtime.fakes import DIALOGUE, FakeChecker, png

#: In the tests a pause takes so much of its time: an outage of 100 s is over in one.
_SHORT = 0.01
#: How long the homeserver is away in a test [s].
_AWAY_S = 0.8
_ROOMS = [f"!room{number}:example.org" for number in range(6)]
_ONE_TIME_KEYS = json(one_time_key_counts={"signed_curve25519": 50})


async def never(_: web.Request) -> web.StreamResponse:
    """An answer that comes far too late."""
    await asyncio.sleep(0.5)
    return web.Response()


def limited(**headers: str) -> Answer:
    """A server that asks to wait, in a header."""

    async def respond(_: web.Request) -> web.StreamResponse:
        body = {"errcode": "M_LIMIT_EXCEEDED", "error": "slower"}
        return web.json_response(body, status=429, headers=headers)

    return respond


@pytest.fixture(autouse=True)
def _short_pauses(monkeypatch: pytest.MonkeyPatch) -> None:
    """Pauses grow as always, a hundred times as quickly."""
    next_s = Backoff.next_s
    pause_s = pauses.pause_s

    def short(backoff: Backoff, asked_s: float | None = None) -> float:
        return max(next_s(backoff) * _SHORT, asked_s or 0.0)

    monkeypatch.setattr(Backoff, "next_s", short)
    for module in (sender_module, jobs_module):
        monkeypatch.setattr(module, "pause_s", lambda failures: pause_s(failures) * _SHORT)
    monkeypatch.setattr(receiver_module, "_LATE_S", 0.1)
    monkeypatch.setattr(delivery_module, "REQUEST_S", 0.1)


@dataclass
class Scene:
    """A bot that runs at the scripted homeserver, and the switch of that."""

    server: ScriptedServer
    runtime: Runtime
    trouble: Answer | None = None
    #: Row id, room and words of what the homeserver took.
    sent: list[str] = field(default_factory=list)
    #: Syncs to come, before those that bring nothing.
    news: list[Answer] = field(default_factory=list)

    def or_trouble(self, answer: Answer) -> Answer:
        """This answer, or the trouble while it lasts."""

        async def respond(request: web.Request) -> web.StreamResponse:
            return await (self.trouble or answer)(request)

        return respond

    async def until(self, true: Callable[[], bool]) -> None:
        """Wait, a while at most."""
        async with asyncio.timeout(20):
            while not true():  # noqa: ASYNC110  what is watched rings no bell
                await asyncio.sleep(0.01)

    def in_room(self, room_id: str) -> list[str]:
        """What was said in one room, in order."""
        words = [entry.split(" ", 2)[1:] for entry in self.sent]
        return [body for where, body in words if where == room_id]


def sharing(number: int) -> dict[str, Any]:
    """A picture."""
    content = {"msgtype": "m.image", "body": "leaf.png", "url": "mxc://example.org/leaf"}
    return event(number, "m.room.message", content)


@pytest.fixture
async def scene(
    scripted: ScriptedServer, signed_in: AsyncClient, account: Account, tmp_path: Path
) -> AsyncIterator[Scene]:
    """Six rooms with one conversation each."""
    async with running(scripted, signed_in, account, tmp_path) as scene:
        yield scene


@asynccontextmanager
async def running(
    server: ScriptedServer, client: AsyncClient, account: Account, folder: Path
) -> AsyncIterator[Scene]:
    """The parts of the bot, put together as the app does it."""
    store, troubles = Store(Database(f"sqlite:///{folder / 'linn.db'}")), Troubles()
    await store.open()
    policy = Policy.of([ADA])
    api = ServerApi(client)
    keys = RoomKeys(client, api, troubles.keys)
    waiting = WaitingEvents(account.waiting_path)
    transport = MatrixTransport(client, api, keys, waiting)
    around = Surroundings(store, PictureFiles(folder / "pictures"), transport, FakeChecker())
    runtime = Runtime(around, DIALOGUE, troubles=troubles)
    states = RoomStates(client, policy)
    chores = Chores(troubles)
    receiver = Receiver(
        client,
        keys,
        RoomReader(client, api, policy, runtime, utc_now, states),
        waiting,
        Rooms(client, api, policy, runtime, states, chores, Entering(account.entering_path)),
        runtime,
        utc_now,
        poll_s=0.1,
        troubles=troubles,
    )
    scene = Scene(server, runtime)
    script(scene)
    await runtime.start()
    async with asyncio.TaskGroup() as group:
        tasks = [group.create_task(receiver.run()), group.create_task(chores.run())]
        try:
            yield scene
        finally:
            for task in tasks:
                task.cancel()
            await runtime.stop()
            await store.close()


def script(scene: Scene) -> None:
    """A homeserver that works, unless it is told to be in trouble."""

    async def sync(request: web.Request) -> web.StreamResponse:
        if scene.news:
            return await scene.news.pop(0)(request)
        await asyncio.sleep(0.05)
        return await json(next_batch="idle")(request)

    async def put(request: web.Request) -> web.StreamResponse:
        if "/send/" not in request.path:  # a mark
            return await json()(request)
        row_id = request.path.rpartition("/")[2]
        body = (await request.json()).get("body", "")
        room = request.path.split("/rooms/")[1].split("/")[0]
        if not any(entry.startswith(row_id) for entry in scene.sent):
            scene.sent.append(f"{row_id} {room} {body}")
        return await json(event_id=f"$sent{row_id}")(request)

    server = scene.server
    server.say("/sync", scene.or_trouble(sync))
    server.say("/leaf", scene.or_trouble(file(png())))
    server.say("/media/v3/upload", scene.or_trouble(json(content_uri="mxc://example.org/up")))
    for quiet in ("/keys/query", "/m.room.tombstone"):
        server.say(quiet, scene.or_trouble(json(device_keys={})))
    server.say("/keys/upload", scene.or_trouble(_ONE_TIME_KEYS))
    server.say("", scene.or_trouble(put))


def tell(scene: Scene, token: str, numbers: range, picture: int | None = None) -> None:
    """Let the next sync bring something of each room."""
    rooms = {}
    for place, room_id in enumerate(_ROOMS):
        words = [said(1000 * place + number, f"m{number}") for number in numbers]
        words += [sharing(1000 * place + 999)] if picture == place else []
        events = {"events": words, "limited": False, "prev_batch": "p"}
        rooms[room_id] = {"timeline": events, "state": {"events": MEMBERS}}
    scene.news.append(json(next_batch=token, rooms={"join": rooms}))


TROUBLES = {
    "a proxy's page": page(502),
    "an error": error(500, "M_UNKNOWN"),
    "a page for people in the place of an answer": page(200),
    "cut connections": hang_up,
    "no answer": never,
    "limit in the body": error(429, "M_LIMIT_EXCEEDED", retry_after_ms=300),
    "limit in the header": limited(**{"Retry-After": "1"}),
}


@pytest.mark.parametrize("trouble", TROUBLES)
async def test_two_minutes_of_trouble(
    scene: Scene, caplog: pytest.LogCaptureFixture, trouble: str
) -> None:
    """All is answered once and in order when it is over; few requests and few lines meanwhile."""
    caplog.set_level(logging.WARNING, logger="bot")
    tell(scene, "t1", range(2))
    await scene.until(lambda: len(scene.sent) == 12)
    tell(scene, "t2", range(2, 5), picture=3)
    before = len(scene.server.asked)
    await scene.until(lambda: not scene.news)
    scene.trouble = TROUBLES[trouble]
    await asyncio.sleep(_AWAY_S)
    asked = Counter(_kind(path) for _, path in scene.server.asked[before:])
    scene.trouble = None
    await scene.until(lambda: len(scene.sent) == 12 + 18 + 2)
    await scene.runtime.drain()
    begun, ended = await _told(scene, caplog)
    for room_id in _ROOMS:
        texts = [body for body in scene.in_room(room_id) if ": m" in body]
        assert [text.partition(": ")[2] for text in texts] == [f"m{n}" for n in range(5)]
    assert sum("checked" in entry for entry in scene.sent) == 1
    _is_bounded(asked, trouble)
    assert {"sync", "sending"} <= {line.split()[2] for line in begun}
    assert set(begun.values()) == set(ended.values()) == {1}


async def _told(
    scene: Scene, caplog: pytest.LogCaptureFixture
) -> tuple[Counter[str], Counter[str]]:
    """Which beginnings and which ends of trouble the log tells, when it tells as many of both."""

    def lines(begin: str) -> Counter[str]:
        told = (line.partition(",")[0] for line in caplog.messages if line.startswith(begin))
        return Counter(told)

    await scene.until(lambda: len(lines("Trouble")) == len(lines("No more")))
    return lines("Trouble"), lines("No more")


def _kind(path: str) -> str:
    for name in ("/sync", "/leaf", "/media/v3/upload", "/send/"):
        if name in path:
            return name.strip("/")
    return "marks"


def _is_bounded(asked: Counter[str], trouble: str) -> None:
    """Own rule: 120 s with pauses of 1, 2, 4 … 60 s make 8 tries, aiohttp repeats some at once."""
    assert 2 <= asked["sync"] <= 20, asked
    lanes = len(_ROOMS) if trouble in {"an error", "no answer"} else 1
    assert 1 <= asked["send"] <= 20 * lanes, asked
    assert asked["leaf"] + asked["media/v3/upload"] <= 20, asked
    assert asked["marks"] <= 60, asked


async def test_a_token_that_is_lost_on_the_way_out_ends_the_bot(
    scripted: ScriptedServer, signed_in: AsyncClient
) -> None:
    """Any request hears of it: a send, a download, a mark; what is refused otherwise is no end."""
    api = ServerApi(signed_in)
    scripted.say("/typing", error(401, "M_MISSING_TOKEN"))
    scripted.say("/flows", page(401))
    scripted.say("/receipt", error(403, "M_UNKNOWN_TOKEN"))
    scripted.say("/list", web_list)
    for path in ("typing", "flows", "receipt", "list"):
        with pytest.raises(Exception, match="40"):
            await api.call("GET", path)
    assert not signed_in.token_refused.is_set()  # type: ignore[attr-defined]
    scripted.say("/send", error(401, "M_UNKNOWN_TOKEN", soft_logout=True))
    with pytest.raises(Exception, match="M_UNKNOWN_TOKEN"):
        await api.call("PUT", "send")
    assert signed_in.token_refused.is_set()  # type: ignore[attr-defined]


async def web_list(_: web.Request) -> web.StreamResponse:
    """JSON that is no object."""
    return web.json_response([1], status=401)
