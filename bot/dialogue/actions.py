"""What a conversation asks the runtime to do: say, check a frame, draw a card, remember, forget."""

from __future__ import annotations

from typing import Annotated, Final, Literal, Self

from pydantic import AwareDatetime, Field, model_validator

from bot.dialogue.events import Frozen, MeasuredKind, MediaRef
from core.water import Look

#: Frames that are compared, and that are averaged, at most: a ladder has six, an average more;
#: each costs the memory of its pixels until all are there (own rule).
MOST_COMPARED: Final = 6
MOST_TOGETHER: Final = 12


class Poll(Frozen):
    """A question to be answered by a tap: its words, its options in the order of their numbers."""

    question: str
    options: tuple[str, ...]


class SharedPlace(Frozen):
    """A location [deg] that somebody shared, with the time at which it was."""

    latitude: float
    longitude: float
    shared_at: AwareDatetime


class Say(Frozen):
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


#: A cell of the grid by which the water is named: four rows by four columns.
Cell = Annotated[str, Field(pattern="^[A-D][1-4]$")]


class CheckFrame(Frozen):
    """Measure a shared frame; the answer comes back as a FrameChecked event."""

    kind: Literal["check_frame"] = "check_frame"
    frame_event_id: str
    media: MediaRef
    #: Long and short side of the person's camera in pixels, when known.
    camera_pixels: tuple[int, int] | None = None
    #: Where the person said that the water is (cells A1 to D4), and along which axis it flows:
    #: from the horizontal, anticlockwise [deg]. Without either it is looked for.
    water_cells: tuple[Cell, ...] = ()
    axis_deg: float | None = None
    #: Of the words on its picture.
    language: str = "en"


class FrameRef(Frozen):
    """A frame that was shared before, and where its file still lies."""

    event_id: str
    media: MediaRef


class MeasureOptions(Frozen):
    """What is known or wished for when frames are measured again; all may be left out.

    `water_cells` and `axis_deg` are as in CheckFrame. `share_per_s` is how far the water runs in
    a second, over the side of the frame along the flow [1/s], least and most, where the walk knows
    it: times the shutter time it is a frame's share. `times_s` are the times to illustrate [s].
    `aim` is the share at which the wished look aims for this person, None: the usual one. `leaf` is
    the place of the short frame for the leaves among the frames, from 0.
    """

    wished: Look | None = None
    aim: float | None = None
    times_s: tuple[float, ...] = ()
    water_cells: tuple[Cell, ...] = ()
    axis_deg: float | None = None
    share_per_s: tuple[float, float] | None = None
    leaf: int | None = None
    camera_pixels: tuple[int, int] | None = None
    #: Of the words on the pictures.
    language: str = "en"


class MeasureFrames(Frozen):
    """Measure frames together, or one once more; the answer is a FramesMeasured event.

    `compare` lays frames of one view on each other; `average` makes one of them; `illustrate`
    draws the water of one at other times; `grid` draws the cells onto one; `recheck` checks one
    again with other options.

    Raises:
        ValueError: fewer or more frames than that takes.
    """

    kind: Literal["measure_frames"] = "measure_frames"
    what: MeasuredKind
    frames: tuple[FrameRef, ...]
    options: MeasureOptions = MeasureOptions()

    @model_validator(mode="after")
    def _has_as_many_as_it_takes(self) -> Self:
        fewest, most = {"compare": (2, MOST_COMPARED), "average": (2, MOST_TOGETHER)}.get(
            self.what, (1, 1)
        )
        if not fewest <= len(self.frames) <= most:
            raise ValueError(f"{self.what}: {fewest} to {most} frames, not {len(self.frames)}")
        return self


class CancelMeasuring(Frozen):
    """End what is being measured for this conversation, or waits for it; nothing is answered.

    With `frame_event_ids` only what has one of these frames ends.
    """

    kind: Literal["cancel_measuring"] = "cancel_measuring"
    frame_event_ids: tuple[str, ...] = ()


class CardLine(Frozen):
    """One line of a card: a short label above a large value."""

    label: str
    value: str


class DrawCard(Frozen):
    """Draw the card (large black on white) and send it with this caption."""

    kind: Literal["draw_card"] = "draw_card"
    title: str
    lines: tuple[CardLine, ...]
    footer: str = ""
    caption: str
    alt: str


class SetTimer(Frozen):
    """Send a TimerFired event to this conversation at `due`; the same name replaces the old."""

    kind: Literal["set_timer"] = "set_timer"
    name: str
    due: AwareDatetime


class CancelTimer(Frozen):
    """Drop a timer that has not fired; unknown names are ignored."""

    kind: Literal["cancel_timer"] = "cancel_timer"
    name: str


class DropFrame(Frozen):
    """Delete a shared frame, all pictures that show it, and whatever measures it."""

    kind: Literal["drop_frame"] = "drop_frame"
    frame_event_id: str


class ForgetPerson(Frozen):
    """Delete every row and file of the person, then send `farewell`, which is not kept."""

    kind: Literal["forget_person"] = "forget_person"
    farewell: Say


class TellData(Frozen):
    """Send the person all that is stored about them, as files, into this direct room."""

    kind: Literal["tell_data"] = "tell_data"


Action = Annotated[
    Say
    | CheckFrame
    | MeasureFrames
    | CancelMeasuring
    | DrawCard
    | SetTimer
    | CancelTimer
    | DropFrame
    | ForgetPerson
    | TellData,
    Field(discriminator="kind"),
]
