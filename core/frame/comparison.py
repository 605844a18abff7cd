"""What a comparison of several frames of one view found, as plain values."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from core.water import Look


class Misfit(Enum):
    """Why two frames can't be laid on each other."""

    OTHER_VIEW = "other view"
    OTHER_SHAPE = "other shape"  # the sides stand in another ratio: cropped or turned
    FEW_MARKS = "few marks"  # too little that is still and has edges


class Caveat(Enum):
    """What speaks against a frame that is recommended for its water."""

    CLIPPED = "clipped"  # more of it clips than of another frame that nearly does as well
    LEAVES_MOVED = "leaves moved"
    STILL_PARTS_SOFT = "still parts soft"  # shaken or out of focus against the others
    LOOK_NOT_SURE = "look not sure"


class Reason(Enum):
    """Why this frame is recommended for the wished look."""

    SHARE = "share"  # speed, time and distance say that it has the look
    SEEN = "seen"  # the picture itself shows the look
    SMOOTHEST = "smoothest"  # nothing tells the looks: it has the smoothest water of them
    CRISPEST = "crispest"  # likewise, the crispest
    BETWEEN = "between"  # likewise, one between the crispest and the smoothest
    TOO_SHORT = "too short"  # none reaches the look: it comes nearest, a longer time is needed
    TOO_LONG = "too long"  # likewise, a shorter time is needed
    ALONE = "alone"  # the others could not be laid on it
    ALIKE = "alike"  # the water is alike in all; the other measures decide


@dataclass(frozen=True)
class FrameMeasures:
    """One frame beside the others.

    `texture` is the fine detail of the water over that of the still parts, in that of the frame
    with the crispest water: 0 to 1, 1 for that frame. `foliage_motion` is the part of the leaves'
    fine detail that is missing against the frame with the sharpest leaves, 0 to 1. `sharpness` is
    the fine detail of the still parts over that of the sharpest frame, 0 to 1. None: not measured.
    `share` is the streak over the side of the frame along the flow, when the walk knows it.
    """

    shutter_s: float | None
    texture: float | None
    clipped_share: float
    foliage_motion: float | None = None
    sharpness: float | None = None
    share: float | None = None
    #: By the share where it is known, else as the picture shows it.
    look: Look | None = None


@dataclass(frozen=True)
class FramePair:
    """Two frames, `first` and `second`: places among the compared ones, from 0.

    `shift_px` is where the second's picture lies against the first's: to the right and down
    [px of the first frame, full size]. Stops: positive where the second is brighter;
    `measured_stops` is "about", since JPEGs come with a tone curve. `disagree` says that the
    metadata state another difference than the pixels show, or settings that differ with pixels
    that are the same. `shared_spots` counts soft round spots at the same places of two frames of
    other views: drops on the front glass, perhaps.
    """

    first: int
    second: int
    misfit: Misfit | None = None
    shift_px: tuple[float, float] | None = None
    turned_deg: float | None = None
    measured_stops: float | None = None
    #: By time, f-number and ISO; None where the metadata don't say.
    stated_stops: float | None = None
    disagree: bool = False
    #: The two are one picture, pixel by pixel.
    identical: bool = False
    #: The one with the smoother water; None: alike, or not told.
    smoother: int | None = None
    shared_spots: int = 0

    @property
    def aligned(self) -> bool:
        """The second frame was laid on the first."""
        return self.misfit is None


@dataclass(frozen=True)
class Suited:
    """The frame that suits a look best."""

    look: Look
    frame: int


@dataclass(frozen=True)
class Gap:
    """What lies between two neighbours in the order of their water.

    `stops` is how far their times lie apart; `shutter_s` the time in the middle [s].
    """

    crisper: int
    smoother: int
    stops: float
    shutter_s: float


@dataclass(frozen=True)
class Recommendation:
    """The frame for the wished look, why, and what to mind.

    `try_shutter_s` is the time that should give the look when no frame has it. `leaves_from` is
    a frame whose leaves are sharper, to take them from.
    """

    wished: Look
    frame: int
    reason: Reason
    caveats: tuple[Caveat, ...] = ()
    try_shutter_s: float | None = None
    leaves_from: int | None = None


@dataclass(frozen=True)
class LeafVerdict:
    """A short frame for the leaves, beside the frame for the water.

    `stops` is how much brighter the leaf frame is ("about"); it `matches` within
    `compare.LEAF_MATCH_STOPS`, else it has to be lifted or darkened by that before it is laid in.
    """

    leaf: int
    main: int
    sharp: bool
    stops: float
    matches: bool


class LeftOut(Enum):
    """Why a frame did not go into an average."""

    MISFIT = "misfit"  # not the same view, shape or too few marks
    MOVED = "moved"  # something large moved that is not the water
    BRIGHTNESS = "brightness"  # too far from the others
    SAME = "same"  # the same picture once more: it adds no time and takes no noise


@dataclass(frozen=True)
class LeftOutFrame:
    """A frame that did not go in, and why."""

    frame: int
    why: LeftOut


@dataclass(frozen=True)
class AverageMade:
    """An average of frames in linear light.

    `noise` is the noise of the average over that of one frame, measured, None where it can't be
    (fewer than four frames, nothing smooth); `law` is what 1 / sqrt(n) says. `total_s` is the sum
    of the times: the average looks as if so long had been exposed, with gaps. `texture` is the
    detail of its water over that of one frame's.
    """

    used: tuple[int, ...]
    left_out: tuple[LeftOutFrame, ...]
    law: float
    noise: float | None = None
    total_s: float | None = None
    texture: float | None = None
    look: Look | None = None


class Refusal(Enum):
    """Why there is no illustration of another time."""

    NOT_PLUNGING = "not plunging"  # a stream: streaks would run over its stones
    SOFT = "soft"  # the frame is out of focus or shaken
    WATER_UNKNOWN = "water unknown"  # nobody said where the water is
    SMOOTH_ALREADY = "smooth already"  # long exposures can't be made shorter
    SPEED_UNKNOWN = "speed unknown"  # neither speed nor share is known
    TINY = "tiny"


@dataclass(frozen=True)
class IllustratedTime:
    """One strip of an illustration: a time [s] and its streak's share of the side, low to high."""

    shutter_s: float
    share_low: float
    share_high: float
    look: Look


@dataclass(frozen=True)
class IllustrationMade:
    """How the water might look at other times; an illustration, not a photograph."""

    times: tuple[IllustratedTime, ...] = ()
    refusal: Refusal | None = None
    axis_deg: float | None = None


@dataclass(frozen=True)
class Comparison:
    """Several frames of one person and one view.

    `order` lists the frames whose water was compared, crispest first. `pairs` has each other
    frame against the one that aligns best with the rest. `water_cells` is where the water was
    taken to be (A1 to D4): named, proposed, or where the frames differ; empty: nowhere.
    """

    frames: tuple[FrameMeasures, ...]
    pairs: tuple[FramePair, ...] = ()
    order: tuple[int, ...] = ()
    water_cells: tuple[str, ...] = ()
    suited: tuple[Suited, ...] = ()
    gaps: tuple[Gap, ...] = ()
    recommendation: Recommendation | None = None
    leaf: LeafVerdict | None = None
    average: AverageMade | None = None
    illustration: IllustrationMade | None = None
