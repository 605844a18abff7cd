"""Drops on the glass: told from two frames only, and not from two of one view."""

from __future__ import annotations

from collections.abc import Sequence

import cv2
import numpy as np

from core.frame.wet_glass import wet_glass
from core.frame.working import WorkingCopy
from tests.core.drops import DROPS, Pixels, texture, wet


def work(pixels: Pixels) -> WorkingCopy:
    return WorkingCopy(np.ascontiguousarray(pixels), 1.0)


def _mixed(wet_one: Pixels, dry: Pixels) -> Pixels:
    """Seven parts of one and three of the other."""
    return np.asarray(cv2.addWeighted(wet_one, 0.7, dry, 0.3, 0), np.uint8)


def test_shared_spots_are_found() -> None:
    """Two different scenes with the same soft spots: each spot is found once, in its place."""
    boxes = wet_glass(work(wet(texture("grass"))), work(wet(texture("gravel"))))
    found = {
        (round((box.left + box.width / 2) * 60), round((box.top + box.height / 2) * 40))
        for box in boxes
    }
    assert len(boxes) == len(DROPS)
    for across, down, radius in DROPS:
        near = [f for f in found if np.hypot(10 * f[0] - across, 10 * f[1] - down) < radius]
        assert len(near) == 1


def test_clean_frames_have_none() -> None:
    """Two different clean scenes share no spot."""
    assert wet_glass(work(texture("grass")), work(texture("gravel"))) == ()


def test_spots_of_one_frame_are_the_scene() -> None:
    """What only one frame shows is no drop."""
    assert wet_glass(work(wet(texture("grass"))), work(texture("gravel"))) == ()


def test_what_is_soft_but_not_round_is_the_scene() -> None:
    """A soft band that both frames share, as of smooth water, is no drop."""
    pair = []
    for name in ("grass", "gravel"):
        pixels = texture(name)
        soft = cv2.GaussianBlur(pixels, (0, 0), 8)
        pixels[180:220, 120:480] = soft[180:220, 120:480]
        pair.append(work(pixels))
    assert wet_glass(*pair) == ()


def test_drops_before_a_smooth_sky() -> None:
    """The drop that has detail around it in both frames is found, the other one can't be."""
    pair = []
    for name in ("grass", "gravel"):
        pixels = texture(name)
        pixels[:, :300] = 180
        pair.append(work(wet(pixels)))
    boxes = wet_glass(*pair)
    assert len(boxes) == 1
    assert boxes[0].left > 0.5


def test_of_faint_spots_it_takes_two() -> None:
    """A faint spot alone may be chance, two of them are drops."""

    def faint(name: str, drops: Sequence[tuple[int, int, int]]) -> WorkingCopy:
        return work(_mixed(wet(texture(name), drops), texture(name)))

    assert wet_glass(faint("grass", DROPS[:1]), faint("gravel", DROPS[:1])) == ()
    assert len(wet_glass(faint("grass", DROPS), faint("gravel", DROPS))) == 2


def test_spots_all_over_are_the_scenes_own() -> None:
    """What two scenes of many soft spots share, they share as well when one is shifted."""
    places = [(across, down, 9) for across in range(30, 600, 60) for down in range(20, 400, 40)]
    first, second = (wet(texture(name), places) for name in ("grass", "gravel"))
    assert wet_glass(work(first), work(second)) == ()
    few = [places[33], places[57]]
    first, second = (wet(texture(name), few) for name in ("grass", "gravel"))
    assert len(wet_glass(work(first), work(second))) == len(few)


def test_one_view_tells_nothing() -> None:
    """From a tripod the soft spots may be stones: nothing is stated."""
    pixels = wet(texture("grass"))
    assert wet_glass(work(pixels), work(pixels)) == ()


def test_order_does_not_matter() -> None:
    """The two frames may come in any order."""
    first, second = work(wet(texture("grass"))), work(wet(texture("gravel")))
    assert wet_glass(first, second) == wet_glass(second, first)


def test_other_shapes_and_flat_pictures() -> None:
    """Upright and across do not match; flat and tiny pictures show nothing."""
    pixels = texture("grass")
    assert wet_glass(work(pixels), work(pixels[:, :300])) == ()
    flat = np.full_like(pixels, 90)
    assert wet_glass(work(flat), work(flat)) == ()
    assert wet_glass(work(flat[:1, :1]), work(flat[:1, :1])) == ()
    assert wet_glass(work(pixels), work(flat)) == ()
