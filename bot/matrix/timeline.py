"""A room's events since the last sync, with the gap filled; from the bot's invitation on."""

from __future__ import annotations

import logging
from collections.abc import Sequence
from typing import Any, Final

from nio import (
    AsyncClient,
    BadEventType,
    Event,
    MessageDirection,
    RoomInfo,
    RoomMessagesResponse,
)

from bot.matrix.plain import Source, part_of
from bot.matrix.server_api import refusal

_log: Final = logging.getLogger(__name__)

#: A decrypted event, one that could not be decrypted, or one that is not formed as it should be.
RoomEvent = Event | BadEventType

#: Events in a page; homeservers give no more than some hundred (common practice).
PAGE: Final = 100
#: Own rule: 50,000 events, more than any absence leaves; keeps a broken server from looping us.
_MOST_PAGES: Final = 500

#: What sync brings: full timelines of joined rooms, and nothing that the bot does not read.
SYNC_FILTER: Final[dict[str, Any]] = {
    "presence": {"not_types": ["*"]},
    "account_data": {"not_types": ["*"]},
    "room": {
        "timeline": {"limit": PAGE},
        "ephemeral": {"not_types": ["*"]},
        "account_data": {"not_types": ["*"]},
    },
}


async def timeline(
    client: AsyncClient,
    room_id: str,
    info: RoomInfo,
    since: str | None,
    *,
    from_its_beginning: bool = False,
) -> list[RoomEvent]:
    """The room's events after `since`, oldest first, decrypted where there is a key.

    Args:
        client: signed in.
        room_id: the room.
        info: what sync said of it; its timeline may be cut.
        since: the sync token before this sync; None fills no gap.
        from_its_beginning: what was said before the bot came is read too, as in a room that goes
            on from another one.

    Raises:
        ServerAnswerError, aiohttp.ClientError, TimeoutError: a page could not be fetched.
    """
    events = list(info.timeline.events)
    if from_its_beginning:
        page = info.timeline.prev_batch
        return await _filled(client, room_id, events, page, None) if page else events
    if info.timeline.limited and info.timeline.prev_batch and since is not None:
        events = await _filled(client, room_id, events, info.timeline.prev_batch, since)
    return events[_beginning(events, client.user_id) :]


async def _filled(
    client: AsyncClient, room_id: str, events: list[RoomEvent], token: str, since: str | None
) -> list[RoomEvent]:
    """`events` with those between `since`, or the room's beginning, and them in front."""
    for _ in range(_MOST_PAGES):
        if since is not None and _joined_at(events, client.user_id) is not None:
            return events  # what lies before was not said to the bot
        page = await client.room_messages(
            room_id, start=token, end=since, direction=MessageDirection.back, limit=PAGE
        )
        if not isinstance(page, RoomMessagesResponse):
            raise refusal(page)
        events = [*reversed(page.chunk), *events]
        if not page.end or page.end == token:
            return events
        token = page.end
    _log.error("Gave up filling the gap in %s after %d pages", room_id, _MOST_PAGES)
    return events


def _beginning(events: Sequence[RoomEvent], user_id: str) -> int:
    """Index of the first event that may be for the bot: its invitation, else its entry, else 0."""
    joined_at = _joined_at(events, user_id)
    if joined_at is None:
        return 0
    invited = [
        index
        for index, event in enumerate(events[:joined_at])
        if _membership(event.source, user_id) == "invite"
    ]
    return invited[-1] if invited else joined_at


def _joined_at(events: Sequence[RoomEvent], user_id: str) -> int | None:
    """Index of the bot's last entry into the room, None when it was in all the time."""
    entries = [
        index
        for index, event in enumerate(events)
        if _membership(event.source, user_id) == "join" and not _was_in(event.source)
    ]
    return entries[-1] if entries else None


def _membership(source: Source, user_id: str) -> object:
    """What a member event says of this person, None for all other events."""
    if source.get("type") != "m.room.member" or source.get("state_key") != user_id:
        return None
    return part_of(source, "content").get("membership")


def _was_in(source: Source) -> bool:
    """Whether a member event only changes name or picture."""
    before = part_of(part_of(source, "unsigned"), "prev_content")
    return before.get("membership") == "join"
