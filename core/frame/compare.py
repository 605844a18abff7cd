"""Two to six frames of one view, compared at equal brightness and focus."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Final

from core.frame.brightness import disagree, identical, measured_stops, stated_stops
from core.frame.comparison import Comparison, FrameMeasures, FramePair, LeafVerdict, Misfit
from core.frame.fine_detail import (
    WaterDetail,
    detail_strength,
    still_strengths,
    water_detail,
)
from core.frame.ladder import crisper, gaps, order_of, recommend, suited, with_shares
from core.frame.laid import Laid, MeasuredFrame, lay
from core.water import Look

#: A leaf frame goes into the main one without a visible seam within this [stops]. Own rule: the
#: smallest step of a dial.
LEAF_MATCH_STOPS: Final = 1 / 3
#: Leaves with at most this part of their detail missing are sharp. Own rule.
_SHARP_LEAVES: Final = 0.15


def compare_frames(
    frames: Sequence[MeasuredFrame],
    *,
    wished: Look | None = None,
    aim: float | None = None,
    cells: Sequence[str] | None = None,
    leaf: int | None = None,
    laid: Laid | None = None,
) -> Comparison:
    """Compare frames of one view.

    Args:
        frames: two to six, in the order in which they were named.
        wished: the look that is wished for.
        aim: the share at which it aims, above 0; None: the usual one.
        cells: where the person says that the water is.
        leaf: place of a short frame for the leaves; the recommended one, or the first other, is
            then the main one.
        laid: the frames as laid on each other, when that was done already.

    Raises:
        NumberOfFramesError: there are fewer than two or more than six frames.
        UnknownCellError: the grid has no such cell.
    """
    laid = laid or lay(frames, cells)
    detail = water_detail(laid)
    measures = with_shares(_measures(frames, laid, detail))
    order = _order(measures, laid, detail)
    even = detail is not None and _all_alike(measures, laid, detail)
    recommendation = recommend(wished, measures, order, aim=aim, alike=even) if wished else None
    main = recommendation.frame if recommendation else None
    return Comparison(
        frames=measures,
        pairs=_pairs(frames, laid, detail),
        order=order,
        water_cells=laid.cells,
        suited=suited(measures, order),
        gaps=gaps(measures, order),
        recommendation=recommendation,
        leaf=None if leaf is None else _leaf(measures, laid, leaf, main),
    )


def _measures(
    frames: Sequence[MeasuredFrame], laid: Laid, detail: WaterDetail | None
) -> tuple[FrameMeasures, ...]:
    textures = _against_most(detail.strengths if detail else [None] * len(laid.together))
    pixels = list(laid.shown.values())
    still = still_strengths(pixels, laid.still)
    sharpness = _against_most(still or [None] * len(pixels))
    leaves = _against_most([detail_strength(one, laid.leaves) for one in pixels])
    found = []
    for place, frame in enumerate(frames):
        at = laid.together.index(place) if place in laid.together else None
        leaf_detail = None if at is None else leaves[at]
        found.append(
            FrameMeasures(
                shutter_s=frame.shutter_s,
                texture=None if at is None else textures[at],
                clipped_share=frame.report.clipping.share,
                foliage_motion=None if leaf_detail is None else 1 - leaf_detail,
                sharpness=None if at is None else sharpness[at],
                share=frame.share,
                look=frame.look,
            )
        )
    return tuple(found)


def _against_most(values: Sequence[float | None]) -> list[float | None]:
    """Each over the largest, all None when one is missing."""
    known = [value for value in values if value is not None]
    if len(known) < len(values):
        return [None] * len(values)
    most = max(*known, 1e-9)
    return [value / most for value in known]


def _order(
    measures: Sequence[FrameMeasures], laid: Laid, detail: WaterDetail | None
) -> tuple[int, ...]:
    if detail is None:
        return ()
    together = laid.together

    def balance(first: int, second: int) -> float:
        return detail.balance(together.index(first), together.index(second))

    return order_of(together, balance, [one.shutter_s for one in measures])


def _all_alike(measures: Sequence[FrameMeasures], laid: Laid, detail: WaterDetail) -> bool:
    times = [measures[place].shutter_s for place in laid.together]
    return all(
        crisper(detail.balance(one, two), times[one], times[two]) == 0
        for one in range(len(times))
        for two in range(one)
    )


def _pairs(
    frames: Sequence[MeasuredFrame], laid: Laid, detail: WaterDetail | None
) -> tuple[FramePair, ...]:
    """Each other frame against the reference, in the frames' order."""
    return tuple(
        _pair(frames, laid, detail, place)
        for place in range(len(frames))
        if place != laid.reference
    )


def _pair(
    frames: Sequence[MeasuredFrame], laid: Laid, detail: WaterDetail | None, second: int
) -> FramePair:
    first, motion = laid.reference, laid.motions[second]
    settings = [frames[place].report.metadata.settings for place in (first, second)]
    stated = stated_stops(*settings)
    if isinstance(motion, Misfit):
        return FramePair(first, second, motion, stated_stops=stated)
    same = identical(frames[first], frames[second])
    shown = laid.shown
    measured = 0.0 if same else measured_stops(shown[first], shown[second], laid.still)
    report = frames[first].report
    return FramePair(
        first,
        second,
        shift_px=(0.0, 0.0) if same else motion.shift_px((report.height, report.width)),
        turned_deg=0.0 if same else motion.turned_deg,
        measured_stops=measured,
        stated_stops=stated,
        disagree=disagree(measured, stated, identical=same),
        identical=same,
        smoother=None if same else _smoother(frames, laid, detail, second),
    )


def _smoother(
    frames: Sequence[MeasuredFrame], laid: Laid, detail: WaterDetail | None, second: int
) -> int | None:
    if detail is None:
        return None
    first, together = laid.reference, laid.together
    balance = detail.balance(together.index(first), together.index(second))
    times = [frames[place].shutter_s for place in (first, second)]
    return {1: second, 0: None, -1: first}[crisper(balance, *times)]


def _leaf(
    measures: Sequence[FrameMeasures], laid: Laid, leaf: int, main: int | None
) -> LeafVerdict | None:
    """Whether a leaf frame will do; None when it lies on no other frame."""
    others = [place for place in laid.together if place != leaf]
    if leaf not in laid.together or not others:
        return None
    main = main if main in others else others[0]
    stops = measured_stops(laid.shown[main], laid.shown[leaf], laid.still)
    missing = measures[leaf].foliage_motion
    if stops is None or missing is None:
        return None
    matches = math.isclose(stops, 0.0, abs_tol=LEAF_MATCH_STOPS)
    return LeafVerdict(leaf, main, missing <= _SHARP_LEAVES, stops, matches)
