"""Figures of averaging and of the illustration: noise against the law, what moved, streaks."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

import numpy as np

from core.frame.average import average_frames
from core.frame.crops import codes_of
from core.frame.laid import lay
from tests.core.several_frames import Hand, Pixels, frame, held, light, rendered
from tests.figures.figure import Figure, Material

CASES = 3
_CELLS = ("B2", "B3", "C2", "C3")


def figures(seed: int) -> Iterable[Figure]:
    """Noise of averages over the law, by tripod and by hand; frames with a visitor refused."""
    rng = np.random.default_rng(seed)
    yield from _noise(rng)
    yield from _visitors(rng)


def _noisy(rng: np.random.Generator, seed: int, moment: int) -> Pixels:
    """A frame at 1/60 s with noise of its own."""
    clean = light(rendered(1 / 60, seed, moment=moment, width=480, height=720))
    noise = rng.standard_normal(clean.shape, np.float32) * np.float32(0.012)
    return codes_of(np.asarray(clean + noise, np.float32))


def _noise(rng: np.random.Generator) -> Iterator[Figure]:
    for name, hand, aim in (("tripod", 0.0, 0.05), ("held", 4.0, 0.15)):
        errors, kept = [], []
        for _ in range(CASES):
            seed, number = int(rng.integers(2**31)), int(rng.integers(4, 7))
            full = [
                held(_noisy(rng, seed, step), Hand(hand * step / 3, -hand * step / 4), margin=0)
                for step in range(number)
            ]
            frames = [frame(pixels) for pixels in full]
            made = average_frames(frames, lay(frames, _CELLS, 12), full).made
            kept.append(len(made.used) / number)
            if made.noise is not None:
                errors.append(abs(made.noise / made.law - 1))
        told = f"noise of an average over the law, {name}: median error"
        middle = float(np.median(errors)) if errors else 1.0
        yield Figure("average", Material.RENDERED, told, middle, len(errors), aim, at_least=False)
        used = f"good frames that went in, {name}"
        yield Figure("average", Material.RENDERED, used, float(np.mean(kept)), CASES, 0.95)


def _visitors(rng: np.random.Generator) -> Iterator[Figure]:
    """Somebody in one of four frames, of 2 to 6 % of the frame, anywhere but in the water."""
    refused = 0
    for _ in range(CASES):
        seed, odd = int(rng.integers(2**31)), int(rng.integers(1, 4))
        full = [_noisy(rng, seed, step) for step in range(4)]
        high, wide = int(rng.integers(110, 180)), int(rng.integers(60, 110))
        top, left = int(rng.integers(0, 720 - high)), int(rng.choice([5, 480 - wide - 5]))
        visited = full[odd].copy()
        visited[top : top + high, left : left + wide] = rng.choice([(190, 60, 50), (60, 70, 160)])
        full[odd] = visited
        frames = [frame(pixels) for pixels in full]
        made = average_frames(frames, lay(frames, _CELLS, 12), full).made
        refused += odd not in made.used
    yield Figure(
        "average", Material.RENDERED, "visited frames refused", refused / CASES, CASES, 0.9
    )
