"""Walking time, turn-back, cold water, wind chill, thunder."""

from __future__ import annotations

import math
from datetime import UTC, datetime, timedelta
from enum import Enum
from typing import Final

from core.errors import within

#: Pace on the flat [km/h] and climb [m/h]: W. W. Naismith 1892 in its metric form
#: (from memory; 5 km/h and 600 m/h, as in 20 km with 1000 m: 5 h 40 min). A minimum, no stops.
FLAT_KMH: Final = 5.0
CLIMB_MPH: Final = 600.0

#: Own rule: wet rock, tripod and pack take half as long again.
FACTOR_WET_LOADED: Final = 1.5
#: Own rule: a group of mixed fitness takes twice as long.
FACTOR_GROUP: Final = 2.0
#: Own rule: be out an hour before the sun sets.
MARGIN_MIN: Final = 60.0


def celsius_of(fahrenheit: float) -> float:
    """A temperature [degC] of one in degF.

    Source: the definition of the degree Fahrenheit (NIST Special Publication 811, from memory).
    """
    return (fahrenheit - 32) / 1.8


def fahrenheit_of(celsius: float) -> float:
    """A temperature [degF] of one in degC: `celsius_of` the other way round."""
    return celsius * 1.8 + 32


#: Below 70 degF the breath is affected (US Coast Guard) [degC].
COLD_WATER_C: Final = celsius_of(70)
#: Below this the sea-rescue service speaks of cold water (RNLI): the strong warning [degC].
VERY_COLD_WATER_C: Final = 15.0
#: In cold water: for the breath plan on the longest that agencies name (US National Weather
#: Service: 2 to 3 minutes or more), then so much useful movement (Giesbrecht's 1-10-1) [min].
BREATH_MIN: Final = 3.0
USEFUL_MIN: Final = 10.0
#: Wind chill from which on bare skin can freeze within half an hour (Environment Canada, -28; from
#: memory) [degC].
FROSTBITE_C: Final = -28.0
#: Wind chill is defined up to this temperature of the air (50 degF) [degC].
WARMEST_CHILL_C: Final = 10.0
#: Speed of sound in air of 20 degC [m/s]; from memory.
SOUND_MPS: Final = 343.0


def walking_time_min(distance_km: float, climb_m: float, factor: float = 1.0) -> float:
    """Time to walk, for the slowest person, without stops.

    Args:
        distance_km: length of the way [km], 0 to 200.
        climb_m: all that goes up on it [m], 0 to 9000; the way out has its own climb.
        factor: `FACTOR_WET_LOADED`, `FACTOR_GROUP`, or one's own, 1 to 5.

    Returns:
        Walking time [min].

    Raises:
        OutOfDomainError: a value is NaN or out of range.

    Source: Naismith 1892 in metric form, 5 km/h and 600 m/h (from memory); factors own rule.
    """
    within("distance_km", distance_km, "km", 0, 200)
    within("climb_m", climb_m, "m", 0, 9000)
    within("factor", factor, "", 1, 5)
    return (distance_km / FLAT_KMH + climb_m / CLIMB_MPH) * 60 * factor


def turn_back(sunset: datetime, walk_out_min: float, margin_min: float = MARGIN_MIN) -> datetime:
    """Moment at which to leave, however good the light is.

    Args:
        sunset: sunset at the place, with a zone; a skyline makes it dark earlier.
        walk_out_min: time of the way out with its factor [min], 0 to 2880.
        margin_min: to be out before sunset by this much [min], 0 to 600.

    Returns:
        Sunset less margin less way out, in the zone of `sunset`; real minutes, also over a
        change of the clocks.

    Raises:
        OutOfDomainError: a duration is NaN or out of range.
        ValueError: `sunset` carries no zone.
    """
    within("walk_out_min", walk_out_min, "min", 0, 2880)
    within("margin_min", margin_min, "min", 0, 600)
    if sunset.utcoffset() is None:
        raise ValueError("sunset needs a zone")
    leave = sunset.astimezone(UTC) - timedelta(minutes=walk_out_min + margin_min)
    return leave.astimezone(sunset.tzinfo)


class WaterCold(Enum):
    """How much the temperature of the water matters."""

    MILD = "mild"
    COLD = "cold"  # the breath is affected
    VERY_COLD = "very_cold"  # shock; ten minutes of useful movement


def water_cold(water_c: float) -> WaterCold:
    """How cold water of `water_c` [degC], -2 to 45, is for a body.

    Raises:
        OutOfDomainError: NaN or out of range.

    Source: US Coast Guard (70 degF) and RNLI (15 degC); the agencies differ by 6 K, so the
    warning has two steps.
    """
    within("water_c", water_c, "degC", -2, 45)
    if water_c < VERY_COLD_WATER_C:
        return WaterCold.VERY_COLD
    return WaterCold.COLD if water_c < COLD_WATER_C else WaterCold.MILD


def wind_chill_f(air_f: float, wind_mph: float) -> float:
    """Wind chill in the US units.

    Args:
        air_f: temperature of the air [degF], -100 to 50.
        wind_mph: wind [mph], 3 to 200.

    Returns:
        The temperature of calm air that chills a face as much [degF].

    Raises:
        OutOfDomainError: NaN, or outside the range in which the formula is defined.

    Source: US National Weather Service, wind chill index of 2001.
    """
    within("air_f", air_f, "degF", -100, 50)
    within("wind_mph", wind_mph, "mph", 3, 200)
    power = math.pow(wind_mph, 0.16)
    return 35.74 + 0.6215 * air_f - 35.75 * power + 0.4275 * air_f * power


def wind_chill_c(air_c: float, wind_kmh: float) -> float:
    """Wind chill in metric units.

    Args:
        air_c: temperature of the air [degC], -75 to 10 (50 degF, as in the US form).
        wind_kmh: wind at 10 m height, as forecasts give it [km/h], 0 to 320.

    Returns:
        The temperature of calm air that chills a face as much [degC]; never above `air_c`.

    Raises:
        OutOfDomainError: NaN, or outside the range in which the formula is defined.

    Source: Environment Canada, wind chill index of 2001; below 5 km/h its form for light wind
    (from memory).
    """
    within("air_c", air_c, "degC", -75, WARMEST_CHILL_C)
    within("wind_kmh", wind_kmh, "km/h", 0, 320)
    if wind_kmh < 5:
        return min(air_c, air_c + (-1.59 + 0.1345 * air_c) / 5 * wind_kmh)
    power = math.pow(wind_kmh, 0.16)
    return min(air_c, 13.12 + 0.6215 * air_c - 11.37 * power + 0.3965 * air_c * power)


def thunder_distance_km(seconds: float) -> float:
    """Distance of a lightning flash from the delay of its thunder.

    For the record only: any thunder means shelter, and 30 min after the last one (US National
    Weather Service).

    Args:
        seconds: from flash to thunder [s], 0 to 120.

    Returns:
        Distance [km].

    Raises:
        OutOfDomainError: NaN or out of range.
    """
    within("seconds", seconds, "s", 0, 120)
    return seconds * SOUND_MPS / 1000
