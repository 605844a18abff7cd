"""Level of the white and contrast to the dark rock, on painted and rendered light."""

from __future__ import annotations

import math
import warnings

import numpy as np
import pytest

from core.frame.clipping import find_clipping
from core.frame.contrast import contrast_of
from core.frame.findings import Contrast, WaterArea
from core.frame.report import AreaKind, Box, ClippedArea, Clipping
from core.frame.working import LINEAR_OF_CODE, working_copy
from core.light import HELD_STOPS
from tests.core.frame_files import Pixels
from tests.scenes.camera import toned

WATER = WaterArea(("B2", "B3", "C2", "C3"))


def scene(white: float, dark: float, *, blocked: bool = False) -> Pixels:
    """Rock of a mean level with texture, white water in the middle, as a camera stores it."""
    chance = np.random.default_rng(4)
    light = dark * np.exp(chance.normal(0, 0.3, (800, 1200, 1)) - 0.045) * np.ones(3)
    light[250:550, 400:800] = white * np.exp(chance.normal(0, 0.02, (300, 400, 1)))
    if blocked:
        light[600:, :] = 0
    return toned(np.clip(light, 0, 1).astype(np.float32))


def measured(pixels: Pixels, water: WaterArea | None = WATER) -> Contrast:
    found = contrast_of(working_copy(pixels), find_clipping(pixels), water)
    assert found is not None
    return found


@pytest.mark.parametrize(("white", "dark"), [(0.5, 0.03), (0.25, 0.01), (0.8, 0.02), (0.1, 0.05)])
def test_known_light(white: float, dark: float) -> None:
    """The level of the white and the range come out within a sixth of a stop."""
    found = measured(scene(white, dark))
    assert found.white_stops == pytest.approx(-math.log2(white), abs=1 / 6)
    assert found.stops == pytest.approx(math.log2(white / dark), abs=1 / 4)
    assert (found.offsets_stops, found.at_least) == ((0.0,), False)


def test_codes_are_taken_through_the_curve_of_the_standard() -> None:
    """The table of linear light is that of colour-science."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # it misses plotting, which is not used
        import colour  # noqa: PLC0415

        linear = colour.eotf(np.arange(256) / 255, "sRGB")
    np.testing.assert_allclose(LINEAR_OF_CODE, linear, atol=1e-6)


@pytest.mark.parametrize("stops", [-1.0, -0.5, 0.5])
def test_a_darker_frame_has_the_same_range(stops: float) -> None:
    """With the exposure the level of the white moves, the range does not."""
    first, second = measured(scene(0.4, 0.02)), measured(scene(0.4 * 2**stops, 0.02 * 2**stops))
    assert first.white_stops is not None
    assert second.white_stops is not None
    assert first.white_stops - second.white_stops == pytest.approx(stops, abs=0.1)
    assert second.stops == pytest.approx(first.stops, abs=0.15)


def test_clipped_white() -> None:
    """Of clipped white there is no level, the range is a least, and one darker frame is enough."""
    found = measured(scene(1.5, 0.03))
    assert found.white_stops is None
    assert found.at_least
    assert found.stops == pytest.approx(math.log2(1 / 0.03), abs=1 / 4)
    (offset,) = found.offsets_stops
    assert -1 <= offset < 0


def test_blocked_shadows_alone() -> None:
    """Shadows without anything in them are lifted from the same frame while the range allows."""
    found = measured(scene(0.3, 0.02, blocked=True))
    assert (found.at_least, found.offsets_stops) == (True, (0.0,))


def test_bracket() -> None:
    """White that is lost and shadows that are blocked need several frames, two stops apart."""
    found = measured(scene(3.0, 0.003, blocked=True))
    assert found.at_least
    assert found.stops + 3 > HELD_STOPS
    assert len(found.offsets_stops) > 1
    assert found.offsets_stops[0] < 0
    assert np.diff(found.offsets_stops) == pytest.approx(2)


def test_nothing_with_texture() -> None:
    """Of a smooth frame, and of one smaller than a square, nothing is said."""
    for pixels in (np.full((400, 600, 3), 90, np.uint8), np.full((12, 300, 3), 90, np.uint8)):
        assert contrast_of(working_copy(pixels), find_clipping(pixels)) is None


def test_sky_and_lamps_are_not_the_white() -> None:
    """What is called sky is left out; a frame that is all sky says what it can."""
    pixels = scene(0.25, 0.02)
    pixels[:100] = 255
    sky = _area((0.0, 0.0), (1.0, 0.0), (1.0, 0.13), (0.0, 0.13))
    clipping = Clipping(0.125, {}, (sky,), 255)
    found = contrast_of(working_copy(pixels), clipping)
    assert found is not None
    assert found.white_stops == pytest.approx(2, abs=1 / 6)
    everything = _area((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0))
    found = contrast_of(working_copy(pixels), Clipping(1.0, {}, (everything,), 255), WATER)
    assert found is not None
    assert found.white_stops is None


def _area(*corners: tuple[float, float]) -> ClippedArea:
    box = Box(0, 0, 1, corners[2][1])
    return ClippedArea("A", AreaKind.SKY_GAP, box, 0.1, 1.0, ("red",), 0.9, corners)


@pytest.mark.parametrize("level", [None, 240])
def test_level_of_the_end(level: int | None) -> None:
    """Where whites end below 255 the level counts from there."""
    pixels = scene(0.5, 0.03)
    found = contrast_of(working_copy(pixels), Clipping(0.0, {}, (), None), WATER, level=level)
    end = float(LINEAR_OF_CODE[255 if level is None else level])
    assert found is not None
    assert found.white_stops == pytest.approx(math.log2(end / 0.5), abs=1 / 6)
