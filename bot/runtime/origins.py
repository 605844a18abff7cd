"""Where events stand: threads of corrections, and origins of results and reminders."""

from __future__ import annotations

from datetime import datetime

from bot.dialogue.events import (
    Event,
    FrameChecked,
    FramesMeasured,
    Origin,
    TextReceived,
    TimerFired,
    Withdrawn,
)
from bot.store.rows import thread_of_answer


def in_its_thread(event: Event) -> Event:
    """The event, standing in the thread of the message that it corrects or takes back.

    In a group room an answer to a message outside threads starts a thread at that message; a
    correction of it belongs there, although its own event stands outside.
    """
    origin = event.origin
    root = _subject(event)
    if root is None or origin.direct or origin.thread_id is not None:
        return event
    return moved(event, root)


def withdrawn_from(event: Event) -> str | None:
    """What is taken back by an event that may stand in any of several threads, else None."""
    if not isinstance(event, Withdrawn) or event.origin.direct or event.origin.thread_id:
        return None
    return event.event_id


def moved(event: Event, thread_id: str) -> Event:
    """The event, standing in this thread."""
    origin = event.origin.model_copy(update={"thread_id": thread_id})
    return event.model_copy(update={"origin": origin})


def _subject(event: Event) -> str | None:
    match event:
        case TextReceived():
            return event.corrects
        case Withdrawn():
            return event.event_id
        case _:
            return None


def derived_origin(origin: Origin, event_id: str, sent_at: datetime, now: datetime) -> Origin:
    """The origin of an event that the runtime makes itself, in the same conversation.

    Args:
        origin: of the event that asked for it.
        event_id: unlike any of a homeserver's, and the same when it is made again.
        sent_at: when it was due.
        now: the present time.
    """
    root = thread_of_answer(origin)
    return origin.model_copy(
        update={
            "event_id": event_id,
            "thread_id": root if origin.direct else root or "",
            "sent_at": sent_at,
            "age_s": max(0.0, (now - sent_at).total_seconds()),
        }
    )


def answered_event(event: Event) -> str | None:
    """The event that the answer replies to, None for a plain message.

    A measured frame is named, since others may have come meanwhile. Otherwise only threads need
    it, for clients that know no threads.
    """
    if isinstance(event, FrameChecked):
        return event.frame_event_id
    if isinstance(event, FramesMeasured) and len(event.frame_event_ids) == 1:
        return event.frame_event_ids[0]
    root = thread_of_answer(event.origin)
    if root is None:
        return None
    if isinstance(event, TextReceived) and event.tapped:
        return event.replies_to  # a reaction is nothing that could be shown
    return root if isinstance(event, TimerFired | FramesMeasured) else event.origin.event_id
