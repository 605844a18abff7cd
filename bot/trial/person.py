"""The person of a trial: an account that talks to the bot in an encrypted direct room."""

from __future__ import annotations

import asyncio
import contextlib
import io
import mimetypes
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final

from nio import (
    AsyncClient,
    Event,
    MegolmEvent,
    MemoryDownloadResponse,
    RoomCreateResponse,
    RoomPreset,
    RoomSendResponse,
    SyncResponse,
    UploadResponse,
)
from nio.crypto.attachments import decrypt_attachment

from bot.matrix.attachment import media_of
from bot.matrix.plain import part_of, text_of
from bot.matrix.private_file import read_private, write_private
from bot.matrix.session import Account, new_client, open_session
from bot.matrix.shown import POLL_START

#: Longest wait of one request for news [ms]; a stop waits no longer.
_POLL_MS: Final = 8000  # own rule
_ENCRYPTION: Final[dict[str, Any]] = {
    "type": "m.room.encryption",
    "state_key": "",
    "content": {"algorithm": "m.megolm.v1.aes-sha2"},
}


#: What is read aloud in the terminal: a poll carries its question and options as words too.
_SHOWN: Final = frozenset({"m.room.message", POLL_START})


class PersonError(Exception):
    """The homeserver refused something to the person; the text says what."""


@dataclass(frozen=True)
class Heard:
    """One message of the bot, as the person's client received and decrypted it."""

    body: str
    #: Progress or status, and no answer.
    notice: bool
    #: File name and bytes of the picture that came with it.
    picture: tuple[str, bytes] | None = None


class Person:
    """Signs in, opens a direct room with the bot, says things and hears what the bot says.

    Args:
        account: the person's account and the folder of its keys.
        bot_id: full user id of the bot.
        on_heard: called for each message of the bot.
        encrypted: whether the room is to be encrypted.
    """

    def __init__(
        self,
        account: Account,
        bot_id: str,
        on_heard: Callable[[Heard], None],
        *,
        encrypted: bool = True,
    ) -> None:
        self._account = account
        self._bot_id = bot_id
        self._on_heard = on_heard
        self._encrypted = encrypted
        self._client: AsyncClient = new_client(account)
        self._listening: asyncio.Task[None] | None = None
        self._room_id = ""
        self._unread: list[MegolmEvent] = []
        self._news = asyncio.Event()

    async def start(self) -> None:
        """Sign in and begin to listen."""
        await open_session(self._client, self._account)
        # What was said before this trial is not said again.
        await self._sync(0)
        self._listening = asyncio.create_task(self._listen(), name="person listens")

    async def stop(self) -> None:
        """Stop listening; the login stays for the next trial."""
        if self._listening is not None:
            self._listening.cancel()
            with contextlib.suppress(asyncio.CancelledError):
                await self._listening
        await self._client.close()  # type: ignore[no-untyped-call]

    async def meet_bot(self) -> str:
        """The id of the direct room, once the bot is in it and its device is known.

        Raises:
            PersonError: the room could not be made.
        """
        kept = read_private(self._room_path) or {}
        self._room_id = str(kept.get("room_id", ""))
        if self._room_id not in self._client.rooms:
            self._room_id = await self._make_room()
            write_private(self._room_path, {"room_id": self._room_id})
        while not self._bot_is_there():
            self._news.clear()
            await self._news.wait()
        return self._room_id

    async def say(self, text: str) -> None:
        """Send words."""
        await self._send({"msgtype": "m.text", "body": text})

    async def share_place(self, latitude: float, longitude: float) -> None:
        """Send a location [deg]."""
        where = f"{latitude},{longitude}"
        await self._send({"msgtype": "m.location", "body": where, "geo_uri": f"geo:{where}"})

    async def share_frame(self, path: Path) -> None:
        """Send a picture, encrypted as the room is.

        Raises:
            PersonError: the homeserver did not take it.
        """
        data = await asyncio.to_thread(path.read_bytes)
        mime = mimetypes.guess_type(path.name)[0] or "application/octet-stream"
        answer, keys = await self._client.upload(
            io.BytesIO(data), mime, path.name, encrypt=True, filesize=len(data)
        )
        if not isinstance(answer, UploadResponse):
            raise PersonError(f"The homeserver did not take {path.name}: {answer.message}")
        await self._send(
            {
                "msgtype": "m.image" if mime.startswith("image/") else "m.file",
                "body": path.name,
                "info": {"mimetype": mime, "size": len(data)},
                "file": {**(keys or {}), "url": answer.content_uri, "mimetype": mime},
            }
        )

    @property
    def _room_path(self) -> Path:
        return self._account.data_dir / "room.json"

    async def _make_room(self) -> str:
        answer = await self._client.room_create(
            is_direct=True,
            preset=RoomPreset.trusted_private_chat,
            invite=[self._bot_id],
            initial_state=[_ENCRYPTION] if self._encrypted else [],
        )
        if not isinstance(answer, RoomCreateResponse):
            raise PersonError(f"The homeserver made no room: {answer.message}")
        return str(answer.room_id)

    def _bot_is_there(self) -> bool:
        room = self._client.rooms.get(self._room_id)
        if room is None or self._bot_id not in room.users:
            return False
        if self._bot_id in room.invited_users:
            return False
        known = room.encrypted and bool(self._client.device_store[self._bot_id])
        return known or not self._encrypted

    async def _send(self, content: dict[str, Any]) -> None:
        answer = await self._client.room_send(
            self._room_id, "m.room.message", content, ignore_unverified_devices=True
        )
        if not isinstance(answer, RoomSendResponse):
            raise PersonError(f"The homeserver did not take the message: {answer.message}")

    async def _listen(self) -> None:
        while True:
            for event in await self._sync(_POLL_MS):
                await self._take(event)

    async def _sync(self, timeout_ms: int) -> list[Event]:
        """The room's new events; keys are kept up to date as well."""
        answer = await self._client.sync(timeout_ms, full_state=self._listening is None)
        if not isinstance(answer, SyncResponse):
            # The homeserver stops or is busy: nothing is lost, the token stays.
            await asyncio.sleep(1)
            return []
        await self._keep_keys()
        self._news.set()
        room = answer.rooms.join.get(self._room_id)
        waiting, self._unread = self._unread, []
        return [*waiting, *(room.timeline.events if room else [])]

    async def _keep_keys(self) -> None:
        client = self._client
        if client.should_upload_keys:
            await client.keys_upload()
        if client.should_query_keys:
            await client.keys_query()
        if client.should_claim_keys:
            await client.keys_claim(client.get_users_for_key_claiming())
        await client.send_to_device_messages()

    async def _take(self, event: Event) -> None:
        if event.sender != self._bot_id:
            return
        readable = self._readable(event)
        if readable is None or readable.source.get("type") not in _SHOWN:
            return
        content = part_of(readable.source, "content")
        # An edit carries the whole new message.
        content = part_of(content, "m.new_content") or content
        self._on_heard(
            Heard(
                body=text_of(content.get("body")),
                notice=content.get("msgtype") == "m.notice",
                picture=await self._picture(content),
            )
        )

    def _readable(self, event: Event) -> Event | None:
        """The event, decrypted now if its key came after it; None while it has not."""
        if not isinstance(event, MegolmEvent):
            return event
        with contextlib.suppress(Exception):  # nio raises several kinds for a missing key
            decrypted = self._client.decrypt_event(event)
            if isinstance(decrypted, Event):
                return decrypted
        self._unread.append(event)
        return None

    async def _picture(self, content: Any) -> tuple[str, bytes] | None:
        media = media_of(content) if content.get("msgtype") == "m.image" else None
        if media is None:
            return None
        answer = await self._client.download(mxc=media.address)
        if not isinstance(answer, MemoryDownloadResponse):
            return None
        data = answer.body
        if media.encryption is not None:
            key = part_of(media.encryption, "key")["k"]
            sha256 = part_of(media.encryption, "hashes")["sha256"]
            data = decrypt_attachment(data, key, sha256, str(media.encryption["iv"]))
        return text_of(content.get("filename")) or "picture", data
