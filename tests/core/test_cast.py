"""White balance of water and rock: tables, laws, bad input."""

from __future__ import annotations

import warnings
from typing import NamedTuple

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from numpy.typing import NDArray

from core.frame.cast import measure_cast, mired_shift
from core.frame.findings import Cast, SurfaceCast, Tint, WaterArea
from core.frame.report import Clipping
from core.frame.working import LINEAR_OF_CODE, WorkingCopy
from tests.figures.cast import gains_of

CLEAN = Clipping(0.0, {})
#: The upper half of the picture is water.
WATER = WaterArea(tuple(row + column for row in "AB" for column in "1234"))
Colour = tuple[int, int, int]


def picture(water: Colour, rock: Colour) -> NDArray[np.uint8]:
    """Water above, rock below."""
    pixels = np.zeros((400, 600, 3), np.uint8)
    pixels[:200], pixels[200:] = water, rock
    return pixels


def cast_of(water: Colour, rock: Colour) -> Cast:
    return measure_cast(WorkingCopy(picture(water, rock), 1.0), WATER, CLEAN)


class Row(NamedTuple):
    """A colour of the water and its tint; whether a temperature makes it grey."""

    water: Colour
    tint: Tint
    warmer: bool | None


@pytest.mark.parametrize(
    "row",
    [
        Row((200, 200, 200), Tint.NEUTRAL, None),
        Row((190, 200, 220), Tint.BLUE, True),
        Row((220, 205, 185), Tint.WARM, False),
        Row((190, 215, 190), Tint.GREEN, None),
        Row((215, 190, 215), Tint.MAGENTA, None),
        Row((225, 190, 195), Tint.MAGENTA, None),
    ],
    ids=str,
)
def test_tints(row: Row) -> None:
    """The word of a colour, and the way in which the white balance would go."""
    water = cast_of(row.water, (60, 60, 60)).water
    assert water is not None
    assert water.tint is row.tint
    if row.warmer is not None:
        assert water.mired is not None
        assert (water.mired > 0) is row.warmer
    elif row.tint is Tint.NEUTRAL:
        assert water.mired == pytest.approx(0, abs=1)
    else:
        assert water.mired is None


@pytest.mark.parametrize("temperature_k", [4500.0, 5500.0, 6504.0, 8000.0, 10_000.0])
def test_the_shift_of_daylight(temperature_k: float) -> None:
    """A white under daylight of T shifts by 1e6/6504 − 1e6/T, within 4 mired (McCamy's formula)."""
    shift = mired_shift(gains_of(temperature_k))
    assert shift == pytest.approx(1e6 / 6504 - 1e6 / temperature_k, abs=4)


@pytest.mark.parametrize("code", [(250, 200, 160), (200, 200, 200), (160, 200, 250)])
def test_against_a_reference_library(code: Colour) -> None:
    """colour-science gives the same temperature, within its matrix's last digits."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # it misses plotting, which is not used
        import colour  # noqa: PLC0415

        linear = LINEAR_OF_CODE[np.array(code)].astype(np.float64)
        xy = colour.XYZ_to_xy(colour.sRGB_to_XYZ(np.array(code) / 255))
        temperature_k = float(colour.temperature.xy_to_CCT(xy, method="McCamy 1992"))
        neutral_k = float(colour.temperature.xy_to_CCT((0.3127, 0.3290), method="McCamy 1992"))
    assert mired_shift(linear) == pytest.approx(1e6 / neutral_k - 1e6 / temperature_k, abs=0.5)


@given(st.floats(0.05, 1.0))
def test_brightness_changes_no_shift(factor: float) -> None:
    """Twice the light has the same colour."""
    colour = np.array([0.5, 0.6, 0.8])
    assert mired_shift(colour * factor) == pytest.approx(mired_shift(colour))


@pytest.mark.parametrize("linear", [(0, 0, 0), (0, 0, 1)], ids=["black", "pure blue"])
def test_colours_without_a_temperature(linear: tuple[float, float, float]) -> None:
    """Black and pure blue have none."""
    assert mired_shift(np.array(linear, np.float64)) is None


def test_coloured_surfaces_are_left_out() -> None:
    """Moss, leaves and peat-brown water are no grey."""
    assert cast_of((70, 45, 20), (60, 110, 30)) == Cast(None, None)


def test_surfaces_of_several_colours_are_left_out() -> None:
    """Half blue-grey and half brown rock has no one cast."""
    pixels = picture((200, 200, 200), (60, 70, 90))
    pixels[200:, ::2] = pixels[200:, :300]
    pixels[200:, 300:] = (90, 75, 55)
    found = measure_cast(WorkingCopy(pixels, 1.0), WATER, CLEAN)
    assert found.rock is None
    assert found.water is not None


@pytest.mark.parametrize("share", [0.0, 0.5])
def test_clipped_water_has_no_cast(share: float) -> None:
    """What is clipped is left out; the rock is told all the same."""
    pixels = picture((255, 255, 255), (100, 100, 100))
    found = measure_cast(WorkingCopy(pixels, 1.0), WATER, Clipping(share, {}))
    assert found.water is None
    assert found.rock is not None
    assert found.rock.tint is Tint.NEUTRAL


def test_mostly_clipped_water_has_no_cast() -> None:
    """The few pixels that are left at the rim of the clipped are no measure."""
    pixels = picture((255, 255, 255), (100, 100, 100))
    pixels[:80] = (220, 210, 190)
    assert measure_cast(WorkingCopy(pixels, 1.0), WATER, Clipping(0.3, {})).water is None


def test_without_cells_only_the_rock() -> None:
    """Nobody said where the water is."""
    work = WorkingCopy(picture((200, 200, 200), (70, 80, 100)), 1.0)
    found = measure_cast(work, None, CLEAN)
    assert found.water is None
    assert isinstance(found.rock, SurfaceCast)
    assert found.rock.tint is Tint.BLUE


@pytest.mark.parametrize("size", [(1, 1), (3, 100), (100, 100)])
@pytest.mark.parametrize("code", [0, 255])
def test_bad_pictures(size: tuple[int, int], code: int) -> None:
    """Tiny, black and white pictures have no cast."""
    work = WorkingCopy(np.full((*size, 3), code, np.uint8), 1.0)
    assert measure_cast(work, WATER, CLEAN) == Cast(None, None)
