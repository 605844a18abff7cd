"""Workers: one for each conversation that has something to answer."""

from __future__ import annotations

import asyncio
import logging
import secrets
from collections import deque
from collections.abc import Awaitable, Callable, Iterable
from contextlib import suppress
from dataclasses import dataclass, replace
from datetime import datetime
from itertools import count
from typing import Final

from sqlalchemy.exc import SQLAlchemyError

from bot.dialogue.actions import Say
from bot.dialogue.events import (
    Event,
    FrameReceived,
    OtherReceived,
    PlaceReceived,
    TextReceived,
)
from bot.dialogue.terms import Terms
from bot.dialogue.texts import speaking
from bot.dialogue.texts.progress import progress_line
from bot.faults import where_it_broke
from bot.pauses import Wake, pause_s
from bot.runtime.results import Failure, Handle, RowMaker, read_parts
from bot.store.rows import ConflictError, ConversationKey, GoneError, InboxRow, Result, Written
from bot.store.store import Store
from bot.trouble import Trouble

_LOG: Final = logging.getLogger(__name__)

#: An event that was begun so often after a start, without an end, is taken for what stopped the
#: process (own rule).
_ATTEMPTS: Final = 3
#: Events of a person that get an answer, at once or when they are measured.
_ANSWERED: Final = (TextReceived, FrameReceived, PlaceReceived, OtherReceived)


@dataclass(frozen=True)
class Dialogue:
    """What answers: `handle`, `failure` for when it breaks, the words while it takes its time."""

    handle: Handle
    failure: Failure
    #: The line for the number of the frame that is measured, and of all.
    progress: Callable[[int, int], str] = progress_line


class Workers:
    """Answers events: in order within a conversation, side by side between conversations.

    A conversation has one worker at a time, which is its lock; the context is read by the worker,
    so it is never older than the answer before.

    Args:
        store: where contexts and results are.
        dialogue: what answers.
        scope: tells in which scope transaction ids hold at present.
        clock: tells the time.
        hand_on: takes what an answer has added to the store.
        terms: tells what the person of an event may use.
        trouble: tells the log when the store fails.
    """

    def __init__(
        self,
        store: Store,
        dialogue: Dialogue,
        *,
        scope: Callable[[], str],
        clock: Callable[[], datetime],
        hand_on: Callable[[Written], None],
        terms: Callable[[Event], Awaitable[Terms]],
        trouble: Trouble,
    ) -> None:
        self._store = store
        self._terms = terms
        self._trouble = trouble
        self._dialogue = dialogue
        self._scope = scope
        self._clock = clock
        self._hand_on = hand_on
        self._waiting: dict[ConversationKey, deque[InboxRow]] = {}
        self._idle: set[ConversationKey] = set()  # have rows, and no worker yet
        self._second_tries = asyncio.Lock()
        self._left_over = asyncio.Lock()
        self._wake = Wake()

    @property
    def busy(self) -> bool:
        """Whether some event is not answered yet."""
        return bool(self._waiting)

    def put(self, rows: Iterable[InboxRow]) -> None:
        """Take events that are in the store, in order."""
        for row in rows:
            if row.key not in self._waiting:
                self._waiting[row.key] = deque()
                self._idle.add(row.key)
            self._waiting[row.key].append(row)
        self._wake.ring()

    async def run(self) -> None:
        """Work until cancelled."""
        async with asyncio.TaskGroup() as group:
            while True:
                while self._idle:
                    group.create_task(self._work(self._idle.pop()))
                await self._wake.sleep()

    async def _work(self, key: ConversationKey) -> None:
        rows = self._waiting[key]
        while rows:
            written = await self._answer(rows[0])
            rows.popleft()
            if not rows:
                del self._waiting[key]
            self._hand_on(written)

    async def _answer(self, row: InboxRow) -> Written:
        """Answer one event; what the last process has left, one at a time.

        So the one that stopped it, if one did, is the only one that counts as begun.
        """
        if not row.left:
            return await self._answer_surely(row)
        async with self._left_over:
            return await self._answer_surely(row)

    async def _answer_surely(self, row: InboxRow) -> Written:
        """Answer one event; trouble with the database delays it and loses nothing."""
        for failures in count(1):
            try:
                if row.left:
                    row = await self._store.count_attempt(row)
                written = await self._answer_once(row)
            except GoneError:
                break
            except SQLAlchemyError as error:
                self._trouble.met(where_it_broke(error))
                await asyncio.sleep(pause_s(failures))
            else:
                self._trouble.over()
                return written
        return Written()

    async def _answer_once(self, row: InboxRow) -> Written:
        """Answer one event, from a context that nobody has changed meanwhile."""
        try:
            return await self._store.finish_event(await self._result(row))
        except ConflictError:
            pass
        # Another conversation of the person or the room was quicker. Those that lost a race try
        # again one at a time, so that a full room does not keep them racing.
        async with self._second_tries:
            while True:
                with suppress(ConflictError):
                    return await self._store.finish_event(await self._result(row))

    async def _result(self, row: InboxRow) -> Result:
        row = self._with_queue(await self._with_question(row))
        stored = await self._store.read_context(row.key)
        known = read_parts(stored, row.event.origin)
        before = known.model_copy(update={"terms": await self._terms(row.event)})
        rows = RowMaker(row, self._scope(), self._clock())
        if row.attempts >= _ATTEMPTS:
            said = self._failed(row, "stops the process", before.person.language)
            return rows.result(stored, before, before, said)
        try:
            after, actions = self._dialogue.handle(before, row.event, rows.now)
            return rows.result(stored, before, after, actions)
        except Exception as error:  # whatever breaks, the person hears of it and can go on
            broken = where_it_broke(error)
        said = self._failed(row, broken, before.person.language)
        return rows.result(stored, before, before, said)

    async def _with_question(self, row: InboxRow) -> InboxRow:
        """A reply to one of the bot's own messages carries the name of its question."""
        event = row.event
        if not isinstance(event, TextReceived) or event.replies_to is None:
            return row
        name = await self._store.question_of(row.key, event.replies_to)
        return replace(row, event=event.model_copy(update={"answers": name}))

    def _with_queue(self, row: InboxRow) -> InboxRow:
        """The event tells how many of the person's messages wait behind it."""
        waiting = [r.event for r in self._waiting.get(row.key, ()) if r.position > row.position]
        behind = sum(isinstance(event, _ANSWERED) and event.origin.is_for_linn for event in waiting)
        origin = row.event.origin.model_copy(update={"behind": behind})
        return replace(row, event=row.event.model_copy(update={"origin": origin}))

    def _failed(self, row: InboxRow, broken: str, language: str) -> tuple[Say, ...]:
        """Log what broke, and say so with the number under which it is logged."""
        reference = secrets.token_hex(3)
        event = row.event
        ids = (event.kind, event.origin.event_id, event.origin.person_id, event.origin.room_id)
        _LOG.error("reference %s: %s; %s %s of %s in %s", reference, broken, *ids)
        try:
            with speaking(language):
                return (self._dialogue.failure(event.origin, reference),)
        except Exception as error:
            _LOG.error("reference %s: no words for it: %s", reference, where_it_broke(error))
            return ()
