"""What is given, what may move, and what a plan says."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import Enum
from typing import Final, Literal

from core.camera import USUAL_NARROWEST_F, Camera
from core.domain import positive
from core.errors import OutOfDomainError, within
from core.exposure import Settings
from core.series import EQUAL_STOPS, Mark

Setting = Literal["time", "f_number", "iso", "polariser", "nd"]
Polariser = Literal["on", "off", "none"]

#: A change or a filter beyond this is a slip of the pen [stops] (own rule).
MOST_STOPS: Final = 20.0
#: No look begins later, or ends earlier, than this [s] (own rule).
LONGEST_S: Final = 3600.0
SHORTEST_S: Final = 1e-6


class Lever(Enum):
    """One thing that can be changed; the value is what texts are keyed by."""

    TIME = "time"
    ISO = "iso"
    APERTURE = "aperture"
    POLARISER = "polariser"
    ND = "nd"
    # beyond the dials and the filters at hand
    WAIT = "wait"  # for cloud or shade; when too dark: for more light
    AVERAGE = "average"  # several short frames for one long one
    SECTION = "section"  # a shaded part of the fall, with a longer lens
    SHORTER_TIME = "shorter_time"  # accept crisper water
    LONGER_TIME = "longer_time"  # accept silkier water
    STACK = "stack"  # wider open, several focus distances
    AVERAGE_ROCK = "average_rock"  # several frames at high ISO, for what does not move
    SUPPORT = "support"  # rest the camera on something
    BRACKET = "bracket"  # several brightnesses, for contrast


class Price(Enum):
    """What a step costs; `Step.numbers` says how much."""

    NOTHING = "nothing"  # no price, or a gain
    LOOK = "look"  # time_ratio: by how much the streaks grow
    NOISE = "noise"  # noise_ratio; clean_iso, top_iso
    DIFFRACTION = "diffraction"  # blur_um_before, blur_um_after, visible_um
    DEPTH = "depth"  # less depth, still what is needed; depth_f when that is known
    REFLECTIONS = "reflections"  # polariser on: bows and shine go, pools may turn black
    GLARE = "glare"  # polariser off: shine on wet rock returns
    TINT = "tint"  # a dark filter: tint, focus before mounting
    PATIENCE = "patience"
    BEADS = "beads"  # averaging: gaps show where streaks are shorter than the pause
    PICTURE = "picture"  # it becomes another picture
    WORK = "work"  # more frames, more to do at home


class Limit(Enum):
    """Why a lever does not go (further)."""

    KEPT = "kept"  # the person keeps that setting
    LOOK = "look"  # the water would leave the wished look
    STEADY = "steady"  # longer than can be held by hand
    CAMERA = "camera"  # the camera's dial ends there
    BASE_ISO = "base_iso"
    TOP_ISO = "top_iso"  # acceptable noise, or the owner's limit
    DEPTH = "depth"
    LENS = "lens"
    FORMAT = "format"  # diffraction
    FIXED = "fixed"  # a phone has one opening
    NOT_OWNED = "not_owned"
    IN_USE = "in_use"  # on already (or off already)
    NOT_FITTING = "not_fitting"  # owned, but no help: it would overshoot


class Note(Enum):
    """What must be said with a step."""

    FOCUS_FIRST = "focus_first"  # before a dark filter goes on
    METER_AFTER_TURNING = "meter_after_turning"
    CORNERS = "corners"  # polariser and ND together on a wide lens
    UNEVEN_SKY = "uneven_sky"  # polariser on a wide lens
    BULB = "bulb"  # longer than the dial: hold it, or a release
    BY_HAND = "by_hand"  # longer than can be held steady
    BEYOND_CLEAN = "beyond_clean"  # ISO above the clean range
    EXTENDED_ISO = "extended_iso"  # below base: no highlight room in it
    MANY_FRAMES = "many_frames"
    BURST_BY_HAND = "burst_by_hand"  # averaging without support: must be aligned
    WIND = "wind"
    LAST_RESORT = "last_resort"


@dataclass(frozen=True)
class Situation:
    """A frame that is too bright or too dark, and what may be done about it.

    All f-numbers, times and speeds are exact values (`core.series`).

    Args:
        settings: of the frame, filters as `polariser` and `nd_on` say.
        change_stops: change wanted [stops], -20 to 20; positive: brighter.
        camera: the camera; a fixed f-number of its sensor never moves.
        widest_f: smallest f-number of the lens at this focal length.
        narrowest_f: its largest f-number.
        depth_f: smallest f-number that the depth allows; None: unknown, then the low end of the
            format's best range.
        wished_f: f-number of least blur, to which a lens stopped down too far may return;
            None: the format's limit.
        look_times: shortest and longest time of the wished look [s], from 0, to inf; None: the
            look is unknown and the time, if not kept, is free.
        keep: settings that do not move.
        polariser: on the lens, in the bag, or not owned.
        nd_owned: strengths of the ND filters owned [stops].
        nd_on: ND on the lens [stops], 0 for none.
        tripod: the camera stands on something firm.
        small_steps: list the marks on the way.
        focal_mm: real focal length [mm]; None: unknown.
        near_m: nearest and farthest thing that must be sharp [m]; None: unknown.
        far_m: see `near_m`; inf allowed.
        steady_s: longest time that can be held by hand [s]; None: one over the focal length as
            on full frame (common practice).
        in_sun: the water is in the sun; None: unknown.
        wind: leaves move.
        contrast_stops: from the darkest to the brightest that shall show detail [stops].

    Raises:
        OutOfDomainError: a number is NaN or out of range, or a range is swapped.
    """

    settings: Settings
    change_stops: float
    camera: Camera
    widest_f: float
    narrowest_f: float = USUAL_NARROWEST_F
    depth_f: float | None = None
    wished_f: float | None = None
    look_times: tuple[float, float] | None = None
    keep: frozenset[Setting] = frozenset()
    polariser: Polariser = "none"
    nd_owned: tuple[float, ...] = ()
    nd_on: float = 0.0
    tripod: bool = True
    small_steps: bool = False
    focal_mm: float | None = None
    near_m: float | None = None
    far_m: float | None = None
    steady_s: float | None = None
    in_sun: bool | None = None
    wind: bool = False
    contrast_stops: float | None = None

    def __post_init__(self) -> None:
        """Refuse what cannot be."""
        within("change_stops", self.change_stops, "stops", -MOST_STOPS, MOST_STOPS)
        within("nd_on", self.nd_on, "stops", 0, MOST_STOPS)
        for stops in self.nd_owned:
            positive("nd_owned", stops, "stops", MOST_STOPS)
        positive("widest_f", self.widest_f, "")
        positive("narrowest_f", self.narrowest_f, "")
        within("widest_f", self.widest_f, "", 0, self.narrowest_f)
        self._check_unknowns()
        if self.look_times is not None:
            shortest_s, longest_s = self.look_times
            within("look_times", shortest_s, "s", 0, LONGEST_S)
            within("look_times", longest_s, "s", max(shortest_s, SHORTEST_S), math.inf)

    def _check_unknowns(self) -> None:
        for name in ("depth_f", "wished_f", "focal_mm", "near_m", "steady_s", "contrast_stops"):
            value = getattr(self, name)
            if value is not None:
                positive(name, value, "")
        if self.far_m is not None and not self.far_m > 0:
            raise OutOfDomainError("far_m", self.far_m, "m", 0, math.inf)

    @property
    def full_frame_focal_mm(self) -> float | None:
        """Focal length that sees as much on full frame [mm]; None: unknown."""
        if self.focal_mm is None:
            return None
        return self.focal_mm * self.camera.sensor.crop_factor

    @property
    def half_step(self) -> float:
        """Half a step of the camera's dial [stops]: what no dial can do better."""
        return 0.5 / self.camera.dial.value + EQUAL_STOPS


@dataclass(frozen=True)
class Step:
    """One lever moved.

    Args:
        lever: which.
        stops: change of brightness [stops], positive: brighter.
        settings: after the step, exact.
        polariser_on: after the step.
        nd_on: after the step [stops].
        price: what it costs.
        numbers: how much, in the units that the names carry.
        path: marks on the way, the last one the goal; empty unless small steps were wished.
        notes: what must be said with it.
        optional: may be left out; the frame then stays darker by `stops`.
    """

    lever: Lever
    stops: float
    settings: Settings
    polariser_on: bool
    nd_on: float
    price: Price
    numbers: Mapping[str, float] = field(default_factory=dict)
    path: tuple[Mark, ...] = ()
    notes: tuple[Note, ...] = ()
    optional: bool = False


@dataclass(frozen=True)
class Plan:
    """The levers to move, in order, and where that ends.

    Args:
        steps: one per lever, each on top of the one before.
        settings: at the end, exact; every value that moved lies on a mark of its dial.
        polariser: at the end.
        nd_on: at the end [stops].
        remaining_stops: wanted less reached [stops]; positive: still to be made brighter.
        met: reached within half a step of the dial; or, when darker was wanted, darker still by
            no more than two thirds, to be lifted afterwards.
        look_met: the time at the end gives the wished look; None: no look is wished.
        others: levers beyond dial and filter, each with what it would do from the end of the
            plan; never empty when not met.
        instead: what would spare the sharpness or the noise that a step costs, each from the plan
            without that step; empty when nothing is paid.
        blocked: for each lever, why it does not go further in the direction still wanted; empty
            when met.
        notes: what must be said with the whole.
    """

    steps: tuple[Step, ...]
    settings: Settings
    polariser: Polariser
    nd_on: float
    remaining_stops: float
    met: bool
    look_met: bool | None
    others: tuple[Step, ...] = ()
    instead: tuple[Step, ...] = ()
    blocked: tuple[tuple[Lever, Limit], ...] = ()
    notes: tuple[Note, ...] = ()
