"""What can reach a conversation: messages, frames, places, results, timers."""

from __future__ import annotations

from datetime import datetime
from typing import Annotated, Literal, TypeAlias

from pydantic import AwareDatetime, BaseModel, ConfigDict, Field

from core.errors import FrameFault
from core.frame.comparison import Comparison
from core.frame.report import FrameReport


class Frozen(BaseModel):
    """Does not change, and takes no field that it does not know."""

    model_config = ConfigDict(frozen=True, extra="forbid")


class Origin(Frozen):
    """Where an event comes from, in the terms of the transport.

    `thread_id` is the id of the thread's first event, None outside threads. `addressed` is False
    only in a group room for a message that neither mentions the bot, nor replies to it, nor
    stands in a thread that the bot started. `leader` is True for named leaders, and in a group
    room for who leads it there; `teaches` for named leaders, and where none is named for who made
    the group room: in many rooms everybody has a leader's power. `aside` is True for what somebody
    says to others in a thread that is the bot's: it is read for danger of any kind, and for nothing
    else.
    """

    event_id: str
    room_id: str
    person_id: str
    thread_id: str | None = None
    direct: bool = True
    addressed: bool = True
    aside: bool = False
    leader: bool = False
    teaches: bool = False
    #: Names of people in the room that stand in its words.
    people: tuple[str, ...] = ()
    sent_at: AwareDatetime
    #: How old the event was when it was taken in [s]: large when the bot or the server was down.
    age_s: float = Field(default=0.0, ge=0.0)
    #: How many later events of the same conversation wait behind it; filled by the runtime.
    behind: int = Field(default=0, ge=0)

    @property
    def is_for_linn(self) -> bool:
        """Whether it is to be answered, whatever it says."""
        return self.addressed and not self.aside


class MediaRef(Frozen):
    """A shared file that waits on the homeserver (or, in the terminal, on disk)."""

    #: Address on the homeserver (`mxc://…`) or a file's path for the terminal.
    address: str
    #: What the client says of it; never trusted, never used as a path.
    stated_type: str = ""
    stated_bytes: int | None = None
    #: Key, iv and hashes of an encrypted attachment as its event gives them, else None.
    encryption: dict[str, object] | None = None
    #: When it was shared; set where it is kept, so that address and key go when their time is
    #: over.
    shared_at: AwareDatetime | None = None


class TextReceived(Frozen):
    """A text message, or the new text of an edited one."""

    kind: Literal["text"] = "text"
    origin: Origin
    text: str
    #: The id of the message that this one corrects (an edit).
    corrects: str | None = None
    #: The id of the message that this one replies to.
    replies_to: str | None = None
    #: The question of that message, when it is one of the bot's own; filled by the runtime.
    answers: str | None = None
    #: A tap on the message that it replies to: a reaction, or an answer to a poll. The text is
    #: then the number of an option, "yes", "no", or "" for a poll's answer that was taken back.
    tapped: bool = False


class FrameReceived(Frozen):
    """A shared picture (or a file that may be one); its caption is read like a text."""

    kind: Literal["frame"] = "frame"
    origin: Origin
    media: MediaRef
    caption: str = ""
    replies_to: str | None = None


class PlaceReceived(Frozen):
    """A shared location."""

    kind: Literal["place"] = "place"
    origin: Origin
    latitude: float = Field(ge=-90, le=90)
    longitude: float = Field(ge=-180, le=180)


class OtherReceived(Frozen):
    """Something that carries no words: a voice message, a video, a sticker."""

    kind: Literal["other"] = "other"
    origin: Origin
    what: Literal["voice", "video", "sticker", "undecryptable", "unknown"]


class Withdrawn(Frozen):
    """A message or frame that its sender took back."""

    kind: Literal["withdrawn"] = "withdrawn"
    origin: Origin
    event_id: str


class FrameChecked(Frozen):
    """The result of a frame check; legal in every state."""

    kind: Literal["frame_checked"] = "frame_checked"
    origin: Origin
    #: The event that shared the frame.
    frame_event_id: str
    #: Exactly one of the two is set.
    report: FrameReport | None = None
    fault: FrameFault | None = None
    fault_numbers: dict[str, float] = Field(default_factory=dict)
    #: Name of the marked picture among the stored ones, None when there is none.
    picture: str | None = None


#: What can be asked of frames that were shared before.
MeasuredKind: TypeAlias = Literal["compare", "average", "illustrate", "grid", "recheck"]


class NamedPicture(Frozen):
    """A stored picture: its name, what it shows, and of which of the frames (from 0), if of one.

    `shows` names what it is for: "whole", "water", "leaves", "average", "illustration", "grid",
    "marked"; the words for it are the dialogue's.
    """

    name: str
    shows: str
    frame: int | None = None


class FramesMeasured(Frozen):
    """The result of measuring frames together or again; legal in every state.

    `frame_event_ids` are the frames that could be read, in the order in which they were asked
    for: places in `comparison` and in `pictures` count along it. `left_out` says what was wrong
    with the others. With a `fault` there is no result at all.
    """

    kind: Literal["frames_measured"] = "frames_measured"
    origin: Origin
    what: MeasuredKind
    frame_event_ids: tuple[str, ...]
    left_out: dict[str, FrameFault] = Field(default_factory=dict)
    comparison: Comparison | None = None
    #: For a recheck, as of a first check.
    report: FrameReport | None = None
    #: To be shown in this order.
    pictures: tuple[NamedPicture, ...] = ()
    fault: FrameFault | None = None
    fault_numbers: dict[str, float] = Field(default_factory=dict)


class TimerFired(Frozen):
    """A reminder that came due."""

    kind: Literal["timer"] = "timer"
    origin: Origin
    name: str
    due: datetime


Event = Annotated[
    TextReceived
    | FrameReceived
    | PlaceReceived
    | OtherReceived
    | Withdrawn
    | FrameChecked
    | FramesMeasured
    | TimerFired,
    Field(discriminator="kind"),
]
