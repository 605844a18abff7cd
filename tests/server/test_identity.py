"""The bot's device, its signing identity and its login, as the homeserver sees them."""

from __future__ import annotations

import asyncio
import dataclasses
import shutil
import stat
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from typing import Any

import pytest
from signedjson.key import decode_verify_key_bytes
from signedjson.sign import SignatureVerifyException, verify_signed_json
from unpaddedbase64 import decode_base64

from bot.exits import Exit
from bot.matrix.client import MatrixClient
from bot.matrix.errors import (
    DeviceChangedError,
    IdentityChangedError,
    IdentityLostError,
    LoginRefusedError,
    UnknownTokenError,
    WrongDeviceError,
)
from bot.matrix.identity import Identity
from bot.matrix.policy import Policy
from bot.matrix.server_api import ServerApi
from bot.matrix.session import Account
from tests.server.echo import EchoRuntime
from tests.server.homeserver import Town
from tests.server.person import Person

pytestmark = pytest.mark.server


@asynccontextmanager
async def _started(account: Account, **more: Any) -> AsyncIterator[MatrixClient]:
    client = MatrixClient(account, Policy(), **more)
    try:
        await client.start()
        yield client
    finally:
        await client.close()


async def _shown(person: Person, user_id: str) -> dict[str, Any]:
    """What the homeserver shows everybody of this account's keys."""
    return await ServerApi(person.client).call(
        "POST", "keys", "query", body={"device_keys": {user_id: []}}
    )


def _verify(value: dict[str, Any], signer: str, key_id: str, public_key: str) -> None:
    """An independent reading of the signature, by the homeserver project's own library."""
    verify_signed_json(value, signer, decode_verify_key_bytes(key_id, decode_base64(public_key)))


async def test_the_device_is_signed_before_the_first_sync(town: Town) -> None:
    """Master signs self-signing, self-signing signs the device, the device signs master."""
    bot = town.account("bot")
    async with Person(town.account("ada")) as ada, _started(bot) as client:
        shown = await _shown(ada, bot.user_id)
        assert client.last_sync_at is None
    master, signing = shown["master_keys"][bot.user_id], shown["self_signing_keys"][bot.user_id]
    device = shown["device_keys"][bot.user_id][client.transport.scope]
    (master_id, master_key), *_ = master["keys"].items()
    (signing_id, signing_key), *_ = signing["keys"].items()
    assert not any("=" in part for part in (master_id, signing_id))
    _verify(signing, bot.user_id, master_id, master_key)
    _verify(device, bot.user_id, signing_id, signing_key)
    device_id = f"ed25519:{client.transport.scope}"
    _verify(master, bot.user_id, device_id, device["keys"][device_id])
    with pytest.raises(SignatureVerifyException):
        _verify(device | {"device_id": "other"}, bot.user_id, signing_id, signing_key)


async def test_a_restart_uploads_nothing(town: Town, monkeypatch: pytest.MonkeyPatch) -> None:
    """The same device with the same identity comes back without a write to the server."""
    bot = town.account("bot")
    async with _started(bot) as client:
        device_id = client.transport.scope
    asked: list[str] = []
    call = ServerApi.call

    async def listening(self: ServerApi, method: str, *path: str, **more: Any) -> Any:
        asked.append("/".join(path))
        return await call(self, method, *path, **more)

    monkeypatch.setattr(ServerApi, "call", listening)
    async with Person(town.account("ada")) as ada:
        before = await _shown(ada, bot.user_id)
        async with _started(bot) as client:
            assert client.transport.scope == device_id
        after = await _shown(ada, bot.user_id)
    assert set(asked) == {"keys/query"}
    assert before == after


async def test_secrets_are_for_the_bot_alone(town: Town) -> None:
    """Token and identity are files of mode 0600, the key store a folder of mode 0700."""
    bot = town.account("bot")
    async with _started(bot):
        modes = [
            stat.S_IMODE(path.stat().st_mode)
            for path in (bot.session_path, bot.identity_path, bot.data_dir / "matrix_keys")
        ]
    assert modes == [0o600, 0o600, 0o700]


async def test_a_new_device_is_signed_with_the_kept_identity(town: Town) -> None:
    """After a lost session, the next device is signed by the same identity."""
    bot = town.account("bot")
    async with _started(bot) as client:
        old_device = client.transport.scope
    bot.session_path.unlink()
    async with Person(town.account("ada")) as ada:
        before = await _shown(ada, bot.user_id)
        async with _started(bot) as client:
            after = await _shown(ada, bot.user_id)
    assert client.transport.scope != old_device
    assert before["master_keys"] == after["master_keys"]
    (signing_id, signing_key), *_ = after["self_signing_keys"][bot.user_id]["keys"].items()
    device = after["device_keys"][bot.user_id][client.transport.scope]
    _verify(device, bot.user_id, signing_id, signing_key)


async def test_a_lost_identity_stops_the_start(town: Town) -> None:
    """Without the key file the start is refused, with its own exit code; nothing is made anew."""
    bot = town.account("bot")
    async with _started(bot):
        pass
    bot.identity_path.unlink()
    with pytest.raises(IdentityLostError) as caught:
        async with _started(bot):
            pass
    assert caught.value.exit_code is Exit.IDENTITY_LOST
    assert not bot.identity_path.exists()


async def test_an_identity_that_was_changed_on_the_server_stops_the_start(town: Town) -> None:
    """Somebody with the bot's password has made another one: an operator has to look."""
    bot = town.account("bot")
    async with _started(bot):
        pass
    kept = bot.identity_path.read_text()
    Identity.generate(bot.user_id).save(bot.identity_path)
    with pytest.raises(IdentityChangedError) as caught:
        async with _started(bot):
            pass
    assert caught.value.exit_code is Exit.IDENTITY_CHANGED
    bot.identity_path.write_text(kept)
    async with _started(bot):
        pass


async def test_a_lost_key_store_stops_the_start(town: Town) -> None:
    """The old token with new device keys would be a silent bot: it refuses to start."""
    bot = town.account("bot")
    async with Person(town.account("ada")) as ada:
        async with _started(bot):
            before = await _shown(ada, bot.user_id)
        shutil.rmtree(bot.data_dir / "matrix_keys")
        with pytest.raises(DeviceChangedError) as caught:
            async with _started(bot):
                pass
        assert caught.value.exit_code is Exit.DEVICE_CHANGED
        assert await _shown(ada, bot.user_id) == before


async def test_an_unknown_token_ends_the_run_and_the_next_start(town: Town) -> None:
    """A session that was ended elsewhere is an error with its own exit code, not a pause."""
    bot = town.account("bot")
    async with _started(bot) as client:
        runtime = EchoRuntime()
        running = asyncio.create_task(client.run(runtime))
        await runtime.waits(lambda: runtime.token is not None)
        await ServerApi(client._nio).call("POST", "logout", body={})
        with pytest.raises(UnknownTokenError) as caught:
            await asyncio.wait_for(running, 20)
    assert caught.value.exit_code is Exit.NO_PERMISSION
    with pytest.raises(UnknownTokenError, match="linn keys new-device"):
        async with _started(bot):
            pass


async def test_a_wrong_password_is_refused(town: Town) -> None:
    """A wrong password, or nothing to log in with, ends the start at once."""
    bot = town.account("bot")
    for password in ("wrong", None):
        with pytest.raises(LoginRefusedError):
            async with _started(dataclasses.replace(bot, password=password)):
                pass


async def test_a_token_serves_in_place_of_a_password(town: Town) -> None:
    """Token and device id are enough; a token of another device or account is refused."""
    bot, other = town.account("bot"), town.account("other")
    async with Person(bot) as login:
        token, device_id = login.client.access_token, str(login.client.device_id)
        given = dataclasses.replace(bot, password=None, access_token=token, device_id=device_id)
        async with _started(given) as client:
            assert client.transport.scope == device_id
        for wrong in (
            dataclasses.replace(given, device_id="ELSEWHERE"),
            dataclasses.replace(other, access_token=token, device_id=device_id),
        ):
            with pytest.raises(WrongDeviceError):
                async with _started(wrong):
                    pass
