"""Illustrations of other times: what is drawn, and what is refused."""

from __future__ import annotations

from collections.abc import Callable

import cv2
import numpy as np
import pytest

from core.errors import OutOfDomainError
from core.frame.comparison import Refusal
from core.frame.findings import LookSeen, Shake, Sharpness, WaterArea
from core.frame.illustrate import TIMES_S, illustrate
from core.frame.water_area import UnknownCellError
from core.water import Look
from tests.core.several_frames import Pixels, frame, rendered

SIZE = {"width": 800, "height": 1200}
CELLS = ("B2", "B3", "C2", "C3")
SPEED = (0.3, 0.5)


def sharp() -> Pixels:
    """A fall at a short time."""
    return rendered(1 / 500, 7, white_stops=1.6, **SIZE)


def soft() -> Pixels:
    """The same out of focus."""
    return np.asarray(cv2.GaussianBlur(sharp(), (0, 0), 5), np.uint8)


def stream() -> Pixels:
    """The same lying on its side."""
    return np.ascontiguousarray(sharp().transpose(1, 0, 2))


def cut_out() -> Pixels:
    """Too little of it."""
    return sharp()[600:680, 300:380].copy()


def along_over_across(strip: Pixels) -> float:
    """Slopes along the fall over those across it, in its middle."""
    height, width = strip.shape[:2]
    grey = cv2.cvtColor(strip, cv2.COLOR_RGB2GRAY).astype(np.float32)
    middle = grey[height // 2 : 3 * height // 4, 2 * width // 5 : 3 * width // 5]
    middle = np.asarray(cv2.GaussianBlur(middle, (0, 0), 1.0), np.float32)
    return float(np.abs(np.diff(middle, axis=0)).mean() / np.abs(np.diff(middle, axis=1)).mean())


def test_strips_smoothen_with_time() -> None:
    """Each longer time has less detail along the fall; the first strip is the frame as it is."""
    drawn = illustrate(frame(sharp(), shutter_s=1 / 500), share_per_s=SPEED, cells=CELLS)
    assert drawn.made.refusal is None
    assert tuple(one.shutter_s for one in drawn.made.times) == TIMES_S
    assert len(drawn.strips) == 5
    ratios = [along_over_across(strip) for strip in drawn.strips]
    assert ratios == sorted(ratios, reverse=True)
    assert ratios[-1] < 0.5 * ratios[0]
    assert drawn.made.axis_deg == pytest.approx(90, abs=12)


def test_shares_are_the_caption() -> None:
    """The numbers of a time are its least and most share, and the look of their middle."""
    drawn = illustrate(frame(sharp()), share_per_s=(0.5, 0.3), times_s=(0.25, 0.25), cells=CELLS)
    (one,) = drawn.made.times
    assert [one.share_low, one.share_high] == pytest.approx([0.075, 0.125])
    assert one.look is Look.TEXTURED


def test_rock_stays_as_it_is() -> None:
    """Outside the water, less a soft rim, not a code changes by more than rounding."""
    drawn = illustrate(frame(sharp()), share_per_s=SPEED, cells=CELLS)
    for strip in drawn.strips[1:]:
        apart = np.abs(strip[:, :60].astype(int) - drawn.strips[0][:, :60].astype(int))
        assert apart.max() <= 2


def test_believable_against_the_real_time() -> None:
    """Against the same fall rendered at 1/4 s, the drawn one is as soft along, within a half."""
    share_per_s = 8 / 20  # the renderer's 20 m, and about 8 m/s
    drawn = illustrate(
        frame(sharp(), shutter_s=1 / 500),
        share_per_s=(share_per_s, share_per_s),
        times_s=(1 / 4,),
        cells=CELLS,
    )
    true = rendered(1 / 4, 7, moment=1, white_stops=1.6, **SIZE)
    height, width = drawn.strips[1].shape[:2]
    top, left = round(0.25 * 1200 - 0.04 * 1200), round(0.25 * 800 - 0.04 * 800)
    same = true[top : top + height, left : left + width]
    ratio = along_over_across(drawn.strips[1]) / along_over_across(same)
    assert 0.3 < ratio < 1.5


def test_clipped_foam_keeps_light() -> None:
    """Foam that clips is taken for brighter than it reads: its streaks stay light."""
    white = sharp().copy()
    white[500:560, 360:440] = 255
    drawn = illustrate(frame(white), share_per_s=SPEED, times_s=(0.25,), cells=CELLS)
    plain = illustrate(frame(sharp()), share_per_s=SPEED, times_s=(0.25,), cells=CELLS)
    assert drawn.strips[1].mean() > plain.strips[1].mean()


SHAKEN = Sharpness((1.0, 1.0, 1.0), shake=Shake(30.0, 0.9))
BLURRED = Sharpness((3.0, 3.0, 3.0), soft_all_over=True)
STILL = Sharpness((0.4, 0.4, 0.4))


@pytest.mark.parametrize(
    ("made", "known", "options", "refusal"),
    [
        (sharp, {}, {"cells": ()}, Refusal.WATER_UNKNOWN),
        (soft, {}, {}, Refusal.SOFT),
        (sharp, {"sharpness": SHAKEN}, {}, Refusal.SOFT),
        (sharp, {"sharpness": BLURRED}, {}, Refusal.SOFT),
        (sharp, {"look": LookSeen(look=Look.SILKY)}, {}, Refusal.SMOOTH_ALREADY),
        (sharp, {"shutter_s": 2.0}, {}, Refusal.SMOOTH_ALREADY),  # no time is longer
        (sharp, {"share": 0.5}, {}, Refusal.SMOOTH_ALREADY),
        (sharp, {}, {"share_per_s": None}, Refusal.SPEED_UNKNOWN),
        (sharp, {}, {"axis_deg": 20.0}, Refusal.NOT_PLUNGING),
        (stream, {}, {"cells": ("B2", "C2", "B3", "C3")}, Refusal.NOT_PLUNGING),
        (cut_out, {}, {"cells": ("B2",)}, Refusal.SOFT),
    ],
)
def test_refusals(
    made: Callable[[], Pixels],
    known: dict[str, object],
    options: dict[str, object],
    refusal: Refusal,
) -> None:
    """Streams, soft frames, unknown water or speed, and smooth water are refused by name."""
    given = {"share_per_s": SPEED, "cells": CELLS, **options}
    one = frame(made(), **known)  # type: ignore[arg-type]
    drawn = illustrate(one, **given)  # type: ignore[arg-type]
    assert drawn.made.refusal is refusal
    assert drawn.strips == ()
    assert drawn.made.times == ()


def test_tiny_water_is_refused() -> None:
    """A sharp frame with a few pixels of water is no ground for an illustration."""
    small = np.ascontiguousarray(rendered(1 / 500, 7, **SIZE)[:280, :200])
    drawn = illustrate(frame(small), share_per_s=SPEED, cells=("A1",))
    assert drawn.made.refusal is Refusal.TINY


def test_reported_water_and_axis_are_taken() -> None:
    """Without cells of the person the report's water is drawn, along its axis."""
    water = WaterArea(CELLS, axis_deg=88.0)
    one = frame(sharp(), water=water, sharpness=STILL, look=LookSeen(look=Look.CRISP))
    drawn = illustrate(one, share_per_s=SPEED, times_s=(0.5,))
    assert drawn.made.axis_deg == pytest.approx(88.0)


@pytest.mark.parametrize(
    ("told_deg", "drawn_deg"),
    [
        (45.0, 45.0),  # "down left" is as flat as a fall that leans is told
        (135.0, 135.0),
        (75.0, None),  # near what the picture shows, which knows it better
    ],
)
def test_a_told_direction_is_drawn(told_deg: float, drawn_deg: float | None) -> None:
    """Who corrects the direction gets it drawn, or the picture's own where that lies near."""
    one = frame(sharp(), shutter_s=1 / 500)
    own = illustrate(one, share_per_s=SPEED, cells=CELLS).made.axis_deg
    told = illustrate(one, share_per_s=SPEED, cells=CELLS, axis_deg=told_deg)
    assert told.made.refusal is None
    assert len(told.strips) == 5
    assert told.made.axis_deg == pytest.approx(own if drawn_deg is None else drawn_deg)


def test_all_water_is_judged_by_itself() -> None:
    """With every cell water there are no still parts: sharp water proves the focus."""
    every = tuple(f"{row}{column}" for row in "ABCD" for column in "1234")
    drawn = illustrate(
        frame(sharp()), share_per_s=SPEED, times_s=(0.5,), cells=every, axis_deg=90.0
    )
    assert drawn.made.refusal is None


@pytest.mark.parametrize(
    "bad", [{"times_s": (0.0,)}, {"times_s": (float("nan"),)}, {"share_per_s": (-1.0, 1.0)}]
)
def test_bad_numbers(bad: dict[str, object]) -> None:
    """Times and shares have to be positive and finite."""
    given = {"share_per_s": SPEED, "cells": CELLS, **bad}
    with pytest.raises(OutOfDomainError):
        illustrate(frame(sharp()), **given)  # type: ignore[arg-type]


def test_bad_cell() -> None:
    """A cell that the grid has not is refused."""
    with pytest.raises(UnknownCellError):
        illustrate(frame(sharp()), share_per_s=SPEED, cells=("Z9",))
