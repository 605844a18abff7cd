"""What enters or glares along the borders of a frame: stated when sure, else to be asked about."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import compress
from typing import Final

import numpy as np

from core.frame.border_bright import Run, bright_runs
from core.frame.border_features import line_features
from core.frame.border_lines import Places, salient_places
from core.frame.border_sides import Canvas, Side, turned
from core.frame.border_tracks import Tracks, tracks_of
from core.frame.border_trees import trained
from core.frame.findings import Border, BorderFinding, BorderKind, WaterArea
from core.frame.water_area import mask_of
from core.frame.working import WorkingCopy

#: Confidence from which a thing is stated, and from which it is worth a question. Own rules, on
#: sources left out of training: of places stated as lines and shapes from .55 on .88 are something
#: planted (in rendered gorges .94), and .60 of all places at planted ones are stated. With what
#: enters photographs by itself, judged by eye on crops, .95 are right; on the third of the
#: photographs with the most that are wrong .86, and from .5 on .83. Of what is bright from .4 on
#: .85 had been planted, which is .26 false ones a frame.
STATED: Final = {"line": 0.55, "bright": 0.4}
ASKED: Final = {"line": 0.05, "bright": 0.2}
#: A line is no wider, over the short side; what is wider is a shape that the border cuts. Own rule.
_LINE_WIDTH: Final = 0.028
#: White at the top over more than this part of the width is sky (own measurement: right in .93).
_SKY_LENGTH: Final = 0.12
#: As many lines and shapes on one side are told as one. Own rule.
_BUSY: Final = 3
#: Things as near to a corner as this, over their sides, may be one that touches both. Own rule.
_CORNER: Final = 0.06
#: Two things nearer than this part of the side are one. Own rule.
_BESIDE: Final = 0.015
#: More than these are a list that nobody reads on a phone. Own rule.
_MOST: Final = 12
#: Part of a bright run that lies in the water's cells, for it to be the water that leaves the
#: frame. Own rule.
_IN_WATER: Final = 0.5
_LINEAR: Final = frozenset({BorderKind.LINE, BorderKind.CUT})


def find_borders(work: WorkingCopy, water: WaterArea | None = None) -> tuple[BorderFinding, ...]:
    """Look along the four borders for what may not belong there.

    Args:
        work: the frame's working copy.
        water: where its water is; white that leaves the frame there is never stated, and where
            the person named the cells it is not asked about either.

    Returns:
        At most a dozen findings, what is stated first and the surest first; three and more lines
        and shapes on one side are one finding, "busy".
    """
    canvas = Canvas.of(work.pixels)
    runs = bright_runs(canvas)
    wet = [_part_in_water(run, water) >= _IN_WATER for run in runs]
    bright = _bright(runs, wet, named=water is not None and water.by_person)
    taken = [*bright, *(_bright_finding(run, 0, stated=False) for run in compress(runs, wet))]
    lines = _apart([one for one in _lines(canvas) if not any(_same_place(one, o) for o in taken)])
    found = [*bright, *(one for border in Border for one in _folded(lines, border))]
    return tuple(_once_in_corners(sorted(found, key=_order))[:_MOST])


def _order(finding: BorderFinding) -> tuple[bool, float]:
    return not finding.stated, -finding.confidence


# bright


def _bright(runs: Sequence[Run], wet: Sequence[bool], *, named: bool) -> list[BorderFinding]:
    """What is bright; of the water itself nothing is stated, and nothing said where it is named."""
    if not runs:
        return []
    sure = trained("bright").confidence(np.stack([run.features for run in runs]))
    return [
        _bright_finding(run, confidence, stated=confidence >= STATED["bright"] and not water)
        for run, confidence, water in zip(runs, sure.tolist(), wet, strict=True)
        if confidence >= ASKED["bright"] and not (water and named)
    ]


def _bright_finding(run: Run, confidence: float, *, stated: bool) -> BorderFinding:
    low, high = run.along
    sky = run.border is Border.TOP and high - low > _SKY_LENGTH
    return BorderFinding(
        border=run.border,
        kind=BorderKind.SKY if sky else BorderKind.BRIGHT,
        position=(low + high) / 2,
        width=high - low,
        depth=run.depth / min(run.inside.shape),
        dark=False,
        confidence=confidence,
        stated=stated,
    )


def _part_in_water(run: Run, water: WaterArea | None) -> float:
    """How much of a run lies where the water is, 0 to 1."""
    if water is None:
        return 0.0
    deep, long = run.inside.shape
    lying = run.border in {Border.LEFT, Border.RIGHT}
    mask = mask_of(water.cells, (long, deep) if lying else (deep, long))
    return float(turned(mask, run.border)[run.inside].mean())


# lines and shapes


def _lines(canvas: Canvas) -> list[BorderFinding]:
    sides = [canvas.side(border) for border in Border]
    places = [salient_places(side) for side in sides]
    tracks = [tracks_of(side, found) for side, found in zip(sides, places, strict=True)]
    features = line_features(sides, places, tracks)
    if not len(features):
        return []
    sure = iter(trained("line").confidence(features).tolist())
    found = []
    for one in zip(sides, places, tracks, strict=True):
        found += [_line_finding(*one, index, next(sure)) for index in range(len(one[1]))]
    return [one for one in found if one.confidence >= ASKED["line"]]


def _line_finding(
    side: Side, places: Places, tracks: Tracks, index: int, confidence: float
) -> BorderFinding:
    low, high = float(tracks.low[index]), float(tracks.high[index])
    wide = (high - low) / side.short_px
    return BorderFinding(
        border=side.border,
        kind=BorderKind.LINE if wide <= _LINE_WIDTH else BorderKind.CUT,
        position=(low + high) / 2 / side.length_px,
        width=(high - low) / side.length_px,
        depth=max(float(tracks.length[index]), 1.0) / side.short_px,
        dark=bool(places.way[index, 0] < 0),
        confidence=confidence,
        stated=confidence >= STATED["line"],
    )


# together


def _same_place(one: BorderFinding, other: BorderFinding) -> bool:
    reach = (one.width + other.width) / 2 + _BESIDE
    return one.border is other.border and abs(one.position - other.position) < reach


def _apart(found: Sequence[BorderFinding]) -> list[BorderFinding]:
    """Of findings in one place the surest: a stick is a narrow line and a wider shape."""
    kept: list[BorderFinding] = []
    for finding in sorted(found, key=_order):
        if not any(_same_place(finding, one) for one in kept):
            kept.append(finding)
    return kept


def _folded(found: Sequence[BorderFinding], border: Border) -> list[BorderFinding]:
    """The lines and shapes of a side; many of them as one."""
    there = [one for one in found if one.border is border]
    if len(there) < _BUSY:
        return there
    low = min(one.position - one.width / 2 for one in there)
    high = max(one.position + one.width / 2 for one in there)
    surest = max(one.confidence for one in there)
    dark = sum(one.dark for one in there) * 2 > len(there)
    return [
        BorderFinding(
            border=border,
            kind=BorderKind.BUSY,
            position=(low + high) / 2,
            width=high - low,
            depth=max(one.depth for one in there),
            dark=dark,
            confidence=surest,
            stated=any(one.stated for one in there),
        )
    ]


def _once_in_corners(found: Sequence[BorderFinding]) -> list[BorderFinding]:
    """One finding for a thing that touches two borders at their corner, the first of them."""
    kept: list[BorderFinding] = []
    for finding in found:
        corner = _corner(finding)
        if corner is None or not any(
            _corner(one) == corner and _alike(one, finding) for one in kept
        ):
            kept.append(finding)
    return kept


def _alike(one: BorderFinding, other: BorderFinding) -> bool:
    return (one.kind in _LINEAR) == (other.kind in _LINEAR) and one.border is not other.border


def _corner(finding: BorderFinding) -> frozenset[Border] | None:
    """The two borders of the corner that a thing lies in."""
    first = finding.position - finding.width / 2 < _CORNER
    last = finding.position + finding.width / 2 > 1 - _CORNER
    if first == last:  # in no corner, or along the whole border
        return None
    if finding.border in {Border.TOP, Border.BOTTOM}:
        return frozenset({finding.border, Border.LEFT if first else Border.RIGHT})
    return frozenset({finding.border, Border.TOP if first else Border.BOTTOM})
