"""One message to the homeserver: its picture first, then the event, each known before the next."""

from __future__ import annotations

import asyncio
import json
from collections.abc import Callable
from dataclasses import asdict
from datetime import datetime, timedelta
from typing import Final

from bot.pictures.thumbnail import size_of, thumbnail
from bot.runtime.ports import Outgoing, Transport, UploadedMedia, UploadedPicture
from bot.store.pictures import PictureFiles
from bot.store.rows import OutboxRow
from bot.store.store import Store

#: Longest wait for one request [s] (own rule: past this, phones on bad lines are quicker).
REQUEST_S: Final = 30.0
#: Longest wait for an upload [s] (own rule).
UPLOAD_S: Final = 120.0
#: A homeserver keeps transaction ids for at least 30 minutes (seen with Synapse); own rule: less.
SURE_OF_TRANSACTION: Final = timedelta(minutes=20)
#: By the ending of a file's name.
_MIME: Final = {"json": "application/json", "png": "image/png", "jpg": "image/jpeg"}


class Delivery:
    """Sends one message, so that a repeat sends nothing twice.

    Args:
        store: keeps a picture's address and key before the event that names them is sent.
        transport: the way to the room.
        files: the stored pictures.
        clock: tells the time.
    """

    def __init__(
        self,
        store: Store,
        transport: Transport,
        files: PictureFiles,
        clock: Callable[[], datetime],
    ) -> None:
        self._store = store
        self._transport = transport
        self._files = files
        self._clock = clock
        #: By row and room, until the message is sent.
        self._uploaded: dict[tuple[str, str], UploadedPicture] = {}

    async def deliver(self, row: OutboxRow) -> str:
        """Send a message and return its event id.

        Raises:
            SendRefusedError: it will never be taken.
            SendUncertainError: it may have arrived; the same again.
            SendLaterError: the server asks to wait.
            TimeoutError: as uncertain.
        """
        found = await self._find(row)
        if found is not None:
            return found
        picture = await self._picture(row) if row.picture is not None else None
        async with asyncio.timeout(REQUEST_S):
            event_id = await self._transport.send(outgoing(row, picture))
        self._uploaded.pop((row.row_id, row.key.room_id), None)
        return event_id

    async def take_back(self, row: OutboxRow, event_id: str) -> None:
        """Redact a message whose row was forgotten while it was on its way."""
        async with asyncio.timeout(REQUEST_S):
            await self._transport.redact(row.key.room_id, event_id, f"{row.row_id}-back")

    async def _find(self, row: OutboxRow) -> str | None:
        """Look for an earlier try in the room, if the server may have forgotten its id."""
        age = self._clock() - row.created_at
        # Written in the future: the clock was set back, and nobody knows how old it is.
        sure = timedelta(0) <= age <= SURE_OF_TRANSACTION
        if sure and row.scope == self._transport.scope:
            return None
        async with asyncio.timeout(REQUEST_S):
            return await self._transport.find_sent(row.key.room_id, row.row_id, row.created_at)

    async def _picture(self, row: OutboxRow) -> UploadedPicture | None:
        """The picture on the homeserver; None when its file is gone: then the words go alone."""
        place = (row.row_id, row.key.room_id)
        if place in self._uploaded:
            return self._uploaded[place]
        if row.uploaded is not None:
            return _read_picture(row.uploaded)
        data = await asyncio.to_thread(self._files.read, row.picture or "")
        if data is None:
            return None
        upload = self._upload_file if row.message.file_name else self._upload
        picture = await upload(row, data)
        await self._store.keep_upload(row, json.dumps(asdict(picture)))
        self._uploaded[place] = picture
        return picture

    async def _upload_file(self, row: OutboxRow, data: bytes) -> UploadedPicture:
        name = row.message.file_name
        mime = _MIME[name.rpartition(".")[2]]
        async with asyncio.timeout(UPLOAD_S):
            media = await self._transport.upload(data, mime, row.key.room_id)
        return UploadedPicture(media, mime, 0, 0, len(data), name, as_file=True)

    async def _upload(self, row: OutboxRow, data: bytes) -> UploadedPicture:
        width, height, mime = await asyncio.to_thread(size_of, data)
        small = await asyncio.to_thread(thumbnail, data)
        room_id = row.key.room_id
        async with asyncio.timeout(UPLOAD_S):
            media = await self._transport.upload(data, mime, room_id)
            small_media = await self._transport.upload(small.data, small.mime, room_id)
        return UploadedPicture(
            media=media,
            mime=mime,
            width=width,
            height=height,
            size=len(data),
            file_name="picture.png" if mime == "image/png" else "picture.jpg",
            alt=row.message.alt,
            thumbnail=small_media,
            thumbnail_mime=small.mime,
            thumbnail_width=small.width,
            thumbnail_height=small.height,
            thumbnail_size=len(small.data),
        )


def _read_picture(text: str) -> UploadedPicture:
    columns = json.loads(text)
    media = UploadedMedia(**columns.pop("media"))
    small = columns.pop("thumbnail")
    thumbnail_media = None if small is None else UploadedMedia(**small)
    return UploadedPicture(media=media, thumbnail=thumbnail_media, **columns)


def outgoing(row: OutboxRow, picture: UploadedPicture | None) -> Outgoing:
    """The message as the transport takes it."""
    return Outgoing(
        row_id=row.row_id,
        room_id=row.key.room_id,
        body=row.message.body,
        formatted_body=row.message.formatted_body,
        thread_id=row.thread_id,
        reply_to=row.message.reply_to,
        notice=row.message.notice,
        picture=picture,
        mentions=row.message.mentions,
        poll=row.message.poll,
        place=row.message.place,
        replaces=row.message.replaces,
    )
