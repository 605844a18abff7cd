"""Decrypts an attached file while it comes in, and says at its end whether it is the one meant."""

from __future__ import annotations

import hashlib
import hmac
from binascii import Error as Base64Error
from collections.abc import Mapping
from typing import Any, Final

import unpaddedbase64
from cryptography.hazmat.primitives.ciphers import Cipher, algorithms, modes

from bot.runtime.ports import MediaDamagedError

#: Length of the key: AES with 256 bits [bytes].
_KEY_BYTES: Final = 32
#: Length of the counter block [bytes].
_COUNTER_BYTES: Final = 16


class AttachmentCipher:
    """One encrypted file, piece by piece; the plain pieces count only once `finish` was passed.

    Source: Matrix specification 1.16, "Sending encrypted attachments": AES-CTR over the file,
    SHA-256 over what was encrypted.

    Args:
        encryption: key, iv and hash, as the event gives them.

    Raises:
        MediaDamagedError: one of them is missing or not what it should be.
    """

    def __init__(self, encryption: Mapping[str, Any]) -> None:
        try:
            key = unpaddedbase64.decode_base64(encryption["key"]["k"])
            counter = unpaddedbase64.decode_base64(encryption["iv"])
            self._expected = unpaddedbase64.decode_base64(encryption["hashes"]["sha256"])
        except (KeyError, TypeError, ValueError, AttributeError, Base64Error) as error:
            raise MediaDamagedError(type(error).__name__) from error
        if len(key) != _KEY_BYTES or len(counter) != _COUNTER_BYTES:
            raise MediaDamagedError("a key or counter of another length")
        # CTR is what the specification says; the hash below is what makes it safe against changes.
        self._cipher = Cipher(algorithms.AES(key), modes.CTR(counter)).decryptor()
        self._digest = hashlib.sha256()

    def update(self, piece: bytes) -> bytes:
        """The next piece, decrypted."""
        self._digest.update(piece)
        return self._cipher.update(piece)

    def finish(self) -> None:
        """Compare the hash.

        Raises:
            MediaDamagedError: the pieces are not the file that the event means.
        """
        if not hmac.compare_digest(self._digest.digest(), self._expected):
            raise MediaDamagedError("another hash")
