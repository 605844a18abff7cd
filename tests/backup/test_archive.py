"""Archives that were cut, changed or made to harm."""

from __future__ import annotations

import io
import tarfile
from collections.abc import Callable
from pathlib import Path

import pytest

from bot.backup.archive import unpack, writing
from bot.backup.errors import ArchiveError
from tests.store.examples import NOW

USER = "@linn:mill.example"
PICTURE = f"pictures/{'0a' * 16}.png"


@pytest.fixture
def good(tmp_path: Path) -> Path:
    """An archive of a database and a picture."""
    (tmp_path / "content").write_bytes(b"content" * 3000)
    path = tmp_path / "good.tar"
    with writing(path) as archive:
        archive.add("linn.db", tmp_path / "content")
        archive.add(PICTURE, tmp_path / "content")
        archive.finish(USER, NOW)
    return path


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """Where archives are unpacked."""
    made = tmp_path / "deep" / "folder"
    made.mkdir(parents=True)
    return made


def test_a_good_archive_is_unpacked_for_its_owner_alone(good: Path, folder: Path) -> None:
    """All members with their bytes, mode 0600, and what the archive says of itself."""
    manifest = unpack(good, folder)
    assert (manifest.user_id, manifest.made_at) == (USER, NOW)
    for name in ("linn.db", PICTURE):
        assert (folder / name).read_bytes() == b"content" * 3000
        assert (folder / name).stat().st_mode & 0o777 == 0o600


def test_a_cut_archive_is_refused_wherever_it_is_cut(good: Path, folder: Path) -> None:
    """At every sixteenth, to the byte before the list ends."""
    whole = good.read_bytes()
    with tarfile.open(good) as tar:
        end = tar.getmember("manifest.json").offset_data + tar.getmember("manifest.json").size
    for number in range(17):
        cut = good.with_name(f"cut-{number}")
        cut.write_bytes(whole[: (end - 1) * number // 16])
        target = folder / str(number)
        target.mkdir()
        with pytest.raises(ArchiveError):
            unpack(cut, target)


def test_a_changed_byte_is_noticed(good: Path, folder: Path) -> None:
    """In the middle of the database."""
    changed = bytearray(good.read_bytes())
    changed[2000] ^= 1
    good.write_bytes(changed)
    with pytest.raises(ArchiveError, match="not those of its list"):
        unpack(good, folder)


def member(name: str, **fields: object) -> Callable[[tarfile.TarFile], None]:
    """Adds a member with these fields and the bytes of an intruder."""

    def add(tar: tarfile.TarFile) -> None:
        info = tarfile.TarInfo(name)
        info.size = 8
        for field, value in fields.items():
            setattr(info, field, value)
        tar.addfile(info, io.BytesIO(b"intruder") if info.isreg() else None)

    return add


@pytest.mark.parametrize(
    ("add", "words"),
    [
        (member("../linn.db"), "belongs in none"),
        (member("/linn.db"), "belongs in none"),
        (member("pictures/../../linn.db"), "belongs in none"),
        (member("matrix_session.json"), "belongs in none"),
        (member("pictures/\x1b[2J.png"), "belongs in none"),
        (member(PICTURE, type=tarfile.SYMTYPE, linkname="../../target", size=0), "no plain file"),
        (member(PICTURE, type=tarfile.LNKTYPE, linkname="linn.db", size=0), "no plain file"),
        (member("pictures", type=tarfile.DIRTYPE, size=0), "no plain file"),
        (member(PICTURE, type=tarfile.CHRTYPE, size=0), "no plain file"),
        (member(PICTURE, type=tarfile.FIFOTYPE, size=0), "no plain file"),
        (member("manifest.json"), "can't be read"),
        (member("manifest.json", type=tarfile.SYMTYPE, linkname="x", size=0), "no plain file"),
    ],
)
def test_hostile_members_are_refused(
    tmp_path: Path, folder: Path, add: Callable[[tarfile.TarFile], None], words: str
) -> None:
    """Ways out of the folder, links, devices and strangers; nothing lands outside."""
    path = tmp_path / "hostile.tar"
    with tarfile.open(path, "w") as tar:
        add(tar)
    with pytest.raises(ArchiveError, match=words) as caught:
        unpack(path, folder)
    assert "\x1b" not in str(caught.value)
    inside = sorted(found.relative_to(tmp_path) for found in tmp_path.rglob("*"))
    assert [str(found) for found in inside] == [
        "deep", "deep/folder", "deep/folder/pictures", "hostile.tar"
    ]  # fmt: skip


def test_members_twice_or_behind_the_end_are_refused(
    good: Path, tmp_path: Path, folder: Path
) -> None:
    """The list could not say which one it means."""
    for number, name in enumerate(("linn.db", PICTURE)):
        with tarfile.open(good, "a") as tar:
            member(name)(tar)
        target = folder / str(number)
        target.mkdir()
        with pytest.raises(ArchiveError, match="behind its end"):
            unpack(good, target)
    path = tmp_path / "twice.tar"
    with tarfile.open(path, "w") as tar:
        member("linn.db")(tar)
        member("linn.db")(tar)
    with pytest.raises(ArchiveError, match="twice"):
        unpack(path, _made(folder / "twice"))


def test_another_form_is_refused_by_its_number(tmp_path: Path, folder: Path) -> None:
    """A later version may arrange archives differently."""
    text = b'{"form": 9, "user_id": "@a:b", "made_at": "2027-01-01T00:00Z", "hashes": {}}'
    path = tmp_path / "later.tar"
    with tarfile.open(path, "w") as tar:
        info = tarfile.TarInfo("manifest.json")
        info.size = len(text)
        tar.addfile(info, io.BytesIO(text))
    with pytest.raises(ArchiveError, match="form 9"):
        unpack(path, folder)


@pytest.mark.parametrize("content", [b"", b"no archive", b"\x1f\x8b\x08" + bytes(600), bytes(2048)])
def test_other_files_are_refused(tmp_path: Path, folder: Path, content: bytes) -> None:
    """Empty, text, compressed or blank: none of ours."""
    path = tmp_path / "other"
    path.write_bytes(content)
    with pytest.raises(ArchiveError):
        unpack(path, folder)


def _made(folder: Path) -> Path:
    folder.mkdir()
    return folder
