"""Formats, pixels, lenses, filters."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Final

from core.domain import positive
from core.errors import OutOfDomainError, within
from core.series import Dial, exact_f_number, exact_iso

#: Diagonal of 36x24 mm, against which crop factors are told [mm].
FULL_FRAME_DIAGONAL_MM: Final = math.hypot(36.0, 24.0)


@dataclass(frozen=True)
class SensorFormat:
    """A size of sensor and what follows from it; f-numbers and speeds are exact values.

    Args:
        key: name of the format, as in `FORMATS`.
        width_mm: long side [mm], above 0.
        height_mm: short side [mm], above 0.
        best_f: range of f-numbers in which lenses of this format are at their best (low, high).
        softening_f: f-number beyond which diffraction visibly softens the whole picture.
        base_iso: usual lowest speed at full quality.
        clean_iso: speed up to which noise is no worry.
        top_iso: highest speed that is still acceptable for the main frame.
        fixed_f_number: the one f-number of a phone, else None.

    Raises:
        OutOfDomainError: a number is not positive and finite.
    """

    key: str
    width_mm: float
    height_mm: float
    best_f: tuple[float, float]
    softening_f: float
    base_iso: float
    clean_iso: float
    top_iso: float
    fixed_f_number: float | None = None

    def __post_init__(self) -> None:
        positive("width_mm", self.width_mm, "mm")
        positive("height_mm", self.height_mm, "mm")
        positive("f_number", (*self.best_f, self.softening_f), "")
        if self.fixed_f_number is not None:
            positive("fixed_f_number", self.fixed_f_number, "")
        positive("iso", (self.base_iso, self.clean_iso, self.top_iso), "")

    @property
    def diagonal_mm(self) -> float:
        """Diagonal [mm]."""
        return math.hypot(self.width_mm, self.height_mm)

    @property
    def crop_factor(self) -> float:
        """Diagonal of 36x24 mm over this one; 1 for full frame, 2 for four thirds."""
        return FULL_FRAME_DIAGONAL_MM / self.diagonal_mm

    def softens(self, f_number: float) -> bool:
        """Whether diffraction visibly softens the whole picture at an exact f-number.

        The limit of the table itself does not soften, nor what misses it by a rounding (2 %; own
        rule: far below half a mark).
        """
        return f_number > self.softening_f * 1.02

    @property
    def long_mm(self) -> float:
        """Longer side [mm]."""
        return max(self.width_mm, self.height_mm)

    @property
    def short_mm(self) -> float:
        """Shorter side [mm]."""
        return min(self.width_mm, self.height_mm)


def _format(
    key: str,
    sides_mm: tuple[float, float],
    f_numbers: tuple[float, float, float],
    isos: tuple[float, float, float],
    fixed: float | None = None,
) -> SensorFormat:
    low, high, softening = (exact_f_number(marked) for marked in f_numbers)
    base, clean, top = (exact_iso(marked) for marked in isos)
    return SensorFormat(key, *sides_mm, (low, high), softening, base, clean, top, fixed)


#: Sides: full frame and four thirds as published in tables of angles of view; the others from
#: makers' data sheets, from memory. F-numbers (best from, best to, softening after): common
#: practice for full frame, APS-C, four thirds and 1-inch; 44x33 and phone scaled by the crop
#: factor (own rule). Speeds (base, clean, acceptable): common practice for full frame (400 to 800
#: without worry, 1600 acceptable), less for smaller sensors (own rule).
FORMATS: Final[Mapping[str, SensorFormat]] = MappingProxyType(
    {
        entry.key: entry
        for entry in (
            _format("44x33", (43.8, 32.9), (10, 14, 20), (100, 800, 1600)),
            _format("full frame", (36.0, 24.0), (8, 11, 16), (100, 800, 1600)),
            _format("aps-c", (23.6, 15.7), (5.6, 8, 11), (100, 400, 1600)),
            _format("aps-c 1.6", (22.3, 14.9), (5.6, 8, 11), (100, 400, 1600)),
            _format("four thirds", (17.3, 13.0), (4, 5.6, 8), (200, 400, 800)),
            _format("1-inch", (13.2, 8.8), (2.8, 4, 5.6), (125, 200, 400)),
            # A common main camera of a phone (common practice, from memory): 1/1.7 inch, f/1.8.
            _format("phone", (7.6, 5.7), (1.8, 1.8, 3.5), (50, 100, 400), exact_f_number(1.8)),
        )
    }
)

#: Narrowest opening of a lens about which nothing is known: the mark f/22 (common practice).
USUAL_NARROWEST_F: Final = 2**4.5
#: Widest opening of a lens about which nothing is known (common practice: travel zooms are f/4).
UNKNOWN_WIDEST_F: Final = 4.0


@dataclass(frozen=True)
class Lens:
    """A lens, fixed or zoom; f-numbers are exact values.

    Args:
        shortest_mm: shortest focal length [mm], above 0.
        longest_mm: longest focal length [mm], not below `shortest_mm`.
        widest_at_shortest: smallest f-number at the short end; None if unknown.
        widest_at_longest: smallest f-number at the long end; None if unknown.
        narrowest: largest f-number; f/22 by default (common practice).

    Raises:
        OutOfDomainError: a number is not positive and finite, or the ends are swapped.
    """

    shortest_mm: float
    longest_mm: float
    widest_at_shortest: float | None = None
    widest_at_longest: float | None = None
    narrowest: float = USUAL_NARROWEST_F

    def __post_init__(self) -> None:
        positive("shortest_mm", self.shortest_mm, "mm")
        positive("longest_mm", self.longest_mm, "mm")
        within("longest_mm", self.longest_mm, "mm", self.shortest_mm, math.inf)
        positive("narrowest", self.narrowest, "")
        for widest in (self.widest_at_shortest, self.widest_at_longest):
            if widest is not None:
                positive("widest", widest, "", self.narrowest)

    @property
    def is_zoom(self) -> bool:
        """Whether the focal length can be changed."""
        return self.longest_mm > self.shortest_mm

    def covers(self, focal_mm: float, tolerance: float = 0.03) -> bool:
        """Whether the lens reaches a focal length, give or take `tolerance` (own rule: 3 %).

        Args:
            focal_mm: real focal length [mm], above 0.
            tolerance: as a part of either end, 0 to 1.

        Raises:
            OutOfDomainError: `focal_mm` is not positive and finite, or `tolerance` not in 0 to 1.
        """
        positive("focal_mm", focal_mm, "mm")
        within("tolerance", tolerance, "", 0.0, 1.0)
        low, high = self.shortest_mm * (1 - tolerance), self.longest_mm * (1 + tolerance)
        return low <= focal_mm <= high

    def widest_at(self, focal_mm: float) -> float:
        """Smallest f-number at a focal length: linear in stops over the focal length's logarithm.

        That line is an own rule: makers publish the ends only. One end known stands for both;
        none known is f/4 (`UNKNOWN_WIDEST_F`).

        Args:
            focal_mm: real focal length [mm], covered by the lens.

        Raises:
            OutOfDomainError: the lens does not cover `focal_mm`.
        """
        if not self.covers(focal_mm):
            raise OutOfDomainError("focal_mm", focal_mm, "mm", self.shortest_mm, self.longest_mm)
        known = [f for f in (self.widest_at_shortest, self.widest_at_longest) if f is not None]
        if not known:
            return min(UNKNOWN_WIDEST_F, self.narrowest)
        if not self.is_zoom:
            return known[0]
        share = math.log(focal_mm / self.shortest_mm) / math.log(self.longest_mm / self.shortest_mm)
        share = min(max(share, 0.0), 1.0)
        return float(known[0] ** (1 - share) * known[-1] ** share)


@dataclass(frozen=True)
class Camera:
    """A camera body; times and speeds are exact values.

    Args:
        sensor: its format.
        dial: thirds or halves of a stop.
        base_iso: lowest speed at full quality.
        highest_iso: highest speed that its owner is ready to use.
        longest_s: longest time on the dial [s]; the mark 30 s, which means 32 s.
        shortest_s: shortest time on the dial [s]; the mark 1/4000 s, which every body with
            interchangeable lenses reaches (common practice).
        bulb: longer times can be held by hand or by a release.
        pixels: width and height as the camera writes them; None if unknown.

    Raises:
        OutOfDomainError: a number is not positive and finite, or a range is swapped.
    """

    sensor: SensorFormat
    dial: Dial = Dial.THIRDS
    base_iso: float = 100.0
    highest_iso: float = 6400.0
    longest_s: float = 32.0
    shortest_s: float = 2**-12
    bulb: bool = True
    pixels: tuple[int, int] | None = None

    def __post_init__(self) -> None:
        positive("base_iso", self.base_iso, "")
        positive("highest_iso", self.highest_iso, "")
        within("highest_iso", self.highest_iso, "", self.base_iso, math.inf)
        positive("shortest_s", self.shortest_s, "s")
        positive("longest_s", self.longest_s, "s")
        within("longest_s", self.longest_s, "s", self.shortest_s, math.inf)
        for side in self.pixels or ():
            positive("pixels", side, "px")


#: What a polariser takes [stops]: 1 in theory (unpolarised light, Hecht, Optics; from memory),
#: 1.3 to 2 in practice; the middle (common practice).
POLARISER_STOPS: Final = 1.7
#: Most that filters take together [stops] (own rule: beyond any made).
MOST_FILTER_STOPS: Final = 30.0


def density_stops(density: float) -> float:
    """Stops that a neutral density takes: density over log10(2), so 0.3 is 0.997 and 3.0 is 9.97.

    Args:
        density: optical density, above 0.

    Raises:
        OutOfDomainError: `density` is not a positive finite number.

    Source: definition of optical density as the decimal logarithm of the opacity.
    """
    positive("density", density, "")
    return density / math.log10(2)


def factor_stops(factor: float) -> float:
    """Stops that a filter takes which lets through 1/factor of the light: log2, so 8 is 3.

    Args:
        factor: by how much the time grows, at least 1.

    Raises:
        OutOfDomainError: `factor` is below 1 or not finite.
    """
    positive("factor", factor, "")
    within("factor", factor, "", 1.0, math.inf)
    return math.log2(factor)


def nd_factor(stops: float) -> float:
    """By how much the time grows under a filter of so many stops: 2^stops, so 10 is 1024.

    Args:
        stops: 0 to 30.

    Raises:
        OutOfDomainError: `stops` is out of range.
    """
    within("stops", stops, "stops", 0.0, MOST_FILTER_STOPS)
    return float(2**stops)
