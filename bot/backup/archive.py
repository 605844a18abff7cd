"""The archive: a tar file of members with known names, and the list of their hashes at its end."""

from __future__ import annotations

import hashlib
import io
import os
import re
import tarfile
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import datetime
from pathlib import Path
from typing import IO, Final

from pydantic import AwareDatetime, BaseModel, ConfigDict, ValidationError

from bot.backup.errors import ArchiveError

DATABASE: Final = "linn.db"
IDENTITY: Final = "matrix_identity.json"
PICTURES: Final = "pictures"
_MANIFEST: Final = "manifest.json"
#: Nothing else is ever unpacked: a name that is not one of these can't lead out of a folder.
_NAMES: Final = re.compile(
    rf"{re.escape(DATABASE)}|{re.escape(IDENTITY)}|{PICTURES}/[0-9a-f]{{32}}\.(?:png|jpg)"
)
#: The form of archives that this version makes, and the only one that it reads.
_FORM: Final = 1
#: A list of a million pictures takes less [bytes] (own rule).
_MOST_MANIFEST: Final = 128 * 1024 * 1024
_CHUNK: Final = 1024 * 1024


class Manifest(BaseModel):
    """What an archive says of itself.

    Attributes:
        form: of the archive.
        user_id: the bot's account.
        made_at: when the database was copied.
        hashes: SHA-256 of each member, by name.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    form: int
    user_id: str
    made_at: AwareDatetime
    hashes: dict[str, str]


class ArchiveWriter:
    """Adds files, then the list of them.

    Args:
        tar: open for writing.
    """

    def __init__(self, tar: tarfile.TarFile) -> None:
        self._tar = tar
        self._hashes: dict[str, str] = {}

    def add(self, name: str, source: Path) -> None:
        """Add a file under a name of the archive's own.

        Raises:
            FileNotFoundError: it is gone.
        """
        with source.open("rb") as file:
            self._hashes[name] = hashlib.file_digest(file, "sha256").hexdigest()
            file.seek(0)
            self._put(name, os.fstat(file.fileno()).st_size, file)

    def finish(self, user_id: str, made_at: datetime) -> None:
        """Add the list: an archive without it was cut short."""
        manifest = Manifest(form=_FORM, user_id=user_id, made_at=made_at, hashes=self._hashes)
        text = manifest.model_dump_json().encode()
        self._put(_MANIFEST, len(text), io.BytesIO(text))

    def _put(self, name: str, size: int, file: IO[bytes]) -> None:
        member = tarfile.TarInfo(name)
        member.size, member.mode = size, 0o600
        self._tar.addfile(member, file)


@contextmanager
def writing(path: Path) -> Iterator[ArchiveWriter]:
    """An archive at a path where no file is; safe on disk at the end, for its owner alone."""
    handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    with os.fdopen(handle, "wb") as file:
        with tarfile.open(fileobj=file, mode="w") as tar:
            yield ArchiveWriter(tar)
        file.flush()
        os.fsync(file.fileno())


def unpack(path: Path, folder: Path) -> Manifest:
    """Unpack an archive into an empty folder, trusting nothing in it.

    Args:
        path: of the archive.
        folder: where its members go, each for its owner alone.

    Raises:
        ArchiveError: it is no archive of ours, cut short, damaged, or holds what it must not.
        OSError: it can't be read, or the folder not be written.
    """
    (folder / PICTURES).mkdir(mode=0o700)
    hashes: dict[str, str] = {}
    manifest: Manifest | None = None
    try:
        with tarfile.open(path, "r:") as tar:
            for member in tar:
                if manifest is not None:
                    raise ArchiveError(f"The backup has “{member.name!a}” behind its end.")
                if member.name == _MANIFEST:
                    manifest = _manifest(tar, member)
                else:
                    _check(member, hashes)
                    hashes[member.name] = _unpack(tar, member, folder / member.name)
    except (tarfile.TarError, EOFError) as error:
        raise ArchiveError(f"{path.name} is no backup of Linn, or damaged.") from error
    return _complete(manifest, hashes)


def _check(member: tarfile.TarInfo, known: dict[str, str]) -> None:
    if not member.isreg() or member.issparse():
        raise ArchiveError(f"The backup holds {member.name!a}, which is no plain file.")
    if not _NAMES.fullmatch(member.name):
        raise ArchiveError(f"The backup holds {member.name!a}, which belongs in none.")
    if member.name in known:
        raise ArchiveError(f"The backup holds {member.name!a} twice.")


def _manifest(tar: tarfile.TarFile, member: tarfile.TarInfo) -> Manifest:
    file = tar.extractfile(member) if member.isreg() and not member.issparse() else None
    if file is None or member.size > _MOST_MANIFEST:
        raise ArchiveError("The backup's list is no plain file, or too long.")
    try:
        manifest = Manifest.model_validate_json(file.read())
    except ValidationError as error:
        raise ArchiveError("The backup's list can't be read.") from error
    if manifest.form != _FORM:
        raise ArchiveError(
            f"The backup has form {manifest.form}, this version of Linn reads form {_FORM}: "
            "bring it back with the version that made it."
        )
    return manifest


def _unpack(tar: tarfile.TarFile, member: tarfile.TarInfo, target: Path) -> str:
    """Write one member and return its hash."""
    source = tar.extractfile(member)
    if source is None:  # only of what is no plain file
        raise ArchiveError(f"The backup holds {member.name!a}, which is no plain file.")
    found = hashlib.sha256()
    handle = os.open(target, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    with os.fdopen(handle, "wb") as file:
        while chunk := source.read(_CHUNK):
            found.update(chunk)
            file.write(chunk)
        file.flush()
        os.fsync(file.fileno())
    return found.hexdigest()


def _complete(manifest: Manifest | None, hashes: dict[str, str]) -> Manifest:
    if manifest is None:
        raise ArchiveError("The backup was cut short: its end is missing.")
    if manifest.hashes != hashes or DATABASE not in hashes:
        raise ArchiveError("The backup is damaged: its files are not those of its list.")
    return manifest
