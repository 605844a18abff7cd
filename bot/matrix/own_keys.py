"""The bot's keys as an operator meets them, by requests alone: the bot may run meanwhile."""

from __future__ import annotations

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass
from http import HTTPStatus
from typing import Self

from aiohttp import ClientError
from nio import AsyncClient, AsyncClientConfig

from bot.exits import Exit
from bot.matrix.cross_signing import Shown, check_same, coming_identity, put_identity
from bot.matrix.device_store import read_device
from bot.matrix.errors import (
    DeviceChangedError,
    IdentityChangedError,
    IdentityFileError,
    IdentityLostError,
    NoDeviceError,
    ServerAnswerError,
    UnknownTokenError,
)
from bot.matrix.identity import Device, Identity, in_fours
from bot.matrix.server_api import ServerApi
from bot.matrix.session import Account, kept_session


@dataclass(frozen=True)
class Finding:
    """One thing that was looked at, in a sentence, and what it means for the exit code."""

    exit_code: Exit
    sentence: str


@dataclass(frozen=True)
class OwnKeys:
    """What is here, and what the homeserver shows.

    Attributes:
        account: the bot's account.
        device_id: its device; None when it has not signed in from here.
        device: the device with its keys; None when they are not here.
        identity: the kept identity; None when there is none.
        trouble: why the kept identity cannot be used; None when it can.
        shown: what the homeserver shows; None when that is not known.
        silence: why it is not known.
    """

    account: Account
    device_id: str | None
    device: Device | None
    identity: Identity | None
    trouble: IdentityFileError | None
    shown: Shown | None
    silence: Finding | None

    @classmethod
    async def look(cls, account: Account) -> Self:
        """Look at the files and, if the bot has signed in from here, at the homeserver."""
        session = kept_session(account)
        device_id = None if session is None else session.device_id
        device = None if device_id is None else _device(account, device_id)
        shown, silence = None, None
        if session is not None:
            try:
                async with requests(account, session.access_token) as api:
                    shown = await Shown.ask(api, account.user_id, session.device_id)
            except (ServerAnswerError, ClientError, TimeoutError) as error:
                silence = _silence(error)
        identity, trouble = _identity(account, shown)
        return cls(account, device_id, device, identity, trouble, shown, silence)

    def findings(self) -> list[Finding]:
        """Device, identity and homeserver in plain sentences, the keys in groups of four."""
        found = [*self._of_device(), *self._of_identity()]
        return found if self.silence is None else [*found, self.silence]

    def _of_device(self) -> list[Finding]:
        if self.device_id is None:
            return [Finding(Exit.NO_DEVICE, str(NoDeviceError()))]
        changed = Finding(Exit.DEVICE_CHANGED, str(DeviceChangedError(self.device_id)))
        if self.device is None:
            return [changed]
        found = [_fine(f"Key of the device: {in_fours(self.device.ed25519)}")]
        if self.shown is None:
            return found
        if not self.shown.device_keys:
            unknown = "The homeserver does not show this device's keys yet: start the bot once."
            return [*found, Finding(Exit.NOT_SIGNED, unknown)]
        try:
            check_same(self.shown, self.device)
        except DeviceChangedError:
            return [*found, changed]
        return [*found, self._of_signature(self.shown)]

    def _of_signature(self, shown: Shown) -> Finding:
        if self.identity is not None and shown.is_signed_by(self.identity):
            return _fine("The homeserver shows the same key, signed by the identity.")
        return Finding(
            Exit.NOT_SIGNED,
            "The homeserver shows the same key, but not signed by the identity kept here. When "
            "nothing else is wrong, the bot signs it at its next start.",
        )

    def _of_identity(self) -> list[Finding]:
        if self.trouble is not None:
            return [Finding(self.trouble.exit_code, str(self.trouble))]
        if self.identity is None:
            return [self._of_no_identity()]
        found = [_fine(f"Master key of the identity: {in_fours(self.identity.public('master'))}")]
        if self.shown is None:
            return found
        if self.shown.master is None:
            unknown = (
                "The homeserver shows no identity yet: the bot publishes it at its next start."
            )
            return [*found, Finding(Exit.NOT_SIGNED, unknown)]
        if self.shown.master != self.identity.public("master"):
            theirs = _fine(f"The homeserver's master key: {in_fours(self.shown.master)}")
            changed = IdentityChangedError()
            return [*found, theirs, Finding(changed.exit_code, str(changed))]
        return [*found, _fine("The homeserver shows the same master key.")]

    def _of_no_identity(self) -> Finding:
        if self.shown is not None and self.shown.master is not None:
            lost = IdentityLostError(self.account.identity_path)
            return Finding(lost.exit_code, str(lost))
        none = "There is no signing identity yet: the bot makes one at its first start."
        return Finding(Exit.NOT_SIGNED, none)


async def replace_identity(account: Account, identity: Identity) -> Device:
    """Put `identity` in the place of the one that the homeserver shows; returns the device.

    Raises:
        IdentityError: it cannot be done; see the kinds.
        UnknownTokenError: the homeserver does not know the token.
        ServerAnswerError, aiohttp.ClientError, TimeoutError: it did not answer.
    """
    session = kept_session(account)
    device = None if session is None else _device(account, session.device_id)
    if session is None or device is None:
        raise NoDeviceError
    async with requests(account, session.access_token) as api:
        try:
            await put_identity(
                api, device, identity, account.identity_path, password=account.password
            )
        except ServerAnswerError as error:
            if error.code == "M_UNKNOWN_UNKNOWN":
                raise UnknownTokenError(_UNKNOWN) from error
            raise
    return device


@asynccontextmanager
async def requests(account: Account, access_token: str) -> AsyncIterator[ServerApi]:
    """Requests with the bot's token, without its key store and without a sync."""
    config = AsyncClientConfig(max_limit_exceeded=0, max_timeouts=0, encryption_enabled=False)
    client = AsyncClient(account.homeserver.rstrip("/"), account.user_id, config=config)
    client.access_token = access_token
    try:
        yield ServerApi(client)
    finally:
        await client.close()  # type: ignore[no-untyped-call]  # nio has no types here


_UNKNOWN = (
    "The homeserver does not know the bot's token any more. `linn keys new-device` lets the bot "
    "come back as a new device, signed by the same identity."
)


def _device(account: Account, device_id: str) -> Device | None:
    return read_device(account.key_store_path, account.user_id, device_id)


def _identity(
    account: Account, shown: Shown | None
) -> tuple[Identity | None, IdentityFileError | None]:
    master = None if shown is None else shown.master
    try:
        coming = coming_identity(account.identity_path, account.user_id, master)
        return coming or Identity.load(account.identity_path, account.user_id), None
    except IdentityFileError as error:
        return None, error


def _silence(error: Exception) -> Finding:
    if isinstance(error, ServerAnswerError) and error.status == HTTPStatus.UNAUTHORIZED:
        return Finding(Exit.NO_PERMISSION, _UNKNOWN)
    return Finding(
        Exit.UNAVAILABLE,
        "The homeserver did not answer, so that nothing can be said of what it shows.",
    )


def _fine(sentence: str) -> Finding:
    return Finding(Exit.DONE, sentence)
