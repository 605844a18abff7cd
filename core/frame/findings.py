"""What each measurement of a frame found, as plain values."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from core.water import Look


class Border(Enum):
    """A side of the upright frame."""

    TOP = "top"
    RIGHT = "right"
    BOTTOM = "bottom"
    LEFT = "left"


class BorderKind(Enum):
    """What enters or glares there."""

    BRIGHT = "bright patch"
    SKY = "sky"
    LINE = "line"
    CUT = "cut shape"
    BUSY = "busy edge"  # three or more lines and cut shapes on one side, as one finding


@dataclass(frozen=True)
class BorderFinding:
    """One thing at a border.

    `position` is its centre along that border, from the top or from the left, 0 to 1; `width`
    is how much of the border it takes, 0 to 1; `depth` how far it reaches inwards, as a share
    of the frame's short side. `confidence` is how often a finding like it is right, 0 to 1;
    what is not `stated` is sure enough for a question only.
    """

    border: Border
    kind: BorderKind
    position: float
    width: float
    depth: float
    dark: bool
    confidence: float
    stated: bool


@dataclass(frozen=True)
class Shake:
    """Movement of the camera while the shutter was open."""

    #: Direction of the movement, from the frame's horizontal, anticlockwise, 0 to 180 [deg].
    angle_deg: float
    confidence: float


@dataclass(frozen=True)
class Sharpness:
    """How sharp the still parts of a frame are; relative statements only.

    `thirds` are the widths of the sharper edges in the top, middle and bottom third [px of the
    working copy], None where there are too few edges. `softest` is the third (0, 1, 2) that is
    clearly softer than the best one, None when none is.
    """

    thirds: tuple[float | None, float | None, float | None]
    softest: int | None = None
    shake: Shake | None = None
    #: The still parts are soft all over, and not along one direction: focus, or the lens.
    soft_all_over: bool = False
    #: Noise that is plainly there.
    noisy: bool = False


class Tint(Enum):
    """The cast of a surface that should be near grey."""

    NEUTRAL = "neutral"
    BLUE = "blue"
    WARM = "warm"
    GREEN = "green"
    MAGENTA = "magenta"


@dataclass(frozen=True)
class SurfaceCast:
    """The cast of the water's white or of the rock.

    `mired` is the shift of the white balance that would make it grey, positive: warmer [mired];
    None where no temperature would do.
    """

    tint: Tint
    mired: float | None


@dataclass(frozen=True)
class Cast:
    """White balance of water and rock; None where there is too little to measure."""

    water: SurfaceCast | None = None
    rock: SurfaceCast | None = None


class Doubt(Enum):
    """Why a look can't be told from a picture."""

    STILL_PARTS_SOFT = "still parts soft"
    CLIPPED = "clipped"
    TINY = "tiny"
    NO_WATER = "no water"
    WIDE = "wide"  # the picture allows looks too far apart


@dataclass(frozen=True)
class WaterArea:
    """Where the water is: cells of a grid of four rows (A to D) by four columns (1 to 4).

    `axis_deg` is the axis of its flow in the picture, from the horizontal, anticlockwise, 0 to
    180; None when it can't be told. `by_person` says that the person named the cells.
    """

    cells: tuple[str, ...]
    axis_deg: float | None = None
    by_person: bool = False


@dataclass(frozen=True)
class LookSeen:
    """The look of the water as the picture alone shows it: an interval, or a doubt.

    `share_low` and `share_high` bound the streak over the side of the frame along the flow, 0 to
    1; `look` is the likelier look and `neighbour` the other one, None when it is sure. With a
    `doubt` there is neither.
    """

    look: Look | None = None
    neighbour: Look | None = None
    share_low: float | None = None
    share_high: float | None = None
    doubt: Doubt | None = None


@dataclass(frozen=True)
class Contrast:
    """From the white water to the dark rock.

    `white_stops` is the level of the body of the water below clipping [stops, 0 or more], None
    when it is clipped; `stops` the range from the white to the dark rock that still shows
    texture, `at_least` so much where the white is clipped or the shadows are blocked.
    `offsets_stops` are the frames that hold it all, from this frame's exposure, darkest first:
    (0,) when this frame does, one below 0 when one darker frame does, else a bracket.
    """

    white_stops: float | None
    stops: float
    offsets_stops: tuple[float, ...] = (0.0,)
    at_least: bool = False


@dataclass(frozen=True)
class RawExposure:
    """What the sensor's own data say, by channel ("red", "green", "blue").

    `room_stops` is how far a channel's brightest body is below saturation [stops, 0 or more];
    `clipped` the share of its photosites that are saturated, 0 to 1. `preview_over_stops` is by
    how much the embedded preview overstates what is clipped, None where that can't be told.
    `saturation_found` says that the data show where each channel saturates; else what the file
    states was taken for some.
    """

    room_stops: dict[str, float]
    clipped: dict[str, float]
    preview_over_stops: float | None = None
    saturation_found: bool = False
