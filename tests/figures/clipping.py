"""Figures of clipping: shares, pixels, names of areas, contrast."""

from __future__ import annotations

import io
import os
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray
from PIL import Image

from core.frame.clipped_pixels import clipping_ends
from core.frame.clipping import find_clipping
from core.frame.contrast import contrast_of
from core.frame.decode import decode
from core.frame.findings import WaterArea
from core.frame.histogram import brightest_channel, code_counts
from core.frame.report import AreaKind, ClippedArea, Clipping
from core.frame.working import LINEAR_OF_CODE, working_copy
from tests.figures.figure import Figure, Material
from tests.scenes.camera import Curve, linear, toned
from tests.scenes.noise import Field
from tests.scenes.waterfall import Plan, Scene, compose, with_clipped_share
from tests.scenes.whites import Bright, Whites, planted
from tests.training.kinds import background, file_of, gorge
from tests.training.pictures import HELD_OUT, light_of

Pixels = NDArray[np.uint8]

_SCENES: int = 12
_MADE: int = 40
_QUALITY: Final = 90
_CURVES: Final = {
    "sRGB": Curve(),
    "shoulder": Curve(shoulder=0.5),
    "steep": Curve(shoulder=0.3, contrast=0.4),
}
#: Photographs of the registries' packages and how far they are pushed [stops].
_PUSHED: Final = ("coffee.png", "chelsea.png", "astronaut.png", "flower.jpg", "china.jpg")
_PUSHES: Final = (0.8, 1.4, 2.0)
#: Part of an area that shows one thing, for its name to be judged.
_PURE: Final = 0.8
_NAMED: Final = {
    Bright.WATER: AreaKind.WHITE_WATER, Bright.SPARKLE: AreaKind.SPARKLE,
    Bright.SKY: AreaKind.SKY_GAP, Bright.LAMP: AreaKind.LAMP, Bright.PALE: AreaKind.UNSURE,
}  # fmt: skip


def figures(seed: int) -> Iterator[Figure]:
    """Rendered falls, things planted in photographs, pushed photographs, and real frames.

    Kinds are trained with the recipe's own seed and none of the pictures in `HELD_OUT`, nor any
    real frame. Likelihoods from which they are named were chosen on the recipe's pictures, left out
    of training in turn; the rules of sparkle on seeds 901 to 904: other scenes and other things
    planted, but in the same pictures of `HELD_OUT`.
    The rule of clipped pixels was chosen on scenes of seed 101 and the photographs of Debian's
    packages that kinds are trained on, pushed; none of them is in `_PUSHED`. Rules of place and
    size in `core.frame.kinds` were drawn from real frames, those of `_SEEN` too.
    """
    rng = np.random.default_rng(seed)
    scenes = [_scene(rng) for _ in range(_SCENES)]
    yield _lossless_share(rng)
    yield from _pixels(Material.RENDERED, [_light(scene, rng) for scene in scenes[:4]])
    yield from _pixels(Material.MADE, [light_of(name) * np.float32(2**push)
                                       for name in _PUSHED for push in _PUSHES])  # fmt: skip
    yield from _names(Material.RENDERED, [_judged(gorge(rng), rng) for _ in range(_SCENES)])
    made = [_judged(planted(background(rng, HELD_OUT), rng), rng) for _ in range(_MADE)]
    yield from _names(Material.MADE, made)
    yield from _names(Material.REAL, list(_real()))
    yield from _contrast(scenes, rng)


def _scene(rng: np.random.Generator) -> Scene:
    wide = bool(rng.integers(2))
    width, height = (1200, 800) if wide else (800, 1200)
    plan = Plan(
        width, height, seed=int(rng.integers(2**31)), sky_gap=bool(rng.integers(2)),
        stream=bool(rng.integers(2)), sparkle_share=float(rng.uniform(0.0001, 0.0008)),
    )  # fmt: skip
    return with_clipped_share(compose(plan), float(rng.uniform(0.005, 0.08)))


def _light(scene: Scene, rng: np.random.Generator) -> Field:
    """Linear light on the sensor, 1 = saturation."""
    plan = scene.plan
    return linear(scene.radiance(), plan.exposure, plan.light_ev100, plan.sensor, rng=rng)


def _lossless_share(rng: np.random.Generator) -> Figure:
    """A file without loss in which a known number of pixels is at the end of the scale."""
    off = []
    for _ in range(4):
        pixels = rng.integers(0, 249, (600, 900, 3)).astype(np.uint8)
        white = rng.random((600, 900)) < rng.uniform(0, 0.3)
        pixels[white, int(rng.integers(3))] = 255
        off.append(abs(find_clipping(pixels).share - float(white.mean())))
    name = "clipped share without loss, worst off"
    return Figure("clipping", Material.MADE, name, max(off), 4, 0.0005, at_least=False)


def _pixels(material: Material, lights: Sequence[Field]) -> Iterator[Figure]:
    """Precision and recall of all clipped pixels together, and the share, by tone curve."""
    for name, curve in _CURVES.items():
        both, found, there, off = np.array([_counted(light, curve) for light in lights]).T
        count = len(lights)
        precision, recall = both.sum() / found.sum(), both.sum() / there.sum()
        yield Figure("clipping", material, f"precision, {name} curve", precision, count, 0.95)
        yield Figure("clipping", material, f"recall, {name} curve", recall, count, 0.95)
        yield Figure("clipping", material, f"share, {name} curve, median off",
                     float(np.median(off)), count)  # fmt: skip


def _counted(light: Field, curve: Curve) -> tuple[float, float, float, float]:
    """Pixels rightly found, found, and there; how far the share is off."""
    truth = (light >= 1).any(axis=2)
    stream = io.BytesIO()
    codes = toned(np.clip(light, 0, 1), curve)
    Image.fromarray(codes).save(stream, "JPEG", quality=_QUALITY)
    frame = decode(stream.getvalue())
    found = clipped_mask(frame.pixels, frame.jpeg_quality)
    share = find_clipping(frame.pixels, jpeg_quality=frame.jpeg_quality).share
    there, off = float(truth.sum()), abs(share - float(truth.mean()))
    return float((truth & found).sum()), float(found.sum()), there, off


def clipped_mask(pixels: Pixels, quality: int | None) -> NDArray[np.bool_]:
    """The pixels that the check counts as clipped, shape (h, w)."""
    brightest = brightest_channel(pixels)
    ends = clipping_ends(code_counts(brightest), resized=False, jpeg_quality=quality)
    return ends.mask(pixels, brightest) > 0


@dataclass(frozen=True)
class Judged:
    """What an area shows, and what it was called."""

    truth: AreaKind
    said: AreaKind


def _judged(whites: Whites, rng: np.random.Generator) -> list[Judged]:
    pixels, quality = file_of(whites.light, rng)
    clipping = find_clipping(pixels, jpeg_quality=quality)
    shows = np.where((whites.light >= 1).any(axis=2), whites.shows, Bright.NOTHING)
    return list(_against(clipping, shows.astype(np.uint8)))


def _against(clipping: Clipping, shows: NDArray[np.uint8]) -> Iterator[Judged]:
    """Each area that shows one thing, beside its name; specks of water are sparkle too."""
    left = shows.copy()
    for area in clipping.areas:
        inside = _inside(area, shows.shape)
        truth = _majority(shows[inside])
        left[inside] = Bright.NOTHING
        if area.contour and truth is not None:
            yield Judged(_NAMED[truth], area.kind)
    for area in clipping.areas:
        truth = None if area.contour else _majority(left)
        truth = Bright.SPARKLE if truth is Bright.WATER else truth
        if truth is not None:
            yield Judged(_NAMED[truth], area.kind)


def _inside(area: ClippedArea, shape: tuple[int, ...]) -> NDArray[np.bool_]:
    height, width = shape[:2]
    mask = np.zeros((height, width), np.uint8)
    if area.contour:
        corners = np.round(np.array(area.contour) * (width, height)).astype(np.int32)
        cv2.fillPoly(mask, [corners], 1)
    return mask.astype(np.bool_)


def _majority(shows: NDArray[np.uint8]) -> Bright | None:
    counts = np.bincount(shows.ravel(), minlength=len(Bright))
    counts[Bright.NOTHING] = 0
    best = int(np.argmax(counts))
    return Bright(best) if counts[best] and counts[best] >= _PURE * counts.sum() else None


def _names(material: Material, pictures: list[list[Judged]]) -> Iterator[Figure]:
    areas = [area for picture in pictures for area in picture]
    if not areas:
        return
    nameable = [area for area in areas if area.truth is not AreaKind.UNSURE]
    given = [area for area in areas if area.said is not AreaKind.UNSURE]
    named = [area for area in nameable if area.said is not AreaKind.UNSURE]
    right = [area for area in given if area.said is area.truth]
    yield Figure("clipping", material, "areas of the four kinds that are named",
                 len(named) / max(len(nameable), 1), len(nameable), 0.7)  # fmt: skip
    yield Figure("clipping", material, "names that are right",
                 len(right) / max(len(given), 1), len(given), 0.95)  # fmt: skip
    for kind in (AreaKind.WHITE_WATER, AreaKind.SPARKLE, AreaKind.SKY_GAP, AreaKind.LAMP):
        said = [area.truth is kind for area in given if area.said is kind]
        if said:
            yield Figure("clipping", material, f"called {kind.value}, right",
                         float(np.mean(said)), len(said))  # fmt: skip


#: What parts of real frames show, judged by eye: left, top, right, bottom, in shares; the first
#: that holds the middle of an area decides, and what lies in none is not judged.
_SEEN: Final[dict[str, tuple[tuple[Bright, float, float, float, float], ...]]] = {
    "water/kodim13.png": ((Bright.SKY, 0, 0, 1, 0.27), (Bright.WATER, 0.35, 0.55, 0.8, 1)),
    "water/Landscape_0.jpg": (
        (Bright.PALE, 0.44, 0, 0.6, 0.1), (Bright.PALE, 0.4, 0.85, 0.62, 1),
        (Bright.PALE, 0.45, 0.4, 0.55, 0.6), (Bright.PALE, 0, 0.44, 0.1, 0.55),
        (Bright.SKY, 0, 0, 0.62, 0.4), (Bright.WATER, 0.6, 0.1, 0.85, 1),
    ),
    "water/Sony_DCR-PC110.jpg": ((Bright.SKY, 0, 0, 1, 0.25), (Bright.WATER, 0.15, 0.42, 1, 1)),
    "water/life_by_Aitzol_Berasategi.jpg": (
        (Bright.PALE, 0.1, 0.3, 0.45, 0.9), (Bright.PALE, 0.62, 0.1, 1, 0.8),
    ),
    "water/sunset_by_Aitzol_Berasategi.jpg": ((Bright.LAMP, 0.3, 0.25, 0.75, 0.55),),
    "water/11-tests.jpg": ((Bright.SKY, 0, 0, 1, 0.28), (Bright.PALE, 0.5, 0.5, 1, 1)),
    "camera/FujiFilm_FinePixS2Pro.jpg": ((Bright.SKY, 0, 0, 1, 1),),
    "camera/Nikon_D5000.jpg": ((Bright.SKY, 0, 0, 1, 0.47), (Bright.PALE, 0, 0.5, 1, 1)),
    "camera/Olympus_E-10.jpg": ((Bright.PALE, 0, 0.1, 1, 1),),
    "camera/Sony_DSC-HX5V_2_.jpg": ((Bright.PALE, 0.3, 0.35, 0.75, 1), (Bright.SKY, 0, 0, 1, 0.5)),
    "camera/Canon_PowerShot_A560.jpg": ((Bright.PALE, 0, 0.6, 1, 1),),
    "odd/33-type_error.jpg": ((Bright.SKY, 0, 0, 1, 0.5),),
    "odd/45-gps_ifd.jpg": ((Bright.SKY, 0, 0, 1, 0.1), (Bright.PALE, 0, 0.35, 1, 1)),
    "heic/Issue_487.heic": ((Bright.PALE, 0, 0, 1, 1),),
    "heic/exif-at-eof.heic": ((Bright.PALE, 0, 0, 1, 1),),
}  # fmt: skip
_REAL_PUSHES: Final = (0.0, 0.7, 1.2)
_REAL_LONG_PX: Final = 2000


def _real() -> Iterator[list[Judged]]:
    """Frames from the folder of FRAMES_DIR, as they are and pushed."""
    folder = os.environ.get("FRAMES_DIR")
    for name, seen in _SEEN.items() if folder else ():
        path = Path(folder or "") / name
        if not path.is_file():
            continue
        pixels = decode(path.read_bytes()).pixels
        scale = min(1.0, _REAL_LONG_PX / max(pixels.shape))
        small = cv2.resize(pixels, None, fx=scale, fy=scale, interpolation=cv2.INTER_AREA)
        for push in _REAL_PUSHES if seen[0][0] is not Bright.LAMP else (0.0,):
            yield _by_eye(np.asarray(small, np.uint8), push, seen)


def _by_eye(
    pixels: Pixels, push: float, seen: tuple[tuple[Bright, float, float, float, float], ...]
) -> list[Judged]:
    light = LINEAR_OF_CODE[pixels] * np.float32(2**push)
    stream = io.BytesIO()
    Image.fromarray(toned(np.clip(light, 0, 1))).save(stream, "JPEG", quality=_QUALITY)
    frame = decode(stream.getvalue())
    found = find_clipping(frame.pixels, jpeg_quality=frame.jpeg_quality)
    judged = []
    for area in found.areas:
        across, down = area.box.left + area.box.width / 2, area.box.top + area.box.height / 2
        for what, left, top, right, bottom in seen:
            if area.contour and left <= across <= right and top <= down <= bottom:
                judged.append(Judged(_NAMED[what], area.kind))
                break
    return judged


def _contrast(scenes: Sequence[Scene], rng: np.random.Generator) -> Iterator[Figure]:
    """Level of the white of water that is not clipped, against the light itself."""
    off: dict[str, list[float]] = {name: [] for name in _CURVES}
    for scene in scenes:
        stops = float(rng.uniform(0.3, 1.8))
        plan = replace(scene.plan, white_stops=2.2 - stops, sparkle_share=0.0)
        dim = replace(scene, plan=plan, sky=scene.sky * 0, sparkle=scene.sparkle * 0)
        light = _light(dim, rng)
        water = WaterArea(("B2", "B3", "C2", "C3"))
        truth = _white_level(light)
        for name, curve in _CURVES.items():
            pixels = toned(np.clip(light, 0, 1), curve)
            found = contrast_of(working_copy(pixels), find_clipping(pixels), water)
            if found is not None and found.white_stops is not None:
                off[name].append(abs(found.white_stops - truth))
    for name, values in off.items():
        title = f"white of the water, {name} curve, off [stops]"
        yield Figure("clipping", Material.RENDERED, title,
                     float(np.median(values)), len(values),
                     1 / 3 if name == "sRGB" else None, at_least=False)  # fmt: skip


def _white_level(light: Field) -> float:
    """Stops of the water's body below saturation, of blocks of four pixels in the middle cells."""
    height, width = light.shape[:2]
    middle = light[height // 4 : 3 * height // 4, width // 4 : 3 * width // 4]
    blocks = cv2.resize(middle, None, fx=0.25, fy=0.25, interpolation=cv2.INTER_AREA)
    return -float(np.log2(np.percentile(np.asarray(blocks).max(axis=2), 98)))
