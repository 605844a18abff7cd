"""Room keys reach everybody before a message leaves, whatever fails on the way."""

from __future__ import annotations

from typing import Any

import pytest
from nio import AsyncClient, MatrixRoom, SyncResponse
from nio.crypto import OlmDevice
from vodozemac import Account as OlmAccount

from bot.matrix.keys import RoomKeys, upload_device_keys
from bot.matrix.server_api import ServerApi
from bot.runtime.ports import SendLaterError, SendUncertainError, UnreachableError
from bot.trouble import Trouble
from tests.matrix.scripted_server import USER_ID, ScriptedServer, error, hang_up, json, page

ROOM = "!room:example.org"
ADA = "@ada:example.org"
DEVICE = "ADADEVICE"
CONTENT = {"msgtype": "m.text", "body": "hello"}


class Reader:
    """Ada's device: it has a one-time key, so that a session with it can begin."""

    def __init__(self) -> None:
        account = OlmAccount()
        account.generate_one_time_keys(1)
        (key,) = account.one_time_keys.values()
        self.curve25519 = account.curve25519_key.to_base64()
        self.ed25519 = account.ed25519_key.to_base64()
        signed = {"key": key.to_base64()}
        text = f'{{"key":"{signed["key"]}"}}'
        signature = account.sign(text.encode()).to_base64()
        self.one_time_key: dict[str, Any] = signed | {
            "signatures": {ADA: {f"ed25519:{DEVICE}": signature}}
        }

    @property
    def claimed(self) -> dict[str, Any]:
        """What a claim of its key is answered."""
        return {ADA: {DEVICE: {"signed_curve25519:AAAA": self.one_time_key}}}


@pytest.fixture
def keys(signed_in: AsyncClient, scripted: ScriptedServer) -> RoomKeys:
    """In an encrypted room with Ada, whose device is known."""
    room = MatrixRoom(ROOM, USER_ID, encrypted=True)
    room.add_member(ADA, "Ada", None)
    room.members_synced = True
    signed_in.rooms[ROOM] = room
    reader = Reader()
    scripted.say("/keys/claim", json(one_time_keys=reader.claimed, failures={}))
    identity = {"curve25519": reader.curve25519, "ed25519": reader.ed25519}
    signed_in.device_store.add(OlmDevice(ADA, DEVICE, identity))
    return RoomKeys(signed_in, ServerApi(signed_in))


def _shares(scripted: ScriptedServer) -> int:
    return sum("/sendToDevice/" in path for _, path in scripted.asked)


def _say_to_device(scripted: ScriptedServer, *answers: Any) -> None:
    # The path ends with a random transaction id; what ends in "" fits all that is not said.
    scripted.say("", *answers)


async def test_a_key_is_shared_once_for_many_messages(
    scripted: ScriptedServer, keys: RoomKeys
) -> None:
    """The first message brings the key, the next ones use it."""
    _say_to_device(scripted, json())
    kind, first = await keys.encrypt(ROOM, "m.room.message", CONTENT)
    _, second = await keys.encrypt(ROOM, "m.room.message", CONTENT)
    assert kind == "m.room.encrypted"
    assert first["session_id"] == second["session_id"]
    assert first["ciphertext"] != second["ciphertext"]
    assert _shares(scripted) == 1


@pytest.mark.parametrize("answer", [page(502), error(429, "M_LIMIT_EXCEEDED")])
async def test_a_key_that_did_not_arrive_is_shared_again(
    scripted: ScriptedServer, keys: RoomKeys, answer: Any
) -> None:
    """No message leaves that a reachable device could not read; the next try brings the key."""
    _say_to_device(scripted, answer, json())
    with pytest.raises((SendLaterError, UnreachableError)):
        await keys.encrypt(ROOM, "m.room.message", CONTENT)
    _, content = await keys.encrypt(ROOM, "m.room.message", CONTENT)
    assert "ciphertext" in content
    assert _shares(scripted) == 2


@pytest.mark.parametrize(
    ("answers", "raised"),
    [
        ([hang_up, hang_up], SendUncertainError),
        ([error(429, "M_LIMIT_EXCEEDED", retry_after_ms=900)], SendLaterError),
    ],
)
async def test_a_claim_that_fails_blocks_nothing(
    scripted: ScriptedServer, keys: RoomKeys, answers: list[Any], raised: type[Exception]
) -> None:
    """After a failure the room is not left waiting for a share that never ends."""
    good = scripted.answers["/keys/claim"]
    scripted.say("/keys/claim", *answers)
    with pytest.raises(raised):
        await keys.encrypt(ROOM, "m.room.message", CONTENT)
    scripted.answers["/keys/claim"] = good
    _say_to_device(scripted, json())
    _, content = await keys.encrypt(ROOM, "m.room.message", CONTENT)
    assert "ciphertext" in content


async def test_members_and_devices_are_known_first(
    scripted: ScriptedServer, keys: RoomKeys, signed_in: AsyncClient
) -> None:
    """A new room's members are asked for, then their devices, then the key is shared."""
    signed_in.rooms[ROOM].members_synced = False
    scripted.say("/joined_members", error(500, "M_UNKNOWN"))
    with pytest.raises(SendUncertainError):
        await keys.encrypt(ROOM, "m.room.message", CONTENT)
    joined = {ADA: {"display_name": "Ada", "avatar_url": None}}
    scripted.say("/joined_members", json(joined=joined))
    scripted.say("/keys/query", json(device_keys={}))
    _say_to_device(scripted, json())
    await keys.encrypt(ROOM, "m.room.message", CONTENT)
    asked = [path.rpartition("/")[2] for _, path in scripted.asked[1:4]]
    assert asked == ["joined_members", "query", "claim"]


async def test_a_room_that_is_not_encrypted_is_no_case_for_keys(
    keys: RoomKeys, signed_in: AsyncClient
) -> None:
    """What changed meanwhile is tried again later."""
    signed_in.rooms[ROOM].encrypted = False
    with pytest.raises(SendLaterError):
        await keys.encrypt(ROOM, "m.room.message", CONTENT)


def _synced(count: int) -> SyncResponse:
    answer = SyncResponse.from_dict(
        {"next_batch": "t", "device_one_time_keys_count": {"signed_curve25519": count}}
    )
    assert isinstance(answer, SyncResponse)
    return answer


async def test_one_time_keys_never_run_out(
    scripted: ScriptedServer, keys: RoomKeys, signed_in: AsyncClient
) -> None:
    """A count of none brings new ones, also when the last count was full."""
    assert signed_in.olm is not None
    scripted.say("/keys/upload", json(one_time_key_counts={"signed_curve25519": 50}))
    await upload_device_keys(signed_in)
    await upload_device_keys(signed_in)
    assert scripted.asked_for("/keys/upload") == 1
    signed_in.olm.uploaded_key_count = 50
    await keys.upkeep(_synced(0))
    assert scripted.asked_for("/keys/upload") == 2


async def test_upkeep_goes_on_when_a_part_of_it_fails(
    scripted: ScriptedServer,
    keys: RoomKeys,
    signed_in: AsyncClient,
    caplog: pytest.LogCaptureFixture,
) -> None:
    """Each step is tried though the others fail; the log has one line of it."""
    assert signed_in.olm is not None
    scripted.say("/keys/upload", error(500, "M_UNKNOWN"))
    scripted.say("/keys/query", hang_up)
    signed_in.olm.users_for_key_query.add(ADA)
    signed_in.olm.wedged_devices.append(signed_in.device_store[ADA][DEVICE])
    await keys.upkeep(_synced(50))
    asked = [path.rpartition("/")[2] for _, path in scripted.asked]
    assert [asked[0], asked[-1]] == ["upload", "claim"]
    assert "query" in asked
    assert [message for message in caplog.messages if "Trouble" in message] == [
        "Trouble with device keys (500 M_UNKNOWN); it is tried again and again"
    ]


async def test_upkeep_that_fails_rests_and_says_when_it_works_again(
    scripted: ScriptedServer,
    keys: RoomKeys,
    signed_in: AsyncClient,
    caplog: pytest.LogCaptureFixture,
) -> None:
    """However many syncs come, failing upkeep asks after pauses only, or when the server said."""
    now_s = [100.0]
    keys = RoomKeys(
        signed_in, ServerApi(signed_in), Trouble("keys", lambda: now_s[0]), lambda: now_s[0]
    )
    limit = error(429, "M_LIMIT_EXCEEDED", retry_after_ms=90_000)
    scripted.say("/keys/upload", page(502), limit, json(one_time_key_counts={}))
    asked = []
    for seconds in (0, 0.1, 1.1, 60, 90):
        now_s[0] = 100.0 + seconds
        await keys.upkeep(_synced(0))
        asked.append(scripted.asked_for("/keys/upload"))
    assert asked == [1, 1, 2, 2, 2]
    now_s[0] += 2.0
    await keys.upkeep(_synced(0))
    assert scripted.asked_for("/keys/upload") == 3
    assert [message.partition(" (")[0] for message in caplog.messages] == [
        "Trouble with keys",
        "No more trouble with keys, after 92 s",
    ]
