"""People who survive what the torture does to the homeserver, and what they say."""

from __future__ import annotations

import asyncio
import random
from collections import deque
from collections.abc import Awaitable, Callable, Iterable
from dataclasses import dataclass, field
from functools import partial
from typing import Any, Final, TypeVar
from uuid import uuid4

from aiohttp import ClientError
from nio import Event, MegolmEvent, MessageDirection, RoomMessagesResponse, SyncResponse
from nio.crypto.attachments import encrypt_attachment

from bot.matrix.errors import ServerAnswerError
from bot.matrix.keys import RoomKeys
from bot.matrix.server_api import MEDIA_V3, ServerApi
from bot.matrix.session import Account
from bot.runtime.ports import TransportError
from tests.server.person import Content, Person

#: Pause of a client whose homeserver is away [s] (own rule).
_AWAY_S: Final = 0.3
_POLL_MS: Final = 4000
#: Longest that a person waits for somebody to enter a room [s] (own rule).
_PATIENCE_S: Final = 120.0
#: No room of a torture has so many events between two syncs.
_SYNC_FILTER: Final[dict[str, Any]] = {"room": {"timeline": {"limit": 500}}}
_TROUBLES: Final = (ClientError, TimeoutError, ServerAnswerError, TransportError)

Answer = TypeVar("Answer")


@dataclass(frozen=True)
class Sent:
    """One thing that a person sent, as the bot has to understand it.

    Attributes:
        event_id: of the event.
        room_id: its room.
        person_id: who.
        direct: whether the room is a direct one.
        addressed: whether it is meant for the bot.
        text: words, or the caption of a frame.
        thread_id: root of the thread that it stands in.
        frame: number of the shared frame, None for words.
        corrects: the message that it edits.
        replies_to: the message that it replies to.
    """

    event_id: str
    room_id: str
    person_id: str
    direct: bool
    addressed: bool
    text: str = ""
    thread_id: str | None = None
    frame: int | None = None
    corrects: str | None = None
    replies_to: str | None = None


class SteadyPerson(Person):
    """A person whose client waits for a homeserver that is away, and sends nothing twice."""

    def __init__(self, account: Account) -> None:
        super().__init__(account)
        self._api = ServerApi(self.client)
        self._keys = RoomKeys(self.client, self._api)

    async def waits(self, until: Callable[[], bool]) -> None:
        """Wait through kills and restarts until it is so."""
        async with asyncio.timeout(_PATIENCE_S), self._news:
            await self._news.wait_for(until)

    async def send(self, room_id: str, content: Content) -> str:
        """Send a message; the same transaction again until the homeserver has taken it."""
        transaction = uuid4().hex
        return await _until_done(lambda: self._send_once(room_id, content, transaction))

    async def share_frame(self, room_id: str, data: bytes, **more: Any) -> str:
        """Send a frame as a picture without a caption; `more` goes into the content."""
        encrypt = bool(self.client.rooms[room_id].encrypted)
        sealed, keys = encrypt_attachment(data) if encrypt else (data, {})

        async def upload() -> Content:
            return await self._api.call("POST", "upload", body=sealed, base=MEDIA_V3)

        url = (await _until_done(upload))["content_uri"]
        content: Content = {
            "msgtype": "m.image",
            "body": "frame.jpg",
            "info": {"mimetype": "image/jpeg", "size": len(data)},
        }
        where = {"file": {**keys, "url": url}} if encrypt else {"url": url}
        return await self.send(room_id, content | where | more)

    async def history(self, room_id: str) -> list[tuple[Event, bool]]:
        """All events of a room, oldest first, and of each whether this person can read it."""
        events: list[Event] = []
        start = ""
        while True:
            answer = await _until_done(partial(self._page, room_id, start))
            events += [event for event in answer.chunk if isinstance(event, Event)]
            if not answer.end or not answer.chunk:
                return [(event, not isinstance(event, MegolmEvent)) for event in events]
            start = answer.end

    async def _page(self, room_id: str, start: str) -> RoomMessagesResponse:
        answer = await self.client.room_messages(
            room_id, start=start, direction=MessageDirection.front, limit=200
        )
        if not isinstance(answer, RoomMessagesResponse):
            raise TimeoutError
        return answer

    async def _send_once(self, room_id: str, content: Content, transaction: str) -> str:
        kind = "m.room.message"
        if self.client.rooms[room_id].encrypted:
            kind, content = await self._keys.encrypt(room_id, kind, content)
        answer = await self._api.call(
            "PUT", "rooms", room_id, "send", kind, transaction, body=content
        )
        return str(answer["event_id"])

    async def _sync(self, poll_ms: int) -> None:
        async def once() -> SyncResponse:
            answer = await self.client.sync(
                min(poll_ms * 4, _POLL_MS), _SYNC_FILTER, full_state=self._listening is None
            )
            if not isinstance(answer, SyncResponse):
                raise TimeoutError
            return answer

        answer = await _until_done(once)
        await self._keys.upkeep(answer)
        await self._take_all(answer)


async def _until_done(act: Callable[[], Awaitable[Answer]]) -> Answer:
    while True:
        try:
            return await act()
        except _TROUBLES:
            await asyncio.sleep(_AWAY_S)


#: What people say again and again; drawn at random it reaches most corners of a walk. `{a}` and
#: `{b}` are numbers that no two messages share, and that the bot repeats or computes with.
LINES: Final = (
    "start",
    "back",
    "skip",
    "why",
    "where am i",
    "kit",
    "units",
    "help",
    "card",
    "thanks",
    "1",
    "1",
    "2",
    "2",
    "3",
    "4",
    "yes",
    "no",
    "{a} m tall, {b} m away, rock at 1.5 m",
    "{a} m tall, {b} m away",
    "{a} ft tall, {b} ft away",
    "moved to {b} m away",
    "section of {a} m",
    "full frame, 16-35 and 70-200, tripod, polariser",
    "aps-c, 50 mm",
    "full frame, 24-70, tripod",
    "full sun",
    "dense canopy",
    "f/11, 1/4 s, iso 100, 2 stops under",
    "f/22, iso 400, 1 s, no texture",
    "all of it blinks",
    "too dark",
    "one stop over, keep the time",
    "soft at the back",
    "what if f/16",
    "what if 1/30 s",
    "what if {b} mm",
    "I want it silky",
    "blub {a}",
)
#: Of those who get into trouble: emergencies overtake what waits, and hold the walk.
TROUBLE: Final = (
    *LINES,
    *(
        "somebody fell into the water and is drifting",
        "all are safe, everybody is out of the water",
        "yes, all safe",
    )
    * 4,
)


@dataclass
class Room:
    """A room with the bot, as one person sees it.

    Attributes:
        room_id: the room.
        direct: whether nobody else is in it.
        threads: in a group, roots of the threads that somebody called the bot in; shared by all.
        last: in each thread, the last message of this person, and whether it is words.
    """

    room_id: str
    direct: bool
    threads: list[str] = field(default_factory=list)
    last: dict[str | None, Sent] = field(default_factory=dict)


class Talker:
    """One person who says so many things, in bursts and with pauses, in this and that room.

    Args:
        person: entered.
        bot_id: the bot.
        rooms: where the bot is, the direct one first.
        numbers: of the frames to share.
        lines: what is said.
        chance: what happens.
    """

    def __init__(
        self,
        person: SteadyPerson,
        bot_id: str,
        rooms: list[Room],
        numbers: Iterable[int],
        lines: tuple[str, ...],
        chance: random.Random,
    ) -> None:
        self.person = person
        self.rooms = rooms
        self.sent: list[Sent] = []
        self._bot_id = bot_id
        self._frames = deque(numbers)
        self._lines = lines
        self._chance = chance

    async def talk(self, messages: int, seconds: float, frames: list[bytes]) -> None:
        """Say so many things and share the frames, in about that time [s]."""
        deeds = [self._say] * messages + [lambda: self._share(frames)] * len(self._frames)
        self._chance.shuffle(deeds)
        pause_s = 2 * seconds / len(deeds)
        for deed in deeds:
            self.sent.append(await deed())
            if self._chance.random() < 0.5:  # else a burst
                await asyncio.sleep(self._chance.expovariate(1 / pause_s))

    def _where(self) -> tuple[Room, str | None, bool]:
        """A room, a thread in it, and whether the bot has to be called."""
        room = self.rooms[0]
        if len(self.rooms) > 1 and self._chance.random() < 0.4:
            room = self._chance.choice(self.rooms[1:])
        if room.direct:
            return room, None, False
        if not room.threads or self._chance.random() < 0.2:
            return room, None, True
        return room, self._chance.choice(room.threads[-4:]), False

    async def _say(self) -> Sent:
        room, thread, calls = self._where()
        drawn = self._chance.random()
        last = room.last.get(thread)
        if last is not None and last.frame is None and drawn < 0.06 and not calls:
            return await self._edit(room, last)
        heard = self._heard(room, thread)
        if heard and drawn < 0.2 and not calls:
            return await self._reply(room, thread, self._chance.choice(heard[-3:]))
        if not room.direct and drawn > 0.93:
            return await self._chat(room)
        return await self._utter(room, thread, self._words(), calls=calls)

    async def _utter(self, room: Room, thread: str | None, text: str, *, calls: bool) -> Sent:
        more = self._relation(thread) | self._call(calls=calls)
        event_id = await self.person.say(room.room_id, text, **more)
        return self._note(room, event_id, text=text, thread_id=thread, calls=calls)

    async def _edit(self, room: Room, last: Sent) -> Sent:
        text = self._words()
        event_id = await self.person.edit(room.room_id, last.event_id, text)
        # The correction of a message that called the bot stands in the thread that this began.
        thread = last.thread_id or (None if room.direct else last.event_id)
        # The edit of an edit would name the first message again: `keep` leaves that the last.
        return self._note(
            room, event_id, text=text, thread_id=thread, corrects=last.event_id, keep=False
        )

    async def _reply(self, room: Room, thread: str | None, event_id: str) -> Sent:
        text = self._chance.choice(("1", "2", "3", "yes", "no", self._words()))
        relation: Content = {"m.in_reply_to": {"event_id": event_id}}
        if thread is not None:
            relation |= {"rel_type": "m.thread", "event_id": thread, "is_falling_back": False}
        own_id = await self.person.say(room.room_id, text, **{"m.relates_to": relation})
        return self._note(room, own_id, text=text, thread_id=thread, replies_to=event_id)

    async def _chat(self, room: Room) -> Sent:
        """Something that is not for the bot, which has to keep silent."""
        text = f"nice light over there {self._number()}"
        event_id = await self.person.say(room.room_id, text)
        return Sent(event_id, room.room_id, self.person.user_id, False, False, text)

    async def _share(self, frames: list[bytes]) -> Sent:
        room, thread, calls = self._where()
        number = self._frames.popleft()
        more = self._relation(thread) | self._call(calls=calls)
        data = frames[number % len(frames)]
        event_id = await self.person.share_frame(room.room_id, data, **more)
        return self._note(room, event_id, thread_id=thread, frame=number, calls=calls)

    def _note(
        self, room: Room, event_id: str, *, calls: bool = False, keep: bool = True, **more: Any
    ) -> Sent:
        sent = Sent(event_id, room.room_id, self.person.user_id, room.direct, True, **more)
        if calls:
            room.threads.append(event_id)
        if keep:
            room.last[event_id if calls else sent.thread_id] = sent
        return sent

    def _call(self, *, calls: bool) -> Content:
        return {"m.mentions": {"user_ids": [self._bot_id]} if calls else {}}

    @staticmethod
    def _relation(thread: str | None) -> Content:
        if thread is None:
            return {}
        return {
            "m.relates_to": {
                "rel_type": "m.thread",
                "event_id": thread,
                "is_falling_back": True,
                "m.in_reply_to": {"event_id": thread},
            }
        }

    def _heard(self, room: Room, thread: str | None) -> list[str]:
        """What the bot has said in this conversation, as far as it has come here."""
        return [
            event.event_id
            for where, event in self.person.heard
            if where == room.room_id
            and event.sender == self._bot_id
            and (room.direct or self._thread_of(event) == thread)
        ]

    @staticmethod
    def _thread_of(event: Event) -> str | None:
        relation = event.source["content"].get("m.relates_to", {})
        thread: str | None = relation.get("event_id")
        return thread

    def _words(self) -> str:
        line = self._chance.choice(self._lines)
        return line.format(a=self._number(), b=self._number())

    def _number(self) -> float:
        return round(self._chance.uniform(3.0, 60.0), 2)
