"""Offers beyond a plan that both directions share: another time, another f-number."""

from __future__ import annotations

import math
from collections.abc import Iterator

from core.adjust.moves import State
from core.adjust.ranges import (
    block_of,
    brightness,
    in_look,
    longest_held_s,
    look_times_of,
    marks_of,
)
from core.adjust.situation import Lever, Note, Price, Situation, Step
from core.adjust.telling import aperture_cost, time_cost
from core.exposure import Settings
from core.series import EQUAL, EQUAL_STOPS, Mark, nearest


def offer(
    lever: Lever,
    end: State,
    stops: float,
    price: Price,
    numbers: dict[str, float] | None = None,
    settings: Settings | None = None,
    notes: tuple[Note, ...] = (),
    nd_on: float | None = None,
) -> Step:
    """One lever offered from the end of a plan; what is not told stays as it is there.

    Args:
        lever: what is offered.
        end: where the plan ended.
        stops: what it does to the brightness [stops], positive: brighter.
        price: what it costs.
        numbers: how much, in the units that the names carry.
        settings: after it, exact; None: as at the end.
        notes: what must be said with it.
        nd_on: neutral density after it [stops]; None: as at the end.
    """
    return Step(
        lever=lever,
        stops=stops,
        settings=settings or end.settings,
        polariser_on=end.polariser_on,
        nd_on=end.nd_on if nd_on is None else nd_on,
        price=price,
        numbers=numbers or {},
        notes=notes,
    )


def other_time(lever: Lever, end: State, situation: Situation) -> Iterator[Step]:
    """A time outside the wish: crisper or silkier water, on purpose.

    Args:
        lever: the one that is offered, SHORTER_TIME or LONGER_TIME.
        end: where the plan ended.
        situation: the limits; the look is left out.
    """
    goal_s = end.settings.shutter_s * 2**end.remaining
    mark = nearest(marks_of(Lever.TIME, situation.camera.dial), goal_s)
    camera = situation.camera
    if not camera.shortest_s <= mark.exact * EQUAL <= longest_held_s(camera) * EQUAL**2:
        return
    after = end.at(Lever.TIME, mark.exact)
    if after == end:
        return
    cost = time_cost(end, after, situation)
    shortest_s, longest_look_s = look_times_of(situation)
    numbers = {**cost.numbers, "inside_look": float(in_look(mark.exact, situation))}
    if situation.look_times is not None:
        numbers |= {"look_shortest_s": shortest_s, "look_longest_s": longest_look_s}
    stops = end.remaining - after.remaining
    yield offer(lever, end, stops, cost.price, numbers, after.settings, cost.notes)


def other_aperture(
    lever: Lever, end: State, situation: Situation, limit: float, notes: tuple[Note, ...]
) -> Iterator[Step]:
    """The f-number nearest to the wish, from here to `limit`, the format and depth left out.

    Args:
        lever: the one that is offered.
        end: where the plan ended.
        situation: the limits.
        limit: f-number to which it may go, exact.
        notes: what must be said with it.
    """
    if block_of(Lever.APERTURE, situation) is not None:
        return
    here, there = (brightness(Lever.APERTURE, f) for f in (end.settings.f_number, limit))
    sign = math.copysign(1.0, end.remaining)

    def gain(mark: Mark) -> float:
        return sign * (brightness(Lever.APERTURE, mark.exact) - here)

    marks = [
        mark
        for mark in marks_of(Lever.APERTURE, situation.camera.dial)
        if EQUAL_STOPS < gain(mark) <= sign * (there - here) + EQUAL_STOPS
    ]
    if not marks:
        return
    best = min(marks, key=lambda mark: abs(gain(mark) - abs(end.remaining)))
    after = end.at(Lever.APERTURE, best.exact)
    cost = aperture_cost(end, after, situation)
    stops = end.remaining - after.remaining
    yield offer(lever, end, stops, cost.price, dict(cost.numbers), after.settings, notes)
