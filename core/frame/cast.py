"""White balance of the white water and of the rock, in words and in mired."""

from __future__ import annotations

from typing import Final

import numpy as np
from numpy.typing import NDArray

from core.frame.findings import Cast, SurfaceCast, Tint, WaterArea
from core.frame.report import Clipping
from core.frame.water_area import mask_of
from core.frame.working import LINEAR_OF_CODE, WorkingCopy

Field = NDArray[np.float32]
Mask = NDArray[np.bool_]

#: Every so many pixels of the working copy are looked at: a colour needs no more. Own rule.
_STRIDE: Final = 6
#: White water and grey rock, as lightness [CIE L*] and colourfulness [CIE C*ab]. Own rules: the
#: white may have a strong cast and still be foam; a rock with more colour is moss or peat.
_WATER_LIGHTNESS: Final = (45.0, 97.0)
_WATER_CHROMA: Final = 35.0
_ROCK_LIGHTNESS: Final = (20.0, 60.0)
_ROCK_CHROMA: Final = 20.0
#: A pixel with a channel from here on has lost its colour [codes]. Own rule.
_CLIPPED_CODE: Final = 250
#: Of the water's pixels the lightest part is the foam, whose colour is its light's. Own rule.
_FOAM_PART: Final = 0.4
#: Fewer pixels than this part of what was looked at tell nothing. Own rule.
_LEAST_PART: Final = 0.003
#: With more than this part clipped the colour of the rest is not the water's. Own rule.
_MOST_CLIPPED: Final = 0.5
#: Colours of one surface under one light lie within this of their median [CIE a*, b*]; a wider
#: spread is several surfaces. Own rule.
_WIDEST: Final = 7.0
#: Less colour than this is not seen as a cast [CIE C*ab]. Own rule.
_NEUTRAL_CHROMA: Final = 4.0
#: Hues [deg] of green, blue and magenta casts; warm is the rest. Own rule, along the line of
#: daylight, which runs at about 80 and 265 degrees.
_GREEN: Final = (115.0, 215.0)
_BLUE: Final = (215.0, 305.0)
_MAGENTA_FROM: Final = 305.0
_MAGENTA_BELOW: Final = 35.0

#: Linear red, green, blue to CIE XYZ. Source: IEC 61966-2-1.
_XYZ: Final = np.array(
    [[0.4124, 0.3576, 0.1805], [0.2126, 0.7152, 0.0722], [0.0193, 0.1192, 0.9505]]
)
#: Temperatures that are told [K]. On daylight McCamy's formula is within 3 mired of Robertson's
#: table from 2500 to 12,000 K, within 5 at 15,000 and 9 at 20,000 (computed with colour-science).
_TEMPERATURES_K: Final = (2000.0, 20_000.0)


def measure_cast(work: WorkingCopy, water: WaterArea | None, clipping: Clipping) -> Cast:
    """The cast of the white water and of the grey rock.

    Args:
        work: the working copy.
        water: cells of the water; None: only the rock can be told.
        clipping: of the frame; what is clipped is left out.

    Returns:
        None for a surface that is not there, truly coloured, or mostly clipped.
    """
    codes = work.pixels[::_STRIDE, ::_STRIDE]
    lab = work.lab[::_STRIDE, ::_STRIDE]
    whole = codes.max(axis=2) < _CLIPPED_CODE
    rock = _rock(lab, whole)
    if water is None:
        return Cast(None, _cast_of(codes, lab, rock))
    cells = mask_of(water.cells, work.pixels.shape)[::_STRIDE, ::_STRIDE]
    rock_cast = _cast_of(codes, lab, rock & ~cells)
    if clipping.share and cells.any() and (~whole)[cells].mean() > _MOST_CLIPPED:
        return Cast(None, rock_cast)
    return Cast(_cast_of(codes, lab, _foam(lab, cells & whole)), rock_cast)


def mired_shift(linear: NDArray[np.float64]) -> float | None:
    """Shift of the white balance that makes a colour neutral, positive: warmer [mired].

    Args:
        linear: linear sRGB, shape (3,), 0 or more; near the colours of daylight, which the
            formula does not check.

    Returns:
        None for black, and where no temperature belongs to the colour.

    Source: McCamy, Color Research and Application 17 (1992), correlated colour temperature from
        CIE 1931 x, y; neutral is D65 (IEC 61966-2-1). 1 mired = 1e6 / T.
    """
    xyz = _XYZ @ linear
    total = float(xyz.sum())
    if total <= 0:
        return None
    temperature_k = _mccamy_k(float(xyz[0]) / total, float(xyz[1]) / total)
    low, high = _TEMPERATURES_K
    if not low <= temperature_k <= high:
        return None
    return 1e6 / _mccamy_k(0.3127, 0.3290) - 1e6 / temperature_k


def _mccamy_k(x: float, y: float) -> float:
    slope = (x - 0.3320) / (y - 0.1858)
    return -449.0 * slope**3 + 3525.0 * slope**2 - 6823.3 * slope + 5520.33


def _foam(lab: Field, inside: Mask) -> Mask:
    low, high = _WATER_LIGHTNESS
    lightness = lab[..., 0]
    white = inside & (lightness > low) & (lightness < high)
    white &= np.hypot(lab[..., 1], lab[..., 2]) < _WATER_CHROMA
    if not white.any():
        return white
    return white & (lightness >= np.quantile(lightness[white], 1 - _FOAM_PART))


def _rock(lab: Field, inside: Mask) -> Mask:
    low, high = _ROCK_LIGHTNESS
    dark = inside & (lab[..., 0] > low) & (lab[..., 0] < high)
    return np.asarray(dark & (np.hypot(lab[..., 1], lab[..., 2]) < _ROCK_CHROMA), np.bool_)


def _cast_of(codes: NDArray[np.uint8], lab: Field, surface: Mask) -> SurfaceCast | None:
    """The cast of the pixels of a surface; None for too few or for several colours."""
    if surface.sum() < max(50, _LEAST_PART * surface.size):
        return None
    colours = lab[surface][:, 1:]
    middle = np.median(colours, axis=0)
    if np.median(np.hypot(*(colours - middle).T)) > _WIDEST:
        return None
    linear = np.median(LINEAR_OF_CODE[codes[surface]], axis=0).astype(np.float64)
    tint = _tint(float(middle[0]), float(middle[1]))
    on_daylight = tint in {Tint.NEUTRAL, Tint.BLUE, Tint.WARM}
    return SurfaceCast(tint, mired_shift(linear) if on_daylight else None)


def _tint(a: float, b: float) -> Tint:
    if np.hypot(a, b) < _NEUTRAL_CHROMA:
        return Tint.NEUTRAL
    hue_deg = float(np.degrees(np.arctan2(b, a)) % 360)
    if _GREEN[0] <= hue_deg < _GREEN[1]:
        return Tint.GREEN
    if _BLUE[0] <= hue_deg < _BLUE[1]:
        return Tint.BLUE
    magenta = hue_deg >= _MAGENTA_FROM or hue_deg < _MAGENTA_BELOW
    return Tint.MAGENTA if magenta else Tint.WARM
