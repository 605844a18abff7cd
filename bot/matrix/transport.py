"""The way out: messages, files, marks; what the runtime's transport asks for."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from datetime import datetime, timedelta
from typing import Any, Final

from aiohttp import ClientError
from nio import AsyncClient

from bot.dialogue.events import MediaRef
from bot.matrix.content import ROW_KEY, content_of, kind_of
from bot.matrix.errors import ServerAnswerError
from bot.matrix.keys import RoomKeys
from bot.matrix.limit_advice import LimitAdvice
from bot.matrix.media import Media
from bot.matrix.server_api import JsonObject, ServerApi, transport_error
from bot.matrix.waiting import WaitingEvents
from bot.runtime.ports import (
    Outgoing,
    SendLaterError,
    SendRefusedError,
    SendUncertainError,
    UnreachableError,
    UploadedMedia,
)

#: How long clients show the typing mark; long checks renew it (specification 1.16, example).
_TYPING_MS: Final = 30_000
#: Own rule: a room that was joined this moment is in the next sync.
_ROOM_COMES_S: Final = 0.5
#: Own rule: the bot's clock and the homeserver's are no further apart.
_CLOCKS_DIFFER: Final = timedelta(minutes=10)
#: Events in a page; homeservers give no more than some hundred (common practice).
_PAGE: Final = 100
#: Own rule: 20 pages of 100 of the bot's own messages are far more than it sends in a day.
_MOST_PAGES: Final = 20


class MatrixTransport:
    """Implements `bot.runtime.ports.Transport` for a client that is signed in.

    Args:
        client: nio's client; its rooms are kept up by sync.
        api: requests to the homeserver.
        keys: room keys.
        waiting: events without their key, which are kept outside of the store.
    """

    def __init__(
        self, client: AsyncClient, api: ServerApi, keys: RoomKeys, waiting: WaitingEvents
    ) -> None:
        self._client = client
        self._waiting = waiting
        self._api = api
        self._keys = keys
        self._media = Media(api)
        self._limit_advice = LimitAdvice()

    @property
    def scope(self) -> str:
        """The device id: transaction ids hold within it."""
        return str(self._client.device_id)

    async def send(self, outgoing: Outgoing) -> str:
        """Send a message and return its event id; see `Transport.send`."""
        encrypted = await self._is_encrypted(outgoing.room_id)
        kind, content = kind_of(outgoing), content_of(outgoing)
        if encrypted:
            # Unverified devices get the key as well: who is served is decided by the allow-list.
            kind, content = await self._keys.encrypt(outgoing.room_id, kind, content)
            # Once more outside, where it is found without the key.
            content[ROW_KEY] = outgoing.row_id
        path = ("rooms", outgoing.room_id, "send", kind, outgoing.row_id)
        try:
            answer = await self._call("PUT", *path, body=content)
        except SendLaterError as error:
            if error.limited:
                self._limit_advice.tell(self._client.user_id)
            raise
        except SendRefusedError as error:
            if await self._is_replaced(outgoing.room_id):
                # Upgrading closes the old room before the bot hears where it goes on.
                raise SendLaterError(_ROOM_COMES_S) from error
            raise
        if not isinstance(answer.get("event_id"), str):
            raise UnreachableError("an answer without an event id")
        return str(answer["event_id"])

    async def _is_replaced(self, room_id: str) -> bool:
        try:
            state = await self._call("GET", "rooms", room_id, "state", "m.room.tombstone")
        except SendRefusedError:
            return False
        return bool(state.get("replacement_room"))

    async def find_sent(self, room_id: str, row_id: str, since: datetime) -> str | None:
        """The event id of a message with this row id, or None; see `Transport.find_sent`."""
        wanted = {"senders": [self._client.user_id], "limit": _PAGE}
        query = {"dir": "b", "limit": str(_PAGE), "filter": json.dumps(wanted)}
        for _ in range(_MOST_PAGES):
            page = await self._call("GET", "rooms", room_id, "messages", query=query)
            events = page.get("chunk", [])
            if found := _with_row(events, row_id):
                return found
            if "end" not in page or _reaches(events, since):
                return None
            query["from"] = str(page["end"])
        return None

    async def upload(self, data: bytes, mime: str, encrypt_for_room: str) -> UploadedMedia:
        """Upload a file, encrypted if that room is."""
        encrypt = await self._is_encrypted(encrypt_for_room)
        return await self._media.upload(data, mime, encrypt=encrypt)

    async def download(self, media: MediaRef, max_bytes: int) -> bytes:
        """Fetch and decrypt a shared file; see `Transport.download`."""
        return await self._media.download(media, max_bytes)

    async def redact(self, room_id: str, event_id: str, txn_id: str) -> None:
        """Take back one of the bot's own messages."""
        await self._call("PUT", "rooms", room_id, "redact", event_id, txn_id, body={})

    async def forget_person(self, person_id: str, until: datetime) -> None:
        """Drop what the person sent until then and what could not be decrypted yet."""
        self._waiting.forget(person_id, until)

    async def set_typing(self, room_id: str, on: bool) -> None:
        """Show or hide the typing mark."""
        body: JsonObject = {"typing": on} | ({"timeout": _TYPING_MS} if on else {})
        await self._call("PUT", "rooms", room_id, "typing", self._client.user_id, body=body)

    def people(self, room_id: str) -> Mapping[str, str]:
        """Who is in a room beside the bot: names as clients tell them apart, by user ids."""
        room = self._client.rooms.get(room_id)
        if room is None:
            return {}
        there = room.users.keys() - room.invited_users.keys() - {self._client.user_id}
        return {one: str(room.user_name(one) or one) for one in there}

    async def mark_read(self, room_id: str, event_id: str) -> None:
        """Set the read mark, for the room with all its threads."""
        await self._call("POST", "rooms", room_id, "receipt", "m.read", event_id, body={})

    async def _is_encrypted(self, room_id: str) -> bool:
        """Whether the room is encrypted; never guessed, since a wrong guess would be in the clear.

        Raises:
            SendLaterError: sync has not brought the room yet.
            SendRefusedError: the bot is not in the room.
        """
        room = self._client.rooms.get(room_id)
        if room is not None:
            return bool(room.encrypted)
        joined = await self._call("GET", "joined_rooms")
        if room_id in joined.get("joined_rooms", []):
            raise SendLaterError(_ROOM_COMES_S)
        raise SendRefusedError("not in the room")

    async def _call(
        self, method: str, *path: str, body: JsonObject | None = None, **more: Any
    ) -> JsonObject:
        try:
            return await self._api.call(method, *path, body=body, **more)
        except ServerAnswerError as error:
            raise transport_error(error) from error
        except ClientError as error:
            raise UnreachableError(type(error).__name__) from error
        except TimeoutError as error:
            raise SendUncertainError(type(error).__name__) from error


def _with_row(events: Iterable[JsonObject], row_id: str) -> str | None:
    return next(
        (str(event["event_id"]) for event in events if event["content"].get(ROW_KEY) == row_id),
        None,
    )


def _reaches(events: Iterable[JsonObject], since: datetime) -> bool:
    """Whether a page goes back to that time, by the server's clock, which may be another."""
    oldest_ms = min((event["origin_server_ts"] for event in events), default=None)
    until = since - _CLOCKS_DIFFER
    return oldest_ms is not None and oldest_ms < until.timestamp() * 1000
