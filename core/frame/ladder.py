"""Order of frames by their water, what lies between them, and the one for the wished look."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import replace
from itertools import pairwise
from typing import Final

from core.frame.brightness import times_apart_stops
from core.frame.comparison import (
    Caveat,
    FrameMeasures,
    Gap,
    Reason,
    Recommendation,
    Suited,
)
from core.frame.fine_detail import AGAINST_TIMES, ALIKE, ALIKE_OF_ONE_TIME
from core.series import SAME_STOPS
from core.water import AIM, Look, band_of, look_of

#: Neighbours whose times are at least so far apart have a look between them [stops]. Own rule: a
#: ladder goes in steps of one stop.
_GAP_STOPS: Final = 1.5
#: A frame that clips more than another by this part of the frame, that moved its leaves by so
#: much, that is so much softer, has it said. Own rules.
_CLIPPED: Final = 0.005
_LEAVES: Final = 0.25
_SOFT: Final = 0.7
#: Leaves so much sharper are worth taking from another frame. Own rule.
_WORTH_LEAVES: Final = 0.2
_LOOKS: Final = tuple(Look)
_SMOOTH: Final = (Look.SILKY, Look.MISTY)


def crisper(balance: float, first_s: float | None, second_s: float | None) -> int:
    """Which of two frames has the crisper water: 1 the first, -1 the second, 0 alike.

    Args:
        balance: of their detail, above 0 where the first has more.
        first_s: time of the first [s], None: not known.
        second_s: time of the second [s].
    """
    apart = times_apart_stops(first_s, second_s)
    if apart is None:
        return _sign(balance, ALIKE)
    if abs(apart) < SAME_STOPS:
        return _sign(balance, ALIKE_OF_ONE_TIME)
    return _sign(balance, AGAINST_TIMES) or (1 if apart > 0 else -1)


def _sign(balance: float, alike: float) -> int:
    return 0 if abs(balance) <= alike else 1 if balance > 0 else -1


def order_of(
    places: Sequence[int],
    balance: Callable[[int, int], float],
    times_s: Sequence[float | None],
) -> tuple[int, ...]:
    """Frames from the crispest water to the smoothest.

    Args:
        places: the frames whose water was compared.
        balance: of two of them, above 0 where the first has more detail.
        times_s: exposure time of every frame [s], None: not known. They decide where the
            pictures don't tell clearly.
    """

    def standing(place: int) -> float:
        others = [other for other in places if other != place]
        won = sum(
            crisper(balance(place, other), times_s[place], times_s[other]) for other in others
        )
        return won + sum(math.tanh(balance(place, other)) for other in others) / (len(places) + 1)

    return tuple(sorted(places, key=lambda place: (-standing(place), place)))


def with_shares(frames: Sequence[FrameMeasures]) -> tuple[FrameMeasures, ...]:
    """The frames, each with the share that the times and another frame's share give it."""
    known = [frame for frame in frames if frame.share is not None and frame.shutter_s is not None]
    return tuple(_shared(frame, known) for frame in frames)


def _shared(frame: FrameMeasures, known: Sequence[FrameMeasures]) -> FrameMeasures:
    share = frame.share
    if share is None and frame.shutter_s is not None and known:
        other = known[0]
        share = (other.share or 0.0) * frame.shutter_s / (other.shutter_s or 1.0)
    if share is None:
        return frame
    return replace(frame, share=share, look=look_of(share))


def suited(frames: Sequence[FrameMeasures], order: Sequence[int]) -> tuple[Suited, ...]:
    """For each look that some frame has, the frame that suits it best."""
    found = []
    for look in _LOOKS:
        having = [place for place in order if frames[place].look is look]
        if having:
            offs = {place: _off(frames[place], AIM[look]) for place in having}
            found.append(Suited(look, min(having, key=offs.__getitem__)))
    return tuple(found)


def _off(frame: FrameMeasures, aim: float) -> float:
    """How far a frame's share is from an aim [octaves], 0 where it has none."""
    return abs(math.log2(frame.share / aim)) if frame.share else 0.0


def gaps(frames: Sequence[FrameMeasures], order: Sequence[int]) -> tuple[Gap, ...]:
    """Neighbours in the order with a look between them: times more than 1.5 stops apart."""
    found = []
    for crisper, smoother in pairwise(order):
        short, long = frames[crisper].shutter_s, frames[smoother].shutter_s
        if short is None or long is None or long <= short:
            continue
        stops = math.log2(long / short)
        if stops > _GAP_STOPS:
            found.append(Gap(crisper, smoother, stops, math.sqrt(short * long)))
    return tuple(found)


def recommend(
    wished: Look,
    frames: Sequence[FrameMeasures],
    order: Sequence[int],
    *,
    aim: float | None = None,
    alike: bool = False,
) -> Recommendation | None:
    """The frame for a look, why, and what to mind.

    Args:
        wished: the look that is wished for.
        frames: all frames, with their shares and looks where these are known.
        order: the frames whose water was compared, crispest first.
        aim: the share to aim at, above 0; None: the look's usual one.
        alike: their water looks the same.

    Returns:
        None when no frame's water was compared.
    """
    if not order:
        return None
    share = aim or AIM[wished]
    frame, reason = _chosen(wished, share, frames, order, alike=alike)
    return Recommendation(
        wished,
        frame,
        reason,
        _caveats(frame, frames, order),
        _time_to_try(share, frames[frame], reason),
        _sharper_leaves(frame, frames, order),
    )


def _chosen(
    wished: Look,
    aim: float,
    frames: Sequence[FrameMeasures],
    order: Sequence[int],
    *,
    alike: bool,
) -> tuple[int, Reason]:
    if len(order) == 1:
        return order[0], Reason.ALONE
    shared = [place for place in order if frames[place].share is not None]
    if len(shared) == len(order):
        best = min(shared, key=lambda place: _off(frames[place], aim))
        return best, _reached(frames[best].share or 0.0, wished)
    if alike:
        return _cleanest(frames, order), Reason.ALIKE
    seen = [place for place in order if frames[place].look is wished]
    if seen:
        end = seen[-1] if wished in _SMOOTH else seen[0]
        return end, Reason.SEEN
    return _by_order(wished, frames, order)


def _reached(share: float, wished: Look) -> Reason:
    low, high = band_of(wished)
    if share < low:
        return Reason.TOO_SHORT
    return Reason.SHARE if share <= high * (1 + 1e-9) else Reason.TOO_LONG


def _by_order(
    wished: Look, frames: Sequence[FrameMeasures], order: Sequence[int]
) -> tuple[int, Reason]:
    """By the looks that are known beside the wished one, else by the order alone."""
    known = {place: _LOOKS.index(look) for place in order if (look := frames[place].look)}
    aim = _LOOKS.index(wished)
    if known and max(known.values()) < aim and order[-1] in known:
        return order[-1], Reason.TOO_SHORT
    if known and min(known.values()) > aim and order[0] in known:
        return order[0], Reason.TOO_LONG
    if wished in _SMOOTH:
        return order[-1], Reason.SMOOTHEST
    if wished is Look.TEXTURED and len(order) > 2:
        return order[len(order) // 2], Reason.BETWEEN
    return order[0], Reason.CRISPEST


def _cleanest(frames: Sequence[FrameMeasures], order: Sequence[int]) -> int:
    """The least clipped, then the one with the stillest leaves."""
    return min(
        order,
        key=lambda place: (
            round(frames[place].clipped_share / _CLIPPED),
            frames[place].foliage_motion or 0.0,
            -(frames[place].sharpness or 0.0),
        ),
    )


def _caveats(
    frame: int, frames: Sequence[FrameMeasures], order: Sequence[int]
) -> tuple[Caveat, ...]:
    own = frames[frame]
    least = min(frames[place].clipped_share for place in order)
    found = {
        Caveat.CLIPPED: own.clipped_share > least + _CLIPPED,
        Caveat.LEAVES_MOVED: (own.foliage_motion or 0.0) > _LEAVES,
        Caveat.STILL_PARTS_SOFT: own.sharpness is not None and own.sharpness < _SOFT,
        Caveat.LOOK_NOT_SURE: own.look is None,
    }
    return tuple(caveat for caveat, holds in found.items() if holds)


def _time_to_try(aim: float, frame: FrameMeasures, reason: Reason) -> float | None:
    if reason not in {Reason.TOO_SHORT, Reason.TOO_LONG}:
        return None
    if frame.share is None or frame.shutter_s is None:
        return None
    return frame.shutter_s * aim / frame.share


def _sharper_leaves(
    frame: int, frames: Sequence[FrameMeasures], order: Sequence[int]
) -> int | None:
    """The frame whose leaves are clearly stiller; a longer time holds none, it is but brighter."""
    moved, time_s = frames[frame].foliage_motion, frames[frame].shutter_s
    if moved is None:
        return None
    still = [
        place
        for place in order
        if frames[place].foliage_motion is not None
        and (time_s is None or (frames[place].shutter_s or 0.0) <= time_s)
    ]
    best = min(still, key=lambda place: frames[place].foliage_motion or 0.0)
    return best if moved - (frames[best].foliage_motion or 0.0) > _WORTH_LEAVES else None
