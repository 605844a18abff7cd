"""What body stands at a place of a border: its outline, its edges, and what lies around it."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.border_lines import Places
from core.frame.border_sides import Floats, Side, lab_of
from core.frame.border_tracks import Tracks

#: The window to each side of a place, in its widths and over the short side, whichever is more.
_WIDTHS_OUT: Final = 3.0
_SHARE_OUT: Final = 0.06
#: A window has at most about so many pixels over its width. Own rule, for the time it takes.
_MOST_PX: Final = 96
#: A pixel is of the body when it is nearer to the body's colour than to what lies beside it, and
#: no further off that way than this part of the step.
_HALF: Final = 0.5
_OFF: Final = 0.8
#: Rows at the border, over the place's width, in which the body begins.
_FOOT: Final = 0.4
#: Part of the width at the border whose middle colour is the body's.
_CORE: Final = 0.3
#: A body has as many pixels at least.
_LEAST_PX: Final = 4
#: A ring of so many pixels around the body shows what it stands before.
_RING_PX: Final = 3
#: Side of the square over which lightness is smoothed to see fine detail [px].
_SMOOTH_PX: Final = 3
_LEAST_STEP: Final = 3.0
_LEAST_SPREAD: Final = 0.05
#: Numbers are held to these.
_MOST_FOOT: Final = 8.0
_MOST_TAPER: Final = 5.0
_MOST_LEAN: Final = 5.0
#: Colours nearer than this are alike [CIE dE]. Own rule.
_ALIKE: Final = 20.0

#: What each column is; sizes are over the short side, differences over the step.
FEATURES: Final = (
    "body area", "body depth", "body length", "body foot over width", "body filled",
    "body reaches the sides", "body reaches in", "body rim", "body width", "body taper",
    "body even", "body light", "body bright edge", "body off colour", "ring lift", "ring spread",
    "ring even", "others alike", "others at the border", "ground spread", "edge", "edge spread",
    "detail inside", "detail of the ring", "detail of the ground", "body over ring",
    "body alike in frame", "body lean", "body straight", "ground from side to side",
)  # fmt: skip


@dataclass(frozen=True)
class _Window:
    """What lies around a place: colours as stored, (h, w, 3), and how near each is to the body's.

    `lift` is 1 in the body's own colour and 0 in that of the more alike flank; `off` is how far a
    colour lies beside that way, in steps; shape (h, w) each. `foot` are the rows, and the first
    and the last position, in which the body begins. `stride` is the size of a pixel [px].
    """

    stored: NDArray[np.uint8]
    lift: Floats
    off: Floats
    foot: tuple[int, int, int]
    stride: int

    @cached_property
    def like(self) -> NDArray[np.bool_]:
        """Pixels in the body's colour."""
        return (self.lift > _HALF) & (self.off < _OFF)


@dataclass(frozen=True)
class _Body:
    """A body, the ring around it, and the rest of its window; shape (h, w) each."""

    inside: NDArray[np.bool_]
    ring: NDArray[np.bool_]
    ground: NDArray[np.bool_]

    @classmethod
    def of(cls, window: _Window) -> _Body | None:
        """What is like the foot and hangs together with it; None where that is next to nothing."""
        like = window.like.astype(np.uint8)
        labels = np.asarray(cv2.connectedComponents(like, connectivity=4)[1])
        deep, left, right = window.foot
        counts = np.bincount(labels[:deep, left:right].ravel(), minlength=2)
        counts[0] = 0
        inside = (labels == int(np.argmax(counts))) & (labels > 0)
        if np.count_nonzero(inside) < _LEAST_PX:
            return None
        wide = 2 * _RING_PX + 1
        drawn = inside.astype(np.uint8)
        near = cv2.dilate(drawn, np.ones((3, 3), np.uint8)) > 0
        ring = (cv2.dilate(drawn, np.ones((wide, wide), np.uint8)) > 0) & ~near
        return cls(inside, ring, ~inside & ~ring)


def body_features(side: Side, places: Places, tracks: Tracks) -> Floats:
    """Numbers of the bodies at the places of a side.

    Args:
        side: of a frame.
        places: on it.
        tracks: of these places.

    Returns:
        Shape (n, len(FEATURES)); 0 where nothing hangs together.
    """
    rows = [_of_place(side, places, tracks, index) for index in range(len(places))]
    return np.array(rows, np.float32).reshape(len(places), len(FEATURES))


def _of_place(side: Side, places: Places, tracks: Tracks, index: int) -> list[float]:
    window = _window(side, places, tracks, index)
    body = _Body.of(window)
    if body is None:
        return [0.0] * len(FEATURES)
    foot_px = float(places.width[index]) / window.stride
    colour = _colour(window, body)
    return [
        *_form(body.inside, window.foot[0], foot_px, side.short_px / window.stride),
        *_matter(window, body, float(colour[0])),
        *_surface(window, body, _part_near(side, colour)),
        *_way(window, body),
    ]


def _window(side: Side, places: Places, tracks: Tracks, index: int) -> _Window:
    low, high = float(tracks.low[index]), float(tracks.high[index])
    at, width = int(places.at[index]), int(places.width[index])
    out = max(_WIDTHS_OUT * max(width, high - low), _SHARE_OUT * side.short_px)
    first, last = max(0, round(at - out)), min(side.length_px, round(at + out) + 1)
    stride = max(1, round((last - first) / _MOST_PX))
    stored = np.ascontiguousarray(side.stored[: side.reach_px : stride, first:last:stride])
    deep = max(2, round(_FOOT * width / stride))
    middle, half = (at - first) // stride, max(0, round(_CORE * (high - low) / stride))
    left, right = max(0, middle - half), min(stored.shape[1], middle + half + 1)
    core = np.median(stored[:deep, left:right].reshape(-1, 3), axis=0)
    step = max(float(places.step[index]), _LEAST_STEP)
    lift, off = _along(stored, core, places.way[index], step)
    return _Window(stored, lift, off, (deep, left, right), stride)


def _along(
    stored: NDArray[np.uint8], core: NDArray[np.floating], way: Floats, step: float
) -> tuple[Floats, Floats]:
    """How far colours are on the way from the flank, 0, to a colour, 1, and beside it [steps]."""
    axes = np.linalg.svd(way[None].astype(np.float64))[2]
    axes[0] = way
    turn = axes * (lab_of(np.eye(3)) - lab_of(np.zeros(3))).diagonal() / step
    moved = np.concatenate([turn, -(turn @ core)[:, None]], axis=1)
    along, one, other = cv2.split(cv2.transform(stored.astype(np.float32), moved))
    return np.asarray(1 + along, np.float32), np.asarray(cv2.magnitude(one, other), np.float32)


def _form(inside: NDArray[np.bool_], foot: int, foot_px: float, short_px: float) -> list[float]:
    """Area, depth, length, foot, how filled, where it ends, rim, width, taper."""
    rows = inside.sum(axis=1)
    columns = np.flatnonzero(inside.any(axis=0))
    deep = np.flatnonzero(rows)
    depth, length = int(deep[-1]) + 1, int(columns[-1] - columns[0]) + 1
    area = int(rows.sum())
    rim = sum(np.count_nonzero(one != other) for one, other in
              ((inside[1:], inside[:-1]), (inside[:, 1:], inside[:, :-1])))  # fmt: skip
    there = rows[deep]
    third = max(1, len(there) // 3)
    taper = float(there[-third:].mean() / there[:third].mean())
    sides = float(columns[0] == 0) + float(columns[-1] == inside.shape[1] - 1)
    return [
        float(np.log(area / short_px**2)), depth / short_px, length / short_px,
        min(float(rows[:foot].mean()) / foot_px, _MOST_FOOT), area / (depth * length), sides,
        float(depth == len(inside)), rim / float(np.sqrt(area)),
        float(np.log(np.median(there) / short_px)), min(taper, _MOST_TAPER),
    ]  # fmt: skip


def _matter(window: _Window, body: _Body, light: float) -> list[float]:
    """How even the body and what lies around it are, and how much else is of its colour."""
    lift = window.lift
    foot = slice(0, window.foot[0])
    return [
        _level(lift, body.inside)[1], light, float(np.percentile(lift[body.inside], 90)),
        _level(window.off, body.inside)[0], *_level(lift, body.ring),
        _part(lift > _HALF, body.ring), _part(window.like, body.ground),
        _part(window.like[foot], body.ground[foot]), _level(lift, body.ground)[1],
    ]  # fmt: skip


def _surface(window: _Window, body: _Body, alike: float) -> list[float]:
    """How sharp the outline is, fine detail on both sides of it, how rare the colour is."""
    lift = window.lift
    inner = cv2.erode(body.inside.view(np.uint8), np.ones((3, 3), np.uint8)).view(np.bool_)
    outline = body.inside & ~inner
    outline[0] = False
    slopes = (cv2.Sobel(lift, cv2.CV_32F, *way, scale=0.125) for way in ((1, 0), (0, 1)))
    steep = np.asarray(cv2.magnitude(*slopes), np.float32)
    smooth = cv2.blur(lift, (_SMOOTH_PX, _SMOOTH_PX))
    detail = np.asarray(cv2.absdiff(lift, smooth), np.float32)
    fine = (_level(detail, part)[0] for part in (inner, body.ring, body.ground))
    beside, varied = _level(lift, body.ring)
    spread = float(np.hypot(_level(lift, body.inside)[1], varied)) + _LEAST_SPREAD
    over = (1 - beside) / spread if body.ring.any() else 0.0
    return [*_level(steep, outline), *fine, over, alike]


def _way(window: _Window, body: _Body) -> list[float]:
    """How the body leans, how straight its middle runs, and how unlike both sides of it are."""
    counts = body.inside.sum(axis=1)
    rows = np.flatnonzero(counts)
    across = np.arange(body.inside.shape[1], dtype=np.float32)
    middles = (body.inside[rows].astype(np.float32) @ across).astype(np.float64) / counts[rows]
    deep = rows - rows.mean()
    lean = float(deep @ middles) / max(float(deep @ deep), 1.0)
    bent = float((middles - middles.mean() - lean * deep).std()) / len(rows)
    middle = np.interp(np.arange(len(body.inside)), rows, middles)
    left = body.ring & (across < middle[:, None])
    apart = _level(window.lift, left)[0] - _level(window.lift, body.ring & ~left)[0]
    return [min(abs(lean), _MOST_LEAN), bent, abs(apart)]


def _level(values: Floats, part: NDArray[np.bool_]) -> tuple[float, float]:
    """Mean and spread of the values in a part, 0 where that is empty."""
    mean, spread = cv2.meanStdDev(values, mask=part.view(np.uint8))
    return float(mean[0, 0]), float(spread[0, 0])


def _colour(window: _Window, body: _Body) -> Floats:
    """Mean colour of the body, CIE L*a*b*."""
    return lab_of(np.array(cv2.mean(window.stored, body.inside.view(np.uint8))[:3]))


def _part_near(side: Side, colour: Floats) -> float:
    """Part of the whole frame that is of about the same colour."""
    return float((np.linalg.norm(side.canvas.places - colour, axis=-1) < _ALIKE).mean())


def _part(what: NDArray[np.bool_], of: NDArray[np.bool_]) -> float:
    return float(np.count_nonzero(what & of)) / max(int(np.count_nonzero(of)), 1)
