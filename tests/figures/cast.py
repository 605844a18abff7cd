"""Figures of the cast: known shifts of the white balance in rendered falls, told in mired."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from numpy.typing import NDArray

from core.frame.cast import measure_cast
from core.frame.findings import SurfaceCast, Tint, WaterArea
from core.frame.report import Clipping
from core.frame.working import WorkingCopy
from tests.figures.figure import Figure, Material
from tests.scenes.camera import Exposure, linear
from tests.scenes.lens import shared
from tests.scenes.noise import Field
from tests.scenes.waterfall import Plan, compose

_SCENES = 4
_SHIFTS_MIRED = (-80.0, -40.0, 40.0, 80.0)
#: Where the fall of the tall scenes stands.
_WATER = WaterArea(("A2", "A3", "B2", "B3", "C2", "C3"))
_NEUTRAL_K = 6504.0


def figures(seed: int) -> Iterator[Figure]:
    """The change of the shift that is told, against the one that was made."""
    rng = np.random.default_rng(seed)
    off: dict[str, list[float]] = {"water": [], "rock": []}
    right: list[bool] = []
    for _ in range(_SCENES):
        light = _scene(int(rng.integers(2**31)))
        before = _cast(light, 0.0)
        for shift_mired in _SHIFTS_MIRED:
            after = _cast(light, shift_mired)
            for name, errors in off.items():
                errors.extend(_errors(before[name], after[name], shift_mired))
            right += _named(after["water"], shift_mired)
    for name, errors in off.items():
        yield _figure(f"shift of the {name}, median error [mired]", np.median(errors), errors)
    yield Figure("cast", Material.RENDERED, "white water's tint named right",
                 float(np.mean(right)), len(right), 0.9)  # fmt: skip


def _figure(name: str, value: float | np.floating, errors: list[float]) -> Figure:
    return Figure("cast", Material.RENDERED, name, float(value), len(errors), 10.0, at_least=False)


def _errors(
    before: SurfaceCast | None, after: SurfaceCast | None, shift_mired: float
) -> list[float]:
    if before is None or after is None or before.mired is None or after.mired is None:
        return []
    return [abs(after.mired - before.mired - shift_mired)]


def _named(cast: SurfaceCast | None, shift_mired: float) -> list[bool]:
    if cast is None:
        return []
    return [cast.tint is (Tint.BLUE if shift_mired > 0 else Tint.WARM)]


def _scene(seed: int) -> Field:
    plan = Plan(1067, 1600, seed=seed, exposure=Exposure(2**3.5, 2**-3))
    rng = np.random.default_rng(seed)
    radiance = compose(plan).radiance()
    return linear(radiance, plan.exposure, plan.light_ev100, plan.sensor, rng=rng)


def _cast(light: Field, shift_mired: float) -> dict[str, SurfaceCast | None]:
    """Cast of a scene that would need a shift to be neutral."""
    gains = gains_of(1e6 / (1e6 / _NEUTRAL_K - shift_mired)) / gains_of(_NEUTRAL_K)
    pixels = shared(light * (gains / gains[1]).astype(np.float32), 0.5, 92, 1)
    found = measure_cast(WorkingCopy(pixels, 1.0), _WATER, Clipping(0.0, {}))
    return {"water": found.water, "rock": found.rock}


def gains_of(temperature_k: float) -> NDArray[np.float64]:
    """Linear sRGB of daylight of a temperature, shape (3,), luminance 1.

    Source: CIE 15, daylight locus, 4000 to 25,000 K; IEC 61966-2-1; below 4000 K its line is
        carried on. From memory; a test compares with colour-science.
    """
    t = 1e3 / temperature_k
    low = temperature_k <= 7000
    x = (
        0.244063 + 0.09911 * t + 2.9678 * t**2 - 4.6070 * t**3
        if low
        else 0.237040 + 0.24748 * t + 1.9018 * t**2 - 2.0064 * t**3
    )
    y = -3.0 * x**2 + 2.870 * x - 0.275
    xyz = np.array([x / y, 1.0, (1 - x - y) / y])
    to_xyz = np.array(
        [[0.4124, 0.3576, 0.1805], [0.2126, 0.7152, 0.0722], [0.0193, 0.1192, 0.9505]]
    )
    return np.asarray(np.linalg.solve(to_xyz, xyz), np.float64)
