"""Bright patches and white sky along the borders of a frame."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.border_sides import Canvas, Floats, lab_of, turned
from core.frame.findings import Border

# Sizes are shares of the short side; limits from an own measurement on 45 photographs with 160
# bright patches and sky gaps planted at their borders.
_THRESHOLDS: Final = (93.0, 87.0)  # CIE L*
_LEAST_THRESHOLD: Final = 70.0
_BAND: Final = 0.04
#: A frame's own threshold: so many spreads and so much above what its border band is like.
_SPREADS: Final = 2.5
_ABOVE: Final = 8.0
_TOUCH: Final = 0.006
_LEAST_LENGTH: Final = 0.008
_LEAST_DEPTH: Final = 0.005
_BLUR: Final = 0.0015
#: A run over this part of a side has no flanks to speak of.
_MOST_OF_SIDE: Final = 0.6
#: What lies inwards may be nearly as bright by this.
_INWARDS: Final = 10.0
_LEAST_SCORE: Final = 6.0
#: Runs with a gap up to this are one. Own rule.
_GAP: Final = 0.012
#: As many runs as are looked at, a side. Own rule.
_MOST: Final = 8

#: What each column of `features` is; sizes are over the short side.
FEATURES: Final = (
    "score", "lightness", "over brighter flank", "over darker flank", "over inwards", "length",
    "depth", "depth over length", "area", "filled", "chroma", "yellow", "texture", "threshold",
    "usual lightness", "bright inside the frame", "part of the side", "corner", "clipped",
    "deepest",
)  # fmt: skip


@dataclass(frozen=True)
class Run:
    """Something bright along a border: from `low` to `high` [px along it], `depth` inwards [px].

    `features` has a number for each of `FEATURES`; `inside` are its pixels, turned, shape (h, w).
    """

    border: Border
    low: int
    high: int
    depth: float
    score: float
    features: Floats
    inside: NDArray[np.bool_]

    @property
    def along(self) -> tuple[float, float]:
        """From where to where along the border, 0 to 1."""
        long = self.inside.shape[1]
        return self.low / long, self.high / long


@dataclass(frozen=True)
class Light:
    """The lightness of a frame at half the size of its canvas, and what it has in all."""

    lab: Floats
    smooth: Floats
    usual: float
    thresholds: tuple[float, ...]

    @classmethod
    def of(cls, canvas: Canvas) -> Light:
        """Reduce a canvas."""
        height, width = canvas.stored.shape[:2]
        size = (max(1, width // 2), max(1, height // 2))
        small = cv2.resize(canvas.stored, size, interpolation=cv2.INTER_AREA)
        lab = lab_of(small)
        blurred = cv2.GaussianBlur(lab[..., 0], (0, 0), max(0.5, _BLUR * min(size)))
        smooth = np.asarray(blurred, np.float32)
        band = max(1, round(_BAND * min(size)))
        around = np.concatenate([turned(smooth, border)[:band].ravel() for border in Border])
        usual = float(np.median(around))
        spread = 1.4826 * float(np.median(np.abs(around - usual)))
        own = float(np.clip(usual + _SPREADS * spread + _ABOVE, _LEAST_THRESHOLD, _THRESHOLDS[0]))
        levels = sorted({*_THRESHOLDS, round(own, 1)}, reverse=True)
        return cls(lab, smooth, usual, tuple(levels))


def bright_runs(canvas: Canvas) -> list[Run]:
    """What is bright along each border and darker around, the best view of each.

    Positions and depths are in pixels of the canvas at half its size; see `Light`.
    """
    light = Light.of(canvas)
    found: list[Run] = []
    kernel = np.ones((3, 3), np.uint8)
    for threshold in light.thresholds:
        mask = (light.smooth >= threshold).astype(np.uint8)
        opened = cv2.morphologyEx(mask, cv2.MORPH_OPEN, kernel)
        if not opened.any():
            continue
        parts = cv2.connectedComponentsWithStats(opened)
        labels, stats = np.asarray(parts[1], np.int32), np.asarray(parts[2], np.int32)
        for border in Border:
            found += _of_side(light, labels, stats, border, threshold)
    return _best(found)


def _best(found: list[Run]) -> list[Run]:
    """Of runs that overlap on a side, the one with the highest score."""
    kept: list[Run] = []
    for run in sorted(found, key=lambda one: -one.score):
        others = [one for one in kept if one.border is run.border]
        if len(others) < _MOST and all(run.low >= o.high or run.high <= o.low for o in others):
            kept.append(run)
    return kept


def _of_side(
    light: Light,
    labels: NDArray[np.int32],
    stats: NDArray[np.int32],
    border: Border,
    threshold: float,
) -> list[Run]:
    short = min(labels.shape)
    view = turned(labels, border)
    touch = max(2, round(_TOUCH * short))
    runs = []
    for low, high in _stretches(view[:touch].max(axis=0) > 0, max(1, round(_GAP * short))):
        if high - low < max(3, _LEAST_LENGTH * short):
            continue
        run = _run(light, view, stats, border, (low, high), threshold)
        if run is not None:
            runs.append(run)
    return runs


def _stretches(touching: NDArray[np.bool_], gap: int) -> list[tuple[int, int]]:
    """First and behind-last positions of stretches, those with a small gap as one."""
    edges = np.flatnonzero(np.diff(np.concatenate([[0], touching.astype(np.int8), [0]])))
    stretches: list[tuple[int, int]] = []
    for low, high in edges.reshape(-1, 2).tolist():
        if stretches and low - stretches[-1][1] <= gap:
            stretches[-1] = (stretches[-1][0], high)
        else:
            stretches.append((low, high))
    return stretches


def _run(
    light: Light,
    view: NDArray[np.int32],
    stats: NDArray[np.int32],
    border: Border,
    along: tuple[int, int],
    threshold: float,
) -> Run | None:
    low, high = along
    short, long = min(view.shape), view.shape[1]
    touch = max(2, round(_TOUCH * short))
    names = np.unique(view[:touch, low:high])
    names = names[names > 0]
    inside = np.isin(view, names)
    inside[:, :low] = inside[:, high:] = False
    depths = inside.sum(axis=0)[low:high]
    depth = float(np.percentile(depths, 75))
    if depth < max(1.5, _LEAST_DEPTH * short):
        return None
    smooth, lab = turned(light.smooth, border), turned(light.lab, border)
    body = inside[: max(1, round(depth)), low:high]
    lightness = float(smooth[: len(body), low:high][body].mean())
    flanks = _flanks(smooth, along, max(2, round(min(depth, 0.04 * short))))
    reach = max(2, round(max(0.02 * short, min(depth, 0.1 * short))))
    beyond = smooth[round(depth) + 2 : round(depth) + 2 + reach, low:high]
    inwards = float(beyond.mean()) if beyond.size else lightness
    most = high - low > _MOST_OF_SIDE * long
    beside = inwards if most or not flanks else max(flanks)
    score = min(lightness - beside, lightness - inwards + (0 if most else _INWARDS))
    if score < _LEAST_SCORE:
        return None
    colour = lab[: len(body), low:high][body]
    area = float(stats[names, cv2.CC_STAT_AREA].sum())
    box = float((stats[names, cv2.CC_STAT_WIDTH] * stats[names, cv2.CC_STAT_HEIGHT]).sum())
    band = max(1, round(_BAND * short))
    whole = float((light.smooth[band:-band, band:-band] >= threshold).mean())
    features = np.array([
        score, lightness, lightness - max(flanks, default=inwards),
        lightness - min(flanks, default=inwards), lightness - inwards, np.log((high - low) / short),
        np.log(depth / short), depth / (high - low), np.log(area / view.size), area / box,
        float(np.hypot(colour[:, 1], colour[:, 2]).mean()), float(colour[:, 2].mean()),
        float(colour[:, 0].std()), threshold, light.usual, whole, (high - low) / long,
        float(low <= 1 or high >= long - 1), float((colour[:, 0] > 98).mean()),
        float(depths.max()) / short,
    ], np.float32)  # fmt: skip
    return Run(border, low, high, depth, score, features, inside)


def _flanks(smooth: Floats, along: tuple[int, int], deep: int) -> list[float]:
    """Mean lightness to both sides of a run, where there is anything."""
    low, high = along
    short = min(smooth.shape)
    gap = max(1, round(0.006 * short))
    wide = max(3, round(0.015 * short), (high - low) // 2)
    parts = (smooth[:deep, max(low - gap - wide, 0) : max(low - gap, 0)],
             smooth[:deep, high + gap : high + gap + wide])  # fmt: skip
    return [float(part.mean()) for part in parts if part.shape[1] >= 2]
