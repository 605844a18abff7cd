"""Frames of one view are laid on each other; others are refused."""

from __future__ import annotations

from collections.abc import Callable

import cv2
import numpy as np
import pytest
from skimage.metrics import structural_similarity
from skimage.registration import phase_cross_correlation

from core.frame.align import Alignment, align
from core.frame.comparison import Misfit
from core.frame.laid import lay
from core.frame.working import working_copy
from tests.core.several_frames import Hand, Matrix, Pixels, frame, held, rendered

SIZE = {"width": 480, "height": 720}


def halved(pixels: Pixels) -> Pixels:
    """Half the size, by area averages."""
    size = (pixels.shape[1] // 2, pixels.shape[0] // 2)
    return np.asarray(cv2.resize(pixels, size, interpolation=cv2.INTER_AREA), np.uint8)


def corner_error_px(hand: Hand, first: Pixels, found: Alignment, margin: float = 0.04) -> float:
    """Largest distance between where a grid of places lies and where it was found [px]."""
    height, width = SIZE["height"], SIZE["width"]
    cut = np.array([round(margin * width), round(margin * height)])
    columns, rows = np.meshgrid(*(np.linspace(0, side - 1, 5) for side in first.shape[1::-1]))
    places = np.column_stack([columns.ravel(), rows.ravel()])

    def moved(matrix: Matrix, points: Matrix) -> Matrix:
        there = np.column_stack([points, np.ones(len(points))]) @ matrix.T
        return np.asarray(there[:, :2] / there[:, 2:])

    true = moved(hand.matrix(width, height), places + cut) - cut
    mine = moved(found.between(first.shape, first.shape), places)
    return float(np.hypot(*(mine - true).T).max())


@pytest.mark.parametrize(
    ("hand", "most_px"),
    [
        (Hand(), 0.3),  # a tripod
        (Hand(2.4, -1.7), 0.3),  # a tripod that was touched
        (Hand(12, 9, 1.0, 1.01), 0.6),  # held, a breath apart
        (Hand(-14, 10, -2.0, 0.98, 0.02), 0.8),  # held, with a tilt
    ],
)
def test_moved_frame_is_laid_back(hand: Hand, most_px: float) -> None:
    """The second of two frames, with other water, is found within a pixel everywhere."""
    first = held(rendered(1 / 250, 3, **SIZE), Hand())
    second = held(rendered(1 / 4, 3, moment=1, stops=-1.0, **SIZE), hand)
    found = align(working_copy(first), working_copy(second))
    assert isinstance(found, Alignment)
    assert corner_error_px(hand, first, found) < most_px


def test_shift_agrees_with_phase_correlation() -> None:
    """A plain shift is what scikit-image's phase correlation finds on the rock, within 0.2 px."""
    whole = rendered(1 / 30, 5, **SIZE)
    first, second = whole[20:600, 20:400], whole[27:607, 15:395]
    found = align(working_copy(first.copy()), working_copy(second.copy()))
    assert isinstance(found, Alignment)
    grey = [cv2.cvtColor(one[:250, 200:], cv2.COLOR_RGB2GRAY) for one in (first, second)]
    theirs, _, _ = phase_cross_correlation(*grey, upsample_factor=20)  # type: ignore[no-untyped-call]
    right, down = found.shift_px(first.shape)
    assert (down, right) == pytest.approx((-theirs[0], -theirs[1]), abs=0.2)
    assert (right, down) == pytest.approx((5, -7), abs=0.2)
    assert found.turned_deg == pytest.approx(0, abs=0.05)


def test_half_size_copy_lies_on_its_frame() -> None:
    """A smaller copy of the other frame is no obstacle; the shift is in the first's pixels."""
    first = rendered(1 / 250, 3, **SIZE)
    second = halved(rendered(1 / 4, 3, moment=1, **SIZE))
    found = align(working_copy(first), working_copy(second))
    assert isinstance(found, Alignment)
    assert found.shift_px(first.shape) == pytest.approx((0, 0), abs=0.5)
    assert found.between(first.shape, second.shape)[0, 0] == pytest.approx(0.5, abs=0.005)


@pytest.mark.parametrize(
    ("seed", "change", "misfit"),
    [
        (9, lambda pixels: pixels, Misfit.OTHER_VIEW),  # another place
        (3, lambda pixels: pixels[:, ::-1].copy(), Misfit.OTHER_VIEW),  # mirrored
        (3, lambda pixels: pixels[:600].copy(), Misfit.OTHER_SHAPE),  # cropped
        (3, lambda pixels: pixels.transpose(1, 0, 2).copy(), Misfit.OTHER_SHAPE),  # turned
        (3, lambda pixels: np.full_like(pixels, 90), Misfit.FEW_MARKS),  # fog
    ],
)
def test_other_view_is_refused(
    seed: int, change: Callable[[Pixels], Pixels], misfit: Misfit
) -> None:
    """What is not the same view is refused, with the reason."""
    first = working_copy(rendered(1 / 250, 3, **SIZE))
    second = change(rendered(1 / 4, seed, **SIZE))
    assert align(first, working_copy(second)) is misfit


def test_named_water_does_not_count() -> None:
    """With nothing but water between two blank walls there is nothing to hold on to."""
    wall = np.full((720, 480, 3), 60, np.uint8)
    wall[:, 150:330] = rendered(1 / 250, 3, **SIZE)[:, 150:330]
    moving = np.zeros((720, 480), np.bool_)
    moving[:, 140:340] = True
    assert align(working_copy(wall), working_copy(wall), moving) is Misfit.FEW_MARKS
    assert isinstance(align(working_copy(wall), working_copy(wall)), Alignment)


def test_few_corners_still_lie() -> None:
    """Two soft frames without corners are laid by phase correlation alone."""
    soft = np.asarray(cv2.GaussianBlur(rendered(1 / 30, 5, **SIZE), (0, 0), 6), np.uint8)
    pair = soft[20:620, 20:400].copy(), soft[24:624, 17:397].copy()
    found = align(working_copy(pair[0]), working_copy(pair[1]))
    assert isinstance(found, Alignment)
    assert found.shift_px(pair[0].shape) == pytest.approx((3, -4), abs=0.7)


def test_bars_without_corners_lie() -> None:
    """Soft bars have no corners at all; frames of them still lie on each other."""
    bars = 90 + 50 * np.sin(np.arange(480) / 9)
    frame = np.repeat(np.repeat(bars[None, :, None], 720, axis=0), 3, axis=2).astype(np.uint8)
    found = align(working_copy(frame), working_copy(frame))
    assert isinstance(found, Alignment)
    assert found.shift_px(frame.shape) == pytest.approx((0, 0), abs=0.1)


def test_other_bars_are_another_view() -> None:
    """Bars without corners that run the other way share nothing with the first."""
    bars = np.repeat((90 + 50 * np.sin(np.arange(600) / 9))[None, :, None], 600, axis=0)
    waves = np.repeat(bars, 3, axis=2).astype(np.uint8)
    turned = np.ascontiguousarray(waves.transpose(1, 0, 2))
    assert align(working_copy(waves), working_copy(turned)) is Misfit.OTHER_VIEW


def test_there_and_back_is_nowhere() -> None:
    """The alignment of the swapped pair is the inverse, within a fifth of a pixel."""
    first = working_copy(held(rendered(1 / 250, 3, **SIZE), Hand()))
    second = working_copy(held(rendered(1 / 4, 3, moment=1, **SIZE), Hand(5, -4, 0.5)))
    there, back = align(first, second), align(second, first)
    assert isinstance(there, Alignment)
    assert isinstance(back, Alignment)
    shape = first.pixels.shape
    round_trip = back.between(shape, shape) @ there.between(shape, shape)
    corners = np.array([[0, 0, 1], [440, 0, 1], [0, 660, 1], [440, 660, 1]], np.float64)
    returned = corners @ (round_trip / round_trip[2, 2]).T
    assert np.abs(returned[:, :2] / returned[:, 2:] - corners[:, :2]).max() < 0.2


def test_laid_rock_is_alike_by_structural_similarity() -> None:
    """The rock of a moved frame, laid back, is the first's by scikit-image's SSIM; before, not."""
    first = held(rendered(1 / 250, 3, **SIZE), Hand())
    second = held(rendered(1 / 4, 3, moment=1, **SIZE), Hand(9, 6, 0.8))
    laid = lay([frame(first), frame(second)]).shown[1]
    rock = (slice(80, 420), slice(12, 140))
    alike = [
        structural_similarity(first[rock], other[rock], channel_axis=2)  # type: ignore[no-untyped-call]
        for other in (laid, second)
    ]
    assert alike[0] > 0.9
    assert alike[1] < 0.6
