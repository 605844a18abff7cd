"""Two frames and more, compared: laws, brightness, water, leaves, and bad input."""

from __future__ import annotations

import json
from dataclasses import replace

import cv2
import numpy as np
import pytest
from pydantic import TypeAdapter

from core.frame.brightness import (
    disagree,
    identical,
    measured_stops,
    stated_stops,
    times_apart_stops,
)
from core.frame.compare import compare_frames
from core.frame.comparison import Caveat, Comparison, Misfit, Reason
from core.frame.findings import LookSeen, WaterArea
from core.frame.fine_detail import water_detail
from core.frame.laid import NumberOfFramesError, lay
from core.frame.report import CameraSettings, Clipping
from core.frame.water_area import UnknownCellError
from core.water import Look
from tests.core.several_frames import Hand, Pixels, frame, held, rendered, shifted

SIZE = {"width": 480, "height": 720}
CELLS = ("B2", "B3", "C2", "C3")
NOWHERE = np.zeros((720, 480), np.bool_)


def short() -> Pixels:
    """A fall at a short time."""
    return rendered(1 / 500, 3, **SIZE)


def long() -> Pixels:
    """The same at a long time, and darker."""
    return rendered(1 / 2, 3, moment=1, stops=-1.0, **SIZE)


def test_frame_against_itself() -> None:
    """A frame and itself: identical, 0 stops, no shift, neither smoother."""
    found = compare_frames([frame(short()), frame(short())], cells=CELLS)
    pair = found.pairs[0]
    assert pair.identical
    assert pair.aligned
    assert (pair.measured_stops, pair.shift_px, pair.smoother) == (0.0, (0.0, 0.0), None)
    assert [one.sharpness for one in found.frames] == [1.0, 1.0]


def test_swapped_frames_give_the_mirror() -> None:
    """Two frames in the other order: stops with the other sign, the same one smoother."""
    frames = [frame(short(), shutter_s=1 / 500), frame(long(), shutter_s=1 / 2)]
    there = compare_frames(frames, cells=CELLS)
    back = compare_frames(frames[::-1], cells=CELLS)
    one, other = there.pairs[0], back.pairs[0]
    assert one.measured_stops == pytest.approx(-1.0, abs=0.1)
    assert other.measured_stops == pytest.approx(1.0, abs=0.1)
    assert (one.smoother, other.smoother) == (1, 0)
    assert (there.order, back.order) == ((0, 1), (1, 0))
    assert one.shift_px == pytest.approx((0, 0), abs=0.2)


@pytest.mark.parametrize("cells", [None, CELLS])
def test_longer_time_is_smoother(cells: tuple[str, ...] | None) -> None:
    """1/2 s has less detail in the water than 1/500 s, wherever the water was found."""
    found = compare_frames([frame(long()), frame(short())], cells=cells, wished=Look.SILKY)
    assert found.order == (1, 0)
    textures = [one.texture or 0.0 for one in found.frames]
    assert textures[1] == 1.0
    assert textures[0] < 0.9
    assert found.water_cells
    assert found.recommendation is not None
    assert (found.recommendation.frame, found.recommendation.reason) == (0, Reason.SMOOTHEST)
    assert Caveat.LOOK_NOT_SURE in found.recommendation.caveats


@pytest.mark.parametrize("seed", [1, 2, 3])
def test_order_of_real_texture(seed: int) -> None:
    """Real gravel that flows 4 and 16 px is put in order whatever its brightness and noise."""
    kept = {"still": "coffee", "flowing": "gravel", "seed": seed, "noise": 0.006}
    short, _ = shifted(length_px=4, stops=-0.4, **kept)  # type: ignore[arg-type]
    long, _ = shifted(length_px=16, start_px=140, stops=0.3, **kept)  # type: ignore[arg-type]
    found = compare_frames([frame(long), frame(short)], cells=("B2", "B3", "C2", "C3"))
    assert found.order == (1, 0)
    assert found.pairs[0].smoother == 0


def test_moved_leaves_are_told() -> None:
    """Leaves that the wind moved have lost detail; the other frame is named to take them from."""
    windy = long().copy()
    top = windy[:170, :170]
    top[:] = np.mean([np.roll(top, step, axis=1) for step in range(8)], axis=0).astype(np.uint8)
    top = windy[:170, -110:]
    top[:] = np.mean([np.roll(top, step, axis=1) for step in range(8)], axis=0).astype(np.uint8)
    found = compare_frames([frame(short()), frame(windy)], cells=CELLS, wished=Look.SILKY, leaf=0)
    assert (found.frames[1].foliage_motion or 0) > (found.frames[0].foliage_motion or 0) + 0.1
    leaf = found.leaf
    assert leaf is not None
    assert (leaf.leaf, leaf.main, leaf.sharp, leaf.matches) == (0, 1, True, False)
    assert leaf.stops == pytest.approx(1.0, abs=0.15)


def test_leaf_frame_that_matches() -> None:
    """A leaf frame as bright as the main one matches; without a wish the first other is it."""
    bright = rendered(1 / 2, 3, moment=1, **SIZE)
    found = compare_frames([frame(bright), frame(short())], cells=CELLS, leaf=1)
    assert found.leaf is not None
    assert found.leaf.matches
    assert found.leaf.main == 0


def test_leaf_frame_of_another_view() -> None:
    """A leaf frame that lies on nothing, or has no leaves to judge, has no verdict."""
    other = rendered(1 / 2, 9, **SIZE)
    assert compare_frames([frame(short()), frame(other)], leaf=1).leaf is None
    grey = [np.repeat(one[..., 1:2], 3, axis=2).copy() for one in (short(), long())]
    assert compare_frames([frame(one) for one in grey], cells=CELLS, leaf=1).leaf is None


def test_other_view_is_said() -> None:
    """A frame of another place stays out of the order; the one that is left stands alone."""
    frames = [frame(short()), frame(long()), frame(rendered(1 / 4, 9, **SIZE))]
    found = compare_frames(frames, cells=CELLS, wished=Look.CRISP)
    misfits = {pair.second: pair.misfit for pair in found.pairs}
    assert misfits == {1: None, 2: Misfit.OTHER_VIEW}
    assert found.order == (0, 1)
    assert found.frames[2].texture is None
    alone = compare_frames([frames[0], frames[2]], cells=CELLS, wished=Look.CRISP)
    assert alone.order == (0,)
    assert alone.recommendation is not None
    assert alone.recommendation.reason is Reason.ALONE


def test_reference_is_the_one_that_most_lie_on() -> None:
    """When the first frame is the odd one, the others are laid on another."""
    odd = rendered(1 / 4, 9, **SIZE)
    third = held(rendered(1 / 15, 3, moment=2, **SIZE), Hand(4, 2), margin=0.0)
    laid = lay([frame(odd), frame(short()), frame(long()), frame(third)])
    assert laid.reference == 1
    assert laid.together == (1, 2, 3)


def test_no_water_no_order() -> None:
    """Frames in which nothing moves that could be water have no order and no recommendation."""
    still = rendered(1 / 4, 3, **SIZE)[:150].copy()
    found = compare_frames([frame(still), frame(still[::1].copy())], wished=Look.SILKY)
    assert found.order == ()
    assert found.recommendation is None
    assert found.water_cells == ()


def test_proposed_cells_are_taken_and_named_ones_first() -> None:
    """The reports' cells are used, those of the person before a proposal."""
    proposed, named = WaterArea(("B2",)), WaterArea(("C3",), by_person=True)
    laid = lay([frame(short(), water=proposed), frame(long(), water=named)])
    assert laid.cells == ("C3",)
    assert not (laid.water & laid.still).any()
    assert not (laid.leaves & laid.still).any()


def test_share_and_seen_look_are_carried() -> None:
    """The walk's share tells a frame's look, and by the times the other's; else the picture's."""
    frames = [frame(short(), 0.002, shutter_s=1 / 500), frame(long(), shutter_s=1 / 2)]
    found = compare_frames(frames, cells=CELLS, wished=Look.TEXTURED)
    assert [one.look for one in found.frames] == [Look.CRISP, Look.MISTY]
    assert found.frames[1].share == pytest.approx(0.5)
    assert [one.look for one in found.suited] == [Look.CRISP, Look.MISTY]
    assert [(gap.crisper, gap.smoother) for gap in found.gaps] == [(0, 1)]
    seen = frame(short(), look=LookSeen(look=Look.FROZEN))
    assert compare_frames([seen, frame(long())], cells=CELLS).frames[0].look is Look.FROZEN


def test_clipped_and_covered_water_is_not_compared() -> None:
    """Where all the water clips there is no detail, and nothing is said of it."""
    white = long().copy()
    white[180:540, 120:360] = 255
    assert compare_frames([frame(short()), frame(white)], cells=CELLS).order == ()


@pytest.mark.parametrize("number", [0, 1, 7])
def test_wrong_number_of_frames(number: int) -> None:
    """One frame, or seven, are refused with their number."""
    with pytest.raises(NumberOfFramesError) as caught:
        compare_frames([frame(short())] * number)
    assert (caught.value.number, caught.value.most) == (number, 6)


def test_unknown_cell() -> None:
    """A cell that the grid has not is refused."""
    with pytest.raises(UnknownCellError):
        compare_frames([frame(short()), frame(long())], cells=("E5",))


def test_comparison_survives_json() -> None:
    """The result goes through JSON and back unchanged."""
    adapter = TypeAdapter(Comparison)
    found = compare_frames([frame(short()), frame(long())], cells=CELLS, wished=Look.SILKY, leaf=0)
    text = adapter.dump_json(found)
    assert adapter.validate_json(text) == found
    assert isinstance(json.loads(text)["recommendation"]["reason"], str)


@pytest.mark.parametrize(
    ("measured", "stated", "same", "expected"),
    [
        (2.08, 1.58, False, False),  # a camera's curve stretched a true step by so much
        (1.36, 1.0, False, False),  # likewise
        (0.0, 2.0, True, True),  # two stops stated between identical pixels
        (0.0, 2.0, False, True),  # likewise, taken anew
        (0.0, 0.0, True, False),
        (-1.0, 1.0, False, True),  # the other way round
        (0.1, 5.0, False, True),  # a filter came on
        (None, 2.0, False, False),  # nothing to compare
        (1.0, None, False, False),
    ],
)
def test_disagreement(
    measured: float | None, stated: float | None, same: bool, expected: bool
) -> None:
    """Tone curves are forgiven, false statements are noticed."""
    assert disagree(measured, stated, identical=same) is expected


def test_stated_difference_is_in_the_pair() -> None:
    """What the metadata state stands beside what was measured, and the warning with it."""
    frames = [
        frame(short(), shutter_s=1 / 500, f_number=11.0, iso=100.0),
        frame(long(), shutter_s=1 / 250, f_number=11.0, iso=100.0),
    ]
    pair = compare_frames(frames, cells=CELLS).pairs[0]
    assert pair.stated_stops == pytest.approx(1.0)
    assert pair.disagree
    assert stated_stops(CameraSettings(1.0, 8.0, 100.0), CameraSettings(1.0, 8.0)) is None
    assert times_apart_stops(1 / 4, 1.0) == pytest.approx(2.0)
    assert times_apart_stops(None, 1.0) is None


def test_identical_is_told_by_bits_or_by_pixels() -> None:
    """One picture compressed anew is the same; a copy of another size is known by its bits."""
    dots = np.arange(480)[None, :, None] % 2
    noisy = np.clip(short().astype(int) + dots, 0, 255).astype(np.uint8)
    assert identical(frame(short()), frame(noisy))
    assert not identical(frame(short()), frame(long()))
    assert not identical(frame(short()), frame(short()[::2, ::2].copy()))
    small = replace(frame(short()[::2, ::2].copy()), bits=b"1")
    assert identical(replace(frame(short()), bits=b"1"), small)


def test_alike_water_is_decided_by_the_rest() -> None:
    """With the same water in both, the less clipped frame is recommended."""
    clipped = frame(short(), clipping=Clipping(0.03, {}))
    found = compare_frames([clipped, frame(short())], cells=CELLS, wished=Look.CRISP)
    assert found.recommendation is not None
    assert (found.recommendation.frame, found.recommendation.reason) == (1, Reason.ALIKE)


def test_defocus_is_allowed_for() -> None:
    """A soft frame is said to be soft, and its water is not taken for smoother than it is."""
    soft = np.asarray(cv2.GaussianBlur(short(), (0, 0), 1.0), np.uint8)
    again = rendered(1 / 500, 3, moment=4, **SIZE)
    found = compare_frames([frame(again), frame(soft)], cells=CELLS, wished=Look.CRISP)
    assert (found.frames[1].sharpness or 1) < 0.8
    assert (found.frames[1].texture or 0) > 0.7
    plain = water_detail(replace(lay([frame(again), frame(soft)], CELLS), still=NOWHERE))
    assert plain is not None
    assert plain.balance(0, 1) > 0.15  # without still parts the focus passes for time


def test_too_dark_to_measure() -> None:
    """Two black frames with a few lit spots: nothing to measure the brightness by."""
    dark = (short() // 40).astype(np.uint8)
    assert measured_stops(dark, dark, np.ones(dark.shape[:2], np.bool_)) is None


def test_all_cells_named() -> None:
    """With every cell named the frames are laid by all that they have."""
    every = tuple(f"{row}{column}" for row in "ABCD" for column in "1234")
    found = compare_frames([frame(short()), frame(long())], cells=every)
    assert found.pairs[0].aligned
    assert found.pairs[0].measured_stops is None
