"""Exports of the identity: sealed, whole, for its owner alone."""

from __future__ import annotations

import json
import os
import sqlite3
import stat
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.matrix import identity_export
from bot.matrix.device_store import read_device
from bot.matrix.identity import Identity
from bot.matrix.identity_export import (
    ExportDamagedError,
    WrongPassphraseError,
    read_export,
    seal,
    unseal,
    write_export,
)
from bot.matrix.private_file import keep_copy, set_aside

USER = "@linn:example.org"


@pytest.fixture(scope="module", autouse=True)
def _quick() -> Iterator[None]:
    """The work factor is for guessers; 2^4 keeps the tests quick."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(identity_export, "_WORK", 2**4)
        yield


def test_what_was_sealed_comes_out() -> None:
    """With the passphrase, any characters in it; the file shows no key."""
    identity = Identity.generate(USER)
    content = seal(identity, "Kies, Grus — 砂利 7")
    assert unseal(content, "Kies, Grus — 砂利 7").seeds == identity.seeds
    secrets = [part for name, part in identity.seeds.items() if name != "user_id"]
    assert not any(secret.encode() in content for secret in secrets)
    assert seal(identity, "Kies, Grus — 砂利 7") != content


@pytest.mark.parametrize("passphrase", ["", "other", "gravel bar "])
def test_another_passphrase_does_not_open_it(passphrase: str) -> None:
    """It is told from a damaged file."""
    content = seal(Identity.generate(USER), "gravel bar")
    with pytest.raises(WrongPassphraseError):
        unseal(content, passphrase)


@pytest.mark.parametrize(
    ("content", "says"),
    [
        (b"", "no export"),
        (b"\xff\xfe", "no export"),
        (b"[" * 100_000, "no export"),
        (b"[]", "no export"),
        (b'{"format": "something else"}', "no export"),
        (b'{"format": "linn signing identity", "version": 2}', "another version"),
        (b'{"format": "linn signing identity", "version": 1}', "not whole"),
    ],
)
def test_what_is_no_export_is_told(content: bytes, says: str) -> None:
    """Other files, newer versions, torn ones."""
    with pytest.raises(ExportDamagedError, match=says):
        unseal(content, "gravel bar")


@given(st.floats(0, 1, exclude_max=True), st.integers(0, 255))
def test_any_changed_byte_is_found(share: float, byte: int) -> None:
    """Nothing that was changed is taken for an identity, and none for a wrong passphrase."""
    sealed = seal(Identity.generate(USER), "gravel bar")
    place = int(share * len(sealed))
    changed = sealed[:place] + bytes([byte]) + sealed[place + 1 :]
    if json.loads(sealed) == _read(changed):
        return
    with pytest.raises(ExportDamagedError):
        unseal(changed, "gravel bar")


def _read(content: bytes) -> object:
    try:
        return json.loads(content)
    except ValueError:
        return None


def test_a_check_that_was_made_to_fit_does_not_help() -> None:
    """Whoever changes the account's name and the check still breaks the seal."""
    export = json.loads(seal(Identity.generate(USER), "gravel bar"))
    export.pop("check")
    export["user_id"] = "@other:example.org"
    export["check"] = identity_export._check(export)
    with pytest.raises(WrongPassphraseError):
        unseal(json.dumps(export).encode(), "gravel bar")
    export.pop("check")
    export["salt"] = 5
    export["check"] = identity_export._check(export)
    with pytest.raises(ExportDamagedError):
        unseal(json.dumps(export).encode(), "gravel bar")


def test_the_file_is_new_and_for_its_owner_alone(tmp_path: Path) -> None:
    """0600 from its first byte whatever the umask, and nothing is written over."""
    path = tmp_path / "export"
    before = os.umask(0)
    try:
        write_export(path, b"one")
    finally:
        os.umask(before)
    assert stat.S_IMODE(path.stat().st_mode) == 0o600
    with pytest.raises(FileExistsError):
        write_export(path, b"two")
    assert read_export(path) == b"one"


def test_what_gives_way_is_kept(tmp_path: Path) -> None:
    """A copy of a file, a renamed folder; the latest one, for the owner alone."""
    path, folder = tmp_path / "identity.json", tmp_path / "keys"
    assert keep_copy(path) is None
    assert set_aside(folder) is None
    for content in ("one", "two"):
        path.write_text(content)
        folder.mkdir()
        (folder / content).touch()
        copy, aside = keep_copy(path), set_aside(folder)
        assert copy is not None
        assert aside is not None
        assert (copy.name, copy.read_text()) == ("identity.before.json", content)
        assert stat.S_IMODE(copy.stat().st_mode) == 0o600
        assert [file.name for file in aside.iterdir()] == [content]
        assert path.exists()
        assert not folder.exists()


def test_a_key_store_that_cannot_be_read_holds_no_device(tmp_path: Path) -> None:
    """Missing, empty, no database, of another device, or with a key that is none."""
    path = tmp_path / f"{USER}_D.db"
    assert read_device(tmp_path, USER, "D") is None
    path.write_text("no database" * 100)
    assert read_device(tmp_path, USER, "D") is None
    path.unlink()
    with sqlite3.connect(path) as store:
        store.execute("CREATE TABLE accounts (account BLOB, user_id TEXT, device_id TEXT)")
    assert read_device(tmp_path, USER, "D") is None
    with sqlite3.connect(path) as store:
        store.execute("INSERT INTO accounts VALUES (?, ?, ?)", (b"no pickle", USER, "D"))
    store.close()
    assert read_device(tmp_path, USER, "D") is None
