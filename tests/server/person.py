"""A person with a client of their own, who meets the bot on a real homeserver."""

from __future__ import annotations

import asyncio
import contextlib
import io
from collections.abc import Awaitable, Callable
from types import TracebackType
from typing import Any, Final, Self
from uuid import uuid4

from nio import (
    Api,
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
from nio.exceptions import EncryptionError

from bot.matrix.content import ROW_KEY
from bot.matrix.session import Account, new_client
from bot.runtime.progress import PREFIX

#: Longest that a test waits for anything [s]; all takes far less.
PATIENCE_S: Final = 120.0
_ENCRYPTION: Final[dict[str, Any]] = {
    "type": "m.room.encryption",
    "state_key": "",
    "content": {"algorithm": "m.megolm.v1.aes-sha2"},
}

Content = dict[str, Any]


class Person:
    """Sends what people send and keeps all that others sent, decrypted, in order.

    async with Person(account) as ada:
        room_id = await ada.direct_room(bot_id, encrypted=True)
        await ada.say(room_id, "hello")
        answer = await ada.hears(room_id, "echo: hello")
    """

    def __init__(self, account: Account) -> None:
        self.account = account
        self.client: AsyncClient = new_client(account)
        #: Room and event, of everybody but this person.
        self.heard: list[tuple[str, Event]] = []
        self._sealed: list[tuple[str, MegolmEvent]] = []
        self._news = asyncio.Condition()
        self._listening: asyncio.Task[None] | None = None

    async def __aenter__(self) -> Self:
        assert self.account.password is not None
        await self.client.login(self.account.password, "a person's client")
        await self._sync(0)
        self._listening = asyncio.create_task(self._listen())
        return self

    async def __aexit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        if self._listening is not None:
            self._listening.cancel()
            with contextlib.suppress(asyncio.CancelledError):
                await self._listening
        await self.client.close()  # type: ignore[no-untyped-call]
        assert self.client.store is not None
        self.client.store.database.close()

    @property
    def user_id(self) -> str:
        """The person's full user id."""
        return self.account.user_id

    async def direct_room(self, *others: str, encrypted: bool) -> str:
        """A new room with others invited; with one other it is a direct one."""
        answer = await self.client.room_create(
            is_direct=len(others) == 1,
            preset=RoomPreset.trusted_private_chat,
            invite=list(others),
            initial_state=[_ENCRYPTION] if encrypted else [],
        )
        assert isinstance(answer, RoomCreateResponse), answer
        return str(answer.room_id)

    async def meets(self, room_id: str, user_id: str) -> None:
        """Wait until somebody has entered the room (and, encrypted, shown a device)."""
        await self.waits(lambda: self._is_there(room_id, user_id))

    async def joins(self, room_id: str) -> None:
        """Enter a room."""
        await self.client.join(room_id)
        await self.waits(lambda: room_id in self.client.rooms)

    async def say(self, room_id: str, text: str, **more: Any) -> str:
        """Send words; returns the event id. `more` goes into the content."""
        return await self.send(room_id, {"msgtype": "m.text", "body": text} | more)

    async def say_in_thread(self, room_id: str, root: str, text: str) -> str:
        """Send words into a thread."""
        relation = {
            "rel_type": "m.thread",
            "event_id": root,
            "is_falling_back": True,
            "m.in_reply_to": {"event_id": root},
        }
        return await self.say(room_id, text, **{"m.relates_to": relation})

    async def edit(self, room_id: str, event_id: str, text: str) -> str:
        """Correct one of the person's own messages."""
        new: Content = {"msgtype": "m.text", "body": text}
        relation = {"rel_type": "m.replace", "event_id": event_id}
        return await self.say(
            room_id, f"* {text}", **{"m.new_content": new, "m.relates_to": relation}
        )

    async def react(self, room_id: str, event_id: str, key: str) -> str:
        """Put a reaction on an event."""
        relation = {"rel_type": "m.annotation", "event_id": event_id, "key": key}
        answer = await self.client.room_send(room_id, "m.reaction", {"m.relates_to": relation})
        assert isinstance(answer, RoomSendResponse), answer
        return str(answer.event_id)

    async def share_place(self, room_id: str, geo_uri: str) -> str:
        """Send a location."""
        return await self.send(
            room_id, {"msgtype": "m.location", "body": "a place", "geo_uri": geo_uri}
        )

    async def share_picture(
        self, room_id: str, data: bytes, mime: str, caption: str = "", msgtype: str = "m.image"
    ) -> str:
        """Send a picture, encrypted when the room is."""
        encrypt = bool(self.client.rooms[room_id].encrypted)
        answer, keys = await self.client.upload(
            io.BytesIO(data), mime, encrypt=encrypt, filesize=len(data)
        )
        assert isinstance(answer, UploadResponse), answer
        url = answer.content_uri
        where = {"file": {**(keys or {}), "url": url}} if encrypt else {"url": url}
        return await self.send(
            room_id,
            {
                "msgtype": msgtype,
                "body": caption or "leaf.png",
                "filename": "leaf.png",
                "info": {"mimetype": mime, "size": len(data)},
                **where,
            },
        )

    async def send(self, room_id: str, content: Content) -> str:
        """Send a message with this content; returns its event id."""
        answer = await self.client.room_send(
            room_id, "m.room.message", content, ignore_unverified_devices=True
        )
        assert isinstance(answer, RoomSendResponse), answer
        return str(answer.event_id)

    def bodies(self, room_id: str) -> list[str]:
        """What others said in the room, in order; how far measuring had come is left out."""
        contents = [event.source["content"] for where, event in self.heard if where == room_id]
        return [
            str(content.get("body"))
            for content in contents
            if not str(content.get(ROW_KEY, "")).startswith(PREFIX)
        ]

    async def hears(self, room_id: str, body: str) -> Content:
        """Wait for a message with this body; returns its content."""

        def found() -> Content | None:
            for where, event in self.heard:
                if where == room_id and event.source["content"].get("body") == body:
                    content: Content = event.source["content"]
                    return content
            return None

        await self.waits(lambda: found() is not None)
        content = found()
        assert content is not None
        return content

    async def fetch(self, url: str | None, file: Content | None) -> bytes:
        """Download, and decrypt, what a content's `url` or `file` points to."""
        answer = await self.client.download(mxc=file["url"] if file else url)
        assert isinstance(answer, MemoryDownloadResponse), answer
        if file is None:
            return bytes(answer.body)
        return bytes(
            decrypt_attachment(answer.body, file["key"]["k"], file["hashes"]["sha256"], file["iv"])
        )

    async def waits(self, until: Callable[[], bool]) -> None:
        """Wait, for as long as a test does, until it is so."""
        async with asyncio.timeout(PATIENCE_S), self._news:
            await self._news.wait_for(until)

    async def pauses(self, seconds: float) -> None:
        """Do nothing for a moment."""
        await asyncio.sleep(seconds)

    async def say_with_late_key(self, room_id: str, text: str) -> Callable[[], Awaitable[None]]:
        """Send words whose key stays here until the function that comes back is called."""
        client = self.client
        assert client.olm is not None
        client.invalidate_outbound_session(room_id)
        if missing := client.get_missing_sessions(room_id):
            await client.keys_claim(missing)
        users = list(client.rooms[room_id].users)
        shares = list(client.olm.share_group_session_parallel(room_id, users, True))
        client.olm.outbound_group_sessions[room_id].shared = True
        await self.say(room_id, text)

        async def hand_over() -> None:
            for _, messages in shares:
                _, path, data = Api.to_device("", "m.room.encrypted", messages, uuid4())
                headers = {"Authorization": f"Bearer {client.access_token}"}
                response = await client.send("PUT", path.partition("?")[0], data, headers)
                assert response.ok
                response.release()

        return hand_over

    def _is_there(self, room_id: str, user_id: str) -> bool:
        room = self.client.rooms.get(room_id)
        if room is None or user_id not in room.users or user_id in room.invited_users:
            return False
        return not room.encrypted or bool(self.client.device_store[user_id])

    async def _listen(self) -> None:
        while True:
            await self._sync(1000)

    async def _sync(self, poll_ms: int) -> None:
        answer = await self.client.sync(poll_ms, full_state=self._listening is None)
        assert isinstance(answer, SyncResponse), answer
        if self.client.should_upload_keys:
            await self.client.keys_upload()
        if self.client.should_query_keys:
            await self.client.keys_query()
        if self.client.should_claim_keys:
            await self.client.keys_claim(self.client.get_users_for_key_claiming())
        await self.client.send_to_device_messages()
        await self._take_all(answer)

    async def _take_all(self, answer: SyncResponse) -> None:
        """What a sync brought, behind what waited for its key; then whoever waits looks again."""
        sealed, self._sealed = self._sealed, []
        for room_id, event in sealed:
            self._take(room_id, event)
        for room_id, info in answer.rooms.join.items():
            for event in info.timeline.events:
                self._take(room_id, event)
        async with self._news:
            self._news.notify_all()

    def _take(self, room_id: str, event: Event) -> None:
        if isinstance(event, MegolmEvent):
            sealed = event
            sealed.room_id = room_id
            try:
                event = self.client.decrypt_event(sealed)
            except EncryptionError:
                self._sealed.append((room_id, sealed))
                return
        message = event.source.get("type") == "m.room.message"
        if message and event.sender != self.user_id:
            self.heard.append((room_id, event))
