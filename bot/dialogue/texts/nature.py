"""What is said of storm, cold and current from told numbers; never a leave to stand anywhere."""

from __future__ import annotations

from typing import Final

NATURE: Final[dict[str, str]] = {
    # Any thunder means shelter: US National Weather Service.
    "danger.thunder.distance": "That flash was {distance} off: the next may strike here.",
    "why.thunder.distance": (
        "{seconds} s × 343 m/s (sound at 20 °C) = {distance}. Any thunder means shelter, 30 min "
        "after the last (US National Weather Service)."
    ),
    "storm.supposed": "{seconds} s is {distance}: near enough to be struck.",
    "storm.any": (
        "Any thunder: out of the gorge, into a house or car, 30 min after the last. Rangers and "
        "local warnings decide."
    ),
    # Gloves and a layer before one is cold: common practice.
    "cold.chill": "{air} with {wind} of wind chills bare skin like {felt} in calm air.",
    "cold.cover": (
        "Hat, gloves, a dry layer before you set up; spray makes it worse. Local warnings decide."
    ),
    # Environment Canada: bare skin can freeze within 10 to 30 minutes from -28 on (from memory).
    "cold.frostbite": (
        "Bare skin can freeze within half an hour: cover all of it, or another day. Local "
        "warnings decide."
    ),
    "cold.no_chill": (
        "Wind chill is told up to 10 °C (50 °F) only. Wet and still in spray you chill above it, "
        "too: a dry layer before you set up."
    ),
    "cold.chill_needs": "Type air and wind together, as `-3 °C, 30 km/h wind`.",
    "why.cold.chill": (
        "Wind chill index of 2001 (Environment Canada, US National Weather Service): a face at "
        "walking pace, wind at 10 m height as forecasts give it. A gorge has a wind of its own."
    ),
    # Plan on 3 minutes for the breath: the longest that agencies name.
    "cold.water_very_cold": (
        "In water of {water} the breath goes for up to {breath} min, and hands work about {hands} "
        "min at most: keep them out."
    ),
    "cold.water_cold": (
        "Water of {water} takes the breath, too, for up to {breath} min; hands soon fumble: "
        "{hands} min, not more."
    ),
    "cold.water_mild": (
        "Water of {water} does not numb hands soon; depth and current do the harm."
    ),
    "cold.water_untold": (
        "Most streams are cold: the breath goes for up to {breath} min, hands work about {hands} "
        "min at most."
    ),
    "cold.nobody_wades": "Nobody wades for a picture; signs and rangers decide.",
    "why.cold.water": (
        "A minute for the breath (plan on {breath}), {hands} minutes of useful movement, an hour "
        "awake: Giesbrecht's 1-10-1. Cold below 21 °C (US Coast Guard), very cold below 15 °C "
        "(RNLI)."
    ),
    # Humic substances of bogs colour clear water brown; soil, twigs and a rising level are signs of
    # flood (US National Weather Service): common knowledge. Two metres: own rule.
    "water.tea": (
        "Clear and brown like tea is mostly peat: tannin, no mud. Cloudy, with twigs, or rising is "
        "flood: leave, up and out. Signs and rangers decide."
    ),
    "water.brown_asked": (
        "See the stones on the bottom? Then brown is mostly peat. Cloudy, with twigs, or rising is "
        "flood: leave, up and out. Signs and rangers decide."
    ),
    "water.no_leave": (
        "Colour says nothing of force, cold or depth: nobody in it, children by the hand, 2 m back "
        "from the edge."
    ),
    "standing.no": "Not here: {reasons}.",
    "standing.ask": "Not told: {unknown}. Until all is known and harmless: no.",
    "standing.with_care": "Nothing told speaks against it; that is no leave.",
    "standing.above_a_drop": "a drop below",
    "standing.bottom_hidden": "bottom unseen",
    "standing.above_the_knee": "knee-deep or more",
    "standing.brown": "brown water",
    "standing.rising": "rising water",
    "standing.alone": "alone",
    "standing.cold_without_dry_clothes": "cold, no dry clothes",
    "standing.too_strong": "{flow} m × m/s, too strong from {limit}",
    "standing.child_or_frail": "a child or unsteady legs",
    "standing.unknown.above_a_drop": "what lies below",
    "standing.unknown.bottom_visible": "the bottom",
    "standing.unknown.depth_m": "depth",
    "standing.unknown.speed_mps": "speed",
    "standing.unknown.brown": "colour",
    "standing.unknown.rising": "whether it rises",
    "standing.unknown.alone": "company",
    "standing.unknown.dry_clothes": "dry clothes",
    "why.standing": (
        "Depth × speed from {limit} m × m/s: nobody. A floodway value, unsafe even so for small "
        "children (Cox, Yee & Ball 2004). Signs and rangers come first."
    ),
}
