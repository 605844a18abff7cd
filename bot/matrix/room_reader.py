"""Which events of a room are for the bot, from whom, in which thread, answering what."""

from __future__ import annotations

import logging
from collections.abc import Callable
from dataclasses import replace
from datetime import datetime
from typing import Final, NamedTuple

from nio import AsyncClient

from bot.dialogue.events import Event, Origin, OtherReceived
from bot.matrix.errors import ServerAnswerError
from bot.matrix.incoming import (
    Relation,
    mentioned,
    mentions,
    read_event,
    relation_of,
    sent_at,
    withdrawn_id,
)
from bot.matrix.people_named import is_called, names_in, names_of
from bot.matrix.plain import Source, part_of, text_of
from bot.matrix.policy import Policy
from bot.matrix.room_states import RoomStates
from bot.matrix.server_api import ServerApi
from bot.matrix.taps import TAPS, read_tap, tapped_event
from bot.runtime.ports import Inbox

_log: Final = logging.getLogger(__name__)

#: The types that a person sends; state, polls and calls are none of the bot's business.
_READ: Final = TAPS | {"m.room.message", "m.room.encrypted", "m.room.redaction", "m.sticker"}
#: Own rule: far more than come in one sync; what was stored is known to the inbox.
_MOST_CALLS: Final = 1000


class Sender(NamedTuple):
    """Who sent an event, and when."""

    person_id: str
    sent_at: datetime


class RoomReader:
    """Reads events on behalf of the conversations.

    Args:
        client: knows the rooms and their members.
        api: for an event that another one refers to.
        policy: who is read at all.
        inbox: knows what the bot has sent.
        clock: the present, with zone.
        states: knows who leads a room.
    """

    def __init__(
        self,
        client: AsyncClient,
        api: ServerApi,
        policy: Policy,
        inbox: Inbox,
        clock: Callable[[], datetime],
        states: RoomStates,
    ) -> None:
        self._client = client
        self._api = api
        self._policy = policy
        self._inbox = inbox
        self._clock = clock
        self._states = states
        #: Threads in which the bot was called, for what follows before the call is stored.
        self._called_in: dict[tuple[str, str], None] = {}
        #: Who sent what threads and replies refer to, so that it is asked once.
        self._senders: dict[str, str | None] = {}

    def sender(self, room_id: str, source: Source, not_before: datetime | None) -> Sender | None:
        """Sender and time of an event that is to be read; None for all others.

        Not read: the bot's own events, people who are not allowed (one line in the log, without
        content), and what is older than `not_before`.
        """
        person_id, when = text_of(source.get("sender")), sent_at(source)
        if source.get("type") not in _READ or person_id == self._client.user_id or when is None:
            return None
        if not self._policy.allows(person_id):
            event_id = text_of(source.get("event_id"))
            _log.info("Ignored %s in %s by %s: not allowed", event_id, room_id, person_id)
            return None
        if not_before is not None and when < not_before:
            return None
        return Sender(person_id, when)

    async def read(self, room_id: str, source: Source, sender: Sender) -> Event | None:
        """The event as a conversation understands it, None when it means nothing.

        Raises:
            ServerAnswerError, aiohttp.ClientError, TimeoutError: what it refers to could not be
                looked up at this moment.
        """
        if source.get("type") in TAPS:
            return await self._tap(room_id, source, sender)
        relation = relation_of(source)
        withdrawn = withdrawn_id(source)
        if target := relation.corrects or withdrawn:
            original = await self._original(room_id, target)
            if withdrawn is None and original.get("sender") not in {None, sender.person_id}:
                return None  # nobody edits what others said
            person_id = text_of(original.get("sender")) if withdrawn else ""
            sender = sender._replace(person_id=person_id or sender.person_id)
            inherited = relation_of(original)
            relation = Relation(inherited.thread_id, inherited.replies_to, relation.corrects)
        relation = await self._in_the_thread_answered(room_id, sender, relation)
        called = withdrawn is not None or await self._is_for_us(room_id, source, relation)
        origin = self._origin(room_id, source, sender, relation, addressed=called)
        if called and withdrawn is None:
            self._note_call(origin)
            aside = await self._is_for_others(source, origin, relation)
            origin = origin.model_copy(update={"aside": aside})
        if not origin.direct:
            people = self._others(room_id, sender.person_id).values()
            named = names_in(text_of(part_of(source, "content").get("body")), people)
            origin = origin.model_copy(update={"people": named})
        return read_event(source, origin, relation, self._names(room_id))

    async def _in_the_thread_answered(
        self, room_id: str, sender: Sender, relation: Relation
    ) -> Relation:
        """A reply from outside a thread to what the bot said in it to just this person is in it."""
        if relation.thread_id is not None or relation.replies_to is None:
            return relation
        own = await self._inbox.own_message(room_id, relation.replies_to)
        if own is None or own.person_id != sender.person_id or self._is_direct(room_id):
            return relation
        return replace(relation, thread_id=own.thread_id)

    async def _tap(self, room_id: str, source: Source, sender: Sender) -> Event | None:
        """A tap on what the bot has said to just this person; it stands in that thread."""
        target = tapped_event(source)
        own = await self._inbox.own_message(room_id, target) if target is not None else None
        if target is None or own is None or own.person_id != sender.person_id:
            return None
        relation = Relation(thread_id=own.thread_id)
        origin = self._origin(room_id, source, sender, relation, addressed=True)
        return read_tap(source, origin, target)

    def undecryptable(self, room_id: str, source: Source, sender: Sender) -> Event:
        """What is told of an event whose key did not come."""
        relation = relation_of(source)
        origin = self._origin(room_id, source, sender, relation, addressed=True)
        return OtherReceived(origin=origin, what="undecryptable")

    def _origin(
        self, room_id: str, source: Source, sender: Sender, relation: Relation, *, addressed: bool
    ) -> Origin:
        age_s = (self._clock() - sender.sent_at).total_seconds()
        direct = self._is_direct(room_id)
        led = not direct and self._states.leads(room_id, sender.person_id)
        named = self._policy.leads(sender.person_id)
        made = led and not self._policy.leaders and self._states.teaches(room_id, sender.person_id)
        return Origin(
            event_id=text_of(source.get("event_id")),
            room_id=room_id,
            person_id=sender.person_id,
            thread_id=relation.thread_id,
            direct=direct,
            addressed=addressed,
            leader=led or named,
            teaches=named or made,
            sent_at=sender.sent_at,
            age_s=max(0.0, age_s),
        )

    async def _is_for_us(self, room_id: str, source: Source, relation: Relation) -> bool:
        if self._is_direct(room_id) or self._is_called(room_id, source):
            return True
        answered = relation.replies_to
        if answered and await self._inbox.own_message(room_id, answered) is not None:
            return True
        # An answer outside threads starts one at the message: its correction belongs there.
        thread_id = relation.thread_id or relation.corrects
        if thread_id is None:
            return False
        known = (room_id, thread_id) in self._called_in
        return known or await self._inbox.is_own_thread(room_id, thread_id)

    def _is_called(self, room_id: str, source: Source) -> bool:
        """Whether a message names the bot, or was edited so that it does."""
        names, own_id = self._names(room_id), self._client.user_id
        edited = {"content": part_of(part_of(source, "content"), "m.new_content")}
        return mentions(source, own_id, names) or mentions(edited, own_id, names)

    async def _is_for_others(self, source: Source, origin: Origin, relation: Relation) -> bool:
        """Whether people talk to each other in a thread of the bot's.

        They do where others are mentioned or replied to, or called by name at the start; in the
        thread of somebody else also where anybody there is named, and where who leads speaks.
        """
        room_id, answered = origin.room_id, relation.replies_to
        if origin.direct or self._is_called(room_id, source):
            return False
        if answered and await self._inbox.own_message(room_id, answered) is not None:
            return False
        people = self._others(room_id, origin.person_id)
        names, content = people.values(), part_of(source, "content")
        text = text_of(content.get("body"))
        if mentioned(content) or is_called(text, names):
            return True
        if answered and await self._sender_of(room_id, answered) in people:
            return True
        began = await self._sender_of(room_id, origin.thread_id)
        return began in people and (origin.teaches or bool(names_in(text, names)))

    async def _sender_of(self, room_id: str, event_id: str | None) -> str | None:
        """Who sent an event; None for one that the server does not show."""
        if event_id is None or event_id in self._senders:
            return self._senders.get(event_id or "")
        try:
            sender = text_of((await self._original(room_id, event_id)).get("sender")) or None
        except ServerAnswerError:
            return None
        self._senders[event_id] = sender
        if len(self._senders) > _MOST_CALLS:
            del self._senders[next(iter(self._senders))]
        return sender

    def _others(self, room_id: str, person_id: str) -> dict[str, tuple[str, ...]]:
        """How the other people of a room are called, by their ids."""
        room = self._client.rooms.get(room_id)
        users = {} if room is None else room.users
        return {
            user_id: names_of(user_id, user.display_name)
            for user_id, user in users.items()
            if user_id not in {person_id, self._client.user_id}
        }

    def _note_call(self, origin: Origin) -> None:
        """Keep the thread of the answer: people write on there before the answer has come."""
        self._called_in[origin.room_id, origin.thread_id or origin.event_id] = None
        if len(self._called_in) > _MOST_CALLS:
            del self._called_in[next(iter(self._called_in))]

    def _is_direct(self, room_id: str) -> bool:
        """Whether nobody else is in the room, or asked into it, than the bot and one person."""
        room = self._client.rooms.get(room_id)
        return room is not None and room.member_count <= 2

    def _names(self, room_id: str) -> tuple[str, ...]:
        """How people call the bot in this room."""
        own_id: str = self._client.user_id
        room = self._client.rooms.get(room_id)
        shown = room.user_name(own_id) if room is not None else None
        return own_id, own_id[1:].partition(":")[0], shown or ""

    async def _original(self, room_id: str, event_id: str) -> Source:
        """The event as the server keeps it (encrypted ones too show sender and thread)."""
        try:
            return await self._api.call("GET", "rooms", room_id, "event", event_id)
        except ServerAnswerError as error:
            if error.code in {"M_NOT_FOUND", "M_FORBIDDEN"}:
                return {}
            raise
