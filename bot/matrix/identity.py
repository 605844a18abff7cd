"""The bot's signing identity: three private keys in a file and what is made of them; no network."""

from __future__ import annotations

import base64
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final, Self

from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric.ed25519 import (
    Ed25519PrivateKey,
    Ed25519PublicKey,
)
from nio import Api

from bot.matrix.errors import IdentityFileError
from bot.matrix.plain import part_of
from bot.matrix.private_file import read_private, write_private

JsonObject = dict[str, Any]

#: Specification 1.16, "Cross-signing": the three keys and what each signs.
_ROLES: Final = ("master", "self_signing", "user_signing")
_UNSIGNED: Final = frozenset({"signatures", "unsigned"})


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
        return str(self.account.sign(canonical(value)))


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
            IdentityFileError: the file is of another account or damaged.
        """
        try:
            kept = read_private(path)
            if kept is None:
                return None
            identity = cls.of_seeds(kept)
        except ValueError as error:
            raise IdentityFileError(path, "it is damaged") from error
        if identity.user_id != user_id:
            raise IdentityFileError(path, f"it is the identity of {identity.user_id}")
        return identity

    @classmethod
    def of_seeds(cls, kept: JsonObject) -> Self:
        """The identity that `seeds` gave.

        Raises:
            ValueError: it is not whole.
        """
        try:
            keys = {
                role: Ed25519PrivateKey.from_private_bytes(_unbase64(kept[role])) for role in _ROLES
            }
            return cls(str(kept["user_id"]), keys)
        except (KeyError, TypeError, AttributeError) as error:
            raise ValueError(type(error).__name__) from error

    @property
    def seeds(self) -> JsonObject:
        """The private keys and whose they are, to be kept or exported."""
        keys = {role: unpadded(key.private_bytes_raw()) for role, key in self._keys.items()}
        return {"user_id": self.user_id, **keys}

    def save(self, path: Path) -> None:
        """Keep the private keys; when this returns, they are on disk."""
        write_private(path, self.seeds)

    def public(self, role: str) -> str:
        """The public key, unpadded base64."""
        return unpadded(self._keys[role].public_key().public_bytes_raw())

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
        signature = unpadded(self._keys[role].sign(canonical(value).encode()))
        bare = {key: part for key, part in value.items() if key not in _UNSIGNED}
        key_id = f"ed25519:{self.public(role)}"
        return bare | {"signatures": {self.user_id: {key_id: signature}}}

    def upload(self, device: Device) -> JsonObject:
        """The three public keys, signed as the server takes them; the device vouches as well."""
        master = self.key_object("master")
        signatures = self.signed("master", master)["signatures"]
        signatures[device.user_id][f"ed25519:{device.device_id}"] = device.sign(master)
        return {
            "master_key": master | {"signatures": signatures},
            "self_signing_key": self.signed("master", self.key_object("self_signing")),
            "user_signing_key": self.signed("master", self.key_object("user_signing")),
        }


def own_master_key(path: Path, user_id: str) -> str | None:
    """The public master key of the kept identity, None when there is none that can be used."""
    try:
        identity = Identity.load(path, user_id)
    except IdentityFileError:
        return None
    return None if identity is None else identity.public("master")


def is_signed(value: JsonObject, user_id: str, public_key: str) -> bool:
    """Whether `value` carries a valid signature of that key of that user."""
    signature = part_of(part_of(value, "signatures"), user_id).get(f"ed25519:{public_key}")
    if not isinstance(signature, str):
        return False
    try:
        key = Ed25519PublicKey.from_public_bytes(_unbase64(public_key))
        key.verify(_unbase64(signature), canonical(value).encode())
    except (InvalidSignature, ValueError):
        return False
    return True


def canonical(value: JsonObject) -> str:
    """Canonical JSON of what is signed: without signatures and without what the server adds."""
    return Api.to_canonical_json({k: v for k, v in value.items() if k not in _UNSIGNED})


def unpadded(value: bytes) -> str:
    """Base64 as Matrix writes it: padded key ids are dropped by other clients without a word."""
    return base64.b64encode(value).decode().rstrip("=")


def _unbase64(value: str) -> bytes:
    """The bytes behind base64 with or without its padding.

    Raises:
        ValueError: it is none.
    """
    return base64.b64decode(value + "=" * (-len(value) % 4))


def in_fours(key: str) -> str:
    """A key in groups of four, as clients show it."""
    return " ".join(key[start : start + 4] for start in range(0, len(key), 4))
