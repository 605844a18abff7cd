"""Whether a lens may stay at home: by what the others hold of the fall, and what it is for."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import LensFact
from bot.dialogue.steps.walk.ahead import FAR_HEIGHTS, NEAR_HEIGHTS
from bot.dialogue.steps.walk.lens_kit import lens_names
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.camera import Lens

#: Wider than this, as on full frame, is a luxury at falls [mm] (common practice).
_LUXURY_MM: Final = 24.0
#: A wide zoom ends here, and long lenses begin there [mm, as on full frame] (common practice: 24 to
#: 70 does most, 70 to 200 sections).
_WIDE_ENDS_MM: Final = 40.0
_LONG_BEGINS_MM: Final = 65.0
#: An end of a lens within this of what is needed does it (own rule: a step back or forth).
_NEARLY: Final = 1.1


def judge(turn: Turn, asked: LensFact, *, leave: bool) -> None:
    """Say whether a lens may stay at home, and what is worth carrying.

    Args:
        turn: the answer under construction.
        asked: one of the kit's lenses.
        leave: it is asked whether it can stay; else whether it is needed.
    """
    lens, crop = reckoning.lens_of(asked), reckoning.sensor_of(turn.facts).crop_factor
    others = [other for other in reckoning.lenses_of(turn.facts) if other != lens]
    wide = lens.shortest_mm * crop < _LUXURY_MM and lens.longest_mm * crop <= _WIDE_ENDS_MM
    covering = [
        other
        for other in others
        if other.covers(lens.shortest_mm) and other.covers(lens.longest_mm)
    ]
    if covering:
        _say(turn, "bag.lens_covered", lens, covering, stays=True, leave=leave)
    elif wide:
        _wide(turn, lens, others, leave=leave)
    elif lens.shortest_mm * crop >= _LONG_BEGINS_MM:
        key = ("bag.lens_long" if leave else "bag.lens_long_take") if others else "bag.lens_only"
        _say(turn, key, lens, others, stays=leave and bool(others), leave=leave)
    else:
        _say(turn, "bag.lens_most", lens, others, stays=False, leave=leave)
    _say_bring(turn, lens, others, crop)


def _wide(turn: Turn, lens: Lens, others: list[Lens], *, leave: bool) -> None:
    """A wide lens is needed where no other holds the fall from the usual places to stand."""
    facts, height_m = turn.facts, turn.facts.fall_height_m
    shortest = min(others, key=lambda other: other.shortest_mm, default=None)
    if shortest is None or height_m is None:
        crop = reckoning.sensor_of(facts).crop_factor
        does = shortest is None or shortest.shortest_mm * crop <= _WIDE_ENDS_MM
        key = "bag.lens_luxury" if does else "bag.lens_widest_plain"
        _say(turn, key, lens, others, stays=does, leave=leave)
        return
    near_m, far_m = height_m * NEAR_HEIGHTS, height_m * FAR_HEIGHTS
    near = reckoning.framing_of(facts, None, distance_m=near_m)
    # A level camera's focal length grows with the distance (similar triangles).
    level_m = max(near_m, near_m * shortest.shortest_mm / near.level_mm)
    far = reckoning.framing_of(facts, None, distance_m=far_m)
    level = level_m <= far_m * _NEARLY
    holds = level or shortest.shortest_mm <= far.focal_mm * _NEARLY
    key = "bag.lens_level" if level else "bag.lens_tilted" if holds else "bag.lens_widest"
    _say(turn, key, lens, [shortest], stays=holds, leave=leave, off_m=level_m if level else far_m)


def _say(
    turn: Turn,
    key: str,
    lens: Lens,
    others: list[Lens],
    *,
    stays: bool,
    leave: bool,
    off_m: float = 0.0,
) -> None:
    """One verdict: yes or no by how it was asked, then what to do with it."""
    crop = reckoning.sensor_of(turn.facts).crop_factor
    shortest_mm = min((other.shortest_mm for other in others), default=lens.shortest_mm)
    turn.say(
        Role.SETTINGS,
        key,
        word=TEXTS["bag.yes" if stays is leave else "bag.no"],
        what=TEXTS["bag.leave" if stays else "bag.take"].format(thing=lens_names([lens])),
        other=lens_names(others),
        focal=measures.focal(shortest_mm, crop),
        off=measures.length(off_m, turn.units),
        height=measures.length(turn.facts.fall_height_m or 0.0, turn.units),
    )


def _say_bring(turn: Turn, lens: Lens, others: list[Lens], crop: float) -> None:
    """What the other lenses are for, where a long one is among them."""
    long = [other for other in others if other.shortest_mm * crop >= _LONG_BEGINS_MM]
    most = [other for other in others if other not in long]
    if long and most and lens not in long:
        values = {"most": lens_names(most), "long": lens_names(long)}
        turn.say(Role.CHECK, "bag.lens_bring", **values)
