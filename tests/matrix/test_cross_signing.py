"""The signing identity: what is refused, and what a signature is worth."""

from __future__ import annotations

import base64
import json
from pathlib import Path
from typing import Any

import pytest
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey

from bot.matrix.cross_signing import (
    check_device_keys,
    coming_identity,
    put_identity,
    sign_own_device,
)
from bot.matrix.errors import (
    DeviceChangedError,
    IdentityChangedError,
    IdentityFileError,
    IdentityLostError,
    IdentityRefusedError,
    NotSignedError,
    ServerAnswerError,
)
from bot.matrix.identity import Device, Identity, in_fours, is_signed, own_master_key
from bot.matrix.private_file import write_private

USER = "@linn:example.org"

#: RFC 8032, section 7.1, test 1: secret and public key, signature of the empty message.
RFC_SECRET = bytes.fromhex("9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60")
RFC_PUBLIC = bytes.fromhex("d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a")


class FakeAccount:
    """Signs as a device's account does."""

    def __init__(self) -> None:
        self.key = Ed25519PrivateKey.generate()

    def sign(self, text: str) -> str:
        """Unpadded base64."""
        return _unpadded(self.key.sign(text.encode()))


class KeyServer:
    """The part of a homeserver that keeps keys; it can forget, refuse and lie."""

    def __init__(self, device: Device) -> None:
        self.device = device
        self.shown: dict[str, Any] = {"device_keys": {USER: {"D": _device_object(device)}}}
        self.uploads: list[dict[str, Any]] = []
        self.refusals: list[ServerAnswerError] = []
        self.forgetful = False

    async def call(self, _: str, *path: str, body: dict[str, Any]) -> dict[str, Any]:
        """Answer a request."""
        if path[-1] == "query":
            return json.loads(json.dumps(self.shown))  # type: ignore[no-any-return]
        self.uploads.append(body)
        if self.refusals:
            raise self.refusals.pop(0)
        if path[1] == "device_signing":
            self.shown["master_keys"] = {USER: body["master_key"]}
            self.shown["self_signing_keys"] = {USER: body["self_signing_key"]}
        elif not self.forgetful:
            self.shown["device_keys"] = body[USER] and {USER: body[USER]}
        return {}


def _unpadded(value: bytes) -> str:
    return base64.b64encode(value).decode().rstrip("=")


def _device() -> Device:
    account = FakeAccount()
    public = _unpadded(account.key.public_key().public_bytes_raw())
    return Device(USER, "D", public, "curve", account)


def _device_object(device: Device) -> dict[str, Any]:
    keys = {"ed25519:D": device.ed25519, "curve25519:D": device.curve25519}
    return {"user_id": USER, "device_id": "D", "algorithms": [], "keys": keys}


@pytest.fixture
def server() -> KeyServer:
    """A server that knows the device and no identity."""
    return KeyServer(_device())


async def _sign(server: KeyServer, path: Path, **more: Any) -> None:
    await sign_own_device(server, server.device, path, **more)  # type: ignore[arg-type]


async def _put(server: KeyServer, identity: Identity, path: Path) -> None:
    await put_identity(server, server.device, identity, path)  # type: ignore[arg-type]


async def test_the_keys_are_on_disk_before_anything_is_uploaded(
    server: KeyServer, tmp_path: Path
) -> None:
    """A crash after the upload must not leave an identity that nobody has the keys of."""
    path = tmp_path / "identity.json"
    server.refusals = [ServerAnswerError(500, {})]
    with pytest.raises(ServerAnswerError):
        await _sign(server, path)
    kept = path.read_text()
    await _sign(server, path)
    assert path.read_text() == kept
    assert server.uploads[0] == server.uploads[1]
    await _sign(server, path)
    assert len(server.uploads) == 3


ASKS = ServerAnswerError(401, {"session": "s", "flows": [{"stages": ["m.login.password"]}]})


async def test_a_server_that_asks_gets_the_password(server: KeyServer, tmp_path: Path) -> None:
    """User-interactive authentication: the same upload with the proof in it."""
    server.refusals = [ASKS, ASKS]
    with pytest.raises(IdentityRefusedError, match="set LINN_PASSWORD"):
        await _sign(server, tmp_path / "identity.json")
    await _sign(server, tmp_path / "identity.json", password="quartz")
    proof = server.uploads[2]["auth"]
    assert (proof["session"], proof["password"]) == ("s", "quartz")


@pytest.mark.parametrize(
    ("refusals", "says"),
    [
        ([ASKS, ServerAnswerError(403, {"errcode": "M_FORBIDDEN"})], "refuses the password"),
        ([ASKS, ASKS], "refuses the password"),
        (
            [ServerAnswerError(401, {"session": "s", "flows": [{"stages": ["m.login.sso"]}, 1]})],
            "another proof",
        ),
    ],
)
async def test_a_proof_that_is_not_taken_needs_an_operator(
    server: KeyServer, tmp_path: Path, refusals: list[ServerAnswerError], says: str
) -> None:
    """Asking again with the same password would lock the account sooner than help."""
    server.refusals = list(refusals)
    with pytest.raises(IdentityRefusedError, match=says):
        await _sign(server, tmp_path / "identity.json", password="quartz")


async def test_trouble_behind_the_password_is_passing(server: KeyServer, tmp_path: Path) -> None:
    """A server that fails at the second request is asked again at the next start."""
    server.refusals = [ASKS, ServerAnswerError(502, {})]
    with pytest.raises(ServerAnswerError):
        await _sign(server, tmp_path / "identity.json", password="quartz")


@pytest.mark.parametrize("changed", ["ed25519:D", "curve25519:D"])
async def test_a_device_that_is_not_ours_is_never_signed(
    server: KeyServer, tmp_path: Path, changed: str
) -> None:
    """The server may show what it likes: nothing is made or sent for it."""
    path = tmp_path / "identity.json"
    server.shown["device_keys"][USER]["D"]["keys"][changed] = "other"
    with pytest.raises(DeviceChangedError, match="linn keys new-device"):
        await _sign(server, path)
    with pytest.raises(DeviceChangedError):
        await check_device_keys(server, server.device)  # type: ignore[arg-type]
    assert server.uploads == []
    assert Identity.load(path, USER) is None


async def test_lost_keys_are_not_made_anew(server: KeyServer, tmp_path: Path) -> None:
    """A new identity would end everybody's trust; only an operator may."""
    await _sign(server, tmp_path / "identity.json")
    (tmp_path / "identity.json").unlink()
    with pytest.raises(IdentityLostError, match="linn keys import FILE"):
        await _sign(server, tmp_path / "identity.json")
    assert not (tmp_path / "identity.json").exists()


async def test_a_foreign_identity_is_not_replaced(server: KeyServer, tmp_path: Path) -> None:
    """Keys here and others there: somebody else has taken over, or the wrong file is here."""
    await _sign(server, tmp_path / "first.json")
    identity = Identity.generate(USER)
    identity.save(tmp_path / "second.json")
    with pytest.raises(IdentityChangedError, match="linn keys reset"):
        await _sign(server, tmp_path / "second.json")
    await _put(server, identity, tmp_path / "second.json")
    signed = server.shown["device_keys"][USER]["D"]
    assert is_signed(signed, USER, identity.public("self_signing"))


async def test_a_new_identity_is_kept_beside_the_old_until_the_server_has_it(
    server: KeyServer, tmp_path: Path
) -> None:
    """Whatever happens in between, the keys of what the server shows are here."""
    path = tmp_path / "identity.json"
    await _sign(server, path)
    old, new = path.read_text(), Identity.generate(USER)
    server.refusals = [ServerAnswerError(500, {})]
    with pytest.raises(ServerAnswerError):
        await _put(server, new, path)
    assert path.read_text() == old
    await _sign(server, path)
    assert path.read_text() == old
    # The server took it, and the process ended before it heard so.
    server.shown["master_keys"] = {USER: new.key_object("master")}
    assert coming_identity(path, USER, new.public("master")) is not None
    await _sign(server, path)
    assert own_master_key(path, USER) == new.public("master")
    assert coming_identity(path, USER, new.public("master")) is None


async def test_a_signature_that_was_not_kept_is_an_error(server: KeyServer, tmp_path: Path) -> None:
    """The server says yes and keeps nothing: people would see an unsigned device."""
    server.forgetful = True
    with pytest.raises(NotSignedError, match="linn keys"):
        await _sign(server, tmp_path / "identity.json")


@pytest.mark.parametrize(
    "content",
    [
        {"user_id": USER},
        {"user_id": USER, "master": "AA", "self_signing": "AA", "user_signing": "AA"},
        {"user_id": USER, "master": 5, "self_signing": 5, "user_signing": 5},
        {"master": "AA", "self_signing": "AA"},
    ],
)
def test_a_damaged_file_is_an_error(tmp_path: Path, content: dict[str, Any]) -> None:
    """It is neither taken for an identity nor for none."""
    write_private(tmp_path / "identity.json", content)
    with pytest.raises(IdentityFileError, match="linn keys import FILE"):
        Identity.load(tmp_path / "identity.json", USER)
    assert own_master_key(tmp_path / "identity.json", USER) is None


def test_the_file_of_another_account_is_an_error(tmp_path: Path) -> None:
    """A copied folder must not make two bots one."""
    Identity.generate("@other:example.org").save(tmp_path / "identity.json")
    with pytest.raises(IdentityFileError, match=r"@other:example\.org"):
        Identity.load(tmp_path / "identity.json", USER)


def test_public_keys_are_those_of_the_standard() -> None:
    """The key pair of RFC 8032 comes out, in unpadded base64."""
    key = Ed25519PrivateKey.from_private_bytes(RFC_SECRET)
    identity = Identity(USER, dict.fromkeys(("master", "self_signing", "user_signing"), key))
    assert identity.public("master") == _unpadded(RFC_PUBLIC)
    assert not identity.public("master").endswith("=")


def test_keys_are_shown_in_groups_of_four() -> None:
    """As clients show them, the last group as short as it is."""
    assert in_fours("abcdefghij") == "abcd efgh ij"


def test_a_signature_holds_for_what_was_signed_and_nothing_else() -> None:
    """What the server adds later does not break it; any other change does."""
    identity = Identity.generate(USER)
    public = identity.public("master")
    signed = identity.signed("master", {"a": 1, "unsigned": {"x": 1}, "signatures": {"y": {}}})
    assert is_signed(signed, USER, public)
    assert is_signed(signed | {"unsigned": {"name": "Linn"}}, USER, public)
    assert not is_signed(signed | {"a": 2}, USER, public)
    assert not is_signed(signed, "@other:example.org", public)
    assert not is_signed(signed, USER, identity.public("self_signing"))
    broken = {"signatures": {USER: {f"ed25519:{public}": "A"}}}
    assert not is_signed({"a": 1} | broken, USER, public)
    assert not is_signed({"a": 1, "signatures": {USER: {"ed25519:AA": "AA"}}}, USER, "AA")
    assert not is_signed({"a": 1, "signatures": [USER]}, USER, "AA")
