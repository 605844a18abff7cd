"""The job that writes down all that is stored of a person, and sends it as files."""

from __future__ import annotations

import asyncio
import json
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any, Final

from bot.store.pictures import PictureFiles
from bot.store.rows import JobRow, Message, OutboxRow, PictureRow, Written, thread_of_answer
from bot.store.store import Store

#: Shape of the file; raised when a name in it changes its meaning.
_FORMAT: Final = 1
FILE_NAME: Final = "linn-my-data.json"
#: The written file waits so long at most for being sent (own rule: a homeserver that is down).
_KEPT: Final = timedelta(days=1)

_ABOUT: Final = {
    "what_this_is": "Everything that this bot stores of the person named here.",
    "shape": "One list of rows for each table of the bot's database. Times are ISO 8601 in UTC. "
    "Other numbers have their unit at the end of their name: _m metres, _mm millimetres, "
    "_s seconds, _km kilometres, _mps metres per second, _stops stops of exposure, _deg degrees; "
    "latitude and longitude are degrees, shares are parts of 1.",
    "not_in_it": "Shared frames: they are deleted as soon as they are measured; `pictures` are "
    "small copies with marks. Where shared frames lie on the homeserver is kept (`media`), to "
    "measure them again; the keys of encrypted ones are kept with it, and not written here. "
    "Sent messages: their ids alone are kept, to take them back one day.",
}


@dataclass(frozen=True)
class DataJob:
    """Writes the file and puts it, with the stored pictures, on its way.

    Attributes:
        store: knows everything.
        files: keeps the file until it is sent.
        scope: tells in which scope transaction ids hold at present.
        clock: tells the time.
    """

    store: Store
    files: PictureFiles
    scope: Callable[[], str]
    clock: Callable[[], datetime]

    async def run(self, job: JobRow) -> Written | None:
        """Write everything down and send it."""
        person_id, now = job.key.person_id, self.clock()
        pictures = [
            picture
            for picture in await self.store.pictures_of(person_id)
            if not picture.name.endswith(".json")  # what an earlier wish has written
        ]
        tables = await self.store.everything_of(person_id)
        text = _written_down(person_id, now, tables, pictures)
        name = await asyncio.to_thread(self.files.write, text.encode())
        row = PictureRow(name, person_id, now + _KEPT)
        written = await self.store.finish_job(
            job, now, pictures=(row,), messages=self._messages(job, name, pictures)
        )
        if written is None:  # the person was forgotten meanwhile
            await asyncio.to_thread(self.files.delete, (name,))
        return written

    async def give_up(self, job: JobRow) -> Written | None:
        """Nothing can be told: the log knows why."""
        return await self.store.finish_job(job, self.clock())

    def _messages(
        self, job: JobRow, data_name: str, pictures: Sequence[PictureRow]
    ) -> tuple[OutboxRow, ...]:
        named = [(data_name, FILE_NAME)]
        named += [
            (picture.name, _public_name(number, picture))
            for number, picture in enumerate(pictures, 1)
        ]
        root = thread_of_answer(job.origin)
        return tuple(
            OutboxRow(
                row_id=f"{job.job_id}-{number}",
                key=job.key,
                message=Message(body="", file_name=file_name, reply_to=root),
                scope=self.scope(),
                created_at=self.clock(),
                thread_id=root,
                picture=stored_name,
            )
            for number, (stored_name, file_name) in enumerate(named)
        )


def _public_name(number: int, picture: PictureRow) -> str:
    """What a stored picture is called among the files that are sent."""
    return f"linn-picture-{number:03}.{picture.name.rpartition('.')[2]}"


def _written_down(
    person_id: str,
    now: datetime,
    tables: dict[str, list[dict[str, Any]]],
    pictures: Sequence[PictureRow],
) -> str:
    """The file's text: JSON that a person can read."""
    names = {
        picture.name: _public_name(number, picture) for number, picture in enumerate(pictures, 1)
    }
    told = {
        "about": _ABOUT,
        "format": _FORMAT,
        "person": person_id,
        "written_at": now.isoformat(timespec="seconds"),
        "sent_as_files": names,
        **tables,
    }
    return json.dumps(told, ensure_ascii=False, indent=2) + "\n"
