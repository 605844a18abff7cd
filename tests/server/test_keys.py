"""`linn keys` against a real homeserver, beside a bot that runs and without one."""

from __future__ import annotations

import asyncio
import os
import shutil
import stat
from collections.abc import AsyncIterator, Awaitable, Callable
from contextlib import asynccontextmanager
from pathlib import Path
from typing import Any

import pytest

from bot.__main__ import main
from bot.exits import Exit
from bot.matrix.client import MatrixClient
from bot.matrix.identity import Identity, in_fours, own_master_key
from bot.matrix.policy import Policy
from bot.matrix.server_api import ServerApi
from bot.matrix.session import Account
from tests.server.echo import EchoRuntime
from tests.server.homeserver import PASSWORD, Town

pytestmark = pytest.mark.server

PASSPHRASE = "gravel bar and alder"

#: Runs `linn keys …`; returns its exit code and all that it printed.
Keys = Callable[..., Awaitable[tuple[int, str]]]


@pytest.fixture
def bot(town: Town, monkeypatch: pytest.MonkeyPatch) -> Account:
    """An account, which the settings name."""
    account = town.account("bot")
    for name in [name for name in os.environ if name.startswith("LINN_")]:
        monkeypatch.delenv(name)
    monkeypatch.setenv("LINN_HOMESERVER", account.homeserver)
    monkeypatch.setenv("LINN_USER", account.user_id)
    monkeypatch.setenv("LINN_PASSWORD", PASSWORD)
    monkeypatch.setenv("LINN_DATA_DIR", str(account.data_dir))
    return account


@pytest.fixture
def keys(capsys: pytest.CaptureFixture[str]) -> Keys:
    """The command, in a thread of its own: the test's loop goes on."""

    async def run(*words: str) -> tuple[int, str]:
        capsys.readouterr()
        code = await asyncio.to_thread(main, ["keys", *words])
        printed = capsys.readouterr()
        return code, printed.out + printed.err

    return run


@pytest.fixture
def passphrase(tmp_path: Path) -> str:
    """A file with the passphrase."""
    path = tmp_path / "passphrase"
    path.write_text(f"{PASSPHRASE}\nand a second line that nobody reads\n")
    return str(path)


@asynccontextmanager
async def _started(account: Account) -> AsyncIterator[MatrixClient]:
    client = MatrixClient(account, Policy())
    try:
        await client.start()
        yield client
    finally:
        await client.close()


@asynccontextmanager
async def _running(account: Account) -> AsyncIterator[MatrixClient]:
    async with _started(account) as client:
        runtime = EchoRuntime()
        running = asyncio.create_task(client.run(runtime))
        await runtime.waits(lambda: runtime.token is not None)
        yield client
        running.cancel()
        await asyncio.wait([running])


async def _master(client: MatrixClient) -> str:
    shown = await _shown(client)
    (key,) = shown["master_keys"][client.user_id]["keys"].values()
    return str(key)


async def _shown(client: MatrixClient) -> dict[str, Any]:
    body: dict[str, Any] = {"device_keys": {client.user_id: []}}
    return await ServerApi(client._nio).call("POST", "keys", "query", body=body)


async def test_keys_are_shown_while_the_bot_runs(bot: Account, keys: Keys) -> None:
    """User, device, both keys in groups of four, and that all is well; nothing is written."""
    code, said = await keys()
    assert (code, "has not signed in" in said) == (Exit.NO_DEVICE, True)
    async with _running(bot) as client:
        before = await _shown(client)
        code, said = await keys()
        assert client._nio.olm is not None
        device_key = client._nio.olm.account.identity_keys["ed25519"]
        assert await _shown(client) == before
        wanted = (
            f"User: {bot.user_id}",
            f"Device: {client.transport.scope}",
            f"Key of the device: {in_fours(device_key)}",
            f"Master key of the identity: {in_fours(await _master(client))}",
            "The homeserver shows the same key, signed by the identity.",
            "The homeserver shows the same master key.",
        )
    assert code == Exit.DONE
    assert set(said.splitlines()) == set(wanted)


async def test_each_trouble_is_told_with_what_helps(bot: Account, keys: Keys) -> None:
    """Lost keys, a changed identity, a damaged file, a lost key store, an ended session."""
    async with _started(bot) as client:
        pass
    kept = bot.identity_path.read_text()
    bot.identity_path.unlink()
    assert (await keys())[0] == Exit.IDENTITY_LOST
    bot.identity_path.write_text("{")
    code, said = await keys()
    assert (code, "linn keys import FILE" in said) == (Exit.IDENTITY_DAMAGED, True)
    Identity.generate(bot.user_id).save(bot.identity_path)
    code, said = await keys()
    assert (code, "linn keys reset" in said) == (Exit.IDENTITY_CHANGED, True)
    bot.identity_path.write_text(kept)
    store = bot.data_dir / "aside"
    bot.key_store_path.rename(store)
    code, said = await keys()
    assert (code, "linn keys new-device" in said) == (Exit.DEVICE_CHANGED, True)
    store.rename(bot.key_store_path)
    assert (await keys())[0] == Exit.DONE
    async with _started(bot) as client:
        await ServerApi(client._nio).call("POST", "logout", body={})
    code, said = await keys()
    assert (code, "linn keys new-device" in said) == (Exit.NO_PERMISSION, True)


async def test_a_silent_homeserver_is_told(
    bot: Account, keys: Keys, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What is here is shown all the same."""
    async with _started(bot):
        pass
    monkeypatch.setenv("LINN_HOMESERVER", "http://127.0.0.1:9")
    code, said = await keys()
    assert code == Exit.UNAVAILABLE
    assert "Master key of the identity" in said
    assert (await keys("reset", "--yes-replace", bot.user_id))[0] == Exit.UNAVAILABLE


async def test_an_export_brings_lost_keys_back(
    bot: Account, keys: Keys, passphrase: str, tmp_path: Path
) -> None:
    """Exported, lost, refused at the start, imported, started again as if nothing had been."""
    export = tmp_path / "identity.export"
    async with _started(bot):
        pass
    master = own_master_key(bot.identity_path, bot.user_id)
    code, _ = await keys("export", str(export), "--passphrase-file", passphrase)
    assert (code, stat.S_IMODE(export.stat().st_mode)) == (Exit.DONE, 0o600)
    bot.identity_path.unlink()
    code, said = await keys("import", str(export), "--passphrase-file", passphrase)
    assert (code, "starts" in said or "start" in said) == (Exit.DONE, True)
    assert own_master_key(bot.identity_path, bot.user_id) == master
    assert stat.S_IMODE(bot.identity_path.stat().st_mode) == 0o600
    assert (await keys())[0] == Exit.DONE
    async with _started(bot):
        pass


async def test_reset_makes_a_new_identity_beside_a_running_bot(bot: Account, keys: Keys) -> None:
    """The server asks for the password; the device is signed by the new identity at once."""
    async with _running(bot) as client:
        before = await _master(client)
        code, said = await keys("reset")
        assert (code, "--yes-replace" in said) == (Exit.NOT_CONFIRMED, True)
        code, _ = await keys("reset", "--yes-replace", "@other:localhost")
        assert (code, await _master(client)) == (Exit.NOT_CONFIRMED, before)
        code, said = await keys("reset", "--yes-replace", bot.user_id)
        assert code == Exit.DONE, said
        after = await _master(client)
        assert after != before
        assert in_fours(after) in said
        assert (await keys())[0] == Exit.DONE
    before_path = bot.identity_path.with_name("matrix_identity.before.json")
    assert own_master_key(before_path, bot.user_id) == before
    async with _started(bot):
        pass


async def test_an_identity_that_was_replaced_is_taken_over_by_its_export(
    bot: Account, keys: Keys, passphrase: str, tmp_path: Path
) -> None:
    """Another installation made it: its export brings both together, only when told so."""
    export = str(tmp_path / "identity.export")
    async with _started(bot) as client:
        kept = bot.identity_path.read_text()
        assert (await keys("reset", "--yes-replace", bot.user_id))[0] == Exit.DONE
        assert (await keys("export", export, "--passphrase-file", passphrase))[0] == Exit.DONE
        bot.identity_path.write_text(kept)
        assert (await keys())[0] == Exit.IDENTITY_CHANGED
        words = ("import", export, "--passphrase-file", passphrase)
        assert (await keys(*words))[0] == Exit.OTHER_IDENTITY
        assert bot.identity_path.read_text() == kept
        assert (await keys(*words, "--yes-replace", bot.user_id))[0] == Exit.DONE
        assert own_master_key(bot.identity_path, bot.user_id) == await _master(client)
    assert (await keys())[0] == Exit.DONE


async def test_a_reset_needs_the_password(
    bot: Account, keys: Keys, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Refused, what was here is still here and still what the server shows."""
    async with _started(bot):
        pass
    kept = bot.identity_path.read_text()
    monkeypatch.setenv("LINN_PASSWORD", "wrong")
    code, said = await keys("reset", "--yes-replace", bot.user_id)
    assert (code, "LINN_PASSWORD" in said) == (Exit.NO_PERMISSION, True)
    assert bot.identity_path.read_text() == kept
    assert (await keys())[0] == Exit.DONE


async def test_a_new_device_comes_back_under_the_same_identity(bot: Account, keys: Keys) -> None:
    """After a lost key store: one command, one start, and the device is signed."""
    async with _started(bot) as client:
        old, master = client.transport.scope, await _master(client)
    shutil.rmtree(bot.key_store_path)
    assert (await keys())[0] == Exit.DEVICE_CHANGED
    code, said = await keys("new-device")
    assert (code, "LINN_PASSWORD" in said) == (Exit.DONE, True)
    assert (await keys())[0] == Exit.NO_DEVICE
    async with _started(bot) as client:
        assert client.transport.scope != old
        assert await _master(client) == master
    assert (await keys())[0] == Exit.DONE
