"""Averages of frames: noise by the law, what moved refused, and what the water becomes."""

from __future__ import annotations

import numpy as np
import pytest

from core.frame.average import average_frames
from core.frame.comparison import LeftOut, Misfit
from core.frame.crops import brighter, codes_of, window_of
from core.frame.laid import Laid, MeasuredFrame, lay
from core.frame.working import LINEAR_OF_CODE
from core.water import Look
from tests.core.several_frames import Hand, Pixels, frame, held, light, rendered

SIZE = {"width": 480, "height": 720}
CELLS = ("B2", "B3", "C2", "C3")


def noisy(moment: int, spread: float = 0.012) -> Pixels:
    """A frame at 1/60 s with noise of its own in linear light."""
    clean = light(rendered(1 / 60, 3, moment=moment, **SIZE))
    noise = np.random.default_rng(moment).standard_normal(clean.shape, np.float32)
    return codes_of(np.asarray(clean + np.float32(spread) * noise, np.float32))


def laid(frames: list[MeasuredFrame]) -> Laid:
    """Up to twelve frames on the first."""
    return lay(frames, CELLS, 12)


@pytest.mark.parametrize("number", [4, 5])
def test_noise_falls_by_the_law(number: int) -> None:
    """The noise of an average is that of one frame over the root of their number, within 6 %."""
    full = [noisy(moment) for moment in range(number)]
    frames = [frame(pixels, 0.022, shutter_s=1 / 60) for pixels in full]
    average = average_frames(frames, laid(frames), full)
    made = average.made
    assert made.used == tuple(range(number))
    assert made.law == pytest.approx(number**-0.5)
    assert made.noise == pytest.approx(made.law, rel=0.06)
    assert made.total_s == pytest.approx(number / 60)
    assert made.look is (Look.TEXTURED if number < 5 else Look.SILKY)
    assert made.texture is not None
    assert made.texture < 0.85
    assert average.pixels is not None
    assert average.pixels.shape == full[0].shape


def test_frames_of_other_times_add_their_own_shares() -> None:
    """A long first frame does not stand for the short ones beside it."""
    full = [noisy(moment) for moment in range(3)]
    shares = (0.08, 0.004, 0.004)
    frames = [
        frame(pixels, share, shutter_s=share / 0.8)
        for pixels, share in zip(full, shares, strict=True)
    ]
    made = average_frames(frames, laid(frames), full).made
    assert made.total_s == pytest.approx(sum(shares) / 0.8)
    assert made.look is Look.TEXTURED


def test_average_is_the_mean_of_light() -> None:
    """Two still frames a stop apart within bounds average in linear light, not in codes."""
    one = rendered(1 / 60, 3, **SIZE)
    two = brighter(one, 0.4)
    frames = [frame(one), frame(two)]
    average = average_frames(frames, laid(frames), [one, two])
    assert average.pixels is not None
    mean = (LINEAR_OF_CODE[one] + LINEAR_OF_CODE[two]) / 2
    apart = np.abs(average.pixels.astype(int) - codes_of(np.asarray(mean, np.float32)).astype(int))
    assert np.quantile(apart, 0.99) <= 1
    assert average.made.noise is None  # two frames have no halves
    assert (average.made.total_s, average.made.look) == (None, None)


def test_handheld_frames_are_laid_first() -> None:
    """Frames that were held average to a sharp rock, and reach to the borders of the first."""
    full = [held(noisy(step), Hand(3.0 * step, -2.0 * step), margin=0.0) for step in range(3)]
    frames = [frame(pixels) for pixels in full]
    average = average_frames(frames, laid(frames), full)
    assert average.made.used == (0, 1, 2)
    assert average.pixels is not None
    rock = (slice(300, 420), slice(10, 110))
    apart = light(average.pixels)[rock] - light(rendered(1 / 60, 3, **SIZE))[rock]
    assert float(np.abs(apart).mean()) < 0.01
    assert average.pixels[:, -1].mean() > 5


def test_moved_and_odd_frames_stay_out() -> None:
    """A person in one frame, a brighter one, one twice, another place: each with its reason."""
    full = [noisy(moment) for moment in range(4)]
    visited = noisy(5)
    visited[480:640, 20:110] = (200, 60, 60)
    full += [visited, brighter(noisy(6), 1.0), full[1], rendered(1 / 60, 9, **SIZE)]
    frames = [frame(pixels) for pixels in full]
    average = average_frames(frames, laid(frames), full)
    assert {one.frame: one.why for one in average.made.left_out} == {
        4: LeftOut.MOVED,
        5: LeftOut.BRIGHTNESS,
        6: LeftOut.SAME,
        7: LeftOut.MISFIT,
    }
    assert average.made.used == (0, 1, 2, 3)


def test_ghost_in_one_of_two_leaves_nothing() -> None:
    """Of two frames with a person in one there is no average."""
    visited = noisy(1)
    visited[480:640, 20:110] = (200, 60, 60)
    frames = [frame(noisy(0)), frame(visited)]
    average = average_frames(frames, laid(frames), [noisy(0), visited])
    assert average.made.used == (0,)
    assert average.pixels is None
    assert average.made.left_out[0].why is LeftOut.MOVED


def test_no_smooth_place_no_noise() -> None:
    """Where all is water, or clipped, no noise is told, and no texture."""
    full = [noisy(moment) for moment in range(4)]
    white = [np.maximum(pixels, 252).astype(np.uint8) for pixels in full]
    frames = [frame(pixels) for pixels in full]
    placed = laid(frames)
    assert average_frames(frames, placed, full).made.texture is not None
    bright = Laid(**{**vars(placed), "pixels": tuple(white)})
    average = average_frames(frames, bright, full)
    assert (average.made.noise, average.made.texture) == (None, None)


def test_codes_and_gains() -> None:
    """Codes come back from their light; no gain changes nothing, and gains are bounded."""
    codes = np.arange(256, dtype=np.uint8).reshape(16, 16, 1).repeat(3, axis=2)
    assert np.array_equal(codes_of(LINEAR_OF_CODE[codes]), codes)
    assert brighter(codes, 0.0) is codes
    assert np.array_equal(brighter(codes, 9.0), brighter(codes, 3.0))
    assert brighter(codes, 1.0)[7, 15, 0] == codes_of(2 * LINEAR_OF_CODE[codes])[7, 15, 0]


def test_window_of_a_misfit_is_its_own_place() -> None:
    """A frame that lies on nothing shows the same part of itself, at the same scale."""
    small = noisy(0)[::2, ::2].copy()
    cut, reached = window_of(small, Misfit.OTHER_VIEW, (720, 480, 3), (100, 100, 60, 40))
    assert cut.shape == (40, 60, 3)
    assert reached.all()
