"""Figures of the look: what a picture alone tells of it, what is refused, share by formula."""

from __future__ import annotations

import math
import os
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Final

import cv2
import numpy as np

from core import water, water_speed
from core.frame.decode import decode
from core.frame.findings import Doubt, LookSeen, WaterArea
from core.frame.sharpness import measure_sharpness
from core.frame.texture import look_of_picture
from core.frame.water_area import propose_water
from core.frame.working import LINEAR_OF_CODE, WorkingCopy, working_copy
from core.water import Look, look_of
from tests.figures.figure import Figure, Material
from tests.scenes.flow import carried, time_of_fall
from tests.scenes.lens import disc, stroke
from tests.scenes.noise import Field
from tests.training.frames import Framed, rendered_frame, shifted_frame
from tests.training.pictures import held_out
from tests.training.texture import drawn_length

#: How many frames of each kind are drawn, and falls for the formula.
_FRAMES = 24
_SPOILED = 24
_FALLS = 40
#: Diameters of defocus and lengths of shake [px of the working copy].
_DEFOCUS_PX = (6.0, 20.0)
_SHAKE_PX = (6.0, 25.0)
#: How far the person's axis is off, standard deviation [deg]; every third frame has one.
_AXIS_OFF_DEG = 8.0
_SMOOTH = (Look.SILKY, Look.MISTY)


@dataclass(frozen=True)
class Photograph:
    """A picture from outside: its water, and the looks that a person sees there."""

    name: str
    cells: tuple[str, ...]
    looks: tuple[Look, ...]


#: The folder's own notes on these pictures give the looks ("silky", "short exposure, 1/500 s",
#: "slightly blurred"); the cells are by eye, and leave out the words that are printed on the first.
PHOTOGRAPHS: Final = (
    Photograph("Landscape_1.jpg", ("C3",), (Look.SILKY, Look.MISTY)),
    Photograph("kodim13.png", ("D2", "D3"), (Look.FROZEN, Look.CRISP)),
    Photograph("Sony_DCR-PC110.jpg", ("C3", "D2", "D3"), (Look.FROZEN, Look.CRISP)),
    Photograph("life_by_Aitzol_Berasategi.jpg", ("B3",), (Look.CRISP, Look.TEXTURED)),
    Photograph("11-tests.jpg", ("C1", "D1"), (Look.FROZEN, Look.CRISP)),
)


@dataclass(frozen=True)
class Case:
    """What was said of a frame, and what holds."""

    seen: LookSeen
    share: float

    @property
    def right(self) -> bool:
        """The true look is the one said, or its neighbour."""
        return look_of(self.share) in (self.seen.look, self.seen.neighbour)

    @property
    def too_smooth(self) -> bool:
        """Sharp water was called smooth."""
        return self.share < water.BANDS[1] and self.seen.look in _SMOOTH


def figures(seed: int) -> Iterator[Figure]:
    """Rendered frames and shifted pictures with known shares; photographs by eye; the formula."""
    rng = np.random.default_rng(seed)
    yield from _told(Material.RENDERED, [_rendered(rng) for _ in range(_FRAMES)])
    yield from _spoiled(rng)
    yield from _told(Material.MADE, _shifted(rng, held_out()))
    real = outside()
    sharp = [_light(work, one) for one, work in real if Look.FROZEN in one.looks]
    if sharp:
        yield from _told(Material.SHIFTED, _shifted(rng, sharp))
        yield from _seen(real)
    yield _by_formula(rng)


def _told(material: Material, cases: Sequence[Case]) -> Iterator[Figure]:
    spoken = [case for case in cases if case.seen.doubt is None]
    sharp = [case for case in cases if case.share < water.BANDS[1]]
    count = max(len(spoken), 1)
    inside = [case.seen.share_low <= case.share <= case.seen.share_high for case in spoken
              if case.seen.share_low is not None and case.seen.share_high is not None]  # fmt: skip
    rows = (
        ("spoken", len(spoken) / len(cases), len(cases), 0.8, True),
        ("this look or its neighbour", sum(case.right for case in spoken) / count, count, 0.92,
         True),
        ("share inside the interval", sum(inside) / count, count, None, True),
        ("sharp called smooth", sum(case.too_smooth for case in sharp) / max(len(sharp), 1),
         len(sharp), 0.01, False),
    )  # fmt: skip
    for name, value, cases_counted, aim, at_least in rows:
        yield Figure("look", material, name, value, cases_counted, aim, at_least)


def _rendered(rng: np.random.Generator, fault: Field | None = None) -> Case:
    return _case(rendered_frame(rng, drawn_length(rng), fault), rng)


def _shifted(rng: np.random.Generator, lights: Sequence[Field]) -> list[Case]:
    chosen = [lights[number % len(lights)] for number in range(_FRAMES)]
    return [_case(shifted_frame(rng, light, drawn_length(rng)), rng) for light in chosen]


def _case(frame: Framed, rng: np.random.Generator) -> Case:
    off = float(rng.normal(0, _AXIS_OFF_DEG))
    axis_deg = (frame.axis_deg + off) % 180 if rng.random() < 1 / 3 else None
    work = WorkingCopy(frame.pixels, 1.0)
    return Case(_look(work, WaterArea(frame.cells, axis_deg, by_person=True)), frame.share)


def _look(work: WorkingCopy, area: WaterArea | None) -> LookSeen:
    return look_of_picture(work, area, measure_sharpness(work, work.pixels, area))


def _spoiled(rng: np.random.Generator) -> Iterator[Figure]:
    """Frames out of focus or shaken: no look is told of them."""
    for name in ("defocus caught", "shake caught"):
        caught = 0
        for _ in range(_SPOILED):
            if name.startswith("defocus"):
                kernel = disc(rng.uniform(*_DEFOCUS_PX))
            else:
                kernel = stroke(rng.uniform(*_SHAKE_PX), rng.uniform(0, 180))
            caught += _rendered(rng, kernel).seen.doubt is not None
        yield Figure("look", Material.RENDERED, name, caught / _SPOILED, _SPOILED, 0.9)


def outside() -> list[tuple[Photograph, WorkingCopy]]:
    """The photographs of the folder that FRAMES_DIR names; none without one."""
    folder = Path(os.environ.get("FRAMES_DIR") or os.devnull) / "water"
    return [
        (one, working_copy(decode((folder / one.name).read_bytes()).pixels))
        for one in PHOTOGRAPHS
        if (folder / one.name).is_file()
    ]


def _light(work: WorkingCopy, photograph: Photograph) -> Field:
    """Linear light of the box of a photograph's water, shape (h, w, 3)."""
    rows = [ord(cell[0]) - ord("A") for cell in photograph.cells]
    columns = [int(cell[1]) - 1 for cell in photograph.cells]
    height, width = work.pixels.shape[:2]
    box = work.pixels[
        min(rows) * height // 4 : (max(rows) + 1) * height // 4,
        min(columns) * width // 4 : (max(columns) + 1) * width // 4,
    ]
    return np.asarray(cv2.LUT(box, LINEAR_OF_CODE), np.float32)


def _seen(real: Sequence[tuple[Photograph, WorkingCopy]]) -> Iterator[Figure]:
    """Photographs as they are, by their named cells and by the proposal."""
    for name, proposed in (("cells named", False), ("cells proposed", True)):
        said = [
            (one, _look(work, propose_water(work) if proposed else WaterArea(one.cells)))
            for one, work in real
        ]
        spoken = [(one, seen) for one, seen in said if seen.doubt is None]
        right = sum(bool({seen.look, seen.neighbour} & set(one.looks)) for one, seen in spoken)
        found = sum(seen.doubt is not Doubt.NO_WATER for _, seen in said)
        count = max(len(spoken), 1)
        yield Figure("look", Material.REAL, f"water found, {name}", found / len(said), len(said))
        yield Figure("look", Material.REAL, f"spoken, {name}", len(spoken) / len(said), len(said))
        yield Figure("look", Material.REAL, f"look as seen by eye, {name}", right / count, count)


def _by_formula(rng: np.random.Generator) -> Figure:
    """Median error of the share by the formula, against streaks measured in rendered falls."""
    errors = []
    for _ in range(_FALLS):
        height_m = float(np.exp(rng.uniform(math.log(4), math.log(30))))
        focal_mm, side_mm = float(rng.uniform(20, 70)), 36.0
        # The fall takes 40 to 80 % of the frame's height.
        coverage_m = height_m / float(rng.uniform(0.4, 0.8))
        distance_m = coverage_m * focal_mm / side_mm
        shutter_s = float(np.exp(rng.uniform(math.log(1 / 60), math.log(0.3))))
        told = water.share(
            water_speed.mean_fall_speed_mps(height_m),
            shutter_s,
            water.coverage_m(distance_m, side_mm, focal_mm),
        )
        true = _streak(height_m, coverage_m, shutter_s)
        errors.append(abs(float(told) / true - 1))
    median = float(np.median(errors))
    name = "share by formula, median error"
    return Figure("look", Material.RENDERED, name, median, _FALLS, 0.2, at_least=False)


def _streak(height_m: float, coverage_m: float, shutter_s: float) -> float:
    """Share of the frame's height that drops draw in a rendering, the middle one of many.

    Args:
        height_m: of the fall.
        coverage_m: what the frame covers upright.
        shutter_s: exposure time [s].
    """
    side_px, rows_per_s, drops = 1600, 2000.0, 9
    below_m = np.linspace(0, 2 * coverage_m, 2 * side_px)[:, None]
    time_s = time_of_fall(below_m)
    whole_s = float(time_of_fall(np.array([height_m]))[0])
    pattern = np.zeros((int(rows_per_s * (float(time_s.max()) + shutter_s)) + 8, drops), np.float32)
    # Drops leave the lip one after the other, evenly: those that are on their way at a moment.
    begins_s = (np.arange(drops) + 0.5) / drops * whole_s
    pattern[np.round(rows_per_s * begins_s).astype(int), np.arange(drops)] = 1
    across = np.broadcast_to(np.linspace(0, 1, drops, dtype=np.float32), (2 * side_px, drops))
    seen = carried(
        pattern, np.ascontiguousarray(across),
        np.broadcast_to(time_s, across.shape).astype(np.float32),
        rows_per_s=rows_per_s, shutter_s=shutter_s,
    )  # fmt: skip
    drawn = seen > 0.5 * seen.max(axis=0)
    return float(np.median(drawn.sum(axis=0))) / side_px
