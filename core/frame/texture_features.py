"""Numbers that tell how long the streaks of a region of water are."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.flow_axis import FIELD_SCALE, LEVELS, Flow, flow_of

Field = NDArray[np.float32]
Mask = NDArray[np.bool_]
Floats = NDArray[np.float64]

#: Distances at which the water is compared with itself [px of the working copy]. Own rule: about
#: a third longer each, from a pixel to a quarter of its long side.
LAGS: Final = (1, 2, 3, 4, 6, 8, 11, 15, 20, 27, 36, 48, 64, 86, 115, 154, 205, 274, 366)
#: Points at which that begins; the figures hold with so many. Own rule.
_POINTS: Final = 3000
#: Fewer pairs of points than this say nothing at a distance.
_LEAST_PAIRS: Final = 150
#: Smoothing before the derivatives that are compared along the flow, as halvings of the picture.
_HALVINGS: Final = (0, 1, 2)
#: Derivatives count up to so many times their root mean square: edges of stones stay bounded.
_CLIPPED_AT: Final = 4.0
#: Levels of the autocorrelation at which its distance is told.
_FALLS: Final = (0.8, 0.65, 0.5, 0.35, 0.2)
#: Stands for a distance that the region is too small to tell [log2 px].
_BEYOND: Final = 9.0
_SMALL: Final = 1e-9
#: The noise is told from every so many pixels, which is enough for a median.
_EVERY: Final = 7


@dataclass(frozen=True)
class Walk:
    """Points at each lag from where they began, at lag 0, on.

    `places` (k + 1, n, 2) as (x, y) [px]; `headings` the flow's direction there; `held` (k + 1,
    n): still inside the region.
    """

    places: Field
    headings: Field
    held: Mask


def names() -> tuple[str, ...]:
    """Name of each feature, in the order of `features`."""
    found = [f"along {lag}" for lag in LAGS] + [f"along over across {lag}" for lag in LAGS]
    for halving in _HALVINGS:
        found += [f"kept at {halving}: {lag}" for lag in LAGS]
        found += [f"kept at {halving} falls to {fall}" for fall in _FALLS]
    found += ["half across", "half along"]
    for level in range(1, LEVELS + 1):
        found += [f"energy {level}", f"ratio {level}", f"coherence {level}"]
    return (*found, "noise", "detail", "contrast", "size")


def _tones_of(luminance: Field, inside: Mask) -> Field:
    """Root of the light over the root of its mean inside; 1 is the region's mean."""
    mean = max(float(luminance[inside].mean()), _SMALL)
    return np.asarray(np.sqrt(np.maximum(luminance, 0) * np.float32(1 / mean)), np.float32)


def features(luminance: Field, inside: Mask, given_deg: float | None = None) -> tuple[Floats, Flow]:
    """What the regressor looks at, and the flow that it went along.

    Args:
        luminance: linear light at working size, shape (h, w); its scale changes nothing.
        inside: the water, shape (h, w), with some pixels set.
        given_deg: axis of the flow that is known [deg].

    Returns:
        Shape (n,) in the order of `names`, NaN-free; and the flow.

    Source: own rule, tried on rendered and shifted water.
    """
    tones = _tones_of(luminance, inside)
    flow = flow_of(tones, inside, given_deg)
    starts = _starts(inside)
    along = _walk(flow, inside, starts, across=False)
    side = _walk(flow, inside, starts, across=True)
    plateau = 2 * max(float(tones[inside].var()), _SMALL)
    lengthwise = _structure(tones, along) / plateau
    crosswise = _structure(tones, side) / plateau
    parts = [np.log(lengthwise), np.log(lengthwise / crosswise)]
    for halving in _HALVINGS:
        parts += _kept(tones, along, halving)
    parts.append(np.array([_reaches(crosswise, 0.5), _reaches(lengthwise, 0.5)]))
    parts += [_energies(flow), _plain(tones, inside)]
    return np.concatenate(parts), flow


def _starts(inside: Mask) -> Field:
    """Points spread evenly over the region, shape (n, 2) as (x, y)."""
    rows, columns = np.nonzero(inside)
    chosen = np.linspace(0, len(rows) - 1, min(_POINTS, len(rows))).astype(np.int64)
    # A golden shift keeps the regular picking from lining up with the rows.
    chosen = (chosen + (np.arange(len(chosen)) * 0.618034 % 1 * 97).astype(np.int64)) % len(rows)
    return np.stack([columns[chosen], rows[chosen]], axis=1).astype(np.float32)


def _direction(flow: Flow, points: Field) -> Field:
    """Unit vectors of the flow at points, shape (n, 2), of either sign."""
    where = points / np.float32(FIELD_SCALE) - np.float32(0.5 - 0.5 / FIELD_SCALE)
    doubled = _at(flow.doubled, where)
    angle = 0.5 * np.arctan2(doubled[:, 1], doubled[:, 0])
    return np.stack([np.cos(angle), np.sin(angle)], axis=1)


def _at(picture: Field, points: Field) -> Field:
    """Values at points (x, y), between the pixels by interpolation."""
    seen = cv2.remap(  # type: ignore[call-overload]  # its stubs forget that one map may do
        picture, points[:, None, :], None, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE
    )
    return np.asarray(seen[:, 0], np.float32)


def _walk(flow: Flow, inside: Mask, starts: Field, *, across: bool) -> Walk:
    """Go along the flow, or across it, from lag to lag."""
    points, heading = starts, _direction(flow, starts)
    places, headings = [points], [heading]
    for step in np.diff((0, *LAGS)).astype(np.float32):
        way = np.stack([-heading[:, 1], heading[:, 0]], axis=1) if across else heading
        points = points + way * step
        heading = _along(flow, points, heading)
        places.append(points)
        headings.append(heading)
    gone = np.stack(places)
    return Walk(gone, np.stack(headings), _held(inside, gone))


def _along(flow: Flow, points: Field, before: Field) -> Field:
    """The direction at points, with the sign that goes on as before."""
    found = _direction(flow, points)
    sign = np.sign(np.sum(found * before, axis=1, keepdims=True))
    return np.asarray(found * np.where(sign == 0, 1, sign), np.float32)


def _held(inside: Mask, places: Field) -> Mask:
    """Which places still lie inside, shape (k + 1, n); what has left does not come back."""
    height, width = inside.shape
    columns, rows = np.moveaxis(np.rint(places).astype(np.int32), 2, 0)
    held = (columns >= 0) & (columns < width) & (rows >= 0) & (rows < height)
    np.clip(rows, 0, height - 1, out=rows)
    np.clip(columns, 0, width - 1, out=columns)
    held &= inside[rows, columns]
    return np.asarray(np.logical_and.accumulate(held, axis=0))


def _sampled(picture: Field, places: Field) -> Field:
    flat = np.ascontiguousarray(places.reshape(-1, 2))
    if len(flat) < 32000:  # OpenCV's limit on a side of a picture
        return _at(picture, flat).reshape(*places.shape[:2], *picture.shape[2:])
    return np.stack([_at(picture, np.ascontiguousarray(one)) for one in places])


def _structure(tones: Field, walk: Walk) -> Floats:
    """Mean squared difference at each lag; the last one that can be told goes on."""
    values = _sampled(tones, walk.places)
    squares = (values[1:] - values[:1]) ** 2
    return np.maximum(_means(squares, walk.held[1:]), _SMALL)


def _means(values: Field, counted: Mask) -> Floats:
    numbers = counted.sum(axis=1)
    means = (values * counted).sum(axis=1) / np.maximum(numbers, 1)
    for lag in range(1, len(means)):
        if numbers[lag] < _LEAST_PAIRS:
            means[lag] = means[lag - 1]
    return np.asarray(means, np.float64)


def _kept(tones: Field, walk: Walk, halving: int) -> list[Floats]:
    """How the change across the flow keeps along it: at each lag, and where it falls to levels."""
    level = tones
    for _ in range(halving):
        level = np.asarray(cv2.pyrDown(level), np.float32)
    smooth = cv2.GaussianBlur(level, (0, 0), 1.0)
    slopes = cv2.merge([cv2.Scharr(smooth, cv2.CV_32F, 1, 0), cv2.Scharr(smooth, cv2.CV_32F, 0, 1)])
    seen = _sampled(np.asarray(slopes, np.float32), walk.places * np.float32(2**-halving))
    change = seen[..., 1] * walk.headings[..., 0] - seen[..., 0] * walk.headings[..., 1]
    limit = _CLIPPED_AT * np.sqrt(max(float((change[0] ** 2).mean()), _SMALL**2))
    change = np.clip(change, -limit, limit)
    both = _means(change[1:] * change[:1], walk.held[1:])
    power = 0.5 * _means(change[1:] ** 2 + change[:1] ** 2, walk.held[1:])
    kept = np.clip(both / np.maximum(power, _SMALL**2), -1, 1)
    return [kept, np.array([_reaches(1 - kept, 1 - fall) for fall in _FALLS])]


def _reaches(rising: Floats, level: float) -> float:
    """The lag at which a curve first reaches a level [log2 px]."""
    above = np.nonzero(rising >= level)[0]
    if len(above) == 0:
        return _BEYOND
    place = int(above[0])
    lags = np.log2(LAGS)
    if place == 0:
        return float(lags[0] + np.log2(max(level / rising[0], 0.1)))
    part = (level - rising[place - 1]) / max(rising[place] - rising[place - 1], _SMALL)
    return float(lags[place - 1] + part * (lags[place] - lags[place - 1]))


def _energies(flow: Flow) -> Floats:
    """For each octave: energy, along over across, coherence; the last one told goes on."""
    told: list[tuple[float, float, float]] = []
    turn = np.exp(1j * np.radians(2 * flow.axis_deg))
    for octave, coherence in zip(flow.octaves, flow.coherences, strict=True):
        turned, energy = octave.sums()
        count = max(float(octave.inside.sum()), 1.0)
        towards = float((turned * turn).real)  # of the derivative along the axis, minus across
        ratio = (energy + towards + _SMALL) / (energy - towards + _SMALL)
        told.append((float(np.log(energy / count + _SMALL)), float(np.log(ratio)), coherence))
    while len(told) < LEVELS:
        told.append(told[-1] if told else (0.0, 0.0, 0.0))
    return np.array(told, np.float64).ravel()


def _plain(tones: Field, inside: Mask) -> Floats:
    """Noise, fine detail, contrast and size of the region, all as logarithms."""
    noise = float(np.median(np.abs(cv2.Laplacian(tones, cv2.CV_32F))[inside][::_EVERY]))
    detail = float((tones - cv2.GaussianBlur(tones, (0, 0), 2.0))[inside].std())
    contrast = float(tones[inside].std())
    values = (noise + 1e-5, detail + 1e-5, contrast + 1e-5, float(inside.sum()))
    return np.log(np.array(values, np.float64))
