"""Sharpness of still parts: thirds, shake told from defocus, noise, bad input."""

from __future__ import annotations

from typing import NamedTuple

import cv2
import numpy as np
import pytest
import skimage.data
from hypothesis import given, settings
from hypothesis import strategies as st
from numpy.typing import NDArray

from core.frame.edge_blur import COARSE_PX, FINE_PX, Edges, edges_of, sigma_px, width_px
from core.frame.findings import Sharpness, WaterArea
from core.frame.frame_noise import is_noisy, noise_codes
from core.frame.shake import find_shake
from core.frame.sharpness import measure_sharpness
from core.frame.working import WorkingCopy, working_copy
from tests.core.frame_files import natural
from tests.core.several_frames import real
from tests.scenes.camera import light_of_codes
from tests.scenes.lens import blurred, disc, shared, stroke
from tests.scenes.noise import Field

Pixels = NDArray[np.uint8]

NOTHING = Sharpness(thirds=(None, None, None))


def measured(pixels: Pixels, water: WaterArea | None = None) -> Sharpness:
    return measure_sharpness(WorkingCopy(pixels, 1.0), pixels, water)


def coffee() -> Field:
    """A sharp photograph in linear light, shape (400, 600, 3)."""
    return light_of_codes(np.asarray(skimage.data.coffee()))  # type: ignore[no-untyped-call]


def behind(kernel: Field | None) -> Pixels:
    """That photograph behind a kernel, with a little noise, as a JPEG."""
    light = coffee() if kernel is None else blurred(coffee(), kernel)
    return shared(light, 0.8, 90, 1)


class Planted(NamedTuple):
    """A kernel and what must be said."""

    kernel: Field | None
    soft_all_over: bool
    angle_deg: float | None


PLANTED = {
    "sharp": Planted(None, False, None),
    "defocus 5 px": Planted(disc(5), True, None),
    "defocus 14 px": Planted(disc(14), True, None),
    "shake 5 px": Planted(stroke(5, 20), False, 20),
    "shake 8 px": Planted(stroke(8, 120), False, 120),
    "shake 14 px, which the zeros of one scale turn over": Planted(stroke(14, 90), False, 90),
    "shake 24 px, bent": Planted(stroke(24, 150, 0.1), False, 150),
}


@pytest.mark.parametrize("planted", PLANTED.values(), ids=PLANTED.keys())
def test_defocus_and_shake_are_told_apart(planted: Planted) -> None:
    """A photograph behind a known kernel: what is soft is soft, and along what."""
    found = measured(behind(planted.kernel))
    assert found.soft_all_over is planted.soft_all_over
    if planted.angle_deg is None:
        assert found.shake is None
    else:
        assert found.shake is not None
        # Own rule: a direction in words needs no more.
        assert abs((found.shake.angle_deg - planted.angle_deg + 90) % 180 - 90) < 20
        assert found.shake.confidence >= 0.9


def test_a_mirror_turns_the_direction_over() -> None:
    """A shaken picture seen in a mirror moved the other way, by the same confidence."""
    pixels = behind(stroke(12, 30))
    here, there = measured(pixels).shake, measured(np.ascontiguousarray(pixels[:, ::-1])).shake
    assert here is not None
    assert there is not None
    assert abs((here.angle_deg + there.angle_deg + 90) % 180 - 90) < 3
    assert here.confidence == there.confidence


@settings(max_examples=8, deadline=None)
@given(st.floats(0.55, 1.0))
def test_brightness_changes_nothing(factor: float) -> None:
    """A picture of lower codes is as sharp, apart from their rounding."""
    pixels = natural()
    darker = np.round(pixels * factor).astype(np.uint8)
    here, there = measured(pixels), measured(darker)
    assert (here.softest, here.soft_all_over) == (there.softest, there.soft_all_over)
    assert (here.shake is None) == (there.shake is None)
    widths = [width_px(edges_of(WorkingCopy(picture, 1.0))) for picture in (pixels, darker)]
    assert widths[0] == pytest.approx(widths[1], abs=0.15)


@pytest.mark.parametrize("third", [0, 1, 2])
def test_the_soft_third_is_named(third: int) -> None:
    """One third of a photograph behind a Gaussian of 2 px is the softest; whole: none is."""
    light = light_of_codes(np.asarray(skimage.data.gravel())[..., None].repeat(3, axis=2))  # type: ignore[no-untyped-call]
    assert measured(shared(light, 0.5, 92, 1)).softest is None
    height = light.shape[0]
    rows = slice(third * height // 3, (third + 1) * height // 3)
    light = light.copy()
    light[rows] = cv2.GaussianBlur(light, (0, 0), 2.0)[rows]
    found = measured(shared(light, 0.5, 92, 1))
    assert found.softest == third
    assert found.shake is None


def test_water_is_left_out() -> None:
    """What is soft in the cells of the water says nothing of the still parts."""
    light = coffee().copy()
    half = light.shape[1] // 2
    light[:, half:] = cv2.GaussianBlur(light, (0, 0), 4.0)[:, half:]
    pixels = shared(light, 0.5, 92, 1)
    right = tuple(row + column for row in "ABCD" for column in "34")
    dry, wet = np.zeros((2, *pixels.shape[:2]), np.bool_)
    dry[:, :half], wet[:, half:] = True, True
    work = WorkingCopy(pixels, 1.0)
    sharp, soft = (width_px(edges_of(work, part)) for part in (dry, wet))
    assert sharp is not None
    assert soft is not None
    assert soft > sharp + 1
    assert not measured(pixels, WaterArea(right)).soft_all_over
    everywhere = tuple(row + column for row in "ABCD" for column in "1234")
    assert measured(pixels, WaterArea(everywhere)) == NOTHING


@pytest.mark.parametrize("sigma", [0.5, 1.0, 2.0, 4.0])
def test_a_step_of_known_width(sigma: float) -> None:
    """The ratio of gradients of a Gaussian step gives its width back."""
    ratio = np.sqrt((sigma**2 + COARSE_PX**2) / (sigma**2 + FINE_PX**2))
    assert sigma_px(float(ratio)) == pytest.approx(sigma)


@pytest.mark.parametrize("sigma", [1.0, 2.0, 3.0])
def test_a_drawn_step(sigma: float) -> None:
    """A drawn ring behind a Gaussian reads its width, within a quarter px."""
    rows, columns = np.mgrid[:600, :600]
    ring = (np.abs(np.hypot(rows - 300, columns - 300) - 180) < 60) * 120.0 + 60
    soft = cv2.GaussianBlur(ring, (0, 0), sigma).round().astype(np.uint8)
    found = width_px(edges_of(WorkingCopy(np.repeat(soft[..., None], 3, axis=2), 1.0)))
    assert found == pytest.approx(sigma, abs=0.25)


FLAT = np.full((300, 400, 3), 128, np.uint8)
WHITE = np.full((300, 400, 3), 255, np.uint8)


def twigs(sky_code: int, *, blur_px: float = 0.0) -> Pixels:
    """Dark twigs of many widths and directions before an even sky, shape (1000, 1500, 3)."""
    rng = np.random.default_rng(5)
    grey = np.full((1000, 1500), float(sky_code), np.float32)
    for _ in range(60):
        ends = rng.integers(0, (1500, 1000), (2, 2)).tolist()
        cv2.line(grey, ends[0], ends[1], 25.0, int(rng.integers(2, 30)), cv2.LINE_AA)
    if blur_px:
        grey = np.asarray(cv2.GaussianBlur(grey, (0, 0), blur_px), np.float32)
    noisy = np.clip(grey + rng.normal(0, 1.2, grey.shape), 0, 255)
    return np.repeat(noisy.astype(np.uint8)[..., None], 3, axis=2)


@pytest.mark.parametrize("sky_code", [235, 255])
def test_dark_twigs_before_lost_white_are_not_soft(sky_code: int) -> None:
    """What is left of their edges beside the clipped white is no edge."""
    found = measured(twigs(sky_code))
    assert not found.soft_all_over
    assert found.softest is None


@pytest.mark.parametrize("sky_code", [235, 255])
def test_twigs_out_of_focus_before_lost_white_are_soft(sky_code: int) -> None:
    """A blur of 3 px, wide enough to reach beyond what is left out."""
    assert measured(twigs(sky_code, blur_px=3.0)).soft_all_over


@pytest.mark.parametrize(
    "pixels",
    [FLAT, WHITE, np.zeros((300, 400, 3), np.uint8), FLAT[:1, :1], FLAT[:2], FLAT[:, :3]],
    ids=["flat", "all clipped", "black", "one pixel", "two rows", "three columns"],
)
def test_where_there_are_no_edges_nothing_is_said(pixels: Pixels) -> None:
    """Flat, clipped and tiny pictures give no width, no shake, no noise."""
    assert measured(np.ascontiguousarray(pixels)) == NOTHING


def test_a_picture_of_100_px() -> None:
    """A thumbnail gives widths or none, and never a shake."""
    small = cv2.resize(natural(), (100, 67), interpolation=cv2.INTER_AREA)
    found = measured(np.asarray(small, np.uint8))
    assert found.shake is None
    assert not found.noisy


def test_a_third_without_edges() -> None:
    """A third of smooth sky has no width, and is not the softest."""
    pixels = natural().copy()
    pixels[: pixels.shape[0] // 3 + 20] = 180
    found = measured(pixels)
    assert found.thirds[0] is None
    assert found.softest != 0


def test_only_one_third_has_edges() -> None:
    """With nothing to compare with, none is the softest."""
    pixels = natural().copy()
    pixels[: 2 * pixels.shape[0] // 3 + 20] = 180
    found = measured(pixels)
    assert found.thirds[:2] == (None, None)
    assert found.softest is None


def lines(angles_deg: tuple[float, ...]) -> Pixels:
    """Waves across the picture along a few directions only."""
    rows, columns = np.mgrid[:480, :640]
    total = np.zeros((480, 640))
    for angle_deg in angles_deg:
        turn = np.radians(angle_deg)
        total += np.sin((columns * np.cos(turn) - rows * np.sin(turn)) / 4)
    grey = (128 + 60 * total / max(1, len(angles_deg))).round().astype(np.uint8)
    return np.repeat(grey[..., None], 3, axis=2)


@pytest.mark.parametrize("angles_deg", [(90.0,), (0.0, 90.0)], ids=["one way", "two ways"])
def test_lines_are_no_shake(angles_deg: tuple[float, ...]) -> None:
    """A picture of lines along one or two directions tells nothing of movement."""
    assert measured(lines(angles_deg)).shake is None


@pytest.mark.parametrize("missing_deg", [0.0, 90.0])
def test_a_direction_that_is_missing(missing_deg: float) -> None:
    """Without edges along the movement there may be shake; without those across it, lines."""
    rng = np.random.default_rng(1)
    angle_deg = rng.permutation(np.repeat(np.arange(0.0, 180.0, 15.0), 500)).astype(np.float32)
    angle_deg = angle_deg[angle_deg != missing_deg]
    count = angle_deg.size
    ratio = np.exp(0.5 - 0.2 * np.cos(2 * np.radians(angle_deg))).astype(np.float32)
    row, column = rng.integers(0, 900, (2, count))
    edges = Edges(row, column, np.full(count, 9, np.float32), ratio, angle_deg)
    found = find_shake(edges, (900, 900))
    if missing_deg == 0:
        assert found is not None
        assert found.angle_deg == pytest.approx(0, abs=1e-3) or found.angle_deg > 179.9
    else:
        assert found is None


class Swings(NamedTuple):
    """How far weak and strong edges swing over the directions, around what, and what is said."""

    weak: float
    strong: float
    middle: float
    shaken: bool


@pytest.mark.parametrize(
    "swings",
    [
        Swings(0.25, 0.25, 1.0, True),
        Swings(0.25, 0.1, 1.0, True),
        Swings(0.25, 0, 1.0, False),
        Swings(0.25, 0, 0.6, True),
    ],
    ids=str,
)
def test_strong_edges_confirm_what_may_be_noise(swings: Swings) -> None:
    """Movement softens strong edges too; where all are sharp, noise may make weak ones look so."""
    angle_deg, row, column, is_strong = _edges_all_around()
    swing = np.where(is_strong, swings.strong, swings.weak)
    ratio = np.exp(swings.middle - swing * np.cos(2 * np.radians(angle_deg))).astype(np.float32)
    strength = np.where(is_strong, 9, 2).astype(np.float32)
    found = find_shake(Edges(row, column, strength, ratio, angle_deg), (900, 900))
    assert (found is not None) is swings.shaken


@pytest.mark.parametrize(
    ("name", "across"), [("astronaut", slice(307, 435)), ("coffee", slice(150, 250))]
)
def test_a_strip_tells_no_movement(name: str, across: slice) -> None:
    """What few things it shows may all be softer one way; the whole photograph is not."""
    for pixels in (real(name), np.ascontiguousarray(real(name)[:, across])):
        assert measure_sharpness(working_copy(pixels), pixels, None).shake is None


def test_strong_edges_of_few_directions_tell_nothing() -> None:
    """Where the strongest edges are of four directions, they don't confirm a movement."""
    angle_deg, row, column, _ = _edges_all_around()
    ratio = np.exp(1.0 - 0.25 * np.cos(2 * np.radians(angle_deg))).astype(np.float32)
    strength = np.where(angle_deg % 90 == 0, 9, 2).astype(np.float32)
    strength[angle_deg % 90 == 45] = 5  # more than a quarter is stronger than the rest
    assert find_shake(Edges(row, column, strength, ratio, angle_deg), (900, 900)) is None


def _edges_all_around() -> tuple[Field, NDArray[np.int64], NDArray[np.int64], NDArray[np.bool_]]:
    """Angles of edges in each direction, where they lie, and three in ten of them."""
    rng = np.random.default_rng(1)
    angle_deg = rng.permutation(np.repeat(np.arange(0.0, 180.0, 15.0), 800)).astype(np.float32)
    row, column = rng.integers(0, 900, (2, angle_deg.size))
    return angle_deg, row, column, rng.random(angle_deg.size) < 0.3


def test_what_moved_in_a_part_is_no_shake() -> None:
    """A shaken corner in an otherwise smooth picture is no movement of the camera."""
    soft = behind(stroke(14, 30))
    pixels = np.full((1200, 1800, 3), 128, np.uint8)
    pixels[400:800, 600:1200] = soft
    edges = edges_of(WorkingCopy(pixels, 1.0))
    assert find_shake(edges, pixels.shape) is None


class Noise(NamedTuple):
    """Noise that is added [codes], the JPEG's quality, and what must be said."""

    codes: float
    quality: int
    noisy: bool


@pytest.mark.parametrize(
    "noise",
    [Noise(0, 92, False), Noise(1, 92, False), Noise(8, 92, True), Noise(12, 88, True)],
    ids=str,
)
def test_noise_that_is_plainly_there(noise: Noise) -> None:
    """Fine noise of many codes is noise, also in a large frame; a little is not mentioned."""
    large = cv2.resize(coffee(), (1800, 1200), interpolation=cv2.INTER_CUBIC)
    for light in (coffee(), np.asarray(np.clip(large, 0, 1), np.float32)):
        assert is_noisy(shared(light, noise.codes, noise.quality, 3)) is noise.noisy


@pytest.mark.parametrize("name", ["grass", "gravel"])
def test_fine_texture_is_no_noise(name: str) -> None:
    """Grass and gravel to the last pixel read high, but do not fade as noise does."""
    grey = np.asarray(getattr(skimage.data, name)())
    pixels = np.ascontiguousarray(np.repeat(grey[..., None], 3, axis=2))
    noise = noise_codes(pixels)
    assert noise is not None
    assert noise > 2
    assert not is_noisy(pixels)


def test_noise_of_a_tiny_crop_is_not_halved() -> None:
    """Too few blocks at half size: nothing is said."""
    rng = np.random.default_rng(1)
    pixels = np.clip(rng.normal(120, 10, (112, 112, 3)), 0, 255).astype(np.uint8)
    assert noise_codes(pixels) is not None
    assert not is_noisy(pixels)
