"""The rendered waterfall is what its truth says, pixel by pixel."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from tests.scenes.camera import Exposure, Sensor
from tests.scenes.picture_file import reduced
from tests.scenes.waterfall import Kind, Plan, Scene, compose, take, with_clipped_share

SIZE = Plan(width=320, height=480)


@pytest.fixture(scope="module")
def scene() -> Scene:
    """One small scene, without a sky gap."""
    return compose(SIZE)


@pytest.fixture(scope="module")
def open_scene() -> Scene:
    """A landscape scene with a sky gap and a bare branch."""
    return compose(replace(SIZE, width=480, height=320, sky_gap=True, branch=True, seed=5))


@pytest.mark.parametrize("share", [0.002, 0.01, 0.05])
def test_clipped_share_comes_out_as_asked(scene: Scene, share: float) -> None:
    """The share of white water that clips is the one asked for, within a tenth (seed 1)."""
    taken = take(with_clipped_share(scene, share))
    assert taken.share(Kind.WHITE_WATER) == pytest.approx(share, rel=0.1)


def test_truth_and_pixels_agree(scene: Scene) -> None:
    """Where truth says clipped, some channel is 255; elsewhere none is, but for rounding."""
    taken = take(with_clipped_share(scene, 0.01))
    clipped = np.logical_or.reduce(list(taken.clipped.values()))
    full = (taken.pixels == 255).any(axis=2)
    assert full[clipped].all()
    # 254.5 of 255 rounds up: 0.996 in linear light and more.
    assert (full & ~clipped).mean() < 0.002
    by_channel = [(taken.pixels[..., channel] == 255).mean() for channel in range(3)]
    np.testing.assert_allclose(list(taken.by_channel.values()), by_channel, atol=0.002)


def test_kinds_do_not_overlap(open_scene: Scene) -> None:
    """A clipped pixel has one kind."""
    taken = take(with_clipped_share(open_scene, 0.01))
    assert np.sum(list(taken.clipped.values()), axis=0).max() == 1


def test_darker_frame_holds_the_water(scene: Scene) -> None:
    """Two thirds less light and only sparkle clips, as in the walk's second frame."""
    plan = with_clipped_share(scene, 0.02).plan
    darker = replace(plan, exposure=replace(plan.exposure, iso=100 * 2 ** (-2 / 3)))
    taken = take(replace(scene, plan=darker))
    assert taken.share(Kind.WHITE_WATER) < 0.0005
    assert taken.share(Kind.SPARKLE) == pytest.approx(SIZE.sparkle_share, rel=0.2)
    assert taken.level_stops - take(replace(scene, plan=plan)).level_stops == pytest.approx(-2 / 3)


def test_sky_gap_lies_at_the_top(scene: Scene, open_scene: Scene) -> None:
    """A gap clips, touches the upper border and reaches no lower than the lip; without, none."""
    assert take(scene).share(Kind.SKY_GAP) == 0
    sky = take(open_scene).clipped[Kind.SKY_GAP]
    rows = np.flatnonzero(sky.any(axis=1))
    assert rows[0] == 0
    assert rows[-1] < 0.16 * sky.shape[0]
    assert 0.005 < sky.mean() < 0.08


def test_branch_comes_in_from_the_left(open_scene: Scene, scene: Scene) -> None:
    """The bare branch touches the left border, is dark, and is known; without, there is none."""
    covered = open_scene.branch > 0.9
    assert covered[:, 0].any()
    assert open_scene.base[covered].mean() < 0.1
    assert not scene.branch.any()


@pytest.mark.parametrize("seed", [2])
def test_longer_times_smooth_the_water(seed: int) -> None:
    """From 1/500 s to 1 s the fall loses most of its detail along the flow, the rocks none."""

    def detail(shutter_s: float) -> tuple[float, float]:
        plan = replace(SIZE, seed=seed, exposure=Exposure(2**3.5, shutter_s))
        made = compose(plan)
        steps = np.abs(np.diff(made.white[220:300, 150:180], axis=0))
        rock = np.abs(np.diff(made.base[430:470, 10:60, 1], axis=0))
        return float(steps.mean()), float(rock.mean())

    short, still = detail(1 / 512)
    long, still_too = detail(1.0)
    assert long < 0.4 * short, f"seed {seed}"
    assert still_too == pytest.approx(still, rel=1e-6)


def test_same_plan_same_frame(scene: Scene) -> None:
    """Everything random comes from the plan: seed for the place, moment for the water."""
    np.testing.assert_array_equal(take(compose(SIZE)).pixels, take(scene).pixels)
    later = compose(replace(SIZE, moment=1))
    assert not np.array_equal(later.sparkle, scene.sparkle)
    np.testing.assert_allclose(later.base[200:260, :40], scene.base[200:260, :40], atol=1e-6)


def test_blue_light_clips_blue_first(scene: Scene) -> None:
    """With more gain in blue, blue saturates in more pixels than red and green."""
    sensor = Sensor(balance=(0.8, 1.0, 1.5))
    taken = take(replace(scene, plan=replace(scene.plan, sensor=sensor, white_stops=3.0)))
    assert taken.by_channel["blue"] > 2 * taken.by_channel["green"]
    assert taken.by_channel["green"] > taken.by_channel["red"]


def test_stops_over_count_from_saturation(scene: Scene) -> None:
    """White half a stop over saturation says so."""
    level = scene.plan.sensor.saturation_stops + 0.5 - take(scene).level_stops
    taken = take(replace(scene, plan=replace(scene.plan, white_stops=level)))
    assert taken.stops_over == pytest.approx(0.5)


def test_a_chat_copy_keeps_its_proportions(scene: Scene) -> None:
    """A reduced copy has the long side asked for."""
    assert reduced(take(scene).pixels, 120).shape == (120, 80, 3)
