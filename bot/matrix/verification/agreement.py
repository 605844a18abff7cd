"""What both sides compute from one agreement: the emoji, the numbers, the codes over keys."""

from __future__ import annotations

import base64
import hashlib
from typing import Any, Final

from nio import Api
from vodozemac import Curve25519PublicKey, EstablishedSas, Sas

from bot.matrix.verification.emoji import names_of

#: The only choices that are not deprecated (specification 1.16, "Short Authentication String
#: (SAS) verification").
METHOD: Final = "m.sas.v1"
KEY_AGREEMENT: Final = "curve25519-hkdf-sha256"
HASH: Final = "sha256"
MAC: Final = "hkdf-hmac-sha256.v2"
EMOJI: Final = "emoji"
DECIMAL: Final = "decimal"

JsonObject = dict[str, Any]


class Agreement:
    """A key pair for one verification, and the secret once the other side's key is known."""

    def __init__(self) -> None:
        self._sas = Sas()
        self._secret: EstablishedSas | None = None
        #: This side's key, unpadded base64.
        self.public_key: str = self._sas.public_key.to_base64()

    def meet(self, their_key: str) -> str:
        """Take the other side's key, once, and return it as unpadded base64.

        Raises:
            ValueError: it is no key, or one that would make the secret guessable.
        """
        key = Curve25519PublicKey.from_base64(their_key)
        self._secret = self._sas.diffie_hellman(key)
        return key.to_base64()

    def emoji(self, info: str) -> tuple[str, ...]:
        """The names of the seven emoji."""
        return names_of(self._known.bytes(info).emoji_indices)

    def numbers(self, info: str) -> tuple[int, int, int]:
        """The three numbers, each 1000 to 9191, for clients without emoji."""
        return self._known.bytes(info).decimals

    def mac(self, text: str, info: str) -> str:
        """The code over `text`, unpadded base64."""
        return self._known.calculate_mac(text, info)

    def is_mac(self, mac: str, text: str, info: str) -> bool:
        """Whether `mac` is the code over `text`."""
        try:
            self._known.verify_mac(text, info, mac)
        except ValueError:
            return False
        return True

    @property
    def _known(self) -> EstablishedSas:
        if self._secret is None:
            raise RuntimeError("the other side's key has not been taken")
        return self._secret


def commitment(public_key: str, start: JsonObject) -> str:
    """What binds a side to its key before it shows it: a hash of the key and the start event.

    Args:
        public_key: unpadded base64.
        start: the whole content of the start event.

    Returns:
        Unpadded base64.

    Raises:
        ValueError: the content cannot be written as canonical JSON.

    Source: specification 1.16, "m.key.verification.accept", `commitment`.
    """
    hashed = hashlib.sha256((public_key + Api.to_canonical_json(start)).encode()).digest()
    return base64.b64encode(hashed).decode().rstrip("=")
