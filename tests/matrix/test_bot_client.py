"""Keys survive a kill at any point: saved before they are shown, taken in all or none."""

from __future__ import annotations

import json as jsons

import pytest
from aiohttp import ClientError
from nio import LocalProtocolError, SyncResponse

from bot.matrix.bot_client import BotClient
from bot.matrix.device_store import read_device
from bot.matrix.session import Account
from tests.matrix.scripted_server import (
    DEVICE_ID,
    USER_ID,
    ScriptedServer,
    error,
    hang_up,
    json,
)

EMPTY = {"next_batch": "t1", "rooms": {}, "to_device": {"events": []}, "device_lists": {}}


def one_time_keys(account: Account) -> dict[str, str]:
    """What a process that starts now would find."""
    device = read_device(account.key_store_path, USER_ID, DEVICE_ID)
    assert device is not None
    return dict(device.account.one_time_keys["curve25519"])


def uploaded(body: bytes) -> dict[str, str]:
    """The one-time keys in a request, by their ids."""
    keys = jsons.loads(body)["one_time_keys"]
    return {key_id.partition(":")[2]: value["key"] for key_id, value in keys.items()}


async def test_keys_are_saved_before_the_server_has_them(
    scripted: ScriptedServer, signed_in: BotClient, account: Account
) -> None:
    """When the answer is lost, and the process with it, the secrets are still there."""
    scripted.say("/keys/upload", hang_up)
    with pytest.raises(ClientError):
        await signed_in.keys_upload()
    assert uploaded(scripted.bodies[-1]) == one_time_keys(account) != {}


async def test_an_id_that_is_taken_is_left(
    scripted: ScriptedServer, signed_in: BotClient, account: Account
) -> None:
    """When the server has another key of that id, the next keys have other ids."""
    counts = json(one_time_key_counts={"signed_curve25519": 50})
    scripted.say("/keys/upload", error(400, "M_UNKNOWN"), counts)
    await signed_in.keys_upload()
    assert one_time_keys(account) == {}
    first = uploaded(scripted.bodies[-1])
    await signed_in.keys_upload()
    second = uploaded(scripted.bodies[-1])
    assert second
    assert not first.keys() & second.keys()


async def test_keys_that_nobody_needs_are_not_sent(signed_in: BotClient) -> None:
    """As the library has it: the caller asks first whether there is something to upload."""
    assert signed_in.olm is not None
    signed_in.olm.account.shared = True
    signed_in.olm.uploaded_key_count = 50
    with pytest.raises(LocalProtocolError):
        await signed_in.keys_upload()


async def test_a_batch_is_taken_in_whole(
    signed_in: BotClient, account: Account, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Nobody sees half of it on disk; what came before something broke stays, and that is told."""
    seen: list[int] = []

    async def take_keys(_: SyncResponse) -> None:
        assert signed_in.olm is not None
        signed_in.olm.account.generate_one_time_keys(3)
        signed_in.olm.save_account()
        seen.append(len(one_time_keys(account)))

    async def break_down(_: SyncResponse) -> None:
        raise ValueError("a room that is not formed well")

    monkeypatch.setattr(signed_in, "_handle_to_device", take_keys)
    monkeypatch.setattr(signed_in, "_handle_joined_rooms", break_down)
    response = SyncResponse.from_dict(EMPTY)
    assert isinstance(response, SyncResponse)
    with pytest.raises(ValueError, match="not formed well"):
        await signed_in.receive_response(response)
    assert (seen, len(one_time_keys(account))) == ([0], 3)
