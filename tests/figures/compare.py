"""Figures of the comparison of frames: order of the water, stops, alignment, other views."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.align import Alignment, align
from core.frame.brightness import measured_stops
from core.frame.fine_detail import ALIKE, water_detail
from core.frame.laid import lay
from core.frame.working import working_copy
from tests.core.several_frames import STILL, Hand, Pixels, frame, held, rendered, shifted
from tests.figures.figure import Figure, Material

#: Cases of each kind; a run stays under two minutes.
RENDERED_CASES = 60
SHIFTED_CASES = 20
STOPS_CASES = 6
#: Speed of the rendered fall [m/s], about: half of what 7 m of free fall end with.
_SPEED_MPS = 8.0
#: Shares of the shorter time: from 2 px of these small copies (in a working copy the limit of
#: frozen, 0.15 %, is as long) to silky.
_SHARES = (0.0028, 0.25)
_SHIFTED_SHARES = (0.004, 0.2)
_SIZE = (480, 720)


@dataclass
class _Orders:
    """How pairs of known times came out."""

    right: int = 0
    wrong: int = 0
    alike: int = 0
    errors: list[float] = field(default_factory=list)

    def take(self, balance: float | None) -> None:
        """Count a pair by its balance; above 0 is right."""
        if balance is None or abs(balance) <= ALIKE:
            self.alike += 1
        elif balance > 0:
            self.right += 1
        else:
            self.wrong += 1

    def figures(self, material: Material) -> Iterator[Figure]:
        """How often an order is given, and how often it is right then."""
        told = self.right + self.wrong
        share = self.right / max(told, 1)
        yield Figure("compare", material, "order right, of those told", share, told, 0.98)
        all_ = told + self.alike
        yield Figure("compare", material, "order told", told / all_, all_, 0.8)


def figures(seed: int) -> Iterable[Figure]:
    """Order of two frames one to three stops apart, without their times; stops; alignment."""
    rng = np.random.default_rng(seed)
    yield from _rendered(rng)
    yield from _shifted(rng)
    yield from _stops(rng)
    yield from _other_views(rng)


def _rendered(rng: np.random.Generator) -> Iterator[Figure]:
    """Frames of the rendered fall, held in the hand, each at its own brightness."""
    orders, errors = _Orders(), []
    for _ in range(RENDERED_CASES):
        seed, hand = int(rng.integers(2**31)), _hand(rng)
        coverage_m = float(rng.choice([6, 10, 20, 40]))
        share = float(np.exp(rng.uniform(*np.log(_SHARES))))
        short_s = share * coverage_m / _SPEED_MPS
        scene = {"coverage_m": coverage_m, "white_stops": float(rng.uniform(1.0, 2.4))}
        sides = _SIZE if rng.random() < 0.65 else _SIZE[::-1]
        frames = [
            rendered(
                short_s * 2 ** (step * float(rng.uniform(1, 3))),
                seed,
                moment=step,
                stops=float(rng.uniform(-0.6, 0.3)),
                width=sides[0],
                height=sides[1],
                **scene,
            )
            for step in (0, 1)
        ]
        first, second = held(frames[0], Hand()), held(frames[1], hand)
        laid = lay([frame(first), frame(second)])
        motion = laid.motions[1]
        if isinstance(motion, Alignment):
            errors.append(_largest_error_px(hand, frames[0], first, motion))
        orders.take(_balance(laid))
    yield from orders.figures(Material.RENDERED)
    found = len(errors) / RENDERED_CASES
    yield Figure("compare", Material.RENDERED, "aligned", found, RENDERED_CASES, 0.95)
    middle = float(np.median(errors)) if errors else math.inf
    name = "alignment, largest error in the frame, median [px of 720]"
    yield Figure("compare", Material.RENDERED, name, middle, len(errors), 0.5, at_least=False)


def _balance(laid: object) -> float | None:
    detail = water_detail(laid)  # type: ignore[arg-type]
    return detail.balance(0, 1) if detail is not None and len(detail.slopes) == 2 else None


def _hand(rng: np.random.Generator) -> Hand:
    """A tripod in half of the cases, else a hand."""
    if rng.random() < 0.5:
        return Hand(float(rng.uniform(-1.5, 1.5)), float(rng.uniform(-1.5, 1.5)))
    return Hand(
        float(rng.uniform(-15, 15)),
        float(rng.uniform(-15, 15)),
        float(rng.uniform(-2, 2)),
        float(rng.uniform(0.985, 1.015)),
        float(rng.uniform(-0.015, 0.015)),
    )


def _largest_error_px(hand: Hand, whole: Pixels, first: Pixels, motion: Alignment) -> float:
    """Between where a grid of places lies and where it was found [px]."""
    height, width = whole.shape[:2]
    cut = np.array([width - first.shape[1], height - first.shape[0]]) / 2
    columns, rows = np.meshgrid(*(np.linspace(0, side - 1, 5) for side in first.shape[1::-1]))
    places = np.column_stack([columns.ravel(), rows.ravel()])
    true = _moved(hand.matrix(width, height), places + cut) - cut
    return float(
        np.hypot(*(_moved(motion.between(first.shape, first.shape), places) - true).T).max()
    )


def _moved(matrix: NDArray[np.float64], places: NDArray[np.float64]) -> NDArray[np.float64]:
    there = np.column_stack([places, np.ones(len(places))]) @ matrix.T
    return np.asarray(there[:, :2] / there[:, 2:], np.float64)


def _shifted(rng: np.random.Generator) -> Iterator[Figure]:
    """Real gravel and grass that flow a known length through real pictures."""
    orders = _Orders()
    for _ in range(SHIFTED_CASES):
        still, flowing = str(rng.choice(STILL)), str(rng.choice(["gravel", "grass"]))
        share = float(np.exp(rng.uniform(*np.log(_SHIFTED_SHARES))))
        stops, angle = float(rng.uniform(1, 2.5)), float(rng.uniform(60, 120))
        lengths = (400 * share, min(400 * share * 2**stops, 250))
        pair = [
            shifted(
                still,
                flowing,
                length,
                angle_deg=angle,
                start_px=step * float(rng.uniform(100, 250)),
                stops=float(rng.uniform(-0.5, 0.5)),
                noise=float(rng.uniform(0.002, 0.006)),
                seed=int(rng.integers(2**31)),
            )[0]
            for step, length in enumerate(lengths)
        ]
        orders.take(_balance(lay([frame(one) for one in pair], ("B2", "B3", "C2", "C3"))))
    yield from orders.figures(Material.SHIFTED)


def _stops(rng: np.random.Generator) -> Iterator[Figure]:
    """Known steps of brightness, by the sRGB curve and by a steeper one as cameras have."""
    plain, curved = [], []
    for _ in range(STOPS_CASES):
        seed, stops = int(rng.integers(2**31)), float(rng.uniform(-2, 0.5))
        pair = [
            rendered(1 / 4, seed, moment=step, stops=step * stops, width=480, height=720)
            for step in (0, 1)
        ]
        plain.append(_stops_error(pair, stops))
        curved.append(_stops_error([_contrasty(one) for one in pair], stops))
    for name, errors, aim in (
        ("stops, sRGB curve: median error", plain, 0.1),
        ("stops, a camera's steep curve: median error", curved, 0.6),
    ):
        known = [error for error in errors if error is not None]
        middle = float(np.median(known)) if known else math.inf
        yield Figure("compare", Material.RENDERED, name, middle, len(known), aim, at_least=False)


def _stops_error(pair: list[Pixels], stops: float) -> float | None:
    laid = lay([frame(one) for one in pair], ("B2", "B3", "C2", "C3"))
    if len(laid.shown) < 2:
        return None
    found = measured_stops(laid.shown[0], laid.shown[1], laid.still)
    return None if found is None else abs(found - stops)


def _contrasty(pixels: Pixels) -> Pixels:
    """An S-shaped curve over the codes, 1.3 times as steep in the middle."""
    codes = np.arange(256) / 255
    curve = 0.5 + np.tanh(2.0 * (codes - 0.5)) / (2 * np.tanh(1.0))
    return np.asarray(cv2.LUT(pixels, np.round(255 * curve).astype(np.uint8)), np.uint8)


def _other_views(rng: np.random.Generator) -> Iterator[Figure]:
    """Different pictures that were taken for one view."""
    places = [rendered(1 / 4, int(rng.integers(2**31)), width=480, height=720) for _ in range(4)]
    pairs = [(one, two) for one in range(4) for two in range(one)]
    taken = sum(
        isinstance(align(working_copy(places[one]), working_copy(places[two])), Alignment)
        for one, two in pairs
    )
    name = "other views taken for one"
    yield Figure(
        "compare", Material.RENDERED, name, taken / len(pairs), len(pairs), 0.0, at_least=False
    )
