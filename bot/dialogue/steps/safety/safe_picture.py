"""A like picture from where anybody may stand, for who wanted one from where nobody should."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.steps.walk import lens_kit
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from core.framing import section_focal_mm
from core.water import coverage_m

#: What a safe picture of the crest shows [m] where its width is unknown (own rule: about the
#: width of a small fall's crest).
_SHOWN_M: Final = 12.0
#: A place nearer to the fall than this is not taken for a safe one [m] (own rule).
_AWAY_M: Final = 10.0


def offer(turn: Turn) -> None:
    """A like picture from the walk's own place if that is known and away, else advice."""
    facts = turn.facts
    if facts.distance_m is None or facts.distance_m < _AWAY_M:
        phone = reckoning.is_phone(facts)
        turn.say(Role.CHECK, "danger.from_afar_phone" if phone else "danger.from_afar")
        return
    sensor = reckoning.sensor_of(facts)
    shown_m = facts.fall_width_m or _SHOWN_M
    wanted_mm = section_focal_mm(shown_m, facts.distance_m, sensor.long_mm, 0.0)
    lenses = [] if reckoning.is_phone(facts) else lens_kit.lenses_on(turn)
    focal_mm = reckoning.within_kit(lenses, wanted_mm)
    if focal_mm != wanted_mm:  # what the kit comes nearest with
        shown_m = float(coverage_m(facts.distance_m, sensor.long_mm, focal_mm))
    turn.say(
        Role.CHECK,
        "danger.from_there",
        distance=measures.length(facts.distance_m, turn.units),
        focal=measures.focal(focal_mm, sensor.crop_factor),
        shown=measures.length(shown_m, turn.units),
    )
