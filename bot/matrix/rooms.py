"""Which rooms the bot is in: it enters, follows a room that is replaced, and leaves."""

from __future__ import annotations

import logging
from functools import partial
from typing import Final

from nio import AsyncClient, SyncResponse

from bot.matrix.chores import Chores
from bot.matrix.entering import Entering
from bot.matrix.errors import ServerAnswerError
from bot.matrix.invitations import Invitations
from bot.matrix.policy import Policy
from bot.matrix.room_states import RoomStates, Tombstone
from bot.matrix.server_api import ServerApi, transport_error
from bot.runtime.ports import Inbox, SendRefusedError

_log: Final = logging.getLogger(__name__)

#: Own rule: entering a large room of another server takes minutes; the homeserver goes on with it
#: when we stop waiting.
_ENTER_S: Final = 120.0


class Rooms:
    """The rooms of the bot.

    A sync is taken in by four calls: `note` first, `carry_over` and `keep` before its events are
    handed on, `act` when they are safe. What has to be asked of the server is done beside the
    sync loop.

    Args:
        client: signed in.
        api: requests to the homeserver.
        policy: who is allowed.
        inbox: moves what is stored of a room to the one that replaces it.
        states: what is known of the rooms.
        chores: does what takes time.
        entering: keeps the rooms to enter over a restart.
    """

    def __init__(
        self,
        client: AsyncClient,
        api: ServerApi,
        policy: Policy,
        inbox: Inbox,
        states: RoomStates,
        chores: Chores,
        entering: Entering,
    ) -> None:
        self._client = client
        self._api = api
        self._policy = policy
        self._inbox = inbox
        self._states = states
        self._chores = chores
        self._entering = entering
        #: Rooms that nobody tries to enter yet: those that the last process has left, at first.
        self._to_enter = dict(entering.rooms)
        self._invitations = Invitations(client, policy)
        #: Rooms that were replaced, and whose rows have moved: they are left at the next sync.
        self._moved: dict[str, str] = {}
        #: Ends that were followed once; where that was refused, the bot waits to be invited.
        self._followed: set[Tombstone] = set()

    def note(self, response: SyncResponse) -> None:
        """Learn what a sync says of rooms."""
        self._states.note(response)
        for room_id in response.rooms.leave:
            self._client.rooms.pop(room_id, None)
        replacements = frozenset(ended.replacement for _, ended in self._states.replaced())
        accepted = self._invitations.accepted(response, replacements)
        self._entering.add(accepted)
        self._to_enter |= accepted

    async def carry_over(self, response: SyncResponse) -> frozenset[str]:
        """Move what is stored of replaced rooms to the rooms that replace them.

        Returns:
            The rooms of this sync that replace others: what was said in them before the bot
            came was said to it all the same.
        """
        came = frozenset(
            room_id for room_id in response.rooms.join if self._states.replaces(room_id)
        )
        for room_id in sorted(came):
            before = self._states.replaces(room_id)
            if before is not None and before not in self._moved:
                await self._inbox.move_room(before, room_id)
                _log.info("%s is replaced by %s: what was kept goes on there", before, room_id)
        return came

    async def keep(self) -> None:
        """Keep the rooms to enter: with the sync's token saved, nobody tells of them again."""
        self._entering.save()

    def act(self, response: SyncResponse) -> None:
        """Enter, follow and leave."""
        self._leave_replaced(response)
        for room_id, inviter in self._to_enter.items():
            self._chores.add(f"entering {room_id}", partial(self._enter, room_id, inviter))
        self._to_enter = {}
        for room_id in response.rooms.join:
            self._follow(room_id)
            if self._invitations.is_false(room_id):
                self._chores.add(f"leaving {room_id}", partial(self._leave, room_id))
            elif self._is_deserted(room_id):
                self._chores.add(f"leaving {room_id}", partial(self._leave_deserted, room_id))
        for room_id in response.rooms.leave:
            self._chores.add(f"forgetting {room_id}", partial(self._forget, room_id))

    def _leave_replaced(self, response: SyncResponse) -> None:
        """Leave rooms that had moved before this sync: their last events are taken in by now."""
        for room_id in self._moved:
            self._chores.add(f"leaving {room_id}", partial(self._leave, room_id))
        self._moved = {}
        for room_id in response.rooms.join:
            before = self._states.replaces(room_id)
            if before is not None:
                self._moved[before] = room_id

    def _follow(self, room_id: str) -> None:
        """Go where an allowed person with the power to has moved the room; else be invited."""
        ended = self._states.of(room_id).tombstone
        if ended is None or ended.replacement in self._client.rooms:
            return
        if ended in self._followed:
            return
        self._followed.add(ended)
        if self._policy.allows(ended.sender):
            act = partial(self._enter, ended.replacement, ended.sender)
            self._chores.add(f"following {room_id} to {ended.replacement}", act)
        else:
            _log.info("%s was replaced by %s: waiting to be invited", room_id, ended.sender)

    def _is_deserted(self, room_id: str) -> bool:
        """Whether nobody who is allowed seems to be there.

        When nobody is allowed anywhere, that is more likely a slip in the settings: then the bot
        stays, in silence, since it could not come back into direct rooms by itself.
        """
        return not self._states.of(room_id).allowed and not self._policy.allows_nobody

    async def _enter(self, room_id: str, by: str) -> None:
        """Join; the person's own server knows the room, which its id need not tell any more."""
        server = by.partition(":")[2]
        query = {"via": server, "server_name": server}
        try:
            await self._api.call("POST", "join", room_id, body={}, query=query, within_s=_ENTER_S)
        except ServerAnswerError as error:
            if isinstance(transport_error(error), SendRefusedError):
                self._settle(room_id)
            raise
        self._settle(room_id)
        _log.info("Entered %s", room_id)

    def _settle(self, room_id: str) -> None:
        self._entering.drop(room_id)
        self._entering.save()

    async def _leave_deserted(self, room_id: str) -> None:
        """Leave when the server agrees that nobody is there: our own book may have a gap."""
        query = {"not_membership": "leave"}
        answer = await self._api.call("GET", "rooms", room_id, "members", query=query)
        self._states.note_members(room_id, answer.get("chunk"))
        if not self._states.of(room_id).allowed:
            await self._leave(room_id)

    async def _leave(self, room_id: str) -> None:
        await self._api.call("POST", "rooms", room_id, "leave", body={})
        self._states.drop(room_id)
        self._client.rooms.pop(room_id, None)
        _log.info("Left %s", room_id)
        await self._forget(room_id)

    async def _forget(self, room_id: str) -> None:
        """Take the room out of the account; a room that is forgotten already is no trouble."""
        try:
            await self._api.call("POST", "rooms", room_id, "forget", body={})
        except ServerAnswerError as error:
            if error.code not in {"M_UNKNOWN", "M_NOT_FOUND", "M_FORBIDDEN"}:
                raise
