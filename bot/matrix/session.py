"""Logging in once, keeping token and device, and coming back as the same device."""

from __future__ import annotations

import asyncio
import logging
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, Final, NamedTuple

from aiohttp import ClientError
from nio import (
    AsyncClient,
    AsyncClientConfig,
    ErrorResponse,
    LoginError,
    LoginResponse,
    WhoamiResponse,
)

from bot.matrix.backoff import Backoff
from bot.matrix.bot_client import BotClient
from bot.matrix.errors import LoginRefusedError, UnknownTokenError, WrongDeviceError
from bot.matrix.private_file import read_private, write_private
from bot.matrix.server_api import refusal
from bot.trouble import Trouble

_log: Final = logging.getLogger(__name__)

#: Loggers of libraries that write what people say, or keys, into the log at these levels: nio
#: prints events that are not well formed and all answers, the key store prints its statements.
_QUIET: Final = {
    "nio": logging.WARNING,
    "nio.events": logging.CRITICAL,
    "nio.responses": logging.CRITICAL,
    "peewee": logging.WARNING,
}


@dataclass(frozen=True)
class Account:
    """The bot's account and where its keys are kept.

    Attributes:
        homeserver: base address of the client-server interface.
        user_id: full user id.
        data_dir: folder for token, device keys and signing identity; backed up as one.
        password: used for one login; afterwards the kept token is used.
        access_token: instead of a password, with `device_id`.
        device_id: the device of `access_token`.
        device_name: what people see in the list of the bot's devices.
    """

    homeserver: str
    user_id: str
    data_dir: Path
    password: str | None = field(default=None, repr=False)
    access_token: str | None = field(default=None, repr=False)
    device_id: str | None = None
    device_name: str = "Linn"

    @property
    def session_path(self) -> Path:
        """The file that holds the token."""
        return self.data_dir / "matrix_session.json"

    @property
    def identity_path(self) -> Path:
        """The file that holds the signing identity."""
        return self.data_dir / "matrix_identity.json"

    @property
    def key_store_path(self) -> Path:
        """The folder of the device's keys and of what it can decrypt."""
        return self.data_dir / "matrix_keys"

    @property
    def waiting_path(self) -> Path:
        """The file that holds events whose key has not come yet."""
        return self.data_dir / "matrix_waiting.json"

    @property
    def entering_path(self) -> Path:
        """The file that holds accepted invitations whose rooms are not entered yet."""
        return self.data_dir / "matrix_entering.json"


def new_client(account: Account) -> BotClient:
    """A client that returns every failure at once: waiting and repeating are done here, aloud.

    The libraries' own logs are cut down to what tells nothing of messages and keys.
    """
    for name, level in _QUIET.items():
        logging.getLogger(name).setLevel(level)
    store = account.key_store_path
    store.mkdir(parents=True, exist_ok=True)
    store.chmod(0o700)
    config = AsyncClientConfig(
        max_limit_exceeded=0, max_timeouts=0, request_timeout=60, encryption_enabled=True
    )
    return BotClient(
        account.homeserver.rstrip("/"), account.user_id, store_path=str(store), config=config
    )


class Session(NamedTuple):
    """A login that is kept: the token, and the device that it belongs to."""

    access_token: str
    device_id: str


def kept_session(account: Account) -> Session | None:
    """The login of the account's last start, or the configured one; None when there is none.

    Raises:
        WrongDeviceError: the file is damaged.
    """
    try:
        kept = read_private(account.session_path)
        if kept is not None:
            return Session(str(kept["access_token"]), str(kept["device_id"]))
    except (ValueError, KeyError) as error:
        raise WrongDeviceError(
            f"{account.session_path.name} is damaged. `linn keys new-device` lets the bot come "
            "back as a new device, signed by the same identity."
        ) from error
    if account.access_token is not None and account.device_id is not None:
        return Session(account.access_token, account.device_id)
    return None


async def open_session(client: AsyncClient, account: Account) -> None:
    """Make `client` the account's device: the kept one, the configured one, or a new one.

    Waits for a server that is not there or asks to wait; says so in the log, once.

    Raises:
        UnknownTokenError: the token is not valid any more.
        LoginRefusedError: the password is wrong, or there is nothing to log in with.
        WrongDeviceError: the token belongs to another account or device.
    """
    session = kept_session(account)
    if session is not None:
        await _resume(client, account, session.access_token, session.device_id)
    elif account.password is not None:
        await _log_in(client, account, account.password)
    else:
        raise LoginRefusedError("Neither a password nor an access token with its device id is set.")
    _log.info("Signed in as %s, device %s", client.user_id, client.device_id)


async def _resume(client: AsyncClient, account: Account, token: str, device_id: str) -> None:
    if account.device_id not in {None, device_id}:
        raise WrongDeviceError(
            f"{account.session_path.name} holds device {device_id}, configured is "
            f"{account.device_id}. Remove one of the two."
        )
    client.access_token = token
    answer = await _ask_until_answered(client.whoami, account.homeserver)
    if isinstance(answer, ErrorResponse):
        raise UnknownTokenError(
            f"The homeserver refuses the token of device {device_id} "
            f"({answer.status_code}). `linn keys new-device` lets the bot come back as a new "
            "device, signed by the same identity."
        )
    _check_same(account, answer, device_id)
    client.restore_login(account.user_id, device_id, token)


def _check_same(account: Account, answer: WhoamiResponse, device_id: str) -> None:
    if (answer.user_id, answer.device_id) != (account.user_id, device_id):
        raise WrongDeviceError(
            f"The token belongs to {answer.user_id} {answer.device_id}, "
            f"not to {account.user_id} {device_id}."
        )


async def _log_in(client: AsyncClient, account: Account, password: str) -> None:
    async def attempt() -> LoginResponse | LoginError:
        return await client.login(password, account.device_name)

    answer = await _ask_until_answered(attempt, account.homeserver)
    if isinstance(answer, ErrorResponse):
        raise LoginRefusedError(f"The homeserver refuses the login: {answer.status_code}.")
    if answer.user_id != account.user_id:
        raise WrongDeviceError(f"Logged in as {answer.user_id}, not as {account.user_id}.")
    write_private(
        account.session_path,
        {
            "user_id": answer.user_id,
            "device_id": answer.device_id,
            "access_token": answer.access_token,
        },
    )


async def _ask_until_answered(ask: Any, homeserver: str) -> Any:
    """The answer to `ask()`, repeated while the server is away or asks to wait.

    The log names the address: nobody answers at a mistyped one either.
    """
    backoff, trouble = Backoff(), Trouble(f"signing in at {homeserver}")
    while True:
        try:
            answer = await ask()
        except (ClientError, TimeoutError) as error:
            trouble.met(type(error).__name__)
            pause_s = backoff.next_s()
        else:
            if not _is_passing(answer):
                trouble.over()
                return answer
            refused = refusal(answer)
            trouble.met(str(refused))
            pause_s = backoff.next_s(refused.asked_s)
        await asyncio.sleep(pause_s)


def _is_passing(answer: object) -> bool:
    """Whether the same request may succeed later: a limit, or no answer of the homeserver's."""
    return isinstance(answer, ErrorResponse) and answer.status_code in {
        None,
        "M_LIMIT_EXCEEDED",
        "M_UNKNOWN",
    }
