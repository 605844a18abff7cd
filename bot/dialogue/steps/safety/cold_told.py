"""Numbers of the cold, asked or told: how wind chills, and how long cold water leaves hands."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.facts import Units
from bot.dialogue.reading.cold_numbers import (
    Air,
    Water,
    air_and_wind,
    asks_of_chill,
    asks_of_hands,
    cold_water,
)
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from core.trip import (
    BREATH_MIN,
    FROSTBITE_C,
    USEFUL_MIN,
    WARMEST_CHILL_C,
    celsius_of,
    fahrenheit_of,
    water_cold,
    wind_chill_c,
    wind_chill_f,
)

#: The US form begins here [mph].
_LEAST_MPH: Final = 3.0


def is_asked(text: str) -> bool:
    """Whether a message asks of it, whatever else it tells."""
    return asks_of_chill(text) or (asks_of_hands(text) and cold_water(text) is not None)


def answer(turn: Turn, text: str) -> bool:
    """Answer a message that tells or asks such numbers; whether it does.

    Args:
        turn: the answer under construction.
        text: the message, as typed.
    """
    air, water = air_and_wind(text), cold_water(text)
    if air is not None:
        _say_chill(turn, air)
    elif water is not None:
        _say_water(turn, water)
    elif asks_of_chill(text):
        turn.say(Role.SETTINGS, "cold.chill_needs")
    else:
        return False
    return True


def _units(turn: Turn, *, fahrenheit: bool) -> Units:
    """The person's units; those of the message while they are unknown."""
    told = Units.IMPERIAL if fahrenheit else Units.METRIC
    return turn.units or told


def _say_chill(turn: Turn, air: Air) -> None:
    if air.air_c > WARMEST_CHILL_C:
        turn.say(Role.SETTINGS, "cold.no_chill")
        turn.reason("why.cold.chill")
        return
    felt_c = _felt_c(air)
    units = _units(turn, fahrenheit=air.fahrenheit)
    turn.say(
        Role.SAFETY,
        "cold.chill",
        air=measures.temperature(air.air_c, units),
        wind=measures.wind(air.wind_kmh, units),
        felt=measures.temperature(felt_c, units),
    )
    turn.say(Role.CHECK, "cold.frostbite" if felt_c <= FROSTBITE_C else "cold.cover")
    turn.reason("why.cold.chill")


def _felt_c(air: Air) -> float:
    """The chill by the chart of the units that were told; in hardly any wind by the metric one."""
    wind_mph = air.wind_kmh / measures.KILOMETRES_PER_MILE
    if air.fahrenheit and wind_mph >= _LEAST_MPH:
        return celsius_of(wind_chill_f(fahrenheit_of(air.air_c), wind_mph))
    return wind_chill_c(air.air_c, air.wind_kmh)


def _say_water(turn: Turn, water: Water) -> None:
    minutes = {"breath": measures.plain(BREATH_MIN, 0), "hands": measures.plain(USEFUL_MIN, 0)}
    if water.water_c is None:
        turn.say(Role.SAFETY, "cold.water_untold", **minutes)
    else:
        cold = water_cold(water.water_c)
        told = measures.temperature(water.water_c, _units(turn, fahrenheit=water.fahrenheit))
        turn.say(Role.SAFETY, f"cold.water_{cold.value}", water=told, **minutes)
    turn.say(Role.CHECK, "cold.nobody_wades")
    turn.reason("why.cold.water", **minutes)
