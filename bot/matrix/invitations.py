"""Invitations: those from allowed people are accepted, the others get no answer at all."""

from __future__ import annotations

import asyncio
import logging
from typing import Final

from aiohttp import ClientError
from nio import AsyncClient, ErrorResponse, InviteMemberEvent, SyncResponse
from nio.responses import InviteInfo

from bot.matrix.policy import Policy

_log: Final = logging.getLogger(__name__)

#: Own rule: joining goes on at the homeserver when we stop waiting; sync must not stand still.
_JOIN_S: Final = 20.0
#: Own rule: with a look at each sync this is some minutes; a restart tries again.
_MOST_TRIES: Final = 20
_FINAL: Final = frozenset({"M_FORBIDDEN", "M_NOT_FOUND", "M_UNSUPPORTED_ROOM_VERSION"})


class Invitations:
    """Rooms that the bot was asked into.

    Args:
        client: signed in.
        policy: whose invitations count.
    """

    def __init__(self, client: AsyncClient, policy: Policy) -> None:
        self._client = client
        self._policy = policy
        self._tries: dict[str, int] = {}

    def note(self, response: SyncResponse) -> None:
        """Remember the invitations in a sync that come from allowed people."""
        for room_id, info in response.rooms.invite.items():
            inviter = _inviter(info, self._client.user_id)
            if self._policy.allows(inviter):
                self._tries[room_id] = 0
            else:
                _log.info("Ignored an invitation to %s by %s: not allowed", room_id, inviter)

    async def accept(self) -> None:
        """Enter the rooms that wait; those that cannot be entered yet stay for the next call."""
        for room_id in list(self._tries):
            self._tries[room_id] += 1
            if await self._entered(room_id) or self._tries[room_id] >= _MOST_TRIES:
                del self._tries[room_id]

    async def _entered(self, room_id: str) -> bool:
        """True when there is nothing more to try."""
        try:
            async with asyncio.timeout(_JOIN_S):
                answer = await self._client.join(room_id)
        except (ClientError, TimeoutError) as error:
            _log.warning("Could not enter %s: %s", room_id, type(error).__name__)
            return False
        if isinstance(answer, ErrorResponse):
            _log.warning("Could not enter %s: %s", room_id, answer.status_code)
            return answer.status_code in _FINAL
        _log.info("Entered %s", room_id)
        return True


def _inviter(info: InviteInfo, user_id: str) -> str:
    return next(
        (
            str(event.sender)
            for event in info.invite_state
            if isinstance(event, InviteMemberEvent)
            and event.state_key == user_id
            and event.membership == "invite"
        ),
        "",
    )
