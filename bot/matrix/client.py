"""The bot's Matrix side as one: sign in, sign the device, receive, send, leave."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from typing import Final, Never

from aiohttp import ClientError

from bot.matrix.backoff import Backoff
from bot.matrix.chores import Chores
from bot.matrix.cross_signing import check_device_keys, sign_own_device
from bot.matrix.entering import Entering
from bot.matrix.errors import MatrixError, ServerAnswerError, UnknownTokenError
from bot.matrix.identity import Device
from bot.matrix.keys import RoomKeys, upload_device_keys
from bot.matrix.policy import Policy
from bot.matrix.receiver import POLL_S, Receiver
from bot.matrix.repeating import raise_unknown_token, stop_without_token
from bot.matrix.room_reader import RoomReader
from bot.matrix.room_states import RoomStates
from bot.matrix.rooms import Rooms
from bot.matrix.server_api import ServerApi
from bot.matrix.session import Account, new_client, open_session
from bot.matrix.transport import MatrixTransport
from bot.matrix.verification.verifier import Verifier
from bot.matrix.waiting import GRACE, WaitingEvents
from bot.runtime.ports import Inbox, TransportError
from bot.trouble import Troubles

_log: Final = logging.getLogger(__name__)


def _now() -> datetime:
    return datetime.now(UTC)


class MatrixClient:
    """One account on one homeserver, as one device.

        client = MatrixClient(account, Policy.of(["@ada:example.org"]))
        await client.start()              # from here on `client.transport` can send
        await client.run(inbox)           # until cancelled, or MatrixError
        await client.close()

    Args:
        account: who to be and where to keep what must not be lost.
        policy: who is answered.
        clock: the present, with zone.
        not_before: events older than this are not read (after a backup was brought back).
        poll_s: how long the server holds a sync when nothing happens [s].
        key_grace: how long an event waits for its key before its sender is told.
        troubles: tells the log of what fails.
    """

    def __init__(
        self,
        account: Account,
        policy: Policy,
        *,
        clock: Callable[[], datetime] = _now,
        not_before: datetime | None = None,
        poll_s: float = POLL_S,
        key_grace: timedelta = GRACE,
        troubles: Troubles | None = None,
    ) -> None:
        self._account = account
        self._policy = policy
        self._clock = clock
        self._not_before = not_before
        self._poll_s = poll_s
        self._troubles = troubles or Troubles()
        self._nio = new_client(account)
        self._api = ServerApi(self._nio)
        self._keys = RoomKeys(self._nio, self._api, self._troubles.keys)
        self._receiver: Receiver | None = None
        self._waiting = WaitingEvents(account.waiting_path, key_grace)
        self._entering = Entering(account.entering_path)
        self.transport = MatrixTransport(self._nio, self._api, self._keys, self._waiting)

    @property
    def user_id(self) -> str:
        """The bot's full user id."""
        return self._account.user_id

    @property
    def last_sync_at(self) -> datetime | None:
        """When the last sync was taken in; None before the first."""
        return None if self._receiver is None else self._receiver.last_sync_at

    async def start(self) -> None:
        """Sign in, publish the device's keys and have the device signed; before the first sync.

        Raises:
            MatrixError: an operator has to act; see its kinds.
        """
        await open_session(self._nio, self._account)
        backoff, trouble = Backoff(), self._troubles.keys
        while True:
            try:
                await self._prepare_device()
            except (ServerAnswerError, TransportError, ClientError, TimeoutError) as error:
                stop_without_token(error)
                trouble.met(str(error) or type(error).__name__)
                asked_s = error.asked_s if isinstance(error, ServerAnswerError) else None
                await asyncio.sleep(backoff.next_s(asked_s))
            else:
                trouble.over()
                return

    async def run(self, inbox: Inbox) -> Never:
        """Receive until cancelled.

        Raises:
            UnknownTokenError: some request heard that the homeserver does not know the token.
            ExceptionGroup: a part broke down.
        """
        verifier = Verifier(
            self._nio,
            self._api,
            self._keys,
            self._policy,
            self._account.identity_path,
            self._clock,
        )
        chores = Chores(self._troubles)
        self._receiver = self._new_receiver(inbox, verifier, chores)
        try:
            async with asyncio.TaskGroup() as group:
                group.create_task(self._end_without_token())
                group.create_task(verifier.run())
                group.create_task(chores.run())
                await self._receiver.run()
        except ExceptionGroup as broken:
            if broken.subgroup(UnknownTokenError) is not None:
                raise_unknown_token()
            raise

    def _new_receiver(self, inbox: Inbox, verifier: Verifier, chores: Chores) -> Receiver:
        states = RoomStates(self._nio, self._policy)
        return Receiver(
            self._nio,
            self._keys,
            RoomReader(self._nio, self._api, self._policy, inbox, self._clock, states),
            self._waiting,
            Rooms(self._nio, self._api, self._policy, inbox, states, chores, self._entering),
            inbox,
            self._clock,
            poll_s=self._poll_s,
            not_before=self._not_before,
            verification=verifier,
            troubles=self._troubles,
        )

    async def _end_without_token(self) -> Never:
        await self._nio.token_refused.wait()
        raise_unknown_token()

    async def close(self) -> None:
        """Close connections and the key store. Never logs out: that would end the device."""
        await self._nio.close()  # type: ignore[no-untyped-call]  # nio has no types here
        if self._nio.store is not None:
            self._nio.store.database.close()

    async def _prepare_device(self) -> None:
        device = self._device()
        await check_device_keys(self._api, device)
        await upload_device_keys(self._nio)
        await sign_own_device(
            self._api,
            device,
            self._account.identity_path,
            password=self._account.password,
        )
        _log.info("Device %s, key %s", device.device_id, device.ed25519)

    def _device(self) -> Device:
        if self._nio.olm is None:
            raise MatrixError("The key store could not be opened.")
        account = self._nio.olm.account
        return Device(
            user_id=self._nio.user_id,
            device_id=str(self._nio.device_id),
            ed25519=account.identity_keys["ed25519"],
            curve25519=account.identity_keys["curve25519"],
            account=account,
        )
