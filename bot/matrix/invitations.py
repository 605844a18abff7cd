"""Invitations: those from allowed people are accepted, the others get no answer at all."""

from __future__ import annotations

import logging
from typing import Final

from nio import AsyncClient, InviteMemberEvent, SyncResponse
from nio.responses import InviteInfo

from bot.matrix.policy import Policy

_log: Final = logging.getLogger(__name__)


class Invitations:
    """Who asks the bot into which room, and whether it goes.

    Args:
        client: knows who the bot is.
        policy: whose invitations count.
    """

    def __init__(self, client: AsyncClient, policy: Policy) -> None:
        self._client = client
        self._policy = policy
        #: Rooms entered as direct ones for somebody who may not bring the bot into others.
        self._must_be_direct: dict[str, str] = {}

    def accepted(self, response: SyncResponse, replacements: frozenset[str]) -> dict[str, str]:
        """The rooms to enter, and by whose invitation.

        Args:
            response: a sync.
            replacements: rooms that replace one in which the bot is: they are no new ones, so
                that anybody who is allowed may ask it over.
        """
        accepted = {}
        for room_id, info in response.rooms.invite.items():
            inviter = _inviter(info, self._client.user_id)
            if inviter is not None and self._is_accepted(room_id, inviter, replacements):
                accepted[room_id] = str(inviter.sender)
            else:
                sender = inviter.sender if inviter is not None else "nobody"
                _log.info("Ignored an invitation to %s by %s: not allowed", room_id, sender)
        return accepted

    def _is_accepted(
        self, room_id: str, invitation: InviteMemberEvent, replacements: frozenset[str]
    ) -> bool:
        inviter = str(invitation.sender)
        if not self._policy.allows(inviter):
            return False
        if room_id in replacements or self._policy.may_bring_into_groups(inviter):
            return True
        if invitation.content.get("is_direct") is not True:  # nio takes it out of the source
            return False
        self._must_be_direct[room_id] = inviter
        return True

    def is_false(self, room_id: str) -> bool:
        """Whether a room that was entered as a direct one turns out to be a group; asked once."""
        inviter = self._must_be_direct.pop(room_id, None)
        room = self._client.rooms.get(room_id)
        if inviter is None or room is None or room.member_count <= 2:
            return False
        _log.info("Left %s again: %s may not bring the bot into groups", room_id, inviter)
        return True


def _inviter(info: InviteInfo, user_id: str) -> InviteMemberEvent | None:
    return next(
        (
            event
            for event in info.invite_state
            if isinstance(event, InviteMemberEvent)
            and event.state_key == user_id
            and event.membership == "invite"
        ),
        None,
    )
