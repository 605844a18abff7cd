"""Lets allowed people verify the bot: takes their events from sync, sends what the desk says."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import Callable, Iterable
from contextlib import suppress
from datetime import datetime
from pathlib import Path
from typing import Any, Final, Never
from uuid import uuid4

from aiohttp import ClientError
from nio import AsyncClient, EncryptionError, MegolmEvent

from bot.faults import where_it_broke
from bot.matrix.backoff import Backoff
from bot.matrix.errors import ServerAnswerError
from bot.matrix.identity import own_master_key
from bot.matrix.keys import RoomKeys
from bot.matrix.plain import part_of
from bot.matrix.policy import Policy
from bot.matrix.server_api import ServerApi, transport_error
from bot.matrix.verification.desk import Desk, Turn
from bot.matrix.verification.exchange import Party
from bot.matrix.verification.machine import End, Send, Show
from bot.matrix.verification.messages import (
    Incoming,
    Kind,
    is_verification,
    read_in_room,
    read_to_device,
)
from bot.runtime.ports import SendLaterError, SendRefusedError, TransportError

_log: Final = logging.getLogger(__name__)

#: Own rule: how exactly time limits are kept [s].
_TICK_S: Final = 5.0
#: Own rule: after this the other side has lost its patience, and others want their turn [s].
_SEND_S: Final = 60.0
#: Own rule: far more events than verifications that may be open at once have.
_MOST_WAITING: Final = 300

JsonObject = dict[str, Any]


class Verifier:
    """Implements `bot.matrix.receiver.Verification`; `run` does the work, beside the sync loop.

    Emoji are logged for the operator, who compares them with the person. What comes of it is
    theirs alone: the bot keeps no mark of it, and who is served is decided by the policy.

    Args:
        client: signed in; knows the rooms and the device's keys.
        api: sends, and looks up keys.
        keys: encrypts in encrypted rooms.
        policy: who may verify the bot.
        identity_path: the file of the bot's signing identity, read anew each time.
        clock: the present, with zone.
    """

    def __init__(
        self,
        client: AsyncClient,
        api: ServerApi,
        keys: RoomKeys,
        policy: Policy,
        identity_path: Path,
        clock: Callable[[], datetime],
    ) -> None:
        self._client = client
        self._api = api
        self._keys = keys
        self._policy = policy
        self._identity_path = identity_path
        self._clock = clock
        self._desk = Desk(client.user_id, str(client.device_id))
        self._waiting: asyncio.Queue[Incoming] = asyncio.Queue(_MOST_WAITING)

    def take_to_device(self, events: Iterable[object]) -> None:
        """Keep the verification events of a sync's to-device messages."""
        for event in events:
            source = getattr(event, "source", None) or getattr(event, "event_dict", None)
            incoming = read_to_device(source) if isinstance(source, dict) else None
            if incoming is not None:
                self._take(incoming)

    def take_in_room(self, room_id: str, source: JsonObject) -> bool:
        """Keep a room's event if it is of a verification, and say whether it is."""
        if not is_verification(source):
            return False
        incoming = read_in_room(room_id, source)
        if incoming is not None:
            self._take(incoming)
        return True

    async def run(self) -> Never:
        """Answer until cancelled."""
        while True:
            incoming = await self._next()
            try:
                await self._advance(incoming)
            except Exception as error:
                # One verification is lost by it, which people can begin anew; nothing else.
                _log.error("A verification broke: %s", where_it_broke(error))

    def _take(self, incoming: Incoming) -> None:
        own = incoming.sender == self._client.user_id
        if own and (incoming.room_id is None or incoming.kind is Kind.REQUEST):
            return  # another device of the account; the operator has no use for a bot in there
        if not own and not self._policy.allows(incoming.sender):
            _log.info("Ignored a verification by %s: not allowed", incoming.sender)
            return
        try:
            self._waiting.put_nowait(incoming)
        except asyncio.QueueFull:
            _log.warning("Dropped a verification event of %s: too many", incoming.sender)

    async def _next(self) -> Incoming | None:
        """The next event, or None when it is time to look at the clock."""
        if self._desk.idle:
            return await self._waiting.get()
        with suppress(TimeoutError):
            async with asyncio.timeout(_TICK_S):
                return await self._waiting.get()
        return None

    async def _advance(self, incoming: Incoming | None) -> None:
        turns = self._desk.tick(self._clock())
        if incoming is not None:
            turns += await self._answers(incoming)
        for turn in turns:
            await self._carry_out(turn)

    async def _answers(self, incoming: Incoming) -> list[Turn]:
        now = self._clock()
        if self._desk.knows(incoming):
            return self._desk.receive(incoming, now)
        if self._desk.begins(incoming, now):
            if not self._desk.is_for_us(incoming):
                self._desk.leave(incoming.key, now)
                return []
            theirs = await self._party(incoming.sender, str(incoming.device_id))
            return self._desk.open(incoming, self._ourselves(), theirs, now)
        if incoming.room_id is None or await self._was_for_us(incoming):
            return self._desk.refuse_unknown(incoming, now)
        self._desk.leave(incoming.key, now)
        return []

    async def _carry_out(self, turn: Turn) -> None:
        who = (turn.theirs.user_id, turn.theirs.device_id)
        for output in turn.outputs:
            match output:
                case Send():
                    if not await self._has_sent(turn, output):
                        self._desk.leave(turn.key, self._clock())
                        return
                case Show(words):
                    _log.info("Verification with %s %s, compare: %s", *who, ", ".join(words))
                case End(verified=True):
                    _log.info("Verification with %s %s is done", *who)
                case End(reason=reason):
                    _log.info("Verification with %s %s ended: %s", *who, reason)

    async def _has_sent(self, turn: Turn, send: Send) -> bool:
        try:
            async with asyncio.timeout(_SEND_S):
                await self._send_until_taken(turn, send)
        except (TransportError, TimeoutError) as error:
            _log.warning("A verification ended: %s was not sent (%s)", send.kind.value, error)
            return False
        return True

    async def _send_until_taken(self, turn: Turn, send: Send) -> None:
        """Send, again and again with the same transaction id, until it is taken or refused."""
        backoff, transaction_id = Backoff(), str(uuid4())
        while True:
            try:
                if turn.room_id is None:
                    await self._send_to_device(turn.theirs, send, transaction_id)
                else:
                    await self._send_in_room(turn.room_id, send, transaction_id)
            except SendRefusedError:
                raise
            except (TransportError, ClientError, TimeoutError) as error:
                asked_s = error.retry_after_s if isinstance(error, SendLaterError) else None
                await asyncio.sleep(backoff.next_s(asked_s))
            else:
                return

    async def _send_to_device(self, theirs: Party, send: Send, transaction_id: str) -> None:
        body = {"messages": {theirs.user_id: {theirs.device_id: send.content}}}
        await self._put(("sendToDevice", send.kind.value, transaction_id), body)

    async def _send_in_room(self, room_id: str, send: Send, transaction_id: str) -> None:
        room = self._client.rooms.get(room_id)
        if room is None:
            raise SendRefusedError("not in the room")
        kind, content = send.kind.value, send.content
        if room.encrypted:
            kind, content = await self._keys.encrypt(room_id, kind, content)
        await self._put(("rooms", room_id, "send", kind, transaction_id), content)

    async def _put(self, path: tuple[str, ...], body: JsonObject) -> None:
        try:
            await self._api.call("PUT", *path, body=body)
        except ServerAnswerError as error:
            raise transport_error(error) from error

    def _ourselves(self) -> Party:
        """This device with what a verification vouches for: its key, and the master key."""
        user_id, device_id = self._client.user_id, str(self._client.device_id)
        if self._client.olm is None:
            raise RuntimeError("the key store is not loaded")
        keys = {f"ed25519:{device_id}": str(self._client.olm.account.identity_keys["ed25519"])}
        master = own_master_key(self._identity_path, user_id)
        if master is not None:
            keys[f"ed25519:{master}"] = master
        return Party(user_id, device_id, keys)

    async def _party(self, user_id: str, device_id: str) -> Party:
        """The other device with the keys that the server shows for it, as far as it does."""
        async with asyncio.timeout(_SEND_S):
            shown = await self._query(user_id)
        device = part_of(part_of(part_of(shown, "device_keys"), user_id), device_id)
        master = part_of(part_of(shown, "master_keys"), user_id)
        keys = {**part_of(master, "keys"), **part_of(device, "keys")}
        wanted = {f"ed25519:{device_id}", *part_of(master, "keys")}
        known = {name: key for name, key in keys.items() if name in wanted and isinstance(key, str)}
        return Party(user_id, device_id, known)

    async def _query(self, user_id: str) -> JsonObject:
        backoff = Backoff()
        while True:
            try:
                return await self._api.call(
                    "POST", "keys", "query", body={"device_keys": {user_id: []}}
                )
            except (ServerAnswerError, ClientError, TimeoutError) as error:
                asked_s = error.asked_s if isinstance(error, ServerAnswerError) else None
                await asyncio.sleep(backoff.next_s(asked_s))

    async def _was_for_us(self, incoming: Incoming) -> bool:
        """Whether the request that an unknown event refers to was for the bot, by that person."""
        room_id, event_id = incoming.key
        try:
            source = await self._api.call("GET", "rooms", room_id, "event", event_id)
        except (ServerAnswerError, ClientError, TimeoutError):
            return False
        request = read_in_room(room_id, self._opened(room_id, source))
        if request is None or request.kind is not Kind.REQUEST:
            return False
        return request.sender == incoming.sender and self._desk.is_for_us(request)

    def _opened(self, room_id: str, source: JsonObject) -> JsonObject:
        """The event, decrypted if it can be."""
        sealed = MegolmEvent.parse_event(source)
        if source.get("type") != "m.room.encrypted" or not isinstance(sealed, MegolmEvent):
            return source
        sealed.room_id = room_id
        with suppress(EncryptionError):
            opened: JsonObject = self._client.decrypt_event(sealed).source
            return opened
        return source
