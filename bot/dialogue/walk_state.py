"""A walk as it is stored: its step, the settings given, questions put, the light of both."""

from __future__ import annotations

from typing import Literal

from pydantic import AwareDatetime, Field

from bot.dialogue.facts import Facts
from bot.dialogue.lateness import Seen
from bot.dialogue.states import State
from bot.dialogue.stored import Stored
from bot.dialogue.trip import Trip
from core.camera import POLARISER_STOPS
from core.frame.findings import BorderFinding


class Question(Stored):
    """The question that stands open, by the name of its entry in the table of questions."""

    name: str
    asked_at: AwareDatetime
    #: What was put into its text, so that it can be put again.
    values: dict[str, str] = Field(default_factory=dict)
    #: How often it was put by now without an answer.
    times: int = 1
    #: Of which frame it is, and what of it, where another frame may bring the same question.
    about: str = ""


class Note(Stored):
    """One line of reasoning behind the last answer: a text and the values put in."""

    key: str
    values: dict[str, str] = Field(default_factory=dict)


class GivenSettings(Stored):
    """Settings that Linn gave last, exact values, with what was on the lens."""

    f_number: float
    shutter_s: float
    iso: float
    focal_mm: float | None = None
    focus_m: float | None = None
    polariser_on: bool = False
    nd_on_stops: float = 0.0

    @property
    def filter_stops(self) -> float:
        """What stands before the lens takes [stops]."""
        return self.nd_on_stops + (POLARISER_STOPS if self.polariser_on else 0.0)


class Walk(Stored):
    """One guided pass: its step, what is known of this visit, what was asked and answered."""

    state: State = State.ARRIVE
    facts: Facts = Facts()
    #: Who walks, when, and what the one at home is to know.
    trip: Trip = Trip()
    #: Answers to checks in words (`top`, `sides`, …) by their names.
    checks: dict[str, str] = Field(default_factory=dict)
    #: Questions that were put once and skipped or answered in part.
    asked: tuple[str, ...] = ()
    #: Checks that were put, each as often as it was.
    put: tuple[str, ...] = ()
    #: Slots that the person told last, for a number that only puts one of them right.
    told_last: tuple[str, ...] = ()
    given: GivenSettings | None = None
    #: The settings of the frame before this one, once another frame is begun.
    kept: GivenSettings | None = None
    #: Times that the person set, or called good, by their marks: these stay.
    stays: dict[str, Literal["set", "liked"]] = Field(default_factory=dict)
    #: The settings that the last plan started from.
    planned_from: GivenSettings | None = None
    #: What was wrong with a frame whose settings were asked for.
    complaint: Facts | None = None
    #: Brightness [stops, against the first settings given] known to hold, and to clip.
    clean_stops: float | None = None
    clipped_stops: float | None = None
    #: Where an upward search began [stops].
    first_stops: float | None = None
    #: When the light was seen on which the settings rest; None while they rest on none.
    light: Seen | None = None
    #: The light that was named with settings last, and when it was seen.
    light_said: str | None = None
    light_said_at: AwareDatetime | None = None
    #: Zone that the camera's stamps state [min east of UTC].
    offset_min: int | None = None
    #: Things at the borders of its frames that were said or asked already, and those to ask yet.
    borders_told: tuple[BorderFinding, ...] = ()
    borders_open: tuple[BorderFinding, ...] = ()

    @property
    def light_is_measured(self) -> bool:
        """Whether a test frame has shown how much of this light the white takes."""
        return self.clean_stops is not None or self.clipped_stops is not None
