"""The look of a picture: laws of what is measured, verdicts, doubts, and the trained numbers."""

from __future__ import annotations

import io
from dataclasses import replace
from functools import cache

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image

from core.frame.check import check_frame
from core.frame.findings import Doubt, LookSeen, Shake, Sharpness, WaterArea
from core.frame.report import Clipping
from core.frame.still_parts import edge_ratio
from core.frame.texture import look_of_picture, verdict
from core.frame.texture_features import features, names
from core.frame.texture_trees import NUMBERS, Lengths, trained
from core.frame.water_area import UnknownCellError
from core.frame.working import WorkingCopy
from core.water import BANDS, Look
from tests.scenes.lens import blurred, disc, stroke
from tests.scenes.noise import Field
from tests.training import texture as recipe
from tests.training.frames import rendered_frame
from tests.training.pictures import HELD_OUT, TRAINING, light_of
from tests.training.streaks import Lens, Streaks, rendered
from tests.training.trees import Growth, grown

SHARP = Sharpness((0.4, 0.4, 0.4))
SIDE = 1000.0


def water(length_px: float, axis_deg: float = 90.0, seed: int = 1) -> Field:
    """Luminance of a patch of water only."""
    plan = Streaks((400, 400), length_px, axis_deg, bend=0, half_width=2)
    light, _ = rendered(plan, np.random.default_rng(seed))
    return np.asarray(0.6 * light, np.float32)


def measured(luminance: Field, given_deg: float | None = None) -> dict[str, float]:
    found, _ = features(luminance, np.ones(luminance.shape, np.bool_), given_deg)
    return dict(zip(names(), map(float, found), strict=True))


@settings(max_examples=12)
@given(gain=st.floats(0.01, 100))
def test_brightness_changes_nothing(gain: float) -> None:
    """The numbers and the axis stay when all light is multiplied by a factor."""
    luminance = water(20)
    everywhere = np.ones(luminance.shape, np.bool_)
    before, flow = features(luminance, everywhere)
    after, flow_after = features(np.asarray(luminance * gain, np.float32), everywhere)
    assert np.allclose(before, after, atol=0.02)
    assert flow.axis_deg == pytest.approx(flow_after.axis_deg, abs=0.01)


def test_a_quarter_turn_changes_little() -> None:
    """What is measured along the flow turns with it."""
    upright = measured(water(20))
    level = measured(np.ascontiguousarray(np.rot90(water(20))))
    near = ("kept at 0: 4", "kept at 1: 8", "along 8", "ratio 2", "noise", "detail", "contrast")
    assert [upright[name] for name in near] == pytest.approx(
        [level[name] for name in near], abs=0.15
    )


def test_longer_streaks_keep_longer() -> None:
    """What changes across the flow is kept the longer along it, the longer the streaks are."""
    lags = [measured(water(length))["kept at 0 falls to 0.5"] for length in (1, 10, 40, 160)]
    assert lags == sorted(lags)
    assert lags[-1] > lags[0] + 2


@pytest.mark.parametrize(
    "luminance",
    [
        np.zeros((60, 60), np.float32),
        np.full((60, 60), 0.5, np.float32),
        np.eye(60, dtype=np.float32),
        np.ones((3, 3), np.float32),
        np.random.default_rng(1).random((200, 9), np.float32),
    ],
    ids=["black", "even", "a line", "tiny", "narrow"],
)
def test_numbers_are_always_numbers(luminance: Field) -> None:
    """Even, black and tiny regions give finite numbers."""
    values = measured(luminance)
    assert len(values) == len(names())
    assert np.isfinite(list(values.values())).all()


def likely(*lengths_px: float, spread: float = 0.1) -> Lengths:
    octaves = np.log2(np.array(lengths_px))
    return Lengths(octaves, np.full(len(octaves), spread))


@pytest.mark.parametrize(
    ("share", "look"),
    [
        (0.004, Look.CRISP),
        (0.03, Look.TEXTURED),
        (0.19, Look.SILKY),
        (0.6, Look.MISTY),
    ],
)
def test_a_sure_length_gives_its_look_alone(share: float, look: Look) -> None:
    """Well inside a band the look stands without a neighbour, and the interval holds it."""
    seen = verdict(likely(share * SIDE), SIDE)
    assert (seen.look, seen.neighbour, seen.doubt) == (look, None, None)
    assert seen.share_low is not None
    assert seen.share_high is not None
    assert seen.share_low < share < seen.share_high <= 1


def test_frozen_never_stands_alone() -> None:
    """A streak as short as the lens's own blur may as well be a crisp one."""
    seen = verdict(likely(0.0003 * SIDE), SIDE)
    assert (seen.look, seen.neighbour) == (Look.FROZEN, Look.CRISP)


@pytest.mark.parametrize("place", range(len(BANDS)))
def test_at_a_limit_both_looks_are_named(place: int) -> None:
    """A length at the limit of two bands gives the one and the other."""
    seen = verdict(likely(BANDS[place] * SIDE), SIDE)
    assert {seen.look, seen.neighbour} == set(list(Look)[place : place + 2])


@pytest.mark.parametrize(
    "lengths",
    [
        likely(1, 5, 30, 200, 500),
        likely(*[300.0] * 8, 4.0),
        likely(40, spread=5),
    ],
    ids=["trees differ", "one of nine says sharp", "leaves are wide"],
)
def test_what_differs_too_much_is_a_doubt(lengths: Lengths) -> None:
    """Looks too far apart, or smooth with some likelihood of sharp, are not told."""
    assert verdict(lengths, SIDE) == LookSeen(doubt=Doubt.WIDE)


@given(st.floats(0.01, 5000), st.floats(0.01, 5000))
def test_likelihoods_grow_with_the_length(first: float, second: float) -> None:
    """A longer length is never less likely to be the upper limit; nothing is below nothing."""
    lengths = likely(3, 50, 400, spread=0.5)
    low, high = sorted((first, second))
    assert 0 <= lengths.below(low) <= lengths.below(high) <= 1
    assert lengths.below(0) == 0
    assert lengths.quantile(0.1) < lengths.quantile(0.9)


def frame(length_px: float = 60, fault: Field | None = None, seed: int = 4) -> WorkingCopy:
    made = rendered_frame(np.random.default_rng(seed), length_px, fault)
    return WorkingCopy(made.pixels, 1.0)


@cache
def cells() -> tuple[str, ...]:
    """Where its water is."""
    return rendered_frame(np.random.default_rng(4), 60).cells


def test_long_streaks_among_sharp_stones_are_smooth() -> None:
    """A long exposure among sharp stones reads as such, with or without sharpness measured."""
    work = frame(300)
    for sharpness in (None, SHARP):
        seen = look_of_picture(work, WaterArea(cells()), sharpness)
        assert seen.doubt is None
        assert {seen.look, seen.neighbour} & {Look.SILKY, Look.MISTY}


def test_short_streaks_are_never_smooth() -> None:
    """A short exposure of the same water is not."""
    seen = look_of_picture(frame(3), WaterArea(cells()), SHARP)
    assert seen.look not in {Look.SILKY, Look.MISTY}


@pytest.mark.parametrize(
    "fault",
    [disc(10), disc(20), stroke(12, 20), stroke(20, 110)],
    ids=["defocus", "much defocus", "shake", "much shake"],
)
def test_soft_still_parts_are_a_doubt(fault: Field) -> None:
    """Without sharpness measured a guard of its own finds defocus and shake."""
    assert look_of_picture(frame(20, fault), WaterArea(cells())).doubt is Doubt.STILL_PARTS_SOFT


def test_sharpness_that_was_measured_is_heard() -> None:
    """Shake and soft still parts by the measure of sharpness are doubts; sharp water clears."""
    shaken = replace(SHARP, shake=Shake(30.0, 0.9))
    soft = replace(SHARP, soft_all_over=True)
    smooth, sharp = frame(300), frame(1)
    area = WaterArea(cells())
    assert look_of_picture(smooth, area, shaken).doubt is Doubt.STILL_PARTS_SOFT
    assert look_of_picture(smooth, area, soft).doubt is Doubt.STILL_PARTS_SOFT
    assert look_of_picture(sharp, area, shaken).doubt is Doubt.STILL_PARTS_SOFT
    assert look_of_picture(sharp, area, soft).doubt is not Doubt.STILL_PARTS_SOFT


def test_a_defocused_wall_is_no_water() -> None:
    """Soft all over: the proposal finds nothing, and named cells give a doubt."""
    rng = np.random.default_rng(6)
    bricks = np.tile(light_of("brick.png"), (2, 3, 1))
    wall = Lens().file_of(blurred(bricks, disc(24)), rng)
    buffer = io.BytesIO()
    Image.fromarray(wall).save(buffer, "PNG")
    report, _ = check_frame(buffer.getvalue())
    assert report.water is None
    assert report.look == LookSeen(doubt=Doubt.NO_WATER)
    named, _ = check_frame(buffer.getvalue(), water_cells=("B2", "B3"), axis_deg=90.0)
    assert named.water == WaterArea(("B2", "B3"), 90.0, by_person=True)
    assert named.look == LookSeen(doubt=Doubt.STILL_PARTS_SOFT)


def test_an_axis_goes_with_the_proposed_cells() -> None:
    """A person may give the axis and leave the cells to the proposal."""
    made = rendered_frame(np.random.default_rng(12), 200)
    buffer = io.BytesIO()
    Image.fromarray(made.pixels).save(buffer, "PNG")
    proposed, _ = check_frame(buffer.getvalue())
    corrected, _ = check_frame(buffer.getvalue(), axis_deg=33.0)
    assert proposed.water is not None
    assert corrected.water == replace(proposed.water, axis_deg=33.0)


def test_what_can_not_be_told_is_a_doubt() -> None:
    """No water, too little of it, and clipped water each have their doubt."""
    work = frame(60)
    assert look_of_picture(work, None).doubt is Doubt.NO_WATER
    assert look_of_picture(work, WaterArea(())).doubt is Doubt.NO_WATER
    small = WorkingCopy(work.pixels[:200, :200], 1.0)
    assert look_of_picture(small, WaterArea(("A1",))).doubt is Doubt.TINY
    white = work.pixels.copy()
    white[::2] = 255
    clipped = WorkingCopy(white, 1.0)
    assert look_of_picture(clipped, WaterArea(cells()), SHARP).doubt is Doubt.CLIPPED
    unclipped = Clipping(0.0, {})  # the frame itself holds; the copy is what is white
    assert look_of_picture(clipped, WaterArea(cells()), SHARP, unclipped).doubt is not Doubt.CLIPPED
    with pytest.raises(UnknownCellError):
        look_of_picture(work, WaterArea(("E9",)))


def test_edges_tell_only_where_there_are_enough_pixels() -> None:
    """A few pixels tell nothing; an even picture has no edges to lose."""
    even = np.full((300, 300), 0.5, np.float32)
    assert edge_ratio(even, np.zeros((300, 300), np.bool_)) is None
    assert edge_ratio(even, np.ones((300, 300), np.bool_)) == pytest.approx(0, abs=1)


def test_the_trees_grow_again_from_the_table() -> None:
    """The first trained trees come out of the stored samples, bit by bit."""
    with np.load(recipe.TABLE, allow_pickle=False) as table:
        samples, lengths = table["features"].astype(np.float32), table["lengths"]
    again = grown(samples, lengths, Growth(trees=3))
    with np.load(NUMBERS, allow_pickle=False) as shipped:
        assert len(shipped["root"]) == Growth().trees
        for name, array in again.items():
            assert np.array_equal(shipped[name][: len(array)], array), name


@pytest.mark.parametrize("index", [0, 1, recipe.RENDERED, recipe.RENDERED + 1])
def test_the_table_is_made_again_from_the_recipe(index: int) -> None:
    """Samples drawn again are those of the table, up to the rounding of other processors."""
    found, length = recipe.sample(index)
    with np.load(recipe.TABLE, allow_pickle=False) as table:
        assert table["features"].shape == (recipe.RENDERED + recipe.SHIFTED, len(names()))
        stored = table["features"][index].astype(np.float64)
        assert table["lengths"][index] == pytest.approx(length)
    assert np.quantile(np.abs(stored - found), 0.95) < 0.03


def test_the_numbers_are_small_and_plain() -> None:
    """Under 300 kB, and the trees end for any input."""
    assert NUMBERS.stat().st_size < 300_000
    for value in (-1e4, 0.0, 1e4):
        assert np.isfinite(trained().lengths(np.full(len(names()), value)).means).all()


def test_the_pictures_for_figures_are_not_trained_on() -> None:
    """What is held out stays out, and a picture that no package has is an error."""
    assert not set(TRAINING) & set(HELD_OUT)
    with pytest.raises(FileNotFoundError):
        light_of("no such picture.png")
