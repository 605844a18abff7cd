"""Figures of sharpness: planted defocus, shake, soft thirds, noise, drops; false alarms."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.findings import Sharpness
from core.frame.frame_noise import is_noisy
from core.frame.sharpness import measure_sharpness
from core.frame.wet_glass import wet_glass
from core.frame.working import WorkingCopy, working_copy
from tests.figures.figure import Figure, Material
from tests.figures.photographs import outside, packaged
from tests.scenes.camera import light_of_codes, linear
from tests.scenes.lens import blurred, disc, shared, stroke
from tests.scenes.noise import Field
from tests.scenes.waterfall import Plan, compose

Pixels = NDArray[np.uint8]

_SCENES = 8
_PAIRS = 40
#: Diameters of defocus and lengths of shake that are planted [px of a 1600 px picture].
_DEFOCUS_PX = (5.0, 7.0, 10.0)
_SHAKE_PX = (5.0, 8.0, 14.0, 24.0)
#: Pictures shared at this size and smaller hold no leaf or stone of some pixels only.
_LEAST_SIDE_PX = 1000


@dataclass(frozen=True)
class Verdict:
    """What was planted ("sharp", "defocus", "shake"), what was said, and how far off."""

    planted: str
    said: str
    off_deg: float | None = None


def figures(seed: int) -> Iterator[Figure]:
    """Known blur in rendered falls and in photographs; real pictures as they are."""
    rng = np.random.default_rng(seed)
    rendered = [_scene(int(rng.integers(2**31)), rng) for _ in range(_SCENES)]
    made = [light_of_codes(pixels) for pixels in packaged()]
    for material, lights in ((Material.RENDERED, rendered), (Material.MADE, made)):
        yield from _told(material, [v for light in lights for v in _verdicts(light, rng)])
        yield _thirds(material, lights, rng)
    yield from _drops(packaged(), rng)
    real = outside()
    yield from _untouched(real)
    copies = (light_of_codes(working_copy(pixels).pixels) for pixels in real)
    yield from _told(Material.SHIFTED, [v for light in copies for v in _verdicts(light, rng)])


def _scene(seed: int, rng: np.random.Generator) -> Field:
    wide = bool(rng.integers(2))
    width, height = (1600, 1067) if wide else (1067, 1600)
    scene = compose(Plan(width, height, seed=seed, stream=bool(rng.integers(2))))
    plan = scene.plan
    light = linear(scene.radiance(), plan.exposure, plan.light_ev100, plan.sensor, rng=rng)
    return np.clip(light, 0, 4)


def _verdicts(light: Field, rng: np.random.Generator) -> Iterator[Verdict]:
    yield _verdict(light, None, "sharp", rng)
    for diameter_px in _DEFOCUS_PX:
        yield _verdict(light, disc(diameter_px), "defocus", rng)
    for length_px in _SHAKE_PX:
        angle_deg, bow = float(rng.uniform(0, 180)), float(rng.uniform(-0.15, 0.15))
        kernel = stroke(length_px, angle_deg, bow)
        yield _verdict(light, kernel, "shake", rng, angle_deg)


def _verdict(
    light: Field,
    kernel: Field | None,
    planted: str,
    rng: np.random.Generator,
    angle_deg: float | None = None,
) -> Verdict:
    soft = light if kernel is None else blurred(light, kernel)
    found = _measured(_shared(soft, rng))
    if found.shake is None:
        return Verdict(planted, "defocus" if found.soft_all_over else "sharp")
    if angle_deg is None:
        return Verdict(planted, "shake")
    return Verdict(planted, "shake", abs((found.shake.angle_deg - angle_deg + 90) % 180 - 90))


def _shared(light: Field, rng: np.random.Generator) -> Pixels:
    quality, seed = int(rng.integers(82, 96)), int(rng.integers(2**31))
    return shared(light, float(rng.uniform(0.3, 1.5)), quality, seed)


def _measured(pixels: Pixels) -> Sharpness:
    return measure_sharpness(WorkingCopy(pixels, 1.0), pixels, None)


def _told(material: Material, verdicts: list[Verdict]) -> Iterator[Figure]:
    if not verdicts:
        return

    def rate(name: str, planted: str, said: set[str], aim: float | None, *, least: bool) -> Figure:
        chosen = [verdict for verdict in verdicts if verdict.planted == planted]
        value = float(np.mean([verdict.said in said for verdict in chosen]))
        return Figure("sharpness", material, name, value, len(chosen), aim, least)

    soft = {"defocus", "shake"}
    yield rate("defocus of 5 px and more caught", "defocus", soft, 0.9, least=True)
    yield rate("shake of 5 px and more caught", "shake", soft, 0.9, least=True)
    yield rate("sharp called soft or shaken", "sharp", soft, 0.05, least=False)
    yield rate("defocus called shake", "defocus", {"shake"}, 0.05, least=False)
    yield rate("shake called defocus", "shake", {"defocus"}, None, least=False)
    off = [verdict.off_deg for verdict in verdicts if verdict.off_deg is not None]
    for part in (50, 90):
        name = f"direction of shake, {part} % within [deg]"
        value = float(np.percentile(off, part)) if off else 90.0
        yield Figure("sharpness", material, name, value, len(off))


def _thirds(material: Material, lights: Iterable[Field], rng: np.random.Generator) -> Figure:
    """A third behind a Gaussian of 1.5 to 2.5 px is the softest, where it was not before."""
    right: list[bool] = []
    for light in lights:
        before = _measured(_shared(light, rng)).thirds
        third, height = int(rng.integers(3)), light.shape[0]
        if before[third] is None or sum(width is not None for width in before) < 2:
            continue
        soft = cv2.GaussianBlur(light, (0, 0), float(rng.uniform(1.5, 2.5)))
        mixed = light.copy()
        rows = slice(third * height // 3, (third + 1) * height // 3)
        mixed[rows] = soft[rows]
        right.append(_measured(_shared(mixed, rng)).softest == third)
    name = "third blurred by 1.5 px and more found"
    return Figure("sharpness", material, name, float(np.mean(right)), len(right), 0.8)


def _drops(photographs: list[Pixels], rng: np.random.Generator) -> Iterator[Figure]:
    """Pairs of different photographs, clean and with the same three soft spots."""
    sized = [_small(pixels) for pixels in photographs]
    false: list[bool] = []
    found: list[bool] = []
    for _ in range(_PAIRS):
        pair = [sized[int(number)] for number in rng.choice(len(sized), 2, replace=False)]
        false.append(bool(_wet(pair)))
        spots = rng.uniform((0.12, 0.15, 0.02), (0.88, 0.85, 0.05), (3, 3))
        boxes = _wet([_with_drops(pixels, spots) for pixels in pair])
        found.append(bool(boxes))
    material = Material.MADE
    yield Figure("sharpness", material, "clean pairs called wet", float(np.mean(false)),
                 len(false), 0.02, at_least=False)  # fmt: skip
    yield Figure("sharpness", material, "pairs with three drops called wet",
                 float(np.mean(found)), len(found), 0.7)  # fmt: skip


def _small(pixels: Pixels) -> Pixels:
    return np.asarray(cv2.resize(pixels, (600, 400), interpolation=cv2.INTER_AREA), np.uint8)


def _wet(pair: list[Pixels]) -> int:
    return len(wet_glass(WorkingCopy(pair[0], 1.0), WorkingCopy(pair[1], 1.0)))


def _with_drops(pixels: Pixels, spots: NDArray[np.float64]) -> Pixels:
    """Soft round spots: place as shares of the sides, radius as a share of the short one."""
    wet = pixels.astype(np.float32)
    height, width = pixels.shape[:2]
    rows, columns = np.mgrid[:height, :width]
    for across, down, share in spots:
        radius_px = share * height
        away_px = np.hypot(columns - across * width, rows - down * height)
        part = np.clip((radius_px - away_px) / (0.3 * radius_px), 0, 1)[..., None]
        wet += (cv2.GaussianBlur(wet, (0, 0), 0.5 * radius_px) + 3 - wet) * part
    return np.clip(wet, 0, 255).astype(np.uint8)


def _untouched(real: list[Pixels]) -> Iterator[Figure]:
    """Pictures from outside, all of them meant to be sharp and none of them shaken."""
    if not real:
        return
    found = [measure_sharpness(working_copy(pixels), pixels, None) for pixels in real]
    rates = {
        "called shaken": [bool(sharpness.shake) for sharpness in found],
        "called soft all over": [sharpness.soft_all_over for sharpness in found],
        "called noisy": [is_noisy(pixels) for pixels in real if max(pixels.shape) > _LEAST_SIDE_PX],
    }
    for name, said in rates.items():
        yield Figure("sharpness", Material.REAL, name, float(np.mean(said)), len(said), 0.05, False)
