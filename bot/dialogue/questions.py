"""Every question that Linn puts: its text, what a free answer may fill, its numbered options."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Final

from bot.dialogue.facts import Units


@dataclass(frozen=True)
class Asked:
    """One question.

    Args:
        name: what the conversation stores.
        expects: slots of `Facts` that a bare number may fill.
        options: values of the numbered replies in their order; the text of option `x` of the
            question `q` has the key `ask.q.x`, the question itself `ask.q`.
        passing: belongs to an interruption; the walk's own question waits meanwhile.
        of_a_frame: asks about something of one frame; another frame may bring the same question.
    """

    name: str
    expects: tuple[str, ...] = ()
    options: tuple[str, ...] = ()
    passing: bool = False
    of_a_frame: bool = False

    @property
    def key(self) -> str:
        """Key of the question's own text."""
        return f"ask.{self.name}"

    @property
    def option_keys(self) -> tuple[str, ...]:
        """Keys of the options' texts in the order of their numbers."""
        return tuple(f"{self.key}.{value}" for value in self.options)


_BLINK: Final = ("nothing", "dots", "patches", "sheet")

_LIGHT: Final = ("yes", "darker", "brighter", "left")

_QUESTIONS: Final = (
    Asked("geometry", ("fall_height_m", "distance_m", "nearest_m")),
    Asked("height", ("fall_height_m",)),
    Asked("distance", ("distance_m",)),
    Asked("nearest", ("nearest_m",)),
    Asked("stream", ("distance_m", "nearest_m", "water_speed_mps")),
    Asked("water_speed", ("water_speed_mps",)),
    Asked("walk_out", ("walk_km", "climb_m", "sunset"), passing=True),
    Asked("plan_start", (), passing=True),
    Asked("plan_hour", (), passing=True),
    Asked("plan_party", (), passing=True),
    Asked("note", (), passing=True),
    Asked("kit", ("camera_format", "lenses")),
    Asked("format", (), ("full_frame", "aps_c", "four_thirds", "one_inch", "phone")),
    Asked("lenses", ("lenses", "focal_mm")),
    Asked("focal", ("focal_mm",)),
    Asked("other_lens", ("focal_mm",)),  # a lens is read anyway; "100 mm" is what a zoom is set to
    Asked("too_near", (), ("farther", "section")),
    Asked("section", ("section_height_m",)),
    Asked("top", (), ("covered", "sky", "lip")),
    Asked("sides", (), ("clean", "twig", "bright")),
    Asked("anchor", (), ("clear", "none", "cut")),
    Asked("light", ("light",), ("sun", "cloud", "trees", "dark")),
    Asked("blink", ("shutter_s",), _BLINK),
    Asked("blink_again", ("shutter_s",), _BLINK),
    Asked("sky_gap", (), ("moved", "bracket")),
    Asked("strength", ("nd_on_stops",), passing=True),
    Asked("settings", ("f_number", "shutter_s", "iso")),
    Asked("seen", ("shutter_s",), ("no_texture", "too_white", "too_dark", "soft", "nothing")),
    Asked("phone_again", ("shutter_s",), ("nothing", "white", "dark", "mush")),
    Asked("leaves", (), ("no", "yes")),
    Asked("next", (), ("again", "other_lens", "finish")),
    Asked("rear_screen", (), ("yes", "no")),
    Asked("screen_says", (), ("nothing", "dots", "patches", "sheet", "histogram")),
    Asked("area", (), ("water", "sky", "neither"), of_a_frame=True),
    Asked("border", (), ("yes", "no", "none"), passing=True, of_a_frame=True),
    Asked("glass", (), ("dry", "drops"), passing=True, of_a_frame=True),
    Asked("look_odds", (), ("numbers", "picture"), passing=True, of_a_frame=True),
    Asked("water_cells", (), ("yes", "no"), passing=True, of_a_frame=True),
    Asked("cause", (), ("first", "second"), passing=True),
    Asked("out_there", (), ("no", "yes"), passing=True),
    Asked("safe", (), ("not_yet", "yes"), passing=True),
    Asked("in_danger", (), ("no", "yes"), passing=True),
    Asked("resume", (), ("go_on", "new"), passing=True),
    Asked("light_still", (), _LIGHT, passing=True),
    Asked("light_still_frame", (), (*_LIGHT, "clock"), passing=True),
    Asked("restart", (), ("go_on", "new"), passing=True),
    Asked("forget", (), ("keep", "delete"), passing=True),
)

#: Questions whose examples exist in feet as well; `ask.q_feet` is their text.
_IN_FEET: Final = (
    "geometry",
    "height",
    "distance",
    "nearest",
    "stream",
    "water_speed",
    "walk_out",
    "section",
)

QUESTIONS: Final[dict[str, Asked]] = {asked.name: asked for asked in _QUESTIONS} | {
    f"{asked.name}_feet": replace(asked, name=f"{asked.name}_feet")
    for asked in _QUESTIONS
    if asked.name in _IN_FEET
}


#: Stands between the name of a question and what it is about.
_ABOUT: Final = "@"


def mark_of(name: str, about: str) -> str:
    """The mark of a message that puts a question: its name, and what it is about, if anything."""
    return f"{name}{_ABOUT}{about}" if about else name


def asked_by(mark: str | None) -> tuple[str, str]:
    """The name of the question that a message put, and what it was about; "" where unknown."""
    name, _, about = (mark or "").partition(_ABOUT)
    return name, about


def in_units(name: str, units: Units | None) -> str:
    """The variant of a question whose examples stand in the person's units."""
    plain = name.removesuffix("_feet")
    feet = f"{plain}_feet"
    return feet if units is Units.IMPERIAL and feet in QUESTIONS else plain
