"""Upkeep of device keys, and room keys shared with everybody before something is sent."""

from __future__ import annotations

import asyncio
import time
from collections import defaultdict
from collections.abc import Awaitable, Callable
from typing import Any, Final
from uuid import uuid4

from aiohttp import ClientError
from nio import AsyncClient, ErrorResponse, LocalProtocolError, SyncResponse
from nio.crypto import Olm
from nio.exceptions import GroupEncryptionError

from bot.faults import where_it_broke
from bot.matrix.backoff import Backoff
from bot.matrix.errors import ServerAnswerError, UnknownTokenError
from bot.matrix.server_api import ServerApi, refusal, transport_error
from bot.runtime.ports import SendLaterError, SendRefusedError, TransportError, UnreachableError
from bot.trouble import Trouble

#: Own rule: what fails here was a request of a moment ago; it is soon tried again.
_AGAIN_S: Final = 2.0
#: Own rule: for the few requests that precede an encrypted message together.
_SHARE_S: Final = 90.0

Content = dict[str, Any]


class RoomKeys:
    """Everything about keys that nio leaves to its caller.

    nio keeps no lock over its requests and, when a claim fails while it shares a room key, leaves
    the room waiting for ever; it also takes a proxy's error page for a key that arrived. Here the
    same steps are done in order, one room at a time, until each device has the key.

    Args:
        client: signed in, with its key store loaded.
        api: hands keys over.
        trouble: tells the log of upkeep that fails.
        time_s: a clock that only goes forward [s].
    """

    def __init__(
        self,
        client: AsyncClient,
        api: ServerApi,
        trouble: Trouble | None = None,
        time_s: Callable[[], float] = time.monotonic,
    ) -> None:
        self._client = client
        self._api = api
        self._trouble = trouble or Trouble("device keys")
        self._time_s = time_s
        self._backoff = Backoff()
        self._rests_until_s = 0.0
        self._query_lock = asyncio.Lock()
        self._room_locks: defaultdict[str, asyncio.Lock] = defaultdict(asyncio.Lock)

    async def upkeep(self, response: SyncResponse) -> None:
        """What is due after a sync: key messages, one-time keys, new devices, broken sessions.

        What fails comes up again with a later sync, after a pause.
        """
        if response.device_key_count.signed_curve25519 == 0:
            # nio takes a count of none for no news.
            self._olm.uploaded_key_count = 0
        if self._time_s() < self._rests_until_s:
            return
        failed = [await self._has_failed(ask) for ask in self._due()]
        if any(failed):
            rests_until_s = self._time_s() + self._backoff.next_s()
            self._rests_until_s = max(self._rests_until_s, rests_until_s)
        else:
            self._backoff.reset()
            self._trouble.over()

    def _due(self) -> list[Callable[[], Awaitable[Any]]]:
        client = self._client
        due: list[Callable[[], Awaitable[Any]]] = [client.send_to_device_messages]
        if client.should_upload_keys:
            due.append(client.keys_upload)
        due.append(self.query)
        if client.should_claim_keys:
            due.append(lambda: self._claim(client.get_users_for_key_claiming()))
        return due

    async def _has_failed(self, ask: Callable[[], Awaitable[Any]]) -> bool:
        """Try one part of the upkeep; the others are tried whatever comes of it."""
        try:
            answers = await ask()
            for answer in answers if isinstance(answers, list) else [answers]:
                _accept(answer)
        except ServerAnswerError as error:
            self._rests_until_s = self._time_s() + (error.asked_s or 0.0)
            self._trouble.met(str(error))
        except Exception as error:
            # Whatever it is, a later sync asks for the same again; receiving must not end by it.
            self._trouble.met(where_it_broke(error))
        else:
            return False
        return True

    async def query(self) -> None:
        """Fetch the devices of people whose devices changed."""
        async with self._query_lock:
            if self._client.should_query_keys:
                _accept(await self._client.keys_query())

    async def encrypt(self, room_id: str, kind: str, content: Content) -> tuple[str, Content]:
        """Type and content of the encrypted event; everybody in the room has the key then.

        Raises:
            SendLaterError: keys could not be shared at this moment.
            SendUncertainError: the server did not answer, or failed; nothing was sent.
        """
        try:
            async with self._room_locks[room_id], asyncio.timeout(_SHARE_S):
                await self._share(room_id)
                encrypted: tuple[str, Content] = self._client.encrypt(room_id, kind, content)
        except (ClientError, TimeoutError) as error:
            raise UnreachableError(type(error).__name__) from error
        except ServerAnswerError as error:
            raise _as_transport_error(error) from error
        except (LocalProtocolError, GroupEncryptionError) as error:
            raise SendLaterError(_AGAIN_S) from error
        return encrypted

    async def _claim(self, devices: dict[str, list[str]]) -> None:
        try:
            answer = await self._client.keys_claim(devices)
        except TypeError as error:
            # nio 0.26 fails over its own error class when a claim is refused.
            raise SendLaterError(_AGAIN_S) from error
        _accept(answer)

    async def _share(self, room_id: str) -> None:
        client, olm = self._client, self._olm
        if not client.rooms[room_id].members_synced:
            _accept(await client.joined_members(room_id))
        await self.query()
        if not olm.should_share_group_session(room_id):
            return
        tried: dict[str, list[str]] = {}
        # Each round may find members and devices that came while the last one was under way.
        while True:
            missing = client.get_missing_sessions(room_id)
            if missing and missing != tried:
                tried = missing
                await self._claim(missing)
            if not await self._share_once(room_id):
                break
        olm.outbound_group_sessions[room_id].shared = True

    async def _share_once(self, room_id: str) -> bool:
        """Hand the key to each device that can be reached and lacks it; False when none does."""
        olm = self._olm
        members = list(self._client.rooms[room_id].users)
        shares = list(
            olm.share_group_session_parallel(room_id, members, ignore_unverified_devices=True)
        )
        session = olm.outbound_group_sessions[room_id]
        for reached, messages in shares:
            await self._hand_over(messages)
            session.users_shared_with.update(reached)
        return bool(shares)

    async def _hand_over(self, messages: Content) -> None:
        path = ("sendToDevice", "m.room.encrypted", str(uuid4()))
        await self._api.call("PUT", *path, body=messages)

    @property
    def _olm(self) -> Olm:
        if self._client.olm is None:
            raise LocalProtocolError("the key store is not loaded")
        return self._client.olm


def _accept(answer: object) -> None:
    """Nothing, for an answer that is a success.

    Raises:
        ServerAnswerError: for any other.
    """
    if isinstance(answer, ErrorResponse):
        raise refusal(answer)


def _as_transport_error(error: ServerAnswerError) -> TransportError:
    """What a message has to do whose keys could not be shared: it is never given up for it."""
    wanted = transport_error(error)
    return SendLaterError(_AGAIN_S) if isinstance(wanted, SendRefusedError) else wanted


async def upload_device_keys(client: AsyncClient) -> None:
    """Publish the device's keys when the server does not have them; before the first sync.

    Raises:
        UnknownTokenError: the token is not valid.
        ServerAnswerError: the server could not take them now.
    """
    if not client.should_upload_keys:
        return
    answer = await client.keys_upload()
    if isinstance(answer, ErrorResponse) and answer.status_code == "M_UNKNOWN_TOKEN":
        raise UnknownTokenError("The homeserver refuses the token.")
    _accept(answer)
