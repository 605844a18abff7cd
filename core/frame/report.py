"""All that was measured on one frame, as one result."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from core.frame.findings import (
    BorderFinding,
    Cast,
    Contrast,
    LookSeen,
    RawExposure,
    Sharpness,
    WaterArea,
)


class AreaKind(Enum):
    """What a clipped area is; the value is what files and reports carry."""

    WHITE_WATER = "white water"
    SPARKLE = "sparkle"
    SKY_GAP = "sky gap"
    LAMP = "lamp or sun"
    UNSURE = "unsure"


class Advice(Enum):
    """What the clipping asks for next."""

    KEEP = "keep"  # nothing clipped that matters, no room to speak of
    BRIGHTER = "brighter"  # room to the right, by `room_stops`
    DARKER = "darker"  # white water clipped, by `-room_stops`
    REFRAME = "reframe"  # a sky gap: move, tilt down, or bracket
    ASK = "ask"  # an area that decides could be water or sky


class SizeNote(Enum):
    """What the size of the picture says of how much can be trusted."""

    FULL = "full"  # as large as the camera makes them, or the camera's size unknown
    RESIZED = "resized"  # smaller than the camera's: small sparkle is lost, shares read low


@dataclass(frozen=True)
class CameraSettings:
    """Settings from the metadata; None where the file does not say (or says nonsense)."""

    shutter_s: float | None = None
    f_number: float | None = None
    iso: float | None = None
    focal_mm: float | None = None


@dataclass(frozen=True)
class FrameMetadata:
    """What the file says of itself, odd values already taken out."""

    settings: CameraSettings = CameraSettings()
    #: Focal length as on 36x24 mm, when stated [mm].
    focal_full_frame_mm: float | None = None
    #: Exposure bias dialled in [stops].
    bias_stops: float | None = None
    maker: str | None = None
    model: str | None = None
    #: The file comes from a phone, as far as maker, model and lens tell.
    from_phone: bool = False
    #: Local time without a zone, ISO 8601, as the camera stamps it; None if missing or odd.
    taken_at: str | None = None
    #: Zone that the camera states for it, minutes east of UTC; None if missing or odd.
    taken_offset_min: int | None = None
    #: There was readable camera metadata at all.
    present: bool = False


@dataclass(frozen=True)
class Box:
    """A rectangle in shares of the upright picture, origin at its top left, 0 to 1."""

    left: float
    top: float
    width: float
    height: float


@dataclass(frozen=True)
class ClippedArea:
    """One clipped area, or all sparkle together.

    `share` counts pixels with any channel clipped, over all pixels of the frame, 0 to 1;
    `widest` is the largest side of its box (for sparkle: of its largest point's box) over the
    long side of the frame; `channels` holds
    those of "red", "green", "blue" that are clipped in at least half of the area.
    """

    letter: str
    kind: AreaKind
    box: Box
    share: float
    widest: float
    channels: tuple[str, ...]
    #: How sure the kind is, 0 to 1, by the recipe's own rate of being right.
    confidence: float
    #: Its outer outline, across and down in shares of the upright picture, at most 64 points;
    #: none for sparkle, and in reports of an earlier version.
    contour: tuple[tuple[float, float], ...] = ()


@dataclass(frozen=True)
class Clipping:
    """Clipped pixels of a frame: shares 0 to 1 of all pixels, areas by size."""

    share: float
    by_channel: dict[str, float]
    areas: tuple[ClippedArea, ...] = ()
    #: Code from which a channel counts as clipped, 0 to 255.
    level: int | None = None


@dataclass(frozen=True)
class FrameReport:
    """The result of one frame check; plain values, fit for JSON and for a pickle."""

    file_kind: str  # "JPEG", "PNG", "TIFF", "HEIC", "raw"
    width: int  # of the upright picture [px]
    height: int
    metadata: FrameMetadata
    size_note: SizeNote
    clipping: Clipping
    #: Room to the right [stops]; negative: the step advised; None: can't be said.
    room_stops: float | None
    advice: Advice
    #: Strongest first; None where it was not measured, as in reports of an earlier version.
    borders: tuple[BorderFinding, ...] | None = None
    sharpness: Sharpness | None = None
    cast: Cast | None = None
    water: WaterArea | None = None
    look: LookSeen | None = None
    contrast: Contrast | None = None
    raw: RawExposure | None = None
    #: By how much the camera's own pictures clip before its sensor does [stops], where that was
    #: known and taken into account.
    preview_over_stops: float | None = None
    #: A page of a screen, which says nothing of light.
    of_screen: bool = False
    #: Even gaps part it into several pictures: what is measured is of none of them.
    several_in_one: bool = False
    #: An even mat or bars around the picture are left out of all that is measured.
    mat_left_out: bool = False
