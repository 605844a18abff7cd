"""Depth of field, focus distance, focus stack, and the f-number to set."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import NamedTuple

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from core.camera import FORMATS, SensorFormat
from core.errors import OutOfDomainError
from core.f_number import choose_f_number
from core.optics import (
    circle_of_confusion_mm,
    depth_limits_m,
    focus_distance_m,
    focus_spread_mm,
    hyperfocal_m,
    smallest_f_number,
    stack_frames,
)
from core.series import Dial, f_number_label, f_number_marks
from tests.core.blurring import total_blur_um
from tests.core.numbers import NEVER_POSITIVE, Ref

FULL_FRAME = FORMATS["full frame"]
F22 = 2**4.5
focals_mm = st.floats(8.0, 300.0)
f_numbers = st.floats(1.4, 32.0)
nears_m = st.floats(0.7, 50.0)
ratios = st.floats(1.0, 200.0)

RAY = "Ray, Applied Photographic Optics; Greenleaf (1950); from memory (formula only)"
NEAR, FAR = depth_limits_m(50, 8, 5.0, 0.03)
REFERENCES = [
    Ref("confusion d/1500", circle_of_confusion_mm(43.267), 0.02884, 5e-6, "Lyon, draft of 2006"),
    Ref("confusion 0.03 mm", circle_of_confusion_mm(43.267, 1442.2), 0.03, 1e-5, "convention"),
    Ref("hyperfocal 50 mm f/8", hyperfocal_m(50, 8, 0.03), 10.46667, 1e-5, RAY),
    Ref("hyperfocal 24 mm f/11", hyperfocal_m(24, 11, 0.03), 1.76945, 1e-5, RAY),
    Ref(
        "hyperfocal, less the focal length, of a 2 inch lens in feet",
        (hyperfocal_m(50.8, 8, 0.0508) - 0.0508) / 0.3048,
        20.8,
        0.05,
        "US Army course SS0507, page 58; its formula has no + f",
    ),
    Ref("near limit", NEAR, 3.38937, 1e-4, RAY),
    Ref("far limit", FAR, 9.5274, 1e-4, RAY),
    Ref("focus for 2 to 10 m", focus_distance_m(2, 10), 3.33333, 1e-5, RAY),
    Ref("focus for 1 m to infinity", focus_distance_m(1, math.inf), 2, 1e-12, RAY),
    Ref("focus for 1.2 to 18 m", focus_distance_m(1.2, 18), 2.25, 1e-12, "2 n F / (n + F)"),
    Ref(
        "focus spread 24 mm, 1 m to infinity",
        focus_spread_mm(24, 1, math.inf),
        0.5902,
        5e-5,
        "computed here from f^2 / (n - f)",
    ),
    Ref(
        "focus spread 20 mm, 1.2 to 18 m",
        focus_spread_mm(20, 1.2, 18),
        0.317,
        5e-4,
        "computed here from f^2/(n - f) - f^2/(F - f)",
    ),
    Ref(
        "smallest f-number, 20 mm, 1.2 to 18 m",
        smallest_f_number(20, 1.2, 18, circle_of_confusion_mm(43.267)),
        5.5,
        0.05,
        "computed here from D / (2 c)",
    ),
]


@pytest.mark.parametrize("ref", REFERENCES, ids=lambda ref: ref.what)
def test_published_value(ref: Ref) -> None:
    """The published value comes out, within the digits that the source prints."""
    assert ref.found == pytest.approx(ref.expected, rel=0, abs=ref.tolerance)


def test_smallest_f_number_is_close_to_the_form_for_large_distances() -> None:
    """f^2 (F - n) / (2 c n F) gives 9.6 for 24 mm from 1 m on; ours is f / n above it (Ray)."""
    ours = smallest_f_number(24, 1, math.inf, 0.03)
    assert ours == pytest.approx(9.6 / (1 - 0.024), rel=1e-9)


def _thin_lens_blur_mm(focal_mm: float, f_number: float, focus_m: float, at_m: float) -> float:
    """Diameter of the cone of light from a point, where the sensor cuts it."""
    sensor, image = (1 / (1 / focal_mm - 1 / (1000 * metres)) for metres in (focus_m, at_m))
    return focal_mm / f_number * abs(sensor - image) / image


@given(focals_mm, f_numbers, nears_m, st.floats(0.005, 0.05))
def test_blur_at_the_limits_is_the_circle_of_confusion(
    focal_mm: float, f_number: float, focus_m: float, coc_mm: float
) -> None:
    """A thin lens, traced on its own, blurs by the circle of confusion at both limits."""
    near, far = depth_limits_m(focal_mm, f_number, focus_m, coc_mm)
    assert near < focus_m < far
    for limit in (near, far):
        if limit > 1.001 * focal_mm / 1000:
            blur = _thin_lens_blur_mm(focal_mm, f_number, focus_m, min(limit, 1e9))
            assert blur <= coc_mm * (1 + 1e-4)
            assert blur == pytest.approx(coc_mm, rel=1e-4) or limit == math.inf


@given(focals_mm, f_numbers, st.floats(0.005, 0.05))
def test_focus_at_the_hyperfocal_distance(focal_mm: float, f_number: float, coc_mm: float) -> None:
    """From there on infinity is sharp, and the near limit is exactly half of it."""
    hyperfocal = hyperfocal_m(focal_mm, f_number, coc_mm)
    assume(hyperfocal > 0.003 * focal_mm)
    near, far = depth_limits_m(focal_mm, f_number, hyperfocal, coc_mm)
    assert near == pytest.approx(hyperfocal / 2)
    assert far == math.inf
    assert depth_limits_m(focal_mm, f_number, 0.99 * hyperfocal, coc_mm)[1] < math.inf


@given(focals_mm, nears_m, ratios, st.floats(0.005, 0.05))
def test_smallest_f_number_holds_the_depth(
    focal_mm: float, near_m: float, ratio: float, coc_mm: float
) -> None:
    """At that f-number and focus, near and far both lie inside the limits."""
    far_m = near_m * ratio
    f_number = smallest_f_number(focal_mm, near_m, far_m, coc_mm)
    assume(f_number > 0.01)
    near, far = depth_limits_m(focal_mm, f_number, focus_distance_m(near_m, far_m), coc_mm)
    assert near <= near_m * (1 + 1e-9)
    assert far >= far_m * (1 - 1e-9)


@given(focals_mm, nears_m, ratios, ratios, st.floats(0.005, 0.05))
def test_more_depth_never_needs_a_smaller_f_number(
    focal_mm: float, near_m: float, ratio: float, further: float, coc_mm: float
) -> None:
    """A farther far or a nearer near never lets the lens open."""
    far_m = near_m * ratio
    needed = smallest_f_number(focal_mm, near_m, far_m, coc_mm)
    assert smallest_f_number(focal_mm, near_m, far_m * further, coc_mm) >= needed
    assert smallest_f_number(focal_mm, near_m, math.inf, coc_mm) >= needed
    assert smallest_f_number(focal_mm, (near_m + 0.6) / 2, far_m, coc_mm) >= needed


@given(nears_m, ratios)
def test_focus_lies_between_near_and_far(near_m: float, ratio: float) -> None:
    """The focus lies between near and far, never beyond twice the near."""
    focus = focus_distance_m(near_m, near_m * ratio)
    assert near_m * (1 - 1e-12) <= focus <= near_m * min(ratio, 2.0) * (1 + 1e-12)


@pytest.mark.parametrize(
    ("focal_mm", "near_m", "frames"),
    # Computed here from 1 + (D - 2 N c) / (2 N c (1 - overlap)), rounded up, at f/8 with the
    # strict circle of 0.02 mm.
    [(24, 0.5, 5), (35, 0.5, 11), (35, 0.75, 7), (50, 1.0, 11), (24, 50.0, 1)],
)
def test_stack(focal_mm: float, near_m: float, frames: int) -> None:
    """So many frames reach from the near rock to infinity."""
    assert stack_frames(focal_mm, near_m, math.inf, 8, 0.02) == frames


@given(focals_mm, nears_m, ratios, f_numbers, st.floats(0.0, 0.9))
def test_stack_covers_the_depth_without_a_frame_to_spare(
    focal_mm: float, near_m: float, ratio: float, f_number: float, overlap: float
) -> None:
    """The frames' depths, overlapping, cover the focus spread; one frame less would not."""
    frames = stack_frames(focal_mm, near_m, near_m * ratio, f_number, 0.02, overlap)
    spread = focus_spread_mm(focal_mm, near_m, near_m * ratio)
    depth = 2 * f_number * 0.02
    covered = depth * (1 + (frames - 1) * (1 - overlap))
    assert covered >= spread - 1e-6
    assert frames == 1 or covered - depth * (1 - overlap) < spread


class Choice(NamedTuple):
    """A situation and the f-number to set in it."""

    what: str
    sensor: str
    focal_mm: float
    near_m: float | None
    far_m: float
    widest: float
    narrowest: float
    label: str
    limited_by: str
    stack: int | None


#: Computed here from sqrt(D / (4.88 * 550 nm)), D / (2 c) with c = diagonal / 1500 and the ranges
#: of the formats.
CHOICES = [
    Choice("near rock", "full frame", 20, 1.2, 18, 4, F22, "f/11", "least blur", None),
    Choice("5 to 60 feet", "full frame", 27, 1.524, 18.29, 4, F22, "f/13", "least blur", None),
    Choice("all far", "full frame", 35, None, math.inf, 2.8, F22, "f/8", "format", None),
    Choice("slow lens", "full frame", 35, None, math.inf, 11, F22, "f/11", "lens", None),
    Choice("much depth", "full frame", 24, 0.7, math.inf, 4, F22, "f/16", "format", None),
    Choice("too much depth", "full frame", 24, 0.5, math.inf, 4, F22, "f/8", "format", 4),
    Choice("closes to f/11", "full frame", 24, 0.95, math.inf, 4, 11, "f/11", "lens", None),
    Choice("too much for f/11", "full frame", 24, 0.8, math.inf, 4, 11, "f/8", "lens", 2),
    Choice("four thirds", "four thirds", 12, 1.2, math.inf, 2.8, F22, "f/6.3", "least blur", None),
    Choice("one-inch, slow", "1-inch", 30, None, 50, 6.3, 11, "f/6.3", "lens", None),
    Choice("phone", "phone", 5.3, 1.2, 18, 2.8, 22, "f/1.8", "lens", None),
    Choice("phone, all far", "phone", 5.3, None, 18, 1.8, 1.8, "f/1.8", "lens", None),
    Choice("phone, close", "phone", 5.3, 0.3, 18, 1.8, 1.8, "f/1.8", "lens", 6),
]


@pytest.mark.parametrize("row", CHOICES, ids=lambda row: row.what)
def test_choice(row: Choice) -> None:
    """The f-number follows from least blur, depth, format and lens, in the known cases."""
    choice = choose_f_number(
        FORMATS[row.sensor], row.focal_mm, row.near_m, row.far_m, row.widest, row.narrowest
    )
    found = (f_number_label(choice.exact), choice.limited_by, choice.stack)
    assert found == (row.label, row.limited_by, row.stack)


def test_choice_carries_its_reasons() -> None:
    """20 mm, 1.2 to 18 m: least blur at f/10.9, at least f/5.5 for the depth, f/11 set."""
    choice = choose_f_number(FULL_FRAME, 20, 1.2, 18, 4, F22)
    assert choice.best == pytest.approx(10.9, abs=0.05)
    assert choice.needed == pytest.approx(5.5, abs=0.05)
    assert choice.exact == pytest.approx(2**3.5)


def test_close_scrutiny_lets_the_depth_decide() -> None:
    """With half the circle of confusion the depth asks for more than the least blur."""
    choice = choose_f_number(FULL_FRAME, 24, 1.4, math.inf, 4, F22, divisor=3000)
    assert choice.needed > choice.best
    assert choice.limited_by == "depth"
    assert choice.exact >= choice.needed


def test_limit_between_the_marks_of_a_dial() -> None:
    """A softening limit of f/20 ends at f/19 on a dial in halves, and depth beyond it is stacked.

    Computed here from D / (2 c): needed is f/19.09, f/19 is 19.03.
    """
    choice = choose_f_number(FORMATS["44x33"], 160, 17, 204, 4, F22, Dial.HALVES)
    assert choice.needed == pytest.approx(19.09, abs=0.005)
    assert (f_number_label(choice.exact), choice.stack) == ("f/11", 2)
    thirds = choose_f_number(FORMATS["44x33"], 160, 17, 204, 4, F22)
    assert (f_number_label(thirds.exact), thirds.stack) == ("f/20", None)


def test_fixed_opening_between_the_marks_stays_itself() -> None:
    """An opening that no mark of the dial meets is the answer as it is."""
    sensor = SensorFormat("x", 7.6, 5.7, (1.8, 1.8), 3.5, 50, 100, 400, fixed_f_number=1.9)
    assert choose_f_number(sensor, 5, None, 18, 1, 22).exact == 1.9


@given(
    st.sampled_from([key for key in FORMATS if key != "phone"]),
    focals_mm,
    nears_m,
    ratios,
    st.sampled_from([1.4, 2.8, 4.0, 5.6, 8.0]),
    st.sampled_from([11.0, 16.0, 22.0, 32.0]),
    st.sampled_from(Dial),
)
def test_choice_keeps_its_rules(
    key: str,
    focal_mm: float,
    near_m: float,
    ratio: float,
    widest: float,
    narrowest: float,
    dial: Dial,
) -> None:
    """A mark inside the lens and the format's limits that holds the depth, or a stack."""
    sensor = FORMATS[key]
    choice = choose_f_number(sensor, focal_mm, near_m, near_m * ratio, widest, narrowest, dial)
    assert choice.exact in {mark.exact for mark in f_number_marks(dial)}
    # f/13 and f/19 and the like apart, typed ends mean full stops: 22 is 22.63.
    assert widest * 0.97 <= choice.exact <= narrowest * 1.03
    assert choice.exact <= max(sensor.softening_f, widest * 1.03)
    if choice.stack is None:
        assert choice.exact >= choice.needed * (1 - 1e-9)
        assert choice.exact >= min(sensor.best_f[0], narrowest) * (1 - 1e-9)
    else:
        assert choice.stack >= 2
        assert choice.needed > choice.exact


@given(st.floats(12.0, 200.0), st.floats(8.5, 15.5))
def test_least_blur_beats_the_neighbours(focal_mm: float, best: float) -> None:
    """Where the least blur decides, neither neighbour on the dial is clearly sharper."""
    spread = best**2 * 4.88 * 550e-6  # the best f-number, solved for the focus spread
    near_m = (focal_mm**2 / spread + focal_mm) / 1000  # and that for the near end
    choice = choose_f_number(FULL_FRAME, focal_mm, near_m, math.inf, 2.8, F22)
    assert (choice.limited_by, choice.stack) == ("least blur", None)
    assert choice.best == pytest.approx(best)
    blur = total_blur_um(spread, choice.exact)
    for step in (2 ** (-1 / 6), 2 ** (1 / 6)):
        # Rounding to the nearest mark may lose half a step; its square is 0.2 % of the blur.
        assert blur <= total_blur_um(spread, choice.exact * step) * 1.002


@pytest.mark.parametrize("bad", NEVER_POSITIVE)
@pytest.mark.parametrize(
    "call",
    [
        circle_of_confusion_mm,
        lambda bad: circle_of_confusion_mm(43, bad),
        lambda bad: hyperfocal_m(bad, 8, 0.03),
        lambda bad: hyperfocal_m(24, bad, 0.03),
        lambda bad: hyperfocal_m(24, 8, bad),
        lambda bad: depth_limits_m(bad, 8, 5, 0.03),
        lambda bad: depth_limits_m(24, bad, 5, 0.03),
        lambda bad: depth_limits_m(24, 8, bad, 0.03),
        lambda bad: depth_limits_m(24, 8, 5, bad),
        lambda bad: focus_distance_m(bad, 5),
        lambda bad: focus_spread_mm(bad, 1, 5),
        lambda bad: focus_spread_mm(24, bad, 5),
        lambda bad: smallest_f_number(bad, 1, 5, 0.03),
        lambda bad: smallest_f_number(24, bad, 5, 0.03),
        lambda bad: smallest_f_number(24, 1, 5, bad),
        lambda bad: stack_frames(bad, 1, 5, 8, 0.03),
        lambda bad: stack_frames(24, bad, 5, 8, 0.03),
        lambda bad: stack_frames(24, 1, 5, bad, 0.03),
        lambda bad: stack_frames(24, 1, 5, 8, bad),
        lambda bad: choose_f_number(FULL_FRAME, bad, 1, 5, 4, 22),
        lambda bad: choose_f_number(FULL_FRAME, bad, None, 5, 4, 22),
        lambda bad: choose_f_number(FULL_FRAME, 24, bad, 5, 4, 22),
        lambda bad: choose_f_number(FULL_FRAME, 24, 1, 5, bad, 22),
        lambda bad: choose_f_number(FULL_FRAME, 24, 1, 5, 4, bad),
        lambda bad: choose_f_number(FULL_FRAME, 24, 1, 5, 4, 22, divisor=bad),
    ],
)
def test_bad_numbers_are_refused(call: Callable[[float], object], bad: float) -> None:
    """Zero, negative, NaN and infinity are no length, f-number or circle."""
    with pytest.raises(OutOfDomainError):
        call(bad)


@pytest.mark.parametrize("bad", [0.0, -1.0, math.nan, -math.inf, 0.9])
@pytest.mark.parametrize(
    "call",
    [
        lambda bad: focus_distance_m(1, bad),
        lambda bad: focus_spread_mm(24, 1, bad),
        lambda bad: smallest_f_number(24, 1, bad, 0.03),
        lambda bad: stack_frames(24, 1, bad, 8, 0.03),
        lambda bad: choose_f_number(FULL_FRAME, 24, 1, bad, 4, 22),
        lambda bad: choose_f_number(FULL_FRAME, 500, None, bad, 4, 22),
    ],
)
def test_far_before_near_is_refused(call: Callable[[float], object], bad: float) -> None:
    """The far distance may be infinite, but not nearer than the near one nor inside the lens."""
    with pytest.raises(OutOfDomainError):
        call(bad)


@pytest.mark.parametrize(
    "call",
    [
        lambda: focus_spread_mm(100, 0.19, 5),  # nearer than twice the focal length
        lambda: depth_limits_m(100, 8, 0.19, 0.03),
        lambda: stack_frames(24, 1, 5, 8, 0.03, 0.95),
        lambda: stack_frames(24, 1, 5, 8, 0.03, -0.1),
        lambda: stack_frames(24, 1, 5, 8, 0.03, math.nan),
        lambda: choose_f_number(FULL_FRAME, 24, 1, 5, 16, 8),
    ],
)
def test_impossible_combinations_are_refused(call: Callable[[], object]) -> None:
    """Focus nearer than the lens allows, frames that hardly advance, swapped openings."""
    with pytest.raises(OutOfDomainError):
        call()
