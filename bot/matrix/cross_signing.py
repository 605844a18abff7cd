"""The bot's signing identity on the homeserver: published once, and the bot's device signed."""

from __future__ import annotations

import logging
from dataclasses import dataclass
from http import HTTPStatus
from pathlib import Path
from typing import Final, Self

from bot.matrix.errors import (
    DeviceChangedError,
    IdentityChangedError,
    IdentityLostError,
    IdentityRefusedError,
    NotSignedError,
    ServerAnswerError,
)
from bot.matrix.identity import Device, Identity, JsonObject, is_signed
from bot.matrix.plain import part_of
from bot.matrix.server_api import ServerApi

_log: Final = logging.getLogger(__name__)


@dataclass(frozen=True)
class Shown:
    """What the homeserver shows of the bot's keys.

    Attributes:
        device: the device's object with its keys and signatures; empty when there is none.
        master: the public master key; None when the account has no identity.
        self_signing: the public key that signs devices.
    """

    device: JsonObject
    master: str | None
    self_signing: str | None

    @classmethod
    async def ask(cls, api: ServerApi, user_id: str, device_id: str) -> Self:
        """What is shown at this moment.

        Raises:
            ServerAnswerError, aiohttp.ClientError, TimeoutError: there was no answer.
        """
        answer = await api.call("POST", "keys", "query", body={"device_keys": {user_id: []}})
        devices = part_of(part_of(answer, "device_keys"), user_id)
        return cls(
            dict(part_of(devices, device_id)),
            _only_key(answer, "master_keys", user_id),
            _only_key(answer, "self_signing_keys", user_id),
        )

    @property
    def device_keys(self) -> JsonObject:
        """Key id to public key of the device."""
        return dict(part_of(self.device, "keys"))

    def is_signed_by(self, identity: Identity) -> bool:
        """Whether the device carries this identity's signature."""
        return is_signed(self.device, identity.user_id, identity.public("self_signing"))


async def check_device_keys(api: ServerApi, device: Device) -> None:
    """Before the device's keys are uploaded: refuse to lay new ones over those of a lost store.

    Raises:
        DeviceChangedError: the server has other keys for this device.
    """
    shown = await Shown.ask(api, device.user_id, device.device_id)
    if shown.device_keys:
        check_same(shown, device)


def check_same(shown: Shown, device: Device) -> None:
    """Never sign what the server made up: its keys for this device have to be ours.

    Raises:
        DeviceChangedError: they are not.
    """
    ours = {
        f"ed25519:{device.device_id}": device.ed25519,
        f"curve25519:{device.device_id}": device.curve25519,
    }
    if shown.device_keys != ours:
        raise DeviceChangedError(device.device_id)


async def sign_own_device(
    api: ServerApi, device: Device, path: Path, *, password: str | None = None
) -> None:
    """See to it that the bot's device is signed by the bot's identity; do nothing when it is.

    To be called after the device's keys were uploaded and before the first sync: clients give no
    keys to a device that its owner has not signed. A first identity is made here; one that is on
    the server already is never replaced here.

    Args:
        api: the homeserver.
        device: the bot's device.
        path: the file of the identity.
        password: for a server that asks for it before it takes an identity.

    Raises:
        IdentityError: see its kinds; nothing was changed.
    """
    shown = await Shown.ask(api, device.user_id, device.device_id)
    check_same(shown, device)
    identity = _kept(path, device.user_id, shown.master)
    if identity is None:
        if shown.master is not None:
            raise IdentityLostError(path)
        identity = Identity.generate(device.user_id)
        identity.save(path)
    if shown.master is None:
        await _upload(api, identity, device, password)
    elif shown.master != identity.public("master"):
        raise IdentityChangedError
    await _sign(api, device, identity, shown)


async def put_identity(
    api: ServerApi, device: Device, identity: Identity, path: Path, *, password: str | None = None
) -> None:
    """Put `identity` in the place of the one that the server shows, and sign the device with it.

    The new keys are on disk before the server has them, beside the old ones, which give way only
    when the server has taken the new ones: whatever happens in between, the keys of what the
    server shows are here, and the next start finds them.

    Args:
        api: the homeserver.
        device: the bot's device.
        identity: the new identity.
        path: the file of the identity.
        password: what the server asks for before it replaces an identity.

    Raises:
        IdentityError: the server refuses it, or shows other keys for the device.
    """
    shown = await Shown.ask(api, device.user_id, device.device_id)
    check_same(shown, device)
    identity.save(_coming(path))
    await _upload(api, identity, device, password)
    identity.save(path)
    _coming(path).unlink()
    await _sign(api, device, identity, shown)


def _coming(path: Path) -> Path:
    """Where an identity is kept until the server has taken it."""
    return path.with_name(f"{path.stem}.coming{path.suffix}")


def coming_identity(path: Path, user_id: str, server_master: str | None) -> Identity | None:
    """The identity that the server took from `put_identity` when nobody lived to see it."""
    coming = Identity.load(_coming(path), user_id)
    if coming is None or coming.public("master") != server_master:
        return None
    return coming


def _kept(path: Path, user_id: str, server_master: str | None) -> Identity | None:
    coming = coming_identity(path, user_id, server_master)
    if coming is None:
        return Identity.load(path, user_id)
    coming.save(path)
    _coming(path).unlink()
    return coming


async def _upload(api: ServerApi, identity: Identity, device: Device, password: str | None) -> None:
    upload, path = identity.upload(device), ("keys", "device_signing", "upload")
    try:
        await api.call("POST", *path, body=upload)
    except ServerAnswerError as error:
        proof = _proof(error, identity.user_id, password)
        try:
            await api.call("POST", *path, body=upload | {"auth": proof})
        except ServerAnswerError as second:
            if second.status not in {HTTPStatus.UNAUTHORIZED, HTTPStatus.FORBIDDEN}:
                raise
            raise IdentityRefusedError(
                "The homeserver refuses the password in LINN_PASSWORD, which it asks for before "
                "it takes a signing identity."
            ) from second
    _log.info("Published the signing identity %s", identity.public("master"))


def _proof(error: ServerAnswerError, user_id: str, password: str | None) -> JsonObject:
    """The answer to user-interactive authentication, if this error asks for one.

    Raises:
        ServerAnswerError: it does not.
        IdentityRefusedError: it asks for what cannot be given here.
    """
    # 401 with a session is a question, not a refusal.
    if error.status != HTTPStatus.UNAUTHORIZED or "session" not in error.answer:
        raise error
    flows = error.answer.get("flows")
    stages = [flow.get("stages") for flow in flows or [] if isinstance(flow, dict)]
    if stages and ["m.login.password"] not in stages:
        raise IdentityRefusedError(
            "The homeserver wants another proof than a password before it takes a signing "
            "identity: allow it for the bot's account in the homeserver's account pages, then "
            "do the same again."
        )
    if password is None:
        raise IdentityRefusedError(
            "The homeserver wants the password before it takes a signing identity: set "
            "LINN_PASSWORD, then do the same again."
        )
    return {
        "type": "m.login.password",
        "identifier": {"type": "m.id.user", "user": user_id},
        "password": password,
        "session": error.answer["session"],
    }


async def _sign(api: ServerApi, device: Device, identity: Identity, shown: Shown) -> None:
    if shown.is_signed_by(identity):
        return
    signed = identity.signed("self_signing", shown.device)
    body = {device.user_id: {device.device_id: signed}}
    await api.call("POST", "keys", "signatures", "upload", body=body)
    # The answer says only that it was understood: look whether the signature is there.
    shown = await Shown.ask(api, device.user_id, device.device_id)
    if not shown.is_signed_by(identity):
        raise NotSignedError
    _log.info("Signed device %s, key %s", device.device_id, device.ed25519)


def _only_key(answer: JsonObject, kind: str, user_id: str) -> str | None:
    keys = part_of(part_of(part_of(answer, kind), user_id), "keys")
    return str(next(iter(keys.values()))) if keys else None
