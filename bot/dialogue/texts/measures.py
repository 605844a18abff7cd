"""How numbers are written for a person: lengths, speeds, shares, stops, times of day."""

from __future__ import annotations

import math
from datetime import datetime
from decimal import Decimal
from fractions import Fraction
from functools import lru_cache
from typing import Final

from babel.dates import format_date, format_skeleton
from babel.numbers import format_decimal

from bot.dialogue.facts import Units
from bot.dialogue.texts.catalogue import TEXTS, counted
from bot.dialogue.texts.languages import (
    in_halves,
    locale_of,
    speaks_of_halves,
    spoken_language,
    spoken_locale,
)
from core.series import Mark
from core.trip import fahrenheit_of

FEET_PER_METRE: Final = 1 / 0.3048  # exact: the international foot of 1959
KILOMETRES_PER_MILE: Final = 1.609344  # exact


def plain(value: float, decimals: int = 1) -> str:
    """A number without trailing zeros: 9, 1.5, 0.25 with `decimals=2`."""
    return _written(f"{value:.{decimals}f}", spoken_language())


@lru_cache(maxsize=1024)
def _written(rounded: str, language: str) -> str:
    """A decimal as the language that is being spoken writes it."""
    return format_decimal(Decimal(rounded), "0.#######", locale_of(language), group_separator=False)


def significant(value: float) -> str:
    """A number to three digits that count, however small: 0.125, 0.0167, 0.000125."""
    return _written(f"{value:.3g}", spoken_language())


#: A printed time that is off the exact one by more is told with it (own rule: a sum is checked
#: by hand to half a hundredth; 0.3 s on a dial is 0.315 s).
_OFF_PRINT: Final = 0.005


def exact_time(mark: Mark, seconds: float) -> str:
    """A time as a dial has it, with its seconds where they differ from the print: `0.3 s (0.315)`.

    Args:
        mark: the mark next to it.
        seconds: the time that is reckoned with [s].
    """
    if abs(mark.marked / seconds - 1) <= _OFF_PRINT:
        return mark.label
    return f"{mark.label} ({significant(seconds)})"


def fixed(value: float, decimals: int = 1, *, sign: bool = False) -> str:
    """A number with just so many decimals, on wish with the sign of what is above zero: `+0.7`."""
    written = "0." + "0" * decimals
    pattern = f"+{written};-{written}" if sign else written
    rounded = Decimal(f"{value:.{decimals}f}")
    return format_decimal(rounded, pattern, spoken_locale(), group_separator=False)


def fine(value: float) -> str:
    """A number with two decimals, small ones with four: 1.25, 0.0125."""
    return plain(value, 2 if abs(value) >= _SMALL else 4)


#: The least share that two decimals of a percent can tell.
_LEAST_SHARE: Final = 0.0001
#: Below this two decimals say too little (own rule).
_SMALL: Final = 0.1


def _metres(value_m: float) -> str:
    return f"{plain(value_m, 1 if value_m < 10 else 0)} m"


def _feet(value_m: float) -> str:
    feet = value_m * FEET_PER_METRE
    return f"{plain(feet, 1 if feet < 3 else 0)} ft"


def length(value_m: float, units: Units | None) -> str:
    """A length in the person's units, in both while they are unknown."""
    return _in_units(_metres(value_m), _feet(value_m), units)


def speed(value_mps: float, units: Units | None) -> str:
    """A speed in the person's units, in both while they are unknown."""
    imperial = f"{plain(value_mps * FEET_PER_METRE, 0)} ft/s"
    return _in_units(f"{plain(value_mps)} m/s", imperial, units)


def fine_length(value_m: float, units: Units | None) -> str:
    """A length to three digits that count, as it stands in a sum: 22.5 m, 0.9 m."""
    metric, imperial = (
        f"{significant(value)} {unit}"
        for value, unit in ((value_m, "m"), (value_m * FEET_PER_METRE, "ft"))
    )
    return _in_units(metric, imperial, units)


def fine_speed(value_mps: float, units: Units | None) -> str:
    """A speed to three digits that count, as it stands in a sum: 7.67 m/s."""
    metric, imperial = (
        f"{significant(value)} {unit}"
        for value, unit in ((value_mps, "m/s"), (value_mps * FEET_PER_METRE, "ft/s"))
    )
    return _in_units(metric, imperial, units)


def gravity(value_mps2: float, units: Units | None) -> str:
    """An acceleration to three digits that count, in metres or feet: 9.81, 32.2."""
    return significant(value_mps2 * (FEET_PER_METRE if units is Units.IMPERIAL else 1.0))


def _in_units(metric: str, imperial: str, units: Units | None) -> str:
    """A measure in the person's units, in both while they are unknown."""
    if units is None:
        return f"{metric} ({imperial})"
    return metric if units is Units.METRIC else imperial


def temperature(value_c: float, units: Units) -> str:
    """A temperature in such units, in whole degrees."""
    if units is Units.IMPERIAL:
        return f"{plain(round(fahrenheit_of(value_c)) + 0.0, 0)} °F"
    return f"{plain(round(value_c) + 0.0, 0)} °C"


def wind(speed_kmh: float, units: Units) -> str:
    """A wind as forecasts of such units give it."""
    if units is Units.IMPERIAL:
        return f"{plain(speed_kmh / KILOMETRES_PER_MILE, 0)} mph"
    return f"{plain(speed_kmh, 0)} km/h"


def walk(distance_km: float, climb_m: float, units: Units | None) -> str:
    """A way out as its length and climb."""
    climb = _feet(climb_m) if units is Units.IMPERIAL else _metres(climb_m)
    return TEXTS["amount.climb"].format(distance=way(distance_km, units), climb=climb)


def way(distance_km: float, units: Units | None) -> str:
    """The length of a way: `3 km`, `1.9 mi`."""
    if units is Units.IMPERIAL:
        return f"{plain(distance_km / KILOMETRES_PER_MILE)} mi"
    return f"{plain(distance_km)} km"


def percent(share: float) -> str:
    """A share as percent: 0.06 %, 5.3 %, 11 %; what is there is never called nothing."""
    if 0 < share < _LEAST_SHARE / 2:
        return TEXTS["amount.under"].format(share=percent(_LEAST_SHARE))
    return TEXTS["amount.percent"].format(number=_hundredths(share))


def crossed(share: float) -> str:
    """How much of the frame water crosses; beyond all of it no number tells anybody more."""
    return TEXTS["amount.over"].format(share=percent(1.0)) if share > 1 else percent(share)


def _hundredths(share: float) -> str:
    value = share * 100
    return plain(value, 0 if value >= 20 else 1 if value >= 1 else 2)


def band(low: float, high: float) -> str:
    """A range of shares: `1 to 10 %`, `under 0.15 %`, `over 35 %`."""
    if low <= 0:
        return TEXTS["amount.under"].format(share=percent(high))
    if high == math.inf:
        return TEXTS["amount.over"].format(share=percent(low))
    return TEXTS["amount.range"].format(low=_hundredths(low), high=percent(high))


def _thirds(value: float) -> Fraction:
    """A number of stops in thirds (halves where they are nearer)."""
    return min(
        (Fraction(round(value * base), base) for base in (3, 2)),
        key=lambda fraction: abs(float(fraction) - value),
    )


def stops(value: float) -> str:
    """An amount of stops without its sign: `1/3 stop`, `1 stop`, `1 2/3 stops`."""
    amount = _thirds(abs(value))
    whole, rest = divmod(amount, 1)
    if rest and not whole:
        return TEXTS["amount.part_of_stop"].format(amount=rest)
    told = f"{whole} {rest}" if rest else str(whole)
    return counted("amount.stops", math.ceil(amount)).format(amount=told)


def degrees(value: float) -> str:
    """An angle with its sign to half a degree: `+0.5°`."""
    return f"{plain(round(value * 2) / 2)}°"


def fine_degrees(value: float) -> str:
    """An angle to a tenth of a degree, as it stands in a sum: `31.7°`."""
    return f"{plain(value)}°"


def minutes(value_min: float) -> str:
    """A duration in hours and minutes: `48 min`, `1 h 30 min`."""
    hours, rest = divmod(round(value_min), 60)
    if not hours:
        return f"{rest} min"
    return f"{hours} h {rest} min" if rest else f"{hours} h"


def clock(moment: datetime) -> str:
    """A time of day with the zone's short name where it has one."""
    zone = moment.tzname() or ""
    return f"{hour_and_minute(moment)} {zone}".strip()


def hour_and_minute(moment: datetime) -> str:
    """A time of day as the person tells times: `18:40`, or `6:40 pm`."""
    if not speaks_of_halves():
        return f"{moment:%H:%M}"
    return in_halves(moment.hour, moment.minute)


def told_clock(told: str) -> str:
    """A time of day that was kept as `18:40`, as the person tells times."""
    return hour_and_minute(datetime.strptime(told, "%H:%M"))  # noqa: DTZ007  # only its hour


def wait(value_s: float) -> str:
    """How long to wait, up to a minute or two, never less than it takes: `34 s`."""
    return f"{max(1, math.ceil(value_s))} s"


def day_and_clock(moment: datetime) -> str:
    """A day without its year and a time of day: `14 July, 14:05 UTC`."""
    day = format_skeleton("MMMMd", moment, locale=spoken_locale())
    return TEXTS["amount.day_and_clock"].format(day=day, clock=clock(moment))


def date(moment: datetime) -> str:
    """A day with its year: `18 June 2027`."""
    return format_date(moment.date(), "long", locale=spoken_locale())


#: Above this crop factor nobody knows the real focal length: phones (own rule).
_PHONE_CROP: Final = 4.0


def focal(real_mm: float, crop_factor: float) -> str:
    """A focal length, with its full-frame equal where the format differs from it."""
    full = plain(real_mm * crop_factor, 0)
    if crop_factor > _PHONE_CROP:
        return TEXTS["amount.focal_phone"].format(full=full)
    real = plain(real_mm, 1 if real_mm < 10 else 0)
    if abs(crop_factor - 1) < 0.05:
        return f"{real} mm"
    return TEXTS["amount.focal_crop"].format(real=real, full=full)


def listing(names: list[str], last: str) -> str:
    """Names joined by commas, the last two by the word `last`."""
    if len(names) < 2:
        return "".join(names)
    return f"{', '.join(names[:-1])} {last} {names[-1]}"
