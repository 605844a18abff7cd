"""How numbers are written for a person: lengths, speeds, shares, stops, times of day."""

from __future__ import annotations

import math
from datetime import datetime
from fractions import Fraction
from typing import Final

from bot.dialogue.facts import Units

FEET_PER_METRE: Final = 1 / 0.3048  # exact: the international foot of 1959
KILOMETRES_PER_MILE: Final = 1.609344  # exact


def plain(value: float, decimals: int = 1) -> str:
    """A number without trailing zeros: 9, 1.5, 0.25 with `decimals=2`."""
    text = f"{value:.{decimals}f}"
    return (text.rstrip("0").rstrip(".") if "." in text else text) or "0"


def fine(value: float) -> str:
    """A number with two decimals, small ones with four: 1.25, 0.0125."""
    return plain(value, 2 if abs(value) >= _SMALL else 4)


#: Below this two decimals say too little (own rule).
_SMALL: Final = 0.1


def _metres(value_m: float) -> str:
    return f"{plain(value_m, 1 if value_m < 10 else 0)} m"


def _feet(value_m: float) -> str:
    feet = value_m * FEET_PER_METRE
    return f"{plain(feet, 1 if feet < 3 else 0)} ft"


def length(value_m: float, units: Units | None) -> str:
    """A length in the person's units, in both while they are unknown."""
    if units is Units.METRIC:
        return _metres(value_m)
    if units is Units.IMPERIAL:
        return _feet(value_m)
    return f"{_metres(value_m)} ({_feet(value_m)})"


def speed(value_mps: float, units: Units | None) -> str:
    """A speed in the person's units, in both while they are unknown."""
    metric = f"{plain(value_mps)} m/s"
    imperial = f"{plain(value_mps * FEET_PER_METRE, 0)} ft/s"
    if units is Units.METRIC:
        return metric
    if units is Units.IMPERIAL:
        return imperial
    return f"{metric} ({imperial})"


def walk(distance_km: float, climb_m: float, units: Units | None) -> str:
    """A way out as its length and climb."""
    if units is Units.IMPERIAL:
        return f"{plain(distance_km / KILOMETRES_PER_MILE)} mi, {_feet(climb_m)} climb"
    return f"{plain(distance_km)} km, {_metres(climb_m)} climb"


def percent(share: float) -> str:
    """A share as percent: 0.06 %, 5.3 %, 11 %."""
    value = share * 100
    if value >= 20:
        return f"{value:.0f} %"
    return f"{plain(value, 1 if value >= 1 else 2)} %"


def band(low: float, high: float) -> str:
    """A range of shares: `1 to 10 %`, `under 0.15 %`, `over 35 %`."""
    if low <= 0:
        return f"under {percent(high)}"
    if high == math.inf:
        return f"over {percent(low)}"
    return f"{percent(low).removesuffix(' %')} to {percent(high)}"


def _thirds(value: float) -> str:
    """A number of stops in whole and thirds (halves where they are nearer)."""
    nearest = min(
        (Fraction(round(value * base), base) for base in (3, 2)),
        key=lambda fraction: abs(float(fraction) - value),
    )
    whole, rest = divmod(nearest, 1)
    if not rest:
        return str(whole)
    return f"{whole} {rest}" if whole else str(rest)


def stops(value: float) -> str:
    """An amount of stops without its sign: `1/3 stop`, `1 stop`, `1 2/3 stops`."""
    text = _thirds(abs(value))
    one = text == "1" or ("/" in text and " " not in text)
    return f"{text} stop" if one else f"{text} stops"


def degrees(value: float) -> str:
    """An angle with its sign to half a degree: `+0.5°`."""
    return f"{plain(round(value * 2) / 2)}°"


def minutes(value_min: float) -> str:
    """A duration in hours and minutes: `48 min`, `1 h 30 min`."""
    hours, rest = divmod(round(value_min), 60)
    if not hours:
        return f"{rest} min"
    return f"{hours} h {rest} min" if rest else f"{hours} h"


def clock(moment: datetime) -> str:
    """A time of day in 24 hours with the zone's short name where it has one."""
    zone = moment.tzname() or ""
    return f"{moment:%H:%M} {zone}".strip()


def wait(value_s: float) -> str:
    """How long to wait, up to a minute or two, never less than it takes: `34 s`."""
    return f"{max(1, math.ceil(value_s))} s"


def day_and_clock(moment: datetime) -> str:
    """A day without its year and a time of day: `14 July, 14:05 UTC`."""
    return f"{moment.day} {moment:%B}, {clock(moment)}"


#: Above this crop factor nobody knows the real focal length: phones (own rule).
_PHONE_CROP: Final = 4.0


def focal(real_mm: float, crop_factor: float) -> str:
    """A focal length, with its full-frame equal where the format differs from it."""
    if crop_factor > _PHONE_CROP:
        return f"{real_mm * crop_factor:.0f} mm as full frame"
    whole = plain(real_mm, 1 if real_mm < 10 else 0)
    if abs(crop_factor - 1) < 0.05:
        return f"{whole} mm"
    return f"{whole} mm ({real_mm * crop_factor:.0f} as full frame)"


def listing(names: list[str], last: str) -> str:
    """Names joined by commas, the last two by the word `last`."""
    if len(names) < 2:
        return "".join(names)
    return f"{', '.join(names[:-1])} {last} {names[-1]}"
