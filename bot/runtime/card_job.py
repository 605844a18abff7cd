"""The job that draws a card."""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.dialogue.actions import DrawCard
from bot.pictures.card import draw_card
from bot.runtime.results import mentions
from bot.store.pictures import PictureFiles
from bot.store.rows import JobRow, Message, OutboxRow, PictureRow, Written, thread_of_answer
from bot.store.store import Store


@dataclass(frozen=True)
class CardJob:
    """Draws a card in a thread and sends it.

    Attributes:
        store: takes the message.
        files: keeps the card until it is sent, and as long as other pictures.
        scope: tells in which scope transaction ids hold at present.
        clock: tells the time.
        kept: for how long the card is kept.
    """

    store: Store
    files: PictureFiles
    scope: Callable[[], str]
    clock: Callable[[], datetime]
    kept: timedelta

    async def run(self, job: JobRow) -> Written | None:
        """Draw one card."""
        action = DrawCard.model_validate_json(job.input)
        card = await asyncio.to_thread(draw_card, action.title, action.lines, action.footer)
        name = await asyncio.to_thread(self.files.write, card)
        now = self.clock()
        picture = PictureRow(name, job.key.person_id, now + self.kept)
        message = self._message(job, action.caption, name, action.alt)
        written = await self.store.finish_job(job, now, pictures=(picture,), messages=(message,))
        if written is None:  # the person was forgotten meanwhile
            await asyncio.to_thread(self.files.delete, (name,))
        return written

    async def give_up(self, job: JobRow) -> Written | None:
        """Send what the card says in words: better than nothing at the trailhead."""
        action = DrawCard.model_validate_json(job.input)
        lines = (f"{line.label}: {line.value}" for line in action.lines)
        words = "\n".join((action.title, *lines, action.footer)).strip()
        message = self._message(job, words, None, "")
        return await self.store.finish_job(job, self.clock(), messages=(message,))

    def _message(self, job: JobRow, body: str, picture: str | None, alt: str) -> OutboxRow:
        root = thread_of_answer(job.origin)
        return OutboxRow(
            row_id=job.job_id,
            key=job.key,
            message=Message(body=body, alt=alt, mentions=mentions(job.origin), reply_to=root),
            scope=self.scope(),
            created_at=self.clock(),
            thread_id=root,
            picture=picture,
        )
