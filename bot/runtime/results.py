"""From what `handle` gives back to the rows of one transaction."""

from __future__ import annotations

import logging
import secrets
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Any, Final, TypeAlias

from pydantic import ValidationError

from bot.dialogue.actions import (
    Action,
    CancelMeasuring,
    CancelTimer,
    CheckFrame,
    DrawCard,
    DropFrame,
    ForgetPerson,
    MeasureFrames,
    Say,
    SetTimer,
    TellData,
)
from bot.dialogue.context import Context
from bot.dialogue.events import Event, Origin
from bot.runtime.origins import answered_event
from bot.store.rows import (
    InboxRow,
    JobKind,
    JobRow,
    Message,
    OutboxRow,
    Part,
    Result,
    StoredText,
    TakeBack,
    TimerRow,
    thread_of_answer,
)

_LOG: Final = logging.getLogger(__name__)

#: The dialogue: pure, no clock, no network.
Handle: TypeAlias = Callable[[Context, Event, datetime], tuple[Context, tuple[Action, ...]]]
#: The message after something broke, with the reference number that the log has too.
Failure: TypeAlias = Callable[[Origin, str], Say]
#: Actions that become jobs.
_Work: TypeAlias = CheckFrame | MeasureFrames | DrawCard | TellData | DropFrame | ForgetPerson


def new_id() -> str:
    """A random id that no other row has."""
    return secrets.token_hex(16)


def read_parts(stored: Mapping[Part, StoredText], origin: Origin) -> Context:
    """The context of an event from its stored parts; what has no row is fresh.

    A part that can't be read any more starts afresh, so that nobody is locked out.
    """
    fresh = {part: _json(Context.fresh(origin), part) or "null" for part in Part}
    texts = fresh | {part: text.body for part, text in stored.items()}
    try:
        return _joined(texts)
    except ValidationError as error:
        broken = {Part(detail["loc"][0]) for detail in error.errors() if detail["loc"]} or Part
        names = ", ".join(sorted(part.value for part in broken))
        _LOG.error("unreadable in the store, started afresh: %s of %s", names, origin.person_id)
        return _joined(texts | {part: fresh[part] for part in broken})


def _joined(texts: Mapping[Part, str]) -> Context:
    members = ",".join(f'"{part.value}":{text}' for part, text in texts.items())
    return Context.model_validate_json(f"{{{members}}}")


def _json(context: Context, part: Part) -> str | None:
    model = getattr(context, part.value)
    return None if model is None else str(model.model_dump_json())


def _changed_parts(before: Context, after: Context) -> dict[Part, str | None]:
    """The parts that differ, as they are stored."""
    return {
        part: _json(after, part)
        for part in Part
        if getattr(before, part.value) != getattr(after, part.value)
    }


@dataclass(frozen=True)
class RowMaker:
    """Makes the rows that follow from one event.

    Attributes:
        inbox: the event.
        scope: in which transaction ids hold at present.
        now: the time of the answer.
    """

    inbox: InboxRow
    scope: str
    now: datetime

    def result(
        self,
        stored: Mapping[Part, StoredText],
        before: Context,
        after: Context,
        actions: tuple[Action, ...],
    ) -> Result:
        """All that the event changes."""
        result = Result(
            inbox=self.inbox,
            versions={part: text.version for part, text in stored.items()},
            changes=_changed_parts(before, after),
            at=self.now,
        )
        for action in actions:
            result = self._with(result, action)
        if result.forget is None:
            return result
        # Nothing may outlive the person: neither new jobs nor what else is said just now.
        unkept = tuple(replace(message, kept=False) for message in result.messages)
        return replace(result, messages=unkept, jobs=(), timers=())

    def _with(self, result: Result, action: Action) -> Result:
        more: dict[str, Any]
        match action:
            case Say():
                more = {"messages": (*result.messages, self.message(action))}
            case CheckFrame() | MeasureFrames() | DrawCard() | TellData():
                more = {"jobs": (*result.jobs, self._job(action))}
            case SetTimer():
                more = {"timers": (*result.timers, self._timer(action))}
            case CancelTimer():
                more = {"cancelled_timers": (*result.cancelled_timers, action.name)}
            case CancelMeasuring():
                cancelled = (*result.cancelled_frames, action.frame_event_ids)
                more = {"cancelled_frames": cancelled}
            case DropFrame():
                more = {"dropped_frames": (*result.dropped_frames, self._job(action))}
            case ForgetPerson():
                more = {"forget": self._job(action)}
        return replace(result, **more)

    def message(self, say: Say) -> OutboxRow:
        """One message to the conversation of the event."""
        event = self.inbox.event
        origin = event.origin
        return OutboxRow(
            row_id=new_id(),
            key=self.inbox.key,
            message=Message(
                body=say.body,
                formatted_body=say.formatted_body,
                notice=say.notice,
                reply_to=answered_event(event),
                mentions=mentions(origin),
                alt=say.alt,
                poll=say.poll,
                place=say.place,
            ),
            scope=self.scope,
            created_at=self.now,
            thread_id=thread_of_answer(origin),
            urgent=say.urgent,
            picture=say.picture,
            question=say.question or None,
        )

    def _job(self, action: _Work) -> JobRow:
        kind, job_input, frame_event_id = self._order(action)
        return JobRow(
            job_id=new_id(),
            kind=kind,
            key=self.inbox.key,
            origin=self.inbox.event.origin,
            input=job_input,
            due=self.now,
            created_at=self.now,
            frame_event_id=frame_event_id,
        )

    def _order(self, action: _Work) -> tuple[JobKind, str, str | None]:
        """The kind of work, what it is told, and the frame that it is about."""
        match action:
            case CheckFrame():
                return JobKind.CHECK_FRAME, action.model_dump_json(), action.frame_event_id
            case MeasureFrames():
                first = action.frames[0].event_id
                return JobKind.MEASURE_FRAMES, action.model_dump_json(), first
            case DrawCard():
                return JobKind.DRAW_CARD, action.model_dump_json(), None
            case TellData():
                return JobKind.TELL_DATA, "{}", None
            case DropFrame():
                return JobKind.TAKE_BACK, "{}", action.frame_event_id
            case ForgetPerson():
                farewell = self.message(action.farewell).message
                return JobKind.TAKE_BACK, TakeBack(farewell=farewell).model_dump_json(), None

    def _timer(self, action: SetTimer) -> TimerRow:
        origin = self.inbox.event.origin
        return TimerRow(new_id(), self.inbox.key, action.name, action.due, origin)


def mentions(origin: Origin) -> tuple[str, ...]:
    """Whom an answer calls: the person in a group room, nobody in a direct one."""
    return () if origin.direct else (origin.person_id,)
