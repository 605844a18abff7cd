"""What the person of an event may use: from the settings, and from what is stored of them."""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass
from datetime import datetime

from pydantic import ValidationError

from bot.dialogue import company
from bot.dialogue.company import Talk
from bot.dialogue.context import Conversation
from bot.dialogue.events import Event, FrameReceived
from bot.dialogue.terms import Companion, Terms
from bot.store.pictures import PictureFiles
from bot.store.rows import PictureRow
from bot.store.store import Store


@dataclass(frozen=True)
class Limits:
    """What work may cost, and how long things are kept.

    Attributes:
        frames_days: after how many days stored pictures go.
        frame_bytes: largest shared file that is fetched.
        frames_a_day: how many frames of one person are measured within 24 hours; None: all.
        messages_a_minute: how many messages of one person are read within a minute; None: all.
        kept_bytes: how much one person's pictures may fill; None: as much as they do.
        leader_factor: how many times as much leaders may have of these three.
        silent_days: after how many days without a word what is known of a person goes.
        backup_days: for how long the operator keeps backups.
    """

    frames_days: int = 30
    frame_bytes: int = 60_000_000
    frames_a_day: int | None = None
    messages_a_minute: int | None = None
    kept_bytes: int | None = None
    leader_factor: int = 1
    silent_days: int = 400
    backup_days: int = 30


class Granting:
    """Makes the terms that the dialogue decides by.

    Args:
        store: knows which pictures are whose.
        files: knows how large they are.
        limits: what the operator grants.
        people: who is in a room, names by user ids.
    """

    def __init__(
        self,
        store: Store,
        files: PictureFiles,
        limits: Limits,
        people: Callable[[str], Mapping[str, str]],
    ) -> None:
        self._store = store
        self._files = files
        self._limits = limits
        self._people = people

    async def terms_of(self, event: Event) -> Terms:
        """What the person of this event may use now; the disk is looked at for frames alone."""
        limits = self._limits
        times = limits.leader_factor if event.origin.leader else 1
        terms = Terms(
            messages_a_minute=_times(limits.messages_a_minute, times),
            frames_a_day=_times(limits.frames_a_day, times),
            most_bytes=_times(limits.kept_bytes, times),
            frames_days=limits.frames_days,
            backup_days=limits.backup_days,
            company=await self._company(event) if company.is_asked_for(event) else (),
        )
        if terms.most_bytes is None or not isinstance(event, FrameReceived):
            return terms
        pictures = await self._store.pictures_of(event.origin.person_id)
        sizes = await asyncio.to_thread(self._files.sizes, [picture.name for picture in pictures])
        return terms.model_copy(
            update={
                "kept_bytes": sum(sizes),
                "room_again_at": room_again_at(pictures, sizes, terms.most_bytes),
            }
        )

    async def _company(self, event: Event) -> tuple[Companion, ...]:
        """The others of the room; a conversation that can't be read any more is left out."""
        talks = []
        for person_id, body, changed_at in await self._store.talks_in(event.origin.room_id):
            with suppress(ValidationError):
                told = Conversation.model_validate_json(body)
                talks.append(Talk(person_id=person_id, conversation=told, changed_at=changed_at))
        people = self._people(event.origin.room_id)
        return company.companions(people, talks, event.origin.person_id)


def _times(limit: int | None, factor: int) -> int | None:
    return None if limit is None else limit * factor


def room_again_at(
    pictures: Sequence[PictureRow], sizes: Sequence[int], most: int
) -> datetime | None:
    """When pictures of these sizes [bytes] will have gone so far that they fill less than `most`.

    None: they fill less already.
    """
    filled = sum(sizes)
    if filled < most:
        return None
    by_end = sorted(zip(pictures, sizes, strict=True), key=lambda pair: pair[0].expires_at)
    for picture, size in by_end:
        filled -= size
        if filled < most:
            return picture.expires_at
    return None
