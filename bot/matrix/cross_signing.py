"""The bot's own signing identity: made once, and the bot's device signed with it."""

from __future__ import annotations

import base64
import logging
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final, Self

from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric.ed25519 import (
    Ed25519PrivateKey,
    Ed25519PublicKey,
)
from nio import Api

from bot.matrix.errors import IdentityError, ServerAnswerError
from bot.matrix.private_file import read_private, write_private
from bot.matrix.server_api import JsonObject, ServerApi

_log: Final = logging.getLogger(__name__)

#: Specification 1.16, "Cross-signing": the three keys and what each signs.
_ROLES: Final = ("master", "self_signing", "user_signing")


@dataclass(frozen=True)
class Device:
    """The bot's device as its own key store knows it, and a way to sign with it.

    Attributes:
        user_id: full user id.
        device_id: the device.
        ed25519: its signing key, unpadded base64.
        curve25519: its identity key, unpadded base64.
        account: nio's account object, whose `sign(text)` signs with the device's key.
    """

    user_id: str
    device_id: str
    ed25519: str
    curve25519: str
    account: Any

    def sign(self, value: JsonObject) -> str:
        """Signature of the device over canonical JSON."""
        return str(self.account.sign(_canonical(value)))


class Identity:
    """Three private keys, and the public objects that are made of them.

    Args:
        user_id: whose identity it is.
        keys: role to private key, for master, self_signing and user_signing.
    """

    def __init__(self, user_id: str, keys: dict[str, Ed25519PrivateKey]) -> None:
        self.user_id = user_id
        self._keys = keys

    @classmethod
    def generate(cls, user_id: str) -> Self:
        """A new identity."""
        return cls(user_id, {role: Ed25519PrivateKey.generate() for role in _ROLES})

    @classmethod
    def load(cls, path: Path, user_id: str) -> Self | None:
        """The kept identity, None when there is none.

        Raises:
            IdentityError: the file is of another account or damaged.
        """
        try:
            kept = read_private(path)
            if kept is None:
                return None
            keys = {
                role: Ed25519PrivateKey.from_private_bytes(_unbase64(kept[role])) for role in _ROLES
            }
        except (ValueError, KeyError, TypeError, AttributeError) as error:
            raise IdentityError(f"{path.name} cannot be read: {type(error).__name__}.") from error
        if kept.get("user_id") != user_id:
            raise IdentityError(f"{path.name} is the identity of another account.")
        return cls(user_id, keys)

    def save(self, path: Path) -> None:
        """Keep the private keys; when this returns, they are on disk."""
        seeds = {role: _base64(key.private_bytes_raw()) for role, key in self._keys.items()}
        write_private(path, {"user_id": self.user_id, **seeds})

    def public(self, role: str) -> str:
        """The public key, unpadded base64."""
        return _base64(self._keys[role].public_key().public_bytes_raw())

    def key_object(self, role: str) -> JsonObject:
        """The public key as the server takes it, without signatures."""
        public = self.public(role)
        return {
            "user_id": self.user_id,
            "usage": [role],
            "keys": {f"ed25519:{public}": public},
        }

    def signed(self, role: str, value: JsonObject) -> JsonObject:
        """`value` with this key's signature as its only one."""
        signature = _base64(self._keys[role].sign(_canonical(value).encode()))
        bare = {key: part for key, part in value.items() if key not in _UNSIGNED}
        key_id = f"ed25519:{self.public(role)}"
        return bare | {"signatures": {self.user_id: {key_id: signature}}}


_UNSIGNED: Final = frozenset({"signatures", "unsigned"})


async def sign_own_device(
    api: ServerApi,
    device: Device,
    path: Path,
    *,
    password: str | None = None,
    replace_identity: bool = False,
) -> None:
    """See to it that the bot's device is signed by the bot's identity; do nothing when it is.

    To be called after the device's keys were uploaded and before the first sync: clients give no
    keys to a device that its owner has not signed.

    Args:
        api: the homeserver.
        device: the bot's device.
        path: the file of the identity.
        password: for a server that asks for it before it takes or replaces an identity.
        replace_identity: the operator's word that an identity without its keys may be replaced.

    Raises:
        IdentityError: the keys of the identity on the server are lost, or the server shows
            another key for this device.
    """
    shown = await _query(api, device.user_id)
    _check_same(_device_keys(shown, device), device)
    identity = Identity.load(path, device.user_id)
    server_master = _only_key(shown.get("master_keys", {}).get(device.user_id))
    if identity is None:
        if server_master is not None and not replace_identity:
            raise IdentityError(
                f"The account has a signing identity, but {path.name} is gone. Bring it back from "
                "the backup, or allow a new identity: everybody then has to trust the bot anew."
            )
        identity = Identity.generate(device.user_id)
        identity.save(path)
    await _publish(api, device, identity, server_master, password, replace_identity)
    await _sign_device(api, device, identity, shown)


async def _publish(
    api: ServerApi,
    device: Device,
    identity: Identity,
    server_master: str | None,
    password: str | None,
    replace_identity: bool,
) -> None:
    if server_master == identity.public("master"):
        return
    if server_master is not None and not replace_identity:
        raise IdentityError("The server shows another signing identity than the one kept here.")
    master = identity.key_object("master")
    signatures = identity.signed("master", master)["signatures"]
    signatures[device.user_id][f"ed25519:{device.device_id}"] = device.sign(master)
    upload = {
        "master_key": master | {"signatures": signatures},
        "self_signing_key": identity.signed("master", identity.key_object("self_signing")),
        "user_signing_key": identity.signed("master", identity.key_object("user_signing")),
    }
    await _upload_identity(api, upload, device.user_id, password)
    _log.info("Published the signing identity %s", identity.public("master"))


async def _upload_identity(
    api: ServerApi, upload: JsonObject, user_id: str, password: str | None
) -> None:
    path = ("keys", "device_signing", "upload")
    try:
        await api.call("POST", *path, body=upload)
    except ServerAnswerError as error:
        # 401 with a session is a question, not a refusal: user-interactive authentication.
        if error.status != 401 or "session" not in error.answer:
            raise
        if password is None:
            raise IdentityError("The server wants the password to take the identity.") from error
        proof = {
            "type": "m.login.password",
            "identifier": {"type": "m.id.user", "user": user_id},
            "password": password,
            "session": error.answer["session"],
        }
        await api.call("POST", *path, body=upload | {"auth": proof})


async def _sign_device(
    api: ServerApi, device: Device, identity: Identity, shown: JsonObject
) -> None:
    on_server: JsonObject = shown["device_keys"][device.user_id][device.device_id]
    if is_signed(on_server, device.user_id, identity.public("self_signing")):
        return
    signed = identity.signed("self_signing", on_server)
    await api.call(
        "POST",
        "keys",
        "signatures",
        "upload",
        body={device.user_id: {device.device_id: signed}},
    )
    # The answer says only that it was understood: look whether the signature is there.
    shown = await _query(api, device.user_id)
    on_server = shown["device_keys"][device.user_id][device.device_id]
    if not is_signed(on_server, device.user_id, identity.public("self_signing")):
        raise IdentityError("The server did not keep the signature of this device.")
    _log.info("Signed device %s, key %s", device.device_id, device.ed25519)


def is_signed(value: JsonObject, user_id: str, public_key: str) -> bool:
    """Whether `value` carries a valid signature of that key of that user."""
    signature = value.get("signatures", {}).get(user_id, {}).get(f"ed25519:{public_key}")
    if not isinstance(signature, str):
        return False
    try:
        key = Ed25519PublicKey.from_public_bytes(_unbase64(public_key))
        key.verify(_unbase64(signature), _canonical(value).encode())
    except (InvalidSignature, ValueError):
        return False
    return True


async def _query(api: ServerApi, user_id: str) -> JsonObject:
    return await api.call("POST", "keys", "query", body={"device_keys": {user_id: []}})


async def check_device_keys(api: ServerApi, device: Device) -> None:
    """Before the device's keys are uploaded: refuse to lay new ones over those of a lost store.

    Raises:
        IdentityError: the server has other keys for this device.
    """
    on_server = _device_keys(await _query(api, device.user_id), device)
    if on_server:
        _check_same(on_server, device)


def _device_keys(shown: JsonObject, device: Device) -> JsonObject:
    on_server = shown.get("device_keys", {}).get(device.user_id, {}).get(device.device_id, {})
    keys: JsonObject = on_server.get("keys", {})
    return keys


def _check_same(on_server: JsonObject, device: Device) -> None:
    """Never sign what the server made up: its keys for this device have to be ours."""
    ours = {
        f"ed25519:{device.device_id}": device.ed25519,
        f"curve25519:{device.device_id}": device.curve25519,
    }
    if on_server != ours:
        raise IdentityError(
            f"The server shows other keys for device {device.device_id} than the ones kept here: "
            "bring back the key store from the backup, or start as a new device."
        )


def _only_key(value: JsonObject | None) -> str | None:
    keys = (value or {}).get("keys", {})
    return str(next(iter(keys.values()))) if keys else None


def _canonical(value: JsonObject) -> str:
    """Canonical JSON of what is signed: without signatures and without what the server adds."""
    return Api.to_canonical_json({k: v for k, v in value.items() if k not in _UNSIGNED})


def _base64(value: bytes) -> str:
    """Unpadded: padded key ids are dropped by other clients without a word."""
    return base64.b64encode(value).decode().rstrip("=")


def _unbase64(value: str) -> bytes:
    return base64.b64decode(value + "=" * (-len(value) % 4))
