"""The sync loop: events come in, are made safe with their token, and nothing is lost or doubled."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import AsyncIterator, Callable, Container, Iterable, Iterator
from contextlib import suppress
from datetime import datetime
from typing import Any, Final, Never, Protocol

from aiohttp import ClientError
from nio import AsyncClient, EncryptionError, MegolmEvent, SyncResponse
from peewee import PeeweeException

from bot.dialogue.events import Event
from bot.faults import where_it_broke
from bot.matrix.backoff import Backoff
from bot.matrix.content import ROW_KEY
from bot.matrix.errors import ServerAnswerError
from bot.matrix.incoming import withdrawn_id
from bot.matrix.keys import RoomKeys
from bot.matrix.plain import part_of, text_of
from bot.matrix.repeating import kind_of, stop_without_token, until_done
from bot.matrix.room_reader import RoomReader
from bot.matrix.rooms import Rooms
from bot.matrix.server_api import refusal
from bot.matrix.timeline import SYNC_FILTER, RoomEvent, timeline
from bot.matrix.waiting import WaitingEvent, WaitingEvents
from bot.runtime.ports import Inbox
from bot.trouble import Troubles

_log: Final = logging.getLogger(__name__)

#: Own rule: the longest that a stop has to wait for, and the longest that a grace overruns.
POLL_S: Final = 8.0
#: Own rule: a first sync of hundreds of rooms takes a busy homeserver minutes.
_FIRST_SYNC_S: Final = 300.0
#: Own rule: how much later than asked for a busy homeserver may end a poll.
_LATE_S: Final = 60.0
#: Own rule: a batch that breaks the library this often breaks it always.
_MOST_BREAKS: Final = 3


class Verification(Protocol):
    """Takes events by which people verify the bot's keys; they are nothing for conversations."""

    def take_to_device(self, events: Iterable[object]) -> None:
        """Pick out and keep what is meant for it; the others are left alone."""

    def take_in_room(self, room_id: str, source: dict[str, Any]) -> bool:
        """Whether this was such an event; the same one again does no harm."""


class Receiver:
    """Takes in what people send.

    Args:
        client: signed in, its device signed.
        keys: looked after following each sync, before anything of it is handed on.
        reader: turns events into what conversations understand.
        waiting: events without their key.
        rooms: enters and leaves rooms, and knows which of them goes on from another.
        inbox: where events go.
        clock: the present, with zone.
        poll_s: how long the server holds a sync when nothing happens [s].
        not_before: what is older is not read; None reads all that came since the stored token.
        verification: gets its events before anybody else; None when there is nobody for them.
        troubles: tells the log of what fails.
    """

    def __init__(
        self,
        client: AsyncClient,
        keys: RoomKeys,
        reader: RoomReader,
        waiting: WaitingEvents,
        rooms: Rooms,
        inbox: Inbox,
        clock: Callable[[], datetime],
        *,
        poll_s: float = POLL_S,
        not_before: datetime | None = None,
        verification: Verification | None = None,
        troubles: Troubles | None = None,
    ) -> None:
        self._client = client
        self._keys = keys
        self._reader = reader
        self._waiting = waiting
        self._rooms = rooms
        self._inbox = inbox
        self._clock = clock
        self._poll_s = poll_s
        self._not_before = not_before
        self._verification = verification
        self._troubles = troubles or Troubles()
        self._backoff = Backoff()
        self._breaks = 0
        #: The bot's own messages of the last sync: event ids by row ids.
        self._own: dict[str, str] = {}
        #: When the last sync was taken in; None before the first.
        self.last_sync_at: datetime | None = None

    async def run(self) -> Never:
        """Sync until cancelled.

        Raises:
            UnknownTokenError: the homeserver does not know the bot's token any more.
        """
        since = await until_done(self._inbox.sync_token, self._troubles.store)
        if since is None and self._not_before is None:
            # The first start of all: what was said before was not said to this bot.
            self._not_before = self._clock()
        full_state = True
        while True:
            since = await self._once(since, full_state=full_state)
            full_state = False

    async def _once(self, since: str | None, *, full_state: bool) -> str:
        """One sync, taken in whole; returns the token for the next."""
        response = await self._sync(since, full_state=full_state)
        # New devices first: an answer must not leave before its readers are known.
        await self._keys.upkeep(response)
        self._rooms.note(response)
        if self._verification is not None:
            self._verification.take_to_device(response.to_device_events)
        troubles, folder = self._troubles, self._troubles.of("the data folder")
        followed = await until_done(lambda: self._rooms.carry_over(response), troubles.store)
        sources = await until_done(
            lambda: self._sources(response, since, followed), troubles.of("gaps")
        )
        if self._own:
            await until_done(lambda: self._inbox.saw_own(self._own), troubles.store)
        await until_done(self._keep_waiting, folder)
        await until_done(self._rooms.keep, folder)
        settled, events = await until_done(lambda: self._events(sources), troubles.of("reading"))
        token = response.next_batch
        await until_done(lambda: self._inbox.take_in(events, token), troubles.store)
        self._waiting.drop(settled)
        await until_done(self._keep_waiting, folder)
        self.last_sync_at = self._clock()
        self._rooms.act(response)
        return token

    async def _keep_waiting(self) -> None:
        self._waiting.save()

    async def _sync(self, since: str | None, *, full_state: bool) -> SyncResponse:
        """The next sync answer; failures are repeated with growing pauses."""
        while True:
            try:
                answer = await self._ask(since, full_state=full_state)
            except (ClientError, TimeoutError, ServerAnswerError) as error:
                stop_without_token(error)
                asked_s = error.asked_s if isinstance(error, ServerAnswerError) else None
                self._troubles.sync.met(kind_of(error))
                await asyncio.sleep(self._backoff.next_s(asked_s))
            except Exception as error:
                since = await self._after_break(since, error)
            else:
                self._backoff.reset()
                self._breaks = 0
                self._troubles.sync.over()
                return answer

    async def _ask(self, since: str | None, *, full_state: bool) -> SyncResponse:
        poll_ms = 0 if full_state else int(self._poll_s * 1000)
        async with asyncio.timeout(_FIRST_SYNC_S if full_state else self._poll_s + _LATE_S):
            answer = await self._client.sync(
                poll_ms, SYNC_FILTER, since=since, full_state=full_state or None
            )
        if isinstance(answer, SyncResponse):
            return answer
        raise refusal(answer)

    async def _after_break(self, since: str | None, error: Exception) -> str | None:
        """Which token to go on with when the library failed over a batch.

        It has moved its own token already: the same batch again needs that undone. After some
        attempts the batch is given up, since it would keep everybody else waiting for ever. A key
        store that can't be written (full disk, lock) is no fault of the batch: that waits.
        """
        if not isinstance(error, OSError | PeeweeException):
            self._breaks += 1
        reached, self._client.next_batch = self._client.next_batch, ""
        self._troubles.sync.met(where_it_broke(error))
        await asyncio.sleep(self._backoff.next_s())
        if self._breaks < _MOST_BREAKS or not reached:
            return since
        _log.error("Gave up the events between %s and %s", since, reached)
        return str(reached)

    async def _sources(
        self, response: SyncResponse, since: str | None, followed: Container[str]
    ) -> list[tuple[str, dict[str, Any]]]:
        """Room and readable event, in order; what cannot be decrypted is set aside."""
        readable = []
        self._own = {}
        for room_id, info in response.rooms.join.items():
            events = await timeline(
                self._client, room_id, info, since, from_its_beginning=room_id in followed
            )
            for event in events:
                self._note_own(event.source)
                self._waiting.take_back(withdrawn_id(event.source))
                if self._is_sealed(event):
                    self._set_aside(room_id, event)
                else:
                    readable.append((room_id, event.source))
        return readable

    def _note_own(self, source: dict[str, Any]) -> None:
        """Keep the row id of the bot's own message, which stands outside what is encrypted too."""
        row_id = text_of(part_of(source, "content").get(ROW_KEY))
        event_id = text_of(source.get("event_id"))
        if row_id and event_id and source.get("sender") == self._client.user_id:
            self._own[row_id] = event_id

    @staticmethod
    def _is_sealed(event: RoomEvent) -> bool:
        return bool(event.source.get("type") == "m.room.encrypted")

    def _set_aside(self, room_id: str, event: RoomEvent) -> None:
        if not part_of(event.source, "content"):
            return  # it was taken back: there is nothing to wait for
        if self._reader.sender(room_id, event.source, self._not_before) is not None:
            _log.info("No key yet for %s in %s", event.source["event_id"], room_id)
            self._waiting.add(room_id, event.source, self._clock())

    async def _events(
        self, sources: list[tuple[str, dict[str, Any]]]
    ) -> tuple[list[WaitingEvent], list[Event]]:
        """What conversations get: late events first, then the new ones, then what is given up.

        Returns:
            The waiting events that are settled by it, and the events.
        """
        readable = self._waiting.readable(self._decrypted)
        late = [event for event, _ in readable]
        expired = self._waiting.expired(self._clock(), besides=late)
        sources = [(event.room_id, source) for event, source in readable] + sources
        events = [event async for event in self._read_all(sources)]
        return late + expired, events + list(self._given_up(expired))

    async def _read_all(self, sources: list[tuple[str, dict[str, Any]]]) -> AsyncIterator[Event]:
        for room_id, source in sources:
            try:
                event = await self._read(room_id, source)
            except (ValueError, TypeError, LookupError, AttributeError) as error:
                # A bug over one event must not keep all others waiting for ever.
                _log.error("Skipped an event in %s: %s", room_id, where_it_broke(error))
                continue
            if event is not None:
                yield event

    async def _read(self, room_id: str, source: dict[str, Any]) -> Event | None:
        if self._verification is not None and self._verification.take_in_room(room_id, source):
            return None
        sender = self._reader.sender(room_id, source, self._not_before)
        return None if sender is None else await self._reader.read(room_id, source, sender)

    def _given_up(self, expired: list[WaitingEvent]) -> Iterator[Event]:
        """One event for each room and sender: the last of theirs."""
        for event in {event.group: event for event in expired}.values():
            sender = self._reader.sender(event.room_id, event.source, None)
            if sender is not None:
                yield self._reader.undecryptable(event.room_id, event.source, sender)

    def _decrypted(self, event: WaitingEvent) -> dict[str, Any] | None:
        sealed = MegolmEvent.parse_event(dict(event.source))
        if not isinstance(sealed, MegolmEvent):
            return None
        sealed.room_id = event.room_id
        with suppress(EncryptionError):
            source: dict[str, Any] = self._client.decrypt_event(sealed).source
            return source
        return None
