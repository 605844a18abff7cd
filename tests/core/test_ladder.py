"""Order, gaps and the frame for a look, from measures alone."""

from __future__ import annotations

import math
from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.frame.comparison import Caveat, FrameMeasures, Reason
from core.frame.ladder import crisper, gaps, order_of, recommend, suited, with_shares
from core.water import AIM, Look


def plain(
    shutter_s: float | None = None, share: float | None = None, look: Look | None = None
) -> FrameMeasures:
    """Measures of a frame of which no more is known."""
    return FrameMeasures(shutter_s, None, 0.0, share=share, look=look)


def test_an_own_aim_is_aimed_at() -> None:
    """Of two textured frames the one nearer to the person's own share is taken."""
    frames = [plain(1 / 8, 0.02, Look.TEXTURED), plain(1 / 2, 0.08, Look.TEXTURED)]
    usual = recommend(Look.TEXTURED, frames, (0, 1))
    own = recommend(Look.TEXTURED, frames, (0, 1), aim=0.09)
    assert usual is not None
    assert own is not None
    assert (usual.frame, own.frame) == (0, 1)


def test_an_own_aim_gives_the_time_to_try() -> None:
    """Twice the share wants twice the time."""
    frames = [plain(1 / 8, 0.004, Look.CRISP)]
    frames.append(plain(1 / 16, 0.002, Look.CRISP))
    found = recommend(Look.TEXTURED, frames, (1, 0), aim=0.08)
    assert found is not None
    assert found.try_shutter_s == pytest.approx(1 / 8 * 0.08 / 0.004)


@pytest.mark.parametrize(
    ("balance", "first_s", "second_s", "expected"),
    [
        (0.3, None, None, 1),
        (-0.3, None, None, -1),
        (0.05, None, None, 1),
        (-0.05, None, None, -1),
        (0.01, None, None, 0),
        (0.4, 1.0, 0.1, 1),  # clear pictures stand against what the metadata say
        (0.2, 0.25, 0.25, 1),  # and tell frames of one time apart
        (-0.05, 0.1, 1.0, 1),  # unclear ones don't
        (0.05, 1.0, 0.1, -1),
        (0.05, 0.25, 0.25, 0),  # two frames of one time
        (0.01, 0.25, None, 0),
    ],
)
def test_crisper(
    balance: float, first_s: float | None, second_s: float | None, expected: int
) -> None:
    """Times decide, unless the pictures clearly tell another story; without times the pictures."""
    assert crisper(balance, first_s, second_s) == expected


@given(st.permutations(range(6)), st.floats(0.05, 0.5))
def test_order_is_that_of_the_detail(shuffled: list[int], step: float) -> None:
    """Six frames with known detail come out in its order, however they were named."""
    detail = [step * place for place in shuffled]
    order = order_of(range(6), lambda one, two: detail[one] - detail[two], [None] * 6)
    assert [detail[place] for place in order] == sorted(detail, reverse=True)


def test_times_order_what_looks_alike() -> None:
    """Where the water is alike the shorter time comes first, in every naming."""
    for times in permutations((0.1, 0.2, 0.4)):
        order = order_of(range(3), lambda one, two: 0.0 * (one - two), times)
        assert [times[place] for place in order] == [0.1, 0.2, 0.4]


def test_shares_follow_the_times() -> None:
    """One known share gives the others theirs by their times; without a time none is made up."""
    frames = with_shares([plain(1 / 8, 0.04), plain(1 / 2), plain(None), plain(1.0, 0.2)])
    assert [one.share for one in frames] == [0.04, pytest.approx(0.16), None, 0.2]
    assert frames[1].look is Look.SILKY
    assert with_shares([plain(1 / 8)])[0].share is None


def test_gaps_are_wide_steps() -> None:
    """Two stops and more between neighbours leave a look out; the middle time is named."""
    frames = [plain(1 / 60), plain(1 / 4), plain(1 / 2), plain(None)]
    found = gaps(frames, (0, 1, 2, 3))
    assert [(gap.crisper, gap.smoother) for gap in found] == [(0, 1)]
    assert found[0].stops == pytest.approx(math.log2(15))
    assert found[0].shutter_s == pytest.approx(math.sqrt(1 / 240))
    assert gaps(frames, (1, 0)) == ()  # the wrong way round: nothing lies between


def test_suited_takes_the_nearest_to_the_aim() -> None:
    """Of two textured frames the one at 4 % suits the look; a look nobody has is left out."""
    frames = [plain(share=0.02, look=Look.TEXTURED), plain(share=0.045, look=Look.TEXTURED)]
    frames.append(plain(look=Look.SILKY))
    assert [(one.look, one.frame) for one in suited(frames, (0, 1, 2))] == [
        (Look.TEXTURED, 1),
        (Look.SILKY, 2),
    ]


@pytest.mark.parametrize(
    ("wished", "shares", "frame", "reason"),
    [
        (Look.TEXTURED, (0.005, 0.05, 0.3), 1, Reason.SHARE),
        (Look.MISTY, (0.005, 0.05, 0.3), 2, Reason.TOO_SHORT),
        (Look.FROZEN, (0.005, 0.05, 0.3), 0, Reason.TOO_LONG),
    ],
)
def test_recommended_by_share(
    wished: Look, shares: tuple[float, ...], frame: int, reason: Reason
) -> None:
    """With known shares the nearest to the aim is taken; beyond all, the time to try is named."""
    frames = [plain(share * 10, share) for share in shares]
    found = recommend(wished, frames, (0, 1, 2))
    assert found is not None
    assert (found.frame, found.reason) == (frame, reason)
    if reason is Reason.SHARE:
        assert found.try_shutter_s is None
    else:
        assert found.try_shutter_s == pytest.approx(10 * AIM[wished])


@pytest.mark.parametrize(
    ("wished", "looks", "frame", "reason"),
    [
        (Look.SILKY, (None, Look.SILKY, Look.SILKY), 2, Reason.SEEN),
        (Look.CRISP, (Look.CRISP, Look.CRISP, None), 0, Reason.SEEN),
        (Look.MISTY, (None, None, Look.TEXTURED), 2, Reason.TOO_SHORT),
        (Look.FROZEN, (Look.TEXTURED, None, None), 0, Reason.TOO_LONG),
        (Look.SILKY, (None, Look.CRISP, None), 2, Reason.SMOOTHEST),
        (Look.SILKY, (None, None, None), 2, Reason.SMOOTHEST),
        (Look.TEXTURED, (None, None, None), 1, Reason.BETWEEN),
        (Look.CRISP, (None, None, None), 0, Reason.CRISPEST),
        (Look.CRISP, (None, Look.SILKY, None), 0, Reason.CRISPEST),
    ],
)
def test_recommended_by_what_is_seen(
    wished: Look, looks: tuple[Look | None, ...], frame: int, reason: Reason
) -> None:
    """Without shares the picture's look decides, then the order."""
    found = recommend(wished, [plain(look=look) for look in looks], (0, 1, 2))
    assert found is not None
    assert (found.frame, found.reason) == (frame, reason)
    assert found.try_shutter_s is None


def test_nothing_compared_nothing_recommended() -> None:
    """Without an order there is no recommendation; one frame alone is named as such."""
    assert recommend(Look.SILKY, [plain()], ()) is None
    alone = recommend(Look.SILKY, [plain(), plain()], (1,))
    assert alone is not None
    assert (alone.frame, alone.reason) == (1, Reason.ALONE)


def test_too_long_without_a_time() -> None:
    """A share without a time names no time to try."""
    found = recommend(Look.FROZEN, [plain(share=0.3), plain(share=0.2)], (0, 1))
    assert found is not None
    assert found.try_shutter_s is None


def test_caveats_and_leaves() -> None:
    """What speaks against the frame is said, and whose leaves are sharper."""
    worse = FrameMeasures(1.0, 0.3, 0.02, foliage_motion=0.5, sharpness=0.5, look=Look.SILKY)
    better = FrameMeasures(0.1, 1.0, 0.0, foliage_motion=0.0, sharpness=1.0, look=Look.CRISP)
    found = recommend(Look.SILKY, [worse, better], (1, 0))
    assert found is not None
    assert found.caveats == (Caveat.CLIPPED, Caveat.LEAVES_MOVED, Caveat.STILL_PARTS_SOFT)
    assert found.leaves_from == 1
    other = recommend(Look.CRISP, [worse, better], (1, 0))
    assert other is not None
    assert (other.caveats, other.leaves_from) == ((), None)


@pytest.mark.parametrize(("other_s", "taken_from"), [(1.0, None), (1 / 15, 1), (None, 1)])
def test_leaves_are_taken_from_no_longer_time(
    other_s: float | None, taken_from: int | None
) -> None:
    """A brighter frame of a bracket shows more of the same leaves; it does not hold them still."""
    chosen = FrameMeasures(1 / 4, 0.6, 0.0, foliage_motion=0.4, share=0.05)
    other = FrameMeasures(other_s, 0.2, 0.0, foliage_motion=0.0, share=0.3)
    found = recommend(Look.TEXTURED, [chosen, other], (0, 1))
    assert found is not None
    assert (found.frame, found.leaves_from) == (0, taken_from)


def test_alike_water_by_the_other_measures() -> None:
    """Alike: the least clipped, then the stillest leaves, then the sharpest."""
    frames = [
        FrameMeasures(0.1, 1.0, 0.02),
        FrameMeasures(0.1, 1.0, 0.0, foliage_motion=0.3, sharpness=1.0),
        FrameMeasures(0.1, 1.0, 0.0, foliage_motion=0.1, sharpness=0.9),
    ]
    found = recommend(Look.CRISP, frames, (0, 1, 2), alike=True)
    assert found is not None
    assert (found.frame, found.reason) == (2, Reason.ALIKE)
