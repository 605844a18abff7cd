"""Moving water: a pattern carried along its flow while the shutter is open."""

from __future__ import annotations

import cv2
import numpy as np
from numpy.typing import NDArray

from tests.scenes.noise import Field


def streak_px(speed_mps: float, shutter_s: float, coverage_m: float, side_px: int) -> float:
    """Length of a streak across the view [px]: way travelled over what the frame covers.

    Args:
        speed_mps: speed of the water in the plane of the view [m/s].
        shutter_s: exposure time [s].
        coverage_m: what the side of the frame covers at the water's distance [m].
        side_px: that side of the frame [px].
    """
    return speed_mps * shutter_s / coverage_m * side_px


def moved(pattern: Field, length_px: float) -> Field:
    """The mean of `pattern` while it moves down by `length_px`: a box of exactly that length.

    A fraction of a pixel counts as a fraction. The pattern comes in at the top as its own
    mirror image, and it ends where it is at the moment the shutter opens.
    """
    if length_px <= 0:
        return pattern
    height = pattern.shape[0]
    reach = int(np.ceil(length_px)) + 1
    padded = np.pad(pattern, ((reach, 0), (0, 0)), mode="symmetric")
    sums = np.cumsum(padded, axis=0, dtype=np.float64)
    sums = np.vstack([np.zeros((1, pattern.shape[1])), sums])
    # Pixel y holds the mean of the pattern over (y - length, y], in pixel edges.
    ends = np.arange(height) + reach + 1
    whole = int(length_px)
    rest = length_px - whole
    total = sums[ends] - sums[ends - whole]
    if rest:
        total += rest * padded[ends - whole - 1]
    return np.asarray(total / length_px, dtype=np.float32)


def time_of_fall(drop_m: NDArray[np.float64], first_mps: float = 1.5) -> NDArray[np.float64]:
    """Time since the lip [s] for each depth below it [m], free fall (no drag)."""
    gravity = 9.81  # m/s2
    reached = np.sqrt(first_mps**2 + 2 * gravity * np.maximum(drop_m, 0))
    return np.asarray((reached - first_mps) / gravity, dtype=np.float64)


def carried(
    pattern: Field, across: Field, time_s: Field, *, rows_per_s: float, shutter_s: float
) -> Field:
    """What the frame sees of a pattern that streams along lines of flow.

    The pattern is laid out over (time since the lip, place across the flow), in which all
    water moves at the same pace, so that the open shutter is one box of `shutter_s`.

    Args:
        pattern: shape (rows, columns); a row is 1 / `rows_per_s` of flow time.
        across: shape (H, W), place across the flow, 0 to 1.
        time_s: shape (H, W), flow time since the lip [s].
        rows_per_s: rows of the pattern that pass in a second.
        shutter_s: exposure time [s].

    Returns:
        Shape (H, W).
    """
    blurred = moved(pattern, shutter_s * rows_per_s)
    columns = across * np.float32(pattern.shape[1] - 1)
    rows = time_s * np.float32(rows_per_s)
    seen = cv2.remap(
        blurred,
        columns.astype(np.float32),
        rows.astype(np.float32),
        cv2.INTER_LINEAR,
        borderMode=cv2.BORDER_REFLECT,
    )
    return np.asarray(seen, dtype=np.float32)
