"""What a message tells: kit, geometry, settings, light, what is seen; every slot may be unknown."""

from __future__ import annotations

from collections.abc import Set as AbstractSet
from enum import Enum
from typing import Final

from pydantic import BaseModel, ConfigDict, Field


class Units(Enum):
    """Which units the person uses."""

    METRIC = "metric"
    IMPERIAL = "imperial"


class Flow(Enum):
    """Which way the water runs in the picture, or along the lens axis."""

    DOWN = "down"  # along the height of the frame, as a fall does
    ACROSS = "across"  # along the width of the frame
    TOWARDS = "towards"  # mostly along the lens axis, to or from the camera


class Blink(Enum):
    """What the camera's warning shows after a test frame."""

    NOTHING = "nothing"
    DOTS = "dots"  # sparkle
    PATCHES = "patches"  # in the body of the water
    SHEET = "sheet"  # all of the water
    SKY = "sky"  # a gap at the border


class Symptom(Enum):
    """What the person complains of in a frame that was taken."""

    NO_TEXTURE = "no_texture"  # mush, soup, cotton wool: the time is too long
    TOO_FROZEN = "too_frozen"  # hard, crunchy, like ice: the time is too short
    JUST_WHITE = "just_white"  # white without texture: clipped, or too long, or both
    TOO_BRIGHT = "too_bright"
    TOO_DARK = "too_dark"
    BLACK_ROCK = "black_rock"  # shadows or pools without detail
    SOFT_NEAR = "soft_near"
    SOFT_FAR = "soft_far"
    SOFT_ALL = "soft_all"
    SOFT_SPOTS = "soft_spots"  # pale round discs: drops on the front glass
    LEAVES_SMEARED = "leaves_smeared"
    GLARE = "glare"  # shine on wet rock or leaves
    BLUE_CAST = "blue_cast"
    LEANING = "leaning"  # walls and trunks lean inwards
    TOO_SMALL = "too_small"  # the fall is tiny in the picture


#: Complaints of too much light.
TOO_MUCH_LIGHT: Final = frozenset({Symptom.JUST_WHITE, Symptom.TOO_BRIGHT})


class Keep(Enum):
    """A setting that the person will not change; a filter, where they put it on."""

    TIME = "time"
    F_NUMBER = "f_number"
    ISO = "iso"
    POLARISER = "polariser"
    ND = "nd"


class Need(Enum):
    """What of ears or eyes a person told, so that messages fit."""

    HEARING = "hearing"
    SIGHT = "sight"
    COLOUR = "colour"


class LensFact(BaseModel):
    """A lens as typed: real focal lengths [mm], widest f-number at both ends when said."""

    model_config = ConfigDict(frozen=True)

    shortest_mm: float
    longest_mm: float
    widest_at_shortest: float | None = None
    widest_at_longest: float | None = None


#: How a message was read, no slots of it.
_NOTES: Final = frozenset({"units", "guessed", "unread", "ask_what_if"})
#: What a slot with several values holds where nothing was said.
_EMPTY: Final[tuple[object, ...]] = ((), frozenset())


class Facts(BaseModel):
    """All that was read from one message (or is known so far). None and () mean: not said.

    Settings are kept as typed (marked values: f/11 is 11.0, 1/60 s is 0.016666…); the exact
    values behind the marks are found by `core.series`. Lengths are metres, speeds metres a
    second, whatever was typed. `guessed` names slots whose unit was missing and was guessed
    from size; `units` is the system that the message itself shows.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    # kit
    camera_format: str | None = None  # a key of core.camera.FORMATS
    camera_name: str | None = None  # never interpreted beyond its format
    crop_factor: float | None = None  # by a frame's data: full-frame over real focal length
    megapixels: float | None = Field(default=None, gt=0)
    lenses: tuple[LensFact, ...] = ()
    has_tripod: bool | None = None
    has_polariser: bool | None = None
    nd_stops: tuple[float, ...] | None = None  # owned; () means: none
    automatic: bool | None = None  # the camera is on an automatic mode
    base_iso: float | None = None
    dial_halves: bool | None = None  # True: half stops
    hand_held: bool | None = None  # this frame: without support

    # geometry
    fall_height_m: float | None = None
    distance_m: float | None = None
    nearest_m: float | None = None
    farthest_m: float | None = None
    camera_height_m: float | None = None
    fall_width_m: float | None = None
    portrait: bool | None = None
    section: bool | None = None  # only a part of the fall, not the whole
    section_height_m: float | None = None  # how much of the fall the frame shall show
    at_crest: bool | None = None  # that section is the lip, where the water is slow still
    stream: bool | None = None  # a stream or cascade, no plunge

    # water
    water_speed_mps: float | None = None
    water_depth_m: float | None = None  # at a chute's crest, or where somebody would stand
    flow: Flow | None = None
    look: str | None = None  # value of core.water.Look

    # settings
    focal_mm: float | None = None
    f_number: float | None = None
    shutter_s: float | None = None
    iso: float | None = None
    polariser_on: bool | None = None
    nd_on_stops: float | None = None  # 0.0: "no filter on"
    keep: frozenset[Keep] = frozenset()
    small_steps: bool | None = None

    # what is seen
    light: str | None = None  # a key of core.light.LIGHTS
    meter_stops: float | None = None  # the meter's number: -0.333 is a third under
    change_stops: float | None = None  # "two stops too dark" -> +2: the change that is wanted
    blink: Blink | None = None
    histogram_at_right: bool | None = None
    symptoms: tuple[Symptom, ...] = ()
    wind: bool | None = None  # leaves move

    # the way out
    walk_km: float | None = None
    climb_m: float | None = None
    group_mixed: bool | None = None
    sunset: str | None = None  # "HH:MM" as typed

    # how it was read
    units: Units | None = None  # the unit system that the message itself shows
    guessed: tuple[str, ...] = ()
    #: Pieces of the message that look like numbers with meaning and could not be placed.
    unread: tuple[str, ...] = ()
    ask_what_if: bool = False  # "what if I go to f/8": answered without moving the walk

    def known(self) -> dict[str, object]:
        """The slots that are filled, by name; reading notes left out."""
        found: dict[str, object] = self.__dict__
        return {
            name: value
            for name, value in found.items()
            if (value is not None and name not in _NOTES)
            and (value not in _EMPTY or name == "nd_stops")
        }

    def only(self, slots: AbstractSet[str]) -> Facts:
        """The named slots alone."""
        return Facts().model_copy(update={slot: getattr(self, slot) for slot in slots})

    def updated(self, newer: Facts) -> Facts:
        """These facts with those of `newer` laid over them; lenses are added, not replaced.

        The same lens named again keeps the widest f-number that was told once.
        """
        changes = newer.known()
        if newer.lenses:
            by_ends = {(lens.shortest_mm, lens.longest_mm): lens for lens in self.lenses}
            for lens in newer.lenses:
                ends = (lens.shortest_mm, lens.longest_mm)
                known = by_ends.pop(ends, lens)
                by_ends[ends] = lens if lens.widest_at_shortest is not None else known
            changes["lenses"] = tuple(by_ends.values())
        return self.model_copy(update=changes)
