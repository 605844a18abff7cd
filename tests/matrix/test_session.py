"""Signing in at a homeserver that is slow, away or contradicts itself."""

from __future__ import annotations

import dataclasses

import pytest
from nio import AsyncClient

from bot.matrix.client import MatrixClient
from bot.matrix.errors import (
    IdentityError,
    LoginRefusedError,
    MatrixError,
    UnknownTokenError,
    WrongDeviceError,
)
from bot.matrix.policy import Policy
from bot.matrix.private_file import read_private, write_private
from bot.matrix.session import Account, new_client, open_session
from tests.matrix.scripted_server import (
    DEVICE_ID,
    TOKEN,
    USER_ID,
    Answer,
    ScriptedServer,
    error,
    hang_up,
    json,
    page,
)

LOGGED_IN = json(user_id=USER_ID, device_id=DEVICE_ID, access_token=TOKEN)
IS_ME = json(user_id=USER_ID, device_id=DEVICE_ID)


async def _open(account: Account) -> AsyncClient:
    client = new_client(account)
    try:
        await open_session(client, account)
    finally:
        await client.close()  # type: ignore[no-untyped-call]
        if client.store is not None:
            client.store.database.close()
    return client


async def test_a_login_waits_until_it_is_let_in(
    scripted: ScriptedServer,
    account: Account,
    no_pauses: list[float | None],
    caplog: pytest.LogCaptureFixture,
) -> None:
    """A server that is away or asks to wait is asked again, with pauses; then the token is kept.

    The log names the address once, should it be mistyped.
    """
    limit = error(429, "M_LIMIT_EXCEEDED", retry_after_ms=330_000)
    scripted.say("/login", hang_up, page(502), limit, LOGGED_IN)
    await _open(account)
    assert no_pauses == [None, None, 330.0]
    kept = {"user_id": USER_ID, "device_id": DEVICE_ID, "access_token": TOKEN}
    assert read_private(account.session_path) == kept
    assert caplog.text.count(f"Trouble with signing in at {account.homeserver}") == 1


async def test_a_kept_token_is_used_without_a_login(
    scripted: ScriptedServer, account: Account
) -> None:
    """The second start asks who it is, and never logs in again."""
    scripted.say("/login", LOGGED_IN)
    scripted.say("/account/whoami", IS_ME)
    await _open(account)
    client = await _open(account)
    assert scripted.asked_for("/login") == 1
    assert (client.device_id, client.access_token) == (DEVICE_ID, TOKEN)


@pytest.mark.parametrize(
    ("answer", "raised"),
    [
        (error(401, "M_UNKNOWN_TOKEN"), UnknownTokenError),
        (json(user_id=USER_ID, device_id="OTHER"), WrongDeviceError),
        (json(user_id="@other:example.org", device_id=DEVICE_ID), WrongDeviceError),
    ],
)
async def test_a_token_that_does_not_fit(
    scripted: ScriptedServer, account: Account, answer: Answer, raised: type[MatrixError]
) -> None:
    """An unknown token and a foreign one are told apart."""
    scripted.say("/account/whoami", answer)
    given = dataclasses.replace(account, access_token=TOKEN, device_id=DEVICE_ID)
    with pytest.raises(raised):
        await _open(given)


async def test_the_kept_device_wins_over_no_other(account: Account) -> None:
    """A configured device that is not the kept one has to be sorted out by the operator."""
    write_private(account.session_path, {"device_id": DEVICE_ID, "access_token": TOKEN})
    with pytest.raises(WrongDeviceError, match="Remove one"):
        await _open(dataclasses.replace(account, device_id="OTHER"))


async def test_logins_that_are_refused(scripted: ScriptedServer, account: Account) -> None:
    """A wrong password, an account of another name, and nothing to log in with."""
    scripted.say("/login", error(403, "M_FORBIDDEN"))
    with pytest.raises(LoginRefusedError):
        await _open(account)
    other = json(user_id="@other:example.org", device_id=DEVICE_ID, access_token=TOKEN)
    scripted.say("/login", other)
    with pytest.raises(WrongDeviceError):
        await _open(account)
    assert not account.session_path.exists()
    with pytest.raises(LoginRefusedError):
        await _open(dataclasses.replace(account, password=None))


def test_secrets_do_not_show(account: Account) -> None:
    """Neither password nor token stand in what a log would print."""
    printed = repr(dataclasses.replace(account, access_token=TOKEN))
    assert "quartz" not in printed
    assert TOKEN not in printed


async def test_a_start_goes_on_when_the_server_comes_back(
    scripted: ScriptedServer, account: Account, no_pauses: list[float | None]
) -> None:
    """Preparing the device is repeated; a token that became unknown meanwhile ends it."""
    scripted.say("/login", LOGGED_IN)
    scripted.say(
        "/keys/query",
        page(502),
        json(device_keys={}),
        json(device_keys={}),
        error(401, "M_UNKNOWN_TOKEN"),
    )
    scripted.say("/keys/upload", error(500, "M_UNKNOWN"))
    client = MatrixClient(account, Policy())
    with pytest.raises(UnknownTokenError):
        await client.start()
    await client.close()
    assert len(no_pauses) == 3
    assert client.last_sync_at is None
    assert client.user_id == USER_ID


async def test_a_token_that_is_unknown_at_the_key_upload(
    scripted: ScriptedServer, account: Account
) -> None:
    """It is the same error wherever it shows."""
    scripted.say("/login", LOGGED_IN)
    scripted.say("/keys/query", json(device_keys={}))
    scripted.say("/keys/upload", error(401, "M_UNKNOWN_TOKEN"))
    client = MatrixClient(account, Policy())
    with pytest.raises(UnknownTokenError):
        await client.start()
    await client.close()


async def test_a_server_without_the_device_is_not_signed_for(
    scripted: ScriptedServer, account: Account
) -> None:
    """What it took but does not show is not our device: no identity is made for it."""
    scripted.say("/login", LOGGED_IN)
    scripted.say("/keys/query", json(device_keys={}))
    scripted.say("/keys/upload", json(one_time_key_counts={"signed_curve25519": 50}))
    client = MatrixClient(account, Policy())
    with pytest.raises(IdentityError):
        await client.start()
    await client.close()
    assert not account.identity_path.exists()
