"""What the store takes and gives: keys, rows, and the result of one handled event."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from enum import Enum
from typing import NamedTuple

from pydantic import AwareDatetime, BaseModel, ConfigDict

from bot.dialogue.actions import Poll, SharedPlace
from bot.dialogue.events import Event, Origin


@dataclass(frozen=True)
class ConversationKey:
    """One person in one thread of one room; the order of messages holds within it."""

    room_id: str
    person_id: str
    thread_key: str

    @property
    def values(self) -> dict[str, str]:
        """The key as columns."""
        return {
            "room_id": self.room_id,
            "person_id": self.person_id,
            "thread_key": self.thread_key,
        }


def conversation_key(origin: Origin) -> ConversationKey:
    """The conversation that an event belongs to.

    In a direct room all threads are one conversation. In a group room each thread is its own;
    a message outside threads belongs to the thread that its answer will start.
    """
    thread = "" if origin.direct else thread_of_answer(origin) or ""
    return ConversationKey(origin.room_id, origin.person_id, thread)


def thread_of_answer(origin: Origin) -> str | None:
    """The root of the thread in which the answer stands, None for the room itself.

    In a group room an empty thread is the room itself: so stands what came over from another
    room, where its thread stayed.
    """
    if origin.direct:
        return origin.thread_id
    return origin.event_id if origin.thread_id is None else origin.thread_id or None


class Part(Enum):
    """The four parts of a context; the value names the part's attribute."""

    CONVERSATION = "conversation"
    PERSON = "person"
    PLACE = "place"
    ROOM = "room"


@dataclass(frozen=True)
class StoredText:
    """One part of a context as it lies in its row."""

    body: str
    version: int


@dataclass(frozen=True)
class InboxRow:
    """An event that waits to be handled.

    `attempts` is how often it was begun of those times that it was `left`: found at a start, so
    that it may have stopped the process before.
    """

    position: int
    key: ConversationKey
    event: Event
    attempts: int = 0
    left: bool = False


class Message(BaseModel):
    """The content of a message to send, as the outbox keeps it until it is sent."""

    model_config = ConfigDict(frozen=True)

    body: str
    formatted_body: str | None = None
    notice: bool = False
    reply_to: str | None = None
    mentions: tuple[str, ...] = ()
    alt: str = ""
    poll: Poll | None = None
    place: SharedPlace | None = None
    #: The event whose words this message replaces.
    replaces: str | None = None
    #: What the attached file is called when it goes as a file and not as a picture.
    file_name: str = ""


@dataclass(frozen=True)
class OutboxRow:
    """A message that waits to be sent. `position` is 0 until the row is written.

    `row_id` is the transaction id, which holds within `scope` (a device). `kept` is False for
    messages of which not even the event id stays. `uploaded` is JSON, once the picture is on
    the homeserver. `question` names the question that the message puts.
    """

    row_id: str
    key: ConversationKey
    message: Message
    scope: str
    created_at: datetime
    thread_id: str | None = None
    urgent: bool = False
    kept: bool = True
    picture: str | None = None
    uploaded: str | None = None
    question: str | None = None
    position: int = 0


class OwnMessage(NamedTuple):
    """To whom the bot has sent an event, and in which thread (its root; None outside threads)."""

    person_id: str
    thread_id: str | None


class JobKind(Enum):
    """What slow work is there; the value is what the database stores."""

    CHECK_FRAME = "check_frame"
    MEASURE_FRAMES = "measure_frames"  # several together, or one again
    DRAW_CARD = "draw_card"
    TAKE_BACK = "take_back"  # redact own messages, delete files, say farewell
    TELL_DATA = "tell_data"  # write down all that is stored of a person, and send it


@dataclass(frozen=True)
class JobRow:
    """A piece of slow work. `input` is JSON whose shape follows from the kind."""

    job_id: str
    kind: JobKind
    key: ConversationKey
    origin: Origin
    input: str
    due: datetime
    created_at: datetime
    frame_event_id: str | None = None
    attempts: int = 0
    delays: int = 0


class Unsure(BaseModel):
    """A message that was deleted from the outbox, and may have reached its room before."""

    model_config = ConfigDict(frozen=True)

    room_id: str
    row_id: str
    created_at: AwareDatetime


class TakeBack(BaseModel):
    """Input of a TAKE_BACK job: what is to be taken out of rooms and folders."""

    model_config = ConfigDict(frozen=True)

    #: Room id and event id of each message.
    messages: tuple[tuple[str, str], ...] = ()
    #: Messages to be looked for first.
    unsure: tuple[Unsure, ...] = ()
    pictures: tuple[str, ...] = ()
    #: Nothing of the deleted rows may stay in the database file.
    shred: bool = False
    farewell: Message | None = None


@dataclass(frozen=True)
class TimerRow:
    """A reminder of one conversation; names are unique within it."""

    timer_id: str
    key: ConversationKey
    name: str
    due: datetime
    origin: Origin


@dataclass(frozen=True)
class PictureRow:
    """A picture in the data folder, and the frames that it shows: one, or several."""

    name: str
    person_id: str
    expires_at: datetime
    frame_event_id: str | None = None
    other_frames: tuple[str, ...] = ()


@dataclass(frozen=True)
class ProgressRow:
    """A message that tells how far slow work has come in a conversation.

    `row_id` is that of the message in the outbox, `edit_id` of the last one that replaced its
    words.
    """

    row_id: str
    key: ConversationKey
    done: int
    total: int
    edit_id: str | None = None


@dataclass(frozen=True)
class Result:
    """All that one handled event changes; written in one transaction or not at all.

    `versions` are the row versions of the parts that were read (a missing part: no row), and
    `changes` the new JSON of those that changed (None: the row goes). `forget` is the job that
    ends a `forget me`; with it, everything of the person goes in the same transaction.
    """

    inbox: InboxRow
    versions: Mapping[Part, int] = field(default_factory=dict)
    changes: Mapping[Part, str | None] = field(default_factory=dict)
    messages: tuple[OutboxRow, ...] = ()
    jobs: tuple[JobRow, ...] = ()
    timers: tuple[TimerRow, ...] = ()
    cancelled_timers: tuple[str, ...] = ()
    #: Jobs whose input the store fills with what is found under their frame.
    dropped_frames: tuple[JobRow, ...] = ()
    #: Measuring to be ended, of the conversation: by frames, all of it where there are none.
    cancelled_frames: tuple[tuple[str, ...], ...] = ()
    forget: JobRow | None = None
    #: When the event was answered.
    at: datetime | None = None


@dataclass(frozen=True)
class Written:
    """What a transaction has added (and taken away), for those who work on it next."""

    inbox: tuple[InboxRow, ...] = ()
    messages: tuple[OutboxRow, ...] = ()
    jobs: tuple[JobRow, ...] = ()
    timers: tuple[TimerRow, ...] = ()
    #: Positions of messages that were deleted before they were sent.
    unsent: tuple[int, ...] = ()
    #: Ids of jobs that were deleted: nobody wants their results any more.
    ended: tuple[str, ...] = ()
    #: Messages of progress that stand, at a start.
    progress: tuple[ProgressRow, ...] = ()


class ConflictError(Exception):
    """Another has written one of the rows since they were read: read again, then try again."""


class GoneError(Exception):
    """The row that this result belongs to is no longer there: drop the result."""
