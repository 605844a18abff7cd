"""What is behind a frame that went wrong: causes in order, from the words and all that is known."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.facts import Blink, Facts
from bot.dialogue.folding import folded
from bot.dialogue.meaning import sights
from bot.dialogue.meaning.said import Said
from bot.dialogue.tongues import whole_words
from core.camera import POLARISER_STOPS
from core.exposure import Settings
from core.light import LIGHTS, metered_level

#: What words weigh beside facts: a sight named in full against evidence of `weight` (own rule,
#: on the half of the messages on which rules may be written).
_WORDS: Final = 6.0
#: Up to this light a polariser takes what is needed [EV] (common practice).
_DIM_EV: Final = 8.0
#: Longer than this is shaken by hand [s] (common practice: 1/15 braced, 1/30 free).
_BY_HAND_S: Final = 1 / 30
#: Filters from this strength on blind an autofocus [stops] (common practice).
_BLINDING_STOPS: Final = 5.0
#: Rings of filters show in the corners of shorter lenses [mm, as on full frame] (common practice).
_CORNERS_MM: Final = 20.0
#: A fall lower than this part of the frame is lost in it (own rule).
_LOST: Final = 0.25
#: Whatever sight a message is near to, what it calls pale or white is not too dark.
_PALE: Final = whole_words("whites.pale")
_STABILISER_ON: Final = re.compile(
    r"\b(?:stabili[sz]\w+|i?bis|vr|steady)\b(?:(?!\boff\b).){0,20}\bon\b"
)


@dataclass(frozen=True)
class Cause:
    """One cause with its score, and what speaks for it or against it: weights by a short name."""

    name: str
    score: float
    evidence: tuple[tuple[str, float], ...]


@dataclass(frozen=True)
class Scene:
    """What can be computed of the frame; None where a number is missing.

    Args:
        facts: all that is known, the message's own facts on top.
        stabiliser_on: whether the stabiliser worked.
        share: share of the frame that the water crossed.
        over_stops: brighter than the meter's middle [stops].
        short_of_depth: the f-number is too small for the nearest thing.
        past_best: how far the f-number is past where the format softens, as a ratio.
    """

    facts: Facts
    stabiliser_on: bool | None = None
    share: float | None = None
    over_stops: float | None = None
    short_of_depth: bool | None = None
    past_best: float | None = None


def scene_of(facts: Facts, text: str = "", *, stabiliser_on: bool | None = None) -> Scene:
    """What can be computed of a frame from what is known."""
    f_number, shutter_s, iso = reckoning.exact_settings(facts)
    if stabiliser_on is None and _STABILISER_ON.search(text.casefold()):
        stabiliser_on = True
    share = over = past = None
    if shutter_s is not None:
        flow = reckoning.flow_of(facts)
        share = flow.share(shutter_s)
    light = LIGHTS.get(facts.light or "")
    if light is not None and shutter_s is not None and f_number is not None:
        filters = (facts.nd_on_stops or 0.0) + (POLARISER_STOPS if facts.polariser_on else 0.0)
        over = metered_level(Settings(f_number, shutter_s, iso or 100.0), light.ev100, filters)
    sensor = reckoning.sensor_of(facts)
    if f_number is not None:
        past = f_number / sensor.softening_f
    return Scene(facts, stabiliser_on, share, over, _short_of_depth(facts, f_number), past)


def _short_of_depth(facts: Facts, f_number: float | None) -> bool | None:
    focal_mm, near_m = reckoning.focal_of(facts), reckoning.nearest_of(facts)
    if focal_mm is None or near_m is None or f_number is None:
        return None
    depth = reckoning.depth_of(facts, focal_mm)
    return bool(depth.stack) or depth.needed > f_number * 1.05


#: What facts say for a cause, or, below 0, against it, by name. Weights and limits are own rules on
#: the half of the messages on which rules may be written; shares are those of the looks' bands.
_Evidence = Iterator[tuple[str, float]]


def _time_too_long(scene: Scene) -> _Evidence:
    if scene.share is not None:
        yield "share", 2.0 if scene.share > 0.35 else 1.0 if scene.share > 0.1 else -2.0
    if scene.facts.blink is Blink.NOTHING or scene.facts.histogram_at_right is False:
        yield "clean", 1.0


def _time_too_short(scene: Scene) -> _Evidence:
    if scene.share is not None:
        yield "share", 1.5 if scene.share < 0.01 else -2.0 if scene.share > 0.05 else 0.0


def _water_clipped(scene: Scene) -> _Evidence:
    facts = scene.facts
    if facts.blink is not None:
        yield "blink", 2.0 if facts.blink in {Blink.SHEET, Blink.PATCHES} else -2.5
    if facts.histogram_at_right is not None:
        yield "histogram", 0.5 if facts.histogram_at_right else -1.5
    if scene.over_stops is not None:
        yield "level", 1.5 if scene.over_stops > 0.5 else -1.0 if scene.over_stops < -1 else 0.0
    if scene.share is not None:
        yield "share", 0.7 if scene.share < 0.1 else -0.7


def _underexposed(scene: Scene) -> _Evidence:
    if scene.over_stops is not None:
        yield "level", 2.0 if scene.over_stops < -1 else -1.0
    if scene.facts.histogram_at_right is not None:
        yield "histogram", -1.5 if scene.facts.histogram_at_right else 1.0


def _iso_raised(scene: Scene) -> _Evidence:
    iso = scene.facts.iso
    if iso is not None:
        yield "iso", 1.5 if iso >= 800 else -2.0 if iso <= 200 else 0.0


def _automatic_mode(scene: Scene) -> _Evidence:
    if scene.facts.automatic is not None:
        yield "mode", 1.5 if scene.facts.automatic else -3.0


def _diffraction(scene: Scene) -> _Evidence:
    if scene.past_best is not None:
        yield "f_number", 2.5 if scene.past_best > 1.02 else -3.0


def _shake(scene: Scene) -> _Evidence:
    facts = scene.facts
    by_hand = facts.hand_held or facts.has_tripod is False
    if facts.shutter_s is not None and by_hand:
        yield "by_hand", 2.0 if facts.shutter_s > _BY_HAND_S else -1.0
    if scene.stabiliser_on is not None and facts.has_tripod:
        yield "stabiliser", 1.5 if scene.stabiliser_on else -0.3
    if scene.past_best is not None and scene.past_best > 1.02:
        yield "f_number", -0.5


def _near_too_close(scene: Scene) -> _Evidence:
    if scene.short_of_depth is not None:
        yield "depth", 2.0 if scene.short_of_depth else -1.5


def _focused_wrong(scene: Scene) -> _Evidence:
    if (scene.facts.nd_on_stops or 0.0) >= _BLINDING_STOPS:
        yield "nd", 1.2
    if scene.short_of_depth is False:
        yield "depth", 0.7


def _wind_in_leaves(scene: Scene) -> _Evidence:
    if scene.facts.wind:
        yield "wind", 0.7


def _unturned_polariser(scene: Scene) -> _Evidence:
    if scene.facts.has_polariser is not None:
        yield "polariser", 0.5 if scene.facts.has_polariser else -0.5


def _polariser_in_the_dark(scene: Scene) -> _Evidence:
    light = LIGHTS.get(scene.facts.light or "")
    on = scene.facts.polariser_on
    if on is not None:
        yield "polariser", 1.0 if on else -3.0
    if light is not None:
        yield "light", 1.5 if on and light.ev100 <= _DIM_EV else -1.0


def _nd_cast(scene: Scene) -> _Evidence:
    on = scene.facts.nd_on_stops
    if on is not None:
        yield "nd", 1.0 if on else -3.0


def _filter_corners(scene: Scene) -> _Evidence:
    facts = scene.facts
    focal_mm = reckoning.focal_of(facts)
    if focal_mm is not None:
        wide = focal_mm * reckoning.sensor_of(facts).crop_factor <= _CORNERS_MM
        yield "focal", 0.8 if wide else -0.5
    if facts.nd_on_stops or facts.polariser_on:
        yield "filters", 0.8


def _cool_white_balance(scene: Scene) -> _Evidence:
    if scene.facts.light in {"open shade", "heavy overcast"}:
        yield "light", 0.5
    if scene.facts.nd_on_stops:
        yield "nd", -0.5


def _too_wide(scene: Scene) -> _Evidence:
    facts, focal_mm = scene.facts, reckoning.focal_of(scene.facts)
    if facts.fall_height_m and facts.distance_m and focal_mm:
        side_mm = reckoning.vertical_side_mm(facts, reckoning.sensor_of(facts))
        part = facts.fall_height_m * focal_mm / facts.distance_m / side_mm
        yield "part", 1.0 if part < _LOST else -0.5


_EVIDENCE: Final[Mapping[str, Callable[[Scene], _Evidence]]] = {
    "time_too_long": _time_too_long,
    "time_too_short": _time_too_short,
    "water_clipped": _water_clipped,
    "underexposed": _underexposed,
    "iso_raised": _iso_raised,
    "automatic_mode": _automatic_mode,
    "diffraction": _diffraction,
    "shake": _shake,
    "near_too_close": _near_too_close,
    "focused_wrong": _focused_wrong,
    "wind_in_leaves": _wind_in_leaves,
    "unturned_polariser": _unturned_polariser,
    "polariser_in_the_dark": _polariser_in_the_dark,
    "nd_cast": _nd_cast,
    "filter_corners": _filter_corners,
    "cool_white_balance": _cool_white_balance,
    "too_wide": _too_wide,
}


def diagnose(said: Said, scene: Scene) -> tuple[Cause, ...]:
    """The causes behind what a message tells, the likeliest first.

    A cause's score is the nearness of the words to its sights, weighed, and all evidence that
    can be computed, added up (own rule).

    Args:
        said: the message.
        scene: what is known of the frame.
    """
    near = sights.nearness(said)
    left_out = sights.NO_FRAME | ({"underexposed"} if _PALE.search(folded(said.typed)) else set())
    found = [_weighed(name, near[name], scene) for name in near if name not in left_out]
    return tuple(sorted(found, key=lambda cause: -cause.score))


def _weighed(name: str, near: float, scene: Scene) -> Cause:
    check = _EVIDENCE.get(name)
    evidence = tuple(check(scene)) if check else ()
    return Cause(name, _WORDS * near + sum(weight for _, weight in evidence), evidence)
