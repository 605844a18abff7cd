"""One receiver at the scripted homeserver, and what syncs say there."""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Mapping, Sequence
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from nio import AsyncClient

from bot.dialogue.events import Event, TextReceived
from bot.matrix.chores import Chores
from bot.matrix.entering import Entering
from bot.matrix.errors import UnknownTokenError
from bot.matrix.keys import RoomKeys
from bot.matrix.policy import Policy
from bot.matrix.receiver import Receiver
from bot.matrix.room_reader import RoomReader
from bot.matrix.room_states import RoomStates
from bot.matrix.rooms import Rooms
from bot.matrix.server_api import ServerApi
from bot.matrix.session import Account
from bot.matrix.waiting import WaitingEvents
from bot.store.rows import OwnMessage
from bot.trouble import Troubles
from tests.matrix.scripted_server import USER_ID, Answer, ScriptedServer, error, json

ROOM = "!room:example.org"
ADA = "@ada:example.org"
NOW = datetime(2027, 6, 1, 12, tzinfo=UTC)
STAMP = int(NOW.timestamp() * 1000)
END = error(401, "M_UNKNOWN_TOKEN")


class Tables:
    """An inbox that fails as often as a test wants."""

    def __init__(self, *, fresh: bool = False, failures: int = 0) -> None:
        self.token = None if fresh else "t0"
        self.failures = failures
        self.taken: list[Event] = []
        self.moves: list[tuple[str, str]] = []
        self.own_messages = {"$own"}
        self.own_threads = {"$thread"}
        self.seen: dict[str, str] = {}

    async def take_in(self, events: Sequence[Event], sync_token: str | None) -> None:
        """Take in, or fail."""
        if self.failures:
            self.failures -= 1
            raise OSError("disk full; parameters: secret words")
        self.taken += events
        self.token = sync_token

    async def saw_own(self, seen: Mapping[str, str]) -> None:
        """Note own messages."""
        self.seen |= seen

    async def sync_token(self) -> str | None:
        """The stored token."""
        return self.token

    async def move_room(self, before: str, after: str) -> None:
        """Note the move."""
        self.moves.append((before, after))

    async def is_own_thread(self, room_id: str, thread_id: str) -> bool:
        """Whether the bot answered there."""
        return room_id == ROOM and thread_id in self.own_threads

    async def own_message(self, room_id: str, event_id: str) -> OwnMessage | None:
        """To whom the bot sent it: to Ada."""
        own = room_id == ROOM and event_id in self.own_messages
        return OwnMessage(ADA, "$thread") if own else None

    @property
    def texts(self) -> list[str]:
        """The words that came in."""
        return [event.text for event in self.taken if isinstance(event, TextReceived)]


Run = Callable[..., Any]


@pytest.fixture
def run(
    scripted: ScriptedServer,
    signed_in: AsyncClient,
    account: Account,
    no_pauses: list[float | None],
) -> Run:
    """Syncs until the server does not know the token any more."""
    assert no_pauses == []
    scripted.say("/keys/upload", json(one_time_key_counts={"signed_curve25519": 50}))
    scripted.say("/keys/query", json(device_keys={}))

    async def run_with(
        tables: Tables,
        *syncs: Answer,
        allowed: Sequence[str] = (ADA,),
        leaders: Sequence[str] = (),
        grace_s: float = 30,
    ) -> None:
        scripted.say("/sync", *syncs, END)
        policy = Policy.of(allowed, leaders)
        states, chores = RoomStates(signed_in, policy), Chores(Troubles())
        receiver = Receiver(
            signed_in,
            RoomKeys(signed_in, ServerApi(signed_in)),
            RoomReader(signed_in, ServerApi(signed_in), policy, tables, lambda: NOW, states),
            WaitingEvents(account.waiting_path, timedelta(seconds=grace_s)),
            Rooms(
                signed_in,
                ServerApi(signed_in),
                policy,
                tables,
                states,
                chores,
                Entering(account.entering_path),
            ),
            tables,
            lambda: NOW,
            poll_s=1.0,
        )
        working = asyncio.create_task(chores.run())
        with pytest.raises(UnknownTokenError):
            await asyncio.wait_for(receiver.run(), 30)
        async with asyncio.timeout(10):
            while chores.busy:  # noqa: ASYNC110  it rings no bell
                await asyncio.sleep(0.005)
        working.cancel()
        with pytest.raises(asyncio.CancelledError):
            await working

    return run_with


def said(
    number: int, body: str = "", sender: str = ADA, more: dict[str, Any] | None = None
) -> dict[str, Any]:
    """A text message."""
    content = {"msgtype": "m.text", "body": body or f"{number}"} | (more or {})
    return event(number, "m.room.message", content, sender)


def event(number: int, kind: str, content: Any, sender: str = ADA, **more: Any) -> dict[str, Any]:
    """An event as the server gives it."""
    return {
        "event_id": f"${number}",
        "type": kind,
        "sender": sender,
        "origin_server_ts": STAMP + number,
        "content": content,
        **more,
    }


def member(number: int, user_id: str, membership: str, before: str | None = None) -> dict[str, Any]:
    """Somebody is invited, enters or leaves."""
    unsigned = {"prev_content": {"membership": before}} if before else {}
    content = {"membership": membership}
    return event(number, "m.room.member", content, ADA, state_key=user_id, unsigned=unsigned)


def synced(
    token: str, *events: Any, limited: bool = False, state: Sequence[Any] = (), **more: Any
) -> Answer:
    """What sync says of one room."""
    timeline = {"events": list(events), "limited": limited, "prev_batch": f"before-{token}"}
    room = {"timeline": timeline, "state": {"events": list(state)}}
    return json(next_batch=token, rooms={"join": {ROOM: room}}, **more)


MEMBERS = [member(900, ADA, "join"), member(901, USER_ID, "join")]
CREW = [*MEMBERS, member(902, "@bo:example.org", "join"), member(903, "@cy:example.org", "join")]


def invited(room_id: str, inviter: str, **content: Any) -> Answer:
    """An invitation."""
    events = [
        {
            "type": "m.room.member",
            "state_key": USER_ID,
            "sender": inviter,
            "content": {"membership": "invite", **content},
        },
        {"type": "m.room.name", "state_key": "", "sender": inviter, "content": {"name": "falls"}},
    ]
    return json(
        next_batch=room_id, rooms={"invite": {room_id: {"invite_state": {"events": events}}}}
    )
