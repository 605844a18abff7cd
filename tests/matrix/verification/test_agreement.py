"""Commitment, codes and emoji against published values and an independent calculation."""

from __future__ import annotations

import base64
import hashlib
import hmac

import pytest
from cryptography.hazmat.primitives.asymmetric.x25519 import X25519PrivateKey, X25519PublicKey
from cryptography.hazmat.primitives.hashes import SHA256
from cryptography.hazmat.primitives.kdf.hkdf import HKDF

from bot.matrix.verification.agreement import Agreement, commitment
from bot.matrix.verification.emoji import NAMES, names_of


def _unpadded(value: bytes) -> str:
    return base64.b64encode(value).decode().rstrip("=")


def _padded(text: str) -> bytes:
    return base64.b64decode(text + "=" * (-len(text) % 4))


class OtherSide:
    """The same arithmetic, written from the specification's text over another library."""

    def __init__(self, their_key: str) -> None:
        private = X25519PrivateKey.generate()
        self.public_key = _unpadded(private.public_key().public_bytes_raw())
        self.secret = private.exchange(X25519PublicKey.from_public_bytes(_padded(their_key)))

    def derived(self, length: int, info: str) -> bytes:
        """HKDF with SHA-256 and no salt: "SAS HKDF calculation"."""
        return HKDF(SHA256(), length, salt=None, info=info.encode()).derive(self.secret)

    def mac(self, text: str, info: str) -> str:
        """HMAC-SHA-256 with a derived key, in base64: "MAC calculation"."""
        key = self.derived(32, info)
        return _unpadded(hmac.digest(key, text.encode(), hashlib.sha256))

    def emoji(self, info: str) -> list[int]:
        """42 bits in groups of six: "SAS method: emoji"."""
        bits = int.from_bytes(self.derived(6, info), "big") >> 6
        return [bits >> 6 * place & 63 for place in range(6, -1, -1)]

    def numbers(self, info: str) -> tuple[int, int, int]:
        """13 bits each, plus 1000: "SAS method: decimal"."""
        b = self.derived(5, info)
        return (
            (b[0] << 5 | b[1] >> 3) + 1000,
            ((b[1] & 0x7) << 10 | b[2] << 2 | b[3] >> 6) + 1000,
            ((b[3] & 0x3F) << 7 | b[4] >> 1) + 1000,
        )


def test_the_commitment_is_the_published_one() -> None:
    """Key and answer of the commitment test in matrix-rust-sdk, which other clients use too."""
    start = {
        "from_device": "XOWLHHFSWM",
        "transaction_id": "bYxBsirjUJO9osar6ST4i2M2NjrYLA7l",
        "method": "m.sas.v1",
        "key_agreement_protocols": ["curve25519-hkdf-sha256", "curve25519"],
        "hashes": ["sha256"],
        "message_authentication_codes": ["hkdf-hmac-sha256", "hmac-sha256"],
        "short_authentication_string": ["decimal", "emoji"],
    }
    public_key = "Q/NmNFEUS1fS+YeEmiZkjjblKTitrKOAk7cPEumcMlg"
    assert commitment(public_key, start) == "CCQmB4JCdB0FW21FdAnHj/Hu8+W9+Nb0vgwPEnZZQ4g"


def test_the_commitment_is_over_canonical_json() -> None:
    """The order of the keys does not matter, anything else does."""
    assert commitment("key", {"a": 1, "b": "é"}) == commitment("key", {"b": "é", "a": 1})
    assert commitment("key", {"a": 1}) != commitment("key", {"a": 2})
    with pytest.raises(ValueError, match="surrogates"):
        commitment("key", {"a": "\ud800"})


@pytest.mark.parametrize("info", ["", "MATRIX_KEY_VERIFICATION_MAC@a:bDEVICE", "ü|é"])
def test_codes_emoji_and_numbers_are_those_of_the_specification(info: str) -> None:
    """Specification 1.16, the sections that `OtherSide` names."""
    agreement = Agreement()
    other = OtherSide(agreement.public_key)
    assert agreement.meet(other.public_key + "=") == other.public_key
    assert agreement.mac("some key", info) == other.mac("some key", info)
    assert agreement.emoji(info) == names_of(other.emoji(info))
    assert agreement.numbers(info) == other.numbers(info)


def test_a_code_holds_for_its_text_and_purpose_only() -> None:
    """Another text, another purpose, another form of base64: wrong."""
    one, two = Agreement(), Agreement()
    one.meet(two.public_key)
    two.meet(one.public_key)
    mac = one.mac("key", "purpose")
    assert two.is_mac(mac, "key", "purpose")
    assert not two.is_mac(mac, "other", "purpose")
    assert not two.is_mac(mac, "key", "other")
    assert not two.is_mac("?", "key", "purpose")


def test_a_key_pair_serves_once() -> None:
    """A second meeting would let somebody guess again."""
    agreement = Agreement()
    with pytest.raises(RuntimeError, match="not been taken"):
        agreement.mac("key", "")
    agreement.meet(Agreement().public_key)
    with pytest.raises(ValueError, match="already been used"):
        agreement.meet(Agreement().public_key)


@pytest.mark.parametrize(
    ("number", "name"),
    [
        *((0, "Dog"), (9, "Rooster"), (18, "Mushroom"), (25, "Strawberry"), (34, "Spanner")),
        *((36, "Thumbs Up"), (41, "Light Bulb"), (53, "Aeroplane"), (60, "Anchor"), (63, "Pin")),
    ],
)
def test_emoji_have_the_names_of_the_specification(number: int, name: str) -> None:
    """Specification 1.16, "SAS method: emoji", the table."""
    assert names_of([number]) == (name,)


def test_no_two_emoji_have_one_name() -> None:
    """64 of them, for six bits each."""
    assert len(NAMES) == len(set(NAMES)) == 64
