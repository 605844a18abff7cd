"""The scenes' camera keeps to the definitions of exposure, saturation and tone."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest

from tests.scenes.camera import MID_TONE, Exposure, Sensor, level_stops, linear, toned

QUIET = Sensor(full_well=0)
METERED = Exposure(2**3.5, 2**-2)  # EV 9


def exposed(
    exposure: Exposure, sensor: Sensor = QUIET, filter_stops: float = 0.0
) -> np.ndarray[tuple[int, ...], np.dtype[np.float32]]:
    """A mid-tone and a level four stops above it, under light of EV 9."""
    radiance = np.ones((2, 2, 3), np.float32)
    radiance[1] = 16
    rng = np.random.default_rng(0)
    return linear(radiance, exposure, 9.0, sensor, rng=rng, filter_stops=filter_stops)


def test_exposure_value() -> None:
    """f/11 and 1/4 s, exactly 2^3.5 and 2^-2, are EV 9; ISO 400 makes it 7 (ISO 2720)."""
    assert METERED.ev100() == pytest.approx(9)
    assert replace(METERED, iso=400).ev100() == pytest.approx(7)


@pytest.mark.parametrize(
    ("changed", "stops"),
    [
        (replace(METERED, shutter_s=0.5), 1),
        (replace(METERED, iso=200), 1),
        (replace(METERED, f_number=2**3), 1),
        (replace(METERED, shutter_s=2 ** (-8 / 3)), -2 / 3),
    ],
)
def test_a_stop_doubles_the_linear_values(changed: Exposure, stops: float) -> None:
    """Each stop of time, ISO or aperture is a factor of two in linear light."""
    ratio = exposed(changed) / exposed(METERED)
    np.testing.assert_allclose(ratio, 2**stops, rtol=1e-5)
    assert level_stops(changed, 9.0) == pytest.approx(stops)


def test_a_filter_takes_its_stops() -> None:
    """A filter of three stops leaves an eighth of the light."""
    ratio = exposed(METERED, filter_stops=3) / exposed(METERED)
    np.testing.assert_allclose(ratio, 1 / 8, rtol=1e-5)


@pytest.mark.parametrize("saturation_stops", [math.log2(1 / MID_TONE), 2.98, 4.0])
def test_saturation_lies_where_it_was_put(saturation_stops: float) -> None:
    """A level at saturation reads 1: that many stops over the metered mid-tone."""
    sensor = replace(QUIET, saturation_stops=saturation_stops)
    values = exposed(METERED, sensor)
    assert float(values[0, 0, 0]) == pytest.approx(2**-saturation_stops, rel=1e-5)
    assert float(values[1, 0, 0]) == pytest.approx(2 ** (4 - saturation_stops), rel=1e-5)


def test_balance_moves_one_channel() -> None:
    """A blue gain of two is one stop more in blue alone."""
    values = exposed(METERED, replace(QUIET, balance=(1.0, 1.0, 2.0)))
    np.testing.assert_allclose(values[0, 0] / MID_TONE, [1, 1, 2], rtol=1e-5)


@pytest.mark.parametrize("seed", [3, 4])
def test_shot_noise_is_the_root_of_the_electrons(seed: int) -> None:
    """10,000 electrons at saturation: half of it is noisy by sqrt(5000) electrons (Poisson)."""
    sensor = Sensor(saturation_stops=1, full_well=10_000, read_noise=0)
    rng = np.random.default_rng(seed)
    values = linear(np.ones((200, 200, 3), np.float32), METERED, 9.0, sensor, rng=rng)
    assert float(values.std()) == pytest.approx(math.sqrt(5000) / 10_000, rel=0.02), f"seed {seed}"


def test_tone_curve() -> None:
    """18 % prints as 118, black as 0, and all from saturation on as 255 (IEC 61966-2-1)."""
    values = np.array([[0, 0.18, 1, 7, -0.1]], np.float32)
    np.testing.assert_array_equal(toned(values), [[0, 118, 255, 255, 0]])
