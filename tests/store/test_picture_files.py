"""The folder of pictures: random names, nobody else's eyes, no way out of the folder."""

from __future__ import annotations

from pathlib import Path

import pytest

from bot.store.pictures import PictureFiles

PNG = b"\x89PNG\r\n\x1a\n and so on"
JPEG = b"\xff\xd8\xff and so on"


@pytest.fixture
def files(tmp_path: Path) -> PictureFiles:
    """A folder of pictures that did not exist before."""
    return PictureFiles(tmp_path / "data" / "pictures")


@pytest.mark.parametrize(("picture", "ending"), [(PNG, ".png"), (JPEG, ".jpg")])
def test_a_picture_comes_back_by_its_name(
    files: PictureFiles, tmp_path: Path, picture: bytes, ending: str
) -> None:
    """The name is random and tells the kind only; owner alone may read."""
    name = files.write(picture)
    assert name.endswith(ending)
    assert files.write(picture) != name
    assert files.read(name) == picture
    folder = tmp_path / "data" / "pictures"
    assert (folder.stat().st_mode & 0o777, (folder / name).stat().st_mode & 0o777) == (0o700, 0o600)


def test_only_pictures_are_kept(files: PictureFiles) -> None:
    """Anything else is a bug of the caller's."""
    with pytest.raises(ValueError, match="neither PNG nor JPEG"):
        files.write(b"GIF89a")


@pytest.mark.parametrize("name", ["../linn.db", "/etc/hostname", "", "a.png", "0" * 32 + ".png"])
def test_names_that_are_not_ours_lead_nowhere(
    files: PictureFiles, tmp_path: Path, name: str
) -> None:
    """No name reads or deletes anything outside the folder."""
    database = tmp_path / "data" / "linn.db"
    database.write_bytes(b"rows")
    assert files.read(name) is None
    files.delete([name])
    assert database.exists()


def test_deleting_is_by_name_and_can_be_repeated(files: PictureFiles) -> None:
    """Named pictures go; the rest can be cleared of all but the known ones."""
    names = [files.write(PNG) for _ in range(3)]
    files.delete(names[:1])
    files.delete(names[:1])
    assert [files.read(name) for name in names] == [None, PNG, PNG]
    files.delete_others(names[1:2])
    assert [files.read(name) for name in names] == [None, PNG, None]
