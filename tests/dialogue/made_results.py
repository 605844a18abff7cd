"""Results of frames measured together, made up but possible, by the names that transcripts use."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Final

from bot.dialogue.actions import MeasureFrames
from bot.dialogue.events import FramesMeasured, NamedPicture, Origin
from core.errors import FrameFault
from core.frame.comparison import (
    AverageMade,
    Caveat,
    Comparison,
    FrameMeasures,
    FramePair,
    Gap,
    IllustratedTime,
    IllustrationMade,
    LeafVerdict,
    LeftOut,
    LeftOutFrame,
    Misfit,
    Reason,
    Recommendation,
    Refusal,
    Suited,
)
from core.frame.findings import WaterArea
from core.water import Look
from tests.dialogue.made_frames import REPORTS

_SHORT: Final = FrameMeasures(1 / 15, 1.0, 0.001, 0.0, 1.0, 0.021, Look.TEXTURED)
_MIDDLE: Final = FrameMeasures(1 / 4, 0.6, 0.002, 0.3, 0.9, 0.08, Look.TEXTURED)
_LONG: Final = FrameMeasures(1.0, 0.2, 0.012, 0.6, 0.9, 0.32, Look.SILKY)
_UNKNOWN: Final = FrameMeasures(None, 1.0, 0.001)
_PAIR: Final = FramePair(0, 1, None, (3.0, -2.0), 0.1, 0.1, 0.0)

_TWO: Final = Comparison(
    (_SHORT, _MIDDLE),
    (_PAIR,),
    (0, 1),
    ("B2", "B3"),
    (Suited(Look.TEXTURED, 0),),
    (Gap(0, 1, 1.9, 1 / 8),),
    Recommendation(Look.TEXTURED, 0, Reason.SHARE),
)
_LADDER: Final = Comparison(
    (_SHORT, _MIDDLE, _LONG),
    (_PAIR, replace(_PAIR, second=2)),
    (0, 1, 2),
    ("B2", "B3"),
    (Suited(Look.TEXTURED, 0), Suited(Look.SILKY, 2)),
    (),
    Recommendation(
        Look.TEXTURED, 1, Reason.SHARE, (Caveat.CLIPPED, Caveat.LEAVES_MOVED), leaves_from=0
    ),
)


def _recommending(reason: Reason, **more: Any) -> Comparison:
    chosen = Recommendation(Look.SILKY, 1, reason, **more)
    return replace(_TWO, recommendation=chosen, gaps=(), suited=())


def _misfitting(misfit: Misfit, spots: int = 0) -> Comparison:
    pair = FramePair(0, 1, misfit, shared_spots=spots)
    return replace(_TWO, pairs=(pair,), order=(), recommendation=None, gaps=(), suited=())


def _differing(measured: float, stated: float | None) -> Comparison:
    pair = replace(_PAIR, measured_stops=measured, stated_stops=stated, disagree=True)
    return replace(_TWO, pairs=(pair,))


def _leaf(sharp: bool, stops: float, matches: bool) -> Comparison:
    return replace(_TWO, leaf=LeafVerdict(0, 1, sharp, stops, matches))


def _averaged(made: AverageMade) -> Comparison:
    return Comparison((_MIDDLE,) * 6, average=made)


def _drawn(*times: IllustratedTime, refusal: Refusal | None = None) -> Comparison:
    return Comparison((_SHORT,), illustration=IllustrationMade(times, refusal))


_TIMES: Final = (
    IllustratedTime(1 / 8, 0.03, 0.05, Look.TEXTURED),
    IllustratedTime(1 / 4, 0.06, 0.1, Look.TEXTURED),
    IllustratedTime(1 / 2, 0.12, 0.2, Look.SILKY),
    IllustratedTime(1.0, 0.25, 0.4, Look.SILKY),
)

COMPARISONS: Final[dict[str, Comparison]] = {
    "two": _TWO,
    "ladder": _LADDER,
    "of_unknown_times": replace(
        _TWO,
        frames=(_UNKNOWN, _UNKNOWN),
        gaps=(),
        suited=(),
        recommendation=Recommendation(
            Look.SILKY, 1, Reason.SMOOTHEST, (Caveat.LOOK_NOT_SURE, Caveat.STILL_PARTS_SOFT)
        ),
    ),
    "seen": _recommending(Reason.SEEN),
    "crispest": _recommending(Reason.CRISPEST),
    "between": _recommending(Reason.BETWEEN),
    "too_short": _recommending(Reason.TOO_SHORT, try_shutter_s=0.6),
    "too_short_untimed": _recommending(Reason.TOO_SHORT),
    "too_long": _recommending(Reason.TOO_LONG, try_shutter_s=1 / 30),
    "too_short_seen": replace(
        _recommending(Reason.TOO_SHORT),
        frames=tuple(replace(frame, share=None) for frame in _TWO.frames),
        gaps=_TWO.gaps,
    ),
    "alone": replace(
        _recommending(Reason.ALONE),
        pairs=(_PAIR, FramePair(0, 2, Misfit.OTHER_VIEW)),
        order=(0,),
        frames=(_SHORT, _MIDDLE, replace(_LONG, texture=None)),
    ),
    "alike": _recommending(Reason.ALIKE),
    "nowhere": replace(_TWO, order=(), recommendation=None, gaps=(), suited=()),
    "same": replace(_TWO, pairs=(replace(_PAIR, identical=True),)),
    "other_view": _misfitting(Misfit.OTHER_VIEW),
    "wet_glass": _misfitting(Misfit.OTHER_VIEW, spots=2),
    "other_shape": _misfitting(Misfit.OTHER_SHAPE),
    "few_marks": _misfitting(Misfit.FEW_MARKS),
    "brighter": _differing(1.2, 0.0),
    "darker": _differing(-1.0, 1.0),
    "as_bright": _differing(0.1, -1.0),
    "not_stated": _differing(1.0, None),
    "leaf_good": _leaf(sharp=True, stops=0.1, matches=True),
    "leaf_moved": _leaf(sharp=False, stops=0.1, matches=True),
    "leaf_dark": _leaf(sharp=True, stops=-1.0, matches=False),
    "leaf_bright": _leaf(sharp=True, stops=1.0, matches=False),
    "average": _averaged(
        AverageMade(
            (0, 1, 2, 3, 4),
            (LeftOutFrame(5, LeftOut.MOVED),),
            0.447,
            0.46,
            1.25,
            0.3,
            Look.SILKY,
        )
    ),
    "average_untimed": _averaged(AverageMade((0, 1), (), 0.707)),
    "average_no_look": _averaged(AverageMade((0, 1), (), 0.707, 0.72, 0.5)),
    "no_average": _averaged(
        AverageMade((0,), (LeftOutFrame(1, LeftOut.MISFIT), LeftOutFrame(2, LeftOut.SAME)), 1.0)
    ),
    "drawn": _drawn(_TIMES[1]),
    "drawn_four": _drawn(*_TIMES),
    **{f"refused_{refusal.name.lower()}": _drawn(refusal=refusal) for refusal in Refusal},
}
_PICTURES: Final = {
    "compare": ("water", "whole"),
    "average": ("average", "water"),
    "illustrate": ("illustration",),
    "grid": ("grid",),
    "recheck": ("marked",),
}


def result(name: str, asked: MeasureFrames, origin: Origin) -> FramesMeasured:
    """The result of what was asked: a comparison by its name, a frame's report, or a fault."""
    frames = tuple(frame.event_id for frame in asked.frames)
    made: dict[str, Any] = {"comparison": COMPARISONS.get(name)}
    if name == "broken":
        return FramesMeasured(
            origin=origin, what=asked.what, frame_event_ids=(), fault=FrameFault.TOO_SLOW
        )
    if name == "one_broken":
        made = {"comparison": _TWO, "left_out": {"$gone": FrameFault.GONE}}
    elif name == "empty":
        return FramesMeasured(origin=origin, what=asked.what, frame_event_ids=frames)
    elif name in REPORTS:
        cells = asked.options.water_cells
        water = WaterArea(cells, 90.0, by_person=True) if cells else REPORTS[name].water
        made = {"report": replace(REPORTS[name], water=water)}
    pictures = tuple(
        NamedPicture(name=f"{shows}.jpg", shows=shows, frame=0 if len(frames) == 1 else None)
        for shows in _PICTURES[asked.what]
    )
    return FramesMeasured(
        origin=origin, what=asked.what, frame_event_ids=frames, pictures=pictures, **made
    )
