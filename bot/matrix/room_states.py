"""What sync tells of rooms beyond nio: creators, who of the allowed is there, what replaced it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field

from nio import AsyncClient, SyncResponse

from bot.matrix.plain import Source, part_of, text_of
from bot.matrix.policy import Policy

#: From this power level on, somebody leads a room (own rule; the level that the specification's
#: default gives moderators).
LEADING_LEVEL = 50
#: The level that the specification gives who makes a room.
WHOLE_LEVEL = 100
_THERE = frozenset({"join", "invite"})


@dataclass(frozen=True)
class Tombstone:
    """A room's end: where it goes on, and who said so.

    Only somebody with the power to can send it, which the homeserver checks.
    """

    replacement: str
    sender: str


@dataclass
class RoomState:
    """One room.

    Attributes:
        creators: who made it; from room version 12 on their power is nowhere else to be read.
        made_by: who sent its first event.
        levels_by: who set the levels of power that hold.
        allowed: who of the allowed people is in it, or invited.
        predecessor: the room that it replaces.
        tombstone: what replaces it.
    """

    creators: frozenset[str] = frozenset()
    made_by: str | None = None
    levels_by: str | None = None
    allowed: set[str] = field(default_factory=set)
    predecessor: str | None = None
    tombstone: Tombstone | None = None


class RoomStates:
    """The rooms that the bot is in, kept up by sync; each event costs the same in any room.

    Args:
        client: knows power levels.
        policy: who is allowed.
    """

    def __init__(self, client: AsyncClient, policy: Policy) -> None:
        self._client = client
        self._policy = policy
        self._rooms: dict[str, RoomState] = {}

    def note(self, response: SyncResponse) -> None:
        """Take in what a sync says of rooms; rooms that the bot has left are dropped."""
        for room_id, info in response.rooms.join.items():
            room = self._rooms.setdefault(room_id, RoomState())
            for event in (*info.state, *info.timeline.events):
                self._take(room, event.source)
        for room_id in response.rooms.leave:
            self.drop(room_id)

    def note_members(self, room_id: str, members: object) -> None:
        """Take in a list of member events that was asked for."""
        room = self._rooms.setdefault(room_id, RoomState())
        for member in members if isinstance(members, list) else ():
            if isinstance(member, dict):
                self._take(room, member)

    def drop(self, room_id: str) -> None:
        """Forget a room."""
        self._rooms.pop(room_id, None)

    def of(self, room_id: str) -> RoomState:
        """The room; an empty one when it is not known."""
        return self._rooms.get(room_id, RoomState())

    def replaced(self) -> Iterator[tuple[str, Tombstone]]:
        """The rooms that have ended."""
        for room_id, room in list(self._rooms.items()):
            if room.tombstone is not None:
                yield room_id, room.tombstone

    def replaces(self, room_id: str) -> str | None:
        """The room that this one replaces, if both say so; anybody can claim one of the two."""
        before = self.of(room_id).predecessor
        if before is None or before == room_id:
            return None
        ended = self.of(before).tombstone
        return before if ended is not None and ended.replacement == room_id else None

    def made(self, room_id: str, person_id: str) -> bool:
        """Whether this person sent the room's first event.

        Who is named a creator beside may be anybody who was invited when it was made.
        """
        return person_id == self.of(room_id).made_by

    def teaches(self, room_id: str, person_id: str) -> bool:
        """Whether this person made the room, or was given all its power by who made it.

        In many rooms everybody has a leader's power; that sets nobody apart (own rule: at most
        half of the people there may have it).
        """
        room = self._client.rooms.get(room_id)
        if room is None or not self.leads(room_id, person_id):
            return False
        levels, people = room.power_levels, set(room.users) - {room.own_user_id}
        handed = {name for name in people if levels.get_user_level(name) >= WHOLE_LEVEL}
        by_maker = self.made(room_id, self.of(room_id).levels_by or "")
        given = by_maker and person_id in handed and 2 * len(handed) <= len(people)
        return given or self.made(room_id, person_id)

    def leads(self, room_id: str, person_id: str) -> bool:
        """Whether this person made the room or has the power of a moderator in it."""
        if person_id in self.of(room_id).creators:
            return True
        room = self._client.rooms.get(room_id)
        if room is None:
            return False
        level = room.power_levels.get_user_level(person_id)
        return isinstance(level, int) and level >= LEADING_LEVEL

    def _take(self, room: RoomState, source: Source) -> None:
        content = part_of(source, "content")
        if source.get("type") == "m.room.member":
            self._take_member(room, text_of(source.get("state_key")), content)
        elif source.get("state_key") != "":
            return
        elif source.get("type") == "m.room.create":
            room.creators = frozenset(_creators(source))
            room.made_by = text_of(source.get("sender")) or None
            room.predecessor = text_of(part_of(content, "predecessor").get("room_id")) or None
        elif source.get("type") == "m.room.power_levels":
            room.levels_by = text_of(source.get("sender"))
        elif source.get("type") == "m.room.tombstone":
            replacement = text_of(content.get("replacement_room"))
            sender = text_of(source.get("sender"))
            room.tombstone = Tombstone(replacement, sender) if replacement else None

    def _take_member(self, room: RoomState, person_id: str, content: Source) -> None:
        if not self._policy.allows(person_id) or person_id == self._client.user_id:
            return
        if content.get("membership") in _THERE:
            room.allowed.add(person_id)
        else:
            room.allowed.discard(person_id)


def _creators(source: Source) -> Iterable[str]:
    """Who made the room: the sender, and since version 12 those named beside.

    Before version 12 creators lead by their power level alone, which others can take from them.
    """
    content = part_of(source, "content")
    if not _has_lasting_creators(text_of(content.get("room_version"))):
        return
    yield text_of(source.get("sender"))
    more = content.get("additional_creators")
    yield from (text_of(name) for name in more if text_of(name)) if isinstance(more, list) else ()


def _has_lasting_creators(room_version: str) -> bool:
    """Whether creators stand above all power levels: from version 12 on (specification 1.16)."""
    return room_version.isascii() and room_version.isdigit() and int(room_version) >= 12
