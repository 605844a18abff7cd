"""What reaches the verifier and what it sends: a scripted homeserver, and a whole other side."""

from __future__ import annotations

import asyncio
import json as json_lib
import logging
from collections.abc import AsyncIterator, Callable
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any, Final

import pytest
from nio import AsyncClient, MatrixRoom, SyncResponse

from bot.matrix.identity import Identity
from bot.matrix.keys import RoomKeys
from bot.matrix.policy import Policy
from bot.matrix.server_api import ServerApi
from bot.matrix.verification.exchange import Party
from bot.matrix.verification.machine import Send
from bot.matrix.verification.messages import Kind
from bot.matrix.verification.verifier import Verifier
from tests.matrix.scripted_server import (
    DEVICE_ID,
    USER_ID,
    ScriptedServer,
    error,
    hang_up,
    json,
)
from tests.matrix.verification.two_sides import ADA, NOON, Content, Side

ROOM: Final = "!gorge:example.org"
STARTED_MS: Final = int(NOON.timestamp() * 1000)
SHOWN: Final[Content] = {
    "device_keys": {
        ADA.user_id: {
            ADA.device_id: {"keys": {"ed25519:ADADEVICE": "adakey", "curve25519:ADADEVICE": "c"}}
        }
    },
    "master_keys": {ADA.user_id: {"keys": {"ed25519:am": "am"}}},
}


@dataclass(frozen=True)
class Watchful(Policy):
    """A policy that notes all that it is asked with."""

    asked: list[tuple[object, ...]] = field(default_factory=list)

    def allows(self, *given: Any) -> bool:
        """As the policy does."""
        self.asked.append(given)
        return super().allows(*given)


async def _until(is_so: Callable[[], bool]) -> None:
    """Wait, for as long as a test does, until it is so."""
    for _ in range(1000):
        if is_so():
            return
        await asyncio.sleep(0.01)
    raise TimeoutError


class Bench:
    """The verifier at work, the homeserver that it speaks to, and a clock to be moved."""

    def __init__(self, client: AsyncClient, server: ScriptedServer, identity_path: Path) -> None:
        self.client = client
        self.server = server
        self.now = NOON
        api = ServerApi(client)
        self.policy = Watchful(frozenset({ADA.user_id}))
        self.verifier = Verifier(
            client, api, RoomKeys(client, api), self.policy, identity_path, self._clock
        )
        server.say("/keys/query", json(**SHOWN))
        for kind in Kind:
            server.say(f"/{kind.value}", json())

    def _clock(self) -> datetime:
        return self.now

    @property
    def sent(self) -> list[tuple[Kind, Content]]:
        """What went out by to-device message, in order."""
        sent = []
        for (_, path), body in zip(self.server.asked, self.server.bodies, strict=True):
            if "/sendToDevice/" in path:
                messages = json_lib.loads(body)["messages"]
                ((_, devices),) = messages.items()
                ((_, content),) = devices.items()
                sent.append((Kind(path.split("/")[-2]), content))
        return sent

    def hears(self, kind: Kind, content: Content, sender: str = ADA.user_id) -> None:
        """Let a to-device message arrive."""
        message = {"type": kind.value, "sender": sender, "content": content}
        self.verifier.take_to_device([SyncedEvent(message)])

    async def has_sent(self, number: int) -> list[tuple[Kind, Content]]:
        """Wait until so many messages have gone out."""
        await _until(lambda: len(self.sent) >= number)
        return self.sent


class SyncedEvent:
    """What nio makes of a to-device message."""

    def __init__(self, source: Content) -> None:
        self.source = source


@pytest.fixture
async def bench(
    signed_in: AsyncClient, scripted: ScriptedServer, tmp_path: Path, no_pauses: list[float | None]
) -> AsyncIterator[Bench]:
    """With the verifier running; pauses take no time."""
    del no_pauses
    Identity.generate(USER_ID).save(tmp_path / "identity.json")
    scripted.answers.clear()
    bench = Bench(signed_in, scripted, tmp_path / "identity.json")
    _answer_sends(scripted)
    running = asyncio.create_task(bench.verifier.run())
    yield bench
    running.cancel()
    await asyncio.wait([running])


def _answer_sends(server: ScriptedServer) -> None:
    """Paths end with a transaction id, so that any end has to do."""
    server.say("/keys/query", json(**SHOWN))
    server.say("", json(event_id="$sent"))


def _request(**change: Any) -> Content:
    content = {
        "transaction_id": "t",
        "from_device": ADA.device_id,
        "methods": ["m.sas.v1"],
        "timestamp": STARTED_MS,
    }
    return content | change


async def test_a_whole_verification_by_to_device_messages(
    bench: Bench, caplog: pytest.LogCaptureFixture
) -> None:
    """Request to done; device and master key are vouched for, the emoji are in the log."""
    caplog.set_level(logging.INFO, "bot")
    bench.hears(Kind.REQUEST, _request())
    (ready,) = await bench.has_sent(1)
    assert ready == (
        Kind.READY,
        {"from_device": DEVICE_ID, "methods": ["m.sas.v1"], "transaction_id": "t"},
    )
    ada = Side(ADA, _ourselves(bench))
    (start,) = ada.says(ada.machine.start())
    bench.hears(start.kind, start.content)
    _, accept = (await bench.has_sent(2))[1]
    (key,) = ada.hears(Kind.ACCEPT, accept)
    bench.hears(key.kind, key.content)
    (_, their_key), (_, their_mac) = (await bench.has_sent(4))[2:]
    (mac,) = ada.hears(Kind.KEY, their_key)
    (done,) = ada.hears(Kind.MAC, their_mac)
    bench.hears(mac.kind, mac.content)
    assert (await bench.has_sent(5))[4] == (Kind.DONE, {"transaction_id": "t"})
    bench.hears(done.kind, done.content)
    assert len(their_mac["mac"]) == 2
    assert ", ".join(ada.shown) in caplog.text
    await _until(lambda: "is done" in caplog.text)
    assert bench.client.olm is not None
    assert bench.client.olm.key_verifications == {}


def _ourselves(bench: Bench) -> Party:
    assert bench.client.olm is not None
    device_key = str(bench.client.olm.account.identity_keys["ed25519"])
    identity = Identity.load(bench.verifier._identity_path, USER_ID)
    assert identity is not None
    master = identity.public("master")
    keys = {f"ed25519:{DEVICE_ID}": device_key, f"ed25519:{master}": master}
    return Party(USER_ID, DEVICE_ID, keys)


async def test_access_is_asked_with_a_name_and_nothing_else(bench: Bench) -> None:
    """No mark of a verification ever reaches the policy, and nio's store keeps none."""
    bench.hears(Kind.REQUEST, _request())
    await bench.has_sent(1)
    bench.hears(Kind.REQUEST, _request(transaction_id="u"), "@ben:example.org")
    assert set(bench.policy.asked) == {(ADA.user_id,), ("@ben:example.org",)}


async def test_nobody_else_is_answered(bench: Bench) -> None:
    """Strangers and the account's other devices: silence."""
    bench.hears(Kind.REQUEST, _request(transaction_id="a"), "@ben:example.org")
    bench.hears(Kind.START, {"transaction_id": "b", "from_device": "X"}, USER_ID)
    bench.verifier.take_to_device([None, SyncedEvent({"type": "m.dummy"})])
    bench.hears(Kind.REQUEST, _request())
    ((kind, content),) = await bench.has_sent(1)
    assert (kind, content["transaction_id"]) == (Kind.READY, "t")


async def test_what_fails_is_sent_again_as_the_same_message(bench: Bench) -> None:
    """Limits, lost connections, a broken server; then it is through."""
    bench.server.answers.pop("")
    bench.server.say("", error(429, "M_LIMIT_EXCEEDED"), hang_up, error(502, "M_UNKNOWN"), json())
    bench.hears(Kind.REQUEST, _request())
    await bench.has_sent(4)
    paths = [path for _, path in bench.server.asked if "/sendToDevice/" in path]
    assert len(set(paths)) == 1


async def test_what_is_refused_ends_the_verification(
    bench: Bench, caplog: pytest.LogCaptureFixture
) -> None:
    """The others go on."""
    bench.server.answers.pop("")
    bench.server.say("", error(403, "M_FORBIDDEN"), json())
    bench.hears(Kind.REQUEST, _request())
    await bench.has_sent(1)
    bench.hears(Kind.START, {"transaction_id": "t"})
    bench.hears(Kind.REQUEST, _request(transaction_id="u"))
    sent = await bench.has_sent(2)
    assert sent[1][1]["transaction_id"] == "u"
    assert "was not sent" in caplog.text


async def test_keys_that_the_server_does_not_show_now_are_asked_for_again(bench: Bench) -> None:
    """A failing lookup is repeated; a device without keys cannot be verified."""
    bench.server.say("/keys/query", error(500, "M_UNKNOWN"), hang_up, json(device_keys={}))
    bench.hears(Kind.REQUEST, _request())
    ((kind, content),) = await bench.has_sent(1)
    assert (kind, content["code"]) == (Kind.CANCEL, "m.key_mismatch")


async def test_time_passes_without_events(bench: Bench, monkeypatch: pytest.MonkeyPatch) -> None:
    """The bot starts when nobody does, and gives up when nobody answers."""
    monkeypatch.setattr("bot.matrix.verification.verifier._TICK_S", 0.01)
    bench.hears(Kind.REQUEST, _request())
    await bench.has_sent(1)
    bench.now += timedelta(seconds=20)
    assert (await bench.has_sent(2))[1][0] is Kind.START
    bench.now += timedelta(minutes=2)
    assert (await bench.has_sent(3))[2][1]["code"] == "m.timeout"


async def test_a_restart_in_the_middle_is_told(bench: Bench) -> None:
    """What nobody here knows is cancelled, once."""
    bench.hears(Kind.KEY, {"transaction_id": "old", "key": "k"})
    bench.hears(Kind.MAC, {"transaction_id": "old"})
    bench.hears(Kind.REQUEST, _request())
    sent = await bench.has_sent(2)
    assert [content.get("code") for _, content in sent] == ["m.unknown_transaction", None]


async def test_too_many_events_are_dropped(
    signed_in: AsyncClient, tmp_path: Path, caplog: pytest.LogCaptureFixture
) -> None:
    """A flood fills neither memory nor log."""
    api = ServerApi(signed_in)
    policy = Policy(frozenset({ADA.user_id}))
    verifier = Verifier(
        signed_in, api, RoomKeys(signed_in, api), policy, tmp_path / "i", lambda: NOON
    )
    message = {"type": Kind.KEY.value, "sender": ADA.user_id, "content": {"transaction_id": "t"}}
    verifier.take_to_device([SyncedEvent(message)] * 301)
    assert caplog.text.count("too many") == 1


async def test_one_that_breaks_leaves_the_others(
    bench: Bench, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    """A bug costs one verification."""
    broken: list[Callable[[], Party]] = [bench.verifier._ourselves]

    def once() -> Party:
        monkeypatch.setattr(bench.verifier, "_ourselves", broken[0])
        raise LookupError("a person's words")

    monkeypatch.setattr(bench.verifier, "_ourselves", once)
    bench.hears(Kind.REQUEST, _request(transaction_id="first"))
    bench.hears(Kind.REQUEST, _request())
    ((_, content),) = await bench.has_sent(1)
    assert content["transaction_id"] == "t"
    assert "A verification broke" in caplog.text
    assert "words" not in caplog.text


def _in_room(kind: Kind, content: Content, sender: str = ADA.user_id) -> Content:
    relation = {"m.relates_to": {"rel_type": "m.reference", "event_id": "$request"}}
    source: Content = {
        "type": kind.value,
        "event_id": f"${kind.name}",
        "sender": sender,
        "content": relation | content,
        "origin_server_ts": STARTED_MS,
    }
    if kind is Kind.REQUEST:
        source |= {"type": "m.room.message", "event_id": "$request"}
        source["content"] = {"msgtype": kind.value} | content
    return source


def _room_request(**change: Any) -> Content:
    content = {"from_device": ADA.device_id, "methods": ["m.sas.v1"], "to": USER_ID}
    return _in_room(Kind.REQUEST, content | change)


def _said_in_room(bench: Bench) -> list[tuple[str, Content]]:
    """Type and content of what went into the room."""
    return [
        (path.split("/")[-2], json_lib.loads(body))
        for (_, path), body in zip(bench.server.asked, bench.server.bodies, strict=True)
        if "/send/" in path
    ]


async def _wait_for_room(bench: Bench, number: int) -> list[tuple[str, Content]]:
    await _until(lambda: len(_said_in_room(bench)) >= number)
    return _said_in_room(bench)


async def test_in_a_room_events_refer_to_the_request(bench: Bench) -> None:
    """They are the verifier's, and nothing else of the room is."""
    bench.client.rooms[ROOM] = MatrixRoom(ROOM, USER_ID)
    assert not bench.verifier.take_in_room(ROOM, {"type": "m.room.message", "content": {}})
    assert not bench.verifier.take_in_room(ROOM, {"type": 5, "content": {}})
    assert bench.verifier.take_in_room(ROOM, {"type": "m.key.verification.unheard_of"})
    assert bench.verifier.take_in_room(ROOM, _room_request())
    ((kind, content),) = await _wait_for_room(bench, 1)
    assert kind == "m.key.verification.ready"
    assert content["m.relates_to"] == {"rel_type": "m.reference", "event_id": "$request"}


async def test_in_an_encrypted_room_they_are_encrypted(
    bench: Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    """By the same means as any message."""
    bench.client.rooms[ROOM] = MatrixRoom(ROOM, USER_ID, encrypted=True)

    async def encrypt(_: RoomKeys, room_id: str, kind: str, __: Content) -> tuple[str, Content]:
        return "m.room.encrypted", {"sealed": [room_id, kind]}

    monkeypatch.setattr(RoomKeys, "encrypt", encrypt)
    bench.verifier.take_in_room(ROOM, _room_request())
    assert await _wait_for_room(bench, 1) == [
        ("m.room.encrypted", {"sealed": [ROOM, "m.key.verification.ready"]})
    ]


async def test_a_room_that_the_bot_has_left_gets_nothing(
    bench: Bench, caplog: pytest.LogCaptureFixture
) -> None:
    """There is nobody to send it to."""
    bench.verifier.take_in_room(ROOM, _room_request())
    await _until(lambda: "was not sent" in caplog.text)
    assert _said_in_room(bench) == []


@pytest.mark.parametrize(
    ("original", "told"),
    [
        (_room_request(), True),
        (_room_request(to="@ben:example.org"), False),
        (_room_request() | {"sender": "@ben:example.org"}, False),
        (_in_room(Kind.KEY, {}), False),
        ({"type": "m.room.encrypted", "content": {}}, False),
        (
            {
                "type": "m.room.encrypted",
                "event_id": "$request",
                "sender": ADA.user_id,
                "origin_server_ts": STARTED_MS,
                "content": {
                    "algorithm": "m.megolm.v1.aes-sha2",
                    "ciphertext": "AA",
                    "device_id": "D",
                    "sender_key": "k",
                    "session_id": "s",
                },
            },
            False,
        ),
        (None, False),
    ],
)
async def test_in_a_room_only_what_was_for_the_bot_is_cancelled(
    bench: Bench, original: Content | None, told: bool
) -> None:
    """After a restart the request is looked up; other people's verifications are left alone."""
    bench.client.rooms[ROOM] = MatrixRoom(ROOM, USER_ID)
    bench.server.answers.pop("")
    found = error(404, "M_NOT_FOUND") if original is None else json(**original)
    bench.server.say("/event/$request", found)
    bench.server.say("", json())
    bench.verifier.take_in_room(ROOM, _in_room(Kind.KEY, {"key": "k"}))
    bench.verifier.take_in_room(ROOM, _in_room(Kind.MAC, {}))
    bench.hears(Kind.REQUEST, _request())
    await bench.has_sent(1)
    codes = [content.get("code") for _, content in _said_in_room(bench)]
    assert codes == (["m.unknown_transaction"] if told else [])


async def test_a_request_for_somebody_else_is_left_alone(bench: Bench) -> None:
    """Two people in the room verify each other."""
    bench.client.rooms[ROOM] = MatrixRoom(ROOM, USER_ID)
    bench.verifier.take_in_room(ROOM, _room_request(to="@ben:example.org"))
    bench.verifier.take_in_room(ROOM, _in_room(Kind.KEY, {"key": "k"}))
    bench.hears(Kind.REQUEST, _request())
    await bench.has_sent(1)
    assert _said_in_room(bench) == []


async def test_nio_itself_takes_no_part(signed_in: AsyncClient) -> None:
    """Its own attempt would answer beside ours, and fail in the middle."""
    (start,) = [send for send in Side(ADA, ADA).machine.start() if isinstance(send, Send)]
    message = {"type": start.kind.value, "sender": ADA.user_id, "content": start.content}
    answer: Content = {
        "next_batch": "s1",
        "to_device": {"events": [message]},
        "device_one_time_keys_count": {},
        "device_lists": {"changed": [], "left": []},
        "rooms": {},
    }
    response = SyncResponse.from_dict(answer)
    assert isinstance(response, SyncResponse), response
    await signed_in.receive_response(response)
    assert signed_in.olm is not None
    assert signed_in.olm.key_verifications == {}
    assert signed_in.olm.outgoing_to_device_messages == []
    assert signed_in.olm.users_for_key_query == set()
    assert response.to_device_events[0].source == message
