"""Figures of raw files: clipped shares, room to the right, and the preview's error."""

from __future__ import annotations

import io
import os
import re
from collections.abc import Iterator
from pathlib import Path

import numpy as np
from PIL import Image

from core.frame.check import check_frame
from core.frame.photosites import COLOURS
from core.frame.report import FrameReport
from tests.figures.figure import Figure, Material
from tests.scenes.camera import Exposure, Sensor, linear, toned
from tests.scenes.dng import Photosites, dng, mosaic
from tests.scenes.noise import Field
from tests.scenes.waterfall import Plan, compose

_SCENES = 8
#: Side of the blocks whose brightest are the body: about a 400th of the long side [px].
_BLOCK_PX = 4
#: Names of files of which a known share of the photosites is clipped, in thousandths of a percent.
_KNOWN = re.compile(r"clip(\d{5})\.dng")


def figures(seed: int) -> Iterator[Figure]:
    """Rendered falls through sensors that end in different places, and files of known shares."""
    clipped, room, preview = _rendered(seed)
    yield _worst("clipped share, worst error [% of the frame]", clipped, 0.05)
    yield _worst("room to the right, worst error [stops]", room, 1 / 6)
    yield _worst("preview's error, worst error [stops]", preview, 0.25)
    yield from _real()


def _worst(name: str, errors: list[float], aim: float) -> Figure:
    worst = max(errors, default=0.0)
    return Figure("raw", Material.RENDERED, name, worst, len(errors), aim, at_least=False)


def _rendered(seed: int) -> tuple[list[float], list[float], list[float]]:
    rng = np.random.default_rng(seed)
    clipped: list[float] = []
    room: list[float] = []
    preview: list[float] = []
    for _ in range(_SCENES):
        bits = int(rng.choice((12, 14)))
        end = int(2**bits * rng.uniform(0.92, 0.998))
        black = int(rng.choice((0, 2 ** (bits - 5))))
        push = float(rng.uniform(-2.0, 1.0))
        over = float(rng.uniform(0.3, 1.0))
        scene = int(rng.integers(2**31))
        light = _light(scene, push)
        codes = mosaic(light, (end,) * 3, black, noise=end * 8e-4, seed=int(rng.integers(2**31)))
        file = io.BytesIO()
        Image.fromarray(toned(light * np.float32(2**over))).save(file, "JPEG", quality=93)
        sites = Photosites(codes, black, 2**bits - 1, preview=file.getvalue())
        report, _ = check_frame(dng(sites))
        clipped += _share_errors(report, light)
        room += _room_errors(report, _light(scene, push, sparkle=0.0))
        if report.raw is not None and report.raw.preview_over_stops is not None:
            preview.append(abs(report.raw.preview_over_stops - over))
    return clipped, room, preview


def _light(seed: int, push: float, sparkle: float = 2e-4) -> Field:
    """Linear light of a fall, 1 where the sensor saturates."""
    plan = Plan(width=1000, height=1500, seed=seed, white_stops=2.2, sparkle_share=sparkle)
    scene = compose(plan)
    values = linear(
        scene.radiance(),
        Exposure(),
        scene.plan.light_ev100 + push,
        Sensor(balance=(0.6, 1.0, 0.7)),
        rng=np.random.default_rng(seed),
    )
    return np.maximum(values, 0)


def _share_errors(report: FrameReport, light: Field) -> list[float]:
    """Difference from the photosites that got more light than fits [% of the frame]."""
    sites = {"red": [(0, 0)], "green": [(0, 1), (1, 0)], "blue": [(1, 1)]}
    errors = []
    for index, colour in enumerate(COLOURS):
        over = [float((light[r::2, c::2, index] >= 1).mean()) for r, c in sites[colour]]
        assert report.raw is not None
        errors.append(100 * abs(report.raw.clipped[colour] - float(np.mean(over))))
    return errors


def _room_errors(report: FrameReport, light: Field) -> list[float]:
    """Difference from the room of the brightest body of the water, unless it clips [stops]."""
    height, width = (side // _BLOCK_PX for side in light.shape[:2])
    whole = light[: height * _BLOCK_PX, : width * _BLOCK_PX]
    blocks = whole.reshape(height, _BLOCK_PX, width, _BLOCK_PX, 3).mean(axis=(1, 3))
    errors = []
    for index, colour in enumerate(COLOURS):
        level = float(np.quantile(blocks[..., index], 0.999))
        if level < 0.97:
            assert report.raw is not None
            errors.append(abs(report.raw.room_stops[colour] + float(np.log2(level))))
    return errors


def _real() -> Iterator[Figure]:
    folder = os.environ.get("FRAMES_DIR")
    if not folder:
        return
    errors = []
    for path in sorted((Path(folder) / "raw").glob("*.dng")):
        known = _KNOWN.search(path.name)
        if known is not None:
            report, _ = check_frame(path.read_bytes())
            errors.append(abs(100 * report.clipping.share - int(known[1]) / 1000))
    if errors:
        name = "clipped share of known files, worst error [% of the frame]"
        yield Figure("raw", Material.REAL, name, max(errors), len(errors), 0.05, at_least=False)
