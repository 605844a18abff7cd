"""What a conversation asks the runtime to do: say, check a frame, draw a card, remember, forget."""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import AwareDatetime, BaseModel, ConfigDict, Field

from bot.dialogue.events import MediaRef


class _Frozen(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid")


class Poll(_Frozen):
    """A question to be answered by a tap: its words, its options in the order of their numbers."""

    question: str
    options: tuple[str, ...]


class SharedPlace(_Frozen):
    """A location [deg] that somebody shared, with the time at which it was."""

    latitude: float
    longitude: float
    shared_at: AwareDatetime


class Say(_Frozen):
    """One message to the person.

    `body` reads well alone; `formatted_body` is the same in the small HTML subset of the
    protocol (`<b>`, `<br>`, `<code>`) or None. `keys` names the texts that it was made of, for
    tests and logs. `urgent` goes out before everything that waits in the room. `picture` is
    the name of a stored picture, for which `body` is then the caption and `alt` says in words
    what it shows. With `poll` or `place` the message is that poll or that place on a map; `body`
    says the same for clients that show no such thing.
    """

    kind: Literal["say"] = "say"
    body: str
    formatted_body: str | None = None
    keys: tuple[str, ...] = ()
    urgent: bool = False
    picture: str | None = None
    alt: str = ""
    #: Name of the question that the message ends with, "" without one.
    question: str = ""
    #: Progress and status are notices; questions and results are not.
    notice: bool = False
    poll: Poll | None = None
    place: SharedPlace | None = None


class CheckFrame(_Frozen):
    """Measure a shared frame; the answer comes back as a FrameChecked event."""

    kind: Literal["check_frame"] = "check_frame"
    frame_event_id: str
    media: MediaRef
    #: Long and short side of the person's camera in pixels, when known.
    camera_pixels: tuple[int, int] | None = None


class CardLine(_Frozen):
    """One line of a card: a short label above a large value."""

    label: str
    value: str


class DrawCard(_Frozen):
    """Draw the card (large black on white) and send it with this caption."""

    kind: Literal["draw_card"] = "draw_card"
    title: str
    lines: tuple[CardLine, ...]
    footer: str = ""
    caption: str
    alt: str


class SetTimer(_Frozen):
    """Send a TimerFired event to this conversation at `due`; the same name replaces the old."""

    kind: Literal["set_timer"] = "set_timer"
    name: str
    due: AwareDatetime


class CancelTimer(_Frozen):
    """Drop a timer that has not fired; unknown names are ignored."""

    kind: Literal["cancel_timer"] = "cancel_timer"
    name: str


class DropFrame(_Frozen):
    """Delete a shared frame, its pictures and its pending check."""

    kind: Literal["drop_frame"] = "drop_frame"
    frame_event_id: str


class ForgetPerson(_Frozen):
    """Delete every row and file of the person, then send `farewell`, which is not kept."""

    kind: Literal["forget_person"] = "forget_person"
    farewell: Say


class TellData(_Frozen):
    """Send the person all that is stored about them, as files, into this direct room."""

    kind: Literal["tell_data"] = "tell_data"


Action = Annotated[
    Say | CheckFrame | DrawCard | SetTimer | CancelTimer | DropFrame | ForgetPerson | TellData,
    Field(discriminator="kind"),
]
