"""The signing identity sealed with a passphrase, to be kept apart from the bot's machine."""

from __future__ import annotations

import base64
import hashlib
import json
import os
from pathlib import Path
from typing import Any, Final

from cryptography.exceptions import InvalidTag
from cryptography.hazmat.primitives.ciphers.aead import AESGCM
from cryptography.hazmat.primitives.kdf.scrypt import Scrypt

from bot.matrix.identity import Identity, JsonObject

_FORMAT: Final = "linn signing identity"
_VERSION: Final = 1
#: What version 1 means. scrypt as RFC 7914 defines it, with 128 MB of memory (2^17 blocks of
#: 8 x 128 bytes), which is what OWASP advises for passwords (from memory); AES-256-GCM with a
#: nonce of 96 bits (NIST SP 800-38D, from memory).
_WORK: Final = 2**17
_BLOCK: Final = 8
_SALT_BYTES: Final = 16
_NONCE_BYTES: Final = 12
#: No export is larger [bytes]; keeps a wrong file from being read whole.
_MOST_BYTES: Final = 10_000


class ExportDamagedError(Exception):
    """The file is no export, of a newer version, or not whole; the message says which."""


class WrongPassphraseError(Exception):
    """The file is whole, and the passphrase does not open it."""


def seal(identity: Identity, passphrase: str) -> bytes:
    """The content of an export.

    Args:
        identity: what is kept.
        passphrase: what opens it.
    """
    salt, nonce = os.urandom(_SALT_BYTES), os.urandom(_NONCE_BYTES)
    head = {
        "format": _FORMAT,
        "version": _VERSION,
        "user_id": identity.user_id,
        "salt": _text(salt),
        "nonce": _text(nonce),
    }
    secret = json.dumps(identity.seeds).encode()
    sealed = AESGCM(_key(passphrase, salt)).encrypt(nonce, secret, _bound(head))
    export = head | {"sealed": _text(sealed)}
    # Tells a damaged file from a wrong passphrase, which the cipher alone cannot.
    return json.dumps(export | {"check": _check(export)}, indent=1).encode() + b"\n"


def unseal(content: bytes, passphrase: str) -> Identity:
    """The identity in an export.

    Raises:
        ExportDamagedError: it is no export, or not whole.
        WrongPassphraseError: the passphrase is not the one that it was sealed with.
    """
    export = _read(content)
    head = {name: part for name, part in export.items() if name != "sealed"}
    try:
        salt, nonce, sealed = (_bytes(export[name]) for name in ("salt", "nonce", "sealed"))
        secret = AESGCM(_key(passphrase, salt)).decrypt(nonce, sealed, _bound(head))
        return Identity.of_seeds(json.loads(secret))
    except InvalidTag as error:
        raise WrongPassphraseError from error
    except (ValueError, KeyError, TypeError) as error:
        raise ExportDamagedError("it is not whole") from error


def write_export(path: Path, content: bytes) -> None:
    """Write a new file that only its owner can read; when this returns, it is on disk.

    Raises:
        FileExistsError: there is a file of this name; it is left as it is.
        OSError: it could not be written.
    """
    handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    with os.fdopen(handle, "wb") as file:
        file.write(content)
        file.flush()
        os.fsync(file.fileno())


def read_export(path: Path) -> bytes:
    """The content of a file that may be an export.

    Raises:
        OSError: it could not be read.
    """
    with path.open("rb") as file:
        return file.read(_MOST_BYTES)


def _read(content: bytes) -> JsonObject:
    try:
        export = json.loads(content)
    except (ValueError, RecursionError) as error:
        raise ExportDamagedError("it is no export of `linn keys export`") from error
    if not isinstance(export, dict) or export.get("format") != _FORMAT:
        raise ExportDamagedError("it is no export of `linn keys export`")
    if export.get("version") != _VERSION:
        raise ExportDamagedError("it was made by another version of Linn; use that version")
    if export.pop("check", None) != _check(export):
        raise ExportDamagedError("it is not whole")
    return export


def _key(passphrase: str, salt: bytes) -> bytes:
    return Scrypt(salt, length=32, n=_WORK, r=_BLOCK, p=1).derive(passphrase.encode())


def _bound(head: JsonObject) -> bytes:
    """What cannot be changed without breaking the seal."""
    return json.dumps(head, sort_keys=True).encode()


def _check(export: JsonObject) -> str:
    return hashlib.sha256(_bound(export)).hexdigest()


def _text(value: bytes) -> str:
    return base64.b64encode(value).decode()


def _bytes(value: Any) -> bytes:
    return base64.b64decode(value, validate=True)
