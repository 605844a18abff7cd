"""What stays of measured frames, and of what the person said about them; frozen and storable."""

from __future__ import annotations

from datetime import datetime
from typing import Final, Literal, TypeAlias

from pydantic import AwareDatetime

from bot.dialogue.events import MeasuredKind
from bot.dialogue.facts import Facts
from bot.dialogue.stored import Stored
from core.frame.findings import BorderFinding

#: Answers about borders that are kept of one person, newest last (own rule).
MOST_BORDER_ANSWERS: Final = 200

#: Meant to be there, not meant to be there, nothing there.
BorderSaid: TypeAlias = Literal["yes", "no", "none"]


class Measured(Stored):
    """What is kept of a measured frame, to find those of one view and to measure it again."""

    shutter_s: float | None = None
    f_number: float | None = None
    iso: float | None = None
    focal_mm: float | None = None
    focal_full_frame_mm: float | None = None
    width: int
    height: int
    #: The camera's own stamp, without a zone; None where the file has none.
    stamped_at: datetime | None = None
    sent_at: AwareDatetime
    #: Where the person said that the water is (A1 to D4), and along which axis it flows [deg,
    #: anticlockwise from the horizontal].
    water_cells: tuple[str, ...] = ()
    axis_deg: float | None = None
    #: The person kept it, and it has taught their look.
    kept: bool = False
    #: Somebody else took it: it tells nothing of the walk.
    foreign: bool = False
    #: The short one for the leaves: it tells nothing of the water.
    leaf: bool = False
    #: Share of the frame that the water crossed, by the numbers of its own walk.
    share: float | None = None


class Together(Stored):
    """What was asked of frames last: to be corrected, or ended while it is under way."""

    what: MeasuredKind
    frames: tuple[str, ...]
    times_s: tuple[float, ...] = ()
    asked_at: AwareDatetime
    pending: bool = True


class BorderAnswer(Stored):
    """What the person said of one thing at a border, with its numbers as they were measured."""

    finding: BorderFinding
    said: BorderSaid
    at: AwareDatetime
    frame_event_id: str = ""


class ToldFrame(Stored):
    """A frame that was told in words, as it was marked, and what the person saw in it."""

    shutter_s: float
    f_number: float | None = None
    iso: float | None = None
    focal_mm: float | None = None
    focal_full_frame_mm: float | None = None
    #: Stops of the grey filter that was on for this frame alone.
    nd_on_stops: float | None = None
    #: Names of what was seen in it, as `bot.dialogue.meaning.told_sights` knows them.
    sights: tuple[str, ...] = ()
    #: The one that the person likes best.
    liked: bool = False
    #: Its share has taught the person's look, which each frame does once.
    taught: bool = False
    #: As bright as the meter wanted.
    metered: bool = False


class Review(Stored):
    """What was told at home of the frames of a day."""

    frames: tuple[ToldFrame, ...] = ()
    #: The fall, the place, the light as told at home; kit stays with the person.
    facts: Facts = Facts()
    #: Places in `frames` of those that were spoken of last.
    about: tuple[int, ...] = ()
    #: What the pictures are to show, in the person's words.
    intent: str = ""
    #: The name of the fall, as typed.
    place: str = ""
    #: Whether it was asked in which frame it shows best.
    asked_best: bool = False
    #: The person told that the frames are copied.
    copied: bool = False
