"""Pictures: files with random names in one folder, and the rows that say whose they are."""

from __future__ import annotations

import re
import secrets
from collections.abc import Iterable, Sequence
from datetime import UTC, datetime
from pathlib import Path
from typing import Final

from sqlalchemy import Connection, delete, insert, select

from bot.store.rows import PictureRow
from bot.store.tables import PICTURE_FRAMES, PICTURES

_ENDINGS: Final = {b"\x89PNG": "png", b"\xff\xd8\xff": "jpg", b"{": "json"}
_NAME: Final = re.compile(r"[0-9a-f]{32}\.(?:png|jpg|json)")


class PictureFiles:
    """The folder of pictures; all methods wait for the disk, so call them in a thread.

    Args:
        folder: made when it is missing, readable by its owner alone.
    """

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)

    def write(self, picture: bytes) -> str:
        """Keep a PNG, a JPEG or a JSON object; return the name of its file, which tells nothing.

        Raises:
            ValueError: it is none of them.
        """
        ending = next((end for head, end in _ENDINGS.items() if picture.startswith(head)), None)
        if ending is None:
            raise ValueError("neither PNG nor JPEG nor JSON")
        name = f"{secrets.token_hex(16)}.{ending}"
        path = self._folder / name
        path.touch(mode=0o600)
        path.write_bytes(picture)
        return name

    def read(self, name: str) -> bytes | None:
        """The picture of this name, None when there is none."""
        if not _NAME.fullmatch(name):
            return None
        try:
            return (self._folder / name).read_bytes()
        except FileNotFoundError:
            return None

    def sizes(self, names: Iterable[str]) -> list[int]:
        """The sizes of these pictures [bytes], 0 for those that are gone."""
        paths = (self._folder / name for name in names)
        return [path.stat().st_size if path.is_file() else 0 for path in paths]

    def delete(self, names: Iterable[str]) -> None:
        """Delete pictures by name; those that are gone already are ignored."""
        for name in names:
            if _NAME.fullmatch(name):
                (self._folder / name).unlink(missing_ok=True)

    def delete_others(self, known: Iterable[str]) -> None:
        """Delete all files but these: a crash can come between a file and its row."""
        keep = set(known)
        for path in self._folder.iterdir():
            if path.name not in keep:
                path.unlink(missing_ok=True)


def add_pictures(connection: Connection, pictures: Sequence[PictureRow]) -> None:
    """Write whose pictures these are."""
    for picture in pictures:
        connection.execute(
            insert(PICTURES).values(
                name=picture.name,
                person_id=picture.person_id,
                frame_event_id=picture.frame_event_id,
                expires_at=picture.expires_at.timestamp(),
            )
        )
        for frame_event_id in picture.other_frames:
            connection.execute(
                insert(PICTURE_FRAMES).values(
                    name=picture.name,
                    person_id=picture.person_id,
                    frame_event_id=frame_event_id,
                )
            )


def pictures_of(connection: Connection, person_id: str) -> tuple[PictureRow, ...]:
    """The pictures of one person, those that go first before the others."""
    rows = connection.execute(
        select(PICTURES).where(PICTURES.c.person_id == person_id).order_by(PICTURES.c.expires_at)
    )
    return tuple(
        PictureRow(
            row.name,
            row.person_id,
            datetime.fromtimestamp(row.expires_at, UTC),
            row.frame_event_id,
        )
        for row in rows
    )


def picture_names(connection: Connection) -> tuple[str, ...]:
    """The names of all pictures."""
    return tuple((connection.execute(select(PICTURES.c.name))).scalars())


def remove_expired(connection: Connection, now: datetime) -> tuple[str, ...]:
    """Take out the rows of pictures whose time is over; their files are the caller's to delete."""
    over = PICTURES.c.expires_at <= now.timestamp()
    gone = connection.execute(delete(PICTURES).where(over).returning(PICTURES.c.name))
    names = tuple(gone.scalars())
    connection.execute(delete(PICTURE_FRAMES).where(PICTURE_FRAMES.c.name.in_(names)))
    return names
