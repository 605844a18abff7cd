"""Things planted at the borders of a picture, each known pixel by pixel."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.border_sides import turned
from core.frame.findings import Border, BorderKind
from tests.scenes.noise import Field, fractal, step_between

Rng = np.random.Generator

#: A thing shows when its colour is off what is beside it by so much, and by as much as that
#: varies [CIE dE]; plainly, when by so much and twice as much as that varies.
_LEAST_STEP: Final = 18.0
_PLAIN_STEP: Final = 25.0
#: Rows that count as the border, over the short side.
_TOUCH: Final = 0.006


@dataclass(frozen=True)
class Intruder:
    """What was planted: its kind, and from where to where along each border that it touches."""

    kind: BorderKind
    spans: dict[Border, tuple[float, float]]
    plain: bool


@dataclass(frozen=True)
class Thing:
    """A thing before it is planted, the border as the first row: share and light, (h, w[, 3])."""

    share: Field
    light: Field


def _size(view: Field) -> tuple[int, int, int]:
    """Rows inwards, positions, and the short side."""
    return view.shape[0], view.shape[1], min(view.shape[:2])


def _local(view: Field, at: float) -> Field:
    """Mean light near a place of the border, shape (3,)."""
    _, long, short = _size(view)
    left = int(np.clip(at * long - 0.08 * short, 0, long - 2))
    near = view[: max(2, short // 12), left : left + max(2, round(0.16 * short))]
    return np.asarray(near.mean(axis=(0, 1)), np.float32)


def _shade(view: Field, at: float, rng: Rng, dark: float) -> Field:
    """A colour, darker than what is there with a chance of `dark`, else paler; shape (3,)."""
    here = _local(view, at)
    tint = np.exp(rng.normal(0, 0.12, 3)) * np.array([1.12, 1.0, 0.85]) ** rng.uniform(-1, 1)
    level = float(here.mean())
    if rng.random() < dark:
        level *= float(rng.uniform(0.03, 0.45))
    else:
        level = level * float(rng.uniform(1.8, 5)) + 0.03
    return np.asarray(min(level, 0.7) * tint, np.float32)


def _grained(view: Field, shade: Field, rng: Rng, grain: float) -> Field:
    """That colour all over, with grain and with light from one side."""
    rough = fractal(rng, view.shape[:2], (view.shape[0] / 12, view.shape[0] / 12), 6, 0.75)
    return np.asarray(np.exp(grain * rough)[..., None] * shade, np.float32)


def branch(view: Field, rng: Rng) -> Thing:
    """A line that tapers and bends inwards, often with twigs, sometimes with leaves."""
    rows, long, short = _size(view)
    at = float(rng.uniform(0.02, 0.98))
    wide = short * float(np.exp(rng.uniform(np.log(0.005), np.log(0.022))))
    mask = np.zeros((rows, long), np.uint8)
    start = np.array([at * long, -2.0])
    lean = float(rng.normal(0, 0.7))
    reach = short * float(rng.uniform(0.05, 0.4))
    line = _stem(mask, start, lean, reach, wide, rng)
    for _ in range(int(rng.integers(0, 4))):
        fork = line[int(rng.integers(3, len(line)))]
        _stem(mask, fork, lean + float(rng.normal(0, 1)), 0.5 * reach, 0.45 * wide, rng)
    if rng.random() < 0.35:
        for place in line[4::2]:
            _leaf(mask, place, short * float(rng.uniform(0.008, 0.025)), rng)
    return Thing(_soft(mask, short, rng), _grained(view, _shade(view, at, rng, 0.7), rng, 0.12))


def trunk(view: Field, rng: Rng) -> Thing:
    """A stem of nearly even width that goes far in."""
    rows, long, short = _size(view)
    at = float(rng.uniform(0.02, 0.98))
    wide = short * float(np.exp(rng.uniform(np.log(0.012), np.log(0.07))))
    mask = np.zeros((rows, long), np.uint8)
    reach = short * float(rng.uniform(0.2, 1.2))
    start = np.array([at * long, -2.0])
    _stem(mask, start, float(rng.normal(0, 0.2)), reach, wide, rng, taper=0.2)
    return Thing(_soft(mask, short, rng), _grained(view, _shade(view, at, rng, 0.75), rng, 0.25))


def _stem(
    mask: NDArray[np.uint8], start: NDArray[np.float64], lean: float, reach: float, wide: float,
    rng: Rng, taper: float = 0.75,
) -> NDArray[np.float64]:  # fmt: skip
    """Draw a bending line; returns its points (across, inwards) [px]."""
    way = np.linspace(0, 1, 16)
    length = reach / np.hypot(1, lean)
    bend = float(rng.normal(0, 0.25))
    across = lean * way + bend * way**2 + np.cumsum(rng.normal(0, 0.01, 16))
    points = start + length * np.stack([across, way], 1)
    for index, (first, last) in enumerate(pairwise(points)):
        slim = max(1, round(wide * (1 - taper * index / 15)))
        ends = [tuple(np.round(point * 16).astype(int).tolist()) for point in (first, last)]
        cv2.line(mask, ends[0], ends[1], 255, slim, cv2.LINE_AA, 4)
    return np.asarray(points)


def _leaf(mask: NDArray[np.uint8], foot: NDArray[np.float64], length: float, rng: Rng) -> None:
    middle = (foot + rng.normal(0, length / 2, 2)) * 16
    axes = (round(length * 8), round(length * 3))
    place = (round(float(middle[0])), round(float(middle[1])))
    cv2.ellipse(mask, place, axes, float(rng.uniform(0, 180)), 0, 360, 255, -1, cv2.LINE_AA, 4)


def shape(view: Field, rng: Rng) -> Thing:
    """A stone, a shoulder, a clump of leaves that the border cuts; sometimes in a corner."""
    rows, long, short = _size(view)
    at = float(rng.choice([0.0, 1.0])) if rng.random() < 0.2 else float(rng.uniform(0.03, 0.97))
    wide = short * float(np.exp(rng.uniform(np.log(0.02), np.log(0.09))))
    angle = np.linspace(0, 2 * np.pi, 24, endpoint=False)
    radius = 1 + sum(
        float(rng.normal(0, 0.16 / turn)) * np.cos(turn * angle + float(rng.uniform(0, 6)))
        for turn in (2, 3, 4, 5)
    )
    ratio = float(rng.uniform(0.6, 1.6))
    middle = np.array([at * long, float(rng.uniform(-0.3, 0.4)) * wide * ratio])
    outline = middle + wide * np.stack([radius * np.cos(angle), ratio * radius * np.sin(angle)], 1)
    mask = np.zeros((rows, long), np.uint8)
    cv2.fillPoly(mask, [np.round(outline * 16).astype(np.int32)], 255, cv2.LINE_AA, 4)
    grain = float(rng.uniform(0.05, 0.4))
    return Thing(_soft(mask, short, rng), _grained(view, _shade(view, at, rng, 0.55), rng, grain))


def patch(view: Field, rng: Rng) -> Thing:
    """Something white, often out of focus."""
    rows, long, short = _size(view)
    at = float(rng.choice([0.0, 1.0])) if rng.random() < 0.1 else float(rng.uniform(0.02, 0.98))
    wide = short * float(np.exp(rng.uniform(np.log(0.012), np.log(0.08))))
    lump = fractal(rng, (rows, long), (short / 10, short / 10), 6, 0.6)
    down = np.arange(rows, dtype=np.float32)[:, None]
    across = np.arange(long, dtype=np.float32)[None, :] - at * long
    deep = wide * float(rng.uniform(0.5, 1.6))
    near = 1 - np.hypot(across / wide, (down - 0.2 * deep) / deep) + 0.2 * lump
    share = step_between(0.0, float(rng.uniform(0.03, 0.4)), np.asarray(near, np.float32))
    white = np.array([1 + float(rng.normal(0, 0.06)), 1.0, 1 + float(rng.normal(0, 0.06))])
    level = float(rng.uniform(0.75, 1.6)) * np.exp(float(rng.uniform(0, 0.2)) * lump)
    return Thing(share, np.asarray(level[..., None] * white, np.float32))


def sky(view: Field, rng: Rng) -> Thing:
    """White sky with a ragged edge of leaves or a ridge below it."""
    rows, long, short = _size(view)
    half = long * float(rng.uniform(0.07, 0.5))
    at = long * float(rng.uniform(0.05, 0.95))
    foot = short * float(np.exp(rng.uniform(np.log(0.02), np.log(0.25))))
    ragged = fractal(rng, (rows, long), (short / 9, short / 9), 7, 0.7)
    down = np.arange(rows, dtype=np.float32)[:, None]
    across = np.arange(long, dtype=np.float32)[None, :] - at
    inside = 1 - np.abs(across / half) ** 2.5 - down / foot + 0.25 * ragged
    share = step_between(0.0, float(rng.uniform(0.03, 0.15)), np.asarray(inside, np.float32))
    share[int(3 * foot) + 2 :] = 0
    white = np.array([1 - float(rng.uniform(0, 0.12)), 1.0, 1 + float(rng.uniform(0, 0.12))])
    return Thing(
        share, np.asarray(np.full((rows, long, 3), rng.uniform(0.85, 2)) * white, np.float32)
    )


def _soft(mask: NDArray[np.uint8], short: int, rng: Rng) -> Field:
    """The mask as a lens draws it: sharp, or out of focus as near things are."""
    sigma = max(0.5, short * float(rng.choice([0.0006, 0.001, 0.003], p=[0.4, 0.4, 0.2])))
    return np.asarray(cv2.GaussianBlur(mask, (0, 0), sigma), np.float32) / np.float32(255)


#: What is planted how often.
_KINDS: Final[tuple[tuple[Callable[[Field, Rng], Thing], BorderKind, float], ...]] = (
    (branch, BorderKind.LINE, 0.34),
    (trunk, BorderKind.LINE, 0.1),
    (shape, BorderKind.CUT, 0.22),
    (patch, BorderKind.BRIGHT, 0.18),
    (sky, BorderKind.SKY, 0.16),
)


def plant(
    light: Field, rng: Rng, kind: BorderKind | None = None, border: Border | None = None
) -> tuple[Field, Intruder] | None:
    """Plant one thing; None where it would not show.

    Args:
        light: linear, shape (h, w, 3), 1 = saturation.
        rng: draws all that is not given.
        kind: LINE, CUT, BRIGHT or SKY.
        border: where; sky is at the top.
    """
    kinds = [one for one in _KINDS if kind in (None, one[1])]
    chances = np.array([chance for _, _, chance in kinds])
    make, planted, _ = kinds[int(rng.choice(len(kinds), p=chances / chances.sum()))]
    drawn = list(Border)[int(rng.integers(4))] if border is None else border
    side = Border.TOP if planted is BorderKind.SKY else drawn
    thing = make(turned(light, side), rng)
    share = np.ascontiguousarray(turned(thing.share, side))
    if side is Border.RIGHT:  # turning right twice is not turning back
        share = np.ascontiguousarray(thing.share.swapaxes(0, 1)[:, ::-1])
    laid = light.copy()
    view = turned(laid, side)
    covered = thing.share[..., None]
    view *= 1 - covered
    view += covered * thing.light
    step, spread = _shown(light, laid, share)
    if step < _LEAST_STEP or step < spread:
        return None
    spans = _spans(share)
    plain = step >= _PLAIN_STEP and step >= 2 * spread
    return (laid, Intruder(planted, spans, plain)) if spans else None


def _shown(light: Field, laid: Field, share: Field) -> tuple[float, float]:
    """How far the thing is off what is beside it at the border, and how that varies [CIE dE]."""
    short = min(share.shape)
    band = np.zeros(share.shape, np.bool_)
    deep = max(2, round(0.02 * short))
    band[:deep] = band[-deep:] = band[:, :deep] = band[:, -deep:] = True
    inside = (share > 0.5) & band
    wide = 2 * max(2, round(0.03 * short)) + 1
    near = cv2.dilate(inside.astype(np.uint8), np.ones((wide, wide), np.uint8)) > 0
    beside = near & band & (share < 0.1)
    if not inside.any() or not beside.any():
        return 0.0, 1.0
    thing, ground = (_lab(picture[mask]) for picture, mask in ((laid, inside), (light, beside)))
    step = float(np.linalg.norm(np.median(thing, axis=0) - np.median(ground, axis=0)))
    return step, float(np.linalg.norm(ground.std(axis=0)))


def _lab(light: Field) -> Field:
    """CIE L*a*b* of linear light, shape (n, 3)."""
    clipped = np.clip(light, 0, 1)
    codes = np.where(clipped <= 0.0031308, 12.92 * clipped, 1.055 * clipped ** (1 / 2.4) - 0.055)
    return np.asarray(cv2.cvtColor(codes[None].astype(np.float32), cv2.COLOR_RGB2LAB)[0])


def _spans(share: Field) -> dict[Border, tuple[float, float]]:
    """From where to where a thing touches each border, 0 to 1."""
    short = min(share.shape)
    spans = {}
    for border in Border:
        rows = turned(share, border)[: max(2, round(_TOUCH * short))]
        touching = np.flatnonzero(rows.max(axis=0) > 0.5)
        if len(touching) >= 2:
            long = rows.shape[1]
            spans[border] = (float(touching[0]) / long, float(touching[-1] + 1) / long)
    return spans
